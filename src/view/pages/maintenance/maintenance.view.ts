/** What is due, by season, with parts, and sheets to write on. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export const maintenancePages = (_context: ViewContext): readonly Page[] => []
