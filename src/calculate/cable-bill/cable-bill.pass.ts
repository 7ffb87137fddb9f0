/** How much cable of each type was laid, and how much to buy. */
import type { CableBillResults } from '../../model/results/cable-bill.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function cableBillPass(_vessel: Vessel, _basis: Basis, _before: Upstream): CableBillResults {
  return { notAssessed: [], findings: [] }
}
