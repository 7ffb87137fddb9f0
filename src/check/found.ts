/** A finding together with the place in the files at which the check met it. */
import { find, type FindingKind, type LocatedFinding, type SubjectRef } from '../findings/finding.js'
import { kindNames } from '../load/entry-kinds.js'
import { positionOf, type SourceEntry, type Span, writtenIn } from '../load/source-folder.js'
import type { Quantities } from '../units/quantity.js'

interface FoundFacts<E extends Quantities> {
  readonly subject: SubjectRef
  /** Keys as in the file, parted by dots. */
  readonly field?: string | null
  readonly evidence: E
  readonly context?: Readonly<Record<string, string>>
}

export const found = <E extends Quantities>(kind: FindingKind<E>, at: Span | null, { field = null, ...facts }: FoundFacts<E>): LocatedFinding =>
  ({ ...find(kind, { ...facts, field, limit: null }), at: at === null ? null : positionOf(at) })

/** The entry by its tag; without one, by its number in its list. */
export const subjectOf = ({ kind, id, ordinal }: SourceEntry): SubjectRef => ({ kind: kindNames[kind].entry, id: id ?? `no. ${ordinal}` })

/** `file:line:column`, for a second place in a sentence. */
export function placeInWords(span: Span): string {
  const { file, line, column } = positionOf(span)
  return `${file}:${line}:${column}`
}

const longestQuote = 40
/** What the author wrote, short enough for a sentence. */
export function quoted(span: Span): string {
  const line = writtenIn(span).split(/[\r\n]/, 1)[0] ?? ''
  return line.length > longestQuote ? `${line.slice(0, longestQuote)}…` : line
}
