/** An operating mode on the energy page: what is used, what charges, how the charge goes. */
import { cite } from '../../../references/bibliography.js'
import type { BatteryDay, HourRow, LoadDay, ModeEnergy, SourceDay } from '../../../model/results/energy.js'
import type { OperatingMode, Tag } from '../../../model/vessel.js'
import { chemistryCitation } from '../../../references/tables/battery-chemistry.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { chargePlot } from '../../drawings/charge-plot.js'
import { tableOf } from '../../tables.js'
import { counted, dash, joined, lineBreak, muted, verdict } from '../../text.js'
import type { Block, Inline, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export const modeName = ({ vessel }: ViewContext, modeTag: Tag): string => modeOf(vessel.operatingModes, modeTag)?.name ?? modeTag
const modeOf = (modes: readonly OperatingMode[], modeTag: Tag): OperatingMode | undefined => modes.find(({ tag }) => tag === modeTag)

/** More than four days read better in days. */
const sayTime = (timeH: number): string => (timeH < 96 ? say('timeH', timeH) : say('timeDays', timeH / 24))
/** A sum of decimal fractions that comes to nothing is nothing. */
const sayBalance = (balanceAh: number): string => (Math.abs(balanceAh) < 1e-6 ? say('balanceAh', 0) : `${balanceAh > 0 ? '+' : '−'}${say('balanceAh', Math.abs(balanceAh))}`)
const notAssessed: Inline = muted('not assessed')

export function modeSummary(context: ViewContext, mode: ModeEnergy): readonly Block[] {
  const purpose = modeOf(context.vessel.operatingModes, mode.modeTag)?.purpose ?? null
  const reasons = [...new Set(mode.batteries.flatMap(({ batteryTag, endurance }) => (endurance.status === 'computed' ? [] : [`${batteryTag}: ${endurance.reason}`])))]
  return [
    ...(purpose === null ? [] : [{ is: 'paragraph' as const, text: [purpose] }]),
    tableOf(mode.batteries, {
      id: `mode-${mode.modeTag}-summary`,
      caption: `${modeName(context, mode.modeTag)}: a day for each battery`,
      empty: 'Nothing draws on a battery or charges one in this mode.',
      columns: [
        { title: 'Battery', width: 'text', cell: day => context.named(day.batteryTag) },
        { title: 'Used a day', width: 'number', cell: day => [say('loadAh', day.loadAh), lineBreak, muted(sayForWorking('loadWh', day.loadWh, 'result'))] },
        { title: 'Sources can give', width: 'number', cell: day => (day.offeredAh === 0 ? dash : [say('offeredAh', day.offeredAh)]) },
        { title: 'Balance a day', width: 'number', cell: day => (day.balance.status === 'computed' ? [sayBalance(day.balance.output.balanceAh)] : [notAssessed]) },
        { title: 'Lasts uncharged', width: 'number', cell: day => enduranceText(day) },
        { title: 'Lowest charge', width: 'short', cell: day => lowestText(day) },
        { title: 'Time to charge', width: 'short', cell: day => chargingText(day) },
      ],
      note: [
        'Balance: what the sources leave after the loads, less the loss of charging, less what the battery gives; while it is not full. Lasts uncharged: from full to the lowest charge allowed, at the average load. Time to charge: from there to full, by the sources that give a steady current.',
        ...(reasons.length === 0 ? [] : [` Not assessed: ${reasons.join('; ')}.`]),
      ],
    }),
  ]
}

const enduranceText = ({ endurance, loadAh }: BatteryDay): Text =>
  (endurance.status === 'computed' ? [sayTime(endurance.output.enduranceH)] : loadAh === 0 ? dash : [notAssessed])

function lowestText({ run }: BatteryDay): Text {
  if (run === null) return [notAssessed]
  const within = run.lowestPercent >= run.limitPercent
  const when = run.lowestHourNumber === 0 ? 'at the start' : `hour ${run.lowestHourNumber}`
  return [
    `${say('chargePercent', run.lowestPercent)} `, muted(when), lineBreak,
    verdict(within ? 'good' : 'warning', within ? 'above the limit' : run.emptyHoursCount > 0 ? `empty in ${counted(run.emptyHoursCount, 'hour')}` : 'below the limit'),
  ]
}

function chargingText({ charging }: BatteryDay): Text {
  if (charging === null) return dash
  const { least, most } = charging
  if (least.status === 'not computed' || most.status === 'not computed') return [muted(least.status === 'not computed' ? least.reason : '')]
  const [from, to] = [sayTime(least.output.chargingTimeH), sayTime(most.output.chargingTimeH)]
  return [from === to ? from : `${from} to ${to}`]
}

export function modeBlocks(context: ViewContext, mode: ModeEnergy): readonly Block[] {
  return [
    ...modeSummary(context, mode),
    ...statePlot(context, mode),
    ...loadTables(context, mode),
    sourceTable(context, mode),
    ...chargingWorkings(context, mode),
    ...sunBlocks(context, mode),
    ...mode.batteries.flatMap(day => hourTable(context, mode.modeTag, day)),
  ]
}

export function statePlot(context: ViewContext, mode: ModeEnergy): readonly Block[] {
  const drawn = mode.batteries.flatMap(({ batteryTag, run }) => (run === null ? [] : [{ batteryTag, run }]))
  if (drawn.length === 0) return []
  const name = modeName(context, mode.modeTag)
  const caption = `State of charge, ${name}, ${counted(drawn[0]!.run.hours.length / 24, 'day')}`
  const daylightH = mode.sun?.byDay.status === 'computed' ? mode.sun.byDay.output.daylightH : null
  return [{
    is: 'drawing',
    id: `mode-${mode.modeTag}-charge`,
    caption,
    svg: chargePlot({
      title: caption,
      daylight: daylightH === null ? null : { fromH: 12 - daylightH / 2, toH: 12 + daylightH / 2 },
      curves: drawn.map(({ batteryTag, run }) => ({
        name: `${batteryTag} ${context.nameOf(batteryTag) ?? ''}`.trim(), limitPercent: run.limitPercent, chargePercent: [run.startPercent, ...run.hours.map(({ chargePercent }) => chargePercent)],
      })),
    }),
    description: joined(drawn.map(({ batteryTag, run }): Text => [
      context.tag(batteryTag), ` starts at ${say('chargePercent', run.startPercent)}, is lowest with ${say('chargePercent', run.lowestPercent)}${run.lowestHourNumber === 0 ? ' at the start' : ` after ${counted(run.lowestHourNumber, 'hour')}`} (lowest allowed ${say('chargePercent', run.limitPercent)}), and ends at ${say('chargePercent', run.hours.at(-1)?.chargePercent ?? run.startPercent)}.`,
    ]), ' '),
  }]
}

function loadTables(context: ViewContext, mode: ModeEnergy): readonly Table[] {
  const on = [...mode.batteries.map(({ batteryTag }) => batteryTag), null]
  return on.flatMap((batteryTag): Table[] => {
    const loads = mode.loads.filter(load => load.batteryTag === batteryTag)
    if (loads.length === 0) return []
    return [tableOf(loads, {
      id: `mode-${mode.modeTag}-loads-${batteryTag ?? 'outside'}`,
      caption: batteryTag === null ? 'Carried by shore power or a generator, from no battery' : `What draws on ${batteryTag}, largest first`,
      empty: '',
      columns: [
        { title: 'Load', width: 'text', cell: load => context.named(load.itemTag) },
        { title: 'Current', width: 'number', cell: load => [sayForWorking('currentA', load.currentA, 'result')] },
        { title: 'Taken from', width: 'text', cell: load => originText(context, load) },
        { title: 'Hours', width: 'number', cell: load => [sayForWorking('timeH', load.timeH, 'result')] },
        { title: 'Duty', width: 'number', cell: load => [sayForWorking('dutyPercent', load.dutyPercent)] },
        { title: 'A day', width: 'number', cell: load => chargeCell(load, 'chargeAh') },
        ...(batteryTag === null ? [] : [{ title: 'Sum so far', width: 'number' as const, cell: (load: LoadDay) => chargeCell(load, 'totalAh') }]),
      ],
      note: ['A day = current × hours × duty.', ...convertedText(mode, batteryTag)],
    })]
  })
}

/** What leaves the battery for another one is no load of its own, and is said. */
const convertedText = ({ batteries }: ModeEnergy, batteryTag: Tag | null): readonly string[] =>
  (batteries.find(battery => battery.batteryTag === batteryTag)?.converted ?? []).filter(({ takenAh }) => takenAh > 0)
    .map(({ itemTag, takenAh }) => ` Besides, ${itemTag} takes up to ${sayForWorking('takenAh', takenAh, 'result')} a day for another battery.`)

const chargeCell = ({ charge }: LoadDay, name: 'chargeAh' | 'totalAh'): Text => (charge.status === 'computed' ? [sayForWorking(name, charge.output[name], 'result')] : [notAssessed])

/** `22 A at 12 V from its power`; through an inverter its own figures and the division. */
function originText(context: ViewContext, load: LoadDay): Text {
  if (load.through.length === 0) return [load.ownFrom]
  const steps = load.through.flatMap(({ tag, efficiencyPercent, recorded }): Text => [', ', context.tag(tag), ` ${sayForWorking('efficiencyPercent', efficiencyPercent)}${recorded ? '' : ' (common practice)'}`])
  return [`${load.ownFrom} ${sayForWorking('ownCurrentA', load.ownCurrentA, 'result')} at ${say('nominalVoltageV', load.ownVoltageV)}`, ...steps]
}

function sourceTable(context: ViewContext, mode: ModeEnergy): Table {
  return tableOf(mode.sources, {
    id: `mode-${mode.modeTag}-sources`,
    caption: `${modeName(context, mode.modeTag)}: what charges`,
    empty: 'No charging source has a duty in this mode.',
    columns: [
      { title: 'Source', width: 'text', cell: source => context.named(source.itemTag) },
      { title: 'Charges', width: 'tag', cell: source => [context.tag(source.batteryTag)] },
      { title: 'Current', width: 'number', cell: source => [...(source.kind === 'solar' ? [muted('up to ')] : []), sayForWorking('currentA', source.currentA, 'result')] },
      { title: 'Taken from', width: 'text', cell: source => [source.from] },
      { title: 'Hours', width: 'number', cell: source => [sayForWorking('timeH', source.timeH, 'result')] },
      { title: 'Duty', width: 'number', cell: source => [sayForWorking('dutyPercent', source.dutyPercent)] },
      { title: 'Can give a day', width: 'number', cell: source => [sayForWorking('offeredAh', source.offeredAh, 'result')] },
    ],
    note: ['A charger counts only in hours in which shore power, a generator or an inverter supplies it.'],
  })
}

const chargingWorkings = (context: ViewContext, mode: ModeEnergy): readonly Block[] => mode.batteries.flatMap(({ batteryTag, charging, endurance, balance, loadAh }): Block[] => [
  ...(balance.status === 'computed' ? [workingOf(context, `Daily balance of ${batteryTag}`, balance)] : []),
  ...(loadAh > 0 ? [workingOf(context, `How long ${batteryTag} lasts uncharged`, endurance)] : []),
  ...(charging === null ? [] : [workingOf(context, `Time to charge ${batteryTag} by ${charging.sourceTags.join(', ')}`, charging.most, {
    remarks: [{ label: 'tail', text: 'the longest of the usual range; the shortest is in the table above' }],
  })]),
])

function sunBlocks(context: ViewContext, { modeTag, sun, sources }: ModeEnergy): readonly Block[] {
  const solar = sources.filter((source): source is SourceDay & { solar: NonNullable<SourceDay['solar']> } => source.solar !== null)
  const curves = sources.flatMap(({ itemTag, curve }) => (curve === null ? [] : [workingOf(context, `Current of ${itemTag} by its curve`, curve)]))
  if (sun === null || solar.length === 0) return curves
  return [
    ...curves,
    workingOf(context, 'Sun on the middle day of the month', sun.byDay),
    workingOf(context, 'Sun on deck', sun.onDeck, sun.sunshineRecorded ? {} : { remarks: [{ label: 'share of sunshine', text: 'not recorded for the mode: common practice' }] }),
    ...solar.flatMap(({ itemTag, solar: { panelTags, output, cutAh } }): Block[] => [
      workingOf(context, `What ${panelTags.join(', ')} give through ${itemTag} in a whole day`, output),
      ...(cutAh > 1e-6 ? [{ is: 'paragraph' as const, text: [`Of that the controller cuts off ${say('cutAh', cutAh)}, being above its rated output.`] }] : []),
    ]),
    { is: 'paragraph', text: [muted(`The day’s sun is shared out over the hours by its height in each (calculation “Sun in an hour”), in ${modeTag} as in every mode.`)] },
  ]
}

interface HourOfDay { readonly row: HourRow; readonly hour: number }

/** The first day, by hours. */
function hourTable(context: ViewContext, modeTag: Tag, { batteryTag, run }: BatteryDay): readonly Table[] {
  if (run === null) return []
  const hours = run.hours.slice(0, 24).map((row, hour): HourOfDay => ({ row, hour }))
  const current = (name: Exclude<keyof HourRow, 'drawnAh' | 'chargePercent'>) => ({ row }: HourOfDay): Text => (row[name] === 0 ? dash : [say(name, row[name])])
  const facts = context.results.energy.batteries.find(({ tag }) => tag === batteryTag)
  const efficiency = facts?.chargeEfficiencyPercent
  return [tableOf(hours, {
    id: `mode-${modeTag}-hours-${batteryTag}`,
    caption: `${batteryTag}, first day hour by hour, from ${say('chargePercent', run.startPercent)}`,
    empty: '',
    columns: [
      { title: 'Hour', width: 'number', cell: ({ hour }) => [`${hour} to ${hour + 1}`] },
      { title: 'Loads', width: 'number', cell: current('loadA') },
      { title: 'Sources can', width: 'number', cell: current('offeredA') },
      { title: 'Sources give', width: 'number', cell: current('givenA') },
      { title: 'Into battery', width: 'number', cell: current('intoA') },
      { title: 'Out of it', width: 'number', cell: current('outOfA') },
      { title: 'Charge after', width: 'number', cell: ({ row }) => [say('chargePercent', row.chargePercent), ...(row.unservedA > 0 ? [' ', verdict('error', 'empty')] : [])] },
    ],
    note: [`Averages of the hour. Of what goes in, ${efficiency === null || efficiency === undefined ? '' : sayForWorking('efficiencyPercent', efficiency.value)} is stored; what comes out counts by Peukert’s formula where it is above the rated current of lead-acid. Source of the shares: ${cite(chemistryCitation)}.`],
  })]
}
