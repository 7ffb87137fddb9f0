/** What must be sound for each circuit and each item to have its supply. */
import { grouped, lookup } from '../../model/lookup.js'
import type { FeedingResults } from '../../model/results.js'
import type { CanBus, Circuit, Equipment, Tag, Vessel } from '../../model/vessel.js'
import { equipmentKind, type EquipmentKindKey } from '../../references/equipment-kinds.js'
import { type Delivery, deliveriesOf, isInUse, passes } from './deliveries.js'
import { type Facts, named } from './facts.js'
import { type NetworkSupply, networkSuppliesOf } from './network-supply.js'
import type { Statement } from './statements.js'

export interface Supply {
  /** It has its supply and is sound itself. */
  live(tag: Tag): Statement
  /** A circuit feeds a bus. */
  feedsBus(circuitTag: Tag, bus: CanBus): Statement
  /** The channels of a module hear their network; to be grounded where the network is known. */
  hears(panelTag: Tag): Statement
  /** By what each thing is supplied: circuits normally closed before those to be closed first. */
  readonly linesOf: ReadonlyMap<Tag, readonly Delivery[]>
  readonly networkSupplyOf: ReadonlyMap<Tag, NetworkSupply>
  /** Equipment with no supply of its own that is recorded. */
  readonly unsupplied: ReadonlySet<Tag>
}

/** They give only while an engine, the sun or the shore drives them: beside another supply they are not counted on. */
const chargingKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['alternator', 'charger', 'solar panel', 'solar charge controller', 'charge splitter'])

export const isOpen = ({ circuit }: Delivery): boolean => circuit.normalState === 'open'

export function supplyFacts(vessel: Vessel, feeding: FeedingResults, made: Facts): Supply {
  const { panels, busbars, canBuses, equipment } = lookup(vessel)
  const { sound, ground, derived } = made
  const live = named<Tag>(derived)
  const gives = named<Tag>(derived)
  const hears = named<Tag>(derived)
  const fed = named<Tag>(derived)
  const deliveries = deliveriesOf(vessel, feeding)
  const deliveriesBy = grouped(deliveries, ({ circuit }) => [circuit.tag])
  const linesOf = linesByThing(vessel, deliveries)
  const networkSupplyOf = networkSuppliesOf(vessel, tag => linesOf.has(tag))

  for (const circuit of vessel.circuits) groundCircuit(circuit)
  const brings = new Map(deliveries.map(delivery => [delivery, groundDelivery(delivery)]))
  for (const [tag, lines] of linesOf) {
    const alone = lines.every(isOpen)
    // A normally open circuit counts only where no normally closed one feeds the same thing.
    for (const line of lines) ground(fed(tag), [brings.get(line)!], !alone && isOpen(line) ? line.circuit.tag : null)
    const closed = lines.filter(line => alone || !isOpen(line))
    if (closed.length > 1) for (const line of closed) watchSupply(tag, brings.get(line)!, line.circuit.tag)
  }
  for (const delivery of deliveries) {
    if (delivery.charges) made.watch({ statement: brings.get(delivery)!, tag: delivery.toTag, how: 'degraded', cause: { of: 'charging', tag: delivery.circuit.tag } })
  }
  for (const [tag, supply] of networkSupplyOf) groundNetworkSupply(tag, supply)

  const unsupplied = new Set<Tag>()
  for (const { tag } of [...vessel.equipment, ...vessel.batteries, ...vessel.panels, ...vessel.busbars]) {
    if (!isInUse(vessel, tag) || passes(vessel, tag)) continue
    const item = equipment.get(tag)
    if (linesOf.has(tag) || networkSupplyOf.has(tag)) ground(live(tag), [fed(tag), sound(tag)])
    else if (panels.has(tag) || busbars.has(tag)) sound(tag)
    else {
      ground(live(tag), [sound(tag)])
      if (item !== undefined) unsupplied.add(tag)
      if (item !== undefined && asksForSupply(item)) made.notAssessed(tag, 'it draws power, and no circuit or network that supplies it is recorded')
    }
  }
  for (const { toTag, gap } of deliveries) if (gap !== null) made.notAssessed(toTag, gap)

  return { live, feedsBus, hears, linesOf, networkSupplyOf, unsupplied }

  /** Supply at the device, the device itself, and for a module's channel the module; by hand past the module. */
  function groundCircuit(circuit: Circuit): void {
    const { tag, fedFromTag, manualBypass } = circuit
    const panel = panels.get(fedFromTag)
    const feed = feeding.byCircuit.get(tag)
    const before = (feed?.supplySegments ?? []).flatMap(({ cableTag, farTag }) => [sound(cableTag), ...(passes(vessel, farTag) ? [sound(farTag)] : [])])
    const hearing = (circuit.networkLoss ?? panel?.networkLoss) === 'off' ? [hears(fedFromTag)] : []
    ground(gives(tag), [live(fedFromTag), ...before, sound(tag), ...hearing])
    if (manualBypass !== null && panel !== undefined) ground(gives(tag), [fed(fedFromTag), ...before], tag)
  }

  function groundDelivery({ circuit, way, returnTags }: Delivery): Statement {
    const brought = derived()
    const passed = way.flatMap(({ cableTag, farTag }) => [cableTag, ...(passes(vessel, farTag) ? [farTag] : [])])
    ground(brought, [gives(circuit.tag), ...[...passed, ...returnTags].map(sound)])
    return brought
  }

  function groundNetworkSupply(tag: Tag, supply: NetworkSupply): void {
    if (supply.is === 'switch port') {
      for (const { switchTag, cableTag } of supply.links) ground(fed(tag), [live(switchTag), sound(cableTag)])
      return
    }
    for (const { circuitTag, throughTags } of supply.ways) {
      ground(fed(tag), [...(circuitTag === null ? [] : [feedsBus(circuitTag, canBuses.get(supply.busTag)!)]), ...throughTags.map(sound)])
    }
  }

  /** By the cable to the bus's own part where it is entered, else by the circuit as such. */
  function feedsBus(circuitTag: Tag, bus: CanBus): Statement {
    const parts = new Set([bus.tag, ...bus.backbone.flatMap(part => (part.kind === 'power' && part.circuitTag === circuitTag ? [part.tag] : []))])
    const delivery = deliveriesBy.get(circuitTag)?.find(({ toTag }) => parts.has(toTag))
    return delivery === undefined ? gives(circuitTag) : brings.get(delivery)!
  }

  function watchSupply(tag: Tag, statement: Statement, circuitTag: Tag): void {
    made.watch({ statement, tag, how: 'degraded', cause: { of: 'supply', tag: circuitTag } })
  }
}

function linesByThing(vessel: Vessel, deliveries: readonly Delivery[]): ReadonlyMap<Tag, readonly Delivery[]> {
  const { equipment } = lookup(vessel)
  const lines = new Map<Tag, Delivery[]>()
  for (const delivery of deliveries) {
    if (!delivery.supplies) continue
    const known = lines.get(delivery.toTag)
    if (known === undefined) lines.set(delivery.toTag, [delivery])
    else known.push(delivery)
  }
  const charging = ({ circuit }: Delivery) => chargingKinds.has(equipment.get(circuit.fedFromTag)?.kind ?? '')
  return new Map([...lines].map(([tag, all]) => {
    const lasting = all.filter(line => !charging(line))
    const counted = lasting.length > 0 ? lasting : all
    return [tag, [...counted.filter(line => !isOpen(line)), ...counted.filter(isOpen)]]
  }))
}

const asksForSupply = ({ kind, ports, currentMaxA, currentTypicalA, powerW }: Equipment): boolean =>
  equipmentKind(kind).draw === 'load'
  && ((currentMaxA ?? currentTypicalA ?? powerW ?? 0) > 0 || ports.some(port => port.kind === 'power' || (port.powerClass !== null && kind !== 'network switch')))
