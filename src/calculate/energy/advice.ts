/** Sizes that the use of the boat asks for, and the air that a lead-acid bank needs. */
import { grouped, lookup } from '../../model/lookup.js'
import type { FeedingResults } from '../../model/results.js'
import type { BatteryFacts, BatterySizing, BatteryVentilation, EnergyResults, ModeEnergy } from '../../model/results/energy.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import type { Vessel } from '../../model/vessel.js'
import { alternatorPercentOfCapacity, batteryChemistries, leadAcidCellV, leadAcidColdFactor } from '../../references/tables/battery-chemistry.js'
import { runMethod } from '../run-method.js'
import { converterInputMethod } from '../sources/converter-input.calc.js'
import { bankCapacityMethod } from './bank-capacity.calc.js'
import { batteryVentilationMethod } from './battery-ventilation.calc.js'
import { autonomyDays, typicalEfficiencyPercent } from './practice.js'
import { sourceSizeMethod } from './source-size.calc.js'

/** For the mode in which a battery gives most. */
export function sizingOf(facts: readonly BatteryFacts[], modes: readonly ModeEnergy[]): readonly BatterySizing[] {
  const days = grouped(modes.flatMap(({ modeTag, batteries }) => batteries.map(day => ({ modeTag, ...day }))), ({ batteryTag }) => [batteryTag])
  return facts.flatMap(({ tag, chemistry, capacityAh, depthOfDischargePercent }): BatterySizing[] => {
    const [first, ...others] = days.get(tag) ?? []
    if (first === undefined || chemistry === null || capacityAh === null || depthOfDischargePercent === null) return []
    const most = others.reduce((best, day) => (day.loadAh > best.loadAh ? day : best), first)
    if (most.loadAh === 0) return []
    const usual = batteryChemistries[chemistry]
    const capacity = (temperatureFactor: number) =>
      runMethod(bankCapacityMethod, { dailyAh: most.loadAh, autonomyDays, depthOfDischargePercent: depthOfDischargePercent.value, temperatureFactor })
    const share = (sharePercent: number) => runMethod(sourceSizeMethod, { capacityAh: capacityAh.value, sharePercent })
    return [{
      batteryTag: tag, modeTag: most.modeTag, dailyAh: most.loadAh,
      capacity: capacity(1),
      capacityCold: usual.leadAcid ? capacity(leadAcidColdFactor) : null,
      chargerLeast: share(usual.chargeFromPercent),
      chargerMost: share(usual.chargeToPercent),
      alternatorLeast: usual.leadAcid ? share(alternatorPercentOfCapacity) : null,
    }]
  })
}

const converterKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['inverter', 'inverter charger', 'dc-dc converter'])

/** At full output, from the battery that feeds them. */
export function converterInputs(vessel: Vessel, feeding: FeedingResults): EnergyResults['converterInputs'] {
  const { batteries, circuitsOfLoad } = lookup(vessel)
  return vessel.equipment.filter(({ kind, status }) => converterKinds.has(kind) && status !== 'removed').flatMap(({ tag, kind, outputs, efficiencyPercent }) => {
    const sources = (circuitsOfLoad.get(tag) ?? []).map(circuit => batteries.get(feeding.byCircuit.get(circuit.tag)?.sourceTag ?? ''))
    const battery = sources.find(each => each !== undefined)
    // An inverter charger takes from its battery what it gives as alternating current.
    const given = outputs.filter(({ form }) => kind === 'dc-dc converter' || form === 'ac')
    if (battery === undefined || given.length === 0 || given.some(({ ratedCurrentA }) => ratedCurrentA === null)) return []
    return [{
      tag, outcome: runMethod(converterInputMethod, {
        outputPowerW: given.reduce((sum, { nominalVoltageV, ratedCurrentA }) => sum + nominalVoltageV * ratedCurrentA!, 0),
        inputVoltageV: battery.nominalVoltageV,
        efficiencyPercent: efficiencyPercent ?? typicalEfficiencyPercent,
      }),
    }]
  })
}

/** For a boost charge, which makes most gas. */
export const ventilationOf = (facts: readonly BatteryFacts[]): readonly BatteryVentilation[] =>
  facts.flatMap(({ tag, chemistry, capacityAh, nominalVoltageV }): BatteryVentilation[] => {
    const gassing = chemistry === null ? null : batteryChemistries[chemistry].gassing
    if (gassing === null || capacityAh === null) return []
    const gasCurrentA = (gassing.boostMilliA * capacityAh.value) / 1000
    return [{
      batteryTag: tag, cellType: gassing.type, gasMilliAPerAh: gassing.boostMilliA,
      outcome: runMethod(batteryVentilationMethod, { cellsCount: Math.round(nominalVoltageV / leadAcidCellV), gasCurrentA }),
    }]
  })
