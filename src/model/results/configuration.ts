/** Configuration record: software and settings to restore after a replacement. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface ConfigurationResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
