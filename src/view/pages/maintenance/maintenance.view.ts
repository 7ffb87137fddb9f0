/** What is due, by season, with parts, and sheets to write on. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'
import { checklistPages } from './checklists.view.js'
import { duePage } from './due.view.js'
import { howPage } from './how.view.js'
import { logPage } from './log.view.js'
import { partsPage } from './parts.view.js'

/** A vessel of which nothing needs upkeep has no such chapter. */
export const maintenancePages = (context: ViewContext): readonly Page[] =>
  (context.results.maintenance.jobs.length === 0 ? [] : [duePage(context), ...checklistPages(context), howPage(context), partsPage(context), logPage(context)])
