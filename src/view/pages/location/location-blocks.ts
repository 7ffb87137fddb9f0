/** Where things are, as blocks for other pages. */
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import type { Block } from '../../view-model.js'

export const locationDrawing = (_context: ViewContext, _tags: readonly Tag[], _options: { readonly compact?: boolean } = {}): readonly Block[] => []
export const photographBlocks = (_context: ViewContext, _tags: readonly Tag[]): readonly Block[] => []
