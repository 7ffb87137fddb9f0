/** Every label there is to print. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export const labelPages = (_context: ViewContext): readonly Page[] => []
