/** Messages: how many frames and bits each takes, and on which buses it runs. */
import { lookup } from '../../model/lookup.js'
import type { Backbone, BusDevice, MessageLoad } from '../../model/results/can-bus.js'
import type { Outcome } from '../../model/results.js'
import type { BusMessage, CanBus, Forwarding, Tag, Vessel } from '../../model/vessel.js'
import { framingOf, parameterGroups } from '../../references/tables/can-parameter-groups.js'
import { runMethod } from '../run-method.js'
import { devicesOf } from './backbone.js'
import { messageLoadMethod } from './bus-load.calc.js'
import { frameBitsMethod, headBitCount } from './frame-bits.calc.js'
import { fastPacketFramesMethod, transportFramesMethod } from './message-frames.calc.js'

export interface BusWithBackbone { readonly bus: CanBus; readonly backbone: Backbone }
export interface Traffic {
  readonly messages: readonly MessageLoad[]
  /** What stands in the way of saying what runs on this bus. */
  readonly missing: readonly string[]
}

/** By bus: what its devices send, then what bridges bring; each message once, however many ways lead there. */
export function trafficOf(vessel: Vessel, buses: readonly BusWithBackbone[]): ReadonlyMap<Tag, Traffic> {
  const places = buses.flatMap(({ bus, backbone }) => distinct(devicesOf(backbone)).map((device): Place => ({ bus, device })))
  const onBus = new Map(buses.map(({ bus }) => [bus.tag, [] as MessageLoad[]]))
  const brought = new Map(buses.map(({ bus }) => [bus.tag, [] as MessageLoad[]]))
  const missing = new Map(buses.map(({ bus }) => [bus.tag, bridgeGaps(vessel, places, bus)]))
  for (const [senderTag, own] of placesByDevice(places)) {
    for (const message of own[0]!.device.sends) {
      const starts = own.filter(place => goesOut(message, place, own.length))
      if (starts.length === 0) for (const { bus } of own) missing.get(bus.tag)!.push(`of ${senderTag} it is not known by which connector it sends PGN ${message.pgnNumber}`)
      for (const { bus, device } of starts) onBus.get(bus.tag)!.push(loadOf(bus, device, message, []))
      for (const { bus, throughTags } of bridged(places, starts, senderTag, message)) brought.get(bus.tag)!.push(loadOf(bus, own[0]!.device, message, throughTags))
    }
  }
  return new Map(buses.map(({ bus: { tag } }) => [tag, { messages: [...onBus.get(tag)!, ...brought.get(tag)!], missing: missing.get(tag)! }]))
}

/** A device on a bus. */
interface Place { readonly bus: CanBus; readonly device: BusDevice }

const distinct = (devices: readonly BusDevice[]): readonly BusDevice[] => [...new Map(devices.toReversed().map(device => [device.tag, device])).values()].toReversed()

function placesByDevice(places: readonly Place[]): ReadonlyMap<Tag, readonly Place[]> {
  const byDevice = new Map<Tag, Place[]>()
  for (const place of places) byDevice.set(place.device.tag, [...byDevice.get(place.device.tag) ?? [], place])
  return byDevice
}

/** A device on one bus sends there, whatever its connectors are called. */
const goesOut = ({ terminal }: BusMessage, { device }: Place, busCount: number): boolean =>
  terminal === null || terminal === device.terminal || (device.terminal === null && busCount === 1)

interface Bridged { readonly bus: CanBus; readonly throughTags: readonly Tag[] }

/** Outwards from the buses on which it is sent, nearest first; no bus twice, so bridges in a ring come to an end. */
function bridged(places: readonly Place[], starts: readonly Place[], senderTag: Tag, message: BusMessage): readonly Bridged[] {
  const reached = new Set(starts.map(({ bus }) => bus.tag))
  const queue: Bridged[] = starts.map(({ bus }) => ({ bus, throughTags: [] }))
  const found: Bridged[] = []
  for (let at = 0; at < queue.length; at++) {
    const { bus: from, throughTags } = queue[at]!
    for (const { bus, bridgeTag } of waysOn(places, from, senderTag, message)) {
      if (reached.has(bus.tag)) continue
      reached.add(bus.tag)
      const next = { bus, throughTags: [...throughTags, bridgeTag] }
      queue.push(next)
      found.push(next)
    }
  }
  return found
}

function waysOn(places: readonly Place[], from: CanBus, senderTag: Tag, message: BusMessage): readonly { readonly bus: CanBus; readonly bridgeTag: Tag }[] {
  return places.filter(({ bus, device }) => bus.tag === from.tag && device.tag !== senderTag && device.terminal !== null).flatMap(({ device: inwards }) =>
    inwards.forwards.filter(forwarding => forwarding.fromTerminal === inwards.terminal && passes(forwarding, message)).flatMap(({ toTerminal }) =>
      places.filter(({ bus, device }) => device.tag === inwards.tag && device.terminal === toTerminal && bus.protocol === from.protocol && bus.tag !== from.tag)
        .map(({ bus }) => ({ bus, bridgeTag: inwards.tag }))))
}

const passes = ({ only }: Forwarding, { pgnNumber }: BusMessage): boolean => only === null || only.some(passing => Number(passing) === pgnNumber)

/** Bridges of which it is not known what they bring to a bus. */
function bridgeGaps(vessel: Vessel, places: readonly Place[], bus: CanBus): string[] {
  const { equipment } = lookup(vessel)
  return places.filter(place => place.bus.tag === bus.tag && place.device.forwards.length > 0).flatMap(({ device }) => {
    const others = places.filter(place => place.device.tag === device.tag && place.bus.tag !== bus.tag)
    if (others.length === 0) return []
    if (device.terminal === null) return [`which connector of ${device.tag} is on this bus is not recorded, so what it passes on is not known`]
    const translates = others.some(other => other.bus.protocol !== bus.protocol && device.forwards.some(({ fromTerminal, toTerminal }) => toTerminal === device.terminal && fromTerminal === other.device.terminal))
    const sendsHere = equipment.get(device.tag)?.sends.some(({ terminal }) => terminal === null || terminal === device.terminal) ?? false
    return translates && !sendsHere ? [`${device.tag} brings data from a bus of another kind, and what it sends here is not recorded`] : []
  })
}

function loadOf({ protocol }: CanBus, { tag, instanceNumber }: BusDevice, message: BusMessage, throughTags: readonly Tag[]): MessageLoad {
  const { pgnNumber, timesCount } = message
  const group = parameterGroups.get(pgnNumber)
  const payloadByteCount = message.payloadByteCount ?? group?.payloadByteCount ?? null
  const usual = group?.interval ?? null
  const intervalMs = message.intervalMs ?? (typeof usual === 'number' ? usual : null)
  const rate = message.intervalMs !== null ? 'as recorded' : usual === 'on event' ? 'on event' : usual === null ? 'not known' : 'usual'
  return {
    senderTag: tag, pgnNumber, name: group?.name ?? null, throughTags, timesCount, intervalMs, payloadByteCount, rate,
    instanceNumber: message.instanceNumber ?? instanceNumber ?? 0,
    load: rate === 'on event' ? notComputed('it is sent on an event or on request') : intervalMs === null ? notComputed(`no usual interval of PGN ${pgnNumber} is known, and none is recorded`)
      : payloadByteCount === null ? notComputed(`no usual length of PGN ${pgnNumber} is known, and none is recorded`) : bitsOf(protocol, pgnNumber, payloadByteCount, intervalMs, timesCount),
  }
}

const notComputed = (reason: string) => ({ status: 'not computed', method: messageLoadMethod.id, reason }) as const

function bitsOf(protocol: CanBus['protocol'], pgnNumber: number, payloadByteCount: number, intervalMs: number, timesCount: number): MessageLoad['load'] {
  const framing = framingOf(pgnNumber, payloadByteCount, protocol)
  const frames = framing === 'single' ? singleFrame(pgnNumber, payloadByteCount) : runMethod(framing === 'fast' ? fastPacketFramesMethod : transportFramesMethod, { payloadByteCount })
  if (frames.status === 'not computed') return notComputed(frames.reason)
  // Of a message of several frames each is filled up to 8 bytes, and so is the only one of a fast packet.
  const dataByteCount = framing === 'fast' || frames.output.frameCount > 1 ? 8 : payloadByteCount
  const bits = runMethod(frameBitsMethod, { dataByteCount, headBitCount: headBitCount.extended })
  return bits.status === 'not computed' ? notComputed(bits.reason)
    : runMethod(messageLoadMethod, { timesCount, frameCount: frames.output.frameCount, intervalMs, ...bits.output })
}

const singleFrame = (pgnNumber: number, payloadByteCount: number): Outcome<{ payloadByteCount: number }, { frameCount: number }> =>
  (payloadByteCount <= 8 ? { status: 'computed', method: fastPacketFramesMethod.id, input: { payloadByteCount }, output: { frameCount: 1 } }
    : notComputed(`PGN ${pgnNumber} goes in a single frame, which holds at most 8 bytes`))
