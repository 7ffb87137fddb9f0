/** Configuration record: software and settings to restore after a replacement. */
import type { ConfigurationResults } from '../../model/results/configuration.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function configurationPass(_vessel: Vessel, _basis: Basis, _before: Upstream): ConfigurationResults {
  return { notAssessed: [], findings: [] }
}
