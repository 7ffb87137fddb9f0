import { roundingNoise } from '../../units/quantity.js'
import type { Method } from '../method.js'

export type CableToOrderInput = Readonly<{ laidLengthM: number; sparePercent: number; stepM: number }>
export type CableToOrderOutput = Readonly<{ orderLengthM: number }>

/**
 * Cable to buy for a length that is laid, in whole steps of what it is sold by.
 *
 * Formula   l_o = s · ⌈l · (1 + p/100) / s⌉
 * Units     l, l_o and the step s in m, spare p in %
 * Source    common-practice
 * Assumes   the spare covers waste at both ends of each piece; lengths that are exactly whole stay as they are
 */
export function cableToOrder(q: CableToOrderInput): CableToOrderOutput {
  const steps = (q.laidLengthM * (1 + q.sparePercent / 100)) / q.stepM
  // A sum of decimal fractions a last binary digit above a whole step needs no further one.
  return { orderLengthM: Math.ceil(steps * (1 - roundingNoise)) * q.stepM }
}

export const cableToOrderMethod: Method<CableToOrderInput, CableToOrderOutput> = {
  id: 'cable-to-order',
  title: 'Cable to order',
  formula: String.raw`l_o = s\left\lceil \frac{l\,(1 + p/100)}{s} \right\rceil`,
  symbols: { laidLengthM: 'l', sparePercent: 'p', stepM: 's', orderLengthM: 'l_o' },
  citations: [{ source: 'common-practice', place: 'a share on top for waste, rounded up to whole metres (feet)' }],
  assumes: ['The spare covers waste at both ends of each piece. Whether the pieces can be cut from one drum is for the buyer to see: the longest is named.'],
  compute: cableToOrder,
  notApplicable: q => (q.laidLengthM < 0 || q.sparePercent < 0 ? 'a length or the spare is below zero' : q.stepM > 0 ? null : 'the step is not above zero'),
  checks: [
    { origin: 'by hand', place: '37.4 m and 10 %: 37.4 · 1.1 = 41.14', input: { laidLengthM: 37.4, sparePercent: 10, stepM: 1 }, expected: { orderLengthM: 42 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '50 m and 10 % are 55 m and not 56', input: { laidLengthM: 50, sparePercent: 10, stepM: 1 }, expected: { orderLengthM: 55 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'sold by the foot: 6 m · 1.15 = 6.9 m, 22.64 ft, so 23 ft of 0.3048 m', input: { laidLengthM: 6, sparePercent: 15, stepM: 0.3048 }, expected: { orderLengthM: 7.0104 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'nothing laid, nothing to order', input: { laidLengthM: 0, sparePercent: 10, stepM: 1 }, expected: { orderLengthM: 0 }, tolerance: 1e-9 },
  ],
}
