/** What is known of a battery bank: as recorded for the bank, else worked out from its blocks. */
import type { Bank } from '../../model/results/sources.js'
import type { Battery } from '../../model/vessel.js'
import { batteryBank } from './battery-bank.calc.js'

export function bankOf({ capacityAh, crankingCurrentA, internalResistanceMilliOhm, shortCircuitCurrentA, blocks }: Battery): Bank {
  const given = { capacityAh, crankingCurrentA, internalResistanceMilliOhm, shortCircuitCurrentA }
  if (blocks === null) return given
  const { seriesCount, parallelCount } = blocks
  const made = (block: Partial<{ blockA: number; blockAh: number; blockMilliOhm: number }>) =>
    batteryBank({ seriesCount, parallelCount, blockA: 0, blockAh: 0, blockMilliOhm: 0, ...block })
  const fromBlock = (recorded: number | null, block: number | null, make: (value: number) => number): number | null =>
    recorded ?? (block === null ? null : make(block))
  return {
    capacityAh: fromBlock(capacityAh, blocks.capacityAh, blockAh => made({ blockAh }).bankAh),
    crankingCurrentA: fromBlock(crankingCurrentA, blocks.crankingCurrentA, blockA => made({ blockA }).bankA),
    internalResistanceMilliOhm: fromBlock(internalResistanceMilliOhm, blocks.internalResistanceMilliOhm, blockMilliOhm => made({ blockMilliOhm }).bankMilliOhm),
    shortCircuitCurrentA: fromBlock(shortCircuitCurrentA, blocks.shortCircuitCurrentA, blockA => made({ blockA }).bankA),
  }
}
