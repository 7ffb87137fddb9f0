/** An Ethernet network: port by port, members and their addresses. */
import { type Attached, attachedAt } from '../../../model/lookup.js'
import type { Equipment, EthernetNetwork, Port } from '../../../model/vessel.js'
import { cableLengthM } from '../../../model/results.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../say.js'
import { byTag, tableOf } from '../../tables.js'
import { counted, dash, muted, notRecorded, orDash, orNotRecorded } from '../../text.js'
import type { Diagram, Page, Table } from '../../view-model.js'
import { lossBlocks } from '../fault-blocks.js'
import { networkTrail, withDrawings } from './network-parts.js'

export function ethernetPage(context: ViewContext, network: EthernetNetwork, diagrams: readonly Diagram[]): Page {
  const switches = network.switchTags.map(tag => context.lookup.equipment.get(tag)).filter(item => item !== undefined)
  return {
    key: context.addressOf(network.tag)!,
    title: `${network.tag} ${network.name}`,
    kicker: 'Ethernet',
    lead: network.purpose === null ? null : [network.purpose],
    trail: networkTrail,
    ...withDrawings(diagrams, [
      { is: 'facts', caption: null, entries: [{ label: 'Address range', value: orNotRecorded(network.subnet) }, { label: 'Switches', value: [counted(switches.length, 'network switch', 'network switches')] }] },
      ...lossBlocks(context, network.tag),
      ...switches.map(item => switchTable(context, item)),
      addressTable(context, switches),
    ]),
  }
}

/** Ethernet ports of a switch that no cable ends at. */
export const freePorts = (context: ViewContext, item: Equipment): readonly Port[] =>
  item.ports.filter(port => port.kind === 'ethernet' && attachedAt(context.lookup, item.tag, port.name).length === 0)

function switchTable(context: ViewContext, item: Equipment): Table {
  const ethernet = item.ports.filter(port => port.kind === 'ethernet')
  // A row for each cable: two on one port is a mistake that must show.
  const ports = ethernet.flatMap((port): readonly { readonly port: Port; readonly attached: Attached | null }[] => {
    const attached = attachedAt(context.lookup, item.tag, port.name)
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
