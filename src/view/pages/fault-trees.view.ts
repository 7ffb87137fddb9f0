/** Where to look for faults of a sort. */
import type { ViewContext } from '../context.js'
import type { Page } from '../view-model.js'

export const faultTreePages = (_context: ViewContext): readonly Page[] => []
