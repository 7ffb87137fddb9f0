/** How much of a conduit's inside cross-section the cables in it may take (nec-chapter-9, table 1). */
import type { Limit } from '../../findings/finding.js'

const fillPercentByCount = [53, 31, 40] as const

/** Limit of the fill in percent: 53 for one cable, 31 for two, 40 for more. */
export function conduitFillLimit(cableCount: number): Limit {
  const row = Math.min(Math.max(cableCount, 1), 3) - 1
  const places = ['one conductor', 'two conductors', 'over two conductors']
  return { relation: 'at most', value: fillPercentByCount[row]!, citation: { source: 'nec-chapter-9', place: `table 1, ${places[row]}` } }
}
