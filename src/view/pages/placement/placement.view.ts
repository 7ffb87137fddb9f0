/** Placement: compasses, transducers, lights, radar, mass and moments. */
import type { ViewContext } from '../../context.js'
import type { Page } from '../../view-model.js'

export function placementPages(_context: ViewContext): readonly Page[] {
  return []
}
