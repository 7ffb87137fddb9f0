/** Where things are: numbers on the plan, boxes of zones, what pictures show. */
import type { LocationResults } from '../../model/results/location.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'

export function locationPass(_vessel: Vessel, _basis: Basis): LocationResults {
  return { notAssessed: [], findings: [] }
}
