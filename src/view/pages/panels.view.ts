/** Each panel, fuse block or switching module way by way, spare ways included. */
import type { Circuit, Panel } from '../../model/vessel.js'
import { designCurrentA } from '../../model/results.js'
import { say } from '../../units/format.js'
import { assessCircuit, circuitVerdict, verdictMark } from '../assessment.js'
import type { ViewContext } from '../context.js'
import { findingCards } from '../finding-cards.js'
import { fixedPages } from '../site-map.js'
import { byTag, tableOf } from '../tables.js'
import { counted, dash, joined, muted, orDash, orNotRecorded } from '../text.js'
import type { Block, Diagram, Page, Table } from '../view-model.js'
import { protectionText } from './circuit-parts.js'
import { cablesTable } from './cables.view.js'
import { chainText, makerAndModel, placeText } from './equipment.view.js'

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
      { title: 'Spare', width: 'number', cell: panel => orDash(panel.ways === null ? null : String(spareWays(context, panel).length)) },
    ],
  })
}

/** Numbers of the ways that no circuit uses. */
export function spareWays(context: ViewContext, panel: Panel): readonly number[] {
  const used = new Set((context.lookup.circuitsFedFrom.get(panel.tag) ?? []).map(circuit => circuit.way))
  return Array.from({ length: panel.ways ?? 0 }, (_, i) => i + 1).filter(way => !used.has(way))
}

function panelPage(context: ViewContext, panel: Panel, diagrams: readonly Diagram[]): Page {
  const feeders = context.lookup.circuitsOfLoad.get(panel.tag) ?? []
  const findings = context.findingsBySubject.get(panel.tag) ?? []
  const spare = spareWays(context, panel)
  const module = panel.kind === 'switching module'
  const printed: readonly Block[] = [
    {
      is: 'facts', caption: null, entries: [
        { label: 'Where', value: placeText(context, panel) },
        { label: 'Fed by', value: feeders.length === 0 ? [muted('listed by no circuit')] : joined(feeders.map(feeder => [context.tag(feeder.tag), ` ${protectionText(feeder)}, `, ...chainText(context, feeder)]), { is: 'break' }) },
        { label: 'Design current of the feed', value: joined(feeders.map(feeder => { const current = designCurrentA(context.results.feeding.byCircuit.get(feeder.tag)); return [current === null ? muted('not assessed') : say('designCurrentA', current)] }), ' ') },
        { label: 'Rated current', value: orNotRecorded(panel.ratedCurrentA === null ? null : say('ratedCurrentA', panel.ratedCurrentA)) },
        { label: module ? 'Spare channels' : 'Spare ways', value: panel.ways === null ? [muted('number of ways not recorded')] : [spare.length === 0 ? 'none' : `${spare.length}: ${spare.join(', ')}`] },
        { label: 'Maker, model', value: orDash(makerAndModel(panel)) },
        { label: 'Status', value: orDash(panel.status) },
      ],
    },
    waysTable(context, panel, spare),
    ...diagrams,
  ]
  const blocks: readonly (Block | null)[] = [
    ...printed,
    cablesTable(context, context.lookup.cablesAt.get(panel.tag) ?? [], { id: 'cables', caption: 'Cables of the panel’s own feed', seenFrom: panel.tag }),
    panel.notes === null ? null : { is: 'markdown', source: panel.notes },
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

function waysTable(context: ViewContext, panel: Panel, spare: readonly number[]): Table {
  const circuits = context.lookup.circuitsFedFrom.get(panel.tag) ?? []
  const ways: readonly Way[] = [
    ...circuits.map(circuit => ({ first: circuit.way, last: circuit.way, circuit })),
    ...runsOf(spare),
  ].toSorted((a, b) => (a.first ?? Infinity) - (b.first ?? Infinity))
  const module = panel.kind === 'switching module'
  return tableOf(ways, {
    id: 'ways',
    caption: module ? 'Channel by channel' : 'Way by way',
    empty: 'No circuit is recorded.',
    note: [`${counted(circuits.length, 'circuit')}, ${counted(spare.length, 'spare way')}.`],
    columns: [
      { title: module ? 'Channel' : 'Way', width: 'number', cell: ({ first, last }) => orDash(first === null ? null : first === last ? String(first) : `${first} to ${last}`) },
      { title: 'Circuit', width: 'tag', cell: ({ circuit }) => (circuit === null ? dash : [context.tag(circuit.tag)]) },
      { title: 'Name', width: 'text', cell: ({ circuit }) => (circuit === null ? [muted('spare')] : [circuit.name]) },
      { title: 'Protection', width: 'short', cell: ({ circuit }) => (circuit === null ? dash : [protectionText(circuit)]) },
      { title: 'Design current', width: 'number', cell: ({ circuit }) => orDash(circuit === null ? null : currentOf(context, circuit)) },
      { title: 'Feeds', width: 'text', cell: ({ circuit }) => (circuit === null ? dash : joined(circuit.loadTags.map(context.named), { is: 'break' })) },
      ...(module ? [{ title: 'Manual bypass', width: 'text' as const, cell: ({ circuit }: Way) => orDash(circuit?.manualBypass ?? null) }] : []),
      { title: 'Verdict', width: 'short', cell: ({ circuit }) => (circuit === null ? dash : [verdictMark(circuitVerdict(assessCircuit(context, circuit)))]) },
    ],
  })
}

function currentOf(context: ViewContext, circuit: Circuit): string | null {
  const current = designCurrentA(context.results.feeding.byCircuit.get(circuit.tag))
  return current === null ? null : say('designCurrentA', current)
}
