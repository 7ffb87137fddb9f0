/** What the pack holds of what is asked, how far the work is, and the sheet to sign. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export const completenessPages = (_context: ViewContext): readonly Page[] => []
