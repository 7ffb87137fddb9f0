/** Tables and sums of this domain against values from outside; each says where they were read. */
import { describe, expect, it } from 'vitest'
import { protectionRating } from '../../../src/calculate/conductors/protection-rating.calc.js'
import { againstBatteryClass } from '../../../src/calculate/protective-devices/capability.js'
import { distanceLimit } from '../../../src/calculate/protective-devices/distance.js'
import { methods } from '../../../src/calculate/protective-devices/index.js'
import { compare } from '../../../src/calculate/compare.js'
import { batteryBank } from '../../../src/calculate/sources/battery-bank.calc.js'
import { bases } from '../../../src/references/basis/bases.js'
import { batteryClass, batteryClasses, largeBank, shoreClass } from '../../../src/references/tables/interrupting-capacity.js'
import {
  largestRatingA, type ProtectiveDeviceKey, protectiveDevices, smallestRatingA, typicalCapacityA, typicalVoltageRatingV,
} from '../../../src/references/tables/protective-devices.js'
import { aBattery, aCircuit, aProtection, aVessel } from '../../support/vessel-builder.js'
import { referenceTable } from '../../support/reference-table.js'

describe('each calculation gives the values beside its formula', () => {
  it.each(methods.flatMap(method => method.checks.map(check => ({ id: method.id, method, check }))))('$id: $check.place', ({ method, check }) => {
    expect(method.notApplicable(check.input)).toBeNull()
    const output = method.compute(check.input)
    for (const [name, expected] of Object.entries(check.expected)) expect(Math.abs(output[name] - (expected as number)), name).toBeLessThanOrEqual(check.tolerance)
  })
  it.each(methods.map(method => ({ id: method.id, method })))('$id says in its formula what its symbols are', ({ method }) => {
    for (const symbol of Object.values<string>(method.symbols)) expect(method.formula).toContain(symbol)
  })
})

// Reference and table both from memory: this confirms that the program says what was meant.
describe('what a type of fuse breaks', () => {
  const names: Readonly<Record<string, ProtectiveDeviceKey>> = {
    'blade mini': 'mini blade fuse', 'blade standard': 'blade fuse', 'blade maxi': 'maxi blade fuse', 'bolt-in small': 'bolt-in fuse, small',
    'bolt-in large': 'bolt-in fuse, large', 'battery terminal': 'terminal fuse', 'flat link': 'flat-link fuse', 'class T': 'class T fuse',
  }
  it.each(referenceTable('protection-fuse-ratings'))('$type $rating_A A', row => {
    const device = protectiveDevices[names[row['type']!]!]
    const voltageV = Number.parseInt(row['voltage_V']!)
    expect(typicalVoltageRatingV(device)).toBe(voltageV)
    // "1000 A", or "10000 A @14V / 5000 A @32V / 2000 A @58V"
    const steps = [...row['interrupt_rating']!.matchAll(/(\d+) A(?: @(\d+)V)?/g)].map(([, capacity, upTo]) => [Number(upTo ?? voltageV), Number(capacity)] as const)
    expect(steps.length).toBeGreaterThan(0)
    for (const [upToV, capacityA] of steps) expect(typicalCapacityA(device, upToV)).toBe(capacityA)
    expect(typicalCapacityA(device, voltageV + 0.1)).toBeNull()
  })
  it('takes the step of the next higher voltage', () => {
    expect(typicalCapacityA(protectiveDevices['terminal fuse'], 12)).toBe(10000)
    expect(typicalCapacityA(protectiveDevices['terminal fuse'], 24)).toBe(5000)
    expect(typicalCapacityA(protectiveDevices['terminal fuse'], 48)).toBe(2000)
    expect(typicalCapacityA(protectiveDevices['circuit breaker'], 12)).toBeNull()
  })
})

// ABYC E-11 tables V.A and V.B in a published reprint; the rows for 32 V and for 120/240 V from memory.
describe('classes of interrupting capacity', () => {
  const rows = referenceTable('protection-aic')
  const bounded = rows.filter(row => row['battery_cca_to'] !== '')
  it.each(bounded)('$system from $battery_cca_from to $battery_cca_to', row => {
    const voltages = row['system'] === '32 V DC' ? [32] : [12, 24]
    for (const voltageV of voltages) {
      for (const crankingA of [Number(row['battery_cca_from']), Number(row['battery_cca_to'])]) {
        const found = batteryClass(voltageV, crankingA)
        expect([found?.mainA, found?.branchA], `${voltageV} V ${crankingA} A`).toEqual([Number(row['main_aic_A']), Number(row['branch_aic_A'])])
      }
    }
  })
  it('has as many rows as the table, and none above 2200 A', () => {
    expect(batteryClasses.flatMap(({ classes }) => classes)).toHaveLength(bounded.length)
    expect(batteryClass(12, 2201)).toBeNull()
    expect(batteryClass(48, 100)).toBeNull()
  })
  it.each([['AC shore 120 V 30 A', 120, 30], ['AC shore 120 V 50 A', 120, 50], ['AC shore 120/240 V 50 A', 240, 50]] as const)('%s', (system, voltageV, ratedA) => {
    const row = rows.find(each => each['system'] === system)!
    expect([shoreClass(voltageV, ratedA)?.mainA, shoreClass(voltageV, ratedA)?.branchA]).toEqual([Number(row['main_aic_A']), Number(row['branch_aic_A'])])
    expect(shoreClass(voltageV, 100)).toBeNull()
    expect(shoreClass(230, 16)).toBeNull()
  })

  // A maker's page that quotes ABYC E-11: above 2200 A cold cranking or 500 Ah the bank's own rating, or 20 kA at 125 V above 10 kA.
  const large = (shortCircuitCurrentA: number | null) => aBattery({ tag: 'G1', chemistry: 'lfp', capacityAh: 501, shortCircuitCurrentA })
  it.each([
    [9000, 9000, 32, true], [9000, 8999, 32, false], [10000, 10000, 32, true], [10001, 20000, 125, true], [10001, 19999, 125, false], [10001, 20000, 124, false],
  ])('bank rated %d A, device that breaks %d A at %d V: %s', (bankCurrentA, deviceA, voltageV, within) => {
    expect(againstBatteryClass(large(bankCurrentA), true, deviceA, voltageV)).toMatchObject({ within })
  })
  it('needs the rating of a large bank, and leaves its branch devices to the current itself', () => {
    expect(againstBatteryClass(large(null), true, 20000, 125)).toMatchObject({ reason: expect.stringContaining('is not recorded') })
    expect(againstBatteryClass(large(15000), false, 100, 32)).toBeNull()
    expect([largeBank.aboveCapacityAh, largeBank.aboveCrankingA]).toEqual([500, 2200])
    expect(againstBatteryClass(aBattery({ tag: 'G1', capacityAh: 500, crankingCurrentA: 2200 }), true, 5000, 32)).toMatchObject({ within: true, limit: { value: 5000 } })
  })
})

/** Worked rows gathered from the sources before this was written. */
describe('worked values', () => {
  it('12 V, 14 AWG of 105 °C outside engine spaces, 35 A: 52.5 A by 33 CFR 183.455(c)(1), a 40 A blade fuse, 35 A where the capacity binds', () => {
    const { largestRatedCurrentA } = protectionRating({ currentCarryingCapacityA: 35, permittedFactor: bases.abyc.protection.permitted!.shareOfCapacity })
    expect(largestRatedCurrentA).toBe(52.5)
    expect(largestRatingA(protectiveDevices['blade fuse'], largestRatedCurrentA)).toBe(40)
    expect(largestRatingA(protectiveDevices['blade fuse'], 35)).toBe(35)
  })
  it('120 V, 14 AWG in an engine space with three conductors, 20.825 A: 25 A by 33 CFR 183.455(c)(2), 20 A where the capacity binds', () => {
    const { largestRatedCurrentA } = protectionRating({ currentCarryingCapacityA: 20.825, permittedFactor: 1.5 })
    const next = smallestRatingA(protectiveDevices['circuit breaker'], 20.825)!
    expect(next).toBe(25)
    expect(next).toBeLessThanOrEqual(largestRatedCurrentA)
    expect(largestRatingA(protectiveDevices['circuit breaker'], 20.825)).toBe(20)
  })
  it('six 6 V batteries of 2400 A as three strings of two: 7200 A, above the class of 5 kA (a published guide)', () => {
    const { bankCurrentA } = batteryBank({ seriesCount: 2, parallelCount: 3, blockCurrentA: 2400, blockCapacityAh: 100, blockResistanceMilliOhm: 2 })
    expect(bankCurrentA).toBe(7200)
    expect(bankCurrentA).toBeGreaterThan(batteryClass(12, 2200)!.mainA)
  })
  it('two batteries of 700 A cold cranking in parallel: 1400 A, main 5000 A and branch 2500 A', () => {
    const { bankCurrentA } = batteryBank({ seriesCount: 1, parallelCount: 2, blockCurrentA: 700, blockCapacityAh: 100, blockResistanceMilliOhm: 2 })
    expect(batteryClass(12, bankCurrentA)).toMatchObject({ mainA: 5000, branchA: 2500 })
  })
  it('9 in of conductor in a sheath: fails 7 in, passes 40 in (33 CFR 183.455(b)); 72 in at a battery terminal (ABYC E-11)', () => {
    const vessel = aVessel({ basis: 'abyc', batteries: [aBattery({ tag: 'G1' })] })
    const limit = (fedFromTag: string, enclosed: boolean | null) =>
      distanceLimit(vessel, bases.abyc, aCircuit({ tag: 'F1', fedFromTag, protection: aProtection('blade fuse', 5, { enclosed }) }))!
    const nineInchesMm = 9 * 25.4
    expect(compare('distanceMm', nineInchesMm, limit('X1', null)).within).toBe(false)
    expect(compare('distanceMm', nineInchesMm, limit('X1', true)).within).toBe(true)
    for (const [value, inches] of [[limit('X1', null).value, 7], [limit('X1', true).value, 40], [limit('G1', null).value, 72]] as const) expect(value).toBeCloseTo(inches * 25.4, 9)
  })
})
