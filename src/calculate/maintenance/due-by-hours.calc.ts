import { commonPractice } from '../../references/bibliography.js'
import type { Method } from '../method.js'
import { yearDays } from './hours-per-year.calc.js'

export type HoursDueInput = Readonly<{ startH: number; everyRunningH: number; readH: number; perYearH: number }>
export type HoursDueOutput = Readonly<{ dueH: number; aheadDays: number }>

/**
 * What a counter shows when a task falls due again, and in how many days after its last reading that is.
 *
 * Formula   H = h₀ + n,   t = ⌊365.25 · (H − h) / r⌋
 * Units     h₀, n, h, H [h], r [h in a year], t [d], negative where it lies back
 * Source    common-practice: whole days, rounded to the earlier one
 * Assumes   she is used as before
 */
export function hoursDue(q: HoursDueInput): HoursDueOutput {
  const dueH = q.startH + q.everyRunningH
  return { dueH, aheadDays: Math.floor((yearDays * (dueH - q.readH)) / q.perYearH) }
}

export const hoursDueMethod: Method<HoursDueInput, HoursDueOutput> = {
  id: 'maintenance-due-by-hours',
  title: 'Next due by running hours',
  formula: String.raw`H = h_0 + n \qquad t = \left\lfloor 365.25\,(H - h)/r \right\rfloor`,
  symbols: { startH: 'h_0', everyRunningH: 'n', readH: 'h', perYearH: 'r', dueH: 'H', aheadDays: 't' },
  citations: [commonPractice('whole days, rounded to the earlier one')],
  assumes: ['She is used as before.'],
  compute: hoursDue,
  notApplicable: q => (q.perYearH > 0 ? null : 'the running hours in a year are not above zero'),
  checks: [
    { origin: 'by hand', place: '12 + 250 = 262 h; 365.25 · (262 − 96.4) / 150 = 403.24 d', input: { startH: 12, everyRunningH: 250, readH: 96.4, perYearH: 150 }, expected: { dueH: 262, aheadDays: 403 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '50 h after the start; 365.25 · (50 − 60) / 365.25 = −10 d', input: { startH: 0, everyRunningH: 50, readH: 60, perYearH: 365.25 }, expected: { dueH: 50, aheadDays: -10 }, tolerance: 1e-9 },
  ],
}
