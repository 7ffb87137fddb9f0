/** The points between a thing and its source, in the order of a walk: the thing, what stands in its circuit's way, the device, and so on up. */
import { isDistributionPoint, lookup } from '../../model/lookup.js'
import type { CircuitFeed, Results, Segment } from '../../model/results.js'
import type { CableEndRef, ExpectedOutcome, FaultLine, FaultPoint, Reading } from '../../model/results/fault-tracing.js'
import type { SupplyLine, TraceStep } from '../../model/results/dependency.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import { equipmentKind } from '../../references/equipment-kinds.js'
import { passes } from '../dependency/deliveries.js'
import { segmentsTo } from '../feeding/segments.js'
import type { Upstream } from '../upstream.js'
import { busVoltages, circuitVoltages, endAt, farEnd, isMains, minusAt, notComputed, voltageReading } from './voltages.js'

export type Before = Upstream & Pick<Results, 'dependency' | 'canBus'>

export interface Lines {
  ofItem(tag: Tag): readonly FaultLine[]
  ofCircuit(circuitTag: Tag): readonly FaultLine[]
  ofBus(busTag: Tag): readonly FaultLine[]
}

type PointFacts = Pick<FaultPoint, 'what' | 'tag' | 'reading'> & Partial<FaultPoint>
const point = (facts: PointFacts): FaultPoint => ({ atTag: null, cableTags: [], otherFeedTags: [], portName: null, ...facts })

export function faultLines(vessel: Vessel, before: Before): Lines {
  const { circuits, batteries, equipment, cables, canBuses } = lookup(vessel)
  const { feeding, dependency, canBus } = before

  /** Null where the circuit hangs in the air. */
  function known(circuitTag: Tag): { readonly circuit: Circuit; readonly feed: CircuitFeed } | null {
    const circuit = circuits.get(circuitTag)
    const feed = feeding.byCircuit.get(circuitTag)
    return circuit === undefined || feed === undefined ? null : { circuit, feed }
  }

  function ofItem(tag: Tag): readonly FaultLine[] {
    return (dependency.traces.get(tag)?.supplies ?? []).map(line => ({ circuitTag: line.circuitTag, open: line.open, points: pointsOf(line, tag, new Set()) }))
  }

  function pointsOf(line: SupplyLine, tag: Tag, seen: Set<Tag>): readonly FaultPoint[] {
    if (line.circuitTag !== null) return [...wayTo(line.circuitTag, tag), ...deviceAndUp(line.circuitTag, wayTags(line.circuitTag, tag), seen)]
    const [first] = line.steps
    if (first === undefined) return []
    return first.what === 'network switch' ? byPort(first, tag, seen) : byBus(line, first.tag, tag, seen)
  }

  /** Cables from the device to the first thing that is a point of its own. */
  function wayTags(circuitTag: Tag, tag: Tag): readonly Tag[] {
    const way = segmentsTo(feeding.byCircuit.get(circuitTag)?.segments ?? [], tag)
    const first = way.findIndex(({ farTag }) => passes(vessel, farTag))
    return way.slice(0, first === -1 ? undefined : first + 1).map(({ cableTag }) => cableTag)
  }

  /** The thing, and the switches and joints between it and the device, nearest to it first. */
  function wayTo(circuitTag: Tag, tag: Tag): readonly FaultPoint[] {
    const found = known(circuitTag)
    if (found === null) return []
    const { circuit, feed } = found
    const way = segmentsTo(feed.segments, tag)
    const volts = circuitVoltages(before, circuit, feed)
    const listed = circuit.loadTags.includes(tag)
    const plus = endAt(vessel, way.at(-1)?.cableTag, tag)
    const atItem = listed ? volts.atLoad(tag) : notComputed(`${circuit.tag} does not list ${tag} as its load`)
    const own = point({ what: 'item', tag, reading: readingOf(circuit, feed, plus, [tag], atItem) })
    return [own, ...joints(circuit, feed, way, segment => volts.before(tag, new Set(way.slice(way.indexOf(segment) + 1).map(({ cableTag }) => cableTag))))]
  }

  function readingOf(circuit: Circuit, feed: CircuitFeed, plus: CableEndRef | null, placeTags: readonly Tag[], expected: ExpectedOutcome, afterWayBack = false): Reading {
    return isMains(feed) ? { is: 'mains' } : voltageReading(plus, minusAt(vessel, circuit, plus, { placeTags, afterWayBack }), feed.sourceTag, expected)
  }

  /** What is passed on the way, nearest to the load first, each read at the cable that goes on towards it. */
  function joints(circuit: Circuit, feed: CircuitFeed, way: readonly Segment[], expectedAt: (segment: Segment) => ExpectedOutcome): readonly FaultPoint[] {
    return way.flatMap((segment, i): FaultPoint[] => {
      const onwards = way[i + 1]
      if (!passes(vessel, segment.farTag)) return []
      const plus = endAt(vessel, onwards?.cableTag, segment.farTag)
      return [point({
        what: equipmentKind(equipment.get(segment.farTag)!.kind).draw === 'switch' ? 'switch' : 'joint',
        tag: segment.farTag, cableTags: onwards === undefined ? [] : [onwards.cableTag],
        reading: readingOf(circuit, feed, plus, [segment.farTag], expectedAt(segment), true),
      })]
    }).toReversed()
  }

  /** The device of a circuit with what feeds it, what stands between the two, and then what feeds that. */
  function deviceAndUp(circuitTag: Tag, towards: readonly Tag[], seen: Set<Tag>): readonly FaultPoint[] {
    const found = known(circuitTag)
    if (found === null || seen.has(circuitTag)) return []
    seen.add(circuitTag)
    const { circuit, feed } = found
    const volts = circuitVoltages(before, circuit, feed)
    const plus = endAt(vessel, towards[0], circuitTag)
    const others = (dependency.traces.get(circuit.fedFromTag)?.supplies ?? []).slice(1).flatMap(line => line.circuitTag ?? [])
    return [
      point({
        what: 'device', tag: circuitTag, atTag: circuit.fedFromTag, cableTags: towards, otherFeedTags: others,
        reading: readingOf(circuit, feed, plus, [circuitTag, circuit.fedFromTag], volts.atDevice()),
      }),
      ...joints(circuit, feed, feed.supplySegments, segment => volts.before(circuit.loadTags[0] ?? '', new Set(
        [...feed.supplySegments.slice(feed.supplySegments.indexOf(segment) + 1), ...feed.segments].map(({ cableTag }) => cableTag)))),
      ...pointAndUp(circuit, feed, seen),
    ]
  }

  /** A battery or another source as a step of its own; panels and busbars are seen at the devices on them. */
  function pointAndUp(circuit: Circuit, feed: CircuitFeed, seen: Set<Tag>): readonly FaultPoint[] {
    const tag = circuit.fedFromTag
    const volts = circuitVoltages(before, circuit, feed)
    const first = feed.supplySegments[0]?.cableTag
    const plus = endAt(vessel, first, tag)
    const own = isDistributionPoint(vessel, tag) ? [] : [point({
      what: batteries.has(tag) ? 'battery' : 'source', tag, cableTags: first === undefined ? [] : [first],
      reading: readingOf(circuit, feed, plus, [tag], volts.atPoint()),
    })]
    return [...own, ...(batteries.has(tag) ? [] : upFrom(tag, seen))]
  }

  /** A ring, of two switches that feed each other, ends where it began. */
  function upFrom(tag: Tag, seen: Set<Tag>): readonly FaultPoint[] {
    const line = dependency.traces.get(tag)?.supplies[0]
    if (line === undefined || seen.has(tag)) return []
    seen.add(tag)
    if (line.circuitTag === null) return pointsOf(line, tag, seen).slice(1)
    return [...wayTo(line.circuitTag, tag).slice(1), ...deviceAndUp(line.circuitTag, wayTags(line.circuitTag, tag), seen)]
  }

  function byPort(first: TraceStep, tag: Tag, seen: Set<Tag>): readonly FaultPoint[] {
    const [cableTag] = first.cableTags
    const cable = cables.get(cableTag ?? '')
    const portName = cable === undefined ? null : (cable.from.tag === first.tag ? cable.from : cable.to).terminal
    const reading: Reading = { is: 'data cable' }
    return [
      point({ what: 'item', tag, cableTags: first.cableTags, reading }),
      point({ what: 'network switch', tag: first.tag, cableTags: first.cableTags, portName, reading }),
      ...upFrom(first.tag, seen),
    ]
  }

  function byBus(line: SupplyLine, busTag: Tag, tag: Tag, seen: Set<Tag>): readonly FaultPoint[] {
    const bus = canBuses.get(busTag)
    const result = canBus.byBus.get(busTag)
    const tee = bus?.backbone.find(part => part.kind === 'tee' && part.deviceTag === tag)
    if (bus === undefined || result === undefined || tee?.kind !== 'tee') return []
    const volts = busVoltages(result)
    const drop = tee.dropCableTag ?? undefined
    const plus = endAt(vessel, drop, tag)
    const sourceTag = feeding.byCircuit.get(line.steps[1]?.tag ?? '')?.sourceTag ?? null
    return [
      point({ what: 'item', tag, reading: voltageReading(plus, plus, sourceTag, volts.atDevice(tag)) }),
      point({
        what: 'bus', tag: tee.tag, atTag: busTag, cableTags: drop === undefined ? [] : [drop],
        reading: voltageReading(farEnd(plus), farEnd(plus), sourceTag, volts.atTee(tee.tag)),
      }),
      ...busSupply(busTag, line.steps[1]?.tag ?? null, seen),
    ]
  }

  /** Where a bus is fed, and what feeds it. */
  function busSupply(busTag: Tag, circuitTag: Tag | null, seen: Set<Tag>): readonly FaultPoint[] {
    const bus = canBuses.get(busTag)
    const result = canBus.byBus.get(busTag)
    const power = bus?.backbone.find(part => part.kind === 'power' && part.circuitTag === circuitTag)
    if (circuitTag === null || result === undefined || power?.kind !== 'power') return []
    const drop = power.dropCableTag ?? undefined
    const plus = endAt(vessel, drop, circuitTag)
    const cableTags = drop === undefined ? wayTags(circuitTag, busTag) : [drop]
    return [
      point({
        what: 'bus supply', tag: power.tag, atTag: busTag,
        reading: voltageReading(farEnd(plus), farEnd(plus), feeding.byCircuit.get(circuitTag)?.sourceTag ?? null, busVoltages(result).atInsertion(power.tag)),
      }),
      ...deviceAndUp(circuitTag, cableTags, seen),
    ]
  }

  return {
    ofItem,
    ofCircuit: circuitTag => {
      const found = known(circuitTag)
      if (found === null) return []
      const points = deviceAndUp(circuitTag, found.feed.segments.slice(0, 1).map(({ cableTag }) => cableTag), new Set())
      return [{ circuitTag, open: false, points }]
    },
    ofBus: busTag => (canBuses.get(busTag)?.backbone ?? []).flatMap(part => {
      if (part.kind !== 'power' || part.circuitTag === null) return []
      return [{ circuitTag: part.circuitTag, open: false, points: busSupply(busTag, part.circuitTag, new Set()) }]
    }),
  }
}
