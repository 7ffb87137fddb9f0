/** The hour-by-hour run: what must hold whatever the boat, and a few sums done by hand. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BatteryChemistry, Duty, Vessel } from '../../../src/model/vessel.js'
import type { ChargeRun } from '../../../src/model/results/energy.js'
import { batteryChemistries } from '../../../src/references/tables/battery-chemistry.js'
import { aCable, aCircuit, aMode, anEquipment, anOutput } from '../../support/vessel-builder.js'
import { alternator, boat, duty, energyOf, hours, house, load, modeOf, outputOf, start } from './support.js'

const runsOf = (vessel: Vessel): Readonly<Record<string, ChargeRun>> =>
  Object.fromEntries(modeOf(vessel).batteries.flatMap(({ batteryTag, run }) => (run === null ? [] : [[batteryTag, run]])))

const charging = (circuit: string, battery: string, source: string) => aCircuit({ tag: circuit, fedFromTag: battery, loadTags: [source] })

interface Given {
  readonly chemistry: BatteryChemistry; readonly capacityAh: number; readonly startChargePercent: number; readonly daysCount: number
  readonly loadA: number; readonly from: number; readonly length: number; readonly sourceA: number; readonly sourceFrom: number; readonly sourceLength: number
}
const given: fc.Arbitrary<Given> = fc.record({
  chemistry: fc.constantFrom('flooded', 'agm', 'gel', 'lfp'), capacityAh: fc.integer({ min: 20, max: 800 }), startChargePercent: fc.integer({ min: 0, max: 100 }),
  daysCount: fc.integer({ min: 1, max: 4 }), loadA: fc.double({ min: 0, max: 150, noNaN: true }), from: fc.double({ min: 0, max: 23.5, noNaN: true }),
  length: fc.double({ min: 0.1, max: 24, noNaN: true }), sourceA: fc.double({ min: 0, max: 200, noNaN: true }), sourceFrom: fc.double({ min: 0, max: 23.5, noNaN: true }),
  sourceLength: fc.double({ min: 0.1, max: 24, noNaN: true }),
})
const boatOf = (q: Given, withLoad = true) => boat([load('E1', { currentTypicalA: q.loadA })], {
  batteries: [{ ...house, chemistry: q.chemistry, capacityAh: q.capacityAh }],
  equipment: [alternator()], circuits: [charging('F3', 'G1', 'G3')],
  operatingModes: [aMode({ tag: 'M', daysCount: q.daysCount, startChargePercent: q.startChargePercent })],
  duties: [
    ...(withLoad ? [duty('E1', hours(q.from, q.from + q.length))] : []),
    duty('G3', { ...hours(q.sourceFrom, q.sourceFrom + q.sourceLength), currentA: q.sourceA }),
  ],
})

describe('whatever the loads and sources', () => {
  it('what goes in, less the loss, less what is drawn, is the change of charge in each hour', () => {
    fc.assert(fc.property(given, q => {
      const run = runsOf(boatOf(q))['G1']!
      const efficiency = batteryChemistries[q.chemistry].chargeEfficiencyPercent / 100
      let before = run.startPercent
      for (const { chargePercent, intoA, drawnAh } of run.hours) {
        expect(((chargePercent - before) * q.capacityAh) / 100).toBeCloseTo(intoA * efficiency - drawnAh, 6)
        before = chargePercent
      }
    }), { numRuns: 60 })
  })
  it('what the sources give and the battery gives is what the loads and the battery take', () => {
    fc.assert(fc.property(given, q => {
      for (const { loadA, offeredA, givenA, intoA, outOfA, unservedA } of runsOf(boatOf(q))['G1']!.hours) {
        expect(givenA + outOfA).toBeCloseTo(loadA - unservedA + intoA, 6)
        expect(givenA).toBeLessThanOrEqual(offeredA + 1e-9)
      }
    }), { numRuns: 60 })
  })
  it('the charge stays between 0 and 100 %', () => {
    fc.assert(fc.property(given, q => {
      for (const { chargePercent } of runsOf(boatOf(q))['G1']!.hours) {
        expect(chargePercent).toBeGreaterThanOrEqual(0)
        expect(chargePercent).toBeLessThanOrEqual(100)
      }
    }), { numRuns: 60 })
  })
  it('never takes more than its highest charging current', () => {
    fc.assert(fc.property(given, q => {
      const most = (batteryChemistries[q.chemistry].chargeToPercent * q.capacityAh) / 100
      for (const { intoA } of runsOf(boatOf(q))['G1']!.hours) expect(intoA).toBeLessThanOrEqual(most + 1e-9)
    }), { numRuns: 60 })
  })
  it('the charge never falls without a load', () => {
    fc.assert(fc.property(given, q => {
      const { hours: rows, startPercent } = runsOf(boatOf(q, false))['G1']!
      rows.reduce((before, { chargePercent }) => { expect(chargePercent).toBeGreaterThanOrEqual(before - 1e-9); return chargePercent }, startPercent)
    }), { numRuns: 60 })
  })
  it('twice the capacity lasts longer, at least twice as long', () => {
    fc.assert(fc.property(given.filter(({ loadA }) => loadA > 0.01), q => {
      const enduranceOf = (capacityAh: number) => outputOf(modeOf(boatOf({ ...q, capacityAh })).batteries[0]!.endurance).enduranceH
      expect(enduranceOf(2 * q.capacityAh)).toBeGreaterThanOrEqual(2 * enduranceOf(q.capacityAh) * (1 - 1e-9))
    }), { numRuns: 60 })
  })
})

describe('by hand', () => {
  const day = (duties: readonly Duty[], given: Partial<Vessel> = {}) => runsOf(boat([load('E1', { currentTypicalA: 20 })], {
    equipment: [alternator()], circuits: [charging('F3', 'G1', 'G3')], duties, ...given,
  }))['G1']!
  it('20 A for five hours, the rated current of 400 Ah in 20 h: 100 Ah, a quarter', () => {
    const { hours: rows, lowestPercent, lowestHourNumber } = day([duty('E1', hours(3, 8))])
    expect(rows.map(({ chargePercent }) => Math.round(chargePercent * 1e6) / 1e6).slice(2, 9)).toEqual([100, 95, 90, 85, 80, 75, 75])
    expect([lowestPercent, lowestHourNumber]).toEqual([expect.closeTo(75, 9), 8])
  })
  it('40 A, twice the rated current: 2^0.3 times as much is drawn by Peukert’s formula', () => {
    const { hours: rows } = day([duty('E1', { ...hours(0, 1), currentA: 40 })])
    expect(rows[0]!.drawnAh).toBeCloseTo(40 * 2 ** 0.3, 9)
    expect(rows[0]!.chargePercent).toBeCloseTo(100 - 40 * 2 ** 0.3 / 4, 9)
  })
  it('60 A of the alternator carry 20 A of load and put 40 A in, of which 80 % stay', () => {
    const { hours: rows } = day([duty('E1', hours(0, 1)), duty('G3', hours(0, 1))], { operatingModes: [aMode({ tag: 'M', startChargePercent: 50 })] })
    expect(rows[0]).toMatchObject({ loadA: 20, offeredA: 60, givenA: 60, intoA: 40, outOfA: 0 })
    expect(rows[0]!.chargePercent).toBeCloseTo(58, 9)
  })
  it('an empty battery gives nothing, and the hours are counted', () => {
    const run = day([duty('E1', hours(0, 4))], { operatingModes: [aMode({ tag: 'M', startChargePercent: 10 })] })
    expect(run.hours.slice(0, 4).map(({ chargePercent, unservedA }) => [chargePercent, unservedA])).toEqual([[expect.closeTo(5, 9), 0], [expect.closeTo(0, 9), 0], [0, 20], [0, 20]])
    expect(run.emptyHoursCount).toBe(2)
  })
})

describe('a charger from one battery to another', () => {
  const converter = anEquipment({ tag: 'T3', kind: 'dc-dc converter', outputs: [anOutput({ terminal: 'out', nominalVoltageV: 12, ratedCurrentA: 20 })], efficiencyPercent: 80 })
  const back = { ...converter, tag: 'T4' }
  const between = (tags: readonly string[], startChargePercent: number) => boat([], {
    batteries: [house, start], equipment: [converter, back],
    circuits: [
      aCircuit({ tag: 'F5', fedFromTag: 'G1', loadTags: ['T3'] }), aCircuit({ tag: 'F6', fedFromTag: 'G2', loadTags: ['T3'] }),
      aCircuit({ tag: 'F7', fedFromTag: 'G2', loadTags: ['T4'] }), aCircuit({ tag: 'F8', fedFromTag: 'G1', loadTags: ['T4'] }),
    ],
    cables: [
      aCable({ tag: 'W5', from: 'F5', to: 'T3:in' }), aCable({ tag: 'W6', from: 'F6', to: 'T3:out' }),
      aCable({ tag: 'W7', from: 'F7', to: 'T4:in' }), aCable({ tag: 'W8', from: 'F8', to: 'T4:out' }),
    ],
    operatingModes: [aMode({ tag: 'M', startChargePercent })],
    duties: tags.map(tag => duty(tag)),
  })
  it('takes from the one what it gives to the other and its loss: 20 A cost 25 A', () => {
    const { G1, G2 } = runsOf(between(['T3'], 50))
    expect(G2!.hours[0]).toMatchObject({ intoA: 20 })
    expect(G1!.hours[0]!.outOfA).toBeCloseTo(25, 9)
  })
  it('takes no more than the other accepts', () => {
    const { G1, G2 } = runsOf(between(['T3'], 100))
    expect(G2!.hours[0]!.intoA).toBe(0)
    expect(G1!.hours[0]!.outOfA).toBe(0)
  })
  it('takes nothing from an empty one', () => {
    const { G1, G2 } = runsOf(between(['T3'], 0))
    expect([G1!.hours[0]!.unservedA, G2!.hours[0]!.intoA]).toEqual([0, 0])
  })
  it('makes no energy in a ring: together the batteries never gain', () => {
    const { G1, G2 } = runsOf(between(['T3', 'T4'], 50))
    const held = (hour: number) => 4 * G1!.hours[hour]!.chargePercent + G2!.hours[hour]!.chargePercent
    for (let hour = 1; hour < 24; hour++) expect(held(hour)).toBeLessThanOrEqual(held(hour - 1) + 1e-9)
    expect(held(23)).toBeLessThan(held(0))
  })
})

it('follows no battery of which chemistry or capacity is missing, and says so', () => {
  const vessel = boat([load('E1', { currentTypicalA: 1 })], { batteries: [{ ...house, chemistry: null }], duties: [duty('E1')] })
  const [day] = modeOf(vessel).batteries
  expect(day).toMatchObject({ loadAh: expect.closeTo(24, 9), run: null, charging: null, balance: { status: 'not computed' }, endurance: { status: 'not computed', reason: 'its chemistry is not recorded' } })
  expect(energyOf(vessel).notAssessed).toContainEqual({ subjectTag: 'G1', modeTag: null, reason: 'its chemistry is not recorded' })
})
