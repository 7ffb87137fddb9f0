/** Where things are: numbers on the plan, boxes of zones, what pictures show. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface LocationResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
