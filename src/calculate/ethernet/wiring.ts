/** From port to port: cables joined at connectors without electronics, what ends at each port, what is reached from where. */
import { isThere, lookup } from '../../model/lookup.js'
import type { LinkEnd, PortUse } from '../../model/results/ethernet.js'
import type { Cable, CableEnd, Equipment, EthernetNetwork, Port, Tag, Vessel } from '../../model/vessel.js'
import { equipmentKind } from '../../references/equipment-kinds.js'
import { type EdgeGraph, graphOf } from '../graph.js'

/** A link before anything is worked out about it. */
export interface Wire {
  readonly tag: Tag
  readonly ends: readonly [LinkEnd, LinkEnd]
  readonly cables: readonly Cable[]
  readonly jointTags: readonly Tag[]
}

export interface Wiring {
  readonly wires: readonly Wire[]
  readonly wiresAt: ReadonlyMap<Tag, readonly Wire[]>
  readonly wireOfCable: ReadonlyMap<Tag, Wire>
  /** Every item at the end of a link, and the links between them; for walks. */
  readonly graph: EdgeGraph
  /** Whether an item hands traffic on from port to port; null where that is not recorded. */
  passes(tag: Tag): boolean | null
}

export function wiringOf(vessel: Vessel): Wiring {
  const wires = wiresOf(vessel)
  const wiresAt = new Map<Tag, Wire[]>()
  for (const wire of wires) {
    for (const tag of new Set(wire.ends.map(end => end.tag))) wiresAt.set(tag, [...wiresAt.get(tag) ?? [], wire])
  }
  const switchTags = new Set(vessel.ethernetNetworks.flatMap(network => network.switchTags))
  const { equipment } = lookup(vessel)
  return {
    wires, wiresAt,
    wireOfCable: new Map(wires.flatMap(wire => wire.cables.map(({ tag }) => [tag, wire] as const))),
    graph: graphOf(wires.map(({ tag, ends: [from, to] }) => ({ tag, from: from.tag, to: to.tag, weight: 1 }))),
    passes: tag => equipment.get(tag)?.passesEthernet ?? (switchTags.has(tag) ? true : null),
  }
}

export const otherEnd = ({ ends }: Pick<Wire, 'ends'>, tag: Tag): LinkEnd => (ends[0].tag === tag ? ends[1] : ends[0])

/** Cables that carry Ethernet by their type, or failing that by the port they end at. */
export function ethernetCables(vessel: Vessel): readonly Cable[] {
  const { cableTypes, equipment } = lookup(vessel)
  const endsAtPort = ({ tag, terminal }: CableEnd) => equipment.get(tag)?.ports.some(({ name, kind }) => kind === 'ethernet' && name === terminal) ?? false
  return vessel.cables.filter(({ typeTag, status, from, to }) => {
    const use = cableTypes.get(typeTag ?? '')?.use
    return status !== 'removed' && (use === undefined ? [from, to].some(endsAtPort) : use === 'ethernet')
  })
}

function wiresOf(vessel: Vessel): readonly Wire[] {
  const { items, equipment } = lookup(vessel)
  const cables = ethernetCables(vessel)
  const endsAt = new Map<Tag, { readonly cable: Cable; readonly end: CableEnd; readonly far: CableEnd }[]>()
  for (const cable of cables) {
    for (const [end, far] of [[cable.from, cable.to], [cable.to, cable.from]] as const) {
      endsAt.set(end.tag, [...endsAt.get(end.tag) ?? [], { cable, end, far }])
    }
  }
  const used = new Set<Cable>()

  /** On through connectors in which exactly two cables meet. */
  function follow(cable: Cable, start: CableEnd): { readonly cables: readonly Cable[]; readonly jointTags: readonly Tag[]; readonly end: CableEnd } {
    const onward: Cable[] = []
    const jointTags: Tag[] = []
    let [at, end] = [cable, start]
    for (;;) {
      const item = equipment.get(end.tag)
      const joins = item === undefined ? 'nothing' : equipmentKind(item.kind).joins
      if (joins !== 'all terminals' && joins !== 'same terminal') break
      const others = (endsAt.get(end.tag) ?? []).filter(other => other.end !== end && (joins === 'all terminals' || other.end.terminal === end.terminal))
      const next = others.length === 1 ? others[0]! : null
      if (next === null || used.has(next.cable)) break
      used.add(next.cable)
      onward.push(next.cable)
      jointTags.push(end.tag);
      [at, end] = [next.cable, next.far]
    }
    used.add(at)
    return { cables: onward, jointTags, end }
  }

  return cables.flatMap((cable): Wire[] => {
    if (used.has(cable)) return []
    used.add(cable)
    const [back, on] = [follow(cable, cable.from), follow(cable, cable.to)]
    const held = [...back.cables.toReversed(), cable, ...on.cables]
    const there = [back.end, on.end].every(({ tag }) => items.has(tag) && items.get(tag)!.status !== 'removed')
    return there ? [{ tag: held[0]!.tag, ends: [linkEnd(vessel, back.end), linkEnd(vessel, on.end)], cables: held, jointTags: [...back.jointTags.toReversed(), ...on.jointTags] }] : []
  })
}

export const ethernetPorts = (item: Equipment | undefined): readonly Port[] => item?.ports.filter(({ kind }) => kind === 'ethernet') ?? []

/** A cable that names no port ends at the only one there is. */
function portOf(vessel: Vessel, { tag, terminal }: CableEnd): string | null {
  const [only, ...others] = ethernetPorts(lookup(vessel).equipment.get(tag))
  return terminal ?? (only !== undefined && others.length === 0 ? only.name : null)
}

function linkEnd(vessel: Vessel, end: CableEnd): LinkEnd {
  const portName = portOf(vessel, end)
  const port = ethernetPorts(lookup(vessel).equipment.get(end.tag)).find(({ name }) => name === portName)
  return { tag: end.tag, portName, speedMbitPerS: port?.speedMbitPerS ?? null, powerClass: port?.powerClass ?? null }
}

/** The Ethernet ports of an item, each name once, with what ends there. */
export function portsOf(vessel: Vessel, item: Equipment, { wireOfCable }: Wiring): readonly PortUse[] {
  const { cablesAt } = lookup(vessel)
  const cables = (cablesAt.get(item.tag) ?? []).filter(isThere)
  const ports = ethernetPorts(item)
  const isAt = (cable: Cable, near: CableEnd, name: string): boolean =>
    near.tag === item.tag && (near.terminal === name || (near.terminal === null && wireOfCable.has(cable.tag) && portOf(vessel, near) === name))
  return [...new Set(ports.map(({ name }) => name))].map((name): PortUse => {
    const { speedMbitPerS, powerClass } = ports.find(port => port.name === name)!
    return {
      name, speedMbitPerS, powerClass,
      cables: cables.flatMap(cable => ([[cable.from, cable.to], [cable.to, cable.from]] as const).filter(([near]) => isAt(cable, near, name)).map(([, far]) => {
        const wire = wireOfCable.get(cable.tag) ?? null
        const end = wire === null ? { tag: far.tag, portName: far.terminal } : wire.ends.find(each => each.tag !== item.tag || each.portName !== name) ?? wire.ends[1]
        return { cableTag: cable.tag, farTag: end.tag, farPortName: end.portName, linkTag: wire?.tag ?? null }
      })),
    }
  })
}

// --- networks --------------------------------------------------------------------------------------------------------
export interface Reach { readonly memberTags: readonly Tag[]; readonly linkTags: readonly Tag[] }

/** From the network's switches outwards, through all that passes traffic. A switch of another network is where this one ends. */
export function reachOf(vessel: Vessel, { switchTags }: EthernetNetwork, { wiresAt, passes }: Wiring): Reach {
  const { items } = lookup(vessel)
  const foreign = new Set(vessel.ethernetNetworks.flatMap(network => network.switchTags).filter(tag => !switchTags.includes(tag)))
  const members = new Set(switchTags.filter(tag => items.has(tag) && items.get(tag)!.status !== 'removed'))
  const links = new Set<Tag>()
  // The set grows while it is gone through: that is the queue.
  for (const tag of members) {
    if (!switchTags.includes(tag) && (passes(tag) !== true || foreign.has(tag))) continue
    for (const wire of wiresAt.get(tag) ?? []) {
      links.add(wire.tag)
      members.add(otherEnd(wire, tag).tag)
    }
  }
  return { memberTags: [...members], linkTags: [...links] }
}
