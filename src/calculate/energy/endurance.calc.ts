import type { Method } from '../method.js'

export type EnduranceInput = Readonly<{
  loadCurrentA: number
  capacityAh: number
  ratedTimeH: number
  peukertNumber: number
  depthOfDischargePercent: number
}>
export type EnduranceOutput = Readonly<{ enduranceH: number; deliveredAh: number }>

/**
 * How long a full battery carries a steady load with nothing charging it, and what it gives in that time.
 *
 * Formula   t = p / 100 · H · (C / (I · H))^k,   Q = I · t;   k = 1 where I ≤ C / H
 * Units     p depth of discharge [%], C capacity in H hours [Ah], H [h], I load [A], k Peukert's exponent; t [h], Q [Ah]
 * Source    peukert-1897, in the form with the rated time. C / I^k with a capacity in 20 h is another formula and gives a wrong time.
 * Assumes   below the rated current nothing more than the rated capacity is counted on
 */
export function endurance(q: EnduranceInput): EnduranceOutput {
  const share = q.capacityAh / (q.loadCurrentA * q.ratedTimeH)
  const enduranceH = (q.depthOfDischargePercent / 100) * q.ratedTimeH * share ** (share < 1 ? q.peukertNumber : 1)
  return { enduranceH, deliveredAh: q.loadCurrentA * enduranceH }
}

/** Rows of one battery: C in H hours, exponent k, load I. */
const row = (
  origin: 'published' | 'by hand', place: string, [capacityAh, peukertNumber, loadCurrentA]: readonly [number, number, number], [enduranceH, deliveredAh]: readonly [number, number],
  tolerance = 0.005,
) => ({
  origin, place, input: { loadCurrentA, capacityAh, ratedTimeH: 20, peukertNumber, depthOfDischargePercent: 100 }, expected: { enduranceH, deliveredAh }, tolerance,
})

export const enduranceMethod: Method<EnduranceInput, EnduranceOutput> = {
  id: 'endurance',
  title: 'Endurance of a battery',
  formula: String.raw`t = \frac{p}{100}\,H\left(\frac{C}{I\,H}\right)^{k} \qquad Q = I\,t \qquad k = 1 \text{ where } I \le C/H`,
  symbols: { loadCurrentA: 'I', capacityAh: 'C', ratedTimeH: 'H', peukertNumber: 'k', depthOfDischargePercent: 'p', enduranceH: 't', deliveredAh: 'Q' },
  citations: [{ source: 'peukert-1897', place: 'in the form with the rated time' }],
  assumes: ['The load is steady, the battery full, as good as new and near 25 °C.', 'Below the rated current no more than the rated capacity is counted on.'],
  compute: endurance,
  notApplicable: q => (q.loadCurrentA <= 0 ? 'nothing draws on it'
    : q.capacityAh > 0 && q.ratedTimeH > 0 && q.peukertNumber >= 1 && q.depthOfDischargePercent > 0 && q.depthOfDischargePercent <= 100 ? null
      : 'the capacity, its rated time, the exponent or the depth of discharge is out of range'),
  checks: [
    row('by hand', '100 Ah in 20 h at 5 A, its rated current: 20 h', [100, 1.2, 5], [20, 100]),
    row('published', '100 Ah in 20 h at 10 A with k = 1.2, the example in wide circulation (from memory): 8.7 h in place of 10 h', [100, 1.2, 10], [8.706, 87.06]),
    row('by hand', '100 Ah at 20 A with k = 1.2: 20 · (100/400)^1.2', [100, 1.2, 20], [3.789, 75.79]),
    row('by hand', '100 Ah at 10 A with k = 1.1: 20 · (100/200)^1.1', [100, 1.1, 10], [9.33, 93.3]),
    row('by hand', '250 Ah at 20 A with k = 1.3: 20 · (250/400)^1.3; a public page prints 5.0886 h by C / I^k, which is wrong', [250, 1.3, 20], [10.856, 217.12]),
    row('by hand', '200 Ah at 25 A with k = 1.25: 20 · (200/500)^1.25', [200, 1.25, 25], [6.362, 159.05]),
    row('by hand', '100 Ah at 50 A with k = 1.05: 20 · (100/1000)^1.05', [100, 1.05, 50], [1.783, 89.13]),
  ],
}
