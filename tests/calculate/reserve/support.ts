/**
 * A boat for the tests of what is left, small enough to be summed by hand.
 *
 * G1 12 V -F1 100 A- X1 (150 A) -F2 40 A- A1 (breaker panel, 6 ways, 50 A): A1.1 10 A, A1.2 5 A with the factor 0.5
 * bay -R1 4 m- helm -R2 6 m- mast; tails of 0.5 m. All cables two cores of 105 °C, tinned.
 */
import { reservePass } from '../../../src/calculate/reserve/index.js'
import type { Upstream } from '../../../src/calculate/upstream.js'
import { currentCarryingCapacityPass } from '../../../src/calculate/conductors/current-carrying-capacity.pass.js'
import { conductorSizePass } from '../../../src/calculate/conductors/conductor-size.pass.js'
import { protectionPass } from '../../../src/calculate/conductors/protection.pass.js'
import { voltageDropPass } from '../../../src/calculate/conductors/voltage-drop.pass.js'
import { feedingPass } from '../../../src/calculate/feeding/index.js'
import { placesFor, type PlaceRequest } from '../../../src/calculate/reserve/places-for.js'
import { sourcesPass } from '../../../src/calculate/sources/index.js'
import { routingPass } from '../../../src/calculate/wireways/index.js'
import type { ReserveResults } from '../../../src/model/results/reserve.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import {
  aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, aPanel, aProtection, aVessel, aWireway, aZone, mm2,
} from '../../support/vessel-builder.js'

export const twoCores = (size: number) => aCableType({ tag: `2x${size}`, size: mm2(size) })
export const breaker = (ratedCurrentA: number) => aProtection('circuit breaker', ratedCurrentA)

const plain = aVessel()
export const handBoat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  conditions: { ...plain.conditions, cableTailM: 0.5 },
  zones: [aZone({ tag: 'bay' }), aZone({ tag: 'helm' }), aZone({ tag: 'mast' })],
  wireways: [aWireway({ tag: 'R1', fromTag: 'bay', toTag: 'helm', lengthM: 4 }), aWireway({ tag: 'R2', fromTag: 'helm', toTag: 'mast', lengthM: 6 })],
  cableTypes: [twoCores(35), twoCores(16), twoCores(10), twoCores(2.5)],
  batteries: [aBattery({ tag: 'G1', zoneTag: 'bay', capacityAh: 200 })],
  busbars: [aBusbar({ tag: 'X1', zoneTag: 'bay', ratedCurrentA: 150 })],
  panels: [aPanel({ tag: 'A1', zoneTag: 'helm', ways: 6, ratedCurrentA: 50 })],
  equipment: [anEquipment({ tag: 'E1', zoneTag: 'helm', currentMaxA: 10 }), anEquipment({ tag: 'E2', zoneTag: 'helm', currentMaxA: 5 })],
  circuits: [
    aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['X1'], protection: aProtection('class T fuse', 100) }),
    aCircuit({ tag: 'F2', fedFromTag: 'X1', loadTags: ['A1'], protection: aProtection('bolt-in fuse, large', 40) }),
    aCircuit({ tag: 'A1.1', fedFromTag: 'A1', way: 1, loadTags: ['E1'], protection: breaker(15) }),
    aCircuit({ tag: 'A1.2', fedFromTag: 'A1', way: 4, loadTags: ['E2'], demandFactor: 0.5, protection: breaker(10) }),
  ],
  cables: [
    aCable({ tag: 'W1', from: 'F1', to: 'X1', typeTag: '2x35', routeTags: [], lengthM: 2 }),
    aCable({ tag: 'W2', from: 'F2', to: 'A1', typeTag: '2x16' }),
    aCable({ tag: 'W3', from: 'A1.1', to: 'E1', typeTag: '2x2.5' }),
    aCable({ tag: 'W4', from: 'A1.2', to: 'E2', typeTag: '2x2.5' }),
  ],
  ...given,
})

/** The thing of that tag changed, the others as they were. */
export const changed = <T extends { readonly tag: string }>(things: readonly T[], tag: string, changes: Partial<T>): readonly T[] =>
  things.map(thing => (thing.tag === tag ? { ...thing, ...changes } : thing))

export function upstreamOf(vessel: Vessel): Upstream {
  const basis = bases[vessel.basis]
  const routing = routingPass(vessel)
  const feeding = feedingPass(vessel)
  const currentCarryingCapacity = currentCarryingCapacityPass(vessel, basis, routing, feeding)
  const voltageDrop = voltageDropPass(vessel, basis, routing, feeding, currentCarryingCapacity)
  const protection = protectionPass(vessel, basis, feeding, currentCarryingCapacity)
  return { routing, sources: sourcesPass(vessel), feeding, currentCarryingCapacity, voltageDrop, protection, conductorSize: conductorSizePass(vessel, basis, routing, feeding, voltageDrop) }
}

export const reserveOf = (vessel: Vessel): ReserveResults => reservePass(vessel, bases[vessel.basis], upstreamOf(vessel))

export const asked = (given: Partial<PlaceRequest> = {}): PlaceRequest => ({
  currentA: 8, demandFactor: 1, atTag: 'mast', nominalVoltageV: 12, form: 'dc', loadClass: 'general', continuous: false, dailyH: null, ...given,
})

/** The answers on a vessel, of whose results no more is needed than what is left and what is found already. */
export function answersOf(vessel: Vessel, request: PlaceRequest) {
  const upstream = upstreamOf(vessel)
  const basis = bases[vessel.basis]
  const findings = [upstream.routing, upstream.currentCarryingCapacity, upstream.voltageDrop, upstream.protection].flatMap(results => results.findings)
  return placesFor(vessel, basis, { ...upstream, reserve: reservePass(vessel, basis, upstream), findings }, request)
}
