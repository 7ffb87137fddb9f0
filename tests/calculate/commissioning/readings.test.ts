/** What a reading is about, which of several counts, and how far the boat has been measured. */
import { describe, expect, it } from 'vitest'
import { meanings } from '../../../src/calculate/commissioning/meanings.js'
import { methods } from '../../../src/calculate/commissioning/index.js'
import { aCircuit, anEquipment, anOutput, aCable, aProtection } from '../../support/vessel-builder.js'
import { boat, checkOf, idsOf, measured, type GivenReading } from './support.js'

describe('a reading that contradicts something', () => {
  const doubtOf = (reading: GivenReading) => measured([reading]).findings.filter(({ id }) => id === 'COM301').map(({ message, field }) => [field, message.replace('Reading 1: ', '')])
  it('is taken at what is no load of it', () => {
    expect(doubtOf({ subjectTag: 'A1.1', atTag: 'E2', voltageV: 12 })).toEqual([['atTag', 'circuit A1.1 does not list E2, at which it is said to be taken']])
    expect(doubtOf({ subjectTag: 'E1', atTag: 'E2', voltageV: 12 })).toEqual([['atTag', 'it is about E1, yet is said to be taken at E2']])
    expect(doubtOf({ subjectTag: 'E1', atTag: 'E1', voltageV: 12 })).toEqual([])
  })
  it('gives a battery’s value of what is none, and the other way round', () => {
    expect(doubtOf({ subjectTag: 'A1.1', internalResistanceMilliOhm: 4 })).toEqual([['internalResistanceMilliOhm', 'A1.1 is no battery, yet an internal resistance is given']])
    expect(doubtOf({ subjectTag: 'G1', voltageDropV: 0.2 })).toHaveLength(1)
  })
  it('has more voltage at the load than at the source, or a drop that is not the difference', () => {
    expect(doubtOf({ subjectTag: 'A1.1', sourceVoltageV: 12, voltageV: 12.2 })).toEqual([['sourceVoltageV', 'the voltage at the load is above that at the source']])
    expect(doubtOf({ subjectTag: 'A1.1', sourceVoltageV: 12.8, voltageV: 12.4, voltageDropV: 0.55 })).toHaveLength(1)
    expect(doubtOf({ subjectTag: 'A1.1', sourceVoltageV: 12.8, voltageV: 12.4, voltageDropV: 0.45 })).toEqual([])
  })
  it('may have more at the charging source, from which the current comes', () => {
    const { equipment, circuits, cables } = boat()
    const charging = {
      equipment: [...equipment, anEquipment({ tag: 'T5', kind: 'charger', zoneTag: 'Z1', outputs: [anOutput({ terminal: 'out', nominalVoltageV: 12, ratedCurrentA: 20 })] })],
      circuits: [...circuits, aCircuit({ tag: 'F5', fedFromTag: 'G1', zoneTag: 'Z1', loadTags: ['T5'], protection: aProtection('terminal fuse', 30) })],
      cables: [...cables, aCable({ tag: 'W5', from: 'F5', to: 'T5:out', typeTag: '2x16', lengthM: 3 })],
    }
    const results = measured([{ subjectTag: 'F5', sourceVoltageV: 14, voltageV: 14.15, currentA: 20 }], { vessel: charging })
    // By hand, 20 A through 6 m of 1.21 Ω/km at 31.78 °C: 0.1452 · 1.04629 = 0.15192
    expect(checkOf(results, 'voltage drop')).toMatchObject({ measured: { value: expect.closeTo(0.15, 9) }, calculated: { least: expect.closeTo(0.15192, 5) } })
    expect(idsOf(results)).toEqual([])
  })
})

it('says of a reading without a value that it has none', () => {
  expect(idsOf(measured([{ subjectTag: 'A1.1', notes: 'rain' }, { subjectTag: 'A1.1', sourceVoltageV: 12 }]))).toEqual(['COM201 1', 'COM201 2'])
})

describe('of two readings of the same', () => {
  const reversed: GivenReading = { subjectTag: 'A1.1', polarity: 'reversed', date: '2026-05-04' }
  const right: GivenReading = { subjectTag: 'A1.1', polarity: 'right', date: '2026-05-05' }
  it('the later day counts, whatever the order; on one day the later entry', () => {
    expect(idsOf(measured([reversed, right]))).toEqual([])
    expect(idsOf(measured([right, reversed]))).toEqual([])
    expect(idsOf(measured([{ ...right, date: reversed.date! }, reversed]))).toEqual(['COM105 2'])
    expect(checkOf(measured([reversed, right]), 'polarity').supersededBy).toBe('2')
  })
  it('one that is of something else takes no other’s place', () => {
    expect(idsOf(measured([reversed, { ...right, subjectTag: 'A1.2' }]))).toEqual(['COM105 1'])
  })
  it('one that could not be assessed takes no other’s place', () => {
    const results = measured([{ subjectTag: 'A1.1', voltageDropV: 0.9, currentA: 5, date: '2026-05-04' }, { subjectTag: 'A1.1', voltageDropV: 0.3, date: '2026-05-05' }])
    expect(idsOf(results).toSorted()).toEqual(['COM101 1', 'COM202 2', 'COM302 1'])
    expect(checkOf(results, 'voltage drop').supersededBy).toBeNull()
  })
})

describe('coverage', () => {
  const coverageOf = (...readings: readonly GivenReading[]) => measured(readings).coverage
  it('begins with everything missing and no finding', () => {
    const results = measured([])
    expect(results).toMatchObject({ checks: [], findings: [], notAssessed: [] })
    expect(results.coverage.circuits.map(({ tag, missing }) => [tag, missing.length])).toEqual([['F1', 4], ['A1.1', 4], ['A1.2', 4], ['A1.3', 4]])
    expect(results.coverage.residualDevices).toMatchObject([{ tag: 'Q9', tripCurrent: { leastTripCurrentA: 0.015, mostTripCurrentA: 0.03 }, tripTimeMs: 100 }])
    expect(results.coverage.batteries).toMatchObject([{ tag: 'G1', internalResistanceMilliOhm: 4, missing: ['voltage', 'internal resistance'] }])
  })
  it('counts readings of the circuit, its cables and its loads', () => {
    const { circuits } = coverageOf(
      { subjectTag: 'A1.1', voltageDropV: 0.5, currentA: 10 }, { subjectTag: 'W1', insulationMOhm: 50 }, { subjectTag: 'E1', polarity: 'right' }, { subjectTag: 'A1.2', polarity: 'right' },
    )
    expect(circuits.find(({ tag }) => tag === 'A1.1')).toMatchObject({ numbers: ['1', '2', '3'], missing: [] })
    expect(circuits.find(({ tag }) => tag === 'A1.2')?.missing).toEqual(['voltage drop', 'current', 'insulation resistance'])
  })
  it('does not count what could not be assessed', () => {
    expect(coverageOf({ subjectTag: 'A1.1', voltageDropV: 0.5 }).circuits[1]?.missing).toContain('voltage drop')
  })
  it('says what to expect at the design current, alone and with all on', () => {
    // As in the tests of the drop: 0.398403 + 0.0765928, 0.398403 + 0.229778
    expect(coverageOf().circuits[1]?.drops).toEqual([{ loadTag: 'E1', leastDropV: expect.closeTo(0.474996, 5), mostDropV: expect.closeTo(0.628181, 5) }])
  })
})

it('has a meaning for every way in which a reading can be off', () => {
  for (const [kind, ways] of Object.entries(meanings)) {
    expect(Object.keys(ways).length, kind).toBeGreaterThan(0)
    for (const { usually, lookFirst } of Object.values(ways)) {
      expect(usually.length).toBeGreaterThan(1)
      expect(lookFirst).toMatch(/^[A-Z][a-z]+ .*[^.]\.$/)
    }
  }
})

describe('outside its range a calculation gives a reason', () => {
  const reasonOf = (id: string, input: Record<string, number>) => methods.find(method => method.id === id)!.notApplicable(input)
  it.each([
    ['expected-drop', { branchDropV: 1, designCurrentA: 0, feederDropV: 0, feederResistanceMilliOhm: 0, currentA: 1 }],
    ['expected-drop', { branchDropV: 1, designCurrentA: 1, feederDropV: 0, feederResistanceMilliOhm: 0, currentA: 0 }],
    ['drop-at-design-current', { measuredDropV: 1, currentA: 0.49, designCurrentA: 1, nominalVoltageV: 12 }],
    ['voltage-range', { nominalVoltageV: 0, belowPercent: 10, abovePercent: 30 }],
    ['insulation-minimum', { nominalVoltageV: 0, extraLowVoltageLimitV: 120 }],
    ['residual-trip', { ratedResidualCurrentA: 0.006 }],
    ['internal-resistance-ratio', { measuredResistanceMilliOhm: 1, recordedResistanceMilliOhm: 0 }],
    ['two-point-resistance', { firstVoltageV: 12, firstCurrentA: 5, secondVoltageV: 11, secondCurrentA: 5 }],
    ['accepted-current', { recordedCurrentA: 0, allowanceFactor: 1.2 }],
  ])('%s', (id, input) => {
    expect(reasonOf(id, input)).toMatch(/^[a-z].*[^.]$/)
  })
})
