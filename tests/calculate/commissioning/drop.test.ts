/**
 * Voltage drop as read. By hand, with resistances of IEC 60228 class 5 (1.91 and 1.21 Ω/km) and capacities of ISO 13297
 * table A.1 (90 A and 130 A, from memory):
 * W1 at 10 A: 30 + 75 · (10/90)² = 30.926 °C, 10 · 20 · 1.91 / 1000 · (1 + 0.00393 · 10.926) = 0.398403 V
 * W0 at 30 A: 30 + 75 · (30/130)² = 33.994 °C, 30 · 6 · 1.21 / 1000 · (1 + 0.00393 · 13.994) = 0.229778 V, 7.65928 mΩ
 */
import { describe, expect, it } from 'vitest'
import { aCable } from '../../support/vessel-builder.js'
import { boat, checkOf, idsOf, measured, type GivenReading } from './support.js'

const read = (...readings: readonly GivenReading[]) => measured(readings)
const drop = (reading: Omit<GivenReading, 'subjectTag'>, subjectTag = 'A1.1') => read({ subjectTag, ...reading })

describe('what is to be expected', () => {
  it('is the branch at the measured current, with feeders that carry this alone up to all', () => {
    // 5 A: 0.398403 / 2 = 0.199201; alone + 7.65928 · 5 / 1000 = 0.237498; all on + 0.229778 = 0.428979
    const { calculated, tolerances } = checkOf(drop({ voltageDropV: 0.3, currentA: 5 }), 'voltage drop')
    expect(calculated?.least).toBeCloseTo(0.237498, 5)
    expect(calculated?.most).toBeCloseTo(0.428979, 5)
    // 0.237498 − 0.1 (35 % is 0.083); 0.428979 · 1.25
    expect(tolerances.map(({ limit }) => limit.value)).toEqual([expect.closeTo(0.137498, 5), expect.closeTo(0.536224, 5)])
  })
  it('is the feeder itself, seen from the panel it feeds', () => {
    const of = (subjectTag: string) => checkOf(drop({ voltageDropV: 0.1, currentA: 15 }, subjectTag), 'voltage drop').calculated
    expect(of('F1')?.least).toBeCloseTo(0.114889, 5)
    expect(of('A1')).toEqual(of('F1'))
  })
  it('is one cable alone, where only that was measured', () => {
    const { calculated, limits } = checkOf(drop({ voltageDropV: 0.4, currentA: 10 }, 'W1'), 'voltage drop')
    expect([calculated?.least, calculated?.most]).toEqual([expect.closeTo(0.398403, 5), expect.closeTo(0.398403, 5)])
    // The limit is one for the whole way.
    expect(limits).toEqual([])
  })
  it('goes by the load’s own current where the load was measured, by the circuit’s where that was', () => {
    // W3 with its 2 A: 2 · 20 · 1.91 / 1000 · (1 + 0.00393 · 10.037) = 0.079414; the circuit has 3 A. Feeder alone: 7.65928 · I / 1000
    expect(checkOf(drop({ voltageDropV: 0.1, currentA: 2 }, 'E3'), 'voltage drop').calculated?.least).toBeCloseTo(0.079414 + 0.0153186, 5)
    expect(checkOf(drop({ voltageDropV: 0.1, currentA: 3, atTag: 'E3' }, 'A1.3'), 'voltage drop').calculated?.least).toBeCloseTo(0.079414 + 0.0229778, 5)
  })
})

describe('a reading against it', () => {
  it('is silent within, as a difference of two voltages or as a drop', () => {
    expect(idsOf(drop({ sourceVoltageV: 12.8, voltageV: 12.4, currentA: 5 }))).toEqual([])
    expect(checkOf(drop({ sourceVoltageV: 12.8, voltageV: 12.4, currentA: 5 }), 'voltage drop').measured).toMatchObject({ value: expect.closeTo(0.4, 9), difference: [12.8, 12.4] })
    expect(idsOf(drop({ voltageDropV: 0.4, currentA: 5 }))).toEqual([])
  })
  it('is a warning above, with what that usually means, and below', () => {
    const above = drop({ voltageDropV: 0.54, currentA: 5 })
    expect(idsOf(above)).toEqual(['COM302 1'])
    expect(checkOf(above, 'voltage drop')).toMatchObject({ deviation: 'above', meaning: { usually: expect.arrayContaining([expect.stringContaining('bad crimp')]) } })
    const below = drop({ voltageDropV: 0.13, currentA: 5 })
    expect(idsOf(below)).toEqual(['COM302 1'])
    expect(checkOf(below, 'voltage drop').deviation).toBe('below')
    expect(below.findings[0]?.remedy).toBe(checkOf(below, 'voltage drop').meaning?.lookFirst)
  })
  it('does not exist without a current, and is said to be missing', () => {
    const results = drop({ voltageDropV: 0.3 })
    expect(checkOf(results, 'voltage drop')).toMatchObject({ calculated: null, tolerances: [], limits: [], gaps: ['the current was not read at the same time'] })
    expect(results.notAssessed).toEqual([{ subjectTag: 'A1.1', reason: 'voltage drop as measured: the current was not read at the same time' }])
    expect(idsOf(results)).toEqual(['COM202 1'])
  })
  it('does not exist where nothing could be calculated, with the reason', () => {
    const { cables } = boat()
    const results = measured([{ subjectTag: 'A1.1', voltageDropV: 0.3, currentA: 5 }], { vessel: { cables: cables.map(cable => (cable.tag === 'W1' ? aCable({ tag: 'W1', from: 'A1.1', to: 'E1', lengthM: 10 }) : cable)) } })
    expect(checkOf(results, 'voltage drop').gaps).toEqual([expect.stringMatching(/^the voltage drop could not be calculated: the conductor size of cable W1 is not recorded$/)])
  })
})

describe('against the limit of the basis', () => {
  // 10 % of 12 V are 1.2 V at the design current of 10 A, so 0.6 V at 5 A
  it('is brought to the design current, from half of it on', () => {
    const at = (voltageDropV: number, currentA: number) => checkOf(drop({ voltageDropV, currentA }), 'voltage drop')
    expect(at(0.6, 5).limits).toMatchObject([{ quantity: 'measuredDropPercent', value: expect.closeTo(10, 9), within: true, limit: { value: 10 } }])
    expect(at(0.61, 5).limits[0]).toMatchObject({ value: expect.closeTo(10.1667, 3), within: false })
    expect(at(0.3, 4.9)).toMatchObject({ limits: [], gaps: ['less than half of the design current flowed, too little to go by for the limit'] })
  })
  it('is missed as read even with too little current, or none known', () => {
    expect(idsOf(drop({ voltageDropV: 1.21, currentA: 1 }))).toEqual(expect.arrayContaining(['COM101 1']))
    const results = drop({ voltageDropV: 1.21 })
    expect(idsOf(results)).toEqual(['COM101 1', 'COM202 1'])
    expect(results.findings[0]?.message.replaceAll('\u00A0', ' ')).toBe('Reading 1: voltage drop of A1.1 to E1 10.1 % as read, limit 10.0 % (1.21 V as read)')
  })
})

it('conductors in parallel are read together: two of 10 mm² at 10 A, 5 A each', () => {
  // By hand: each at 5 A is 30 + 75 · (5/90)² = 30.2315 °C, 5 · 20 · 1.91 / 1000 · (1 + 0.00393 · 10.2315) = 0.198680 V, and that at 10 A read for both.
  const cables = boat().cables.map(cable => (cable.tag === 'W1' ? { ...cable, parallelCount: 2 } : cable))
  const { calculated } = checkOf(measured([{ subjectTag: 'W1', voltageDropV: 0.2, currentA: 10 }], { vessel: { cables } }), 'voltage drop')
  expect(calculated!.least).toBeCloseTo(0.19868, 4)
  expect(calculated!.most).toBeCloseTo(0.19868, 4)
})
