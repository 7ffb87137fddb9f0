/** Things of a vessel by tag. Built once for a vessel and kept with it. */
import { equipmentKind } from '../references/equipment-kinds.js'
import type {
  Battery, Busbar, Cable, CableEnd, CableType, CanBus, Circuit, Equipment, EthernetNetwork, ItemStatus, OutsideLink, Panel, SerialLink, StandingPlace, Structure, System, Tag, Vessel, WirelessNetwork, Wireway, WirewayPoint, Zone,
} from './vessel.js'

export type Item = Equipment | Battery | Busbar | Panel

export interface Lookup {
  readonly systems: ReadonlyMap<Tag, System>
  readonly zones: ReadonlyMap<Tag, Zone>
  readonly points: ReadonlyMap<Tag, WirewayPoint>
  readonly wireways: ReadonlyMap<Tag, Wireway>
  readonly cableTypes: ReadonlyMap<Tag, CableType>
  readonly cables: ReadonlyMap<Tag, Cable>
  readonly equipment: ReadonlyMap<Tag, Equipment>
  readonly batteries: ReadonlyMap<Tag, Battery>
  readonly busbars: ReadonlyMap<Tag, Busbar>
  readonly panels: ReadonlyMap<Tag, Panel>
  readonly circuits: ReadonlyMap<Tag, Circuit>
  readonly canBuses: ReadonlyMap<Tag, CanBus>
  readonly ethernetNetworks: ReadonlyMap<Tag, EthernetNetwork>
  readonly serialLinks: ReadonlyMap<Tag, SerialLink>
  readonly wirelessNetworks: ReadonlyMap<Tag, WirelessNetwork>
  readonly outsideLinks: ReadonlyMap<Tag, OutsideLink>
  readonly structures: ReadonlyMap<Tag, Structure>
  readonly standingPlaces: ReadonlyMap<Tag, StandingPlace>
  /** Equipment, batteries, busbars and panels together. */
  readonly items: ReadonlyMap<Tag, Item>
  /** Cables by the tag at either end. */
  readonly cablesAt: ReadonlyMap<Tag, readonly Cable[]>
  /** Circuits by the item they list as a load. */
  readonly circuitsOfLoad: ReadonlyMap<Tag, readonly Circuit[]>
  /** Circuits by the battery, busbar or panel they are fed from. */
  readonly circuitsFedFrom: ReadonlyMap<Tag, readonly Circuit[]>
}

const byTag = <T extends { readonly tag: Tag }>(things: readonly T[]): ReadonlyMap<Tag, T> => new Map(things.map(thing => [thing.tag, thing]))

/** Things by each of their keys; in the order of the things. */
export function grouped<T, K>(things: readonly T[], keysOf: (thing: T) => readonly K[]): ReadonlyMap<K, readonly T[]> {
  const groups = new Map<K, T[]>()
  for (const thing of things) {
    for (const key of new Set(keysOf(thing))) {
      const group = groups.get(key)
      if (group === undefined) groups.set(key, [thing])
      else group.push(thing)
    }
  }
  return groups
}

const known = new WeakMap<Vessel, Lookup>()

export function lookup(vessel: Vessel): Lookup {
  const existing = known.get(vessel)
  if (existing !== undefined) return existing
  const made: Lookup = {
    systems: byTag(vessel.systems),
    zones: byTag(vessel.zones),
    points: byTag(vessel.points),
    wireways: byTag(vessel.wireways),
    cableTypes: byTag(vessel.cableTypes),
    cables: byTag(vessel.cables),
    equipment: byTag(vessel.equipment),
    batteries: byTag(vessel.batteries),
    busbars: byTag(vessel.busbars),
    panels: byTag(vessel.panels),
    circuits: byTag(vessel.circuits),
    canBuses: byTag(vessel.canBuses),
    ethernetNetworks: byTag(vessel.ethernetNetworks),
    serialLinks: byTag(vessel.serialLinks),
    wirelessNetworks: byTag(vessel.wirelessNetworks),
    outsideLinks: byTag(vessel.outsideLinks),
    structures: byTag(vessel.structures),
    standingPlaces: byTag(vessel.standingPlaces),
    items: byTag<Item>([...vessel.equipment, ...vessel.batteries, ...vessel.busbars, ...vessel.panels]),
    cablesAt: grouped(vessel.cables, cable => [cable.from.tag, cable.to.tag]),
    circuitsOfLoad: grouped(vessel.circuits, circuit => circuit.loadTags),
    circuitsFedFrom: grouped(vessel.circuits, circuit => [circuit.fedFromTag]),
  }
  known.set(vessel, made)
  return made
}

/** What a circuit supplies is a distribution point, so that the circuit is a feeder on that branch. */
export function isDistributionPoint(vessel: Vessel, tag: Tag): boolean {
  const { panels, busbars } = lookup(vessel)
  return panels.has(tag) || busbars.has(tag)
}

/** A cable seen from one of its ends. */
export interface Attached { readonly cable: Cable; readonly far: CableEnd }

/** The cables that end at a terminal of an item, each with its other end. */
export const attachedAt = ({ cablesAt }: Pick<Lookup, 'cablesAt'>, tag: Tag, terminal: string): readonly Attached[] =>
  (cablesAt.get(tag) ?? []).flatMap(cable => [
    ...(cable.from.tag === tag && cable.from.terminal === terminal ? [{ cable, far: cable.to }] : []),
    ...(cable.to.tag === tag && cable.to.terminal === terminal ? [{ cable, far: cable.from }] : []),
  ])

/** What is removed is not on board; what is planned will be. */
export const isThere = ({ status }: { readonly status: ItemStatus | null }): boolean => status !== 'removed'
/** What somebody can lay a hand on. */
export const isOnBoard = ({ status }: { readonly status: ItemStatus | null }): boolean => status !== 'removed' && status !== 'planned'

/** What opens and closes a circuit by hand. */
export function isSwitch(vessel: Vessel, tag: Tag): boolean {
  const item = lookup(vessel).equipment.get(tag)
  return item !== undefined && equipmentKind(item.kind).draw === 'switch'
}
