/** What the emergency pages need to know of this boat. */
import type { EmergencyResults } from '../../model/results/emergency.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function emergencyPass(_vessel: Vessel, _basis: Basis, _before: Upstream): EmergencyResults {
  return { notAssessed: [], findings: [] }
}
