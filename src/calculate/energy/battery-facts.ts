/** What is known of each battery, each value with where it comes from. */
import type { BatteryFacts, Sourced } from '../../model/results/energy.js'
import type { Battery, Vessel } from '../../model/vessel.js'
import { batteryChemistries, fullAtPercentOfCapacity, usualRatedTimeH } from '../../references/tables/battery-chemistry.js'
import { bankOf } from '../sources/bank.js'

export const batteryFacts = (vessel: Vessel): readonly BatteryFacts[] =>
  vessel.batteries.filter(({ status }) => status !== 'removed').map(factsOf)

const recorded = (value: number | null): Sourced | null => (value === null ? null : { value, from: 'recorded' })
const usual = (value: number | null | undefined): Sourced | null => (value === null || value === undefined ? null : { value, from: 'usual for the chemistry' })

function factsOf(battery: Battery): BatteryFacts {
  const chemistry = battery.chemistry === null ? null : batteryChemistries[battery.chemistry]
  const { capacityAh } = bankOf(battery)
  const acceptance = chemistry === null || capacityAh === null ? null : (chemistry.chargeToPercent * capacityAh) / 100
  return {
    tag: battery.tag,
    nominalVoltageV: battery.nominalVoltageV,
    chemistry: battery.chemistry,
    capacityAh: capacityAh === null ? null : { value: capacityAh, from: battery.capacityAh === null ? 'its blocks' : 'recorded' },
    ratedTimeH: recorded(battery.ratedTimeH) ?? { value: usualRatedTimeH, from: 'usual' },
    depthOfDischargePercent: recorded(battery.depthOfDischargePercent) ?? usual(chemistry?.depthOfDischargePercent),
    peukertNumber: chemistry === null ? null : !chemistry.leadAcid ? usual(1) : recorded(battery.peukertNumber) ?? usual(chemistry.peukertNumber),
    chargeEfficiencyPercent: usual(chemistry?.chargeEfficiencyPercent),
    chargeCurrentMaxA: recorded(battery.chargeCurrentMaxA) ?? usual(acceptance),
    dischargeCurrentMaxA: recorded(battery.dischargeCurrentMaxA),
  }
}

/** A battery of which enough is known to follow its charge. */
export interface Store {
  readonly tag: string
  readonly capacityAh: number
  readonly ratedTimeH: number
  readonly peukertNumber: number
  readonly depthOfDischargePercent: number
  readonly chargeEfficiencyPercent: number
  readonly acceptanceA: number
  readonly taperFromPercent: number
  readonly endCurrentA: number
}

export function storeOf(facts: BatteryFacts): Store | { readonly reason: string } {
  const { capacityAh, depthOfDischargePercent, peukertNumber, chargeEfficiencyPercent, chargeCurrentMaxA, chemistry } = facts
  if (chemistry === null) return { reason: 'its chemistry is not recorded' }
  if (capacityAh === null) return { reason: 'its capacity is not recorded' }
  return {
    tag: facts.tag,
    capacityAh: capacityAh.value,
    ratedTimeH: facts.ratedTimeH.value,
    peukertNumber: peukertNumber!.value,
    depthOfDischargePercent: depthOfDischargePercent!.value,
    chargeEfficiencyPercent: chargeEfficiencyPercent!.value,
    acceptanceA: chargeCurrentMaxA!.value,
    taperFromPercent: batteryChemistries[chemistry].taperFromPercent,
    endCurrentA: (fullAtPercentOfCapacity * capacityAh.value) / 100,
  }
}
