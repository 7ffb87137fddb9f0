/** What the emergency pages need to know of this boat. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface EmergencyResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
