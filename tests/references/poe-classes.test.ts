import { describe, expect, it } from 'vitest'
import { networkPower } from '../../src/calculate/ethernet/network-power.calc.js'
import { powerClasses, powerClassOf, powerTypes } from '../../src/references/tables/poe-classes.js'
import { referenceTable } from '../support/reference-table.js'

const rows = referenceTable('poe-classes')

describe('classes of power over Ethernet (IEEE 802.3)', () => {
  it.each(rows)('class $class', row => {
    expect(powerClassOf(Number(row['class']))).toEqual({
      classNumber: Number(row['class']), type: Number(row['type']), sourcePowerW: Number(row['pse_W']), devicePowerW: Number(row['pd_W']), pairCount: Number(row['pairs']),
    })
    expect(powerTypes[powerClassOf(Number(row['class']))!.type].standard).toBe(row['standard'])
  })
  it('are those of the table and no other', () => {
    expect(powerClasses.map(({ classNumber }) => String(classNumber))).toEqual(rows.map(row => row['class']))
    expect([powerClassOf(null), powerClassOf(9)]).toEqual([null, null])
  })

  // By hand: current of the class through the resistance of the channel; what is left is what the device gets.
  it.each([[3, 0.35, 20, 1], [4, 0.6, 12.5, 1], [6, 0.6, 12.5, 2], [8, 0.8647, 12.5, 2]])('class %s agrees with itself: %s A through %s Ω', (classNumber, currentA, loopOhm, pairSets) => {
    const { sourcePowerW, devicePowerW, type, pairCount } = powerClassOf(classNumber)!
    expect(Math.abs(sourcePowerW - pairSets * currentA ** 2 * loopOhm - devicePowerW)).toBeLessThan(0.02)
    expect([100 * powerTypes[type].loopOhmPerM, pairCount / 2]).toEqual([loopOhm, pairSets])
  })

  // Published with the classes: lowest voltage at the device, and highest current of a pair set, by type.
  const byType = { 1: [37, 0.35], 2: [42.5, 0.6], 3: [42.5, 0.6], 4: [41.1, 0.96] } as const
  it.each(powerClasses)('class $classNumber stays within voltage and current of its type after 100 m', ({ type, devicePowerW, pairCount }) => {
    const { sourceMinV, loopOhmPerM } = powerTypes[type]
    const { deviceVoltageV, supplyCurrentA } = networkPower({ devicePowerW, portVoltageV: sourceMinV, channelLengthM: 100, loopResistanceOhmPerM: loopOhmPerM, pairSetCount: pairCount / 2 })
    const [lowestV, highestA] = byType[type]
    expect(deviceVoltageV).toBeGreaterThanOrEqual(lowestV - 1e-9)
    expect(supplyCurrentA / (pairCount / 2)).toBeLessThanOrEqual(highestA + 1e-9)
  })
})
