import type { Method } from '../method.js'

export type DischargeInput = Readonly<{ currentA: number; timeH: number; capacityAh: number; ratedTimeH: number; peukertNumber: number }>
export type DischargeOutput = Readonly<{ drawnAh: number }>

/**
 * What a current takes out of a battery, counted in its rated capacity: above the rated current more than flows.
 *
 * Formula   Q = I · t · max(1, I · H / C)^(k − 1)
 * Units     I [A], t [h], C capacity in H hours [Ah], k Peukert's exponent; Q [Ah]
 * Source    peukert-1897: at this rate the battery is empty after the time of its formula
 */
export function discharge(q: DischargeInput): DischargeOutput {
  const overRated = Math.max(1, (q.currentA * q.ratedTimeH) / q.capacityAh)
  return { drawnAh: q.currentA * q.timeH * overRated ** (q.peukertNumber - 1) }
}

export const dischargeMethod: Method<DischargeInput, DischargeOutput> = {
  id: 'discharge',
  title: 'What a current takes out of a battery',
  formula: String.raw`Q = I\,t\,\max\!\left(1,\; \frac{I\,H}{C}\right)^{k-1}`,
  symbols: { currentA: 'I', timeH: 't', capacityAh: 'C', ratedTimeH: 'H', peukertNumber: 'k', drawnAh: 'Q' },
  citations: [{ source: 'peukert-1897', place: 'in the form with the rated time' }],
  assumes: ['Below the rated current what flows is what is taken; the exponent is 1 for a battery that is not lead-acid.'],
  compute: discharge,
  notApplicable: q => (q.capacityAh > 0 && q.ratedTimeH > 0 && q.peukertNumber >= 1 && q.currentA >= 0 ? null : 'the capacity, its rated time, the exponent or the current is out of range'),
  checks: [
    {
      origin: 'published', place: '10 A empties 100 Ah in 20 h with k = 1.2 in 8.706 h (from memory): all 100 Ah are drawn',
      input: { currentA: 10, timeH: 8.706, capacityAh: 100, ratedTimeH: 20, peukertNumber: 1.2 }, expected: { drawnAh: 100 }, tolerance: 0.01,
    },
    {
      origin: 'by hand', place: '2 A for 3 h, below the rated 5 A: 6 Ah',
      input: { currentA: 2, timeH: 3, capacityAh: 100, ratedTimeH: 20, peukertNumber: 1.2 }, expected: { drawnAh: 6 }, tolerance: 1e-9,
    },
  ],
}
