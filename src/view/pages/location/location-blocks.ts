/** What other pages show of where things are: a small plan with a few items marked, and the photographs that show them. */
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import type { Block } from '../../view-model.js'

export interface LocationDrawingOptions {
  /** Unique on its page. */
  readonly id: string
  readonly caption: string
}

/** The boat from above with just these items marked and called by their tags; nothing where no zone has a box. */
export const locationDrawing = (_context: ViewContext, _tags: readonly Tag[], _options: LocationDrawingOptions): readonly Block[] => []

/** The photographs with a call-out at one of these items. */
export const photographBlocks = (_context: ViewContext, _tags: readonly Tag[]): readonly Block[] => []
