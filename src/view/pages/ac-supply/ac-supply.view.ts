/** Mains and shore power: what there is, how it is switched, what it carries, what protects it. */
import type { AcBus, AcSource } from '../../../model/results/ac-supply.js'
import { designCurrentA } from '../../../model/results.js'
import { equipmentKind } from '../../../references/equipment-kinds.js'
import { say } from '../../../units/format.js'
import { assessCircuit, circuitVerdict, verdictMark } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { fixedPages } from '../../site-map.js'
import { byTag, tableOf } from '../../tables.js'
import { counted, joined, muted, orDash } from '../../text.js'
import type { Block, Page, Table, Text } from '../../view-model.js'
import { loadBlocks } from './ac-supply-loads.js'
import { protectionBlocks } from './ac-supply-protection.js'
import { stateText } from './ac-supply-state.js'
import { foundBlocks } from '../../parts/found-blocks.js'
import { protectionText } from '../../parts/circuit-parts.js'
import { cautionBlocks } from '../../cautions/cautions.js'

export function acSupplyPages(context: ViewContext): readonly Page[] {
  const { sources } = context.results.acSupply
  return [{
    key: fixedPages.acSupply,
    title: 'Mains and shore power',
    kicker: null,
    lead: lead(context),
    printed: null,
    trail: [],
    blocks: sources.length === 0 ? silentBlocks(context) : [
      ...cautions(context),
      sourceTable(context, sources),
      ...switchingBlocks(context),
      ...(sources.some(({ shore }) => shore !== null) ? connectingBlocks : []),
      ...loadBlocks(context),
      ...protectionBlocks(context),
      ...circuitBlocks(context),
      ...found(context),
    ],
  }]
}

function lead({ vessel, results: { acSupply: { sources } } }: ViewContext): Text {
  if (sources.length > 0) return [`${counted(sources.length, 'source')} of mains voltage (a.c.). Work on mains voltage is for licensed persons; this page tells how it is arranged and what was checked.`]
  return hasAcCables(vessel)
    ? ['There are mains-voltage (a.c.) cables on board and no source with an output is recorded, so nothing about them is assessed.']
    : ['No mains voltage (a.c.) is recorded on this vessel.']
}

const hasAcCables = ({ cables, cableTypes }: ViewContext['vessel']): boolean => {
  const acTypes = new Set(cableTypes.filter(({ use }) => use === 'ac power').map(({ tag }) => tag))
  return cables.some(({ typeTag }) => typeTag !== null && acTypes.has(typeTag))
}

/** Without a source on record there may still be mains voltage, and then its cautions hold. */
const silentBlocks = (context: ViewContext): readonly Block[] =>
  (hasAcCables(context.vessel) || context.results.acSupply.notAssessed.length > 0 ? [...cautions(context), ...found(context)] : [])

/** Those that say how to make mains voltage dead; how to connect shore power the page says itself. */
const cautions = (context: ViewContext): readonly Block[] => cautionBlocks(context, { pages: ['mains'] })

// --- sources and switching -------------------------------------------------------------------------------------------
const sourceTable = (context: ViewContext, sources: readonly AcSource[]): Table => tableOf(sources.toSorted(byTag), {
  id: 'ac-sources',
  caption: 'Sources of mains voltage',
  empty: '',
  columns: [
    { title: 'Source', width: 'text', cell: source => [...context.named(source.tag), ...(source.terminal === null ? [] : [muted(` terminal ${source.terminal}`)])] },
    { title: 'Kind', width: 'short', cell: ({ kind }) => [equipmentKind(kind).title] },
    { title: 'Voltage', width: 'number', cell: ({ nominalVoltageV }) => [say('nominalVoltageV', nominalVoltageV)] },
    { title: 'Frequency', width: 'number', cell: ({ frequencyHz }) => sayOrDash('frequencyHz', frequencyHz, context.vessel) },
    { title: 'Rated', width: 'number', cell: ({ ratedCurrentA }) => sayOrDash('ratedCurrentA', ratedCurrentA, context.vessel) },
    { title: 'Gives', width: 'number', cell: ({ rating }) => sayOrDash('ratedPowerVa', rating.status === 'computed' ? rating.output.ratedPowerVa : null, context.vessel) },
    { title: 'Where', width: 'text', cell: ({ tag }) => placeOf(context, tag) },
  ],
  note: ['All of these must be off, unplugged or isolated before anything on mains voltage is dead. What each feeds is under its circuits.'],
})

function placeOf(context: ViewContext, tag: string): Text {
  const item = context.lookup.items.get(tag)
  return item?.zoneTag == null ? orDash(item?.location ?? null) : [...context.named(item.zoneTag), ...(item.location === null ? [] : [muted(` (${item.location})`)])]
}

function switchingBlocks(context: ViewContext): readonly Block[] {
  const { buses } = context.results.acSupply
  const heading: Block = { is: 'heading', text: 'How the sources are switched', anchor: 'switching' }
  if (buses.length === 0) return [heading, { is: 'paragraph', text: ['No panel or busbar can be fed by more than one source: there is nothing to choose between.'] }]
  return [
    heading,
    { is: 'paragraph', text: ['Two sources must never meet. A selector or a mechanical interlock lets one of them through at a time; change over with the loads switched off.'] },
    ...buses.map((bus): Block => ({ is: 'paragraph', text: busText(context, bus) })),
    tableOf(buses.flatMap(bus => bus.feeders.map(feeder => ({ bus, feeder }))), {
      id: 'ac-switching',
      caption: 'Feeders of panels with a choice of source',
      empty: '',
      level: ({ bus }) => (bus.joined.state === 'missed' || bus.alike.state === 'missed' ? 'error' : null),
      columns: [
        { title: 'Feeds', width: 'tag', cell: ({ bus }) => [context.tag(bus.tag)] },
        { title: 'Circuit', width: 'tag', cell: ({ feeder }) => [context.tag(feeder.circuitTag)] },
        { title: 'From', width: 'text', cell: ({ feeder }) => joined(feeder.sourceTags.map(context.named), { is: 'break' }) },
        { title: 'Interlock', width: 'text', cell: ({ feeder }) => (feeder.interlockTags.length === 0 ? [muted('none recorded')] : joined(feeder.interlockTags.map(context.named))) },
        { title: 'Normally', width: 'short', cell: ({ feeder }) => [feeder.normallyClosed ? 'closed' : 'open'] },
      ],
    }),
    tableOf(buses, {
      id: 'ac-switching-checks',
      caption: 'Whether sources can meet',
      empty: '',
      columns: [
        { title: 'Panel or busbar', width: 'text', cell: ({ tag }) => context.named(tag) },
        { title: 'One source at a time', width: 'text', cell: ({ joined: requirement }) => stateText(context, requirement) },
        { title: 'Alike', width: 'text', cell: ({ alike }) => stateText(context, alike) },
      ],
    }),
  ]
}

/** In plain words: where it comes from as a rule, and from where else. */
function busText(context: ViewContext, { tag, feeders }: AcBus): Text {
  const from = (closed: boolean): readonly Text[] => feeders.filter(({ normallyClosed }) => normallyClosed === closed).map(({ sourceTags }) => joined(sourceTags.map(context.named), ' or '))
  const [usual, other] = [from(true), from(false)]
  return [
    ...context.named(tag),
    ...(usual.length === 0 ? [' has no usual source on record'] : [' is normally fed from ', ...joined(usual, ' and ')]),
    ...(other.length === 0 ? ['.'] : ['; it can be switched to ', ...joined(other, ' or '), '.']),
  ]
}

const connectingBlocks: readonly Block[] = [
  { is: 'heading', text: 'Connecting and disconnecting shore power', anchor: 'connecting' },
  {
    is: 'markdown', source: `To connect:

1. Main shore breaker on board off. Loads off.
2. Look at cable, plugs and inlet: dry, whole, not browned by heat. Never use one that is damaged, wet inside or altered.
3. Plug in on board first, then ashore. Leave slack for the tide, and keep the plug out of the water.
4. Switch on ashore. Look at the polarity indicator, if there is one. If it shows reversed polarity, switch off, unplug and tell the marina.
5. Main shore breaker on. Press the test button of the residual-current device once a month: it must trip. Then reset it.
6. Switch the loads on one after the other and stay within what the connection gives.

To disconnect:

1. Loads off, then the main shore breaker on board.
2. Switch off ashore and unplug there first. Then unplug on board and cap the inlet.

*Common practice. The instructions of the marina, of the equipment's makers and of a licensed electrician come first.*`,
  },
]

// --- circuits and what is left ---------------------------------------------------------------------------------------
function circuitBlocks(context: ViewContext): readonly Block[] {
  const tags = new Set(context.results.acSupply.sources.flatMap(({ circuitTags }) => circuitTags))
  const rows = context.vessel.circuits.filter(({ tag }) => tags.has(tag)).toSorted(byTag).map(circuit => ({ circuit, assessment: assessCircuit(context, circuit) }))
  return [
    { is: 'heading', text: 'Circuits at mains voltage', anchor: 'circuits' },
    tableOf(rows, {
      id: 'ac-circuits',
      caption: 'Voltage drop and capacity',
      empty: 'No circuit is fed from these sources.',
      level: ({ assessment }) => (circuitVerdict(assessment).level === 'error' ? 'error' : null),
      columns: [
        { title: 'Circuit', width: 'tag', cell: ({ circuit }) => [context.tag(circuit.tag)] },
        { title: 'Name', width: 'text', cell: ({ circuit }) => [circuit.name] },
        { title: 'Protection', width: 'short', cell: ({ circuit }) => [protectionText(circuit)] },
        { title: 'Design current', width: 'number', cell: ({ circuit }) => sayOrDash('designCurrentA', designCurrentA(context.results.feeding.byCircuit.get(circuit.tag)), context.vessel) },
        { title: 'Voltage drop', width: 'number', cell: ({ assessment: { drop } }) => sayOrDash('voltageDropPercent', drop?.worst?.voltageDropPercent, context.vessel) },
        { title: 'Capacity', width: 'number', cell: ({ assessment: { protection } }) => sayOrDash('capacityA', protection?.weakestCapacityA, context.vessel) },
        { title: 'Verdict', width: 'short', cell: ({ assessment }) => [verdictMark(circuitVerdict(assessment))] },
      ],
      note: ['The working of each figure is on the circuit’s own page, on paper in Calculations. Capacity: the least current-carrying capacity among the cables behind the device.'],
    }),
  ]
}

const found = (context: ViewContext): readonly Block[] => foundBlocks(context, { letters: 'ACS', notAssessed: context.results.acSupply.notAssessed })
