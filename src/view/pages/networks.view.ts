/** Data networks: drawing, port tables, the CAN backbone in its physical order. */
import type { BackboneElement, Cable, CableEnd, CanBus, Equipment, EthernetNetwork, Port, Tag } from '../../model/vessel.js'
import { cableLengthM } from '../../model/results.js'
import { say } from '../../units/format.js'
import type { ViewContext } from '../context.js'
import { sayOrDash } from '../say.js'
import { fixedPages } from '../site-map.js'
import { byTag, compareTags, tableOf } from '../tables.js'
import { counted, dash, muted, notRecorded, orDash, orNotRecorded } from '../text.js'
import type { Block, Diagram, Page, Table, Text } from '../view-model.js'
import { lossBlocks } from './fault-blocks.js'

export function networkPages(context: ViewContext, diagrams: ReadonlyMap<string | null, readonly Diagram[]>): readonly Page[] {
  const { canBuses, ethernetNetworks } = context.vessel
  const drawn = (tag: Tag) => diagrams.get(tag) ?? []
  return [
    {
      key: fixedPages.networks,
      title: 'Data networks',
      kicker: null,
      lead: ['How the electronics talk to each other: the CAN buses in their physical order, the Ethernet port by port.'],
      printed: null,
      trail: [],
      blocks: [{
        is: 'cards',
        cards: [...ethernetNetworks, ...canBuses].map(network => ({ title: `${network.tag} ${network.name}`, to: context.addressOf(network.tag)!, text: [network.purpose ?? ''] })),
      }],
    },
    ...ethernetNetworks.map(network => ethernetPage(context, network, drawn(network.tag))),
    ...canBuses.map(bus => canBusPage(context, bus, drawn(bus.tag))),
  ]
}

const trail = [{ text: 'Data networks', to: fixedPages.networks }]

function ethernetPage(context: ViewContext, network: EthernetNetwork, diagrams: readonly Diagram[]): Page {
  const switches = network.switchTags.map(tag => context.lookup.equipment.get(tag)).filter(item => item !== undefined)
  return {
    key: context.addressOf(network.tag)!,
    title: `${network.tag} ${network.name}`,
    kicker: 'Ethernet',
    lead: network.purpose === null ? null : [network.purpose],
    trail,
    ...withDrawings(diagrams, [
      { is: 'facts', caption: null, entries: [{ label: 'Address range', value: orNotRecorded(network.subnet) }, { label: 'Switches', value: [counted(switches.length, 'network switch', 'network switches')] }] },
      ...lossBlocks(context, network.tag),
      ...switches.map(item => switchTable(context, item)),
      addressTable(context, switches),
    ]),
  }
}

/** Drawings after the first block on the site; on paper, where each takes a sheet, after the rest. */
const withDrawings = (drawings: readonly Diagram[], [first, ...rest]: readonly [Block, ...Block[]]): Pick<Page, 'blocks' | 'printed'> =>
  ({ blocks: [first, ...drawings, ...rest], printed: [first, ...rest, ...drawings] })

/** A cable seen from one of its ends. */
interface Attached { readonly cable: Cable; readonly far: CableEnd }
const attachedAt = (context: ViewContext, tag: Tag, terminal: string): readonly Attached[] =>
  (context.lookup.cablesAt.get(tag) ?? []).flatMap(cable => [
    ...(cable.from.tag === tag && cable.from.terminal === terminal ? [{ cable, far: cable.to }] : []),
    ...(cable.to.tag === tag && cable.to.terminal === terminal ? [{ cable, far: cable.from }] : []),
  ])

/** Ethernet ports of a switch that no cable ends at. */
export const freePorts = (context: ViewContext, item: Equipment): readonly Port[] =>
  item.ports.filter(port => port.kind === 'ethernet' && attachedAt(context, item.tag, port.name).length === 0)

function switchTable(context: ViewContext, item: Equipment): Table {
  const ethernet = item.ports.filter(port => port.kind === 'ethernet')
  // A row for each cable: two on one port is a mistake that must show.
  const ports = ethernet.flatMap((port): readonly { readonly port: Port; readonly attached: Attached | null }[] => {
    const attached = attachedAt(context, item.tag, port.name)
    return attached.length === 0 ? [{ port, attached: null }] : attached.map(each => ({ port, attached: each }))
  })
  const free = freePorts(context, item).length
  return tableOf(ports, {
    id: `ports-${item.tag.toLowerCase()}`,
    caption: `${item.tag} ${item.name}, port by port`,
    empty: 'No ports are recorded.',
    note: [`${counted(free, 'free port')} of ${ethernet.length}.`],
    columns: [
      { title: 'Port', width: 'tag', cell: ({ port }) => [port.name] },
      { title: 'Speed', width: 'number', cell: ({ port }) => (port.speedMbitPerS === null ? dash : [say('speedMbitPerS', port.speedMbitPerS)]) },
      { title: 'Power class offered', width: 'number', cell: ({ port }) => orDash(port.powerClass === null ? null : String(port.powerClass)) },
      { title: 'Cable', width: 'tag', cell: ({ attached }) => (attached === null ? dash : [context.tag(attached.cable.tag)]) },
      { title: 'Length', width: 'number', cell: ({ attached }) => sayOrDash('cableLengthM', attached === null ? null : cableLengthM(context.results.routing.byCable.get(attached.cable.tag)), context.vessel) },
      { title: 'Device and connector', width: 'text', cell: ({ attached }) => (attached === null ? [muted('free')] : [...context.named(attached.far.tag), ...(attached.far.terminal === null ? [] : [muted(` ${attached.far.terminal}`)])]) },
      { title: 'Power class asked', width: 'number', cell: ({ attached }) => orDash(askedClass(context, attached)) },
    ],
  })
}

function askedClass(context: ViewContext, attached: Attached | null): string | null {
  const port = attached === null ? undefined : context.lookup.equipment.get(attached.far.tag)?.ports.find(({ name }) => name === attached.far.terminal)
  return port?.powerClass == null ? null : String(port.powerClass)
}

function addressTable(context: ViewContext, switches: readonly Equipment[]): Table {
  const switchTags = new Set(switches.map(item => item.tag))
  const members = new Set(switchTags)
  for (const tag of switchTags) {
    for (const cable of context.lookup.cablesAt.get(tag) ?? []) {
      if (context.lookup.cableTypes.get(cable.typeTag ?? '')?.use !== 'ethernet') continue
      for (const end of [cable.from.tag, cable.to.tag]) if (context.lookup.equipment.has(end)) members.add(end)
    }
  }
  const items = [...members].map(tag => context.lookup.equipment.get(tag)!).toSorted(byTag)
  return tableOf(items, {
    id: 'addresses',
    caption: 'Members and their addresses',
    empty: 'No member is recorded.',
    columns: [
      { title: 'Tag', width: 'tag', cell: item => [context.tag(item.tag)] },
      { title: 'Name', width: 'text', cell: item => [item.name] },
      { title: 'Address', width: 'short', cell: item => orNotRecorded(item.address) },
      { title: 'Zone', width: 'text', cell: item => (item.zoneTag === null ? [notRecorded] : context.named(item.zoneTag)) },
    ],
  })
}

function canBusPage(context: ViewContext, bus: CanBus, diagrams: readonly Diagram[]): Page {
  const devices = bus.backbone.flatMap(element => (element.kind === 'tee' && element.deviceTag !== null ? [element.deviceTag] : []))
  const lens = devices.map(tag => context.lookup.equipment.get(tag)?.loadEquivalencyNumber ?? null)
  return {
    key: context.addressOf(bus.tag)!,
    title: `${bus.tag} ${bus.name}`,
    kicker: 'CAN bus',
    lead: bus.purpose === null ? null : [bus.purpose],
    trail,
    ...withDrawings(diagrams, [
      {
        is: 'facts', caption: null, entries: [
          { label: 'Devices', value: [String(devices.length)] },
          { label: 'Sum of load equivalency', value: lens.every(len => len !== null) ? [`LEN ${lens.reduce((sum: number, len) => sum + len, 0)}`] : [muted(`no sum: no load equivalency number is recorded for ${devices.filter((_, i) => lens[i] === null).toSorted(compareTags).join(', ')}`)] },
          { label: 'Backbone', value: backboneLength(context, bus) },
          { label: 'Free tees', value: [String(bus.backbone.filter(element => element.kind === 'tee' && element.deviceTag === null).length)] },
        ],
      },
      ...lossBlocks(context, bus.tag),
      backboneTable(context, bus),
    ]),
  }
}

function backboneLength(context: ViewContext, bus: CanBus): Text {
  const segments = bus.backbone.flatMap(element => (element.kind === 'segment' ? [element.cableTag] : []))
  const lengths = segments.map(tag => cableLengthM(context.results.routing.byCable.get(tag)))
  const missing = segments.filter((_, i) => lengths[i] === null)
  if (missing.length > 0) return [muted(`no sum: no length is known of ${missing.join(', ')}`)]
  return [say('backboneLengthM', lengths.reduce((sum: number, length) => sum + length!, 0), context.vessel)]
}

function backboneTable(context: ViewContext, bus: CanBus): Table {
  const length = (tag: Tag | null): Text => (tag === null ? dash : sayOrDash('lengthM', cableLengthM(context.results.routing.byCable.get(tag)), context.vessel))
  const cableOf = (element: BackboneElement): Tag | null => (element.kind === 'segment' ? element.cableTag : element.kind === 'terminator' ? null : element.dropCableTag)
  const names = { terminator: 'terminator', segment: 'backbone cable', tee: 'tee', power: 'power insertion' } as const
  return tableOf(bus.backbone.map((element, i) => ({ element, position: i + 1 })), {
    id: 'backbone',
    caption: 'Along the backbone, from one terminator to the other',
    empty: 'No backbone is recorded.',
    columns: [
      { title: 'No.', width: 'number', cell: ({ position }) => [String(position)] },
      { title: 'What', width: 'short', cell: ({ element }) => [names[element.kind]] },
      { title: 'Tag', width: 'tag', cell: ({ element }) => (element.kind === 'segment' ? [context.tag(element.cableTag)] : [{ is: 'tag', text: element.tag }]) },
      { title: 'Zone', width: 'short', cell: ({ element }) => (element.kind === 'segment' ? dash : element.zoneTag === null ? [notRecorded] : context.named(element.zoneTag)) },
      { title: 'Device or circuit', width: 'text', cell: ({ element }) => (element.kind === 'tee' ? (element.deviceTag === null ? [muted('free')] : context.named(element.deviceTag)) : element.kind === 'power' && element.circuitTag !== null ? context.named(element.circuitTag) : dash) },
      { title: 'Drop cable', width: 'tag', cell: ({ element }) => (element.kind === 'segment' || cableOf(element) === null ? dash : [context.tag(cableOf(element)!)]) },
      { title: 'Length', width: 'number', cell: ({ element }) => length(cableOf(element)) },
      { title: 'LEN', width: 'number', cell: ({ element }) => orDash(element.kind === 'tee' && element.deviceTag !== null ? context.lookup.equipment.get(element.deviceTag)?.loadEquivalencyNumber?.toString() ?? null : null) },
    ],
  })
}
