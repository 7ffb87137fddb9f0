import type { Method } from '../method.js'

export type SightDistanceInput = Readonly<{ ownHeightM: number; otherHeightM: number }>
export type SightDistanceOutput = Readonly<{ rangeNmi: number }>

/**
 * Distance at which an eye sees the top of what stands up from the sea.
 *
 * Formula   d = 2.08 · (√h_1 + √h_2)
 * Units     h_1, h_2 heights above the sea [m]; d [NM]
 * Source    american-navigator
 * Assumes   open sea, usual refraction
 */
export function sightDistance({ ownHeightM, otherHeightM }: SightDistanceInput): SightDistanceOutput {
  return { rangeNmi: 2.08 * (Math.sqrt(ownHeightM) + Math.sqrt(otherHeightM)) }
}

const rows = [[15, 15, 16.11], [15, 100, 28.86], [1.5, 1.5, 5.09], [4, 0, 4.16], [10, 4, 10.74], [20, 2, 12.24]] as const

export const sightDistanceMethod: Method<SightDistanceInput, SightDistanceOutput> = {
  id: 'sight-distance',
  title: 'Range of sight from the heights of eye and object',
  formula: String.raw`d = 2.08\,(\sqrt{h_1} + \sqrt{h_2})`,
  symbols: { ownHeightM: 'h_1', otherHeightM: 'h_2', rangeNmi: 'd' },
  citations: [{ source: 'american-navigator', place: 'distance of the visible horizon, 2.08 NM for the root of a metre' }],
  assumes: ['Open sea and clear weather.'],
  compute: sightDistance,
  notApplicable: q => (q.ownHeightM >= 0 && q.otherHeightM >= 0 ? null : 'it is below the waterline'),
  checks: rows.map(([ownHeightM, otherHeightM, rangeNmi]) => ({
    origin: 'by hand', place: `${ownHeightM} m and ${otherHeightM} m: 2.08 · (√${ownHeightM} + √${otherHeightM})`,
    input: { ownHeightM, otherHeightM }, expected: { rangeNmi }, tolerance: 0.006,
  })),
}
