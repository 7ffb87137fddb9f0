/** What is known of the sources: battery banks from their blocks. */
import type { Finding } from '../../findings/finding.js'
import type { Tag } from '../vessel.js'

export interface SourcesResults {
  readonly byBattery: ReadonlyMap<Tag, Bank>
  readonly findings: readonly Finding[]
}
/** A battery bank as recorded, else as worked out from its blocks. */
export interface Bank {
  readonly capacityAh: number | null
  readonly crankingCurrentA: number | null
  readonly internalResistanceMilliOhm: number | null
  /** As the maker states it. */
  readonly shortCircuitCurrentA: number | null
}
