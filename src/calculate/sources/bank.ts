/** What is known of a battery bank: as recorded for the bank, else worked out from its blocks. */
import type { Bank } from '../../model/results/sources.js'
import type { Battery } from '../../model/vessel.js'
import { batteryBank } from './battery-bank.calc.js'

export function bankOf({ capacityAh, crankingCurrentA, internalResistanceMilliOhm, shortCircuitCurrentA, blocks }: Battery): Bank {
  const given = { capacityAh, crankingCurrentA, internalResistanceMilliOhm, shortCircuitCurrentA }
  if (blocks === null) return given
  const { seriesCount, parallelCount } = blocks
  const made = (block: Partial<{ blockCurrentA: number; blockCapacityAh: number; blockResistanceMilliOhm: number }>) =>
    batteryBank({ seriesCount, parallelCount, blockCurrentA: 0, blockCapacityAh: 0, blockResistanceMilliOhm: 0, ...block })
  const fromBlock = (recorded: number | null, block: number | null, make: (value: number) => number): number | null =>
    recorded ?? (block === null ? null : make(block))
  return {
    capacityAh: fromBlock(capacityAh, blocks.capacityAh, blockCapacityAh => made({ blockCapacityAh }).bankCapacityAh),
    crankingCurrentA: fromBlock(crankingCurrentA, blocks.crankingCurrentA, blockCurrentA => made({ blockCurrentA }).bankCurrentA),
    internalResistanceMilliOhm: fromBlock(internalResistanceMilliOhm, blocks.internalResistanceMilliOhm, blockResistanceMilliOhm => made({ blockResistanceMilliOhm }).bankResistanceMilliOhm),
    shortCircuitCurrentA: fromBlock(shortCircuitCurrentA, blocks.shortCircuitCurrentA, blockCurrentA => made({ blockCurrentA }).bankCurrentA),
  }
}
