/** A CAN bus: whether it is within limits, what room is left, the backbone as built, and every sum. */
import type { LocatedFinding } from '../../../findings/finding.js'
import { inWords } from '../../../findings/words.js'
import type { BusDevice, BusReading, BusResult } from '../../../model/results/can-bus.js'
import type { Comparison } from '../../../model/results.js'
import type { CanBus } from '../../../model/vessel.js'
import { cite } from '../../../references/bibliography.js'
import { say, sayForWorking } from '../../../units/format.js'
import { comparisonText } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { findingCards } from '../../parts/finding-cards.js'
import { tableOf } from '../../tables.js'
import { dash, joined, lineBreak, muted, verdict } from '../../text.js'
import type { Block, Page, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { deadBlocks, lossBlocks } from '../fault-tracing/fault-blocks.js'
import { proceduresAbout } from '../owner/procedures.js'
import { backboneDrawingsOf, backboneTable } from './can-bus-backbone.js'
import { loadBlocks, loadText } from './can-bus-load.js'
import { roomBlocks, roomText } from './can-bus-room.js'
import { feedText, supplyBlocks } from './can-bus-supply.js'
import { networkTrail } from './network-parts.js'

export function canBusPage(context: ViewContext, bus: CanBus): Page {
  const result = context.results.canBus.byBus.get(bus.tag)!
  const own = findingsAbout(context, result)
  const blocks: readonly Block[] = [
    { is: 'facts', caption: null, entries: facts(context, result) },
    ...backboneDrawingsOf(context, result),
    ...(own.length === 0 ? [] : [{ is: 'heading', text: 'Findings', anchor: 'findings' }, { is: 'findings', empty: '', findings: findingCards(context, own) }] as const),
    ...deadBlocks(context, bus.tag),
    ...lossBlocks(context, bus.tag),
    ...proceduresAbout(context, bus.tag),
    limitTable(context, result),
    ...roomBlocks(context, result),
    ...lengthBlocks(context, result),
    ...supplyBlocks(context, result),
    ...loadBlocks(context, result),
    ...readingBlocks(context, result),
  ]
  return {
    key: context.addressOf(bus.tag)!,
    title: `${bus.tag} ${bus.name}`,
    kicker: 'CAN bus',
    lead: bus.purpose === null ? null : [bus.purpose],
    trail: networkTrail,
    printed: printedOf(blocks),
    blocks: [...blocks, backboneTable(context, result)],
  }
}

/** What the drawing says too, or what is only looked up, is not printed. The drawing, which fills a sheet, comes after what fits on that of the facts. */
function printedOf(blocks: readonly Block[]): readonly Block[] {
  const onSite = (block: Block): boolean => block.is === 'steps' || (block.is === 'table' && (['drops', 'messages'].includes(block.id) || block.id.startsWith('tees-')))
  const printed = blocks.filter(block => !onSite(block))
  const drawings = printed.filter(({ is }) => is === 'drawing')
  const limits = printed.findIndex(block => block.is === 'table' && block.id === 'limits')
  return [
    ...printed.slice(0, limits).filter(({ is }) => is !== 'drawing'),
    ...drawings,
    ...printed.slice(limits),
    { is: 'paragraph', text: [muted('On the site only: the backbone part by part, every drop, what arrives at each tee and device, and the data message by message.')] },
  ]
}

/** About the bus itself, its parts and devices, and whatever names the bus. */
function findingsAbout({ findings }: ViewContext, { bus, backbone: { stations } }: BusResult): readonly LocatedFinding[] {
  const parts = new Set([bus.tag, ...stations.flatMap(({ part, device }) => [part.tag, ...(device === null ? [] : [device.tag])])])
  return findings.filter(({ id, subject, context }) => id.startsWith('CAN') && (parts.has(subject.id) || context?.['bus'] === bus.tag))
}

// --- first of all ----------------------------------------------------------------------------------------------------
function facts(context: ViewContext, result: BusResult): readonly { readonly label: string; readonly value: Text }[] {
  const { lengths, supply, load, bus } = result
  const len = supply.sections.reduce((sum, section) => sum + section.loadEquivalencyNumber, 0)
  return [
    { label: 'Within limits?', value: verdictText(context, result) },
    { label: 'Room left', value: roomText(context, result) },
    { label: 'Supply', value: feedText(context, result) },
    { label: 'Devices', value: [String(lengths.devices.value), ...(bus.suppliesDevices ? [`, LEN ${len} together`, muted(` (${sayForWorking('currentA', 0.05 * len)})`)] : [])] },
    { label: 'Backbone', value: lengths.backbone.status === 'computed' ? [say('backboneLengthM', lengths.backbone.output.backboneLengthM, context.vessel)] : [muted(`not assessed: ${lengths.backbone.reason}`)] },
    { label: 'Terminators', value: terminatorText(result) },
    ...bridgeEntries(context, result),
    { label: 'Data', value: load.total.status === 'computed' && load.messages.length > 0
      ? [`${loadText(load.total.output.nominalLoadPercent)} of its capacity in use, ${loadText(load.total.output.worstLoadPercent)} with every frame at its longest`, ...(load.missing.length === 0 ? [] : [muted(', and what is not recorded')])]
      : [muted('not assessed: what the devices send is not recorded')] },
  ]
}

/** What is outside first; nothing that is missing counts as within. */
function verdictText(context: ViewContext, result: BusResult): Text {
  const outside = limitRows(result).filter(({ state }) => state === 'outside').map(({ what }) => what)
  if (outside.length > 0) return [verdict('error', 'outside'), ` ${outside.map(what => what[0]!.toLowerCase() + what.slice(1)).join('; ')}`]
  const gaps = context.results.canBus.notAssessed.filter(({ subjectTag }) => subjectTag === result.bus.tag)
  // Sums for another bus than the one that is fitted prove nothing.
  if (result.disorders.length > 0) return [verdict('warning', 'doubtful'), ' its cables do not end where the backbone has them: see the findings']
  return gaps.length > 0 ? [verdict('not assessed', 'not assessed'), ` ${gaps.map(({ reason }) => reason).join('; ')}`] : [verdict('good', 'within'), ' every limit below']
}

function terminatorText({ termination: { terminatorTags, asItShouldBe, expected } }: BusResult): Text {
  const tags: Text = terminatorTags.length === 0 ? ['none'] : joined(terminatorTags.map(tag => [{ is: 'tag', text: tag }]))
  const reading = expected.status === 'computed' ? [`; ${sayForWorking('resistanceOhm', expected.output.resistanceOhm, 'result')} between the data wires with the bus off`] : []
  return asItShouldBe ? [...tags, ', one at each end', ...reading] : [verdict('error', 'outside'), ' ', ...tags, '; one belongs at each end', ...reading]
}

/** Devices that are on another bus as well, and what they pass on. */
function bridgeEntries({ results, tag }: ViewContext, { bus, backbone }: BusResult): readonly { readonly label: string; readonly value: Text }[] {
  const others = [...results.canBus.byBus.values()].filter(other => other.bus.tag !== bus.tag)
  const devices = backbone.stations.flatMap(({ device }) => device ?? [])
  const joins = devices.flatMap(device => others.flatMap(other => {
    const there = other.backbone.stations.find(station => station.device?.tag === device.tag)?.device
    return there == null ? [] : [[tag(device.tag), ' to ', tag(other.bus.tag), `: ${passingWords(device, there, bus.protocol === other.bus.protocol)}`] satisfies Text]
  }))
  return joins.length === 0 ? [] : [{ label: 'Joined by', value: joined(joins, '; ') }]
}

function passingWords(here: BusDevice, there: BusDevice, alike: boolean): string {
  const passed = (from: string | null, to: string | null) => here.forwards.filter(({ fromTerminal, toTerminal }) => fromTerminal === from && toTerminal === to)
    .map(({ only }) => (only === null ? 'all' : `PGN ${inWords(only)}`)).join(', ')
  const [brings, takes] = [passed(there.terminal, here.terminal), passed(here.terminal, there.terminal)]
  if (!alike) return 'a bus of another kind; what it sends on each is among the messages'
  if (brings === '' && takes === '') return 'passes nothing on as it comes'
  return [...(brings === '' ? [] : [`brings ${brings} here`]), ...(takes === '' ? [] : [`passes ${takes} on`])].join(', ')
}

// --- limits ----------------------------------------------------------------------------------------------------------
interface LimitRow { readonly what: string; readonly comparison: Comparison | null; readonly state: 'within' | 'outside' | 'not assessed'; readonly source: string }

function limitRows({ lengths, supply, load, termination }: BusResult): readonly LimitRow[] {
  const row = (what: string, comparison: Comparison | null): LimitRow =>
    ({ what, comparison, state: comparison === null ? 'not assessed' : comparison.within ? 'within' : 'outside', source: comparison === null ? '' : cite(comparison.limit.citation) })
  const sections = supply.sections.filter(({ deviceCount, insertionTags }) => deviceCount > 0 || insertionTags.length > 0)
  return [
    row('Length of the backbone', lengths.backboneComparison),
    ...(lengths.drops[0] === undefined ? [] : [row(`Longest drop, ${lengths.drops[0].cableTag}`, lengths.drops[0].comparison)]),
    ...(lengths.dropsComparison === null ? [] : [row('Drops together', lengths.dropsComparison)]),
    row('Number of devices', lengths.devices),
    { ...row('Terminators, one at each end', null), state: termination.asItShouldBe ? 'within' : 'outside' },
    ...sections.flatMap(({ solved, insertionTags }): readonly LimitRow[] => {
      if (solved === null) return [insertionTags.length === 1 ? row(`Supply at ${insertionTags[0]}`, null) : { ...row('Supply of each part by one insertion', null), state: 'outside' }]
      const { worst, tees, legs, protection, againstProtection, insertion } = solved
      const lowest = tees.flatMap(({ device }) => device ?? []).toSorted((a, b) => a.voltageV - b.voltageV)[0]
      const currents = legs.flatMap(({ stretches }) => stretches).filter(({ current }) => current !== null).toSorted((a, b) => a.current!.margin - b.current!.margin)
      return [
        ...(worst === null ? [] : [row(`Largest supply drop, to ${worst.tag}`, worst.drop)]),
        ...(insertion.highest === null ? [] : [row(`Highest voltage, at ${insertion.tag}`, insertion.highest)]),
        row(lowest === undefined ? 'Lowest voltage at a device' : `Lowest voltage, at ${lowest.tag}`, lowest?.lowest ?? null),
        ...(currents[0] === undefined ? [] : [row(`Most current in a cable, ${currents[0].cableTag}`, currents[0].current)]),
        row('Current against the protective device', againstProtection),
        row('Protective device against the cable', protection),
      ]
    }),
    ...(load.messages.length === 0 ? [row('Load with every frame at its longest', null)] : [row('Load with every frame at its longest', load.comparison)]),
  ]
}

const limitTable = (context: ViewContext, result: BusResult): Table => tableOf(limitRows(result), {
  id: 'limits',
  caption: 'Held against the limits',
  empty: '',
  level: ({ state }) => (state === 'outside' ? 'error' : state === 'not assessed' ? 'not assessed' : null),
  columns: [
    { title: 'What', width: 'text', cell: ({ what }) => [what] },
    { title: 'Value and limit', width: 'text', cell: ({ comparison, state }) => (comparison !== null ? comparisonText(comparison, context) : [verdict(state === 'within' ? 'good' : state === 'outside' ? 'error' : 'not assessed', state)]) },
    { title: 'Limit from', width: 'text', cell: ({ source }) => [muted(source)] },
  ],
})

// --- lengths ---------------------------------------------------------------------------------------------------------
function lengthBlocks(context: ViewContext, { lengths, termination }: BusResult): readonly Block[] {
  const { drops, dropsTogetherM } = lengths
  return [
    { is: 'heading', text: 'Lengths and terminators', anchor: 'lengths' },
    workingOf(context, 'Length of the backbone', lengths.backbone),
    tableOf(drops, {
      id: 'drops',
      caption: 'Drops, the longest first',
      empty: 'No drop cable is recorded.',
      note: [`Together ${sayForWorking('dropsTogetherM', dropsTogetherM, 'result')}.`],
      level: ({ comparison }) => (comparison.within ? null : 'error'),
      columns: [
        { title: 'Tee', width: 'tag', cell: ({ teeTag }) => [{ is: 'tag', text: teeTag }] },
        { title: 'Cable', width: 'tag', cell: ({ cableTag }) => [context.tag(cableTag)] },
        { title: 'Length', width: 'text', cell: ({ comparison }) => comparisonText(comparison, context) },
      ],
    }),
    workingOf(context, 'Resistance between the data wires', termination.expected),
  ]
}

// --- readings --------------------------------------------------------------------------------------------------------
const quantityNames: Readonly<Record<BusReading['quantity'], string>> = { resistanceOhm: 'resistance between the data wires', busLoadPercent: 'load', voltageV: 'voltage' }

/** How a voltage comes about: what is left by the table of tees, and the source as read instead of as reckoned. */
function fromText({ from }: Pick<BusReading, 'from'>): Text {
  if (from === null || from.nominalVoltageV === null) return []
  const nominal = sayForWorking('voltageV', from.nominalVoltageV)
  return [muted(from.sourceVoltageV === null ? ` for ${nominal} at the source: none was read there`
    : ` = ${sayForWorking('voltageV', from.leftV, 'result')} + ${sayForWorking('voltageV', from.sourceVoltageV)} at the source − ${nominal}`)]
}

function readingBlocks(context: ViewContext, { readings }: BusResult): readonly Block[] {
  if (readings.length === 0) return []
  return [{ is: 'heading', text: 'Measured against calculated', anchor: 'measured' }, tableOf(readings, {
    id: 'bus-readings',
    caption: 'Readings of the bus',
    empty: '',
    note: ['Accepted: resistance within 10 %, load within 5 points of what lies between nominal and worst, voltage not more than 0.3 V below what is left with every device at its most, moved by as much as the source was above its nominal voltage. Common practice, no source.'],
    level: ({ agrees, supersededBy }) => (agrees === false && supersededBy === null ? 'warning' : null),
    columns: [
      { title: 'Reading', width: 'tag', cell: ({ number, date }) => [number, ...(date === null ? [] : [lineBreak, muted(date)])] },
      { title: 'Of', width: 'text', cell: ({ quantity, atTag }) => [quantityNames[quantity], ...(atTag === null ? [] : [' at ', ...context.named(atTag)])] },
      { title: 'Measured', width: 'number', cell: ({ quantity, measured }) => [sayForWorking(quantity, measured)] },
      { title: 'Calculated', width: 'number', cell: ({ quantity, calculated, ...reading }) => (calculated === null ? dash : [sayForWorking(quantity, calculated, 'result'), ...fromText(reading)]) },
      { title: 'Verdict', width: 'text', cell: readingVerdict },
    ],
  })]
}

function readingVerdict({ agrees, words, supersededBy }: BusReading): Text {
  if (supersededBy !== null) return [muted(`replaced by reading ${supersededBy}`)]
  const said = agrees === null ? verdict('not assessed', 'not assessed') : agrees ? verdict('good', 'agrees') : verdict('warning', 'differs')
  return [said, ...(words === null ? [] : [` ${words}`])]
}
