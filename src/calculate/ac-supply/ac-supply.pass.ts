/** Mains voltage: shore connection, generator and inverter, how they are switched, residual-current protection, earth and polarity. */
import type { AcSupplyResults } from '../../model/results/ac-supply.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function acSupplyPass(_vessel: Vessel, _basis: Basis, _before: Upstream): AcSupplyResults {
  return { findings: [] }
}
