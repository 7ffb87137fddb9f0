/** Where things are, and pictures that show it. */
import type { Tag } from '../vessel.js'
import type { Position } from './placement.js'

/** From the least to the greatest of each coordinate. */
export interface Box { readonly fromM: Position; readonly toM: Position }

/** A picture of the vessel folder with numbered points. */
export interface Photograph {
  readonly file: string
  readonly caption: string
  readonly zoneTag: Tag | null
  readonly date: string | null
  readonly by: string | null
  readonly callOuts: readonly CallOut[]
}
export interface CallOut {
  readonly itemTag: Tag
  readonly fromLeftPercent: number
  readonly fromTopPercent: number
  readonly words: string | null
}

/** The yard's own drawing. Its lower left and upper right corner lie at these places on the boat. */
export interface ArrangementDrawing {
  readonly file: string
  readonly view: ArrangementView
  readonly lowerLeftM: Position
  readonly upperRightM: Position
}
/** `plan`: from above, bow to the right. `profile`: from the starboard side, bow to the right. */
export type ArrangementView = 'plan' | 'profile'
