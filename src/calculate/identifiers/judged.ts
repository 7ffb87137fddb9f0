/** An identity with what was found on it: the verdict follows from the findings. */
import { type Finding, find, type FindingKind, type SubjectRef } from '../../findings/finding.js'
import type { IdentityCheck } from '../../model/results/identifiers.js'
import type { Tag, Vessel } from '../../model/vessel.js'

export interface Judged { readonly check: IdentityCheck; readonly findings: readonly Finding[] }

/** What is wrong, of which kind, in words. */
export interface Fault { readonly kind: FindingKind<{}>; readonly words: string; readonly context?: Readonly<Record<string, string>> }

type Given = Pick<IdentityCheck, 'what' | 'holderTag' | 'value' | 'form' | 'citations'>
  & Partial<Pick<IdentityCheck, 'parts' | 'countryCode'>> & { readonly faults: readonly Fault[]; readonly field: string }

export function judged(vessel: Vessel, { faults, field, parts = [], countryCode = null, ...given }: Given): Judged {
  const verdict = faults.length === 0 ? 'in order' : faults.some(({ kind }) => kind.id[3] === '1') ? 'not in order' : 'doubtful'
  const { subject, holder } = holderOf(vessel, given.holderTag)
  return {
    check: { ...given, parts, countryCode, verdict, reasons: faults.map(({ words }) => words) },
    findings: faults.map(({ kind, words, context = {} }) =>
      find(kind, { subject, field, evidence: {}, limit: null, context: { holder, value: given.value, words, ...context } })),
  }
}

export function holderOf({ identity }: Pick<Vessel, 'identity'>, tag: Tag | null): { readonly subject: SubjectRef; readonly holder: string } {
  return tag === null
    ? { subject: { kind: 'vessel', id: identity.name }, holder: identity.name }
    : { subject: { kind: 'equipment', id: tag }, holder: tag }
}
