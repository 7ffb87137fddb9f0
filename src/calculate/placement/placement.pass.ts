/** Placement: compasses, transducers, navigation lights, radar, mass and moments. */
import type { PlacementResults } from '../../model/results/placement.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function placementPass(_vessel: Vessel, _basis: Basis, _before: Upstream): PlacementResults {
  return { notAssessed: [], findings: [] }
}
