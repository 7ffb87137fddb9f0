import type { Method } from '../method.js'

export type CableLengthInput = Readonly<{ wirewayLengthM: number; tailLengthM: number; serviceLoopM: number }>
export type CableLengthOutput = Readonly<{ cableLengthM: number }>

/**
 * Length of a cable that runs through wireways.
 *
 * Formula   l = l_w + 2 · l_t + l_s
 * Units     all in m: l_w sum of the wireways, l_t tail at each end, l_s service loop
 * Source    common-practice
 * Assumes   the same tail at both ends, from the wireway to the terminal
 */
export function cableLength(q: CableLengthInput): CableLengthOutput {
  return { cableLengthM: q.wirewayLengthM + 2 * q.tailLengthM + q.serviceLoopM }
}

export const cableLengthMethod: Method<CableLengthInput, CableLengthOutput> = {
  id: 'cable-length',
  title: 'Length of a cable from its route',
  formula: String.raw`l = l_w + 2\,l_t + l_s`,
  symbols: { wirewayLengthM: 'l_w', tailLengthM: 'l_t', serviceLoopM: 'l_s', cableLengthM: 'l' },
  citations: [{ source: 'common-practice', place: 'route length, a tail at each end, a service loop' }],
  assumes: ['The tail from the wireway to the terminal is the same at both ends.'],
  compute: cableLength,
  notApplicable: q => (Math.min(q.wirewayLengthM, q.tailLengthM, q.serviceLoopM) >= 0 ? null : 'a length is below zero'),
  checks: [
    {
      origin: 'by hand', place: '2.5 m + 4.0 m of wireway, 0.4 m at each end, 0.5 m loop: 6.5 + 0.8 + 0.5',
      input: { wirewayLengthM: 6.5, tailLengthM: 0.4, serviceLoopM: 0.5 }, expected: { cableLengthM: 7.8 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'within one zone, 0.6 m at each end: 2 · 0.6',
      input: { wirewayLengthM: 0, tailLengthM: 0.6, serviceLoopM: 0 }, expected: { cableLengthM: 1.2 }, tolerance: 1e-9,
    },
  ],
}
