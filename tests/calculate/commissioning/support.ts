/**
 * Battery G1, feeder F1 of 3 m of 2 × 16 mm² to panel A1; from its ways 10 m of 2 × 10 mm² to E1 (10 A) and 1 m of it to E2
 * (20 A); A1.3 has two loads of 2 A and 1 A. Plain copper, insulation 105 °C, 30 °C all around.
 */
import { calculate } from '../../../src/calculate/calculate.js'
import type { CommissioningResults, ReadingCheck } from '../../../src/model/results/commissioning.js'
import type { BasisId, Measurement, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import {
  aBattery, aCable, aCableType, aCircuit, aMeasurement, anEquipment, aPanel, aProtection, aVessel, aZone, mm2,
} from '../../support/vessel-builder.js'

export const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  zones: [aZone({ tag: 'Z1' })],
  batteries: [aBattery({ tag: 'G1', zoneTag: 'Z1', internalResistanceMilliOhm: 4 })],
  panels: [aPanel({ tag: 'A1', zoneTag: 'Z1' })],
  cableTypes: [aCableType({ tag: '2x16', size: mm2(16), tinned: false }), aCableType({ tag: '2x10', size: mm2(10), tinned: false })],
  equipment: [
    anEquipment({ tag: 'E1', kind: 'light', zoneTag: 'Z1', currentTypicalA: 6, currentMaxA: 10, supplyMinV: 11, supplyMaxV: 16 }),
    anEquipment({ tag: 'E2', kind: 'light', zoneTag: 'Z1', currentMaxA: 20 }),
    anEquipment({ tag: 'E3', kind: 'light', zoneTag: 'Z1', currentMaxA: 2 }),
    anEquipment({ tag: 'E4', kind: 'light', zoneTag: 'Z1', powerW: 12 }),
    anEquipment({ tag: 'Q9', kind: 'residual-current device', zoneTag: 'Z1', residualCurrentA: 0.03 }),
  ],
  circuits: [
    aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['A1'], zoneTag: 'Z1', protection: aProtection('terminal fuse', 50) }),
    aCircuit({ tag: 'A1.1', fedFromTag: 'A1', way: 1, loadTags: ['E1'], protection: aProtection('circuit breaker', 15) }),
    aCircuit({ tag: 'A1.2', fedFromTag: 'A1', way: 2, loadTags: ['E2'], protection: aProtection('circuit breaker', 20) }),
    aCircuit({ tag: 'A1.3', fedFromTag: 'A1', way: 3, loadTags: ['E3', 'E4'], demandFactor: 0, protection: aProtection('circuit breaker', 5) }),
  ],
  cables: [
    aCable({ tag: 'W0', from: 'F1', to: 'A1', typeTag: '2x16', lengthM: 3 }),
    aCable({ tag: 'W1', from: 'A1.1', to: 'E1', typeTag: '2x10', lengthM: 10 }),
    aCable({ tag: 'W2', from: 'A1.2', to: 'E2', typeTag: '2x10', lengthM: 1 }),
    aCable({ tag: 'W3', from: 'A1.3', to: 'E3', typeTag: '2x10', lengthM: 10 }),
    aCable({ tag: 'W4', from: 'A1.3', to: 'E4', typeTag: '2x10', lengthM: 10 }),
  ],
  ...given,
})

export type GivenReading = Partial<Measurement> & Pick<Measurement, 'subjectTag'>
export const readingsOf = (given: readonly GivenReading[]): readonly Measurement[] =>
  given.map((reading, i) => aMeasurement({ number: String(i + 1), ...reading }))

export function measured(given: readonly GivenReading[], { vessel = {}, basis = 'iso' }: { vessel?: Partial<Vessel>; basis?: BasisId } = {}): CommissioningResults {
  return calculate(boat({ ...vessel, measurements: readingsOf(given), basis }), bases[basis]).commissioning
}

export const checkOf = ({ checks }: CommissioningResults, kind: ReadingCheck['kind'], number = '1'): ReadingCheck => {
  const found = checks.find(check => check.kind === kind && check.number === number)
  if (found === undefined) throw new Error(`no ${kind} of reading ${number}; there are ${checks.map(check => `${check.kind} of ${check.number}`).join(', ')}`)
  return found
}
export const idsOf = ({ findings }: CommissioningResults): readonly string[] => findings.map(({ id, subject }) => `${id} ${subject.id}`)
