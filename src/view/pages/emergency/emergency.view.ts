/** What to do and where to reach, one sheet for each emergency. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export const emergencyPages = (_context: ViewContext): readonly Page[] => []
