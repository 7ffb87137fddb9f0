import type { Method } from '../method.js'

export type RadarHorizonInput = Readonly<{ ownHeightM: number; otherHeightM: number }>
export type RadarHorizonOutput = Readonly<{ rangeNmi: number }>

/**
 * Distance at which a radar sees what stands up from the sea.
 *
 * Formula   d = 2.21 · (√h_1 + √h_2)
 * Units     h_1, h_2 heights above the sea [m]; d [NM]
 * Source    american-navigator
 * Assumes   open sea, usual refraction
 */
export function radarHorizon({ ownHeightM, otherHeightM }: RadarHorizonInput): RadarHorizonOutput {
  return { rangeNmi: 2.21 * (Math.sqrt(ownHeightM) + Math.sqrt(otherHeightM)) }
}

const rows = [[15, 15, 17.12], [15, 100, 30.66], [1.5, 1.5, 5.41], [4, 0, 4.42], [10, 4, 11.41], [20, 2, 13.01]] as const

export const radarHorizonMethod: Method<RadarHorizonInput, RadarHorizonOutput> = {
  id: 'radar-horizon',
  title: 'Radar range from the heights of scanner and target',
  formula: String.raw`d = 2.21\,(\sqrt{h_1} + \sqrt{h_2})`,
  symbols: { ownHeightM: 'h_1', otherHeightM: 'h_2', rangeNmi: 'd' },
  citations: [{ source: 'american-navigator', place: 'distance of the radar horizon, 2.21 NM for the root of a metre' }],
  assumes: ['Open sea, usual refraction; the target reflects enough at that height. Rain and sea clutter take away much of it.'],
  compute: radarHorizon,
  notApplicable: q => (q.ownHeightM >= 0 && q.otherHeightM >= 0 ? null : 'it is below the waterline'),
  checks: rows.map(([ownHeightM, otherHeightM, rangeNmi]) => ({
    origin: 'by hand', place: `${ownHeightM} m and ${otherHeightM} m: 2.21 · (√${ownHeightM} + √${otherHeightM})`,
    input: { ownHeightM, otherHeightM }, expected: { rangeNmi }, tolerance: 0.006,
  })),
}
