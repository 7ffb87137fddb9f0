/** Wireless networks and links to the outside. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export function outsideLinkPages(_context: ViewContext): readonly Page[] {
  return []
}
