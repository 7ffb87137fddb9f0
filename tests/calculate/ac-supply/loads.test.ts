/** Sums on a.c. sources against sums done by hand: P = U · I at 230 V, averages over 24 h. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Circuit } from '../../../src/model/vessel.js'
import { aCircuit, aDuty, aMode, anEquipment, anOutput, aPanel } from '../../support/vessel-builder.js'
import { acOutput, acOf, acSource, breaker, cable, currentOf, idsOf, shoreBoat, sourceIn } from './support.js'

const hours = (fromH: number, toH: number) => [{ fromH, toH }]
const modes = { operatingModes: [aMode({ tag: 'harbour', name: 'In harbour' })] }

describe('all connected', () => {
  it('adds the loads at full current: 2000 W / 230 V + 5 A = 13.696 A', () => {
    const { connected } = sourceIn(shoreBoat())
    expect(currentOf(connected)).toBeCloseTo(13.696, 3)
    expect(connected.comparison?.within).toBe(true)
    expect(connected.comparison?.margin).toBeCloseTo(2.304, 3)
  })

  it('is too small to be within, when the current of a load is not known', () => {
    const vessel = shoreBoat({ circuits: [aCircuit({ tag: 'A1.3', fedFromTag: 'A1', loadTags: ['E3'], protection: breaker(10) })], equipment: [anEquipment({ tag: 'E3', kind: 'heater' })], cables: [cable('W5', 'A1.3', 'E3')] })
    const { connected } = sourceIn(vessel)
    expect([connected.unknownTags, connected.comparison]).toEqual([['E3'], null])
    expect(acOf(vessel).notAssessed).toContainEqual({ subjectTag: 'E3', reason: 'loads of X1: its current is not known' })
  })

  it('leaves out what has been removed and what is normally open, and counts no feeder twice', () => {
    const vessel = shoreBoat({
      main: { designCurrentA: 14 },
      equipment: [anEquipment({ tag: 'E3', kind: 'heater', currentMaxA: 9, status: 'removed' }), anEquipment({ tag: 'E4', kind: 'heater', currentMaxA: 9 })],
      circuits: [aCircuit({ tag: 'A1.3', fedFromTag: 'A1', loadTags: ['E3'] }), aCircuit({ tag: 'A1.4', fedFromTag: 'A1', loadTags: ['E4'], normalState: 'open' })],
      cables: [cable('W5', 'A1.3', 'E3'), cable('W6', 'A1.4', 'E4')],
    })
    expect(currentOf(sourceIn(vessel).connected)).toBeCloseTo(13.696, 3)
  })

  // 60 A at 12 V at 85 %: 720 / (230 · 0.85) = 3.683 A.
  it('counts a charger with what it takes', () => {
    const charger = anEquipment({ tag: 'T1', kind: 'charger', efficiencyPercent: 85, outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 60, terminal: 'out' })] })
    const vessel = shoreBoat({ equipment: [charger], circuits: [aCircuit({ tag: 'A1.3', fedFromTag: 'A1', loadTags: ['T1'], protection: breaker(6) })], cables: [cable('W5', 'A1.3', 'T1:mains')] })
    expect(currentOf(sourceIn(vessel).connected)).toBeCloseTo(13.696 + 3.683, 3)
  })

  it('follows a feeder to a further panel, and a normally open one only where an interlock makes it the choice of this source', () => {
    const further = (given: Partial<Circuit>) => currentOf(sourceIn(shoreBoat({
      panels: [aPanel({ tag: 'A1' }), aPanel({ tag: 'A2' })],
      equipment: [anEquipment({ tag: 'E3', kind: 'heater', currentMaxA: 2 })],
      circuits: [aCircuit({ tag: 'A1.3', fedFromTag: 'A1', loadTags: ['A2'], ...given }), aCircuit({ tag: 'A2.1', fedFromTag: 'A2', loadTags: ['E3'] })],
      cables: [cable('W5', 'A1.3', 'A2'), cable('W6', 'A2.1', 'E3')],
    })).connected)
    expect(further({})).toBeCloseTo(15.696, 3)
    expect(further({ normalState: 'open', interlockTag: 'Q1' })).toBeCloseTo(15.696, 3)
    expect(further({ normalState: 'open' })).toBeCloseTo(13.696, 3)
  })

  // Behind a transformer from 230 V to 115 V a load of 10 A takes 10 · 115 / 230 = 5 A.
  it('looks through an isolation transformer, at the voltage of each side', () => {
    const vessel = shoreBoat({
      equipment: [acSource('T1', 'isolation transformer', { outputs: [acOutput({ nominalVoltageV: 115, ratedCurrentA: 30, neutralBonded: true })] }), anEquipment({ tag: 'E3', kind: 'heater', currentMaxA: 10 })],
      circuits: [aCircuit({ tag: 'A1.3', fedFromTag: 'A1', loadTags: ['T1'], protection: breaker(16) }), aCircuit({ tag: 'F3', fedFromTag: 'T1', loadTags: ['E3'], protection: breaker(16) })],
      cables: [cable('W5', 'A1.3', 'T1'), cable('W6', 'T1', 'F3'), cable('W7', 'F3', 'E3')],
    })
    expect(currentOf(sourceIn(vessel).connected)).toBeCloseTo(13.696 + 5, 3)
    expect(currentOf(sourceIn(vessel, 'T1').connected)).toBeCloseTo(10, 9)
  })

  it('is pointed out above the rating only where no duty says what runs together', () => {
    const small = { inlet: { outputs: [acOutput({ ratedCurrentA: 10 })] } }
    expect(idsOf(shoreBoat(small))).toContain('ACS301 X1')
    expect(idsOf(shoreBoat({ ...small, ...modes, duties: [aDuty({ modeTag: 'harbour', itemTag: 'E1' })] }))).not.toContain('ACS301 X1')
  })
})

describe('by operating mode', () => {
  const inMode = (duties: Parameters<typeof aDuty>[0][], given: Parameters<typeof shoreBoat>[0] = {}) =>
    sourceIn(shoreBoat({ ...modes, duties: duties.map(aDuty), ...given })).modes

  it('takes the hour when most is on, each load at full current, over midnight too', () => {
    const [mode] = inMode([
      { modeTag: 'harbour', itemTag: 'E1', periods: hours(22, 26), dutyPercent: 10 },
      { modeTag: 'harbour', itemTag: 'A1.2', periods: hours(1, 4) },
    ])
    expect([mode!.largestFromH, mode!.largestToH]).toEqual([1, 2])
    expect(currentOf(mode!.largest)).toBeCloseTo(2000 / 230 + 5, 9)
  })

  // 8.6957 A · 10 % · 4 h / 24 + 5 A · 3 h / 24
  it('averages over the day', () => {
    const [mode] = inMode([
      { modeTag: 'harbour', itemTag: 'E1', periods: hours(22, 26), dutyPercent: 10 },
      { modeTag: 'harbour', itemTag: 'A1.2', periods: hours(1, 4) },
    ])
    expect(mode!.averageCurrentA).toBeCloseTo(0.14493 + 0.625, 4)
  })

  it('does not add what runs one after the other', () => {
    const [mode] = inMode([
      { modeTag: 'harbour', itemTag: 'E1', periods: hours(6, 7) }, { modeTag: 'harbour', itemTag: 'A1.2', periods: hours(7, 8) },
    ])
    expect(currentOf(mode!.largest)).toBeCloseTo(2000 / 230, 9)
  })

  it('lets a circuit’s duty stand for its loads, an item’s own duty before it, and a duty’s current before both', () => {
    expect(currentOf(inMode([{ modeTag: 'harbour', itemTag: 'F1' }])[0]!.largest)).toBeCloseTo(13.696, 3)
    expect(currentOf(inMode([{ modeTag: 'harbour', itemTag: 'F1', periods: hours(0, 1) }, { modeTag: 'harbour', itemTag: 'E1', periods: hours(2, 3) }])[0]!.largest)).toBeCloseTo(2000 / 230, 9)
    expect(currentOf(inMode([{ modeTag: 'harbour', itemTag: 'E1', currentA: 3 }])[0]!.largest)).toBe(3)
    expect(currentOf(inMode([{ modeTag: 'harbour', itemTag: 'F1', currentA: 7 }])[0]!.largest)).toBe(7)
    expect(currentOf(inMode([{ modeTag: 'harbour', itemTag: 'E2', currentA: 2 }])[0]!.largest)).toBe(2)
  })

  it('counts nothing that runs at no share of the time, and has no mode without duties', () => {
    expect(inMode([{ modeTag: 'harbour', itemTag: 'E1', dutyPercent: 0 }])).toEqual([])
    expect(inMode([])).toEqual([])
  })

  it('counts only the hours in which the source runs, and says where another one does', () => {
    const generator = acSource('G2', 'generator')
    const [mode] = inMode([
      { modeTag: 'harbour', itemTag: 'X1', periods: hours(0, 6) }, { modeTag: 'harbour', itemTag: 'E1', periods: hours(5, 9) },
      { modeTag: 'harbour', itemTag: 'A1.2', periods: hours(7, 8) },
    ])
    expect(currentOf(mode!.largest)).toBeCloseTo(2000 / 230, 9)
    expect(mode!.averageCurrentA).toBeCloseTo(2000 / 230 / 24, 9)
    const [idle] = inMode([{ modeTag: 'harbour', itemTag: 'G2' }, { modeTag: 'harbour', itemTag: 'E1' }], { equipment: [generator] })
    expect(idle!.running).toBe(false)
  })

  it('warns above the rating, and not at it', () => {
    const withRating = (ratedCurrentA: number) => idsOf(shoreBoat({ ...modes, inlet: { outputs: [acOutput({ ratedCurrentA })] }, duties: [aDuty({ modeTag: 'harbour', itemTag: 'A1.2' })] }))
    expect(withRating(4.99)).toContain('ACS101 X1')
    expect(withRating(5)).not.toContain('ACS101 X1')
  })

  it('is never less at its largest than on average, nor more than all together', () => {
    const period = fc.tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 1, max: 24 })).map(([fromH, lengthH]) => ({ fromH, toH: fromH + lengthH }))
    const duty = fc.record({ itemTag: fc.constantFrom('E1', 'A1.2'), periods: fc.array(period, { maxLength: 2 }), dutyPercent: fc.integer({ min: 1, max: 100 }) })
    fc.assert(fc.property(duty, duty, (a, b) => {
      fc.pre(a.itemTag !== b.itemTag)
      const vessel = shoreBoat({ ...modes, duties: [a, b].map(given => aDuty({ modeTag: 'harbour', ...given })) })
      const { connected, modes: [mode] } = sourceIn(vessel)
      const largestA = currentOf(mode!.largest)!
      expect(largestA).toBeGreaterThanOrEqual(mode!.averageCurrentA - 1e-9)
      expect(largestA).toBeLessThanOrEqual(currentOf(connected)! + 1e-9)
    }), { numRuns: 40 })
  })
})

it('asks for the rating of a source, and for the output of one that has none', () => {
  expect(idsOf(shoreBoat({ inlet: { outputs: [acOutput({ ratedCurrentA: null })] } }))).toContain('ACS201 X1')
  expect(idsOf(shoreBoat({ inlet: { outputs: [] } }))).toContain('ACS201 X1')
  expect(idsOf(shoreBoat())).toEqual([])
})
