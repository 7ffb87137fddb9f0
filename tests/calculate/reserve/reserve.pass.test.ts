/**
 * What is left in feeders, panels and busbars, held against sums by hand. Capacities are rows of tests/reference/
 * ampacity-iso-mm2.csv (ISO 13297 table A.1, from memory), at 105 °C: 2.5 mm² 35 A, 16 mm² 130 A, 35 mm² 210 A. No wireway
 * holds four loaded conductors, so every factor is 1.
 */
import { describe, expect, it } from 'vitest'
import { makersRating } from '../../../src/calculate/reserve/limits.js'
import { freeWaysOf } from '../../../src/calculate/reserve/reserve.pass.js'
import type { ReserveLimit } from '../../../src/model/results/reserve.js'
import { aBusbar, aCable, aCircuit, anEquipment, anOutput, aPanel, aProtection } from '../../support/vessel-builder.js'
import { breaker, changed, handBoat, reserveOf } from './support.js'

const marginsOf = (limits: readonly ReserveLimit[] = []) =>
  limits.map(({ of, tag, margin }) => [of, tag, margin.input.limitCurrentA, margin.input.takenCurrentA, margin.output.marginCurrentA])

describe('the margin of a feeder', () => {
  const { byFeeder } = reserveOf(handBoat())

  it('is the least of device, conductor and panel, each less the design current', () => {
    // 10 A and 0.5 · 5 A are 12.5 A.
    expect(marginsOf(byFeeder.get('F2')?.limits)).toEqual([
      ['protective device', 'F2', 40, 12.5, 27.5], ['conductor', 'W2', 130, 12.5, 117.5], ['panel', 'A1', 50, 12.5, 37.5],
    ])
    expect(byFeeder.get('F2')).toMatchObject({ designCurrentA: 12.5, missing: [], least: { of: 'protective device', margin: { output: { marginCurrentA: 27.5 } } } })
  })

  it('is held against the busbar it feeds, too', () => {
    expect(marginsOf(byFeeder.get('F1')?.limits)).toEqual([
      ['protective device', 'F1', 100, 12.5, 87.5], ['conductor', 'W1', 210, 12.5, 197.5], ['busbar', 'X1', 150, 12.5, 137.5],
    ])
  })

  it('is governed by whatever is weakest', () => {
    const boat = handBoat()
    const weakPanel = reserveOf(handBoat({ panels: changed(boat.panels, 'A1', { ratedCurrentA: 20 }) }))
    expect(weakPanel.byFeeder.get('F2')?.least).toMatchObject({ of: 'panel', tag: 'A1', margin: { output: { marginCurrentA: 7.5 } }, citation: makersRating })
    const thinCable = reserveOf(handBoat({ cables: changed(boat.cables, 'W2', { typeTag: '2x2.5' }) }))
    expect(thinCable.byFeeder.get('F2')?.least).toMatchObject({ of: 'conductor', tag: 'W2', margin: { output: { marginCurrentA: 22.5 } } })
  })

  it('is negative beyond a limit, and says so; on the limit it is within', () => {
    const boat = handBoat()
    const over = reserveOf(handBoat({ circuits: changed(boat.circuits, 'F2', { protection: breaker(10) }) })).byFeeder.get('F2')
    expect(over?.least).toMatchObject({ within: false, margin: { output: { marginCurrentA: -2.5 } } })
    const exact = reserveOf(handBoat({ panels: changed(boat.panels, 'A1', { ratedCurrentA: 12.5 }) })).byFeeder.get('F2')
    expect(exact?.least).toMatchObject({ of: 'panel', within: true, margin: { output: { marginCurrentA: 0 } } })
  })

  it('counts a conductor shared with another circuit with what it carries for both', () => {
    // A cable from the busbar to the fuses of two feeders: 12.5 A and 20 A.
    const boat = handBoat()
    const { byFeeder: shared } = reserveOf(handBoat({
      equipment: [...boat.equipment, anEquipment({ tag: 'E3', zoneTag: 'bay', currentMaxA: 20 }), anEquipment({ tag: 'X9', kind: 'junction box', zoneTag: 'bay' })],
      circuits: [...boat.circuits, aCircuit({ tag: 'F3', fedFromTag: 'X1', loadTags: ['E3'], protection: aProtection('maxi blade fuse', 30) })],
      cables: [
        ...boat.cables, aCable({ tag: 'W5', from: 'X1', to: 'X9', typeTag: '2x2.5' }), aCable({ tag: 'W6', from: 'X9', to: 'F2', typeTag: '2x10' }),
        aCable({ tag: 'W7', from: 'X9', to: 'F3', typeTag: '2x10' }), aCable({ tag: 'W8', from: 'F3', to: 'E3', typeTag: '2x10' }),
      ],
    }))
    expect(marginsOf(shared.get('F2')?.limits)).toContainEqual(['conductor', 'W5', 35, 32.5, 2.5])
  })

  it('takes the source in where it says what it can give', () => {
    const boat = handBoat()
    const { byFeeder: limited } = reserveOf(handBoat({ batteries: changed(boat.batteries, 'G1', { dischargeCurrentMaxA: 60 }) }))
    expect(marginsOf(limited.get('F1')?.limits)).toContainEqual(['source', 'G1', 60, 12.5, 47.5])
    expect(limited.get('F2')?.limits.map(({ of }) => of)).not.toContain('source')
  })
})

describe('what is not recorded', () => {
  it('is named, and once', () => {
    const boat = handBoat()
    const { byFeeder, byPoint, notAssessed } = reserveOf(handBoat({ panels: changed(boat.panels, 'A1', { ratedCurrentA: null }), cables: changed(boat.cables, 'W2', { typeTag: null }) }))
    const rating = 'the rated current of panel A1 is not recorded'
    expect(byFeeder.get('F2')?.missing).toEqual([expect.stringContaining('the current-carrying capacity of cable W2 is not assessed'), rating])
    expect(byPoint.get('A1')?.missing).toEqual([rating])
    expect(notAssessed).toEqual([{ subjectTag: 'A1', reason: rating }, { subjectTag: 'F2', reason: expect.stringContaining('cable W2') }])
  })

  it('keeps a trial from fitting, but not from failing', () => {
    const boat = handBoat()
    const unrated = changed(boat.panels, 'A1', { ratedCurrentA: null })
    expect(reserveOf(handBoat({ panels: unrated })).byPoint.get('A1')?.trials.map(({ verdict }) => verdict)).toEqual(['not assessed', 'not assessed'])
    const over = reserveOf(handBoat({ panels: unrated, circuits: changed(boat.circuits, 'F2', { protection: breaker(20) }) }))
    // 12.5 A + 5 A is below 20 A, 12.5 A + 10 A above.
    expect(over.byPoint.get('A1')?.trials.map(({ verdict }) => verdict)).toEqual(['not assessed', 'does not fit'])
  })

  it('of a panel that nothing feeds is said in words', () => {
    const { byPoint } = reserveOf(handBoat({ panels: [...handBoat().panels, aPanel({ tag: 'A9', ways: 4, ratedCurrentA: 30 })] }))
    expect(byPoint.get('A9')).toMatchObject({ chain: [], freeWays: [1, 2, 3, 4], missing: ['no circuit feeds it', 'what panel A9 takes is not known'] })
    expect(byPoint.get('A9')?.trials[0]?.verdict).toBe('not assessed')
  })

  it('leaves negative busbars out of the list, for no entry would change it', () => {
    const { byPoint, notAssessed } = reserveOf(handBoat({ busbars: [...handBoat().busbars, aBusbar({ tag: 'X2', polarity: 'negative', ratedCurrentA: 150 })] }))
    expect(byPoint.get('X2')).toMatchObject({ rating: null, missing: [expect.stringContaining('negative')] })
    expect(notAssessed).toEqual([])
  })
})

describe('free ways', () => {
  it('are those that no circuit uses', () => {
    expect(reserveOf(handBoat()).byPoint.get('A1')?.freeWays).toEqual([2, 3, 5, 6])
  })
  it('are not known where a way or their number is not recorded', () => {
    const boat = handBoat()
    expect(freeWaysOf(boat, aPanel({ tag: 'A1' }))).toBeNull()
    const wayUnknown = handBoat({ circuits: changed(boat.circuits, 'A1.1', { way: null }) })
    expect(freeWaysOf(wayUnknown, wayUnknown.panels[0]!)).toBeNull()
  })
})

describe('a busbar', () => {
  it('is held against what is taken and against what charging sources put in', () => {
    const boat = handBoat()
    const { byPoint, byFeeder } = reserveOf(handBoat({
      equipment: [...boat.equipment, anEquipment({ tag: 'G5', kind: 'alternator', zoneTag: 'bay', outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 60 })] })],
      circuits: [...boat.circuits, aCircuit({ tag: 'F9', fedFromTag: 'X1', loadTags: ['G5'], protection: aProtection('bolt-in fuse, large', 80) })],
      cables: [...boat.cables, aCable({ tag: 'W9', from: 'F9', to: 'G5', typeTag: '2x35' })],
    }))
    const busbar = byPoint.get('X1')
    expect(busbar).toMatchObject({ takenCurrentA: 12.5, putInCurrentA: 60 })
    expect([busbar?.rating, busbar?.putInRating].map(limit => limit?.margin.output.marginCurrentA)).toEqual([137.5, 90])
    expect(byFeeder.get('F1')).toMatchObject({ designCurrentA: 12.5, putInCurrentA: 60, least: { margin: { output: { marginCurrentA: 87.5 } } } })
    // 60 A flow the other way in W1: they are no load on top of what is drawn.
    expect(marginsOf(byFeeder.get('F1')?.limits)).toContainEqual(['conductor', 'W1', 210, 12.5, 197.5])
  })

  it('shares a feeder with a panel: each has what its own circuits take', () => {
    // One fuse for the busbar X1 and a panel A2 of 30 A, from which 4 A are taken.
    const boat = handBoat()
    const { byPoint, byFeeder } = reserveOf(handBoat({
      panels: [...boat.panels, aPanel({ tag: 'A2', zoneTag: 'bay', ways: 2, ratedCurrentA: 30 })],
      equipment: [...boat.equipment, anEquipment({ tag: 'E4', zoneTag: 'bay', currentMaxA: 4 })],
      circuits: [...changed(boat.circuits, 'F1', { loadTags: ['X1', 'A2'] }), aCircuit({ tag: 'A2.1', fedFromTag: 'A2', way: 1, loadTags: ['E4'], protection: breaker(5) })],
    }))
    expect([byPoint.get('X1')?.takenCurrentA, byPoint.get('A2')?.takenCurrentA, byFeeder.get('F1')?.designCurrentA]).toEqual([12.5, 4, 16.5])
  })
})

it('a source is held against what a normally open circuit draws once it is switched to', () => {
  const boat = handBoat()
  const byFeeder = reserveOf(handBoat({
    equipment: [...boat.equipment, anEquipment({ tag: 'T20', kind: 'inverter', outputs: [anOutput({ form: 'ac', nominalVoltageV: 230, ratedCurrentA: 7 })] }), anEquipment({ tag: 'E9', currentMaxA: 8 })],
    panels: [...boat.panels, aPanel({ tag: 'A8', ways: 4, ratedCurrentA: 32 })],
    circuits: [
      ...boat.circuits, aCircuit({ tag: 'F52', fedFromTag: 'T20', loadTags: ['A8'], normalState: 'open', protection: aProtection('miniature circuit breaker', 10) }),
      aCircuit({ tag: 'A8.1', fedFromTag: 'A8', way: 1, loadTags: ['E9'], protection: breaker(10) }),
    ],
  })).byFeeder
  // By hand: 7 A less the 8 A of E9.
  expect(marginsOf(byFeeder.get('F52')?.limits)).toContainEqual(['source', 'T20', 7, 8, -1])
})
