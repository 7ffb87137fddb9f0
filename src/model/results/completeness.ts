/** Whether the pack holds what standards ask of an owner’s manual, and how far the work is. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface CompletenessResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
