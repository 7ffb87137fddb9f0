/** Fault tracing: how to look, single points behind the safety services, what each device, module and network takes with it. */
import type { Trace } from '../../../model/results/dependency.js'
import { slug } from '../../../model/address.js'
import type { Equipment, Tag } from '../../../model/vessel.js'
import { safetyServiceOf } from '../../../references/safety-services.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { compareTags, tableOf } from '../../tables.js'
import { counted, joined, linkTo, muted } from '../../text.js'
import type { Block, Page, Table, Text } from '../../view-model.js'
import { protectionText } from '../../parts/circuit-parts.js'
import { thingPlace } from './fault-words.js'
import { deviceTables, moduleTables, networkTable } from './fault-losses.js'
import { printedSteps } from './fault-printed.js'
import { serviceTables, servicesTable } from './fault-services.js'
import { treeAddress, treesHere } from './fault-tree-links.js'

/** A page to begin at, short enough for a telephone, with the tables on pages behind it; on paper all in one. */
export function faultTracingPages(context: ViewContext): readonly Page[] {
  const [services, ...systems] = lookUp(context)
  const losses = lossSections(context)
  const howToBlock: Block = { is: 'markdown', source: howTo }
  const behind = (name: string, title: string, blocks: readonly Block[]): Page =>
    ({ key: `${fixedPages.faultTracing}/${name}`, title, kicker: 'Fault tracing', lead: null, printed: null, trail: [{ text: 'Fault tracing', to: fixedPages.faultTracing }], blocks })
  const systemPages = systems.map(({ name, title, tables }) => behind(name, title, tables))
  const lossPages = losses.map(({ name, title, blocks }) => behind(name, title, blocks))
  const group = (title: string, cards: Block): readonly Block[] => [{ is: 'heading', text: title, anchor: null }, cards]
  const page: Page = {
    key: fixedPages.faultTracing,
    title: 'Fault tracing',
    kicker: null,
    lead: ['Something is dead. Look it up under ', linkTo(fixedPages.find, 'Find by tag or name'), ', or find it below: the first thing to look at stands beside it, and its own page has every step back to the source, with what to measure.'],
    printed: [
      howToBlock, treeCards(context), ...printedSteps(context),
      { is: 'heading', text: 'What does not work?', anchor: 'does-not-work' }, ...[services!, ...systems].flatMap(({ tables }) => tables),
      ...losses.flatMap(({ name, title, blocks }): readonly Block[] => [{ is: 'heading', text: title, anchor: name }, ...blocks]),
    ],
    trail: [],
    blocks: [
      howToBlock,
      { is: 'heading', text: 'What does not work?', anchor: 'does-not-work' }, ...services!.tables,
      ...(systemPages.length === 0 ? [] : group('Everything else, by system', cardsTo(systemPages))),
      ...group('By what you see', treeCards(context)),
      ...group('What goes dead with what', cardsTo(lossPages)),
    ],
  }
  return [page, ...systemPages, ...lossPages]
}

const cardsTo = (pages: readonly Page[]): Block => ({ is: 'cards', cards: pages.map(({ key, title }) => ({ title, to: key, text: [] })) })

const treeCards = (context: ViewContext): Block => ({
  is: 'cards', cards: treesHere(context).map(({ key, title }) => ({ title, to: treeAddress(key), text: [] })),
})

interface Section { readonly name: string; readonly title: string; readonly blocks: readonly Block[] }

const lossSections = (context: ViewContext): readonly Section[] => [
  { name: 'single-points', title: 'Single points behind safety services', blocks: [{ is: 'paragraph', text: [servicesWords] }, servicesTable(context), ...serviceTables(context)] },
  { name: 'if-this-trips', title: 'If this trips, this is what you lose', blocks: deviceTables(context) },
  { name: 'networks-lost', title: 'When a module or a network is lost', blocks: [networkTable(context), ...moduleTables(context)] },
  { name: 'not-followed', title: 'What was not followed', blocks: [{ is: 'paragraph', text: [limitsWords] }, gapsTable(context)] },
]

const howTo = `1. **Is it one thing or many?** If several are dead, look for what they share: the panel, its feeder, the isolator, the battery.
2. **One thing:** look at its own fuse or breaker first. Not that: go from the thing back, its plug, its switch, the fuse again with a meter, the panel, the feeder, the battery. Then its data. The page of each item has these steps.
3. **Switch off or draw the fuse first,** then touch wires. Never work on live mains (shore power, generator, inverter): pull the plug, stop the source, and leave it to a qualified person.
4. **Same fuse, same rating, once.** If it opens again there is a fault behind it: leave it off. Smell, heat or smoke: switch the isolators off and treat it as a fire.
5. **Whatever is dead, keep the boat safe first:** steer, pump by hand, show a light, call on the hand-held radio. Then trace.`

const servicesWords = 'A single point is one thing whose loss ends a service, or part of it. That is not a fault by itself; it is what to carry a spare for, and what to look at first. '
  + 'Only what is recorded counts: the pumps and lights themselves wear out too, and one fault can have several causes.'

const limitsWords = 'Batteries, shore power and generators count as sources. Alternators, chargers and solar panels do not count as a second supply: they give only while something drives them. '
  + 'A link that is normally open, or a bypass, never counts as a supply; it stands under “back by hand”. A break anywhere in the backbone of a CAN bus counts as the loss of the whole bus. '
  + 'Of several items of one kind from which another needs data, one is enough.'

interface LookUp { readonly item: Equipment; readonly first: Tag; readonly by: Tag | null }

interface Group { readonly name: string; readonly title: string; readonly tables: readonly Table[] }

/** Every item with what to look at first: what serves safety, then in small tables a system each. */
function lookUp(context: ViewContext): readonly Group[] {
  const { vessel, results: { dependency: { traces } } } = context
  const items = vessel.equipment.flatMap((item): LookUp[] => {
    const trace = traces.get(item.tag)
    const first = trace === undefined ? null : firstOf(trace)
    return first === null ? [] : [{ item, ...first }]
  })
  const systems = [...vessel.systems.map(system => ({ tag: system.tag as Tag | null, name: system.name })), { tag: null, name: 'Other items' }]
  return [
    { name: 'services', title: 'What serves safety', tables: lookUpTable(context, 'services', 'Dead? What serves safety', items.filter(({ item }) => safetyServiceOf(item) !== null)) },
    ...systems.flatMap(({ tag, name }): readonly Group[] => {
      const id = `system-${slug(tag ?? 'other')}`
      const tables = lookUpTable(context, id, `Dead? ${name}`, items.filter(({ item }) => item.systemTag === tag))
      return tables.length === 0 ? [] : [{ name: id, title: name, tables }]
    }),
  ]
}

function lookUpTable(context: ViewContext, id: string, caption: string, rows: readonly LookUp[]): readonly Table[] {
  if (rows.length === 0) return []
  return [tableOf(rows.toSorted((a, b) => compareTags(a.item.name, b.item.name)), {
    id: `look-up-${id}`,
    caption,
    empty: '',
    columns: [
      { title: 'Item', width: 'text', cell: ({ item }) => [linkTo(`${context.addressOf(item.tag)!}#does-not-work`, item.name), ' ', context.tag(item.tag)] },
      { title: 'Look first at', width: 'text', cell: ({ item, first, by }) => {
        const circuit = context.lookup.circuits.get(first)
        return [...(circuit === undefined ? context.named(first) : [context.tag(first), ` ${protectionText(circuit)}`]), ...(by === null ? [] : [muted(', through '), context.tag(by)]), ...thenText(context, item.tag, first)]
      } },
      { title: 'Where', width: 'text', cell: ({ first }) => thingPlace(context, first, { withAccess: false }) },
    ],
  })]
}

/** Devices further up, in the order of a walk. */
function thenText(context: ViewContext, itemTag: Tag, first: Tag): Text {
  const devices = (context.results.faultTracing.byTag.get(itemTag)?.[0]?.points ?? []).filter(({ what, tag }) => what === 'device' && tag !== first)
  return devices.length === 0 ? [] : [muted(', then '), ...joined(devices.map(({ tag }) => [context.tag(tag)]))]
}

/** The nearest device, of what lives on a bus the device that feeds the bus; else the switch or the partner it lives on. */
function firstOf({ supplies, data }: Trace): { readonly first: Tag; readonly by: Tag | null } | null {
  const [nearest, next] = supplies[0]?.steps ?? []
  if (nearest?.what === 'bus' && next !== undefined) return { first: next.tag, by: nearest.tag }
  const first = nearest?.tag ?? data[0]?.tag
  return first === undefined ? null : { first, by: null }
}

function gapsTable(context: ViewContext): Table {
  const { notAssessed } = context.results.dependency
  return tableOf(notAssessed, {
    id: 'not-followed',
    caption: `Not assessed: ${counted(notAssessed.length, 'gap')}`,
    empty: 'Everything could be followed to a source.',
    columns: [
      { title: 'Of', width: 'text', cell: ({ subjectTag }) => context.named(subjectTag) },
      { title: 'Because', width: 'text', cell: ({ reason }) => [reason] },
    ],
  })
}
