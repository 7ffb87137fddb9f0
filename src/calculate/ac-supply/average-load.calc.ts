import type { Method } from '../method.js'

export type AverageLoadInput = Readonly<{ currentA: number; dutyPercent: number; runningTimeH: number }>
export type AverageLoadOutput = Readonly<{ averageCurrentA: number }>

/**
 * What a load takes on average of the day.
 *
 * Formula   I_m = I · d/100 · t/24
 * Units     I while it is on [A], d share of the time in its hours [%], t those hours in a day [h]; I_m [A]
 * Source    circuit-theory
 */
export function averageLoad(q: AverageLoadInput): AverageLoadOutput {
  return { averageCurrentA: (q.currentA * q.dutyPercent * q.runningTimeH) / (100 * 24) }
}

export const averageLoadMethod: Method<AverageLoadInput, AverageLoadOutput> = {
  id: 'ac-average-load',
  title: 'What an a.c. load takes on average of the day',
  formula: String.raw`I_m = I\,\frac{d}{100}\,\frac{t}{24}`,
  symbols: { currentA: 'I', dutyPercent: 'd', runningTimeH: 't', averageCurrentA: 'I_m' },
  citations: [{ source: 'circuit-theory', place: 'mean over a day of 24 h' }],
  assumes: [],
  compute: averageLoad,
  notApplicable: q => (q.runningTimeH >= 0 && q.runningTimeH <= 24 ? null : 'a day has 24 hours'),
  checks: [
    {
      origin: 'by hand', place: 'kettle of 8.7 A for half an hour: 8.7 · 0.5 / 24',
      input: { currentA: 8.7, dutyPercent: 100, runningTimeH: 0.5 }, expected: { averageCurrentA: 0.18125 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'air conditioner of 4 A, half of the time from 12 to 24 h: 4 · 0.5 · 0.5',
      input: { currentA: 4, dutyPercent: 50, runningTimeH: 12 }, expected: { averageCurrentA: 1 }, tolerance: 1e-9,
    },
  ],
}
