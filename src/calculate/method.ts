/** What a calculation is: a pure function with its formula, symbols, source and the outside values it was held against. */
import type { Citation } from '../references/bibliography.js'
import type { Quantities } from '../units/quantity.js'

/** One outside value. `published` names table and row, `by hand` shows the sum, `other program` names a general-purpose library. */
export interface CheckRow<In, Out> {
  readonly origin: 'published' | 'by hand' | 'other program'
  readonly place: string
  readonly input: In
  readonly expected: Partial<Out>
  /** Absolute, from the printed digits of the source. */
  readonly tolerance: number
}

export interface Method<In extends Quantities, Out extends Quantities> {
  readonly id: string
  readonly title: string
  /** LaTeX, in the symbols below. */
  readonly formula: string
  readonly symbols: Readonly<Record<keyof In | keyof Out, string>>
  readonly citations: readonly Citation[]
  /** What it leaves out or takes for granted, one sentence each. */
  readonly assumes: readonly string[]
  readonly compute: (input: In) => Out
  /** Null when the input is in the range of validity, else the reason why there is no number. */
  readonly notApplicable: (input: In) => string | null
  readonly checks: readonly CheckRow<In, Out>[]
}

// The registry holds methods of every shape; only the fields common to all of them are read from it.
export type AnyMethod = Method<any, any>
