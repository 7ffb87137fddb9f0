/** Battery banks from their blocks, and whether what is recorded of the bank agrees with them. */
import { type Finding, find } from '../../findings/finding.js'
import type { SourcesResults } from '../../model/results/sources.js'
import type { Battery, Vessel } from '../../model/vessel.js'
import { roundingNoise } from '../../units/quantity.js'
import { bankOf } from './bank.js'
import { bankDiffersFromBlocks, blocksGiveOtherVoltage } from './findings.js'

export function sourcesPass(vessel: Vessel): SourcesResults {
  return {
    byBattery: new Map(vessel.batteries.map(battery => [battery.tag, bankOf(battery)])),
    findings: vessel.batteries.flatMap(battery => [...voltageFinding(battery), ...capacityFinding(battery)]),
  }
}

const about = ({ tag }: Battery, field: keyof Battery) => ({ subject: { kind: 'battery', id: tag }, field, limit: null })
const differ = (a: number, b: number): boolean => Math.abs(a - b) > roundingNoise * Math.max(a, b)

function voltageFinding(battery: Battery): readonly Finding[] {
  const { blocks, nominalVoltageV } = battery
  if (blocks === null || blocks.nominalVoltageV === null) return []
  const blocksV = blocks.seriesCount * blocks.nominalVoltageV
  return differ(blocksV, nominalVoltageV) ? [find(blocksGiveOtherVoltage, { ...about(battery, 'blocks'), evidence: { blocksV, nominalVoltageV } })] : []
}

function capacityFinding(battery: Battery): readonly Finding[] {
  const blocksAh = bankOf({ ...battery, capacityAh: null }).capacityAh
  const { capacityAh } = battery
  return capacityAh !== null && blocksAh !== null && differ(capacityAh, blocksAh)
    ? [find(bankDiffersFromBlocks, { ...about(battery, 'capacityAh'), evidence: { capacityAh, blocksAh } })] : []
}
