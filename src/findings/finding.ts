/** What a finding is. Words are made from its facts in one place, the kind; positions are added after the passes. */
import type { Citation } from '../references/bibliography.js'
import type { Quantities } from '../units/quantity.js'

export type Severity = 'error' | 'warning' | 'note'

/** `kind` is the key of the vessel data's list (`circuit`, `cable`, …), `id` the tag. */
export interface SubjectRef { readonly kind: string; readonly id: string }
export interface Limit { readonly relation: 'at most' | 'at least'; readonly value: number; readonly citation: Citation }
export const atMost = (value: number, citation: Citation): Limit => ({ relation: 'at most', value, citation })
export const atLeast = (value: number, citation: Citation): Limit => ({ relation: 'at least', value, citation })

export interface Facts<E extends Quantities> {
  readonly subject: SubjectRef
  /** Name of the model's field the finding is about, or null for the whole entry. */
  readonly field: string | null
  readonly evidence: E
  readonly limit: Limit | null
  /** Plain words that are not quantities: names, reasons, other tags. */
  readonly context?: Readonly<Record<string, string>>
}
export interface Finding extends Facts<Quantities> {
  readonly id: string
  readonly name: string
  readonly severity: Severity
  readonly message: string
  readonly remedy: string
}
export interface SourcePosition {
  readonly file: string
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
}
export interface LocatedFinding extends Finding {
  readonly at: SourcePosition | null
  /** Who accepts it, and why; absent or null while nobody does. Its severity stays. */
  readonly accepted?: Acceptance | null
}
/** Of an accepted deviation. `date` is year-month-day. */
export interface Acceptance { readonly by: string; readonly date: string; readonly reason: string }

/** "Accepted by A. Person, 2026-05-04: reason" */
export const acceptanceText = ({ by, date, reason }: Acceptance): string => `Accepted by ${by}, ${date}: ${reason}`
export const isAccepted = ({ accepted }: LocatedFinding): boolean => (accepted ?? null) !== null

/** ` (1 of them accepted)`, after a count of findings; nothing where none is. */
export const acceptedPart = (count: number, acceptedCount: number): string =>
  acceptedCount === 0 ? '' : count === 1 ? ' (accepted)' : ` (${acceptedCount} of them accepted)`

export interface FindingKind<E extends Quantities> {
  /** Three letters for the domain, three digits: 1xx limit not met, 2xx data missing, 3xx doubtful. */
  readonly id: string
  readonly name: string
  readonly since: string
  readonly retired: string | null
  readonly severity: Severity
  readonly meaning: string
  message(facts: Facts<E>): string
  remedy(facts: Facts<E>): string
}

/** Kinds carry evidence of every shape; only what all of them have is read through this. */
export type AnyFindingKind = FindingKind<any>

export const find = <E extends Quantities>(kind: FindingKind<E>, facts: Facts<E>): Finding => ({
  ...facts,
  id: kind.id,
  name: kind.name,
  severity: kind.severity,
  message: kind.message(facts),
  remedy: kind.remedy(facts),
})
