/**
 * Deviations that the yard accepts: each finding that one of them names stays where it is, marked with who accepts it and why.
 * Severity, verdicts and the exit code do not change by it: whether somebody may accept a limit that bears on fire or shock is
 * nothing that a program can judge, so an accepted error stays an error with a name to it.
 */
import type { AcceptedDeviation } from '../model/vessel.js'
import {
  acceptedAfterIssue, acceptedFindingChanged, acceptedFindingMissing, findingAcceptedTwice, findingNotAcceptable,
} from './acceptance-findings.js'
import { type AnyFindingKind, find, isAccepted, type LocatedFinding, type SourcePosition } from './finding.js'
import { nearestOf } from './nearest.js'

export interface Acceptances {
  readonly deviations: readonly AcceptedDeviation[]
  /** Where each of them stands, by the key in the file; in the order of the deviations. */
  readonly places: readonly ((key: string) => SourcePosition | null)[]
  /** Of the document, year-month-day. */
  readonly issuedOn: string | null
  /** Of every kind of finding. */
  readonly kindIds: readonly string[]
}

/**
 * The findings, those accepted marked, and after them what is wrong with the acceptances. A deviation holds for every finding of
 * its id on its subject; where it gives the message, only for the one that says this. Blanks of any sort count as one.
 */
export function withAcceptances(findings: readonly LocatedFinding[], acceptances: Acceptances): readonly LocatedFinding[] {
  const marked = [...findings]
  const told = acceptances.deviations.flatMap((deviation, i) => applyTo(marked, deviation, acceptances).map(({ kind, key, context }): LocatedFinding => ({
    ...find(kind, { subject: { kind: 'accepted deviation', id: `${deviation.findingId} of ${deviation.subject}` }, field: null, evidence: {}, limit: null, context }),
    at: acceptances.places[i]?.(key) ?? null,
  })))
  return [...marked, ...told]
}

interface Told { readonly kind: AnyFindingKind; readonly key: keyof typeof keys; readonly context: Readonly<Record<string, string>> }
/** Keys of the entry that a finding can point at. */
const keys = { finding: true, message: true, date: true } as const

const unacceptable = /^(SRC|SCH|REF|ACC)/

/** Marks in `findings` what the deviation accepts. */
function applyTo(findings: LocatedFinding[], deviation: AcceptedDeviation, { issuedOn, kindIds }: Acceptances): readonly Told[] {
  const { findingId, subject, message, by, date, reason } = deviation
  if (unacceptable.test(findingId)) return [{ kind: findingNotAcceptable, key: 'finding', context: {} }]
  const named = findings.flatMap((finding, at) => (finding.id === findingId && finding.subject.id === subject ? [{ finding, at }] : []))
  if (named.length === 0) return [{ kind: acceptedFindingMissing, key: 'finding', context: missing(findings, deviation, kindIds) }]
  const meant = named.filter(({ finding }) => message === null || plain(finding.message) === plain(message))
  if (meant.length === 0) return [{ kind: acceptedFindingChanged, key: 'message', context: { says: plain(named[0]!.finding.message) } }]

  const already = meant.find(({ finding }) => isAccepted(finding))?.finding.accepted ?? null
  for (const { finding, at } of meant) if (!isAccepted(finding)) findings[at] = { ...finding, accepted: { by, date, reason } }
  return [
    ...(already === null ? [] : [{ kind: findingAcceptedTwice, key: 'finding', context: { by: already.by, date: already.date } } as const]),
    ...(issuedOn !== null && date > issuedOn ? [{ kind: acceptedAfterIssue, key: 'date', context: { date, issuedOn } } as const] : []),
  ]
}

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** What may have been meant: another id where there is no such kind, else another subject. */
function missing(findings: readonly LocatedFinding[], { findingId, subject }: AcceptedDeviation, kindIds: readonly string[]): Readonly<Record<string, string>> {
  if (!kindIds.includes(findingId)) return { what: `there is no kind of finding ${findingId}`, ...nearestOf(findingId, kindIds) }
  return nearestOf(subject, findings.filter(({ id }) => id === findingId).map(finding => finding.subject.id))
}
