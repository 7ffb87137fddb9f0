/** An Ethernet network: its switches with their ports, what hangs on each port, and the links to other networks. */
import { lookup } from '../../model/lookup.js'
import { cableLengthM, type Results } from '../../model/results.js'
import type { Cable, Equipment, EthernetNetwork, Port, Tag, Vessel } from '../../model/vessel.js'
import { powerClassOf } from '../../references/tables/poe-classes.js'
import { say } from '../../units/format.js'
import { byTag, compareTags } from '../tables.js'
import { joined } from '../text.js'
import type { Diagram, Text } from '../view-model.js'
import { dataLinks } from './links.js'
import { type Box, type Drawing, filled, type Frame, type Line, mermaidText, titleLength, wordOf } from './mermaid-text.js'
import { fits, type Sheet, sheetsOf, turned } from './sheets.js'
import { type Address, endAt, type VesselBoxes, vesselBoxes } from './vessel-boxes.js'

/** A cable of the network, seen from the switch that it was reached from. */
interface NetworkLink {
  readonly cable: Cable
  readonly lengthM: number | null
  readonly nearTag: Tag
  readonly farTag: Tag
  readonly switchTag: Tag
  /** IEEE 802.3 class that the switch's port supplies and that the device asks for; null: none, or not recorded. */
  readonly suppliedClass: number | null
  readonly askedClass: number | null
}

export function ethernetDiagrams(vessel: Vessel, results: Results, address: Address): readonly Diagram[] {
  const boxes = vesselBoxes(vessel, address)
  return vessel.ethernetNetworks.flatMap(network => {
    const links = linksOf(vessel, results, network)
    return sheetsOfNetwork(vessel, boxes, network, links).map(({ parts, drawing, title }, i, all): Diagram => ({
      is: 'diagram',
      id: `ethernet-${wordOf(network.tag)}-${i + 1}`,
      about: network.tag,
      caption: `Ethernet network ${network.tag} ${network.name}, sheet ${i + 1} of ${all.length}${title}`,
      mermaid: mermaidText(drawing),
      description: inWords(vessel, boxes, network, parts),
    }))
  })
}

interface TitledSheet extends Sheet<NetworkLink> { readonly title: string }

/** One sheet where there is room, else one for each switch, on which the other switches are references. */
function sheetsOfNetwork(vessel: Vessel, boxes: VesselBoxes, network: EthernetNetwork, links: readonly NetworkLink[]): readonly TitledSheet[] {
  if (links.length === 0) return []
  const whole = networkDrawing(vessel, boxes, network, links, network.switchTags)
  if (fits(whole)) return [{ parts: links, drawing: whole, title: '' }]
  return network.switchTags.toSorted(compareTags).flatMap(switchTag =>
    sheetsOf(
      links.filter(link => link.switchTag === switchTag || link.farTag === switchTag),
      drawn => networkDrawing(vessel, boxes, network, drawn, [switchTag]),
    ).map(sheet => ({ ...sheet, title: `: switch ${switchTag}` })))
}

/** Switches of the vessel's other networks. */
const foreignSwitches = (vessel: Vessel, { switchTags }: EthernetNetwork): ReadonlySet<Tag> =>
  new Set(vessel.ethernetNetworks.flatMap(network => network.switchTags).filter(tag => !switchTags.includes(tag)))

/** From the network's switches outwards. A switch of another network is where this one ends. */
function linksOf(vessel: Vessel, { routing }: Results, network: EthernetNetwork): readonly NetworkLink[] {
  const { equipment, cablesAt } = lookup(vessel)
  const { switchTags } = network
  const ethernet = new Set(dataLinks(vessel).filter(({ carries }) => carries === 'ethernet').map(({ cable }) => cable))
  const foreign = foreignSwitches(vessel, network)
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
      links.push({ cable, lengthM: cableLengthM(routing.byCable.get(cable.tag)), nearTag: tag, farTag, switchTag, suppliedClass, askedClass })
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

/** The port gives the class that the device asks for. */
function isPowered({ suppliedClass, askedClass }: NetworkLink): boolean {
  const [supplied, asked] = [powerClassOf(suppliedClass), powerClassOf(askedClass)]
  return supplied !== null && asked !== null && supplied.sourcePowerW >= asked.sourcePowerW
}

const linkFacts = (network: EthernetNetwork, link: NetworkLink): readonly string[] =>
  [portWords(network, link), powerWords(link)].filter(text => text !== null)

/** Of cables that end within one place nothing may be left to say. */
const lengthWords = (vessel: Vessel, { lengthM }: NetworkLink): readonly string[] => (lengthM === null || lengthM === 0 ? [] : [say('cableLengthM', lengthM, vessel)])

function powerWords(link: NetworkLink): string | null {
  const { suppliedClass, askedClass } = link
  if (askedClass === null) return null
  if (isPowered(link)) return `powered, class ${askedClass}`
  return `asks class ${askedClass}, ${suppliedClass === null ? 'not supplied' : `port gives ${suppliedClass}`}`
}

/** Ports are named at switches only; what a device calls its one connector is on its page. */
function portWords({ switchTags }: EthernetNetwork, { cable, nearTag, farTag }: NetworkLink): string | null {
  const ports = [nearTag, farTag].filter(tag => switchTags.includes(tag))
    .map(tag => endAt(cable, tag)?.terminal ?? null).filter(port => port !== null)
  if (ports.length === 0) return null
  const words = ports.join(' to ')
  return /^port/i.test(words) ? words : `port ${words}`
}

/** `fullTags`: the switches that are drawn in full on this sheet. */
function networkDrawing(
  vessel: Vessel, boxes: VesselBoxes, network: EthernetNetwork, links: readonly NetworkLink[], fullTags: readonly Tag[],
): Drawing {
  const { items } = lookup(vessel)
  const foreign = foreignSwitches(vessel, network)
  const tags = [...new Set(links.flatMap(({ nearTag, farTag }) => [nearTag, farTag]))]
  const boxOf = (tag: Tag): Box => {
    const box = boxes.boxOf(tag)
    if (fullTags.includes(tag)) return { ...box, is: 'module', beside: [...portCount(vessel, tag), ...box.beside] }
    return network.switchTags.includes(tag) || foreign.has(tag) ? boxes.referenceTo(tag) : box
  }
  const zoneTags = [...new Set(tags.map(tag => items.get(tag)?.zoneTag ?? null))].filter(tag => tag !== null).toSorted(compareTags)
  const frames = zoneTags.map((tag): Frame => ({
    key: tag,
    title: filled((boxes.nameOf(tag) ?? tag).split(' '), ' ', titleLength),
    boxKeys: tags.filter(boxTag => items.get(boxTag)?.zoneTag === tag),
  }))
  return turned({
    boxes: tags.map(boxOf),
    lines: links.map((link): Line => ({
      from: link.nearTag,
      to: link.farTag,
      label: boxes.cableLabel([link.cable.tag], [...lengthWords(vessel, link), ...linkFacts(network, link)]),
      stroke: isPowered(link) ? 'heavy' : 'plain',
    })),
    frames,
    placement: 'balanced',
  })
}

function portCount(vessel: Vessel, tag: Tag): readonly string[] {
  const ports = lookup(vessel).equipment.get(tag)?.ports.filter(({ kind }) => kind === 'ethernet').length ?? 0
  return ports === 0 ? [] : [`${ports} ports`]
}

function inWords(vessel: Vessel, { tagged }: VesselBoxes, network: EthernetNetwork, links: readonly NetworkLink[]): Text {
  const nearTags = [...new Set(links.map(({ nearTag }) => nearTag))]
  const words = (link: NetworkLink): Text => {
    const facts = linkFacts(network, link)
    return [tagged(link.farTag), ' by ', tagged(link.cable.tag), ...(facts.length === 0 ? [] : [` (${facts.join(', ')})`])]
  }
  return joined(nearTags.map((tag): Text => {
    const free = network.switchTags.includes(tag) ? freePorts(vessel, tag) : []
    return [
      tagged(tag), ' is linked to ', ...joined(links.filter(({ nearTag }) => nearTag === tag).map(words), '; '),
      ...(free.length === 0 ? [] : [`; free ports: ${free.join(', ')}`]), '.',
    ]
  }), ' ')
}

function freePorts(vessel: Vessel, tag: Tag): readonly string[] {
  const { equipment, cablesAt } = lookup(vessel)
  const ends = (cablesAt.get(tag) ?? []).flatMap(({ from, to }) => [from, to])
  const used = new Set(ends.filter(end => end.tag === tag).map(({ terminal }) => terminal))
  return equipment.get(tag)?.ports.filter(({ name, kind }) => kind === 'ethernet' && !used.has(name)).map(({ name }) => name) ?? []
}
