/** A page for each thing with a tag and a place: what it is, where, on which circuit, behind which fuse, on which cables. */
import { kindsOf } from '../../../model/item-kinds.js'
import type { Item } from '../../../model/lookup.js'
import type { Battery, Busbar, Circuit, Equipment, Tag } from '../../../model/vessel.js'
import { say, sayBoth } from '../../../units/format.js'
import { assessCircuit, circuitVerdict, verdictMark } from '../../parts/assessment.js'
import { cablesTable } from '../cables.view.js'
import { legendTable } from '../circuits/circuits.view.js'
import { circuitPlace, protectionText, zoneOfCircuit } from '../../parts/circuit-parts.js'
import { kindTitle, makerAndModel, placeText } from '../../parts/item-parts.js'
import type { ViewContext } from '../../context.js'
import { placementFacts } from '../placement/item-facts.js'
import { networkSupply } from '../networks/network-parts.js'
import { radioFacts } from '../radio/item-facts.js'
import { batteryFacts, networkPowerFacts, sourceFacts } from './source-facts.js'
import { deadBlocks, lossBlocks } from '../fault-tracing/fault-blocks.js'
import { findingCards } from '../../parts/finding-cards.js'
import { cautionBlocks, cautionLine } from '../../cautions/cautions.js'
import { fixedPages } from '../../site-map.js'
import { photographBlocks, whereItIs } from '../location/location-blocks.js'
import { positionWords } from '../location/position-words.js'
import { upkeepBlocks } from '../maintenance/upkeep.js'
import { operatingBlocks } from '../owner/operating.view.js'
import { markdownWithTags, proceduresAbout } from '../owner/procedures.js'
import { restoreBlocks } from '../record/configuration.view.js'
import { byTag, compareTags, tableOf } from '../../tables.js'
import { counted, dash, joined, muted, notRecorded, orDash } from '../../text.js'
import type { Block, Facts, Page, Table, Text } from '../../view-model.js'

export function equipmentPages(context: ViewContext): readonly Page[] {
  const { equipment, batteries, busbars } = context.vessel
  const items: readonly (Equipment | Battery | Busbar)[] = [...equipment, ...batteries, ...busbars].toSorted(byTag)
  return [
    {
      key: fixedPages.equipment,
      title: 'Equipment list',
      kicker: null,
      lead: [`${counted(items.length, 'item')} in the order of their tags.`],
      printed: null,
      trail: [],
      blocks: [equipmentTable(context, items, 'equipment-list', 'Equipment, batteries and busbars')],
    },
    ...items.map(item => equipmentPage(context, item)),
  ]
}

export function equipmentTable(context: ViewContext, items: readonly Item[], id: string, caption: string): Table {
  return tableOf(items, {
    id,
    caption,
    empty: 'Nothing is recorded here.',
    columns: [
      { title: 'Tag', width: 'tag', cell: item => [context.tag(item.tag)] },
      { title: 'Name', width: 'text', cell: item => [item.name] },
      { title: 'Maker, model', width: 'text', cell: item => orDash(makerAndModel(item)) },
      { title: 'Zone', width: 'short', cell: item => (item.zoneTag === null ? [notRecorded] : context.named(item.zoneTag)) },
      { title: 'Circuit', width: 'tag', cell: item => joined(context.circuitsOf(item.tag).map(c => [context.tag(c.tag)]), ' ') },
      { title: 'Status', width: 'short', cell: item => orDash(item.status) },
    ],
  })
}

function equipmentPage(context: ViewContext, item: Equipment | Battery | Busbar): Page {
  const { lookup } = context
  const circuits = context.circuitsOf(item.tag)
  const fed = lookup.circuitsFedFrom.get(item.tag) ?? []
  const cables = lookup.cablesAt.get(item.tag) ?? []
  const findings = context.findingsBySubject.get(item.tag) ?? []
  const dead = deadBlocks(context, item.tag)
  const cautions = cautionBlocks(context, { kinds: kindsOf(item) })
  const [comesFirst, comesAfter] = aroundDead(context, item, dead, cautions)
  const blocks: readonly (Block | null)[] = [
    foundFacts(context, item, circuits, { withAccess: true }),
    ...comesFirst,
    ...dead,
    ...comesAfter,
    ...lossBlocks(context, item.tag),
    ...whereItIs(context, item.tag),
    ...photographBlocks(context, [item.tag]),
    ...proceduresAbout(context, item.tag),
    ...operatingBlocks(context, item),
    dataFacts(context, item, { onPaper: false }),
    circuits.length === 0 ? null : supplyTable(context, circuits),
    fed.length === 0 ? null : legendTable(context, fed, { id: 'feeds', caption: 'Circuits fed from here' }),
    cables.length === 0 ? null : cablesTable(context, cables, { id: 'cables', caption: 'Cables that end here', seenFrom: item.tag }),
    'ports' in item && item.ports.length > 0 ? portTable(context, item) : null,
    neighbours(context, item.tag),
    ...restoreBlocks(context, item.tag),
    ...upkeepBlocks(context, item.tag),
    item.notes === null ? null : { is: 'markdown', source: markdownWithTags(context, item.notes) },
    documentTable(item),
    findings.length === 0 ? null : { is: 'findings', empty: '', findings: findingCards(context, findings) },
  ]
  return {
    key: context.addressOf(item.tag)!,
    title: `${item.tag} ${item.name}`,
    kicker: 'kind' in item ? kindTitle(item.kind) : 'chemistry' in item ? 'Battery bank' : 'Busbar',
    lead: 'description' in item && item.description !== null ? [item.description] : null,
    printed: printedEntry(context, item, circuits),
    trail: [{ text: 'Equipment', to: fixedPages.equipment }],
    blocks: blocks.filter(block => block !== null),
  }
}

/**
 * Who stands before a dead thing reads the place of its fuse and the steps on the first screen of a telephone: a danger to life stands
 * before them in full, of other cautions the names, and these in full behind.
 */
function aroundDead(context: ViewContext, item: Item, dead: readonly Block[], cautions: readonly Block[]): readonly [readonly Block[], readonly Block[]] {
  const isDanger = cautions.some(block => block.is === 'callout' && block.signal === 'DANGER')
  return dead.length === 0 || isDanger ? [cautions, []] : [cautionLine(context, { kinds: kindsOf(item) }), cautions.filter(({ is }) => is === 'callout')]
}

/** On paper an entry of a few lines: what, where, fuse, cables, neighbours. */
function printedEntry(context: ViewContext, item: Equipment | Battery | Busbar, circuits: readonly Circuit[]): readonly Block[] {
  const cables = context.lookup.cablesAt.get(item.tag) ?? []
  const found = foundFacts(context, item, circuits, { withAccess: false })
  const entries = [
    ...found.entries,
    ...dataFacts(context, item, { onPaper: true })?.entries ?? [],
    ...(cables.length === 0 ? [] : [{
      label: 'Cables',
      value: joined(cables.toSorted(byTag).map(cable => {
        const [near, far] = cable.from.tag === item.tag ? [cable.from, cable.to] : [cable.to, cable.from]
        return [context.tag(cable.tag), ...(near.terminal === null ? [] : [muted(` ${near.terminal}`)]), ' to ', context.tag(far.tag)]
      }), '; '),
    }]),
  ]
  return [{ ...found, entries, dense: true }]
}

/** Where it is and where its fuse is. On paper without the ways of access, which stand with the zones. */
function foundFacts(context: ViewContext, item: Equipment | Battery | Busbar, circuits: readonly Circuit[], { withAccess }: { readonly withAccess: boolean }): Facts {
  return { is: 'facts', caption: null, entries: [
    { label: 'Where', value: placeText(context, item, { withAccess }) },
    { label: 'Protected by', value: protectedBy(context, item, circuits, { withAccess }) },
  ] }
}

/** What it is. On paper without mass and position; null where nothing more is recorded. */
function dataFacts(context: ViewContext, item: Equipment | Battery | Busbar, { onPaper }: { readonly onPaper: boolean }): Facts | null {
  const { vessel } = context
  const entries: { label: string; value: Text }[] = []
  const add = (label: string, value: string | null) => { if (value !== null) entries.push({ label, value: [value] }) }
  if (item.systemTag !== null) entries.push({ label: 'System', value: context.named(item.systemTag) })
  add('Maker, model', makerAndModel(item))
  add('Serial number', item.serial)
  if ('kind' in item) {
    add('Software', item.software === null || item.softwareDate === null ? item.software : `${item.software}, read on ${item.softwareDate}`)
    add('Network address', item.address)
    if (item.supplyMinV !== null || item.supplyMaxV !== null) {
      const [low, high] = [item.supplyMinV, item.supplyMaxV].map(v => (v === null ? '–' : say('ratedSupplyV', v)))
      add('Supply', `${low} to ${high}`)
    }
    add('Current', currentText(item))
    entries.push(...sourceFacts(context, item))
    entries.push(...placementFacts(context, item), ...radioFacts(context, item), ...networkPowerFacts(context, item))
    add('Load equivalency', item.loadEquivalencyNumber === null ? null : `LEN ${item.loadEquivalencyNumber}`)
  }
  if ('chemistry' in item) entries.push(...batteryFacts(context, item))
  if ('massKg' in item && !onPaper) {
    add('Mass', item.massKg === null ? null : sayBoth('massKg', item.massKg, vessel))
    add('Position', item.positionM === null ? null : positionWords(vessel, item.positionM))
  }
  if ('polarity' in item) {
    add('Polarity', item.polarity)
    add('Rated current', item.ratedCurrentA === null ? null : say('ratedCurrentA', item.ratedCurrentA))
  }
  add('Status', item.status)
  return entries.length === 0 ? null : { is: 'facts', caption: onPaper ? null : 'Data', entries }
}

/** What lives on its network cable has no device of its own. The way into a space is said once. */
function protectedBy(context: ViewContext, { tag, zoneTag }: Item, circuits: readonly Circuit[], { withAccess }: { readonly withAccess: boolean }): Text {
  const told = new Set([zoneTag])
  if (circuits.length > 0) {
    return joined(circuits.map(circuit => {
      const zone = zoneOfCircuit(context, circuit)
      const isNew = !told.has(zone)
      told.add(zone)
      // Of two ways to it, by float and by hand, the name tells which.
      const name = circuits.length > 1 ? `${circuit.name}, ` : ''
      return [context.tag(circuit.tag), ` ${name}${protectionText(circuit)}, `, ...circuitPlace(context, circuit, { withAccess: withAccess && isNew })]
    }), { is: 'break' })
  }
  const port = networkSupply(context, tag)
  return port === null ? [muted('listed by no circuit')] : ['no device of its own: it lives on ', ...port]
}

export function currentText(item: Equipment): string | null {
  const parts = [
    item.currentTypicalA === null ? null : `${say('currentA', item.currentTypicalA)} typical`,
    item.currentMaxA === null ? null : `${say('currentA', item.currentMaxA)} at most`,
    item.powerW === null ? null : say('powerW', item.powerW),
  ].filter(part => part !== null)
  return parts.length === 0 ? null : parts.join(', ')
}

function supplyTable(context: ViewContext, circuits: readonly Circuit[]): Table {
  return tableOf(circuits, {
    id: 'supply',
    caption: 'Supply, from this item back to its source',
    empty: '',
    columns: [
      { title: 'Circuit', width: 'tag', cell: circuit => [context.tag(circuit.tag)] },
      { title: 'Protection', width: 'short', cell: circuit => [protectionText(circuit)] },
      { title: 'Where', width: 'text', cell: circuit => circuitPlace(context, circuit) },
      { title: 'Back to the source', width: 'text', cell: circuit => chainText(context, circuit) },
      { title: 'Verdict', width: 'short', cell: circuit => [verdictMark(circuitVerdict(assessCircuit(context, circuit)))] },
    ],
  })
}

/** The circuit's feeders, nearest first, to the source. */
export function chainText(context: ViewContext, circuit: Circuit): Text {
  const feed = context.results.feeding.byCircuit.get(circuit.tag)
  if (feed === undefined || feed.sourceTag === null) return [muted('no source reached')]
  const chain = feed.chain.toReversed().map(tag => context.lookup.circuits.get(tag)!)
  return joined([...chain.flatMap(c => [[context.tag(c.tag)], [context.tag(c.fedFromTag)]])], ' ← ')
}

function portTable(context: ViewContext, item: Equipment): Table {
  const cables = context.lookup.cablesAt.get(item.tag) ?? []
  return tableOf(item.ports, {
    id: 'ports',
    caption: 'Connectors',
    empty: '',
    columns: [
      { title: 'Name', width: 'tag', cell: port => [port.name] },
      { title: 'For', width: 'short', cell: port => [port.kind] },
      { title: 'Speed', width: 'number', cell: port => (port.speedMbitPerS === null ? dash : [say('speedMbitPerS', port.speedMbitPerS)]) },
      { title: 'Power class', width: 'number', cell: port => (port.powerClass === null ? dash : [String(port.powerClass)]) },
      {
        title: 'Cable and other end', width: 'text', cell: port => {
          const here = cables.flatMap(cable => [[cable, cable.from, cable.to], [cable, cable.to, cable.from]] as const)
            .filter(([, near]) => near.tag === item.tag && near.terminal === port.name)
          return here.length === 0 ? [muted('free')] : joined(here.map(([cable, , far]) => [context.tag(cable.tag), ' to ', ...context.named(far.tag)]), { is: 'break' })
        },
      },
    ],
  })
}

/** What this item is joined to by its own cables. */
function neighbours(context: ViewContext, tag: Tag): Facts | null {
  const tags = new Set<Tag>()
  for (const cable of context.lookup.cablesAt.get(tag) ?? []) {
    for (const end of [cable.from.tag, cable.to.tag]) if (end !== tag && context.lookup.items.has(end)) tags.add(end)
  }
  for (const bus of context.vessel.canBuses) {
    if (bus.backbone.some(element => element.kind === 'tee' && element.deviceTag === tag)) tags.add(bus.tag)
  }
  if (tags.size === 0) return null
  return { is: 'facts', caption: null, entries: [{ label: 'Connected to', value: joined([...tags].toSorted(compareTags).map(context.named), { is: 'break' }) }] }
}

function documentTable(item: Item): Table | null {
  if (item.documents.length === 0) return null
  return tableOf(item.documents, {
    id: 'documents', caption: 'Documents in this pack', empty: '',
    columns: [
      { title: 'Title', width: 'text', cell: document => [document.title] },
      { title: 'File', width: 'text', cell: document => [{ is: 'file', file: document.file, text: document.file }] },
    ],
  })
}
