/** All passes in their order on one small boat, so that what one hands on is what the next expects. */
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { cableLengthM } from '../../../src/model/results.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, aPanel, aProtection, aVessel, aWireway, aZone, mm2 } from '../../support/vessel-builder.js'

/**
 * Battery G1 (engine room) – isolator S1 – fuse F1 – busbar X1 (engine room) – fuse F2 – panel A1 (saloon) – way A1.1 –
 * junction J1 – lamps E1 and E2 (cabin). The starter M1 hangs on the isolator too.
 */
const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  zones: [
    aZone({ tag: 'engine', space: 'machinery', ambientC: 50 }), aZone({ tag: 'saloon' }), aZone({ tag: 'cabin' }),
  ],
  wireways: [
    aWireway({ tag: 'WW1', fromTag: 'engine', toTag: 'saloon', lengthM: 4 }),
    aWireway({ tag: 'WW2', fromTag: 'saloon', toTag: 'cabin', lengthM: 5 }),
  ],
  batteries: [aBattery({ tag: 'G1', zoneTag: 'engine' })],
  busbars: [aBusbar({ tag: 'X1', zoneTag: 'engine' })],
  panels: [aPanel({ tag: 'A1', zoneTag: 'saloon' })],
  equipment: [
    anEquipment({ tag: 'S1', kind: 'battery isolator', zoneTag: 'engine' }),
    anEquipment({ tag: 'M1', zoneTag: 'engine', currentMaxA: 200 }),
    anEquipment({ tag: 'J1', kind: 'junction box', zoneTag: 'cabin' }),
    anEquipment({ tag: 'E1', zoneTag: 'cabin', currentMaxA: 3 }),
    anEquipment({ tag: 'E2', zoneTag: 'cabin', powerW: 24 }),
  ],
  cableTypes: [
    aCableType({ tag: 'T50', size: mm2(50), cores: 1 }), aCableType({ tag: 'T10', size: mm2(10), cores: 1 }), aCableType({ tag: 'T2', size: mm2(2.5) }),
  ],
  cables: [
    aCable({ tag: 'W1', from: 'G1', to: 'S1', typeTag: 'T50', carries: 'positive', lengthM: 1 }),
    aCable({ tag: 'W2', from: 'S1', to: 'F1', typeTag: 'T50', carries: 'positive', lengthM: 0.5 }),
    aCable({ tag: 'W3', from: 'F1', to: 'X1', typeTag: 'T50', carries: 'positive', lengthM: 0.5 }),
    aCable({ tag: 'W4', from: 'S1', to: 'M1', typeTag: 'T50', carries: 'positive', lengthM: 2 }),
    aCable({ tag: 'W5', from: 'F2', to: 'A1', typeTag: 'T10', carries: 'positive' }),
    aCable({ tag: 'W6', from: 'A1.1', to: 'J1', typeTag: 'T2' }),
    aCable({ tag: 'W7', from: 'J1', to: 'E1', typeTag: 'T2', lengthM: 1 }),
    aCable({ tag: 'W8', from: 'J1', to: 'E2', typeTag: 'T2', lengthM: 3 }),
  ],
  circuits: [
    aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['X1'], protection: aProtection('class T fuse', 150) }),
    aCircuit({ tag: 'FS', fedFromTag: 'G1', loadTags: ['M1'], unprotectedReason: 'engine starting', zoneTag: 'engine' }),
    aCircuit({ tag: 'F2', fedFromTag: 'X1', loadTags: ['A1'], protection: aProtection('bolt-in fuse, small', 50) }),
    aCircuit({ tag: 'A1.1', fedFromTag: 'A1', loadTags: ['E1', 'E2'], protection: aProtection('circuit breaker', 10) }),
  ],
  ...given,
})

describe('one boat from battery to lamp', () => {
  const results = calculate(boat({ basis: 'iso' }), bases.iso)
  const { worst } = results.voltageDrop.byCircuit.get('A1.1')!

  it('adds every cable on the way to the farthest lamp', () => {
    // By hand, E2 draws 24 W / 12 V = 2 A, E1 3 A, so 5 A up to the battery. W5 is 4 m long, W6 5 m.
    expect(cableLengthM(results.routing.byCable.get('W5'))).toBe(4)
    expect(worst?.loadTag).toBe('E2')
    expect(worst?.steps.map(({ cableTag, byBasis }) => [cableTag, byBasis.input['currentA']])).toEqual([['W1', 5], ['W2', 5], ['W3', 5], ['W5', 5], ['W6', 5], ['W8', 2]])
    // 0.0164 · (5 · 2 · (1 + 0.5 + 0.5) / 50 + 5 · 8 / 10 + 5 · 10 / 2.5 + 2 · 6 / 2.5) = 0.0164 · (0.4 + 4 + 20 + 4.8)
    expect(worst?.voltageDropV).toBeCloseTo(0.0164 * 29.2, 9)
  })
  it('derates what passes the engine room, and nothing else', () => {
    const capacity = (tag: string) => results.currentCarryingCapacity.byCable.get(tag)?.outcome
    // Table A.1 and factor from memory: 10 mm² 90 A · 0.86; 2.5 mm² 35 A
    expect(capacity('W5')).toMatchObject({ output: { currentCarryingCapacityA: expect.closeTo(77.4, 9) } })
    expect(capacity('W6')).toMatchObject({ output: { currentCarryingCapacityA: 35 } })
  })
  it('leaves the starter out of the current in the shared battery cable', () => {
    expect(results.currentCarryingCapacity.byCable.get('W1')?.comparison?.value).toBe(5)
  })
  it('finds nothing wrong but lists the exemption', () => {
    expect(results.findings.filter(({ id }) => id.startsWith('DCD')).map(({ id, subject }) => [id, subject.id])).toEqual([['DCD305', 'FS']])
  })
  it('advises a size for each circuit with a source and a known way', () => {
    // By hand for A1.1, longest way W6 + W8 = 8 m: allowed 1.2 − 0.0164 · 4.4 = 1.12784 V; 0.0164 · 5 · 16 / 1.12784 = 1.163 mm² → 1.5 mm² by the constant.
    // By resistance 1.5 mm² of at least 30 °C loses 5 · 16 · 13.7 · 1.0393 / 1000 = 1.139 V, more than 1.2 V less the feeder's 0.09 V → 2.5 mm²
    expect(results.conductorSize.byCircuit.get('A1.1')).toMatchObject({ status: 'computed', mm2: { designation: '2.5', byDropMm2: expect.closeTo(1.1633, 3) } })
  })
})
