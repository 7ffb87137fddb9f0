import type { Method } from '../method.js'

export type BackboneLengthInput = Readonly<{ cableLengthM: number; firstDropM: number; firstDistanceM: number; lastDropM: number; lastDistanceM: number }>
export type BackboneLengthOutput = Readonly<{ backboneLengthM: number }>

/**
 * Length of a backbone. Where a drop near an end is longer than the way from its tee to that end, the drop is the end.
 *
 * Formula   l = l_c + max(0, d₁ − e₁) + max(0, d₂ − e₂)
 * Units     l_c all cables of the backbone, d drop near an end, e from its tee to that end; l [m]
 * Source    bus-cable-guides
 */
export function backboneLength(q: BackboneLengthInput): BackboneLengthOutput {
  return { backboneLengthM: q.cableLengthM + Math.max(0, q.firstDropM - q.firstDistanceM) + Math.max(0, q.lastDropM - q.lastDistanceM) }
}

export const backboneLengthMethod: Method<BackboneLengthInput, BackboneLengthOutput> = {
  id: 'backbone-length',
  title: 'Length of a backbone',
  formula: String.raw`l = l_c + \max(0,\; d_1 - e_1) + \max(0,\; d_2 - e_2)`,
  symbols: { cableLengthM: 'l_c', firstDropM: 'd_1', firstDistanceM: 'e_1', lastDropM: 'd_2', lastDistanceM: 'e_2', backboneLengthM: 'l' },
  citations: [{ source: 'bus-cable-guides', place: 'a drop longer than the way from its tee to the terminator counts in the backbone' }],
  assumes: ['At each end the drop that reaches furthest beyond it counts.'],
  compute: backboneLength,
  notApplicable: q => (Math.min(...Object.values(q)) >= 0 ? null : 'a length is below zero'),
  checks: [
    {
      origin: 'by hand', place: '30 m of cable; at one end a drop of 4 m on a tee 1 m from the terminator, at the other one of 2 m on a tee 3 m from it: 30 + 3 + 0',
      input: { cableLengthM: 30, firstDropM: 4, firstDistanceM: 1, lastDropM: 2, lastDistanceM: 3 }, expected: { backboneLengthM: 33 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'terminators plugged into the last tees, drops of 2 m and 2.5 m there: 19.7 + 2 + 2.5',
      input: { cableLengthM: 19.7, firstDropM: 2, firstDistanceM: 0, lastDropM: 2.5, lastDistanceM: 0 }, expected: { backboneLengthM: 24.2 }, tolerance: 1e-9,
    },
  ],
}
