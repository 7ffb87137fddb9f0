/** Identifiers, and the card for a distress call. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export function identifierPages(_context: ViewContext): readonly Page[] {
  return []
}
