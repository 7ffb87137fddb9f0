/** Radio and antennas. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export function radioPages(_context: ViewContext): readonly Page[] {
  return []
}
