/** Fault tracing. */
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import type { Page } from '../view-model.js'

export function faultTracingPages(_context: ViewContext): readonly Page[] {
  return [{ key: fixedPages.faultTracing, title: 'Fault tracing', kicker: null, lead: null, printed: null, trail: [], blocks: [] }]
}
