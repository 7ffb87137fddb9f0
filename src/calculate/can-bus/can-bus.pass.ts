/** CAN buses: lengths, supply, load, terminators, instances, and what room is left. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { BusResult, CanBusResults } from '../../model/results/can-bus.js'
import type { Gap } from '../../model/results/gap.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'
import { backboneOf } from './backbone.js'
import { findingsOf } from './bus-findings.js'
import { alikeDevices, alikeInData, cableNotAsEntered } from './findings.js'
import { lengthsOf, terminationOf } from './lengths.js'
import { alikeSenders, busLoadOf } from './load.js'
import { type BusWithBackbone, type Traffic, trafficOf } from './messages.js'
import { disorders } from './order.js'
import { readingsOf } from './readings.js'
import { roomOf } from './room.js'
import { supplyOf } from './supply.js'

export function canBusPass(vessel: Vessel, _basis: Basis, before: Upstream): CanBusResults {
  const buses = vessel.canBuses.map((bus): BusWithBackbone => ({ bus, backbone: backboneOf(vessel, before.routing, bus) }))
  const traffic = trafficOf(vessel, buses)
  const disordersOf = disorders(vessel)
  const results = buses.map(bus => resultOf(vessel, before, bus, traffic.get(bus.bus.tag)!, disordersOf))
  return {
    byBus: new Map(results.map(result => [result.bus.tag, result])),
    notAssessed: results.flatMap(gapsOf),
    findings: [...results.flatMap(result => [...findingsOf(before, result), ...orderFindings(result)]), ...alikeFindings(results)],
  }
}

function resultOf(vessel: Vessel, before: Upstream, { bus, backbone }: BusWithBackbone, traffic: Traffic, disordersOf: ReturnType<typeof disorders>): BusResult {
  const lengths = lengthsOf(bus, backbone)
  const termination = terminationOf(backbone)
  const supply = supplyOf(vessel, before, bus, backbone)
  const load = busLoadOf(bus, backbone, traffic)
  return {
    bus, backbone, lengths, termination, supply, load,
    disorders: disordersOf({ bus, backbone }),
    alike: alikeSenders(bus, traffic.messages),
    room: roomOf(backbone, lengths, supply, load),
    readings: readingsOf(vessel, { bus, backbone, termination, supply, load }),
  }
}

/** One reason once, though it stands in the way of several figures. */
function gapsOf({ bus, lengths, supply, load, termination, readings }: BusResult): readonly Gap[] {
  const reasons = [
    ...lengths.missing, ...supply.sections.flatMap(({ missing }) => missing), ...load.missing,
    ...(termination.expected.status === 'computed' ? [] : [termination.expected.reason]),
    ...readings.filter(({ agrees, supersededBy }) => agrees === null && supersededBy === null).map(({ number, words }) => `reading ${number}: ${words}`),
  ]
  return [...new Set(reasons)].map(reason => ({ subjectTag: bus.tag, reason }))
}

function orderFindings({ bus, disorders }: BusResult): readonly Finding[] {
  const subject = { kind: 'CAN bus', id: bus.tag }
  const words = [...disorders.slice(0, 3), ...(disorders.length > 3 ? [`and ${disorders.length - 3} more`] : [])].join('; ')
  return disorders.length === 0 ? [] : [find(cableNotAsEntered, { subject, field: null, evidence: { cableCount: disorders.length }, limit: null, context: { words } })]
}

/** A pair that bridges join meets on several buses, and is named once. */
function alikeFindings(results: readonly BusResult[]): readonly Finding[] {
  const pairs = new Map(results.flatMap(({ alike }) => alike).map(pair => [[...pair.tags.toSorted(), pair.inData].join('\n'), pair]))
  return [...pairs.values()].map(({ tags: [one, other], inData, instanceNumber, pgnNumbers }) => find(inData ? alikeInData : alikeDevices, {
    subject: { kind: 'equipment', id: one }, field: null, evidence: { instanceNumber }, limit: null,
    context: { other, groups: `PGN ${inWords(pgnNumbers.map(String))}` },
  }))
}
