/** What is recorded of batteries, sources, converters, protective equipment and of power over network cables, as facts on their pages. */
import type { Battery, Equipment, Output } from '../../../model/vessel.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { joined } from '../../text.js'
import type { Text } from '../../view-model.js'
import { powerLeft } from '../networks/ethernet-power.js'

interface Fact { readonly label: string; readonly value: Text }

const chemistryNames = { flooded: 'lead-acid, flooded', agm: 'lead-acid, AGM', gel: 'lead-acid, gel', lfp: 'lithium iron phosphate' } as const

const fact = (label: string, name: string, value: number | null): readonly Fact[] => (value === null ? [] : [{ label, value: [say(name, value)] }])

export function batteryFacts({ results }: ViewContext, battery: Battery): readonly Fact[] {
  const { chemistry, nominalVoltageV, blocks } = battery
  const bank = results.sources.byBattery.get(battery.tag)!
  return [
    ...(chemistry === null ? [] : [{ label: 'Chemistry', value: [chemistryNames[chemistry]] }]),
    ...fact('Nominal voltage', 'nominalVoltageV', nominalVoltageV),
    ...(blocks === null ? [] : [{ label: 'Made of', value: [`${blocks.parallelCount} in parallel, each of ${blocks.seriesCount} in series`] }]),
    ...fact('Capacity', 'capacityAh', bank.capacityAh),
    ...fact('Capacity drawn in', 'ratedTimeH', battery.ratedTimeH),
    ...fact('Cold cranking current', 'crankingCurrentA', bank.crankingCurrentA),
    ...fact('Internal resistance', 'internalResistanceMilliOhm', bank.internalResistanceMilliOhm),
    ...fact('Short-circuit current, by its maker', 'shortCircuitCurrentA', bank.shortCircuitCurrentA),
    ...fact('Discharge daily to', 'depthOfDischargePercent', battery.depthOfDischargePercent),
    ...fact('Charging current, at most', 'chargeCurrentMaxA', battery.chargeCurrentMaxA),
    ...fact('Discharge current, at most', 'dischargeCurrentMaxA', battery.dischargeCurrentMaxA),
  ]
}

export function sourceFacts(context: ViewContext, item: Equipment): readonly Fact[] {
  const linked = (label: string, tag: string | null): readonly Fact[] => (tag === null ? [] : [{ label, value: context.named(tag) }])
  return [
    ...(item.outputs.length === 0 ? [] : [{ label: 'Gives', value: joined(item.outputs.map(output => [outputText(output)]), { is: 'break' }) }]),
    ...fact('Efficiency', 'efficiencyPercent', item.efficiencyPercent),
    ...fact('Peak power', 'peakPowerW', item.peakPowerW),
    ...fact('Rated current', 'ratedCurrentA', item.ratedCurrentA),
    ...fact('Starting current', 'startingCurrentA', item.startingCurrentA),
    ...fact('Fuse that its maker asks for', 'makersFuseA', item.makersFuseA),
    ...fact('Trips on residual current of', 'residualCurrentA', item.residualCurrentA),
    ...fact('Trips within', 'tripTimeMs', item.tripTimeMs),
    ...linked('Galvanic isolation', item.galvanicIsolationTag),
    ...linked('Polarity shown by', item.polarityIndicatorTag),
    ...(item.dataFromTags.length === 0 ? [] : [{ label: 'Needs data from', value: joined(item.dataFromTags.map(context.named), { is: 'break' }) }]),
  ]
}

/** `ac-out: 230 V a.c., 50 Hz, 7 A` */
export function outputText({ terminal, form, nominalVoltageV, frequencyHz, ratedCurrentA, curve }: Output): string {
  const facts = [
    `${say('nominalVoltageV', nominalVoltageV)} ${form === 'ac' ? 'a.c.' : 'd.c.'}`,
    ...(frequencyHz === null ? [] : [say('frequencyHz', frequencyHz)]),
    ...(ratedCurrentA === null ? [] : [say('ratedCurrentA', ratedCurrentA)]),
    ...(curve.length === 0 ? [] : [curve.map(({ speedRpm, currentA }) => `${say('currentA', currentA)} at ${say('speedRpm', speedRpm)}`).join(', ')]),
  ]
  return `${terminal === null ? '' : `${terminal}: `}${facts.join(', ')}`
}

/** Of a switch what it can give over its ports, of a device what it asks and takes over its cable. */
export function networkPowerFacts({ results }: ViewContext, { tag, powerBudgetW, powerVoltageV, networkPowerW, ports }: Equipment): readonly Fact[] {
  const supply = results.ethernet.power.get(tag)
  if (supply !== undefined) {
    const at = powerVoltageV === null ? '' : ` at ${sayForWorking('powerVoltageV', powerVoltageV)}`
    return powerBudgetW === null ? [] : [{ label: 'Power for its ports', value: [`${sayForWorking('powerBudgetW', powerBudgetW)} together${at}; left by class: ${powerLeft(supply) ?? 'not known'}`] }]
  }
  const asked = ports.flatMap(({ kind, powerClass }) => (kind === 'ethernet' && powerClass !== null ? [`class ${powerClass}`] : []))
  const parts = [...(networkPowerW === null ? [] : [sayForWorking('networkPowerW', networkPowerW)]), ...new Set(asked)]
  return parts.length === 0 ? [] : [{ label: 'Takes over its network cable', value: [parts.join(', ')] }]
}
