/** The supply of a CAN bus: how it is fed, what flows where, and what arrives at each tee. */
import { inWords } from '../../../findings/words.js'
import type { BusResult, Leg, SolvedSection, Stretch, SupplySection, TeeSupply } from '../../../model/results/can-bus.js'
import type { Comparison } from '../../../model/results.js'
import { say, sayForWorking } from '../../../units/format.js'
import { comparisonText } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { tableOf } from '../../tables.js'
import { counted, dash, joined, muted, verdict } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

/** How it is fed, in a sentence or two. */
export function feedText(context: ViewContext, { supply: { suppliesDevices, sections }, backbone }: BusResult): Text {
  if (!suppliesDevices) return ['The backbone carries data only: each device has its supply elsewhere.']
  const fed = sections.filter(({ deviceCount, insertionTags }) => deviceCount > 0 || insertionTags.length > 0)
  if (fed.length === 0) return ['Nothing hangs on it that it could supply.']
  const parts = fed.length === 1 ? [] : [`Split supply: ${counted(fed.length, 'part')}, parted by ${inWords(backbone.stations.filter(({ part }) => part.kind === 'isolator').map(({ part }) => part.tag))}. `]
  return [...parts, ...joined(fed.map(section => sectionText(context, section)), ' ')]
}

function sectionText(context: ViewContext, { insertionTags, solved, deviceCount }: SupplySection): Text {
  if (insertionTags.length === 0) return [`A part with ${counted(deviceCount, 'device')} has no power insertion.`]
  if (insertionTags.length > 1) return [`${inWords(insertionTags)} feed one stretch: two supplies side by side.`]
  if (solved === null) return [`Fed at ${insertionTags[0]}.`]
  const { insertion, legs } = solved
  const by: Text = insertion.circuitTag === null ? [] : [' by ', context.tag(insertion.circuitTag)]
  const voltage: Text = insertion.voltageV === null ? [] : [`, ${say('voltageV', insertion.voltageV)} there`]
  const loaded = legs.filter(({ loadEquivalencyNumber, lengthM }) => loadEquivalencyNumber > 0 && lengthM > 0)
  const leg = ({ side, loadEquivalencyNumber, lengthM, momentLenM }: Leg): string =>
    `LEN ${loadEquivalencyNumber} over ${say('lengthM', lengthM, context.vessel)} ${side} (LEN times distance ${momentLenM.toFixed(0)})`
  const kind = loaded.length > 1 ? 'Middle-fed' : loaded.length === 1 ? 'End-fed' : 'Fed'
  return [`${kind} at ${insertion.tag}`, ...by, ...voltage, ...(loaded.length === 0 ? [] : [`: ${loaded.map(leg).join(', ')}`]), '.', ...balanceText(loaded)]
}

/** The insertion is best where both products are alike. */
function balanceText([one, other]: readonly Leg[]): Text {
  if (one === undefined || other === undefined) return []
  const [less, more] = [one, other].toSorted((a, b) => a.momentLenM - b.momentLenM)
  return more!.momentLenM > 2 * less!.momentLenM ? [` The load lies ${more!.side}: an insertion further that way would balance it.`] : [' Both sides are about in balance.']
}

export function supplyBlocks(context: ViewContext, result: BusResult): readonly Block[] {
  const solved = result.supply.sections.flatMap(section => section.solved ?? [])
  if (solved.length === 0) return []
  return [
    { is: 'heading', text: 'Supply', anchor: 'supply' },
    ...solved.flatMap((section, i): readonly Block[] => [
      insertionParagraph(context, section), stretchTable(context, section, i), teeTable(context, section, i), ...workings(context, section),
    ]),
  ]
}

function insertionParagraph(context: ViewContext, { insertion, current }: SolvedSection): Block {
  const { tag, voltageV, nominalVoltageV, feedDropV, regulated, circuitTag, missing, feedResistanceOhm } = insertion
  const load = `LEN ${sayForWorking('loadEquivalencyNumber', current.input.loadEquivalencyNumber)} × 0.05 A = ${sayForWorking('currentA', current.output.currentA)}`
  const from: Text = voltageV === null ? [muted(missing ?? '')]
    : regulated ? [`a regulated supply of ${say('voltageV', voltageV)}`]
    : [`${say('voltageV', nominalVoltageV!)} of the source less ${sayForWorking('voltageDropV', feedDropV!, 'result')} that `, context.tag(circuitTag!), ` loses on the way = ${say('voltageV', voltageV)}`, ...(feedResistanceOhm === null ? [] : [`; each ampere that is added takes ${sayForWorking('voltageDropV', feedResistanceOhm, 'result')} more`])]
  return { is: 'paragraph', text: ['At ', { is: 'tag', text: tag }, ': ', ...from, `. Load of this part: ${load}, every device at its most.`] }
}

/** The current itself is printed in full, so that the drop follows from it. */
const limitText = ({ limit, within }: Comparison): Text => [muted(` limit ${limit.relation} ${say('currentA', limit.value)}`), ' ', verdict(within ? 'good' : 'error', within ? 'within' : 'outside')]

interface StretchRow { readonly leg: Leg; readonly stretch: Stretch }
function stretchTable(context: ViewContext, { legs }: SolvedSection, i: number): Table {
  const rows = legs.flatMap(leg => leg.stretches.map((stretch): StretchRow => ({ leg, stretch })))
  return tableOf(rows, {
    id: `stretches-${i + 1}`,
    caption: 'From the power insertion outwards: current and voltage drop of each cable',
    empty: 'Everything is plugged together at one place.',
    note: ['ΔU = 2 · R′ · l · I with I of all devices beyond, 0.05 A for each LEN. Sum: from the insertion to the far end of the cable.'],
    level: ({ stretch: { current } }) => (current !== null && !current.within ? 'error' : null),
    columns: [
      { title: 'Cable', width: 'tag', cell: ({ stretch }) => [context.tag(stretch.cableTag)] },
      { title: 'To', width: 'tag', cell: ({ stretch }) => [{ is: 'tag', text: stretch.farTag }] },
      { title: 'LEN beyond', width: 'number', cell: ({ stretch }) => [String(stretch.loadEquivalencyNumber)] },
      { title: 'Current', width: 'text', cell: ({ stretch: { current, drop } }) => [sayForWorking('currentA', drop.input.currentA), ...(current === null ? [] : limitText(current))] },
      { title: 'Length', width: 'number', cell: ({ stretch }) => [sayForWorking('lengthM', stretch.drop.input.lengthM)] },
      { title: 'R′', width: 'number', cell: ({ stretch }) => [sayForWorking('resistanceOhmPerM', stretch.drop.input.resistanceOhmPerM)] },
      { title: 'Drop', width: 'number', cell: ({ stretch }) => [sayForWorking('voltageDropV', stretch.drop.output.voltageDropV, 'result')] },
      { title: 'Sum', width: 'number', cell: ({ stretch }) => [sayForWorking('voltageDropV', stretch.totalDropV, 'result')] },
    ],
  })
}

/** What the drops are reckoned with: one figure as a rule, else each with its cables. */
function dropResistances(tees: readonly TeeSupply[]): string {
  const drops = tees.flatMap(({ device }) => (device?.dropCable == null ? [] : [{ tag: device.tag, ohmPerM: device.dropCable.input.resistanceOhmPerM }]))
  const kinds = [...new Set(drops.map(({ ohmPerM }) => ohmPerM))]
  const words = kinds.map(kind => `${sayForWorking('resistanceOhmPerM', kind)}${kinds.length === 1 ? '' : ` to ${inWords(drops.filter(({ ohmPerM }) => ohmPerM === kind).map(({ tag }) => tag))}`}`)
  return kinds.length === 0 ? '' : ` R′ of the drops: ${words.join('; ')}.`
}

function teeTable(context: ViewContext, { tees }: SolvedSection, i: number): Table {
  return tableOf(tees, {
    id: `tees-${i + 1}`,
    caption: 'What arrives at each tee and device',
    empty: 'No tee is recorded.',
    note: [`At the device: less 2 · R′ · l · I of its own drop cable, with the length of the drop and 0.05 A for each LEN of the device.${dropResistances(tees)}`],
    level: ({ drop, device }) => (!drop.within || device?.lowest.within === false ? 'error' : null),
    columns: [
      { title: 'Tee', width: 'tag', cell: ({ tag }) => [{ is: 'tag', text: tag }] },
      { title: 'From the insertion', width: 'number', cell: ({ distanceM }) => [say('distanceM', distanceM, context.vessel)] },
      { title: 'Drop', width: 'text', cell: ({ drop }) => comparisonText(drop, context) },
      { title: 'At the tee', width: 'number', cell: ({ voltageV }) => sayOrDash('voltageV', voltageV, context.vessel) },
      { title: 'At the device', width: 'text', cell: ({ device }) => (device === null ? dash : [context.tag(device.tag), ' ', ...comparisonText(device.lowest, context)]) },
    ],
  })
}

/** The far end of the tee that is worst off, its last cable in full, and the quick sum of the guides beside it. */
function workings(context: ViewContext, { legs, worst }: SolvedSection): readonly Block[] {
  return [
    ...lastCable(context, legs, worst),
    ...legs.flatMap(({ lumped, side }) => (lumped === null ? [] : [workingOf(context, `Voltage drop ${side} by the guides`, lumped, {
      remarks: [{ label: 'what it is', text: 'an upper bound: all devices at the far end' }],
    })])),
  ]
}

function lastCable(context: ViewContext, legs: readonly Leg[], worst: TeeSupply | null): readonly Block[] {
  const leg = legs.find(({ side }) => side === worst?.side)
  const onTheWay = leg?.stretches.filter(({ totalDropV, loadEquivalencyNumber }) => loadEquivalencyNumber > 0 && totalDropV <= (worst?.dropV ?? 0) * (1 + 1e-9)) ?? []
  const last = onTheWay.at(-1)
  if (worst === null || last === undefined) return []
  const terms = onTheWay.map(({ drop }) => sayForWorking('voltageDropV', drop.output.voltageDropV, 'result')).join(' + ')
  return [
    workingOf(context, `Voltage drop of ${last.cableTag}, the last cable before ${worst.tag}`, last.drop),
    { is: 'paragraph', text: ['To ', { is: 'tag', text: worst.tag }, `, where most is lost: ${terms} = ${sayForWorking('voltageDropV', worst.dropV, 'result')}.`] },
  ]
}
