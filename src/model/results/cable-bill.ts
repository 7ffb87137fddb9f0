/** How much cable of each type was laid, and how much to buy. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface CableBillResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
