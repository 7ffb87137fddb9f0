/** Load analysis and energy. */
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import type { Page } from '../view-model.js'

export function energyPages(_context: ViewContext): readonly Page[] {
  return [{ key: fixedPages.energy, title: 'Load analysis and energy', kicker: null, lead: null, printed: null, trail: [], blocks: [] }]
}
