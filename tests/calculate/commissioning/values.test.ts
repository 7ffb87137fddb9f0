import { describe, expect, it } from 'vitest'
import { aBattery, aCircuit, anEquipment, anOutput, aProtection } from '../../support/vessel-builder.js'
import { boat, checkOf, idsOf, measured, type GivenReading } from './support.js'

const ids = (reading: GivenReading) => idsOf(measured([reading]))

describe('voltage', () => {
  it('is held against the supply range of the item, ends included', () => {
    expect(ids({ subjectTag: 'A1.1', voltageV: 11 })).toEqual([])
    expect(ids({ subjectTag: 'A1.1', voltageV: 10.99 })).toEqual(['COM102 1'])
    expect(ids({ subjectTag: 'E1', voltageV: 16 })).toEqual([])
    expect(ids({ subjectTag: 'E1', voltageV: 16.01 })).toEqual(['COM103 1'])
  })
  // IEC 60945 (from memory): 12 V − 10 % = 10.8 V, + 30 % = 15.6 V
  it('is held against IEC 60945 where none is recorded', () => {
    expect(ids({ subjectTag: 'A1.2', voltageV: 10.8 })).toEqual([])
    expect(ids({ subjectTag: 'A1.2', voltageV: 10.79 })).toEqual(['COM102 1'])
    expect(ids({ subjectTag: 'A1', voltageV: 15.6 })).toEqual([])
    expect(ids({ subjectTag: 'A1', voltageV: 15.61 })).toEqual(['COM103 1'])
  })
  it('of a battery at rest is at least nominal; under load it says nothing by itself', () => {
    expect(ids({ subjectTag: 'G1', voltageV: 12 })).toEqual([])
    expect(ids({ subjectTag: 'G1', voltageV: 11.9, currentA: 0 })).toEqual(['COM102 1'])
    expect(ids({ subjectTag: 'G1', voltageV: 11.9, currentA: 80 })).toEqual(['COM202 1'])
  })
  it('is not assessed where it is not said at which load it was read', () => {
    expect(checkOf(measured([{ subjectTag: 'A1.3', voltageV: 9 }]), 'voltage').gaps).toEqual(['A1.3 has several loads, and the reading does not say at which it was taken'])
    expect(ids({ subjectTag: 'A1.3', atTag: 'E3', voltageV: 9 })).toEqual(['COM102 1'])
  })
})

describe('current', () => {
  it('is accepted from half of the typical to 1.2 of the highest', () => {
    expect(ids({ subjectTag: 'E1', currentA: 3 })).toEqual([])
    expect(ids({ subjectTag: 'E1', currentA: 2.99 })).toEqual(['COM306 1'])
    expect(ids({ subjectTag: 'E1', currentA: 12 })).toEqual([])
    expect(ids({ subjectTag: 'E1', currentA: 12.01 })).toEqual(['COM306 1'])
  })
  it('of a circuit is the sum of its loads: 2 A and 12 W / 12 V', () => {
    expect(checkOf(measured([{ subjectTag: 'A1.3', currentA: 3 }]), 'current')).toMatchObject({ calculated: { least: 3, most: 3 }, deviation: null })
    expect(checkOf(measured([{ subjectTag: 'E4', currentA: 1.3 }]), 'current')).toMatchObject({ calculated: { most: 1 }, deviation: 'above' })
  })
  it('above the rating of the protective device is a warning of its own', () => {
    expect(ids({ subjectTag: 'A1.2', currentA: 20 })).toEqual([])
    expect(ids({ subjectTag: 'A1.2', currentA: 20.1 })).toEqual(['COM108 1'])
    // The rating is the circuit's; of one of its two loads it says nothing.
    expect(checkOf(measured([{ subjectTag: 'E3', currentA: 2 }]), 'current').limits).toEqual([])
  })
})

describe('insulation resistance', () => {
  // IEC 60364-6 table 6A (from memory): extra-low voltage 0.5 MΩ; 5 MΩ is common practice
  it('fails below the rule and is doubtful below 5 MΩ', () => {
    expect(ids({ subjectTag: 'A1.1', insulationMOhm: 5 })).toEqual([])
    expect(ids({ subjectTag: 'A1.1', insulationMOhm: 4.9 })).toEqual(['COM303 1'])
    expect(ids({ subjectTag: 'W1', insulationMOhm: 0.5 })).toEqual(['COM303 1'])
    expect(ids({ subjectTag: 'W1', insulationMOhm: 0.49 })).toEqual(['COM104 1'])
  })
  it('of mains circuits is 1 MΩ', () => {
    const mains = {
      equipment: [anEquipment({ tag: 'T20', kind: 'shore inlet', outputs: [anOutput({ nominalVoltageV: 230, form: 'ac', ratedCurrentA: 16 })] }), anEquipment({ tag: 'E20', kind: 'heater', powerW: 1000 })],
      circuits: [aCircuit({ tag: 'Q20', fedFromTag: 'T20', loadTags: ['E20'], protection: aProtection('circuit breaker', 10) })],
    }
    expect(checkOf(measured([{ subjectTag: 'Q20', insulationMOhm: 0.9 }], { vessel: mains }), 'insulation resistance').limits).toMatchObject([{ limit: { value: 1 }, within: false }])
  })
})

it('polarity is right, or an error', () => {
  expect(ids({ subjectTag: 'A1.1', polarity: 'right' })).toEqual([])
  const { findings, checks } = measured([{ subjectTag: 'A1.1', polarity: 'reversed' }])
  expect(findings).toMatchObject([{ id: 'COM105', severity: 'error', message: 'Reading 1: polarity of A1.1 at E1 is reversed', remedy: checks[0]?.meaning?.lookFirst }])
})

describe('residual-current devices', () => {
  // IEC 61008 (from memory): 15 mA to 30 mA; whole craft 100 ms by ABYC E-11.11.1.1
  it('trip between half and all of the rated residual current', () => {
    for (const [residualCurrentA, expected] of [[0.015, []], [0.0149, ['COM304 1']], [0.03, []], [0.0301, ['COM107 1']]] as const) {
      expect(ids({ subjectTag: 'Q9', residualCurrentA })).toEqual(expected)
    }
  })
  it('trip in time: 100 ms for the whole craft, 300 ms elsewhere, or what is recorded where that is shorter', () => {
    const limit = (given: { tripTimeMs?: number; residualCurrentA?: number; loadTags?: readonly string[] }) => {
      const { circuits } = boat()
      const of = { ...aProtection('circuit breaker', 15), residualCurrentA: given.residualCurrentA ?? 0.03, tripTimeMs: given.tripTimeMs ?? null }
      const changed = circuits.map(circuit => (circuit.tag === (given.loadTags === undefined ? 'A1.1' : 'F1') ? { ...circuit, protection: of } : circuit))
      const subjectTag = given.loadTags === undefined ? 'A1.1' : 'F1'
      return checkOf(measured([{ subjectTag, tripTimeMs: 90 }], { basis: 'abyc', vessel: { circuits: changed } }), 'trip time').limits[0]?.limit.value
    }
    expect(limit({ loadTags: ['A1'] })).toBe(100)
    expect(limit({})).toBe(300)
    expect(limit({ loadTags: ['A1'], residualCurrentA: 0.1 })).toBe(300)
    expect(limit({ tripTimeMs: 40 })).toBe(40)
    expect(limit({ loadTags: ['A1'], tripTimeMs: 300 })).toBe(100)
    expect(limit({ residualCurrentA: 0.005 })).toBeUndefined()
  })
  it('are not assessed where nothing is known of one', () => {
    expect(checkOf(measured([{ subjectTag: 'A1.1', tripTimeMs: 20 }]), 'trip time').gaps).toEqual(['no rated residual current is recorded for A1.1'])
  })
})

describe('internal resistance', () => {
  it('is accepted from half to one and a half of the recorded 4 mΩ', () => {
    expect(ids({ subjectTag: 'G1', internalResistanceMilliOhm: 6 })).toEqual([])
    expect(ids({ subjectTag: 'G1', internalResistanceMilliOhm: 6.1 })).toEqual(['COM305 1'])
    expect(ids({ subjectTag: 'G1', internalResistanceMilliOhm: 1.9 })).toEqual(['COM305 1'])
  })
  it('comes from the blocks of a bank: 2 · 5 mΩ / 2', () => {
    const blocks = { seriesCount: 2, parallelCount: 2, nominalVoltageV: 6, capacityAh: null, crankingCurrentA: null, internalResistanceMilliOhm: 5, shortCircuitCurrentA: null }
    const results = measured([{ subjectTag: 'G1', internalResistanceMilliOhm: 5 }], { vessel: { batteries: [aBattery({ tag: 'G1', blocks })] } })
    expect(checkOf(results, 'internal resistance')).toMatchObject({ calculated: { least: 5, most: 5 }, deviation: null })
  })
  it('comes from two readings of one day, least and greatest current: (12.6 − 12) V / 150 A', () => {
    const day = (currentA: number, voltageV: number, date = '2026-05-04'): GivenReading => ({ subjectTag: 'G1', date, currentA, voltageV })
    const results = measured([day(200, 12), day(50, 12.6), day(100, 12.3), day(90, 12.5, '2026-05-05')])
    expect(checkOf(results, 'internal resistance').measured).toMatchObject({ value: expect.closeTo(4, 9) })
    expect(checkOf(results, 'voltage', '4').gaps).toEqual([expect.stringContaining('second reading of the same day')])
    expect(checkOf(measured([day(50, 12), day(80, 12.5)]), 'voltage', '2').gaps).toEqual(['the voltage did not fall as the current rose'])
  })
})
