/** Lengths of backbone and drops, and the number of devices, each against its limit; the terminators. */
import { inWords } from '../../findings/words.js'
import type { Limit } from '../../findings/finding.js'
import type { Backbone, BusLengths, BusTermination, Station } from '../../model/results/can-bus.js'
import type { CanBus } from '../../model/vessel.js'
import { busRules, lightestOf, terminatorOhm } from '../../references/tables/can-rules.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { devicesOf, lengthOf, segmentsOf } from './backbone.js'
import { backboneLengthMethod } from './backbone-length.calc.js'
import { terminationMethod } from './termination.calc.js'

export function lengthsOf(bus: CanBus, backbone: Backbone): BusLengths {
  const rules = busRules[bus.protocol]
  const outcome = backboneLengthOf(backbone)
  const limit = backboneLimit(bus, backbone)
  const drops = backbone.stations.flatMap(({ part, drop }) => (drop === null || drop.lengthM === null ? [] : [{ teeTag: part.tag, cableTag: drop.cableTag, lengthM: drop.lengthM }]))
  const dropsTogetherM = drops.reduce((sum, { lengthM }) => sum + lengthM, 0)
  const undropped = backbone.stations.filter(({ device, drop }) => device !== null && drop === null).map(({ device }) => device!.tag)
  const there = new Set(segmentsOf(backbone).map(({ cableTag }) => cableTag))
  const takenOut = bus.backbone.flatMap(part => (part.kind === 'segment' && !there.has(part.cableTag) ? [part.cableTag] : []))
  const unmeasured = backbone.stations.flatMap(({ drop }) => (drop !== null && drop.lengthM === null ? [drop.cableTag] : []))
  return {
    backbone: outcome,
    backboneComparison: outcome.status === 'computed' && limit !== null ? compare('backboneLengthM', outcome.output.backboneLengthM, limit) : null,
    drops: drops.map(({ lengthM, ...drop }) => ({ ...drop, comparison: compare('dropLengthM', lengthM, rules.dropM) })).toSorted((a, b) => b.comparison.value - a.comparison.value),
    dropsTogetherM,
    dropsComparison: rules.dropsTogetherM === null ? null : compare('dropsTogetherM', dropsTogetherM, rules.dropsTogetherM),
    devices: compare('deviceCount', devicesOf(backbone).length, rules.devices),
    missing: [
      ...(takenOut.length === 0 ? [] : [`${inWords(takenOut)} of the backbone ${takenOut.length === 1 ? 'is' : 'are'} marked as removed`]),
      ...(outcome.status === 'computed' ? [] : [outcome.reason]),
      ...(limit === null ? [`the kind of bus cable is not recorded for ${inWords(kindless(backbone))}`] : []),
      ...(undropped.length === 0 ? [] : [`no drop cable is recorded for ${inWords(undropped)}`]),
      ...(unmeasured.length === 0 ? [] : [`the length of drop ${inWords(unmeasured)} is not known`]),
    ],
  }
}

/** Cables of the backbone whose kind is not recorded. */
export const kindless = (backbone: Backbone): readonly string[] => [...new Set(segmentsOf(backbone).filter(({ busCable }) => busCable === null).map(({ cableTag }) => cableTag))]

/** By the cable that limits most, and of a bus plugged together without any by the lightest. Null where the kind is not known and matters. */
function backboneLimit({ backboneMaxM, protocol }: CanBus, backbone: Backbone): Limit | null {
  if (backboneMaxM !== null) return { relation: 'at most', value: backboneMaxM, citation: { source: 'vessel-data', place: 'largest length of the backbone' } }
  const kinds = segmentsOf(backbone).flatMap(({ busCable }) => busCable ?? [])
  const lightest = lightestOf(kinds)
  if (protocol === 'j1939' || lightest === 'light' || segmentsOf(backbone).length === 0) return busRules[protocol].backboneM('light')
  return lightest === null || kindless(backbone).length > 0 ? null : busRules[protocol].backboneM(lightest)
}

function backboneLengthOf(backbone: Backbone) {
  const cableLengthM = lengthOf(segmentsOf(backbone))
  if (cableLengthM === null) {
    const unknown = [...new Set(segmentsOf(backbone).filter(({ lengthM }) => lengthM === null).map(({ cableTag }) => cableTag))]
    return { status: 'not computed', method: backboneLengthMethod.id, reason: `the length of ${inWords(unknown)} is not known` } as const
  }
  const first = endOf(distancesFrom(backbone.stations, backbone.spans))
  const last = endOf(distancesFrom(backbone.stations.toReversed(), backbone.spans.toReversed()))
  return runMethod(backboneLengthMethod, {
    cableLengthM, firstDropM: first.dropM, firstDistanceM: first.distanceM, lastDropM: last.dropM, lastDistanceM: last.distanceM,
  })
}

interface Reach { readonly dropM: number; readonly distanceM: number }
/** Drops with the way from their tee to one end. */
function distancesFrom(stations: readonly Station[], spans: Backbone['spans']): readonly Reach[] {
  let distanceM = 0
  return stations.flatMap(({ drop }, i) => {
    distanceM += lengthOf(spans[i]!)!
    return drop === null || drop.lengthM === null ? [] : [{ dropM: drop.lengthM, distanceM }]
  })
}
/** The one that reaches furthest beyond the end. */
const endOf = (reaches: readonly Reach[]): Reach =>
  reaches.reduce((most, reach) => (reach.dropM - reach.distanceM > most.dropM - most.distanceM ? reach : most), reaches[0] ?? { dropM: 0, distanceM: 0 })

export function terminationOf({ stations, spans }: Backbone): BusTermination {
  const terminators = stations.flatMap(({ part }) => (part.kind === 'terminator' ? [part] : []))
  const conductance = terminators.reduce((sum, { resistanceOhm }) => sum + 1 / (resistanceOhm ?? terminatorOhm), 0)
  const isEnd = (station: Station | undefined): boolean => station?.part.kind === 'terminator'
  return {
    terminatorTags: terminators.map(({ tag }) => tag),
    asItShouldBe: terminators.length === 2 && isEnd(stations[0]) && isEnd(stations.at(-1)) && spans[0]!.length === 0 && spans.at(-1)!.length === 0,
    expected: runMethod(terminationMethod, { terminatorCount: terminators.length, terminatorResistanceOhm: conductance === 0 ? 0 : terminators.length / conductance }),
  }
}
