/** What every check of a reading is made of: which way it is off, and the findings that follow. */
import { type AnyFindingKind, type Finding, find, type Limit } from '../../findings/finding.js'
import type { CheckKind, Deviation, Measured, ReadingCheck } from '../../model/results/commissioning.js'
import type { Comparison } from '../../model/results.js'
import type { Measurement, Tag } from '../../model/vessel.js'
import type { Citation } from '../../references/bibliography.js'
import { compare } from '../compare.js'
import { meaningOf } from './meanings.js'

export interface Checked { readonly check: Omit<ReadingCheck, 'supersededBy'>; readonly findings: readonly Finding[] }

/** A comparison with the kind of finding that it brings when it is not met. */
export interface Held {
  readonly comparison: Comparison
  readonly kind: AnyFindingKind
  /** Further words and figures of its finding. */
  readonly context?: Readonly<Record<string, string>>
  readonly evidence?: Readonly<Record<string, number>>
}

export const held = (
  quantity: string, value: number, limit: Limit, kind: AnyFindingKind, words: Pick<Held, 'context' | 'evidence'> = {},
): Held => ({ comparison: compare(quantity, value, limit), kind, ...words })

/** What the data of the vessel say of it. */
export const recorded = (place: string): Citation => ({ source: 'vessel-data', place })

export interface CheckOf {
  readonly measurement: Measurement
  readonly kind: CheckKind
  /** In the sentence of a finding: `voltage drop of A1.7 to P1`. */
  readonly of: string
  readonly field: keyof Measurement
  readonly loadTag: Tag | null
  readonly measured: Measured
  readonly calculated?: ReadingCheck['calculated']
  readonly workings?: ReadingCheck['workings']
  readonly limits?: readonly Held[]
  readonly tolerances?: readonly Held[]
  readonly gaps?: readonly string[]
}

export function checked({ measurement, kind, of, field, loadTag, measured, calculated = null, workings = [], limits = [], tolerances = [], gaps = [] }: CheckOf): Checked {
  const deviation = deviationOf(measured, limits, tolerances)
  const meaning = deviation === null ? null : meaningOf(kind, deviation)
  const remedy = meaning?.lookFirst ?? ''
  const missed = [...limits, ...tolerances].filter(({ comparison }) => !comparison.within)
  return {
    check: {
      kind, number: measurement.number, date: measurement.date, subjectTag: measurement.subjectTag, loadTag, measured, calculated, workings, deviation, meaning, gaps,
      limits: limits.map(({ comparison }) => comparison), tolerances: tolerances.map(({ comparison }) => comparison),
    },
    findings: missed.map(({ comparison, kind: finding, context, evidence }) => find(finding, {
      subject: readingOf(measurement), field, evidence: { [comparison.quantity]: comparison.value, ...evidence }, limit: comparison.limit,
      context: { of, remedy, ...context },
    })),
  }
}

export const readingOf = ({ number }: Measurement) => ({ kind: 'measurement', id: number })

/** What was calculated says more than a limit does. */
export function deviationOf(measured: Measured, limits: readonly Pick<Held, 'comparison'>[], tolerances: readonly Pick<Held, 'comparison'>[]): Deviation | null {
  if ('words' in measured) return measured.words === 'reversed' ? 'reversed' : null
  const off = tolerances.find(({ comparison }) => !comparison.within)
  if (off !== undefined) return signOf(off)
  const missed = limits.find(({ comparison }) => !comparison.within)
  if (missed === undefined) return null
  return missed.comparison.quantity === 'measuredDropPercent' && tolerances.length > 0 ? 'too high as calculated' : signOf(missed)
}
const signOf = ({ comparison }: Pick<Held, 'comparison'>): Deviation => (comparison.limit.relation === 'at most' ? 'above' : 'below')
