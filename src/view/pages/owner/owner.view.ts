/** The owner’s part: finding one’s way on board, and what is done day by day. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export const ownerPages = (_context: ViewContext): readonly Page[] => []
