/** Highest d.c. resistance at 20 °C of flexible copper conductors, class 5 (iec-60228), in Ω/km. */
import type { Citation } from '../bibliography.js'

export const class5Citation: Citation = { source: 'iec-60228', place: 'class 5, highest resistance at 20 °C' }

export interface Class5Row { readonly crossSectionMm2: number; readonly plainOhmPerKm: number; readonly tinnedOhmPerKm: number }

const rows: readonly (readonly [crossSectionMm2: number, plainOhmPerKm: number, tinnedOhmPerKm: number])[] = [
  [0.5, 39, 40.1],
  [0.75, 26, 26.7],
  [1, 19.5, 20],
  [1.5, 13.3, 13.7],
  [2.5, 7.98, 8.21],
  [4, 4.95, 5.09],
  [6, 3.3, 3.39],
  [10, 1.91, 1.95],
  [16, 1.21, 1.24],
  [25, 0.78, 0.795],
  [35, 0.554, 0.565],
  [50, 0.386, 0.393],
  [70, 0.272, 0.277],
  [95, 0.206, 0.21],
  [120, 0.161, 0.164],
  [150, 0.129, 0.132],
]

/** Thin to thick. */
export const class5Rows: readonly Class5Row[] =
  rows.map(([crossSectionMm2, plainOhmPerKm, tinnedOhmPerKm]) => ({ crossSectionMm2, plainOhmPerKm, tinnedOhmPerKm }))

/** The row of the size, or of the next thinner one, whose resistance is higher; null below the smallest size. */
export const class5Row = (crossSectionMm2: number): Class5Row | null =>
  class5Rows.findLast(row => crossSectionMm2 >= row.crossSectionMm2) ?? null
