/** Device by device: where it sits, what it must break, in which order devices trip; conductors without one. */
import type { ProtectiveDevicesResults } from '../../model/results/protective-devices.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function protectiveDevicesPass(_vessel: Vessel, _basis: Basis, _before: Upstream): ProtectiveDevicesResults {
  return { findings: [] }
}
