/** Protection and short circuit. */
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import type { Page } from '../view-model.js'

export function protectiveDevicesPages(_context: ViewContext): readonly Page[] {
  return [{ key: fixedPages.protectiveDevices, title: 'Protection and short circuit', kicker: null, lead: null, printed: null, trail: [], blocks: [] }]
}
