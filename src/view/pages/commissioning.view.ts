/** Commissioning. */
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import type { Page } from '../view-model.js'

export function commissioningPages(_context: ViewContext): readonly Page[] {
  return [{ key: fixedPages.commissioning, title: 'Commissioning', kicker: null, lead: null, printed: null, trail: [], blocks: [] }]
}
