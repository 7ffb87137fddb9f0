/** Batteries on the energy page: what is taken for each and where it comes from, sizes that are asked for, ventilation. */
import type { Outcome } from '../../../model/results.js'
import type { BatteryFacts, BatterySizing, Sourced } from '../../../model/results/energy.js'
import { cite } from '../../../references/bibliography.js'
import { batteryChemistries, chemistryCitation, gassingCitation } from '../../../references/tables/battery-chemistry.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { dash, lineBreak, muted, notRecorded } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { modeName } from './energy-modes.view.js'

const sourced = (name: string, value: Sourced | null): Text => (value === null ? [notRecorded] : [`${sayForWorking(name, value.value, 'result')} `, muted(value.from)])

export function batteryBlocks(context: ViewContext): readonly Block[] {
  const { batteries } = context.results.energy
  return [
    tableOf(batteries, {
      id: 'battery-capacity',
      caption: 'What the batteries hold',
      empty: 'No battery is recorded.',
      columns: [
        { title: 'Battery', width: 'text', cell: battery => context.named(battery.tag) },
        { title: 'Chemistry', width: 'short', cell: ({ chemistry }) => [chemistry === null ? notRecorded : batteryChemistries[chemistry].title] },
        { title: 'Capacity', width: 'short', cell: battery => sourced('capacityAh', battery.capacityAh) },
        { title: 'Drawn in', width: 'short', cell: battery => sourced('timeH', battery.ratedTimeH) },
        { title: 'Discharged to', width: 'short', cell: battery => sourced('depthPercent', battery.depthOfDischargePercent) },
        { title: 'Usable', width: 'number', cell: usable },
        { title: 'Peukert', width: 'short', cell: ({ chemistry, peukertNumber }) => (chemistry !== null && !batteryChemistries[chemistry].leadAcid ? [muted('not applied')] : sourced('peukertNumber', peukertNumber)) },
      ],
      note: [`Discharged to: share of the capacity that is taken out day by day. What is not recorded is taken as usual for the chemistry (${cite(chemistryCitation)}); of a range the end that makes the battery give less.`],
    }),
    tableOf(batteries, {
      id: 'battery-charging',
      caption: 'How the batteries are charged',
      empty: 'No battery is recorded.',
      columns: [
        { title: 'Battery', width: 'text', cell: battery => context.named(battery.tag) },
        { title: 'Charging current up to', width: 'short', cell: battery => sourced('currentA', battery.chargeCurrentMaxA) },
        { title: 'Charge efficiency', width: 'short', cell: battery => sourced('efficiencyPercent', battery.chargeEfficiencyPercent) },
        { title: 'Takes less from', width: 'number', cell: ({ chemistry }) => (chemistry === null ? dash : [say('chargePercent', batteryChemistries[chemistry].taperFromPercent)]) },
        { title: 'Absorption, float (of 12 V)', width: 'text', cell: ({ chemistry }) => (chemistry === null ? dash : [batteryChemistries[chemistry].absorption, lineBreak, batteryChemistries[chemistry].float]) },
        { title: 'Cycles', width: 'short', cell: ({ chemistry }) => (chemistry === null ? dash : [batteryChemistries[chemistry].cycleLife]) },
        { title: 'May give up to', width: 'short', cell: battery => sourced('currentA', battery.dischargeCurrentMaxA) },
      ],
      note: ['Voltages and cycles are what is usual for the chemistry, common practice; set chargers by the battery maker’s instructions. Cycles: at that depth of discharge.'],
    }),
  ]
}

const usable = ({ capacityAh, depthOfDischargePercent, nominalVoltageV }: BatteryFacts): Text => {
  if (capacityAh === null || depthOfDischargePercent === null) return dash
  const usableAh = (capacityAh.value * depthOfDischargePercent.value) / 100
  return [say('usableAh', usableAh), lineBreak, muted(sayForWorking('usableWh', usableAh * nominalVoltageV, 'result'))]
}

export function sizingBlocks(context: ViewContext): readonly Block[] {
  const { sizing, converterInputs } = context.results.energy
  if (sizing.length === 0 && converterInputs.length === 0) return []
  return [
    { is: 'heading', text: 'Advice on sizes', anchor: 'energy-sizes' },
    sizingTable(context, sizing),
    ...(converterInputs.length === 0 ? [] : [tableOf(converterInputs, {
      id: 'converter-inputs',
      caption: 'What inverters and converters take from their battery at full output',
      empty: '',
      columns: [
        { title: 'Inverter or converter', width: 'text', cell: ({ tag }) => context.named(tag) },
        { title: 'Gives', width: 'number', cell: ({ outcome }) => inputOf(outcome, 'outputPowerW') },
        { title: 'From', width: 'number', cell: ({ outcome }) => inputOf(outcome, 'inputVoltageV') },
        { title: 'Efficiency', width: 'number', cell: ({ outcome }) => inputOf(outcome, 'efficiencyPercent') },
        { title: 'Takes', width: 'number', cell: ({ outcome }) => resultOf(outcome, 'inputCurrentA') },
      ],
      note: ['Takes = what it gives / (voltage × efficiency). With a discharged battery it takes more. Where the efficiency is not recorded, 88 % is taken (common practice).'],
    })]),
  ]
}

const inputOf = (outcome: Outcome, name: string): Text => (outcome.status === 'computed' ? [sayForWorking(name, outcome.input[name]!)] : dash)
const resultOf = (outcome: Outcome | null, name: string): Text => (outcome?.status === 'computed' ? [sayForWorking(name, outcome.output[name]!, 'result')] : dash)

const sizingTable = (context: ViewContext, sizing: readonly BatterySizing[]): Table => tableOf(sizing, {
  id: 'battery-sizing',
  caption: 'Sizes for the mode that uses most',
  empty: 'No size can be advised: chemistry, capacity or use of the batteries is not known.',
  columns: [
    { title: 'Battery', width: 'text', cell: row => [...context.named(row.batteryTag), lineBreak, muted(modeName(context, row.modeTag))] },
    { title: 'Uses a day', width: 'number', cell: row => [sayForWorking('dailyAh', row.dailyAh, 'result')] },
    { title: 'Capacity for two days', width: 'number', cell: row => resultOf(row.capacity, 'capacityAh') },
    { title: 'The same at 0 °C', width: 'number', cell: row => resultOf(row.capacityCold, 'capacityAh') },
    { title: 'Charger', width: 'number', cell: row => [...resultOf(row.chargerLeast, 'sourceCurrentA'), ' to ', ...resultOf(row.chargerMost, 'sourceCurrentA')] },
    { title: 'Alternator at least', width: 'number', cell: row => resultOf(row.alternatorLeast, 'sourceCurrentA') },
  ],
  note: [`Capacity = use × 2 days / depth of discharge, for lead-acid at 0 °C divided by 0.85 as well. Charger: share of the capacity that is usual for the chemistry. Alternator: 25 % of a lead-acid bank. Advice (${cite({ source: 'common-practice', place: '' })}); the makers’ figures come first.`],
})

export function ventilationBlocks(context: ViewContext, { onPaper }: { readonly onPaper: boolean }): readonly Block[] {
  const { ventilation } = context.results.energy
  if (ventilation.length === 0) return []
  return [
    { is: 'heading', text: 'Ventilation of the battery space', anchor: 'battery-ventilation' },
    tableOf(ventilation, {
      id: 'battery-ventilation-table',
      caption: 'Air for the hydrogen of lead-acid batteries, at boost charge',
      empty: '',
      columns: [
        { title: 'Battery', width: 'text', cell: row => context.named(row.batteryTag) },
        { title: 'Cells', width: 'number', cell: ({ outcome }) => (outcome.status === 'computed' ? [String(outcome.input.cellsCount)] : dash) },
        { title: 'Type', width: 'short', cell: row => [`${row.cellType}, ${row.gasMilliAPerAh}\u00A0mA/Ah`] },
        { title: 'Air', width: 'number', cell: ({ outcome }) => resultOf(outcome, 'airM3PerH') },
        { title: 'Opening, at inlet and at outlet', width: 'number', cell: ({ outcome }) => resultOf(outcome, 'openingCm2') },
      ],
      note: [`${cite(gassingCitation)}. Hydrogen with air explodes: no flame, spark or switch in the space, and let the gas out above the battery. Local rules on battery spaces come first.`],
    }),
    ...(onPaper ? [] : ventilation.map(row => workingOf(context, `Air for ${row.batteryTag}`, row.outcome, {
      remarks: [{ label: 'gas current', text: `${row.gasMilliAPerAh} mA/Ah times the capacity` }],
    }))),
  ]
}
