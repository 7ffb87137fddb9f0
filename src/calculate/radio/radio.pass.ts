/** Radio: losses, range, antennas too near one another, exposure, standing waves, sight of the sky. */
import type { RadioResults } from '../../model/results/radio.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function radioPass(_vessel: Vessel, _basis: Basis, _before: Upstream): RadioResults {
  return { notAssessed: [], findings: [] }
}
