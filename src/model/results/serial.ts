/** Serial links: who talks to whom, at which rate, and how much of the line is in use. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface SerialResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
