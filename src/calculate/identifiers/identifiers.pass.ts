/** Identifiers: MMSI, call sign, hull identification, beacons. */
import type { IdentifiersResults } from '../../model/results/identifiers.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function identifiersPass(_vessel: Vessel, _basis: Basis, _before: Upstream): IdentifiersResults {
  return { notAssessed: [], findings: [] }
}
