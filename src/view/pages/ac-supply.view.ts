/** Mains and shore power. */
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import type { Page } from '../view-model.js'

export function acSupplyPages(_context: ViewContext): readonly Page[] {
  return [{ key: fixedPages.acSupply, title: 'Mains and shore power', kicker: null, lead: null, printed: null, trail: [], blocks: [] }]
}
