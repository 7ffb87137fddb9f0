/** How long the banks carry what stays live: sums by hand from currents and capacities, no source but these. */
import { expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { aBattery, anEquipment } from '../../support/vessel-builder.js'
import { vesselAt } from '../dependency/support.js'
import { emergencyOf, twoBanks } from './support.js'

const bank = aBattery({ tag: 'G1', chemistry: 'lfp', capacityAh: 100, depthOfDischargePercent: 80, ratedTimeH: 20 })
const rowsOf = (vessel: Vessel) => emergencyOf(vessel).unattended
const hours = (vessel: Vessel, tag: string): number | null => {
  const row = rowsOf(vessel).find(({ batteryTag }) => batteryTag === tag)!
  return row.endurance.status === 'computed' ? row.endurance.output.enduranceH : null
}

it('counts what is awake, not the pump that runs for seconds and not the engine that stands', () => {
  // P19 alone, 1 A at most: 80 Ah / 1 A.
  const vessel = { ...twoBanks(), batteries: [bank, aBattery({ tag: 'G2' })] }
  expect(rowsOf(vessel).map(({ batteryTag, itemTags, unknownTags }) => [batteryTag, itemTags, unknownTags])).toEqual([['G1', ['P19'], []]])
  expect(hours(vessel, 'G1')).toBeCloseTo(80, 9)
})

it('takes the typical current before the largest, and names what has none', () => {
  const given = twoBanks()
  const others = given.equipment.filter(({ tag }) => tag !== 'P19')
  const alarm = (values: object) => ({ ...given, batteries: [bank, aBattery({ tag: 'G2' })], equipment: [...others, anEquipment({ tag: 'P19', kind: 'alarm panel', ...values })] })
  expect(hours(alarm({ currentTypicalA: 0.5, currentMaxA: 1 }), 'G1')).toBeCloseTo(160, 9)
  // 6 W / 12 V = 0.5 A
  expect(hours(alarm({ powerW: 6 }), 'G1')).toBeCloseTo(160, 9)
  const [row] = rowsOf(alarm({}))
  expect(row).toMatchObject({ itemTags: [], unknownTags: ['P19'], endurance: { status: 'not computed', reason: 'no current of what stays live is recorded' } })
})

it('is not assessed where the bank is not known', () => {
  expect(rowsOf(twoBanks())[0]!.endurance).toMatchObject({ status: 'not computed', reason: 'its chemistry is not recorded' })
})

it('of the sample: the house bank does not last a month', async () => {
  const sample = await vesselAt('sample-vessel')
  // 0.7 router + 0.05 monitor + 0.2 alarm board + 0.1 guard + 0.1 gas alarm = 1.15 A; 4 × 140 Ah × 80 % = 448 Ah
  const house = rowsOf(sample).find(({ batteryTag }) => batteryTag === 'G1')!
  expect([...house.itemTags].toSorted()).toEqual(['B43', 'K10', 'K3', 'P18', 'P19'])
  expect(hours(sample, 'G1')).toBeCloseTo(448 / 1.15, 6)
  // The starboard lever, 0.3 A; 2 × 105 Ah × 50 % = 105 Ah
  expect(hours(sample, 'G2')).toBeCloseTo(105 / 0.3, 6)
})
