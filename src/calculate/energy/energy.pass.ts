/** Loads by operating mode, hour by hour; what the batteries hold, how long they last, what charges them. */
import type { EnergyResults } from '../../model/results/energy.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function energyPass(_vessel: Vessel, _basis: Basis, _before: Upstream): EnergyResults {
  return { findings: [] }
}
