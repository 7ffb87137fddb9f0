import { describe, expect, it } from 'vitest'
import type { Duty, Equipment, Vessel } from '../../../src/model/vessel.js'
import { aCable, aCircuit, aMode, anEquipment, anOutput } from '../../support/vessel-builder.js'
import { alternator, boat, duty, energyOf, gapsOf, hours, load, modeOf, outputOf } from './support.js'

const withAlternator = (item: Equipment, row: Partial<Duty>) =>
  boat([], { equipment: [item], circuits: [aCircuit({ tag: 'F3', fedFromTag: 'G1', loadTags: ['G3'] })], duties: [duty('G3', row)] })
const currentOf = (vessel: Vessel) => modeOf(vessel).sources.map(({ currentA, batteryTag }) => [batteryTag, currentA])

describe('an alternator', () => {
  const curve = [{ speedRpm: 1000, currentA: 40 }, { speedRpm: 2000, currentA: 90 }, { speedRpm: 3000, currentA: 110 }]
  const onCurve = alternator({ outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 120, curve })] })
  it('gives 75 % of its rating hot, without a curve', () => expect(currentOf(withAlternator(alternator(), {}))).toEqual([['G1', 60]]))
  it.each([[900, 0], [1000, 40], [1400, 60], [2500, 100], [3000, 110], [4000, 110]])('by its curve at %d a minute gives %d A', (speedRpm, current) => {
    expect(currentOf(withAlternator(onCurve, { speedRpm }))).toEqual([['G1', current]])
  })
  it('gives what the duty says', () => expect(currentOf(withAlternator(onCurve, { speedRpm: 2000, currentA: 33 }))).toEqual([['G1', 33]]))
  it('is not assessed with neither', () => {
    const bare = alternator({ outputs: [anOutput({ nominalVoltageV: 12 })] })
    expect(gapsOf(withAlternator(bare, {}))).toEqual(['G3 in M: the current of its output is not recorded'])
  })
  it('charges nothing once removed', () => expect(gapsOf(withAlternator(alternator({ status: 'removed' }), {}))).toContain('G3 in M: it has been removed'))
  it('gives for its hours and its duty', () => {
    expect(modeOf(withAlternator(alternator(), { ...hours(8, 10.5), dutyPercent: 50 })).sources[0]).toMatchObject({ timeH: 2.5, offeredAh: 75 })
  })
})

describe('a charger', () => {
  const shore = anEquipment({ tag: 'X9', kind: 'shore inlet', outputs: [anOutput({ nominalVoltageV: 230, form: 'ac', ratedCurrentA: 16 })] })
  const charger = anEquipment({ tag: 'T1', kind: 'charger', outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 30 })] })
  const vesselOf = (duties: readonly Duty[]) => boat([], {
    equipment: [shore, charger], duties,
    circuits: [aCircuit({ tag: 'F5', fedFromTag: 'G1', loadTags: ['T1'] }), aCircuit({ tag: 'F6', fedFromTag: 'X9', loadTags: ['T1'] })],
  })
  it('charges while shore power is there', () => {
    const [source] = modeOf(vesselOf([duty('T1'), duty('X9', hours(18, 22))])).sources
    expect(source).toMatchObject({ itemTag: 'T1', batteryTag: 'G1', currentA: 30, timeH: 4, offeredAh: 120 })
  })
  it('charges nothing without a duty of its own', () => expect(modeOf(vesselOf([duty('X9')])).sources).toEqual([]))
  it('charges nothing without shore power, and that is said', () => {
    const vessel = vesselOf([duty('T1')])
    expect(modeOf(vessel).sources).toEqual([])
    expect(gapsOf(vessel)).toEqual(['T1 in M: it charges nothing: X9, which feeds it, does not run then'])
  })
  it('takes from 50 to 100 % of 400 Ah 250 Ah of charge: 8.33 h at 30 A, 10.8 to 12.5 h with the tail', () => {
    const { charging } = modeOf(vesselOf([duty('T1'), duty('X9')])).batteries[0]!
    expect(outputOf(charging!.least)).toMatchObject({ chargeAh: 250, chargingCurrentA: 30, chargingTimeH: expect.closeTo(10.8333, 3) })
    expect(outputOf(charging!.most).chargingTimeH).toBeCloseTo(12.5, 9)
  })
})

it('the time to charge counts what runs in the same hours, not the average of the day', () => {
  // By hand: 12 A from 10 to 14 h, while the alternator gives 60 A (75 % of 80 A) in the same four hours: 12 A, where the day's average is 2 A.
  const vessel = boat([load('E1', { currentTypicalA: 12 })], {
    equipment: [alternator()], circuits: [aCircuit({ tag: 'F9', fedFromTag: 'A1', loadTags: ['G3'] })],
    duties: [duty('E1', hours(10, 14)), duty('G3', hours(10, 14))],
  })
  const [battery] = modeOf(vessel).batteries
  expect(battery!.charging!.least).toMatchObject({ input: { sourceCurrentA: 60, loadCurrentA: 12 } })
  expect(battery!.converted).toEqual([])
})

it('the time to charge does not add what gives at other hours', () => {
  const vessel = boat([], {
    equipment: [alternator()], circuits: [aCircuit({ tag: 'F9', fedFromTag: 'A1', loadTags: ['G3'] })],
    duties: [duty('G3', hours(8, 10)), duty('G3', hours(18, 20))],
  })
  expect(modeOf(vessel).batteries[0]!.charging!.least).toMatchObject({ input: { sourceCurrentA: 60 } })
})

describe('the sun', () => {
  const panel = (tag: string, peakPowerW: number | null) => anEquipment({ tag, kind: 'solar panel', peakPowerW, outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 8 })] })
  const controller = (ratedCurrentA: number) => anEquipment({ tag: 'T2', kind: 'solar charge controller', outputs: [anOutput({ terminal: 'battery', nominalVoltageV: 12, ratedCurrentA })] })
  const vesselOf = ({ latitudeDeg = -22.9 as number | null, monthNumber = 5 as number | null, peak = 100 as number | null, rated = 30, sunshinePercent = 65.14 as number | null } = {}) => {
    const vessel = boat([], {
      equipment: [panel('G7', peak), panel('G8', 100), controller(rated)], duties: [duty('T2')],
      circuits: [
        aCircuit({ tag: 'F7', fedFromTag: 'G7', loadTags: ['T2'] }), aCircuit({ tag: 'F8', fedFromTag: 'G8', loadTags: ['T2'] }),
        aCircuit({ tag: 'F9', fedFromTag: 'G1', loadTags: ['T2'] }),
      ],
      cables: [aCable({ tag: 'W9', from: 'F9', to: 'T2:battery' })],
      operatingModes: [aMode({ tag: 'M', monthNumber, sunshinePercent })],
    })
    return { ...vessel, conditions: { ...vessel.conditions, latitudeDeg } }
  }
  it('gives on 15 May at 22°54′ south what FAO-56, example 10, comes to (from memory): 14.5 MJ/m², so 200 W · 4.03 kWh/m² · 0.65 / 12.8 V', () => {
    const [source] = modeOf(vesselOf()).sources
    expect(source).toMatchObject({ kind: 'solar', batteryTag: 'G1', solar: { panelTags: ['G7', 'G8'], cutAh: expect.closeTo(0, 9) } })
    expect(source!.offeredAh).toBeCloseTo((200 * 4.028 * 0.65) / 12.8, 0)
  })
  it('gives in its hours as much as in the whole day', () => {
    const [source] = modeOf(vesselOf()).sources
    expect(source!.offeredAh).toBeCloseTo(outputOf(source!.solar!.output)['chargeAh']!, 9)
  })
  it('gives no more than the controller', () => {
    const [source] = modeOf(vesselOf({ rated: 4 })).sources
    const whole = modeOf(vesselOf()).sources[0]!.offeredAh
    expect(source!.currentA).toBe(4)
    expect(source!.solar!.cutAh).toBeGreaterThan(0)
    expect(source!.offeredAh + source!.solar!.cutAh).toBeCloseTo(whole, 9)
  })
  it.each([
    [{ latitudeDeg: null }, 'the latitude of the boat is not recorded, so what the sun gives is not known'],
    [{ monthNumber: null }, 'no month is given for the mode, so what the sun gives is not known'],
    [{ peak: null }, 'the peak power of G7 is not recorded'],
  ])('is not assessed with %o', (given, reason) => expect(gapsOf(vesselOf(given))).toEqual([`T2 in M: ${reason}`]))
  it('does not rise in the polar night, nor set in the polar summer', () => {
    expect(modeOf(vesselOf({ latitudeDeg: 80, monthNumber: 12 })).sources[0]!.offeredAh).toBe(0)
    expect(outputOf(modeOf(vesselOf({ latitudeDeg: 80, monthNumber: 6 })).sun!.byDay).daylightH).toBeCloseTo(24, 9)
  })
})

describe('advice', () => {
  it('says what an inverter takes: 1200 W at 88 % and 12 V are 113.6 A', () => {
    const inverter = anEquipment({ tag: 'T4', kind: 'inverter', outputs: [anOutput({ nominalVoltageV: 230, form: 'ac', ratedCurrentA: 1200 / 230 })] })
    const [input] = energyOf(boat([], { equipment: [inverter], circuits: [aCircuit({ tag: 'F4', fedFromTag: 'G1', loadTags: ['T4'] })] })).converterInputs
    expect(outputOf(input!.outcome)['inputCurrentA']).toBeCloseTo(113.6, 1)
  })
})
