/** Prospective short-circuit currents against sums done by hand, and what devices must break. */
import { describe, expect, it } from 'vitest'
import { prospectiveA } from '../../../src/model/results/protective-devices.js'
import type { Battery, Vessel } from '../../../src/model/vessel.js'
import { aBattery, aCable, aCircuit, anEquipment, anOutput, aPanel, aProtection } from '../../support/vessel-builder.js'
import { devicesOf, found, smallSystem, withChanged } from './support.js'

const pointA = (vessel: Vessel, tag: string): number | null => prospectiveA(devicesOf(vessel).byPoint.get(tag))
const deviceA = (vessel: Vessel, tag: string): number | null => prospectiveA(devicesOf(vessel).byCircuit.get(tag)?.prospective)
const withBattery = (change: Partial<Battery>): Vessel => smallSystem({ batteries: withChanged(smallSystem().batteries, 'G1', { internalResistanceMilliOhm: null, ...change }) })

describe('along the way from the battery', () => {
  const vessel = smallSystem()
  // By hand: 12.6 V over 5, 5 + 1 + 2 and 5 + 1 + 2 + 4 mΩ
  it.each([['G1', 2520], ['X1', 1575], ['A1', 1050]])('at %s: %d A', (tag, expected) => {
    expect(pointA(vessel, tag)).toBeCloseTo(expected, 6)
  })
  // Right behind the device: F1 after W1, 12.6 V over 6 mΩ; F2 on the busbar, A1.1 in the panel
  it.each([['F1', 2100], ['F2', 1575], ['A1.1', 1050]])('behind %s: %d A', (tag, expected) => {
    expect(deviceA(vessel, tag)).toBeCloseTo(expected, 6)
  })
  it('lists each conductor with its circuit', () => {
    expect(devicesOf(vessel).byPoint.get('A1')!.steps.map(({ circuitTag, cableTag }) => `${circuitTag} ${cableTag}`)).toEqual(['F1 W1', 'F1 W2', 'F2 W3'])
  })
  it('halves what conductors in parallel have: 12.6 V over 5 + 1 + 1 mΩ', () => {
    expect(pointA(smallSystem({ cables: withChanged(vessel.cables, 'W2', { parallelCount: 2 }) }), 'X1')).toBeCloseTo(1800, 6)
  })
  it('takes the named way back for a circuit, and only the way out up to its device', () => {
    const single = smallSystem({
      cables: [...withChanged(withChanged(vessel.cables, 'W1', { typeTag: 'T1', carries: 'positive' }), 'W2', { typeTag: 'T1', carries: 'positive' }),
        aCable({ tag: 'W9', from: 'X2', to: 'G1:-', typeTag: 'T1', carries: 'negative', lengthM: 2 })],
      circuits: withChanged(vessel.circuits, 'F1', { returnCableTags: ['W9'] }),
    })
    // 0.5 m and 1 m out, 2 m back: 12.6 V over 5 + 3.5 mΩ; to the device 0.5 m: 12.6 V over 5.5 mΩ
    expect(pointA(single, 'X1')).toBeCloseTo(12600 / 8.5, 6)
    expect(deviceA(single, 'F1')).toBeCloseTo(12600 / 5.5, 6)
  })
})

describe('at the posts of a battery', () => {
  it('the stated short-circuit current comes first', () => {
    expect(pointA(withBattery({ shortCircuitCurrentA: 3000, internalResistanceMilliOhm: 1, crankingCurrentA: 500 }), 'G1')).toBeCloseTo(3000, 6)
  })
  it('then the internal resistance, then the cranking current at twice the cold current', () => {
    expect(pointA(withBattery({ internalResistanceMilliOhm: 4, crankingCurrentA: 500 }), 'G1')).toBeCloseTo(3150, 6)
    // 800 A cold cranking: 6.75 mΩ cold, 3.375 mΩ warm; 12.6 V / 3.375 mΩ
    expect(pointA(withBattery({ crankingCurrentA: 800 }), 'G1')).toBeCloseTo(3733.33, 2)
  })
  // 24 V lead: 12 cells, 25.2 V; lithium: eight cells, 26.4 V, whether sold as 24 V or 25.6 V; 48 V: sixteen cells, 52.8 V
  it.each([['agm', 24, 25.2], ['lfp', 24, 26.4], ['lfp', 25.6, 26.4], ['lfp', 12, 13.2], ['lfp', 12.8, 13.2], ['lfp', 48, 52.8]] as const)('%s of %d V rests at %d V', (chemistry, nominalVoltageV, restV) => {
    expect(pointA(withBattery({ chemistry, nominalVoltageV, internalResistanceMilliOhm: 10 }), 'G1')).toBeCloseTo(100 * restV, 6)
  })
  it('strings in parallel add, batteries in series do not', () => {
    const block = { nominalVoltageV: 6, capacityAh: null, crankingCurrentA: null, internalResistanceMilliOhm: null, shortCircuitCurrentA: 2400 }
    expect(pointA(withBattery({ blocks: { seriesCount: 2, parallelCount: 3, ...block } }), 'G1')).toBeCloseTo(7200, 6)
    expect(pointA(withBattery({ blocks: { seriesCount: 2, parallelCount: 1, ...block } }), 'G1')).toBeCloseTo(2400, 6)
  })
  it.each([
    [{ chemistry: null, internalResistanceMilliOhm: 5 }, 'the chemistry of G1 is not recorded'],
    [{}, 'neither short-circuit current, internal resistance nor cranking current of G1 is recorded'],
    [{ chemistry: 'lfp', crankingCurrentA: 800 }, 'a cranking current tells neither of a lithium battery'],
  ] as const)('says why there is none: %j', (change, reason) => {
    const results = devicesOf(withBattery(change))
    expect(prospectiveA(results.byPoint.get('G1'))).toBeNull()
    expect(results.notAssessed.filter(({ subjectTag }) => subjectTag === 'A1.1').map(gap => gap.reason).join()).toContain(reason)
    expect(results.byCircuit.get('A1.1')?.againstCurrent).toBeNull()
  })
})

describe('what else feeds a fault', () => {
  const charged = (outputs: Parameters<typeof anOutput>[0]) => smallSystem({
    equipment: [...smallSystem().equipment, anEquipment({ tag: 'G5', kind: 'alternator', zoneTag: 'Z1', outputs: [anOutput({ terminal: 'B', ...outputs })] })],
    circuits: [...smallSystem().circuits, aCircuit({ tag: 'F5', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, large', 150), loadTags: ['G5'] })],
    cables: [...smallSystem().cables, aCable({ tag: 'W5', from: 'F5', to: 'G5:B', typeTag: 'T', lengthM: 1 })],
  })
  it('an alternator adds what it states, else what it puts in', () => {
    expect(pointA(charged({ nominalVoltageV: 12, ratedCurrentA: 100, shortCircuitCurrentA: 250 }), 'G1')).toBeCloseTo(2770, 6)
    expect(pointA(charged({ nominalVoltageV: 12, ratedCurrentA: 100 }), 'X1')).toBeCloseTo(1675, 6)
  })
  it('is said to be left out where neither is recorded', () => {
    const results = devicesOf(charged({ nominalVoltageV: 12 }))
    expect(prospectiveA(results.byPoint.get('G1'))).toBeCloseTo(2520, 6)
    expect(results.notAssessed.filter(({ subjectTag }) => subjectTag === 'G5')).toHaveLength(1)
    expect(results.byCircuit.get('F5')!.notAssessed.map(({ about }) => about)).toContain('charging')
  })
  it('a normally open link to another battery is not assessed, unless interlocked', () => {
    const linked = (interlockTag: string | null) => smallSystem({
      batteries: [...smallSystem().batteries, aBattery({ tag: 'G2', zoneTag: 'Z1' })],
      circuits: [...smallSystem().circuits, aCircuit({ tag: 'F9', fedFromTag: 'G2', protection: aProtection('flat-link fuse', 200), loadTags: ['X1'], normalState: 'open', interlockTag })],
    })
    const about = (vessel: Vessel) => devicesOf(vessel).notAssessed.filter(({ subjectTag, reason }) => subjectTag === 'F9' && reason.includes('two sources'))
    expect(about(linked(null))).toHaveLength(1)
    expect(about(linked('Q9'))).toHaveLength(0)
  })
})

describe('conductors that cannot be counted', () => {
  const unknownLength = smallSystem({ cables: withChanged(smallSystem().cables, 'W3', { lengthM: null, routeTags: null }) })
  it('are left out, which makes the current too large', () => {
    const prospective = devicesOf(unknownLength).byPoint.get('A1')!
    expect(prospectiveA(prospective)).toBeCloseTo(1575, 6)
    expect(prospective.leftOut).toEqual(['the length of W3 is not known'])
  })
  it('within is then certain, above is not assessed', () => {
    const withCapacity = (interruptingCapacityA: number) => devicesOf({
      ...unknownLength, circuits: withChanged(unknownLength.circuits, 'A1.1', { protection: aProtection('blade fuse', 10, { interruptingCapacityA }) }),
    })
    expect(withCapacity(1600).byCircuit.get('A1.1')!.againstCurrent).toMatchObject({ within: true })
    expect(withCapacity(1500).byCircuit.get('A1.1')!.againstCurrent).toBeNull()
    expect(withCapacity(1500).byCircuit.get('A1.1')!.notAssessed).toContainEqual({ about: 'interrupting', reason: 'whether it can break the short-circuit current: the length of W3 is not known' })
    expect(found(withCapacity(1500))).not.toContain('PDV101 A1.1')
  })
})

describe('sources that are equipment', () => {
  const mains = (basis: 'iso' | 'abyc', output: Parameters<typeof anOutput>[0], kind = 'shore inlet') => smallSystem({
    basis,
    panels: [...smallSystem().panels, aPanel({ tag: 'A9', zoneTag: 'Z1' })],
    equipment: [...smallSystem().equipment, anEquipment({ tag: 'X9', kind, zoneTag: 'Z1', outputs: [anOutput({ form: 'ac', frequencyHz: 60, ...output })] })],
    circuits: [
      ...smallSystem().circuits,
      aCircuit({ tag: 'F9', fedFromTag: 'X9', protection: aProtection('circuit breaker', 30, { interruptingCapacityA: 4000, voltageRatingV: 240 }), loadTags: ['A9'] }),
      aCircuit({ tag: 'A9.1', fedFromTag: 'A9', protection: aProtection('class T fuse', 60), loadTags: ['E1'] }),
    ],
  })
  it('the stated current counts everywhere behind them', () => {
    const results = devicesOf(mains('iso', { nominalVoltageV: 230, ratedCurrentA: 16, shortCircuitCurrentA: 6000 }))
    expect(prospectiveA(results.byPoint.get('X9'))).toBe(6000)
    expect(prospectiveA(results.byCircuit.get('A9.1')?.prospective)).toBe(6000)
    expect(found(results)).toContain('PDV101 F9')
  })
  // ABYC E-11 table V.B: 120 V 3000 and 3000 A; 120/240 V main 5000, branch 3000 (from memory)
  it('shore power has the class of table V.B where ABYC holds, else nothing is assumed', () => {
    expect(prospectiveA(devicesOf(mains('abyc', { nominalVoltageV: 120, ratedCurrentA: 30 })).byPoint.get('X9'))).toBe(3000)
    const large = devicesOf(mains('abyc', { nominalVoltageV: 240, ratedCurrentA: 50 }))
    expect([prospectiveA(large.byCircuit.get('F9')?.prospective), prospectiveA(large.byCircuit.get('A9.1')?.prospective)]).toEqual([5000, 3000])
    expect(devicesOf(mains('iso', { nominalVoltageV: 120, ratedCurrentA: 30 })).byPoint.get('X9')?.current).toMatchObject({ status: 'not computed' })
    expect(devicesOf(mains('abyc', { nominalVoltageV: 120, ratedCurrentA: 30 }, 'generator')).byPoint.get('X9')?.current).toMatchObject({ status: 'not computed' })
  })
  it('the tables of types do not hold on a.c.', () => {
    expect(devicesOf(mains('abyc', { nominalVoltageV: 120, ratedCurrentA: 30 })).byCircuit.get('A9.1')?.capability).toEqual({ interruptingCapacityA: null, voltageRatingV: null, from: 'unknown' })
  })
})

describe('what a device breaks', () => {
  it('the blade fuse of 1 kA behind 1050 A is found, the others are within', () => {
    expect(found(devicesOf(smallSystem())).filter(line => line.startsWith('PDV101'))).toEqual(['PDV101 A1.1'])
  })
  it('exactly its capacity is within; what is recorded comes before its type', () => {
    const exactly = smallSystem({ circuits: withChanged(smallSystem().circuits, 'A1.1', { protection: aProtection('blade fuse', 10, { interruptingCapacityA: 1050 }) }) })
    expect(devicesOf(exactly).byCircuit.get('A1.1')).toMatchObject({ capability: { interruptingCapacityA: 1050, from: 'recorded' }, againstCurrent: { within: true } })
  })
  it('a device made for less than the nominal voltage is found, and its capacity is not assessed', () => {
    const results = devicesOf(withBattery({ nominalVoltageV: 36, internalResistanceMilliOhm: 50 }))
    expect(found(results)).toContain('PDV103 A1.1')
    expect(results.byCircuit.get('A1.1')).toMatchObject({ againstCurrent: null, againstVoltage: { within: false } })
    // 32 V is made for 32 V
    expect(found(devicesOf(withBattery({ nominalVoltageV: 32, internalResistanceMilliOhm: 50 })))).not.toContain('PDV103 A1.1')
  })
  // ABYC E-11 table V.A: up to 650 A cold cranking main 1500 and branch 750 A
  it('by class: the first device is a main device, those behind it branch devices', () => {
    const results = devicesOf({ ...withBattery({ crankingCurrentA: 650 }), basis: 'abyc' })
    expect(['F1', 'F2', 'A1.1'].map(tag => results.byCircuit.get(tag)?.againstClass?.limit.value)).toEqual([1500, 750, 750])
    expect(devicesOf(withBattery({ crankingCurrentA: 650 })).byCircuit.get('F1')?.againstClass).toBeNull()
  })
})
