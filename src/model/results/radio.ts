/** Radio: losses, range, antennas too near one another, exposure, standing waves, sight of the sky. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface RadioResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
