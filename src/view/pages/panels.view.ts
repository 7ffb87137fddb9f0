/** Each panel, fuse block or switching module way by way, spare ways included. */
import { inWords } from '../../findings/words.js'
import type { Circuit, NetworkLoss, Panel } from '../../model/vessel.js'
import { designCurrentA } from '../../model/results.js'
import { say } from '../../units/format.js'
import { assessCircuit, circuitVerdict, verdictMark } from '../parts/assessment.js'
import type { ViewContext } from '../context.js'
import { findingCards } from '../parts/finding-cards.js'
import { fixedPages } from '../site-map.js'
import { byTag, tableOf } from '../tables.js'
import { counted, dash, joined, muted, orDash, orNotRecorded } from '../text.js'
import type { Block, Diagram, Page, Table, Text } from '../view-model.js'
import { cableCell, protectionText } from '../parts/circuit-parts.js'
import { cablesTable } from './cables.view.js'
import { deadBlocks, lossBlocks } from './fault-tracing/fault-blocks.js'
import { photographBlocks, whereItIs } from './location/location-blocks.js'
import { upkeepBlocks } from './maintenance/upkeep.js'
import { operatingBlocks } from './owner/operating.view.js'
import { markdownWithTags, proceduresAbout } from './owner/procedures.js'
import { chainText } from './equipment/equipment.view.js'
import { makerAndModel, placeText } from '../parts/item-parts.js'

export function panelPages(context: ViewContext, diagrams: ReadonlyMap<string | null, readonly Diagram[]>): readonly Page[] {
  const panels = context.vessel.panels.toSorted(byTag)
  return [
    {
      key: fixedPages.panels,
      title: 'Panels and modules',
      kicker: null,
      lead: ['Every panel, fuse block and switching module, with its ways used and spare.'],
      printed: null,
      trail: [],
      blocks: [panelsTable(context, panels)],
    },
    ...panels.map(panel => panelPage(context, panel, diagrams.get(panel.tag) ?? [])),
  ]
}

export function panelsTable(context: ViewContext, panels: readonly Panel[]): Table {
  return tableOf(panels, {
    id: 'panel-list',
    caption: 'Panels and modules',
    empty: 'No panel is recorded.',
    columns: [
      { title: 'Tag', width: 'tag', cell: panel => [context.tag(panel.tag)] },
      { title: 'Name', width: 'text', cell: panel => [panel.name] },
      { title: 'Kind', width: 'short', cell: panel => [panel.kind] },
      { title: 'Where', width: 'text', cell: panel => placeText(context, panel) },
      { title: 'Ways', width: 'number', cell: panel => orDash(panel.ways === null ? null : String(panel.ways)) },
      { title: 'Spare', width: 'number', cell: panel => { const spare = spareWays(context, panel); return orDash(spare === null ? null : String(spare.length)) } },
    ],
  })
}

/** Numbers of the ways that no circuit uses; null where they are not known. */
export const spareWays = ({ results }: ViewContext, panel: Panel): readonly number[] | null => results.reserve.byPoint.get(panel.tag)?.freeWays ?? null

/** `3: 5, 6 and 8`, or why it is not known. */
export function spareText(context: ViewContext, panel: Panel): Text {
  const spare = spareWays(context, panel)
  if (spare === null) return [muted(panel.ways === null ? 'number of ways not recorded' : 'not known: the way of a circuit is not recorded')]
  return [spare.length === 0 ? 'none' : `${spare.length}: ${inWords(spare.map(String))}`]
}

function panelPage(context: ViewContext, panel: Panel, diagrams: readonly Diagram[]): Page {
  const feeders = context.lookup.circuitsOfLoad.get(panel.tag) ?? []
  const findings = context.findingsBySubject.get(panel.tag) ?? []
  const module = panel.kind === 'switching module'
  const facts: Block = {
    is: 'facts', caption: null, entries: [
      { label: 'Where', value: placeText(context, panel) },
      { label: 'Fed by', value: feeders.length === 0 ? [muted('listed by no circuit')] : joined(feeders.map(feeder => [context.tag(feeder.tag), ` ${protectionText(feeder)}, `, ...chainText(context, feeder)]), { is: 'break' }) },
      { label: 'Design current of the feed', value: joined(feeders.map(feeder => { const current = designCurrentA(context.results.feeding.byCircuit.get(feeder.tag)); return [current === null ? muted('not assessed') : say('designCurrentA', current)] }), ' ') },
      { label: 'Rated current', value: orNotRecorded(panel.ratedCurrentA === null ? null : say('ratedCurrentA', panel.ratedCurrentA)) },
      { label: module ? 'Spare channels' : 'Spare ways', value: spareText(context, panel) },
      ...(module ? [{ label: 'When its network is lost', value: networkLossText(panel.networkLoss) }] : []),
      { label: 'Maker, model', value: orDash(makerAndModel(panel)) },
      { label: 'Status', value: orDash(panel.status) },
    ],
  }
  // On paper the chapter on fault tracing has what goes dead with it.
  const printed: readonly Block[] = [
    facts,
    waysTable(context, panel),
    emergencyTable(context, panel),
    ...diagrams,
  ]
  const blocks: readonly (Block | null)[] = [
    facts,
    ...deadBlocks(context, panel.tag),
    ...printed.slice(1),
    ...lossBlocks(context, panel.tag),
    ...proceduresAbout(context, panel.tag),
    ...operatingBlocks(context, panel),
    cablesTable(context, context.lookup.cablesAt.get(panel.tag) ?? [], { id: 'cables', caption: 'Cables of the panel’s own feed', seenFrom: panel.tag }),
    ...whereItIs(context, panel.tag),
    ...photographBlocks(context, [panel.tag]),
    ...upkeepBlocks(context, panel.tag),
    panel.notes === null ? null : { is: 'markdown', source: markdownWithTags(context, panel.notes) },
    findings.length === 0 ? null : { is: 'findings', empty: '', findings: findingCards(context, findings) },
  ]
  return {
    key: context.addressOf(panel.tag)!,
    title: `${panel.tag} ${panel.name}`,
    kicker: module ? 'Switching module' : 'Panel',
    lead: null,
    printed,
    trail: [{ text: 'Panels', to: fixedPages.panels }],
    blocks: blocks.filter(block => block !== null),
  }
}

/** A way with its circuit, or a run of spare ways. */
interface Way { readonly first: number | null; readonly last: number | null; readonly circuit: Circuit | null }

function runsOf(ways: readonly number[]): readonly Way[] {
  const runs: { first: number; last: number; circuit: null }[] = []
  for (const way of ways) {
    const run = runs.at(-1)
    if (run !== undefined && run.last === way - 1) run.last = way
    else runs.push({ first: way, last: way, circuit: null })
  }
  return runs
}

function waysTable(context: ViewContext, panel: Panel): Table {
  const circuits = context.lookup.circuitsFedFrom.get(panel.tag) ?? []
  const spare = spareWays(context, panel)
  const ways: readonly Way[] = [
    ...circuits.map(circuit => ({ first: circuit.way, last: circuit.way, circuit })),
    ...runsOf(spare ?? []),
  ].toSorted(byWay)
  const module = isModule(panel)
  return tableOf(ways, {
    id: 'ways',
    caption: module ? 'Channel by channel: supply' : 'Way by way: supply',
    empty: 'No circuit is recorded.',
    note: [
      `${counted(circuits.length, 'circuit')}, ${spare === null ? 'spare ways not known' : counted(spare.length, `spare ${wayWord(panel)}`)}. `,
      'Conductor: the cable that can carry least between the device and the loads, with its current-carrying capacity.',
    ],
    columns: [
      { title: module ? 'Channel' : 'Way', width: 'number', cell: ({ first, last }) => orDash(first === null ? null : first === last ? String(first) : `${first} to ${last}`) },
      { title: 'Circuit', width: 'text', cell: ({ circuit }) => (circuit === null ? [muted('spare')] : [context.tag(circuit.tag), ` ${circuit.name}`]) },
      { title: 'Feeds', width: 'text', cell: ({ circuit }) => (circuit === null ? dash : joined(circuit.loadTags.map(context.named), { is: 'break' })) },
      { title: 'Current', width: 'number', cell: ({ circuit }) => (circuit === null ? dash : currentOf(context, circuit)) },
      { title: module ? 'Set to' : 'Protection', width: 'short', cell: ({ circuit }) => (circuit === null ? dash : [settingText(circuit)]) },
      { title: 'Conductor', width: 'short', cell: ({ circuit }) => (circuit === null ? dash : conductorText(context, circuit)) },
      { title: 'Verdict', width: 'short', cell: ({ circuit }) => (circuit === null ? dash : [verdictMark(circuitVerdict(assessCircuit(context, circuit)))]) },
    ],
  })
}

/** How each circuit stands and how it is worked when something above it fails. A panel without electronics has no network to lose. */
function emergencyTable(context: ViewContext, panel: Panel): Table {
  const circuits = (context.lookup.circuitsFedFrom.get(panel.tag) ?? []).toSorted((a, b) => byWay({ first: a.way }, { first: b.way }))
  const module = isModule(panel)
  const bypassable = module || circuits.some(({ manualBypass }) => manualBypass !== null)
  return tableOf(circuits, {
    id: 'emergency-working',
    caption: module ? 'Channel by channel: emergency working' : 'Way by way: emergency working',
    empty: 'No circuit is recorded.',
    ...(module ? { note: ['A module that is itself dead, or without supply, is to be expected to feed nothing: go by the manual bypass.'] } : {}),
    columns: [
      { title: module ? 'Channel' : 'Way', width: 'number', cell: circuit => orDash(circuit.way === null ? null : String(circuit.way)) },
      { title: 'Circuit', width: 'text', cell: circuit => [context.tag(circuit.tag), ` ${circuit.name}`] },
      { title: 'Class', width: 'short', cell: circuit => [circuit.loadClass] },
      { title: 'Normally', width: 'short', cell: circuit => [circuit.normalState] },
      ...(module ? [{ title: 'Network lost', width: 'short' as const, cell: (circuit: Circuit) => networkLossText(circuit.networkLoss ?? panel.networkLoss) }] : []),
      ...(bypassable ? [{ title: 'Manual bypass', width: 'text' as const, cell: (circuit: Circuit) => (module ? orNotRecorded(circuit.manualBypass) : orDash(circuit.manualBypass)) }] : []),
    ],
  })
}

const isModule = ({ kind }: Panel): boolean => kind === 'switching module'
const wayWord = (panel: Panel): string => (isModule(panel) ? 'channel' : 'way')
const byWay = (a: { readonly first: number | null }, b: { readonly first: number | null }): number =>
  (a.first ?? Number.MAX_VALUE) - (b.first ?? Number.MAX_VALUE)

const afterNetworkLoss: Readonly<Record<NetworkLoss, string>> = { hold: 'stays as it is', off: 'goes off', on: 'goes on' }
const networkLossText = (loss: NetworkLoss | null): Text => orNotRecorded(loss === null ? null : afterNetworkLoss[loss])

/** An electronic channel by the current it is set to, all else by its device. */
const settingText = (circuit: Circuit): string =>
  (circuit.protection?.device === 'electronic channel' ? say('ratedCurrentA', circuit.protection.ratedCurrentA) : protectionText(circuit))

function conductorText(context: ViewContext, { tag }: Circuit): Text {
  const protection = context.results.protection.byCircuit.get(tag)
  if (protection?.weakestCableTag == null || protection.weakestCapacityA === null) return [muted('not assessed')]
  return [...cableCell(context, [protection.weakestCableTag]), { is: 'break' }, say('currentCarryingCapacityA', protection.weakestCapacityA)]
}

function currentOf(context: ViewContext, circuit: Circuit): Text {
  const current = designCurrentA(context.results.feeding.byCircuit.get(circuit.tag))
  return [current === null ? muted('not assessed') : say('designCurrentA', current)]
}
