/** How to use the equipment, kind by kind. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export const operatingPages = (_context: ViewContext): readonly Page[] => []
