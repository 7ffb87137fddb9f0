/** Documents for the bench and the boat: wires by zone, cable to buy, legends, test sheets. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export const workshopPages = (_context: ViewContext): readonly Page[] => []
