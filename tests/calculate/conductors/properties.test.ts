/** What must hold whatever the numbers are. */
import fc from 'fast-check'
import { describe, it } from 'vitest'
import { smallest } from '../../../src/calculate/conductors/conductor-size.pass.js'
import { conductorTemperature } from '../../../src/calculate/conductors/conductor-temperature.calc.js'
import { dropRule } from '../../../src/calculate/conductors/drop-by-basis.js'
import { longestRunByIsoConstant } from '../../../src/calculate/conductors/longest-run.calc.js'
import { largestLoadByIsoConstant } from '../../../src/calculate/conductors/largest-load.calc.js'
import { resistanceAt20COhmPerKm } from '../../../src/calculate/conductors/conductor.js'
import { bundleFactor } from '../../../src/references/basis/basis.js'
import { bases } from '../../../src/references/basis/bases.js'
import { enterAmpacityTable } from '../../../src/references/tables/ampacity-table.js'
import { awgSize, awgSizes } from '../../../src/references/tables/astm-b258-awg.js'
import { class5Rows } from '../../../src/references/tables/iec-60228-class-5.js'
import { isoAnnexA } from '../../../src/references/tables/iso-13297-annex-a.js'
import { mm2 } from '../../support/vessel-builder.js'

const basis = fc.constantFrom(bases.iso, bases.abyc)
const currentA = fc.double({ min: 0.01, max: 400, noNaN: true })
const lengthM = fc.double({ min: 0.1, max: 60, noNaN: true })
const anySize = fc.oneof(fc.constantFrom(...class5Rows.map(row => mm2(row.crossSectionMm2))), fc.constantFrom(...awgSizes.map(gauge => awgSize(gauge)!)), fc.double({ min: 0.75, max: 200, noNaN: true }).map(mm2))
const insulationC = fc.integer({ min: 60, max: 220 })
const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b))

describe('voltage drop', () => {
  it('doubles with the length and with the current', () => {
    fc.assert(fc.property(basis, currentA, lengthM, anySize, (rules, I, L, size) => {
      const { drop } = dropRule(rules)
      const once = drop(I, L, size).output.voltageDropV
      return near(drop(I, 2 * L, size).output.voltageDropV, 2 * once) && near(drop(2 * I, L, size).output.voltageDropV, 2 * once)
    }))
  })
  it('is never more in a larger conductor, by constant or by resistance', () => {
    fc.assert(fc.property(basis, currentA, lengthM, anySize, anySize, (rules, I, L, a, b) => {
      const [thin, thick] = a.crossSectionMm2 <= b.crossSectionMm2 ? [a, b] : [b, a]
      const { drop } = dropRule(rules)
      const byConstant = drop(I, L, thick).output.voltageDropV <= drop(I, L, thin).output.voltageDropV
      return byConstant && (thin.system !== thick.system || resistanceAt20COhmPerKm(thick, true)! <= resistanceAt20COhmPerKm(thin, true)!)
    }))
  })
  it('of the longest run and of the largest load is the allowed drop', () => {
    fc.assert(fc.property(currentA, lengthM, fc.double({ min: 0.05, max: 5, noNaN: true }), fc.constantFrom(...class5Rows), (I, L, allowedDropV, { crossSectionMm2 }) => {
      const { drop } = dropRule(bases.iso)
      const longest = longestRunByIsoConstant({ allowedDropV, crossSectionMm2, currentA: I }).conductorLengthM
      const largest = largestLoadByIsoConstant({ allowedDropV, crossSectionMm2, conductorLengthM: L, currentCarryingCapacityA: Infinity }).largestCurrentA
      return near(drop(I, longest, mm2(crossSectionMm2)).output.voltageDropV, allowedDropV) && near(drop(largest, L, mm2(crossSectionMm2)).output.voltageDropV, allowedDropV)
    }))
  })
})

describe('current-carrying capacity', () => {
  const table = (rules: typeof bases.iso, size: ReturnType<typeof mm2>, rating: number): number => {
    const entry = enterAmpacityTable(rules.ampacity, size, rating)
    return 'reason' in entry ? 0 : entry.currentA
  }
  it('never rises with more conductors in the bundle', () => {
    fc.assert(fc.property(basis, fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 60 }), (rules, count, more) =>
      bundleFactor(rules.bundle, count + more) <= bundleFactor(rules.bundle, count)))
  })
  it('never falls with a larger conductor or hotter insulation', () => {
    fc.assert(fc.property(basis, anySize, anySize, insulationC, fc.integer({ min: 0, max: 100 }), (rules, a, b, rating, hotter) => {
      const [thin, thick] = a.crossSectionMm2 <= b.crossSectionMm2 ? [a, b] : [b, a]
      return table(rules, thick, rating) >= table(rules, thin, rating) && table(rules, thin, rating + hotter) >= table(rules, thin, rating)
    }))
  })
  it('never rises in an engine space', () => {
    fc.assert(fc.property(basis, insulationC, (rules, rating) => {
      const entry = enterAmpacityTable(rules.ampacity, mm2(10), rating)
      return 'reason' in entry || (entry.column.engineSpace.factor ?? 0) <= 1
    }))
  })
})

it('a conductor is between ambient and the rating of its insulation while within its capacity', () => {
  fc.assert(fc.property(fc.integer({ min: -10, max: 60 }), fc.integer({ min: 60, max: 200 }), fc.double({ min: 0, max: 1, noNaN: true }), currentA, (ambientC, rating, share, Iz) => {
    const { conductorTemperatureC } = conductorTemperature({ ambientC, insulationC: rating, currentA: share * Iz, currentCarryingCapacityA: Iz })
    return conductorTemperatureC >= ambientC - 1e-9 && conductorTemperatureC <= rating + 1e-9
  }))
})

it('the size advised meets drop and capacity, and the next thinner one does not', () => {
  const sizes = isoAnnexA.rows.map(({ size }) => size)
  const allowedDrop = fc.double({ min: 0.1, max: 3, noNaN: true })
  fc.assert(fc.property(basis, currentA, lengthM, allowedDrop, insulationC, (rules, I, L, allowedDropV, rating) => {
    const needs = { designCurrentA: I, requiredCapacityA: I, conductorLengthM: L, allowedDropV, insulationC: rating, ambientFactor: 0.85, bundleFactor: 0.7 }
    const minimum = rules.minimumSize.inSheath
    const choice = smallest(rules, sizes, needs, minimum)
    const meets = (size: ReturnType<typeof mm2>): boolean => {
      const entry = enterAmpacityTable(rules.ampacity, size, rating)
      return size.crossSectionMm2 >= minimum.crossSectionMm2 && 'row' in entry && entry.currentA * 0.85 * 0.7 >= I
        && dropRule(rules).drop(I, L, size).output.voltageDropV <= allowedDropV * (1 + 1e-12)
    }
    const first = sizes.findIndex(meets)
    return choice === null ? first === -1 : sizes[first]?.designation === choice.designation
  }), { numRuns: 300 })
})
