/** Upkeep: what is due, when, with which parts. */
import type { MaintenanceResults } from '../../model/results/maintenance.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Occasion } from '../occasion.js'

export function maintenancePass(_vessel: Vessel, _basis: Basis, _occasion: Occasion): MaintenanceResults {
  return { notAssessed: [], findings: [] }
}
