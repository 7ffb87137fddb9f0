/** An Ethernet network: its switches with their ports, what hangs on each port, and the links to other networks. */
import { lookup } from '../../model/lookup.js'
import type { Results } from '../../model/results.js'
import type { Cable, Equipment, EthernetNetwork, Port, Tag, Vessel } from '../../model/vessel.js'
import { byTag, compareTags } from '../tables.js'
import { joined } from '../text.js'
import type { Diagram, Text } from '../view-model.js'
import { dataLinks } from './links.js'
import { type Box, type Drawing, type Frame, type Line, mermaidText, wordOf } from './mermaid-text.js'
import { fits, type Sheet, sheetsOf, turned } from './sheets.js'
import { type Address, endAt, type VesselBoxes, vesselBoxes } from './vessel-boxes.js'

/** A cable of the network, seen from the switch that it was reached from. */
interface NetworkLink {
  readonly cable: Cable
  readonly nearTag: Tag
  readonly farTag: Tag
  readonly switchTag: Tag
  /** IEEE 802.3 class that the switch's port supplies and that the device asks for; null: none, or not recorded. */
  readonly suppliedClass: number | null
  readonly askedClass: number | null
}

export function ethernetDiagrams(vessel: Vessel, _results: Results, address: Address): readonly Diagram[] {
  const boxes = vesselBoxes(vessel, address)
  return vessel.ethernetNetworks.flatMap(network => {
    const links = linksOf(vessel, network)
    if (links.length === 0) return []
    const draw = (drawn: readonly NetworkLink[]) => networkDrawing(vessel, boxes, network, drawn)
    const whole = draw(links)
    const sheets: readonly (Sheet<NetworkLink> & { readonly title: string })[] = fits(whole)
      ? [{ parts: links, drawing: whole, title: '' }]
      : network.switchTags.toSorted(compareTags).flatMap(switchTag =>
          sheetsOf(links.filter(link => link.switchTag === switchTag || link.farTag === switchTag), draw)
            .map(sheet => ({ ...sheet, title: `: switch ${switchTag}` })))
    return sheets.map(({ parts, drawing, title }, i): Diagram => ({
      is: 'diagram',
      id: `ethernet-${wordOf(network.tag)}-${i + 1}`,
      about: network.tag,
      caption: `Ethernet network ${network.tag} ${network.name}, sheet ${i + 1} of ${sheets.length}${title}`,
      mermaid: mermaidText(drawing),
      description: inWords(vessel, boxes, network, parts),
    }))
  })
}

/** From the network's switches outwards. A switch of another network is where this one ends. */
function linksOf(vessel: Vessel, { switchTags }: EthernetNetwork): readonly NetworkLink[] {
  const { equipment, cablesAt } = lookup(vessel)
  const ethernet = new Set(dataLinks(vessel).filter(({ carries }) => carries === 'ethernet').map(({ cable }) => cable))
  const foreign = new Set(vessel.ethernetNetworks.flatMap(network => network.switchTags).filter(tag => !switchTags.includes(tag)))
  const links: NetworkLink[] = []
  const reached = new Set<Tag>(switchTags)
  const used = new Set<Cable>()
  const queue = switchTags.toSorted(compareTags).map(tag => ({ tag, switchTag: tag }))
  for (const { tag, switchTag } of queue) {
    for (const cable of (cablesAt.get(tag) ?? []).toSorted(byTag)) {
      if (!ethernet.has(cable) || used.has(cable)) continue
      used.add(cable)
      const farTag = cable.from.tag === tag ? cable.to.tag : cable.from.tag
      const suppliedClass = portAt(equipment.get(tag), cable)?.powerClass ?? null
      const askedClass = switchTags.includes(farTag) ? null : portAt(equipment.get(farTag), cable)?.powerClass ?? null
      links.push({ cable, nearTag: tag, farTag, switchTag, suppliedClass, askedClass })
      if (reached.has(farTag)) continue
      reached.add(farTag)
      if (!foreign.has(farTag)) queue.push({ tag: farTag, switchTag })
    }
  }
  return links
}

function portAt(device: Equipment | undefined, cable: Cable): Port | undefined {
  const terminal = device === undefined ? null : endAt(cable, device.tag)?.terminal
  return device?.ports.find(({ name }) => name === terminal)
}

const isPowered = ({ suppliedClass, askedClass }: NetworkLink): boolean => suppliedClass !== null && askedClass !== null

function powerWords({ suppliedClass, askedClass }: NetworkLink): string | null {
  if (askedClass === null) return null
  return suppliedClass === null ? `asks class ${askedClass}, not supplied` : `powered, class ${askedClass}`
}

/** Ports are named at switches only; what a device calls its one connector is on its page. */
function portWords({ switchTags }: EthernetNetwork, { cable, nearTag, farTag }: NetworkLink): string | null {
  const ports = [nearTag, farTag].filter(tag => switchTags.includes(tag)).map(tag => endAt(cable, tag)?.terminal ?? null).filter(port => port !== null)
  return ports.length === 0 ? null : `port ${ports.join(' to ')}`
}

function networkDrawing(vessel: Vessel, boxes: VesselBoxes, network: EthernetNetwork, links: readonly NetworkLink[]): Drawing {
  const { items } = lookup(vessel)
  const tags = [...new Set(links.flatMap(({ nearTag, farTag }) => [nearTag, farTag]))]
  const ownSwitches = new Set(links.map(({ switchTag }) => switchTag))
  const boxOf = (tag: Tag): Box => {
    const box = boxes.boxOf(tag)
    if (!network.switchTags.includes(tag)) return { ...box, beside: [] }
    return ownSwitches.has(tag) ? { ...box, is: 'module', beside: [portCount(vessel, tag)].filter(text => text !== null) } : boxes.referenceTo(tag)
  }
  const zoneTags = [...new Set(tags.map(tag => items.get(tag)?.zoneTag ?? null))].filter(tag => tag !== null).toSorted(compareTags)
  const frames = zoneTags.map((tag): Frame => ({
    key: tag, title: [[tag, boxes.nameOf(tag)].filter(text => text !== null).join(' ')],
    boxKeys: tags.filter(boxTag => items.get(boxTag)?.zoneTag === tag),
  }))
  return turned({
    boxes: tags.map(boxOf),
    lines: links.map((link): Line => ({
      from: link.nearTag, to: link.farTag,
      label: [link.cable.tag, portWords(network, link), powerWords(link)].filter(text => text !== null),
      stroke: isPowered(link) ? 'heavy' : 'plain',
    })),
    frames,
    straight: false,
  })
}

function portCount(vessel: Vessel, tag: Tag): string | null {
  const ports = lookup(vessel).equipment.get(tag)?.ports.filter(({ kind }) => kind === 'ethernet').length ?? 0
  return ports === 0 ? null : `${ports} ports`
}

function inWords(vessel: Vessel, { tagged }: VesselBoxes, network: EthernetNetwork, links: readonly NetworkLink[]): Text {
  const switches = [...new Set(links.map(({ nearTag }) => nearTag))]
  const words = (link: NetworkLink): Text => {
    const facts = [portWords(network, link), powerWords(link)].filter(text => text !== null)
    return [tagged(link.farTag), ' by ', tagged(link.cable.tag), facts.length === 0 ? '' : ` (${facts.join(', ')})`]
  }
  const sentences = switches.map((tag): Text => {
    const free = freePorts(vessel, tag)
    return [
      tagged(tag), ' is linked to ', ...joined(links.filter(({ nearTag }) => nearTag === tag).map(words), '; '),
      ...(network.switchTags.includes(tag) && free.length > 0 ? [`; free ports: ${free.join(', ')}`] : []), '.',
    ]
  })
  return joined(sentences, ' ')
}

function freePorts(vessel: Vessel, tag: Tag): readonly string[] {
  const { equipment, cablesAt } = lookup(vessel)
  const used = new Set((cablesAt.get(tag) ?? []).flatMap(({ from, to }) => [from, to]).filter(end => end.tag === tag).map(({ terminal }) => terminal))
  return equipment.get(tag)?.ports.filter(({ name, kind }) => kind === 'ethernet' && !used.has(name)).map(({ name }) => name) ?? []
}
