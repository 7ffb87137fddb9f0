/** What must be sound for data to come from one item to another, and for an item to be on its network. */
import { grouped, lookup } from '../../model/lookup.js'
import type { DataLine } from '../../model/results/dependency.js'
import type { CableUse, CanBus, Equipment, Tag, Vessel } from '../../model/vessel.js'
import { equipmentKind, type EquipmentKindKey } from '../../references/equipment-kinds.js'
import { worksAlone } from '../../references/safety-services.js'
import { isInUse, passes } from './deliveries.js'
import { type Facts, named } from './facts.js'
import { partTag } from './network-supply.js'
import type { Statement } from './statements.js'
import type { Supply } from './supply-facts.js'

export interface Data {
  /** For each item, whose data it needs, what it is a member of, what it works with. */
  readonly linesOf: ReadonlyMap<Tag, readonly DataLine[]>
  /** Items and the givers from which no way to them is recorded. */
  readonly noWay: readonly { readonly tag: Tag; readonly giverTag: Tag }[]
  /** Of an item without a supply of its own: something it works with is left. */
  readonly partnered: ReadonlyMap<Tag, Statement>
}

/** Data passes between two things when these hold. */
interface Link { readonly ends: readonly [Tag, Tag]; readonly through: readonly Statement[]; readonly viaTags: readonly Tag[]; readonly use: CableUse }

/** Kinds that pass on what they are given. */
const relayKinds: ReadonlySet<string> = new Set<EquipmentKindKey>([
  'network switch', 'gateway', 'engine gateway', 'serial multiplexer', 'mobile-data router', 'wireless access point', 'antenna splitter',
])
const dataUses: ReadonlySet<CableUse> = new Set<CableUse>(['ethernet', 'serial', 'coax', 'signal'])

export function dataFacts(vessel: Vessel, made: Facts, supply: Supply): Data {
  const { equipment, canBuses, panels, cableTypes, outsideLinks } = lookup(vessel)
  const { sound, ground, derived, watch } = made
  const links = [...vessel.canBuses.flatMap(busLinks), ...cableLinks(), ...linksOutside()]
  const linksAt = grouped(links, ({ ends }) => ends)
  const lines = new Map<Tag, DataLine[]>()
  const addLine = (tag: Tag, line: DataLine) => lines.set(tag, [...lines.get(tag) ?? [], line])
  const noWay: { tag: Tag; giverTag: Tag }[] = []
  const partnered = new Map<Tag, Statement>()

  needs()
  memberships()
  partners()
  return { linesOf: lines, noWay, partnered }

  function busLinks(bus: CanBus): readonly Link[] {
    const feeds = bus.backbone.flatMap(part => (part.kind === 'power' && part.circuitTag !== null ? [part.circuitTag] : []))
    const fed = derived()
    for (const circuitTag of feeds) ground(fed, [supply.feedsBus(circuitTag, bus)])
    if (feeds.length === 0) {
      ground(fed, [])
      if (bus.suppliesDevices) made.notAssessed(bus.tag, 'no circuit that feeds it is recorded, so it counts as fed')
    }
    const whole = derived()
    ground(whole, [fed, sound(bus.tag), ...bus.backbone.map(part => sound(partTag(part)))])
    return bus.backbone.flatMap((part): Link[] => {
      if (part.kind !== 'tee' || part.deviceTag === null || !isInUse(vessel, part.deviceTag)) return []
      const viaTags = part.dropCableTag === null ? [] : [part.dropCableTag]
      return [{ ends: [part.deviceTag, bus.tag], through: [whole, ...viaTags.map(sound)], viaTags, use: 'can bus' }]
    })
  }

  function cableLinks(): readonly Link[] {
    return vessel.cables.flatMap(({ tag, from, to, typeTag, status }): Link[] => {
      const use = cableTypes.get(typeTag ?? '')?.use
      const joins = use !== undefined && dataUses.has(use) && status !== 'removed' && from.tag !== to.tag
        && [from.tag, to.tag].every(end => lookup(vessel).items.has(end) && isInUse(vessel, end))
      return joins ? [{ ends: [from.tag, to.tag], through: [sound(tag)], viaTags: [tag], use }] : []
    })
  }

  /** Data from the outside come in at the equipment that makes the link. */
  function linksOutside(): readonly Link[] {
    return vessel.outsideLinks.flatMap(({ tag, equipmentTag }): Link[] =>
      (equipmentTag === null || !isInUse(vessel, equipmentTag) ? [] : [{ ends: [tag, equipmentTag], through: [], viaTags: [], use: 'signal' }]))
  }

  /** What gives data is a thing with a supply, or a link that is there or not. */
  function gives(tag: Tag): Statement {
    return outsideLinks.has(tag) ? sound(tag) : supply.live(tag)
  }

  function alive(tag: Tag): readonly Statement[] {
    return canBuses.has(tag) ? [] : [passes(vessel, tag) ? sound(tag) : supply.live(tag)]
  }

  /** From a giver outwards, through what relays its data: each thing reached, with the way back to it. */
  function spread(giverTag: Tag): ReadonlyMap<Tag, { readonly comes: Statement; readonly wayTags: readonly Tag[] }> {
    const reached = new Map([[giverTag, { comes: gives(giverTag), wayTags: [] as readonly Tag[] }]])
    for (const [tag, { comes, wayTags }] of reached) {
      if (tag !== giverTag && !relays(tag, giverTag)) continue
      for (const { ends, through, viaTags } of linksAt.get(tag) ?? []) {
        const far = ends[0] === tag ? ends[1] : ends[0]
        if (far === giverTag) continue
        const there = reached.get(far) ?? { comes: derived(), wayTags: [...viaTags, ...(tag === giverTag ? [] : [tag]), ...wayTags] }
        reached.set(far, there)
        ground(there.comes, [comes, ...through, ...(tag === giverTag ? [] : alive(tag))])
      }
    }
    return reached
  }

  function relays(tag: Tag, giverTag: Tag): boolean {
    const item = equipment.get(tag)
    return canBuses.has(tag) || passes(vessel, tag) || (item !== undefined && (relayKinds.has(item.kind) || item.dataFromTags.includes(giverTag)))
  }

  /** Of several givers of one kind any will do; of each kind one is needed. */
  function needs(): void {
    const takers = vessel.equipment.filter(({ tag, dataFromTags }) => dataFromTags.length > 0 && isInUse(vessel, tag))
    const givers = new Set(takers.flatMap(({ dataFromTags }) => dataFromTags).filter(tag => isInUse(vessel, tag)))
    const spreads = new Map([...givers].map(giver => [giver, spread(giver)]))
    for (const { tag, dataFromTags } of takers) {
      for (const gone of dataFromTags.filter(giver => !isInUse(vessel, giver))) made.notAssessed(tag, `it needs data from ${gone}, which is removed`)
      const mine = [...new Set(dataFromTags)].filter(giver => givers.has(giver) && giver !== tag)
      for (const giverTag of mine) {
        const way = spreads.get(giverTag)!.get(tag)
        addLine(tag, { is: 'giver', tag: giverTag, wayTags: way?.wayTags ?? null })
        if (way !== undefined) continue
        noWay.push({ tag, giverTag })
        made.notAssessed(tag, `no way is recorded by which data come from ${giverTag}, so only the supply of ${giverTag} counts`)
      }
      for (const alike of grouped(mine, giver => [equipment.get(giver)?.kind ?? '']).values()) {
        const comes = alike.map(giver => spreads.get(giver)!.get(tag)?.comes ?? gives(giver))
        const any = derived()
        comes.forEach((one, i) => {
          ground(any, [one])
          const cause = { of: 'giver', tag: alike[i]! } as const
          watch({ statement: any, tag, how: 'no data', cause })
          if (alike.length > 1) watch({ statement: one, tag, how: 'degraded', cause })
        })
      }
    }
  }

  /** A device on a bus, or by its cable on a switch. A module's channels hear what it hears. */
  function memberships(): void {
    const networkOf = grouped(vessel.ethernetNetworks, network => network.switchTags)
    const bySwitch = (tag: Tag) => networkOf.get(tag)?.[0]?.tag ?? (equipment.get(tag)?.kind === 'network switch' ? tag : null)
    const members = links.flatMap(({ ends, through, viaTags, use }) => (use === 'can bus' ? [{ tag: ends[0], network: ends[1], through, wayTags: viaTags }]
      : use !== 'ethernet' ? [] : ([[ends[0], ends[1]], [ends[1], ends[0]]] as const).flatMap(([tag, far]) => {
          const network = bySwitch(far)
          return network === null || bySwitch(tag) !== null ? [] : [{ tag, network, through: [...through, ...alive(far)], wayTags: [...viaTags, far] }]
        })))
    for (const { tag, network, through, wayTags } of members) {
      const on = derived()
      ground(on, through)
      watch({ statement: on, tag, how: 'degraded', cause: { of: 'network', tag: network } })
      addLine(tag, { is: 'network', tag: network, wayTags })
      if (panels.has(tag)) ground(supply.hears(tag), [on])
    }
    const onNetwork = new Set(members.map(({ tag }) => tag))
    for (const { tag, kind, networkLoss } of vessel.panels) {
      if (!onNetwork.has(tag)) {
        ground(supply.hears(tag), [])
        if (kind === 'switching module') made.notAssessed(tag, 'no network that it is on is recorded, so what the loss of it does is not known')
      } else if ((lookup(vessel).circuitsFedFrom.get(tag) ?? []).some(circuit => (circuit.networkLoss ?? networkLoss) === null)) {
        made.notAssessed(tag, 'what its channels do when the network is lost is not recorded')
      }
    }
  }

  /** What has no supply of its own and says nothing of data works with what its own cables lead to. */
  function partners(): void {
    const own = grouped(cableLinks().filter(({ use }) => use !== 'ethernet'), ({ ends }) => ends)
    const joins = (tag: Tag): boolean => passes(vessel, tag) || supply.unsupplied.has(tag)
    const works = named<Tag>(tag => (joins(tag) ? derived() : supply.live(tag)))
    for (const [tag, leads] of own) {
      if (!joins(tag)) continue
      const some = derived()
      partnered.set(tag, some)
      for (const { ends, through } of leads) ground(some, [works(ends[0] === tag ? ends[1] : ends[0]), ...through])
      ground(works(tag), [some, sound(tag)])
      const item = equipment.get(tag)
      if (item === undefined || !needsPartner(item)) continue
      for (const { ends, viaTags } of leads) {
        const far = ends[0] === tag ? ends[1] : ends[0]
        watch({ statement: some, tag, how: worksAlone.has(item.kind) ? 'degraded' : 'cut off', cause: { of: 'partner', tag: far } })
        addLine(tag, { is: 'partner', tag: far, wayTags: viaTags })
      }
    }
  }

  function needsPartner({ tag, kind, dataFromTags }: Equipment): boolean {
    return dataFromTags.length === 0 && !passes(vessel, tag) && equipmentKind(kind).draw === 'load'
  }
}
