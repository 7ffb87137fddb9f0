/** Where everything is: plan, profile, photographs. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export const locationPages = (_context: ViewContext): readonly Page[] => []
