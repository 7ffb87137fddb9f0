/** What is left: spare ways, and the margin of every feeder, busbar and panel above them. */
import type { ReserveResults } from '../../model/results/reserve.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function reservePass(_vessel: Vessel, _basis: Basis, _before: Upstream): ReserveResults {
  return { findings: [] }
}
