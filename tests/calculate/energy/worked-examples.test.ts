/**
 * Handbook examples through the whole calculation: a sailing boat at anchor that uses 117.4 Ah a day, the bank that this
 * asks for, and the air for a bank of 200 Ah. The figures are sums done by hand, as in any handbook on boat electrics.
 */
import { describe, expect, it } from 'vitest'
import type { Battery } from '../../../src/model/vessel.js'
import { boat, duty, energyOf, house, hours, load, modeOf, outputOf } from './support.js'

const loads = [
  load('K1', { kind: 'autopilot computer', currentTypicalA: 3 }), load('P1', { kind: 'instrument', currentTypicalA: 1.2 }),
  load('E1', { kind: 'light', currentTypicalA: 2 }), load('E2', { kind: 'refrigerator', currentTypicalA: 4.5, currentMaxA: 9 }),
]
const duties = [duty('K1', hours(8, 18)), duty('P1'), duty('E1', hours(18, 23)), duty('E2', { dutyPercent: 45 })]
const withBattery = (battery: Partial<Battery>) => boat(loads, { duties, batteries: [{ ...house, ...battery }] })

describe('a day of 117.4 Ah', () => {
  const mode = modeOf(withBattery({}))
  it('is 30 for the autopilot, 28.8 for the instruments, 10 for the lights, 48.6 for the refrigerator', () => {
    expect(mode.loads.map(({ itemTag, charge }) => [itemTag, outputOf(charge).chargeAh])).toEqual([
      ['E2', expect.closeTo(48.6, 9)], ['K1', expect.closeTo(30, 9)], ['P1', expect.closeTo(28.8, 9)], ['E1', expect.closeTo(10, 9)],
    ])
  })
  it('adds up, load by load, to the sum for the battery', () => {
    expect(outputOf(mode.loads.at(-1)!.charge).totalAh).toBeCloseTo(117.4, 9)
    expect(mode.batteries).toHaveLength(1)
    expect(mode.batteries[0]!.loadAh).toBeCloseTo(117.4, 9)
    expect(mode.batteries[0]!.loadWh).toBeCloseTo(1408.8, 6)
  })
  it('draws 4.892 A on average, so 200 of 400 Ah last 40.9 h', () => {
    expect(outputOf(mode.batteries[0]!.endurance).enduranceH).toBeCloseTo(200 / (117.4 / 24), 6)
  })
  it.each([['flooded', 50, 469.6], ['lfp', 80, 293.5]] as const)('for two days asks of %s, %d %% usable, %d Ah', (chemistry, _, capacityAh) => {
    const [sizing] = energyOf(withBattery({ chemistry })).sizing
    expect(outputOf(sizing!.capacity)).toEqual({ capacityAh: expect.closeTo(capacityAh, 6) })
  })
})

describe('air for 200 Ah at 12 V', () => {
  it.each([['flooded', 1.2, 33.6], ['agm', 0.48, 13.44], ['gel', 0.48, 13.44]] as const)('%s: %d m³/h, %d cm²', (chemistry, airM3PerH, openingCm2) => {
    const [ventilation] = energyOf(withBattery({ chemistry, capacityAh: 200 })).ventilation
    expect(outputOf(ventilation!.outcome)).toEqual({ airM3PerH: expect.closeTo(airM3PerH, 9), openingCm2: expect.closeTo(openingCm2, 9) })
  })
  it('lithium iron phosphate asks for none', () => {
    expect(energyOf(withBattery({ chemistry: 'lfp' })).ventilation).toEqual([])
  })
  it('counts twelve cells at 24 V', () => {
    const [ventilation] = energyOf(withBattery({ nominalVoltageV: 24, capacityAh: 200 })).ventilation
    expect(outputOf(ventilation!.outcome).airM3PerH).toBeCloseTo(2.4, 9)
  })
})
