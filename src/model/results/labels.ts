/** What every label says, and whether it can be read at its size. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface LabelsResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
