/** How far along the conductor something is from the shore inlet. */
import { cableLengthM, type RoutingResults, type Segment } from '../../model/results.js'

export type Lengths = RoutingResults['byCable']

/** Length of cables in a row, or null when that of one of them is not known. */
export function lengthOf(lengths: Lengths, segments: readonly Segment[]): number | null {
  return segments.reduce<number | null>((sum, { cableTag }) => {
    const lengthM = cableLengthM(lengths.get(cableTag))
    return sum === null || lengthM === null ? null : sum + lengthM
  }, 0)
}
