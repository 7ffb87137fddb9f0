/**
 * Where a load can be taken from, held against sums by hand: the constant 0.0164 Ω·mm²/m of ISO 13297, class 5 tinned
 * resistances of IEC 60228 (tests/reference/conductors-iec60228-class5.csv), capacities of ISO 13297 table A.1 (from memory;
 * tests/reference/ampacity-iso-mm2.csv), breaker and fuse ratings of tests/reference/protection-fuse-ratings.csv.
 */
import { describe, expect, it } from 'vitest'
import { placeNamed } from '../../../src/calculate/reserve/place-named.js'
import { aBattery, aBusbar, aCable, aCircuit, anEquipment, aPanel, aPoint, aProtection } from '../../support/vessel-builder.js'
import { answersOf, asked, breaker, changed, handBoat } from './support.js'

const answerAt = (tag: string, ...given: Parameters<typeof answersOf>) => answersOf(...given).find(({ pointTag }) => pointTag === tag)!

describe('8 A at the mast, from the panel at the helm', () => {
  const answer = answerAt('A1', handBoat(), asked({ dailyH: 4 }))

  it('fits', () => expect(answer).toMatchObject({ verdict: 'fits', reasons: [], reserve: { freeWays: [2, 3, 5, 6] } }))

  it('takes the shortest way: R2, 6 m + 2 · 0.5 m', () => {
    expect(answer.circuit?.run).toMatchObject({ wirewayTags: ['R2'], length: { output: { cableLengthM: 7 } } })
  })

  // F1: 0.0164 · 20.5 A · 4 m / 35 mm² = 0.038423 V; F2: 5 m, so 0.0164 · 20.5 · 10 / 16 = 0.210125 V.
  it('counts what the feeders lose with the load on', () => expect(answer.circuit?.feederDropV).toBeCloseTo(0.038423 + 0.210125, 6))

  /**
   * By the constant 1.2 V − 0.248548 V = 0.951452 V would do with 0.0164 · 8 · 14 / 0.951452 = 1.9305 mm². By resistance, at
   * 20 °C already: 2.5 mm² 8 · 14 · 8.21 / 1000 = 0.9195 V; F1 20.5 · 4 · 0.565 / 1000 = 0.0463 V, F2 20.5 · 10 · 1.24 / 1000 =
   * 0.2542 V: 1.220 V, above 1.2 V. 4 mm² 0.5701 V: 0.871 V, and warm not a third more.
   */
  it('needs 4 mm², by the resistance of the warm conductor', () => {
    expect(answer.circuit?.choice).toMatchObject({ designation: '4', governedBy: 'voltage drop by resistance' })
    expect(answer.circuit?.choice?.byDropMm2).toBeCloseTo(1.9305, 4)
  })

  // 0.0164 · 8 · 14 / 4 = 0.4592 V, together 0.707748 V, of 12 V 5.8979 %.
  it('loses 5.90 %, of 10 %', () => {
    expect(answer.circuit?.drop?.voltageDropPercent).toBeCloseTo(5.8979, 4)
    expect(answer.circuit?.drop?.comparison).toMatchObject({ within: true, limit: { value: 10 } })
  })

  it('gets the next standard breaker, 10 A, below the capacity of 45 A', () => {
    expect(answer.protection).toMatchObject({ device: 'circuit breaker', ratedCurrentA: 10, least: { output: { leastRatedCurrentA: 8 } } })
    expect(answer.circuit?.capacity?.outcome).toMatchObject({ output: { currentCarryingCapacityA: 45 } })
  })

  it('leaves 19.5 A in F2 and 79.5 A in F1', () => {
    expect(answer.feeders.map(({ circuitTag, beforeCurrentA, afterCurrentA, least }) => [circuitTag, beforeCurrentA, afterCurrentA, least?.margin.output.marginCurrentA]))
      .toEqual([['F2', 12.5, 20.5, 19.5], ['F1', 12.5, 20.5, 79.5]])
  })

  it('takes 32 Ah a day of the 200 Ah', () => {
    expect(answer.daily).toMatchObject({ batteryTag: 'G1', capacityAh: 200, charge: { output: { chargeAh: 32 } } })
  })
})

it('adds the load to a design current that the author gives, for the voltage lost as well', () => {
  // F2 given 25 A, 33 A with the load, and so F1: 0.0164 · 33 · 10 / 16 = 0.33825 V and 0.0164 · 33 · 4 / 35 = 0.061851 V.
  const given = handBoat({ circuits: changed(handBoat().circuits, 'F2', { designCurrentA: 25 }) })
  expect(answerAt('A1', given, asked()).circuit?.feederDropV).toBeCloseTo(0.400101, 5)
})

describe('what was asked', () => {
  it('critical: nothing is left of 3 % where the feeders take it all', () => {
    expect(answerAt('A1', handBoat(), asked({ loadClass: 'critical' })).circuit?.dropLimit.value).toBe(3)
    // With 27 A more F2 alone loses 0.0164 · 39.5 · 10 / 16 = 0.405 V, of 0.36 V.
    expect(answerAt('A1', handBoat(), asked({ loadClass: 'critical', currentA: 27 }))).toMatchObject({
      verdict: 'does not fit', reasons: expect.arrayContaining(['the feeders above would lose more voltage than is allowed for the whole way']),
    })
  })
  it('for hours: 1.25 · 9 A is above 10 A, so the breaker is of 15 A', () => {
    expect(answerAt('A1', handBoat(), asked({ currentA: 9 })).protection?.ratedCurrentA).toBe(10)
    expect(answerAt('A1', handBoat(), asked({ currentA: 9, continuous: true })).protection).toMatchObject({ ratedCurrentA: 15, least: { output: { leastRatedCurrentA: 11.25 } } })
  })
  it('in gauge sizes on a vessel in feet', () => {
    expect(answerAt('A1', { ...handBoat(), units: 'us', basis: 'abyc' }, asked()).circuit?.size?.system).toBe('awg')
  })
  it('an item, a zone or a wireway point as the place', () => {
    const boat = handBoat({ points: [aPoint({ tag: 'P9', zoneTag: 'mast' })], equipment: [...handBoat().equipment, anEquipment({ tag: 'E7', zoneTag: 'mast', pointTag: 'P9' }), anEquipment({ tag: 'E8' })] })
    expect(['mast', 'P9', 'E7', 'A1', 'E8', 'nowhere'].map(tag => placeNamed(boat, tag))).toEqual([
      { pointTag: 'mast', zoneTag: 'mast' }, { pointTag: 'P9', zoneTag: 'mast' }, { pointTag: 'P9', zoneTag: 'mast' }, { pointTag: 'helm', zoneTag: 'helm' }, null, null,
    ])
  })
})

describe('a busbar', () => {
  it('offers a fuse of its own, the smallest kind that is made so large', () => {
    expect(answerAt('X1', handBoat(), asked()).protection).toMatchObject({ device: 'blade fuse', ratedCurrentA: 10 })
    expect(answerAt('X1', handBoat(), asked({ currentA: 45 })).protection).toMatchObject({ device: 'maxi blade fuse', ratedCurrentA: 50 })
  })
  it('is no place when it is a negative one', () => {
    const boat = handBoat({ busbars: [...handBoat().busbars, aBusbar({ tag: 'X2', polarity: 'negative' })] })
    expect(answersOf(boat, asked()).map(({ pointTag }) => pointTag)).not.toContain('X2')
  })
})

describe('the order', () => {
  it('is those that fit by voltage drop, then those not assessed, then those that do not fit', () => {
    const boat = handBoat()
    const more = handBoat({
      panels: [...boat.panels, aPanel({ tag: 'A2', zoneTag: 'bay', ways: 1, ratedCurrentA: 30 }), aPanel({ tag: 'A3', zoneTag: 'bay', ways: 4 }), aPanel({ tag: 'A4', zoneTag: 'bay', ways: 4, ratedCurrentA: 30 })],
      batteries: [...boat.batteries, aBattery({ tag: 'G2', zoneTag: 'bay', nominalVoltageV: 24 })],
      equipment: [...boat.equipment, ...['E5', 'E6', 'E7'].map(tag => anEquipment({ tag, zoneTag: 'bay', currentMaxA: 1 }))],
      circuits: [
        ...boat.circuits,
        aCircuit({ tag: 'F4', fedFromTag: 'X1', loadTags: ['A2'], protection: breaker(30) }), aCircuit({ tag: 'A2.1', fedFromTag: 'A2', way: 1, loadTags: ['E5'], protection: breaker(5) }),
        aCircuit({ tag: 'F5', fedFromTag: 'X1', loadTags: ['A3'], protection: breaker(30) }), aCircuit({ tag: 'A3.1', fedFromTag: 'A3', way: 1, loadTags: ['E6'], protection: breaker(5) }),
        aCircuit({ tag: 'F6', fedFromTag: 'G2', loadTags: ['A4'], protection: breaker(30) }), aCircuit({ tag: 'A4.1', fedFromTag: 'A4', way: 1, loadTags: ['E7'], protection: breaker(5) }),
      ],
      cables: [...boat.cables, ...[['W6', 'F4', 'A2'], ['W7', 'F5', 'A3'], ['W8', 'F6', 'A4']].map(([tag, from, to]) => aCable({ tag: tag!, from: from!, to: to!, typeTag: '2x10' }))],
    })
    const answers = answersOf(more, asked())
    // At the busbar 11 m of 4 mm²: 0.0164 · 8 · 22 / 4 = 0.7216 V and F1, more than the 0.71 V from the panel.
    expect(answers.map(({ pointTag, verdict }) => [pointTag, verdict]).slice(0, 3)).toEqual([['A1', 'fits'], ['X1', 'fits'], ['A3', 'not assessed']])
    expect(answers.filter(({ verdict }) => verdict === 'does not fit').map(({ pointTag, reasons }) => [pointTag, reasons[0]]).toSorted()).toEqual([['A2', 'no way is free'], ['A4', 'it has another voltage']])
    expect(answers.find(({ pointTag }) => pointTag === 'A3')?.reasons).toEqual(['feeder F5: the rated current of panel A3 is not recorded'])
    const drops = answers.slice(0, 2).map(({ circuit }) => circuit!.drop!.voltageDropPercent)
    expect(drops[0]).toBeLessThan(drops[1]!)
  })
})

describe('what does not fit', () => {
  const reasonsAt = (...given: Parameters<typeof answersOf>) => answerAt('A1', ...given).reasons
  it('names the feeder and what of it is too weak', () => {
    expect(reasonsAt(handBoat(), asked({ currentA: 30 }))).toContain('feeder F2 would carry too much for its protective device')
  })
  it('names what else would be put outside its limit', () => {
    // A critical load of the panel: 0.0164 · 10 · 2 · 1 / 2.5 = 0.1312 V beside the feeders’ 0.1516 V before, 2.4 %, and 0.2485 V after, 3.2 %.
    const boat = handBoat()
    const critical = handBoat({ circuits: changed(boat.circuits, 'A1.1', { loadClass: 'critical' }) })
    expect(reasonsAt(critical, asked()).filter(reason => reason.startsWith('elsewhere a limit would be passed: Circuit A1.1'))).toHaveLength(1)
    expect(reasonsAt(boat, asked())).toEqual([])
  })
  it('has no device of that size', () => {
    const blocks = handBoat({ panels: changed(handBoat().panels, 'A1', { kind: 'fuse block' }), circuits: handBoat().circuits.map(circuit => (circuit.fedFromTag === 'A1' ? { ...circuit, protection: aProtection('mini blade fuse', 15) } : circuit)) })
    expect(reasonsAt(blocks, asked({ currentA: 31 }))).toEqual(['no mini blade fuse is made for the current'])
  })
})

describe('what is not assessed', () => {
  it('is a place to which no wireways lead', () => {
    const [r1] = handBoat().wireways
    expect(answerAt('A1', handBoat({ wireways: [r1!] }), asked())).toMatchObject({ verdict: 'not assessed', reasons: ['no wireways lead from helm to mast'] })
  })
  it('is a panel of which the ways are not recorded', () => {
    expect(answerAt('A1', handBoat({ panels: changed(handBoat().panels, 'A1', { ways: null }) }), asked())).toMatchObject({ verdict: 'not assessed', reasons: ['which of its ways are free is not recorded'] })
  })
})

it('changes nothing of the vessel', () => {
  const boat = handBoat()
  const before = JSON.stringify(boat)
  answersOf(boat, asked())
  expect(JSON.stringify(boat)).toBe(before)
})
