/** Lengths, terminators and readings, case by case. */
import { describe, expect, it } from 'vitest'
import { aMeasurement } from '../../support/vessel-builder.js'
import { aMessage, type Along, busBoat, busIn, foundIn, isolator, power, resultsOf, terminator } from './support.js'

const ends = (...parts: Along[]): Along[] => [terminator('R1'), ...parts, terminator('R2')]
const plain = { P1: { drop: 1 }, P2: { drop: 1 } }

describe('length of a backbone', () => {
  const lengthOf = (...given: Parameters<typeof busBoat>) => {
    const { backbone } = busIn(busBoat(...given)).lengths
    return backbone.status === 'computed' ? backbone.output.backboneLengthM : backbone.reason
  }
  it('counts a drop that reaches beyond the terminator', () => {
    expect(lengthOf({ along: ends(1, 'P1', 10, power('X0'), 'P2', 3), devices: { P1: { drop: 4 }, P2: { drop: 2 } } })).toBeCloseTo(14 + 3, 9)
    expect(lengthOf({ along: ends(1, 'P1', 10, power('X0'), 'P2', 3), devices: { P1: { drop: 0.5 }, P2: { drop: 5 } } })).toBeCloseTo(14 + 2, 9)
  })
  it('looks at every tee near the end, not the last alone', () => {
    expect(lengthOf({ along: ends('P1', 1, 'P2', 10, power('X0'), 4), devices: { P1: { drop: 0.5 }, P2: { drop: 5 } } })).toBeCloseTo(15 + 4, 9)
  })
  it('is held against what the lightest cable allows, or what was agreed', () => {
    const along = ends('P1', 101, power('X0'), 'P2')
    const devices = { P1: { len: 0, drop: 0 }, P2: { len: 0, drop: 0 } }
    expect(foundIn(busBoat({ along, devices }))).toEqual(['CAN101 N1'])
    expect(foundIn(busBoat({ along, devices, cable: 'mid' }))).toEqual([])
    const boat = busBoat({ along, devices, cable: 'mid' })
    expect(foundIn({ ...boat, canBuses: boat.canBuses.map(bus => ({ ...bus, backboneMaxM: 60 })) })).toEqual(['CAN101 N1'])
    expect(foundIn({ ...boat, canBuses: boat.canBuses.map(bus => ({ ...bus, protocol: 'j1939' as const })) })).toContain('CAN101 N1')
  })
  it('is not known while a cable is not', () => {
    const boat = busBoat({ along: ends('P1', 5, power('X0')), devices: plain })
    expect(busIn({ ...boat, cables: boat.cables.map(cable => (cable.tag === 'W1' ? { ...cable, lengthM: null } : cable)) }).lengths.missing).toEqual(['the length of W1 is not known'])
  })
  it('is not passed where a cable of it has been taken out', () => {
    const boat = busBoat({ along: ends('P1', 5, power('X0'), 3), devices: plain })
    const without = { ...boat, cables: boat.cables.map(cable => (cable.tag === 'W1' ? { ...cable, status: 'removed' as const } : cable)) }
    expect(busIn(without).lengths.missing).toEqual(['W1 of the backbone is marked as removed'])
  })
  it('says which drops are not recorded', () => {
    expect(busIn(busBoat({ along: ends('P1', power('X0')), devices: { P1: { drop: null } } })).lengths.missing).toEqual(['no drop cable is recorded for P1'])
  })
})

describe('drops', () => {
  it('of 6 m pass, longer ones are found at their tee', () => {
    expect(foundIn(busBoat({ along: ends(10, 'P1', power('X0'), 'P2', 10), devices: { P1: { drop: 6 }, P2: { drop: 6.01 } } }))).toEqual(['CAN102 X2'])
  })
})

describe('terminators', () => {
  const words = (...along: Along[]) => resultsOf(busBoat({ along, devices: plain })).findings.filter(({ id }) => id === 'CAN105').map(({ message }) => message)
  it('one at each end are as it should be', () => expect(words(...ends('P1', power('X0'), 'P2'))).toEqual([]))
  it.each([
    [['P1', power('X0')], 'CAN bus N1: no terminator, none at the first and last end'],
    [[terminator('R1'), 'P1', power('X0')], 'CAN bus N1: one terminator (R1), none at the last end'],
    [[terminator('R1'), 'P1', terminator('R2'), power('X0'), 'P2'], 'CAN bus N1: 2 terminators (R1 and R2), none at the last end, R2 not at an end'],
    [[terminator('R1'), 'P1', terminator('R3'), power('X0'), terminator('R2')], 'CAN bus N1: 3 terminators (R1, R3 and R2), R3 not at an end'],
    [[2, terminator('R1'), 'P1', power('X0'), terminator('R2')], 'CAN bus N1: 2 terminators (R1 and R2), none at the first end, R1 not at an end'],
  ] as const)('%#', (along, message) => expect(words(...along)).toEqual([message]))
  it('of another resistance are found, and change what is to be read', () => {
    const boat = busBoat({ along: [terminator('R1', 60), power('X0'), terminator('R2')] })
    expect(foundIn(boat)).toEqual(['CAN106 R1'])
    expect(busIn(boat).termination.expected).toMatchObject({ output: { resistanceOhm: expect.closeTo(40, 9) } })
  })
  it('of an empty bus are no finding', () => expect(foundIn(busBoat({ along: [] }))).toEqual([]))
})

describe('readings', () => {
  const bus = { along: ends(power('X0', { supplyVoltageV: 13 }), 10, 'P1', 'P2'), devices: { P1: { len: 4, drop: 1, sends: [aMessage(129025)] }, P2: { len: 4, drop: 1, sends: [aMessage(126993)] } } }
  const read = (given: Partial<Parameters<typeof aMeasurement>[0]>, of: Parameters<typeof busBoat>[0] = bus) => busIn(busBoat(of, { measurements: [aMeasurement({ number: 'M1', subjectTag: 'N1', ...given })] })).readings[0]!
  // 13 − 2 · 0.057 · 10 · 0.4 = 12.544 V at the tees, 2 · 0.057 · 0.2 less at the devices.
  it('of a voltage is held against that of the tee or of the device', () => {
    expect(read({ voltageV: 12.5, atTag: 'X1' })).toMatchObject({ calculated: expect.closeTo(12.544, 6), agrees: true })
    expect(read({ voltageV: 12.5, atTag: 'P1' })).toMatchObject({ calculated: expect.closeTo(12.5212, 6), agrees: true })
    expect(read({ voltageV: 12.2, atTag: 'X1' })).toMatchObject({ agrees: false })
    expect(read({ voltageV: 8.9, atTag: 'X1' })).toMatchObject({ agrees: false, words: 'a device needs 9.00\u00A0V' })
    expect(read({ voltageV: 12.2 })).toMatchObject({ agrees: null, words: 'the reading does not say at which tee or device it was taken' })
    expect(read({ voltageV: 12.2, atTag: 'X77' })).toMatchObject({ agrees: null, words: 'the voltage at X77 is not assessed' })
  })
  it('of a voltage with that of the source is reckoned from there', () => {
    const fed = { ...bus, along: ends(power('X0'), 10, 'P1', 'P2') }
    expect(read({ voltageV: 13, sourceVoltageV: 13.5, atTag: 'X1' }, fed)).toMatchObject({ calculated: expect.closeTo(13.5 - 0.456, 2), agrees: true })
    expect(read({ voltageV: 12.6, sourceVoltageV: 13.5, atTag: 'X1' }, fed)).toMatchObject({ agrees: false })
  })
  it('of the load may lie 5 points outside of nominal and worst', () => {
    // 0.52 % and 0.64 %.
    expect(read({ busLoadPercent: 5.6 })).toMatchObject({ agrees: true })
    expect(read({ busLoadPercent: 5.7 })).toMatchObject({ agrees: false, words: 'devices send more, or more often, than recorded, or frames are repeated after faults' })
    expect(read({ busLoadPercent: 20 }, { ...bus, devices: { ...bus.devices, P2: { len: 4, drop: 1 } } })).toMatchObject({ agrees: null, words: 'what some devices send is not recorded' })
  })
  it('count the latest of each kind and place', () => {
    const measurements = [['M1', '2026-05-01', 120], ['M2', '2026-06-01', 60]].map(([number, date, resistanceOhm]) => aMeasurement({ number: String(number), date: String(date), subjectTag: 'N1', resistanceOhm: Number(resistanceOhm) }))
    expect(foundIn(busBoat(bus, { measurements }))).toEqual([])
    expect(foundIn(busBoat(bus, { measurements: measurements.slice(0, 1) }))).toEqual(['CAN303 M1'])
    expect(busIn(busBoat(bus, { measurements })).readings.map(({ supersededBy }) => supersededBy)).toEqual(['M2', null])
  })
  it('say what is accepted', () => {
    // By hand: 60 Ω less and plus a tenth; 0.3 V less than 12.544 V, and the 9 V that a device needs
    expect(read({ resistanceOhm: 60 }).tolerances.map(({ limit }) => limit.value)).toEqual([expect.closeTo(54, 9), expect.closeTo(66, 9)])
    expect(read({ voltageV: 12.5, atTag: 'X1' })).toMatchObject({ limits: [{ limit: { value: 9 } }], tolerances: [{ limit: { value: expect.closeTo(12.244, 6) } }] })
    expect(read({ voltageV: 12.2 })).toMatchObject({ limits: [], tolerances: [] })
  })
})

describe('odd buses', () => {
  it.each([
    ['empty', []], ['one terminator', [terminator('R1')]], ['cables alone', [3, 4]], ['isolators alone', [isolator('X8'), isolator('X9')]], ['insertions alone', [power('X0'), power('X9', { circuitTag: null })]],
    ['an insertion without a circuit', ends(power('X0', { circuitTag: null }), 1, 'P1')], ['a device that is not there', ends(power('X0'), 1, 'P9')],
  ] as const)('%s make no fault of ours', (_, along) => {
    expect(() => resultsOf(busBoat({ along, devices: { P1: { drop: 1 } } }))).not.toThrow()
  })
})
