/** Readings of buses and radios, listed and counted as their own domains judged them. */
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import type { CommissioningResults } from '../../../src/model/results/commissioning.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { type Along, aMessage, busBoat, power, terminator } from '../can-bus/support.js'
import { aTransmitter, coax, radio, radioBoat, stated, whip } from '../radio/support.js'
import { checkOf, type GivenReading, readingsOf } from './support.js'

const resultsOf = (vessel: Vessel, ...readings: readonly GivenReading[]) => calculate({ ...vessel, measurements: readingsOf(readings) }, bases.iso)
const read = (vessel: Vessel, ...readings: readonly GivenReading[]): CommissioningResults => resultsOf(vessel, ...readings).commissioning

const ends = (...parts: Along[]): Along[] => [terminator('R1'), ...parts, terminator('R2')]
const sending = { P1: { len: 4, drop: 1, sends: [aMessage(129025)] }, P2: { len: 4, drop: 1, sends: [aMessage(126993)] } }
const bus = busBoat({ along: ends(power('X0', { supplyVoltageV: 13 }), 10, 'P1', 'P2'), devices: sending })
const half = busBoat({ along: ends(power('X0', { supplyVoltageV: 13 }), 10, 'P1', 'P2'), devices: { ...sending, P2: { len: 4, drop: 1 } } })

describe('of a bus', () => {
  it('a resistance off by a terminator says so, and is found by the bus alone', () => {
    const results = resultsOf(bus, { subjectTag: 'N1', resistanceOhm: 120 })
    expect(results.commissioning.findings).toEqual([])
    expect(results.findings.filter(({ subject }) => subject.kind === 'measurement').map(({ id }) => id)).toEqual(['CAN303'])
    // Two of 120 Ω side by side, a tenth less and a tenth more
    const check = checkOf(results.commissioning, 'resistance between data wires')
    expect(check).toMatchObject({ deviation: 'above', calculated: { least: 60, most: 60 }, tolerances: [{ limit: { value: expect.closeTo(54, 9) }, within: true }, { limit: { value: expect.closeTo(66, 9) }, within: false }] })
    expect(check.meaning?.usually[0]).toBe('one terminator is missing, or the backbone is open on the way to it')
  })
  it('a voltage too low is so at its place', () => {
    // 13 − 2 · 0.057 · 10 · 0.4 = 12.544 V
    expect(checkOf(read(bus, { subjectTag: 'N1', atTag: 'X1', voltageV: 12.2 }), 'voltage on a bus')).toMatchObject({
      subjectTag: 'N1', loadTag: 'X1', deviation: 'below', calculated: { least: expect.closeTo(12.544, 6), most: expect.closeTo(12.544, 6) },
    })
  })
  it('a load lies between nominal and worst', () => {
    // One frame of 8 bytes ten times a second and one of 8 bytes a second: 0.52 % and 0.64 %, as in the tests of the bus
    expect(checkOf(read(bus, { subjectTag: 'N1', busLoadPercent: 5.6 }), 'load of a bus')).toMatchObject({ deviation: null, calculated: { least: expect.closeTo(0.52, 2), most: expect.closeTo(0.64, 2) } })
    expect(checkOf(read(bus, { subjectTag: 'N1', busLoadPercent: 5.7 }), 'load of a bus').deviation).toBe('above')
  })
  it('what cannot be held against anything says why, and is no gap a second time', () => {
    const results = read(half, { subjectTag: 'N1', busLoadPercent: 20 })
    expect(checkOf(results, 'load of a bus')).toMatchObject({ limits: [], tolerances: [], gaps: ['what some devices send is not recorded'] })
    expect(results.notAssessed).toEqual([])
    expect(results.findings).toEqual([])
  })
  it('the later takes the place of the earlier', () => {
    const results = read(bus, { subjectTag: 'N1', date: '2026-06-01', resistanceOhm: 60 }, { subjectTag: 'N1', date: '2026-05-01', resistanceOhm: 120 })
    expect(results.checks.map(({ number, supersededBy }) => [number, supersededBy])).toEqual([['1', null], ['2', '1']])
  })
})

describe('of a radio', () => {
  /** 25 m: 2.5 dB and two connectors, together 3 dB. Antenna of 1.5: Γ 0.2; 3 dB twice 0.2 · 0.5012 = 0.1002; (1.1002)/(0.8998) = 1.2228 */
  const boat: Vessel = { ...radioBoat({}, { vswrFactor: 1.5 }), cables: [coax('W1', 'T1:antenna', 'T11:coax', { lengthM: 25 })] }
  const wave = (vessel: Vessel, vswrFactor: number) => checkOf(read(vessel, { subjectTag: 'T1', vswrFactor }), 'standing wave ratio')
  it('is held against what an antenna on its limit gives there', () => {
    expect(wave(boat, 1.222)).toMatchObject({ deviation: null, limits: [{ limit: { relation: 'at most', value: expect.closeTo(1.2228, 3) }, within: true }] })
    expect(wave(boat, 1.4)).toMatchObject({ deviation: 'above', limits: [{ within: false }] })
    expect(wave(boat, 1.4).meaning?.usually[0]).toBe('the loss of the cable makes a bad antenna look good')
    expect(wave(boat, 3.1).meaning?.usually[0]).toMatch(/open end/)
  })
  it('behind an unknown loss is not assessed while it looks good', () => {
    const silent = { ...boat, cableTypes: [{ ...stated, coax: null }] }
    expect(wave(silent, 1.2)).toMatchObject({ limits: [], gaps: ['the loss between there and the antenna is not known'] })
    expect(wave(silent, 1.6)).toMatchObject({ deviation: 'above', limits: [{ limit: { value: 1.5 } }] })
  })
  it('belongs to the connector at which it was read', () => {
    const missing = (reading: GivenReading) => read(boat, reading).coverage.transmitters.map(each => [each.tag, each.numbers, each.missing])
    expect(missing({ subjectTag: 'T1', vswrFactor: 1.1 })).toEqual([['T1', ['1'], []]])
    expect(missing({ subjectTag: 'W1', vswrFactor: 1.1 })).toEqual([['T1', ['1'], []]])
    expect(missing({ subjectTag: 'T11', vswrFactor: 1.1 })).toEqual([['T1', [], ['standing wave ratio']]])
  })
})

describe('coverage', () => {
  it('of a bus wants resistance, load, and the voltage where the bus supplies its devices', () => {
    const missing = (vessel: Vessel, ...readings: readonly GivenReading[]) => read(vessel, ...readings).coverage.buses[0]
    expect(missing(bus)?.missing).toEqual(['resistance between data wires', 'voltage on a bus', 'load of a bus'])
    expect(missing({ ...bus, canBuses: bus.canBuses.map(each => ({ ...each, suppliesDevices: false })) })?.missing).toEqual(['resistance between data wires', 'load of a bus'])
    expect(missing(bus, { subjectTag: 'N1', resistanceOhm: 60 }, { subjectTag: 'N1', voltageV: 12.5 })).toEqual({ tag: 'N1', numbers: ['1', '2'], missing: ['voltage on a bus', 'load of a bus'] })
  })
  const transmittersOf = (vessel: Vessel) => read(vessel).coverage.transmitters
  it('of transmitters counts connectors: of several services on one the strongest', () => {
    const ais = aTransmitter({ service: 'AIS', powerW: 2, frequencyMHz: 162 })
    expect(transmittersOf(radioBoat({ equipment: [radio('T2', { transmitters: [ais, aTransmitter({ terminal: 'antenna', powerW: 25 })] })] })).map(({ tag, chain }) => [tag, chain.powerW])).toEqual([['T1', 25], ['T2', 25]])
  })
  it('leaves out antennas built in, what meters do not reach, and what is removed', () => {
    const others = [
      radio('T2', { transmitters: [aTransmitter({ terminal: null })] }), radio('T3', { transmitters: [aTransmitter({ service: 'mobile data', frequencyMHz: 847 })] }), radio('T4', { status: 'removed' }),
    ]
    expect(transmittersOf(radioBoat({ equipment: others })).map(({ tag }) => tag)).toEqual(['T1'])
  })
  it('says what may be read, or why that is not known', () => {
    // 1.5 dB: Γ 0.2 · 10^(−0.15) = 0.14159; 1.14159/0.85841 = 1.3299
    expect(transmittersOf(radioBoat())[0]?.mayRead).toMatchObject({ output: { readVswrFactor: expect.closeTo(1.3299, 3) } })
    expect(transmittersOf({ ...radioBoat(), cableTypes: [{ ...stated, coax: null }] })[0]?.mayRead).toMatchObject({ status: 'not computed', reason: 'the loss of the cable is not known' })
    expect(transmittersOf({ ...radioBoat(), equipment: [radio('T1'), whip('T11')], cables: [] })[0]?.mayRead).toMatchObject({ status: 'not computed', reason: expect.any(String) })
  })
})
