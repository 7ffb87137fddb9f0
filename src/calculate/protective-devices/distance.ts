/** How far each device is from its source, and which live conductors lie ahead of a device or have none. */
import type { Limit } from '../../findings/finding.js'
import { lookup } from '../../model/lookup.js'
import { cableLengthM, type CircuitFeed } from '../../model/results.js'
import type { DeviceDistance, ExposedConductor } from '../../model/results/protective-devices.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { compare } from '../compare.js'
import { exemptionOf } from '../conductors/circuit-cables.js'
import { walkCircuits } from '../feeding/circuit-walk.js'
import { powerGraphOf } from '../feeding/power-graph.js'
import type { Upstream } from '../upstream.js'
import { deviceAbove } from './rating-order.js'

const shoreInlet: EquipmentKindKey = 'shore inlet'

export interface DistanceCheck { readonly distance: DeviceDistance; readonly reasons: readonly string[] }

export function checkDistance(vessel: Vessel, basis: Basis, circuit: Circuit, before: Upstream): DistanceCheck {
  const feed = before.feeding.byCircuit.get(circuit.tag)
  const measured = measuredMm(vessel, circuit, feed, before)
  if ('reason' in measured) return { distance: { distanceMm: null, from: 'unknown', protectedByTag: null, comparison: null }, reasons: [measured.reason] }
  const supply = (feed?.supplySegments ?? []).map(({ cableTag }) => cableTag)
  const protectedByTag = protectorOf(vessel, circuit, supply, before)
  const limit = distanceLimit(vessel, basis, circuit)
  const comparison = protectedByTag === null && limit !== null ? compare('distanceMm', measured.distanceMm, limit) : null
  return { distance: { ...measured, protectedByTag, comparison }, reasons: [] }
}

function measuredMm(
  vessel: Vessel, circuit: Circuit, feed: CircuitFeed | undefined, { routing }: Upstream,
): Pick<DeviceDistance, 'from'> & { readonly distanceMm: number } | { readonly reason: string } {
  const { panels, items } = lookup(vessel)
  if (circuit.protection?.distanceM != null) return { distanceMm: 1000 * circuit.protection.distanceM, from: 'measured' }
  const supply = feed?.supplySegments ?? []
  if (supply.length > 0) {
    const lengths = supply.map(({ cableTag }) => ({ cableTag, lengthM: cableLengthM(routing.byCable.get(cableTag)) }))
    const unknown = lengths.find(({ lengthM }) => lengthM === null)
    return unknown === undefined
      ? { distanceMm: 1000 * lengths.reduce((sum, { lengthM }) => sum + lengthM!, 0), from: 'cables' }
      : { reason: `the distance from its source is not known: the length of ${unknown.cableTag} is not known` }
  }
  const elsewhere = circuit.zoneTag !== null && circuit.zoneTag !== items.get(circuit.fedFromTag)?.zoneTag
  if (elsewhere) return { reason: `the distance from its source is not known: it is in another zone than ${circuit.fedFromTag}, and no cable from there to it is entered` }
  return { distanceMm: 0, from: panels.has(circuit.fedFromTag) ? 'panel' : 'source' }
}

/** The device above, where every cable between can carry its rating: then those are protected, however long. */
function protectorOf(vessel: Vessel, circuit: Circuit, supplyTags: readonly Tag[], { feeding, currentCarryingCapacity }: Upstream): Tag | null {
  const above = deviceAbove(vessel, feeding.byCircuit.get(circuit.tag))
  if (above === null || supplyTags.length === 0) return null
  const carries = supplyTags.every(tag => {
    const outcome = currentCarryingCapacity.byCable.get(tag)?.outcome
    return outcome?.status === 'computed' && outcome.output.currentCarryingCapacityA >= above.protection.ratedCurrentA
  })
  return carries ? above.tag : null
}

/** What the vessel's own rules give comes first; else the widest that the basis grants. A shore inlet has a limit of its own, among the mains. */
export function distanceLimit(vessel: Vessel, { devices: { distance } }: Basis, circuit: Circuit): Limit | null {
  if (lookup(vessel).equipment.get(circuit.fedFromTag)?.kind === shoreInlet) return null
  const own = vessel.conditions.deviceDistanceMm
  if (own !== null) return { relation: 'at most', value: own, citation: { source: 'vessel-data', place: 'distance of protective devices, under conditions' } }
  const enclosed = circuit.protection?.enclosed === true ? distance.enclosed : null
  const atBattery = lookup(vessel).batteries.has(circuit.fedFromTag) ? distance.atBattery : null
  return atBattery ?? enclosed ?? distance.normal
}

/**
 * Every power cable that is live with no device between it and a battery, busbar, panel or source: ahead of a circuit's own
 * device, of a circuit that has none, or on no circuit at all.
 */
export function exposedConductors(vessel: Vessel, basis: Basis, before: Upstream, distances: ReadonlyMap<Tag, DeviceDistance>): readonly ExposedConductor[] {
  const { cables, circuits } = lookup(vessel)
  const found = new Map<string, ExposedConductor>()
  const onCircuits = new Set<Tag>()
  const add = (conductor: Omit<ExposedConductor, 'lengthM'>): void => {
    const key = `${conductor.cableTag} ${conductor.circuitTag}`
    if (!found.has(key)) found.set(key, { ...conductor, lengthM: cableLengthM(before.routing.byCable.get(conductor.cableTag)) })
  }
  for (const circuit of circuits.values()) {
    const feed = before.feeding.byCircuit.get(circuit.tag)
    const supply = feed?.supplySegments ?? []
    const own = feed?.segments ?? []
    for (const { cableTag } of [...supply, ...own]) onCircuits.add(cableTag)
    const common = { circuitTag: circuit.tag, fromTag: circuit.fedFromTag }
    if (circuit.protection === null) {
      const state = withoutDevice(vessel, basis, circuit, [...supply, ...own].map(({ cableTag }) => cableTag), before)
      for (const { cableTag } of [...supply, ...own]) add({ ...common, cableTag, ...state })
    } else {
      const state = aheadOfDevice(distances.get(circuit.tag))
      for (const { cableTag } of supply) add({ ...common, cableTag, ...state })
    }
  }
  const { liveFrom } = walkCircuits(vessel, powerGraphOf(vessel))
  for (const [cableTag, fromTag] of liveFrom) {
    if (!onCircuits.has(cableTag) && cables.has(cableTag)) add({ cableTag, circuitTag: null, fromTag, state: 'on no circuit', because: null })
  }
  return [...found.values()]
}

type State = Pick<ExposedConductor, 'state' | 'because'>

function withoutDevice(vessel: Vessel, basis: Basis, circuit: Circuit, cableTags: readonly Tag[], before: Upstream): State {
  const protector = protectorOf(vessel, circuit, cableTags, before)
  if (protector !== null) return { state: 'protected above', because: `its cables can carry the rating of ${protector}` }
  const exempt = exemptionOf(basis.protection, circuit)
  return exempt === null
    ? { state: 'unprotected', because: circuit.unprotectedReason === null ? 'no device and no reason is recorded' : `reason given: ${circuit.unprotectedReason}` }
    : { state: 'exempt', because: exempt.reason }
}

function aheadOfDevice(distance: DeviceDistance | undefined): State {
  if (distance?.protectedByTag != null) return { state: 'protected above', because: `it can carry the rating of ${distance.protectedByTag}` }
  if (distance?.comparison == null) {
    return { state: 'distance not known', because: distance?.distanceMm == null ? null : 'a shore inlet has a limit of its own, under the mains' }
  }
  return { state: distance.comparison.within ? 'within distance' : 'beyond distance', because: null }
}
