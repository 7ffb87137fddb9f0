/** Devices without a circuit of their own that live on their CAN bus, or on the port of a network switch. */
import { lookup } from '../../model/lookup.js'
import type { BackboneElement, CanBus, Equipment, Tag, Vessel } from '../../model/vessel.js'
import { isInUse } from './deliveries.js'

export type NetworkSupply =
  /** Each way from a place where the bus is fed to the device; the circuit is null where none is recorded. */
  | { readonly is: 'bus'; readonly busTag: Tag; readonly ways: readonly { readonly circuitTag: Tag | null; readonly throughTags: readonly Tag[] }[] }
  | { readonly is: 'switch port'; readonly links: readonly { readonly switchTag: Tag; readonly cableTag: Tag }[] }

export const partTag = (part: BackboneElement): Tag => (part.kind === 'segment' ? part.cableTag : part.tag)

export function networkSuppliesOf(vessel: Vessel, hasCircuit: (tag: Tag) => boolean): ReadonlyMap<Tag, NetworkSupply> {
  const { equipment } = lookup(vessel)
  const supplies = new Map<Tag, NetworkSupply>()
  for (const item of vessel.equipment) {
    const links = hasCircuit(item.tag) || !isInUse(vessel, item.tag) ? [] : portLinksOf(vessel, item)
    if (links.length > 0) supplies.set(item.tag, { is: 'switch port', links })
  }
  for (const bus of vessel.canBuses) {
    bus.backbone.forEach((part, at) => {
      if (part.kind !== 'tee' || part.deviceTag === null || !equipment.has(part.deviceTag) || !isInUse(vessel, part.deviceTag)) return
      const known = supplies.get(part.deviceTag)
      if (hasCircuit(part.deviceTag) || known?.is === 'switch port') return
      // A gateway sits on two buses, and lives on the first that is fed.
      if (known === undefined || known.ways.every(({ circuitTag }) => circuitTag === null)) supplies.set(part.deviceTag, busSupply(bus, at))
    })
  }
  return supplies
}

/** The parts from the feeding point to the tee carry the device's current; what lies beyond does not matter to it. */
function busSupply(bus: CanBus, at: number): NetworkSupply {
  const drop = (part: BackboneElement) => ('dropCableTag' in part && part.dropCableTag !== null ? [part.dropCableTag] : [])
  const own = [bus.tag, ...drop(bus.backbone[at]!)]
  const ways = bus.backbone.flatMap((part, i) => (part.kind !== 'power' || part.circuitTag === null ? [] : [{
    circuitTag: part.circuitTag,
    throughTags: [...own, ...drop(part), ...bus.backbone.slice(Math.min(i, at), Math.max(i, at) + 1).map(partTag)],
  }]))
  return { is: 'bus', busTag: bus.tag, ways: ways.length > 0 ? ways : [{ circuitTag: null, throughTags: [...own, partTag(bus.backbone[at]!)] }] }
}

/** It asks for power on a data port and has no port for a supply. */
function portLinksOf(vessel: Vessel, { tag, ports }: Equipment): readonly { readonly switchTag: Tag; readonly cableTag: Tag }[] {
  const { cablesAt, cableTypes, equipment } = lookup(vessel)
  if (!ports.some(port => port.powerClass !== null) || ports.some(port => port.kind === 'power')) return []
  const switches = new Set(vessel.ethernetNetworks.flatMap(network => network.switchTags))
  return (cablesAt.get(tag) ?? []).flatMap(cable => {
    if (cable.status === 'removed' || cableTypes.get(cable.typeTag ?? '')?.use !== 'ethernet') return []
    const far = cable.from.tag === tag ? cable.to : cable.from
    const port = equipment.get(far.tag)?.ports.find(({ name }) => name === far.terminal)
    const supplies = port === undefined ? switches.has(far.tag) : port.powerClass !== null
    return supplies && isInUse(vessel, far.tag) ? [{ switchTag: far.tag, cableTag: cable.tag }] : []
  })
}
