/** Identifiers: MMSI, call sign, hull identification, beacons. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface IdentifiersResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
