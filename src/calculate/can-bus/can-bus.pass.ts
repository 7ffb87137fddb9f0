/** CAN buses: lengths, supply, load, terminators, instances, and what room is left. */
import type { CanBusResults } from '../../model/results/can-bus.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function canBusPass(_vessel: Vessel, _basis: Basis, _before: Upstream): CanBusResults {
  return { notAssessed: [], findings: [] }
}
