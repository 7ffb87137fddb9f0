import type { Method } from '../method.js'

export type RadioHorizonInput = Readonly<{ ownHeightM: number; otherHeightM: number }>
export type RadioHorizonOutput = Readonly<{ rangeNmi: number; exactRangeKm: number }>

/**
 * Distance at which two antennas come into each other's radio horizon.
 *
 * Formula   d = 2.23 · (√h_1 + √h_2),   D = √(2 · 4/3 · 6371 / 1000) · (√h_1 + √h_2)
 * Units     h_1, h_2 heights above the sea [m]; d [NM], D the same over an earth of four thirds of its radius [km]
 * Source    atis-glossary for 2.23; itu-r-p310 for the four thirds
 * Assumes   open sea and a standard atmosphere; power is enough
 */
export function radioHorizon({ ownHeightM, otherHeightM }: RadioHorizonInput): RadioHorizonOutput {
  const roots = Math.sqrt(ownHeightM) + Math.sqrt(otherHeightM)
  return { rangeNmi: 2.23 * roots, exactRangeKm: Math.sqrt((2 * 4 * 6371) / (3 * 1000)) * roots }
}

/** Heights in metres, then NM by 2.23 and km by 4.12 as printed in tables. */
const rows = [[15, 15, 17.27, 31.91], [15, 100, 30.94, 57.16], [1.5, 1.5, 5.46, 10.09], [4, 0, 4.46, 8.24], [10, 4, 11.51, 21.27], [20, 2, 13.13, 24.25]] as const

export const radioHorizonMethod: Method<RadioHorizonInput, RadioHorizonOutput> = {
  id: 'radio-horizon',
  title: 'Radio range from the heights of two antennas',
  formula: String.raw`d = 2.23\,(\sqrt{h_1} + \sqrt{h_2}) \qquad D = \sqrt{2 \cdot \tfrac{4}{3} \cdot 6371 / 1000}\,(\sqrt{h_1} + \sqrt{h_2})`,
  symbols: { ownHeightM: 'h_1', otherHeightM: 'h_2', rangeNmi: 'd', exactRangeKm: 'D' },
  citations: [{ source: 'atis-glossary', place: 'radio horizon, 2.23 NM for the root of a metre' }, { source: 'itu-r-p310', place: 'effective radius of the earth' }],
  assumes: ['Open sea and a standard atmosphere; power is enough. Weather can halve or double it.', 'D is the same distance by the exact sum in kilometres; it differs from d by the rounding of 2.23.'],
  compute: radioHorizon,
  notApplicable: q => (q.ownHeightM >= 0 && q.otherHeightM >= 0 ? null : 'it is below the waterline'),
  checks: rows.map(([ownHeightM, otherHeightM, rangeNmi, exactRangeKm]) => ({
    origin: 'by hand', place: `${ownHeightM} m and ${otherHeightM} m: 2.23 · (√${ownHeightM} + √${otherHeightM}); in km with 4.12 in place of 4.1218`,
    input: { ownHeightM, otherHeightM }, expected: { rangeNmi, exactRangeKm }, tolerance: 0.03,
  })),
}
