/** CAN buses: lengths, supply, load, terminators, instances, and what room is left. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface CanBusResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
