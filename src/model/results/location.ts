/** Where things are: numbers on the plan, boxes of zones, what pictures show. */
import type { Finding } from '../../findings/finding.js'
import type { Position, Tag } from '../vessel.js'
import type { Gap } from './gap.js'

/** Of an item that is there. */
export interface ItemPlace {
  readonly zoneTag: Tag | null
  /** Within its zone from 1 in the order of the tags; null without a zone. */
  readonly placeNumber: number | null
  /** As recorded; null where only the zone is known. */
  readonly positionM: Position | null
  /** Where a drawing shows it: at its position, else somewhere in the box of its zone; null where neither is known. */
  readonly drawnAtM: Position | null
}

export interface LocationResults {
  readonly byItem: ReadonlyMap<Tag, ItemPlace>
  /** Zones that have a box, by the levels on which a plan shows them, the lowest first: on one level none lies over another. */
  readonly levels: readonly (readonly Tag[])[]
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
