/** The wire lists: zone by zone, terminal by terminal, with boxes for the pen. */
import { slug } from '../../../model/address.js'
import { cableLengthM } from '../../../model/results.js'
import type { CanBus, Tag } from '../../../model/vessel.js'
import { cite } from '../../../references/bibliography.js'
import { conductorColours, networkPlugPins } from '../../../references/tables/conductor-colours.js'
import { say, saySize } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { type ColumnOf, tableOf } from '../../tables.js'
import { counted, joined, lineBreak, linkTo, muted, notRecorded } from '../../text.js'
import type { Block, Facts, Page, PageKey, Table, Text } from '../../view-model.js'
import { endNamed, routeText } from '../cables.view.js'
import type { Conductor } from './conductors.js'
import { type WireList, wireLists, type WireRow } from './wire-rows.js'

/** What has no zone stands on a page whose address no zone can have. */
const wireListKey = (zoneTag: Tag | null): PageKey => (zoneTag === null ? `${fixedPages.workshop}/zone-not-recorded` : `${fixedPages.workshop}/wires-${slug(zoneTag)}`)
export const zoneName = (context: ViewContext, zoneTag: Tag | null): string => (zoneTag === null ? 'zone not recorded' : context.nameOf(zoneTag) ?? zoneTag)

export const wireListPages = (context: ViewContext): readonly Page[] => wireLists(context).map((list): Page => ({
  key: wireListKey(list.zoneTag),
  title: list.zoneTag === null ? 'Wires: zone not recorded' : `Wires: ${zoneName(context, list.zoneTag)}`,
  kicker: 'Wire list',
  lead: list.zoneTag === null ? ['What ends where no zone is recorded. Record the zone of the item, and it moves to the list of that zone.'] : null,
  printed: [wireTable(context, list, { toTick: true }), ...joinedBlocks(context, list.zoneTag)],
  trail: [{ text: 'Workshop documents', to: fixedPages.workshop }],
  blocks: [wireTable(context, list), ...joinedBlocks(context, list.zoneTag)],
}))

const tick: Text = ['☐']
const boxes: readonly ColumnOf<WireRow>[] = [
  { title: 'Pulled', width: 'number', align: 'center', cell: ({ is }) => (is === 'cable' ? tick : []) },
  { title: 'Terminated', width: 'number', align: 'center', cell: () => tick },
  { title: 'Checked', width: 'number', align: 'center', cell: () => tick },
]

/** Boxes are for paper: nobody ticks a screen. */
function wireTable(context: ViewContext, { rows }: WireList, { toTick = false } = {}): Table {
  const firstOf = new Set(rows.filter((row, i) => i === 0 || rows[i - 1]!.ownerTag !== row.ownerTag))
  return tableOf(rows, {
    id: 'wire-list',
    layout: 'wire list',
    caption: counted(rows.filter(({ is }) => is === 'cable').length, 'end of a cable', 'ends of cables'),
    empty: '',
    columns: [
      { title: 'At', width: 'text', cell: row => hereText(context, row, firstOf.has(row)) },
      { title: 'Cable', width: 'short', cell: row => cableText(context, row) },
      { title: 'Conductors', width: 'text', cell: row => conductorsText(row.conductors) },
      { title: 'Label at this end', width: 'text', cell: ({ label, is }) => (label === null ? [muted(is === 'wire' ? 'as its cable' : '–')] : [{ is: 'tag', text: label }]) },
      { title: 'Type, size', width: 'short', cell: row => typeText(context, row) },
      { title: 'To', width: 'text', cell: row => farText(context, row) },
      { title: 'Length, route', width: 'short', cell: row => lengthText(context, row) },
      ...(toTick ? boxes : []),
    ],
  })
}

function hereText(context: ViewContext, { here, ownerTag }: WireRow, first: boolean): Text {
  const isWay = ownerTag !== here.tag
  const circuit = context.lookup.circuits.get(here.tag)
  const name = circuit !== undefined ? circuit.name : first ? context.nameOf(here.tag) ?? busPartName(context, here.tag) : null
  const owner = isWay && first ? ` of ${ownerTag} ${context.nameOf(ownerTag) ?? ''}` : ''
  const words = `${name ?? ''}${owner}`.trim()
  return [context.tag(here.tag), ...(here.terminal === null ? [] : [`:${here.terminal}`]), ...(words === '' ? [] : [lineBreak, muted(words)])]
}

const partNames = { terminator: 'terminator', tee: 'tee', power: 'power insertion', isolator: 'isolator' } as const
const partsByContext = new WeakMap<ViewContext, ReadonlyMap<Tag, string>>()
/** What a part of a backbone is; null for anything else. */
export function busPartName(context: ViewContext, tag: Tag): string | null {
  const known = partsByContext.get(context)
  const parts = known ?? new Map(context.vessel.canBuses.flatMap(bus => bus.backbone.flatMap(element => (element.kind === 'segment' ? [] : [[element.tag, `${partNames[element.kind]} of ${bus.tag}`] as const]))))
  if (known === undefined) partsByContext.set(context, parts)
  return parts.get(tag) ?? null
}

function cableText(context: ViewContext, { is, cable, status }: WireRow): Text {
  if (is === 'plug') return [muted('plugged on')]
  if (cable === null) return [muted('cable not recorded')]
  if (is === 'wire') return [muted('core of '), context.tag(cable.tag)]
  return [context.tag(cable.tag), lineBreak, status === null ? muted('status not recorded') : muted(status)]
}

const conductorsText = (conductors: readonly Conductor[]): Text =>
  joined(conductors.map(({ what, colour }): Text => (colour === null ? [muted(what)] : [what, ' ', muted(colour)])), ', ')

function typeText(context: ViewContext, { is, cable }: WireRow): Text {
  if (cable === null || is === 'wire') return []
  const type = context.lookup.cableTypes.get(cable.typeTag ?? '')
  if (type === undefined) return [muted('type not recorded')]
  const parallel = cable.parallelCount > 1 ? ` ${cable.parallelCount} in parallel` : ''
  return [type.tag, ...(type.size === null ? [] : [lineBreak, muted(`${type.cores ?? '?'}\u00A0×\u00A0${saySize(type.size)}${parallel}`)])]
}

function farText(context: ViewContext, { far, zoneTag, farZoneTag }: WireRow): Text {
  const part = context.nameOf(far.tag) === null ? busPartName(context, far.tag) : null
  return [...endNamed(context, far), ...(part === null ? [] : [` ${part}`]), lineBreak, muted(farZoneTag !== null && farZoneTag === zoneTag ? 'in this zone' : zoneName(context, farZoneTag))]
}

function lengthText(context: ViewContext, { is, cable }: WireRow): Text {
  if (cable === null || is === 'wire') return []
  const lengthM = cableLengthM(context.results.routing.byCable.get(cable.tag))
  const wireways = context.results.routing.byCable.get(cable.tag)?.wirewayTags ?? []
  return [lengthM === null ? notRecorded : say('cableLengthM', lengthM, context.vessel), ...(wireways.length === 0 ? [] : [lineBreak, ...routeText(context, cable.tag)])]
}

// --- what is plugged together ----------------------------------------------------------------------------------------
/** Parts of a backbone that follow one another without a cable, in their order. */
function joinedBlocks(context: ViewContext, zoneTag: Tag | null): readonly Block[] {
  const runs = context.vessel.canBuses.flatMap(bus => joinedRuns(context, bus, zoneTag).map(tags => ({ bus, tags })))
  if (runs.length === 0) return []
  const facts: Facts = { is: 'facts', caption: 'Joined without a cable, in this order', entries: runs.map(({ bus, tags }) => ({ label: `${bus.tag} ${bus.name}`, value: joined(tags.map(tag => [context.tag(tag), muted(` ${busPartName(context, tag)!.replace(/ of .*/, '')}`)])) })) }
  return [facts]
}

function joinedRuns({ results }: ViewContext, { backbone }: CanBus, zoneTag: Tag | null): readonly (readonly Tag[])[] {
  const runs: Tag[][] = [[]]
  for (const element of backbone) {
    if (element.kind === 'segment') runs.push([])
    else runs.at(-1)!.push(element.tag)
  }
  return runs.map(run => run.filter(tag => (results.cableBill.zoneByTag.get(tag) ?? null) === zoneTag)).filter(run => run.length > 1)
}

// --- index -----------------------------------------------------------------------------------------------------------
export function wireListTable(context: ViewContext): Table {
  return tableOf(wireLists(context), {
    id: 'wire-lists',
    caption: 'Wire lists, zone by zone',
    empty: 'No cable is recorded.',
    note: ['Every cable that is not removed stands in two lists, or twice in one: once for each of its ends.'],
    columns: [
      { title: 'Zone', width: 'text', cell: ({ zoneTag }) => [linkTo(wireListKey(zoneTag), zoneName(context, zoneTag))] },
      { title: 'Ends of cables', width: 'number', cell: ({ rows }) => [String(endCount(rows))] },
      { title: 'Of them', width: 'text', cell: ({ rows }) => [statusText(rows)] },
    ],
  })
}
const endCount = (rows: readonly WireRow[], counts: (row: WireRow) => boolean = () => true): number => rows.filter(row => row.is === 'cable' && counts(row)).length

function statusText(rows: readonly WireRow[]): string {
  const count = (status: WireRow['status'], words: string): readonly string[] => { const n = endCount(rows, row => row.status === status); return n === 0 ? [] : [`${n} ${words}`] }
  return [...count('planned', 'planned'), ...count('fitted', 'fitted'), ...count('commissioned', 'commissioned'), ...count(null, 'with no status')].join(', ')
}

/** Colours of what is on board, with where they are from. */
export function colourTable(context: ViewContext): Table {
  const present = new Set(wireLists(context).flatMap(({ rows }) => rows.flatMap(({ conductors }) => conductors.map(({ what }) => what))))
  const colours = Object.entries(conductorColours).filter(([what]) => present.has(what))
  return tableOf(colours, {
    id: 'conductor-colours',
    caption: 'Colours of conductors',
    empty: 'No conductor whose colour is laid down is recorded.',
    note: ['The lists name the colour that the rules give to what a conductor is for; nobody read it on board. Where a cable shows another, go by its label and by a meter, and mark the conductor.'],
    columns: [
      { title: 'Conductor', width: 'text', cell: ([what]) => [what] },
      { title: 'Colour', width: 'short', cell: ([, { colour }]) => [colour] },
      { title: 'Source', width: 'text', cell: ([, { citation }]) => [cite(citation)] },
    ],
  })
}

export function plugPinTable(context: ViewContext): readonly Table[] {
  if (!wireLists(context).some(({ rows }) => rows.some(({ cable }) => context.lookup.cableTypes.get(cable?.typeTag ?? '')?.use === 'ethernet'))) return []
  const { a, b, citation } = networkPlugPins
  return [tableOf([{ order: 'A', colours: a }, { order: 'B', colours: b }], {
    id: 'network-plug-pins',
    caption: 'Pins of network plugs',
    empty: '',
    note: [`${cite(citation)}. The same order at both ends; which of the two was used on board is not recorded: look at the other end before you fit a plug.`],
    columns: [
      { title: 'Order', width: 'tag', cell: ({ order }) => [order] },
      ...a.map((_, i) => ({ title: `Pin ${i + 1}`, width: 'short' as const, cell: ({ colours }: { readonly colours: readonly string[] }): Text => [colours[i]!] })),
    ],
  })]
}
