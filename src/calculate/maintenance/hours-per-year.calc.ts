import { commonPractice } from '../../references/bibliography.js'
import type { Method } from '../method.js'

export type HoursPerYearInput = Readonly<{ firstReadH: number; lastReadH: number; elapsedDays: number }>
export type HoursPerYearOutput = Readonly<{ perYearH: number }>

/** A mean year of the calendar. */
export const yearDays = 365.25

/**
 * Running hours in a year, from the first and the last reading of a counter.
 *
 * Formula   r = 365.25 · (h₂ − h₁) / t
 * Units     h [h], t [d], r [h in a year]
 * Source    common-practice: the past tells the future
 * Assumes   she is used as before; readings over less than a year carry their season with them
 */
export const hoursPerYear = (q: HoursPerYearInput): HoursPerYearOutput => ({ perYearH: (yearDays * (q.lastReadH - q.firstReadH)) / q.elapsedDays })

export const hoursPerYearMethod: Method<HoursPerYearInput, HoursPerYearOutput> = {
  id: 'maintenance-hours-per-year',
  title: 'Running hours in a year',
  formula: String.raw`r = 365.25\,(h_2 - h_1)/t`,
  symbols: { firstReadH: 'h_1', lastReadH: 'h_2', elapsedDays: 't', perYearH: 'r' },
  citations: [commonPractice('the past tells the future')],
  assumes: ['She is used as before. Readings over less than a year carry their season with them.'],
  compute: hoursPerYear,
  notApplicable: q => (q.elapsedDays > 0 ? (q.lastReadH > q.firstReadH ? null : 'the counter has not moved between its readings') : 'there are no two readings of different days'),
  checks: [
    { origin: 'by hand', place: '365.25 · (96.4 − 12.0) / 180 = 30 827.1 / 180', input: { firstReadH: 12, lastReadH: 96.4, elapsedDays: 180 }, expected: { perYearH: 171.26167 }, tolerance: 1e-4 },
    { origin: 'by hand', place: '150 h in 365.25 d', input: { firstReadH: 0, lastReadH: 150, elapsedDays: 365.25 }, expected: { perYearH: 150 }, tolerance: 1e-9 },
  ],
}
