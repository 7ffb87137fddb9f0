/** Measured values held against calculated ones. */
import type { CommissioningResults } from '../../model/results/commissioning.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function commissioningPass(_vessel: Vessel, _basis: Basis, _before: Upstream): CommissioningResults {
  return { findings: [] }
}
