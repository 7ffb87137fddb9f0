/** Placement: compasses, transducers, navigation lights, radar, mass and moments. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface PlacementResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
