import fc from 'fast-check'
import { expect, it } from 'vitest'
import { bankOf } from '../../../src/calculate/sources/bank.js'
import { batteryBank } from '../../../src/calculate/sources/battery-bank.calc.js'
import { sourcesPass } from '../../../src/calculate/sources/sources.pass.js'
import { aBattery, aVessel } from '../../support/vessel-builder.js'

const blocks = { seriesCount: 2, parallelCount: 3, nominalVoltageV: 6, capacityAh: 220, crankingCurrentA: 700, internalResistanceMilliOhm: 3, shortCircuitCurrentA: 2400 }

it('takes what is recorded of the bank before what its blocks give', () => {
  // By hand: 3 strings of two: 660 Ah, 2100 A cranking, 2 · 3 / 3 = 2 mΩ, 7200 A.
  expect(bankOf(aBattery({ tag: 'G1', blocks }))).toEqual({ capacityAh: 660, crankingCurrentA: 2100, internalResistanceMilliOhm: 2, shortCircuitCurrentA: 7200 })
  expect(bankOf(aBattery({ tag: 'G1', blocks, capacityAh: 640, shortCircuitCurrentA: 6000 }))).toMatchObject({ capacityAh: 640, shortCircuitCurrentA: 6000, internalResistanceMilliOhm: 2 })
  expect(bankOf(aBattery({ tag: 'G1' }))).toEqual({ capacityAh: null, crankingCurrentA: null, internalResistanceMilliOhm: null, shortCircuitCurrentA: null })
})

it('says when bank and blocks disagree', () => {
  const ids = (given: Parameters<typeof aBattery>[0]) => sourcesPass(aVessel({ batteries: [aBattery(given)] })).findings.map(({ id, message }) => `${id} ${message}`)
  expect(ids({ tag: 'G1', blocks })).toEqual([])
  expect(ids({ tag: 'G1', blocks, nominalVoltageV: 24 })).toEqual(['SUP301 Battery G1: its blocks in series give 12\u00A0V, its nominal voltage is 24\u00A0V'])
  expect(ids({ tag: 'G1', blocks, capacityAh: 660 })).toEqual([])
  expect(ids({ tag: 'G1', blocks, capacityAh: 440 })).toEqual(['SUP302 Battery G1: 440\u00A0Ah recorded, its blocks give 660\u00A0Ah'])
})

it('adds no current in series, and all of it in parallel', () => {
  fc.assert(fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 20 }), fc.double({ min: 1, max: 5000, noNaN: true }), (seriesCount, parallelCount, blockCurrentA) => {
    const bank = batteryBank({ seriesCount, parallelCount, blockCurrentA, blockCapacityAh: 100, blockResistanceMilliOhm: 2 })
    expect(bank.bankCurrentA).toBe(batteryBank({ seriesCount: 1, parallelCount, blockCurrentA, blockCapacityAh: 100, blockResistanceMilliOhm: 2 }).bankCurrentA)
    expect(bank.bankCurrentA).toBeCloseTo(parallelCount * blockCurrentA, 6)
    expect(bank.bankResistanceMilliOhm * parallelCount).toBeCloseTo(2 * seriesCount, 9)
  }))
})
