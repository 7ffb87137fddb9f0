import { describe, expect, it } from 'vitest'
import { shareOfHour } from '../../../src/calculate/energy/duties.js'
import { aCircuit, anEquipment, anOutput, aPanel } from '../../support/vessel-builder.js'
import { boat, duty, energyOf, gapsOf, hours, load, modeOf, outputOf } from './support.js'

describe('the share of an hour', () => {
  const shares = (periods: { fromH: number; toH: number }[]) => Array.from({ length: 24 }, (_, hour) => shareOfHour(periods, hour))
  it('is all of each without periods', () => expect(shares([])).toEqual(Array.from({ length: 24 }, () => 1)))
  it('takes parts of hours', () => {
    expect(shareOfHour([{ fromH: 18.5, toH: 19.25 }], 18)).toBe(0.5)
    expect(shareOfHour([{ fromH: 18.5, toH: 19.25 }], 19)).toBe(0.25)
    expect(shareOfHour([{ fromH: 8.25, toH: 8.5 }, { fromH: 8.75, toH: 9 }], 8)).toBe(0.5)
  })
  it('goes on after midnight', () => {
    const night = shares([{ fromH: 22, toH: 30 }])
    expect(night.flatMap((share, hour) => (share > 0 ? [hour] : []))).toEqual([0, 1, 2, 3, 4, 5, 22, 23])
    expect(night.reduce((sum, share) => sum + share, 0)).toBe(8)
  })
  it('is never more than all, where periods overlap', () => expect(shareOfHour([{ fromH: 0, toH: 2 }, { fromH: 0.5, toH: 3 }], 1)).toBe(1))
})

const chargeOf = (vessel: Parameters<typeof modeOf>[0]) => Object.fromEntries(modeOf(vessel).loads.map(({ itemTag, charge }) => [itemTag, outputOf(charge).chargeAh]))

describe('the current of a load', () => {
  const all = { currentTypicalA: 2, currentMaxA: 5, powerW: 120 }
  it.each([
    ['the duty’s own', duty('E1', { ...hours(0, 1), currentA: 7 }), all, 7],
    ['the typical', duty('E1', hours(0, 1)), all, 2],
    ['the highest', duty('E1', hours(0, 1)), { currentMaxA: 5, powerW: 120 }, 5],
    ['the power at 12 V', duty('E1', hours(0, 1)), { powerW: 120 }, 10],
  ])('is %s', (_, row, given, ah) => {
    expect(chargeOf(boat([load('E1', given)], { duties: [row] }))).toEqual({ E1: ah })
  })
  it('counts with its duty', () => {
    expect(chargeOf(boat([load('E1', { currentTypicalA: 2 })], { duties: [duty('E1', { ...hours(0, 5), dutyPercent: 20 })] }))).toEqual({ E1: 2 })
  })
  it('is nothing without a row', () => expect(modeOf(boat([load('E1', { currentTypicalA: 2 })])).loads).toEqual([]))
})

describe('a row for a circuit', () => {
  const two = [load('E1', { currentTypicalA: 1 }), load('E2', { currentTypicalA: 2 })]
  it('is a row for all that it feeds, panels included', () => {
    expect(chargeOf(boat(two, { duties: [duty('F1', hours(0, 10))] }))).toEqual({ E1: 10, E2: 20 })
  })
  it('gives way to the row of a circuit nearer to the load, and that to the load’s own', () => {
    const duties = [duty('F1', hours(0, 10)), duty('A1.2', hours(0, 5)), duty('E1', hours(0, 1))]
    expect(chargeOf(boat(two, { duties }))).toEqual({ E1: 1, E2: 10 })
  })
  it('with a current of its own stands for all of it, and says so of loads with rows of their own', () => {
    const vessel = boat(two, { duties: [duty('F1', { ...hours(0, 10), currentA: 4 }), duty('E1')] })
    expect(chargeOf(vessel)).toEqual({ F1: 40 })
    expect(gapsOf(vessel)).toEqual(['E1 in M: it is counted in the current given for F1'])
    expect(energyOf(vessel).findings.map(({ id }) => id)).not.toContain('ENG201')
  })
})

describe('what cannot be assessed', () => {
  it.each([
    ['has been removed', [load('E1', { currentTypicalA: 1, status: 'removed' })], 'E1 in M: it has been removed'],
    ['has no current', [load('E1')], 'E1 in M: neither a current nor a power is recorded for it'],
    ['is on no circuit', [], 'E1 in M: no circuit lists it as a load'],
  ])('%s', (reason, loads, gap) => {
    const equipment = reason === 'is on no circuit' ? [load('E1', { currentTypicalA: 1 })] : []
    const vessel = boat(loads, { equipment, duties: [duty('E1')] })
    expect(gapsOf(vessel)).toEqual([gap])
    expect(modeOf(vessel).loads).toEqual([])
  })
  it('a row that names nothing', () => expect(gapsOf(boat([], { duties: [duty('E9')] }))).toEqual(['E9 in M: it is neither equipment nor a circuit']))
  it('no mode at all', () => {
    const { notAssessed, findings } = energyOf(boat([load('E1', { currentTypicalA: 1 })], { operatingModes: [] }))
    expect(notAssessed).toContainEqual({ subjectTag: 'G1', modeTag: null, reason: 'no operating mode is recorded, so what is used in a day is not known' })
    expect(findings).toEqual([])
  })
})

describe('an a.c. load', () => {
  /** Shore and inverter feed panel A7 in turn; E7 hangs on it. */
  const mains = (efficiencyPercent: number | null) => {
    const ac = (ratedCurrentA: number) => [anOutput({ nominalVoltageV: 230, form: 'ac', ratedCurrentA })]
    return {
      equipment: [
        anEquipment({ tag: 'X9', kind: 'shore inlet', outputs: ac(16) }), anEquipment({ tag: 'T4', kind: 'inverter', outputs: ac(7), efficiencyPercent }),
        anEquipment({ tag: 'E7', powerW: 264 }),
      ],
      panels: [aPanel({ tag: 'A1' }), aPanel({ tag: 'A7' })],
      circuits: [
        aCircuit({ tag: 'F4', fedFromTag: 'G1', loadTags: ['T4'] }),
        aCircuit({ tag: 'F8', fedFromTag: 'X9', loadTags: ['A7'], interlockTag: 'Q1' }),
        aCircuit({ tag: 'F9', fedFromTag: 'T4', loadTags: ['A7'], interlockTag: 'Q1', normalState: 'open' }),
        aCircuit({ tag: 'A7.1', fedFromTag: 'A7', loadTags: ['E7'] }),
      ],
    }
  }
  it('takes of the battery what the inverter makes of it: 264 W at 88 % and 12 V are 25 A', () => {
    const vessel = boat([], { ...mains(null), duties: [duty('E7', hours(0, 2)), duty('T4')] })
    const [day] = modeOf(vessel).loads
    expect(day).toMatchObject({ itemTag: 'E7', batteryTag: 'G1', ownFrom: 'power', through: [{ tag: 'T4', efficiencyPercent: 88, recorded: false }] })
    expect(day!.currentA).toBeCloseTo(25, 9)
    expect(outputOf(day!.charge).chargeAh).toBeCloseTo(50, 9)
  })
  it('goes by the efficiency recorded', () => {
    const [day] = modeOf(boat([], { ...mains(80), duties: [duty('E7'), duty('T4')] })).loads
    expect(day!.currentA).toBeCloseTo(264 / 12 / 0.8, 9)
  })
  it('costs no battery anything while shore power is there', () => {
    const vessel = boat([], { ...mains(null), duties: [duty('E7', hours(0, 10)), duty('T4'), duty('X9', hours(0, 6))] })
    const { loads, batteries } = modeOf(vessel)
    expect(loads.map(({ batteryTag, timeH }) => [batteryTag, timeH])).toEqual([['G1', 4], [null, 6]])
    expect(batteries[0]!.loadAh).toBeCloseTo(100, 9)
  })
  it('is not assessed where neither runs', () => {
    expect(gapsOf(boat([], { ...mains(null), duties: [duty('E7')] }))).toEqual(['E7 in M: nothing that feeds A7 runs'])
  })
  it('is said to lack supply for the hours in which neither runs', () => {
    expect(gapsOf(boat([], { ...mains(null), duties: [duty('E7', hours(0, 10)), duty('X9', hours(0, 6))] }))).toEqual(['E7 in M: for 4 h of the day: nothing that feeds A7 runs'])
  })
  it('is counted in the current given for its inverter', () => {
    const vessel = boat([], { ...mains(null), duties: [duty('E7'), duty('T4', { ...hours(0, 10), currentA: 6 })] })
    expect(chargeOf(vessel)).toEqual({ T4: 60 })
    expect(gapsOf(vessel)).toContain('E7 in M: for 10 h of the day: it is counted in the current given for T4')
  })
})
