/** The page on protection and short circuit, and the blocks of one device: what a reader needs to redo each figure. */
import { describe, expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { deviceBlocks } from '../../../src/view/pages/protective-devices/device-blocks.js'
import { protectiveDevicesPages } from '../../../src/view/pages/protective-devices/protective-devices.view.js'
import type { Page } from '../../../src/view/view-model.js'
import { smallSystem, withChanged } from '../../calculate/protective-devices/support.js'
import { aDuty, aMode, anEquipment, anOutput, aCable, aCircuit, aProtection, aVessel } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, tablesOf, wordsOn, workingsOf } from './support.js'

const pageOf = (vessel: Vessel): Page => protectiveDevicesPages(contextOf(vessel))[0]!
const blocksOf = (vessel: Vessel, tag: string): Page =>
  ({ ...pageOf(vessel), lead: null, blocks: deviceBlocks(contextOf(vessel), vessel.circuits.find(circuit => circuit.tag === tag)!) })
const system = smallSystem()
const page = pageOf(system)

describe('the page', () => {
  // By hand, as in the tests of the pass: 12.6 V over 5, 8 and 12 mΩ
  it('gives the current at every place with the conductors between', () => {
    expect(cellsOf(tableIn(page, 'short-circuit-points'))).toEqual([
      ['G1 Battery G1', 'G1', '0 mΩ', '2520.0 A'], ['X1 Busbar X1', 'G1', '3 mΩ', '1575.0 A'], ['A1 Panel A1', 'G1', '7 mΩ', '1050.0 A'],
    ])
  })
  it('with a sum for each that can be redone', () => {
    const sum = workingsOf(page).find(({ title }) => title === 'Short-circuit current at X1')!
    expect(sum.inputs.map(({ value }) => value.replaceAll('\u00A0', ' '))).toEqual(['12.6 V', '5 mΩ', '3 mΩ', '0 A', '1 m of conductor of 17.2414 mm² is 1 mΩ', '2 m of conductor of 17.2414 mm² is 2 mΩ'])
    expect(sum.results.map(({ value }) => value.replaceAll('\u00A0', ' '))).toEqual(['1575 A'])
  })
  it('parts the devices by what feeds them, each with a verdict', () => {
    expect(tablesOf(page).map(({ id }) => id).filter(id => id.startsWith('devices-'))).toEqual(['devices-a1', 'devices-g1', 'devices-x1', 'devices-not-assessed'])
    expect(cellsOf(tableIn(page, 'devices-g1'))[0]!.slice(3)).toEqual(['32 V', '6000 A, by its type', '2100.0 A', 'within'])
    expect(cellsOf(tableIn(page, 'devices-a1'))[0]!.slice(3)).toEqual(['32 V', '1000 A, by its type', '1050.0 A', 'outside'])
    expect(tableIn(page, 'devices-a1').rows[0]!.level).toBe('error')
  })
  it('says how far devices sit, and that the limit of ISO is from memory', () => {
    expect(cellsOf(tableIn(page, 'device-distances')).map(([device, from, distance]) => [device, from, distance])).toEqual([
      ['F1', 'G1', '500.0 mm limit at most 200.0 mm outside by the length of its cables'], ['F2', 'X1', 'at X1, no conductor ahead of it'],
    ])
    expect(wordsOn(page)).toContain('one published page gives 300 mm')
    expect(wordsOn(pageOf({ ...system, conditions: { ...system.conditions, deviceDistanceMm: 300 } }))).not.toContain('one published page gives 300 mm')
  })
  it('lists live conductors with length and verdict', () => {
    expect(cellsOf(tableIn(page, 'exposed-conductors'))).toEqual([['W1', 'G1', 'F1', '0.50 m (1.6 ft)', 'too long']])
  })
  it('compares ratings behind each device, and owns that it compares no curves', () => {
    expect(cellsOf(tableIn(page, 'order-f1'))).toEqual([['F2', '60 A', '3.333', 'falls']])
    expect(cellsOf(tableIn(page, 'order-f2'))).toEqual([['A1.1', '10 A', '6.000', 'falls']])
    expect(wordsOn(page)).toContain('the time–current curves decide, and they are not recorded')
    const equal = pageOf({ ...system, circuits: withChanged(system.circuits, 'F2', { protection: aProtection('flat-link fuse', 200) }) })
    expect(cellsOf(tableIn(equal, 'order-f1'))[0]![3]).toContain('doubtful')
    const near = pageOf({ ...system, circuits: withChanged(system.circuits, 'F2', { protection: aProtection('flat-link fuse', 150) }) })
    expect(cellsOf(tableIn(near, 'order-f1'))[0]![3]).toBe('falls ratio below the advice')
  })
  it('lists what is not assessed with the reason', () => {
    expect(cellsOf(tableIn(page, 'devices-not-assessed')).map(([, tags]) => tags)).toEqual(['A1', 'X1'])
    const unknown = pageOf({ ...system, batteries: withChanged(system.batteries, 'G1', { internalResistanceMilliOhm: null }) })
    expect(cellsOf(tableIn(unknown, 'devices-a1'))[0]!.slice(5)).toEqual(['not known', 'not assessed'])
    expect(cellsOf(tableIn(unknown, 'devices-not-assessed')).some(([why]) => why!.includes('cranking current of G1'))).toBe(true)
  })
  it('is not within while the class is not known, though the current is', () => {
    const abyc = pageOf({ ...system, basis: 'abyc' })
    expect(cellsOf(tableIn(abyc, 'devices-g1'))[0]!.slice(5)).toEqual(['2100.0 A', 'not assessed'])
    const classed = pageOf({ ...system, basis: 'abyc', batteries: withChanged(system.batteries, 'G1', { crankingCurrentA: 650 }) })
    expect(cellsOf(tableIn(classed, 'devices-g1'))[0]!.slice(5)).toEqual(['2100.0 A class 1500.0 A', 'within'])
  })
  it('says “at most” where a conductor could not be counted', () => {
    const unknown = pageOf({ ...system, cables: withChanged(system.cables, 'W3', { lengthM: null }) })
    expect(cellsOf(tableIn(unknown, 'short-circuit-points'))[2]![3]).toBe('at most 1575.0 A')
    expect(wordsOn(unknown)).toContain('the length of W3 is not known')
  })
  it('motors, lasting loads, panels and charging each in a table', () => {
    const busy = pageOf({
      ...system,
      panels: withChanged(system.panels, 'A1', { ratedCurrentA: 50 }),
      equipment: [...withChanged(system.equipment, 'E1', { kind: 'pump', makersFuseA: 7.5, startingCurrentA: 12 }), anEquipment({ tag: 'G5', kind: 'alternator', zoneTag: 'Z1', outputs: [anOutput({ terminal: 'B', nominalVoltageV: 12, ratedCurrentA: 100 })] })],
      circuits: [...system.circuits, aCircuit({ tag: 'F5', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, large', 150), loadTags: ['G5'] })],
      cables: [...system.cables, aCable({ tag: 'W5', from: 'F5', to: 'G5:B', typeTag: 'T', lengthM: 1 })],
      operatingModes: [aMode({ tag: 'sea', name: 'At sea' })], duties: [aDuty({ modeTag: 'sea', itemTag: 'E1' })],
    })
    expect(cellsOf(tableIn(busy, 'motors'))).toEqual([['E1 Equipment E1', 'A1.1 10 A', 'maker asks for 7.5 A rated above', '12.0 A while it starts not assessed', '–']])
    expect(cellsOf(tableIn(busy, 'continuous-loads'))).toEqual([['A1.1', 'E1', 'At sea', '4.0 A', '10.0 A limit at least 5.0 A within']])
    expect(cellsOf(tableIn(busy, 'panel-ratings'))).toEqual([['A1 Panel A1', '50 A', 'F2', '60.0 A limit at most 50.0 A outside', '4.0 A limit at most 50.0 A within']])
    expect(cellsOf(tableIn(busy, 'charging-through')).map(([device, , current]) => [device, current])).toEqual([
      ['F1', '100.0 A limit at most 200.0 A within'], ['F5', '100.0 A limit at most 150.0 A within'],
    ])
    expect(cellsOf(tableIn(busy, 'other-sources-g1'))).toEqual([['G5 Equipment G5', '100.0 A', 'rated current']])
  })
  it('has no table wider than seven columns, and reads well for a vessel with nothing', () => {
    for (const { id, columns } of tablesOf(page)) expect(columns.length, id).toBeLessThanOrEqual(7)
    expect(wordsOn(pageOf(aVessel()))).toContain('No source, busbar or panel is recorded.')
  })
})

describe('the blocks of one device', () => {
  it('tell all that is worked out about it', () => {
    const words = wordsOn(blocksOf(system, 'A1.1'))
    for (const said of [
      'Short circuit prospective current 1050.0 A limit at most 1000.0 A outside', 'It can break 1000 A, by its type', 'Where it sits in A1, no conductor ahead of it',
      'G1 → F1 200 A → F2 60 A → A1.1 10 A: A1.1 by its rating, ratio 6.000. Ratings only', 'Short-circuit current behind A1.1',
    ]) expect(words).toContain(said)
  })
  it('nothing for a circuit without a device', () => {
    const without = { ...system, circuits: withChanged(system.circuits, 'A1.1', { protection: null }) }
    expect(deviceBlocks(contextOf(without), without.circuits[2]!)).toEqual([])
  })
  it('say what is not assessed and why', () => {
    const breaker = { ...system, circuits: withChanged(system.circuits, 'A1.1', { protection: aProtection('circuit breaker', 10) }) }
    expect(wordsOn(blocksOf(breaker, 'A1.1'))).toContain('Not assessed: breaking a short circuit the interrupting capacity of the circuit breaker is not recorded')
  })
  it('in inches where the vessel is read so', () => {
    expect(wordsOn(blocksOf({ ...system, units: 'us' }, 'F1'))).toContain('19.69 in limit at most 7.87 in outside')
  })
})
