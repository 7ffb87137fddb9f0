/** What stands in the way of a beam or a light. */
import type { Obscured } from '../../model/results/placement.js'
import type { Position, Tag, Vessel } from '../../model/vessel.js'
import { type Band, isInside, sectorsOfBox } from '../geometry.js'

/** Structures that reach into a band of elevations, each with its bearings. What the eye itself stands in is drawn too coarsely to say. */
export const hiddenBy = ({ structures }: Vessel, eye: Position, band: Band): Obscured['by'] =>
  structures.filter(structure => !isInside(structure, eye)).map(structure => ({ structureTag: structure.tag, sectors: sectorsOfBox(structure, eye, band) }))
    .filter(({ sectors }) => sectors.length > 0)

export const standsIn = ({ structures }: Vessel, eye: Position | null): readonly Tag[] =>
  (eye === null ? [] : structures.filter(structure => isInside(structure, eye)).map(({ tag }) => tag))
