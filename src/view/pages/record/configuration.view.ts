/** Configuration record: software, settings to restore, how to log in. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export function configurationPages(_context: ViewContext): readonly Page[] {
  return []
}
