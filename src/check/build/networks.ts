/** Entries about data networks → records of the vessel. */
import type { BackboneElement, BusFacts, BusMessage, CanBus, EthernetNetwork, OutsideLink, Port, SerialLink, Stream, WirelessNetwork } from '../../model/vessel.js'
import type { Entry } from '../schema/kinds.js'

export function canBusOf(bus: Entry<'can-buses'>): CanBus {
  const protocol = bus.protocol ?? 'nmea 2000'
  return {
    tag: bus.tag, name: bus.name, purpose: bus.purpose ?? null, backbone: bus.backbone.map(elementOf), protocol,
    suppliesDevices: bus['supplies-devices'] ?? protocol === 'nmea 2000',
    backboneMaxM: bus['backbone-max'] ?? null,
  }
}

/** The schema lets one of the five keys through. */
function elementOf(element: Entry<'can-buses'>['backbone'][number]): BackboneElement {
  const zoneTag = element.zone ?? null
  const dropCableTag = element.drop ?? null
  if (element.segment !== undefined) return { kind: 'segment', cableTag: element.segment }
  if (element.terminator !== undefined) return { kind: 'terminator', tag: element.terminator, zoneTag, resistanceOhm: element.resistance ?? null }
  if (element.tee !== undefined) return { kind: 'tee', tag: element.tee, zoneTag, deviceTag: element.device ?? null, dropCableTag, deviceTerminal: element.port ?? null }
  if (element.power !== undefined) return { kind: 'power', tag: element.power, zoneTag, circuitTag: element.circuit ?? null, dropCableTag, supplyVoltageV: element.voltage ?? null }
  if (element.isolator !== undefined) return { kind: 'isolator', tag: element.isolator, zoneTag }
  throw new Error('a backbone element without terminator, segment, tee, power or isolator')
}

const messageOf = (message: NonNullable<Entry<'equipment'>['sends']>[number]): BusMessage => ({
  pgnNumber: message.pgn,
  intervalMs: message.interval ?? null,
  payloadByteCount: message.bytes ?? null,
  terminal: message.port ?? null,
  timesCount: message.times ?? 1,
  instanceNumber: message.instance ?? null,
})

export const busFactsOf = (device: Pick<Entry<'panels'>, 'load-equivalency' | 'device-instance' | 'sends'>): BusFacts => ({
  loadEquivalencyNumber: device['load-equivalency'] ?? null,
  deviceInstanceNumber: device['device-instance'] ?? null,
  sends: (device.sends ?? []).map(messageOf),
})

/** Signalling rates of the two parts of the standard. */
const usualBaud = { 'iec 61162-1': 4800, 'iec 61162-2': 38_400, 'other': null } as const
export const serialLinkOf = (link: Entry<'serial-links'>): SerialLink => {
  const standard = link.standard ?? 'iec 61162-1'
  return {
    tag: link.tag, name: link.name, purpose: link.purpose ?? null, standard,
    baudRateBaud: link.baud ?? usualBaud[standard],
    talker: link.talker,
    listeners: link.listeners,
    sentences: (link.sentences ?? []).map(({ sentence, rate = null, length = null }) => ({ formatter: sentence, ratePerS: rate, lengthCharacterCount: length })),
    wires: (link.wires ?? []).map(({ signal, from, to, cable = null, core = null }) => ({ signal, from, to, cableTag: cable, core })),
  }
}

export const ethernetNetworkOf = (network: Entry<'ethernet-networks'>): EthernetNetwork => ({
  tag: network.tag, name: network.name, purpose: network.purpose ?? null, subnet: network.subnet ?? null, switchTags: network.switches,
  gatewayAddress: network.gateway ?? null,
  dynamicRange: rangeOf(network['dynamic-range']),
})

/** `first-last`; what is written otherwise is kept, so that the check of addresses can name it. */
function rangeOf(written: string | undefined): EthernetNetwork['dynamicRange'] {
  if (written === undefined) return null
  const [first = '', last = first] = written.split('-').map(part => part.trim())
  return [first, last]
}

export const streamOf = ({ name, rate, to, multicast }: NonNullable<Entry<'equipment'>['streams']>[number]): Stream =>
  ({ name, rateMbitPerS: rate, toTags: to ?? null, multicast: multicast ?? false })

export const portOf = (port: NonNullable<Entry<'equipment'>['ports']>[number]): Port => ({
  name: port.name, kind: port.kind, speedMbitPerS: port.speed ?? null, powerClass: port['power-class'] ?? null,
  baudRates: port.baud ?? [], direction: port.direction ?? null, signalCurrentA: port['signal-current'] ?? null,
})

export const wirelessNetworkOf = (network: Entry<'wireless-networks'>): WirelessNetwork => ({
  tag: network.tag, name: network.name, purpose: network.purpose ?? null, accessPointTag: network['access-point'] ?? null, networkTag: network.network ?? null,
  band: network.band ?? null, channel: network.channel ?? null, security: network.security ?? null, forGuests: network.guests ?? null,
})

export const outsideLinkOf = (link: Entry<'outside-links'>): OutsideLink => ({
  tag: link.tag, name: link.name, purpose: link.purpose ?? null, kind: link.kind, equipmentTag: link.equipment ?? null, antennaTags: link.antennas ?? [],
  downMbitPerS: link.down ?? null, upMbitPerS: link.up ?? null, provider: link.provider ?? null, priorityNumber: link.priority ?? null, coverage: link.coverage ?? null,
})
