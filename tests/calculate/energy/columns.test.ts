/** The column method against its own worked sums, on whole panels. */
import { describe, expect, it } from 'vitest'
import type { Equipment, Vessel } from '../../../src/model/vessel.js'
import { equipmentKindKeys } from '../../../src/references/equipment-kinds.js'
import { loadColumnOf } from '../../../src/references/tables/load-columns.js'
import { aCircuit, aPanel, aProtection } from '../../support/vessel-builder.js'
import { boat, energyOf, load, outputOf } from './support.js'

const columnOf = (vessel: Vessel, tag: string) => energyOf(vessel).columns.find(column => column.tag === tag)!
const item = (tag: string, kind: string, currentMaxA: number, given: Partial<Equipment> = {}) => load(tag, { kind, currentMaxA, ...given })

describe('a panel', () => {
  it('of 30 A in A and 20, 5, 5 and 10 A in B comes to 50 A, and so does its battery', () => {
    const vessel = boat([item('P1', 'radar scanner', 30), item('E1', 'windlass', 20), item('E2', 'light', 5), item('E3', 'light', 5), item('E4', 'pump', 10)])
    expect(outputOf(columnOf(vessel, 'F1').total)).toEqual({ columnTotalA: 50 })
    expect(outputOf(columnOf(vessel, 'G1').total)).toEqual({ columnTotalA: 50 })
    expect(columnOf(vessel, 'F1')).toMatchObject({ pointTags: ['A1'], designCurrentA: 70, againstProtection: { value: 50, within: true, margin: 50 } })
  })
  it('of 30 A and forty lights of 3 A comes to 42 A', () => {
    const lights = Array.from({ length: 40 }, (_, i) => item(`E${i + 1}`, 'light', 3))
    expect(outputOf(columnOf(boat([item('P1', 'radar scanner', 30), ...lights]), 'F1').total)).toEqual({ columnTotalA: 42 })
  })
  it('is not assessed where a load has no current', () => {
    expect(columnOf(boat([load('E1', { kind: 'light' })]), 'F1').total).toMatchObject({ status: 'not computed', reason: 'no current or power is recorded for E1' })
  })
  it('counts the circuit’s given current where a load has none', () => {
    const vessel = boat([], { equipment: [load('E1', { kind: 'light' })], circuits: [aCircuit({ tag: 'A1.1', fedFromTag: 'A1', loadTags: ['E1'], designCurrentA: 4 })] })
    expect(columnOf(vessel, 'F1').items).toEqual([{ tag: 'A1.1', currentA: 4, column: 'b', reason: 'listed: cabin lights' }])
  })
  it('counts what hangs on a panel below, and not what is normally open or removed', () => {
    const vessel = boat([item('E1', 'light', 2)], {
      operatingModes: [], panels: [aPanel({ tag: 'A1' }), aPanel({ tag: 'A2', ratedCurrentA: 5 })],
      equipment: [item('E2', 'light', 9), item('E3', 'light', 50), item('E4', 'light', 50, { status: 'removed' })],
      circuits: [
        aCircuit({ tag: 'F2', fedFromTag: 'A1', loadTags: ['A2'], protection: aProtection('blade fuse', 10) }), aCircuit({ tag: 'A2.1', fedFromTag: 'A2', loadTags: ['E2'] }),
        aCircuit({ tag: 'A2.2', fedFromTag: 'A2', loadTags: ['E3'], normalState: 'open' }), aCircuit({ tag: 'A2.3', fedFromTag: 'A2', loadTags: ['E4'] }),
      ],
    })
    expect(columnOf(vessel, 'F1').items.map(({ tag }) => tag).toSorted()).toEqual(['E1', 'E2'])
    expect(columnOf(vessel, 'F2')).toMatchObject({ panelTag: 'A2', againstPanel: { value: 9, within: false }, againstProtection: { within: true } })
    expect(energyOf(vessel).findings.map(({ id, subject }) => `${id} ${subject.id}`)).toEqual(['ENG303 A2'])
  })
})

describe('the column of a load', () => {
  const placed = (...loads: Equipment[]) => Object.fromEntries(columnOf(boat(loads), 'F1').items.map(({ tag, column }) => [tag, column]))
  it('is A for the largest radio only', () => {
    expect(placed(item('T1', 'vhf transceiver', 5), item('T2', 'vhf transceiver', 6), item('T3', 'vhf transceiver', 6))).toEqual({ T1: 'b', T2: 'a', T3: 'b' })
  })
  it('is what the author gives', () => expect(placed(item('E1', 'light', 1, { loadColumn: 'a' }), item('E2', 'bilge pump', 1, { loadColumn: 'b' }))).toEqual({ E1: 'a', E2: 'b' }))
  it('is none for a starter motor, whose current need not be known', () => {
    const { total } = columnOf(boat([load('M1', { kind: 'starter motor' }), item('E1', 'light', 3)]), 'F1')
    expect(outputOf(total)).toEqual({ columnTotalA: 3 })
  })
  // The list of ABYC E-11 (from memory), as printed in handbooks.
  it.each([
    ['a', ['navigation light', 'bilge blower', 'bilge pump', 'wiper', 'radar scanner', 'searchlight', 'instrument', 'alarm panel', 'refrigerator', 'sonar module']],
    ['b', ['socket', 'light', 'horn', 'trim tab', 'toilet', 'windlass', 'winch', 'pump']],
  ] as const)('is %s for what the rule lists there', (column, kinds) => {
    expect(kinds.map(kind => loadColumnOf(kind).column)).toEqual(kinds.map(() => column))
  })
  it('is there for every kind', () => { for (const kind of equipmentKindKeys) expect(loadColumnOf(kind).reason).not.toBe('') })
})
