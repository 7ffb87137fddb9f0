/** Upkeep: what is due, when, with which parts. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface MaintenanceResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
