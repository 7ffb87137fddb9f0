import type { Method } from '../method.js'

export type LeastRatingInput = Readonly<{ currentA: number; continuousFactor: number }>
export type LeastRatingOutput = Readonly<{ leastRatedCurrentA: number }>

/**
 * The least rating of a protective device that lets a load run.
 *
 * Formula   I_n ≥ c · I
 * Units     I [A], c: 1, or 1.25 for a load that runs for hours; I_n [A]
 * Source    iec-60364-4-43 (design current at most the rated current); the factor 1.25 is common-practice
 */
export function leastRating(q: LeastRatingInput): LeastRatingOutput {
  return { leastRatedCurrentA: q.continuousFactor * q.currentA }
}

/** Of a load that runs for hours. */
export const hoursLongFactor = 1.25

export const leastRatingMethod: Method<LeastRatingInput, LeastRatingOutput> = {
  id: 'least-rating',
  title: 'Least rating of a protective device for a load',
  formula: String.raw`I_n \ge c\,I`,
  symbols: { currentA: 'I', continuousFactor: 'c', leastRatedCurrentA: 'I_n' },
  citations: [
    { source: 'iec-60364-4-43', place: 'design current at most the rated current' },
    { source: 'common-practice', place: 'a device that carries its load for hours is rated 125 % of it' },
  ],
  assumes: ['The next standard rating above it is taken.', 'Starting currents are left out: follow the maker of a motor.'],
  compute: leastRating,
  notApplicable: q => (q.currentA > 0 && q.continuousFactor >= 1 ? null : 'the current is not above zero'),
  checks: [
    { origin: 'by hand', place: '8 A for hours: 1.25 · 8', input: { currentA: 8, continuousFactor: 1.25 }, expected: { leastRatedCurrentA: 10 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '8 A now and then: 1 · 8', input: { currentA: 8, continuousFactor: 1 }, expected: { leastRatedCurrentA: 8 }, tolerance: 1e-9 },
  ],
}
