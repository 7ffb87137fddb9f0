/** Where a drawing shows what is known to be somewhere in a zone. */
import type { Box, Position } from '../../model/vessel.js'

/**
 * So many places in a box: the middles of equal cells, as seen from above, that hold none of the positions taken; from port to
 * starboard, and in each row from aft forward. As few cells as give enough free ones.
 */
export function placesWithin(box: Box, takenM: readonly Position[], placeCount: number): readonly Position[] {
  if (placeCount === 0) return []
  const most = placeCount + takenM.length
  for (let cellCount = placeCount; ; cellCount += 1) {
    const cells = cellsOf(box, cellCount)
    const free = cells.filter(({ holds }) => !takenM.some(holds))
    // Of a box without breadth or length a position may lie in all cells.
    if (free.length >= placeCount || cellCount === most) return [...free, ...cells].slice(0, placeCount).map(({ middleM }) => middleM)
  }
}

interface Cell { readonly middleM: Position; holds(position: Position): boolean }

/** As nearly square as their number and the box allow. */
function cellsOf({ fromM, toM }: Box, atLeastCount: number): readonly Cell[] {
  const [lengthM, breadthM] = [toM[0] - fromM[0], toM[1] - fromM[1]]
  const asSquares = Math.sqrt((atLeastCount * lengthM) / breadthM)
  const columnCount = Math.min(atLeastCount, Math.max(1, Number.isNaN(asSquares) ? 1 : Math.round(asSquares)))
  const rowCount = Math.ceil(atLeastCount / columnCount)
  const [stepM, stepAcrossM] = [lengthM / columnCount, breadthM / rowCount]
  return Array.from({ length: rowCount * columnCount }, (_, i): Cell => {
    const middleM: Position = [
      fromM[0] + ((i % columnCount) + 0.5) * stepM, toM[1] - (Math.floor(i / columnCount) + 0.5) * stepAcrossM, (fromM[2] + toM[2]) / 2,
    ]
    return { middleM, holds: ([forwardM, toPortM]) => Math.abs(forwardM - middleM[0]) <= stepM / 2 && Math.abs(toPortM - middleM[1]) <= stepAcrossM / 2 }
  })
}
