/** Worked examples of published guides and tables, each asserted from its inputs to its answer. */
import { evaluate, unit } from 'mathjs'
import { describe, expect, it, test } from 'vitest'
import { conductorResistance } from '../../../src/calculate/conductors/conductor-resistance.calc.js'
import { smallest } from '../../../src/calculate/conductors/conductor-size.pass.js'
import { resistanceAt20COhmPerKm } from '../../../src/calculate/conductors/conductor.js'
import { currentCarryingCapacity } from '../../../src/calculate/conductors/current-carrying-capacity.calc.js'
import { dropRule } from '../../../src/calculate/conductors/drop-by-basis.js'
import { longestRunByAbycConstant, longestRunByIsoConstant } from '../../../src/calculate/conductors/longest-run.calc.js'
import { minimumAreaByAbycConstant, minimumCrossSectionByIsoConstant } from '../../../src/calculate/conductors/minimum-cross-section.calc.js'
import { protectionRating } from '../../../src/calculate/conductors/protection-rating.calc.js'
import { voltageDropByAbycConstant } from '../../../src/calculate/conductors/voltage-drop-by-abyc-constant.calc.js'
import { voltageDropByIsoConstant } from '../../../src/calculate/conductors/voltage-drop-by-iso-constant.calc.js'
import { voltageDropByResistance } from '../../../src/calculate/conductors/voltage-drop-by-resistance.calc.js'
import { voltageDropPercent } from '../../../src/calculate/conductors/voltage-drop-percent.calc.js'
import { bundleFactor } from '../../../src/references/basis/basis.js'
import { bases } from '../../../src/references/basis/bases.js'
import { enterAmpacityTable } from '../../../src/references/tables/ampacity-table.js'
import { cfrTable5 } from '../../../src/references/tables/cfr-33-183-table-5.js'
import { isoAnnexA } from '../../../src/references/tables/iso-13297-annex-a.js'
import { largestRatingA, protectiveDevices, smallestRatingA } from '../../../src/references/tables/protective-devices.js'
import type { ConductorSize } from '../../../src/units/conductor-size.js'
import { cmilFromMm2, ftFromM } from '../../../src/units/convert.js'
import { referenceTable } from '../../support/reference-table.js'
import { awg, mm2 } from '../../support/vessel-builder.js'

const { iso, abyc } = bases
const gauges = cfrTable5.rows.map(({ size }) => size)
const metric = isoAnnexA.rows.map(({ size }) => size)
const needs = { designCurrentA: 0, requiredCapacityA: 0, conductorLengthM: 0, allowedDropV: 1, insulationC: 105, ambientFactor: 1, bundleFactor: 1 }
const thin = awg('18')

describe('voltage drop and size', () => {
  const guide = { ...needs, designCurrentA: 10, requiredCapacityA: 10, conductorLengthM: 21 * 0.3048 }

  test('published distributor’s guide: 12 V, 3 %, 10 A, 11 ft + 10 ft needs 6270.8 cmil, so 12 AWG', () => {
    expect(minimumAreaByAbycConstant({ currentA: 10, conductorLengthFt: 21, allowedDropV: 0.36 }).minimumAreaCmil).toBeCloseTo(6270.8, 1)
    expect(smallest(abyc, gauges, { ...guide, allowedDropV: 0.36 }, thin)).toMatchObject({ designation: '12', governedBy: 'voltage drop' })
  })
  test('published, same guide: 12 of the smaller SAE sizes is too thin, 10 SAE is not', () => {
    const sae = new Map(referenceTable('conductors-awg').map(row => [row['awg'], Number(row['published_nominal_cmil_sae'])]))
    const { minimumAreaCmil } = minimumAreaByAbycConstant({ currentA: 10, conductorLengthFt: 21, allowedDropV: 0.36 })
    expect(sae.get('12')).toBeLessThan(minimumAreaCmil)
    expect(sae.get('10')).toBeGreaterThan(minimumAreaCmil)
  })
  test('published, same guide: at 10 % it is 1881.3 cmil, so 16 AWG', () => {
    expect(minimumAreaByAbycConstant({ currentA: 10, conductorLengthFt: 21, allowedDropV: 1.2 }).minimumAreaCmil).toBeCloseTo(1881.3, 1)
    expect(smallest(abyc, gauges, { ...guide, allowedDropV: 1.2 }, thin)).toMatchObject({ designation: '16', governedBy: 'voltage drop' })
  })
  test('published by a boat owner: 1.6 A, 22 m in all, 1.5 mm² loses 0.38 V by the ISO constant (0.3849 by formula)', () => {
    expect(voltageDropByIsoConstant({ currentA: 1.6, conductorLengthM: 22, crossSectionMm2: 1.5 }).voltageDropV).toBeCloseTo(0.3849, 4)
  })
  test('by hand: the same by ideal copper at 20 °C loses 0.4046 V, by class 5 tinned 0.4822 V', () => {
    const same = { currentA: 1.6, conductorLengthM: 22, conductorTemperatureC: 20 }
    expect(voltageDropByResistance({ ...same, resistanceAt20COhmPerKm: 1000 / 58 / 1.5 }).voltageDropV).toBeCloseTo(0.4046, 4)
    expect(voltageDropByResistance({ ...same, resistanceAt20COhmPerKm: resistanceAt20COhmPerKm(mm2(1.5), true)! }).voltageDropV).toBeCloseTo(0.4822, 4)
  })
  test('by hand: 20 A, 10 m one way, 10 mm² class 5 plain loses 0.764 V, 6.37 % of 12 V', () => {
    const { voltageDropV } = voltageDropByResistance({
      currentA: 20, conductorLengthM: 20, resistanceAt20COhmPerKm: resistanceAt20COhmPerKm(mm2(10), false)!, conductorTemperatureC: 20,
    })
    expect(voltageDropV).toBeCloseTo(0.764, 6)
    expect(voltageDropPercent({ voltageDropV, nominalVoltageV: 12 }).voltageDropPercent).toBeCloseTo(6.37, 2)
  })
  test('by hand: 6.53 kcmil, 10 A, 40 ft in all, K = 10.75 loses 0.6585 V', () => {
    expect(voltageDropByAbycConstant({ currentA: 10, conductorLengthFt: 40, conductorAreaCmil: 6530 }).voltageDropV).toBeCloseTo(0.6585, 4)
  })
  test('by hand: 16 AWG warmed from 20 °C to 50 °C has 14.728 Ω/km', () => {
    expect(conductorResistance({ resistanceAt20COhmPerKm: resistanceAt20COhmPerKm(awg('16'), null)!, conductorTemperatureC: 50 }).resistanceOhmPerKm).toBeCloseTo(14.728, 3)
  })
  test('by hand: 12 V, 3 %, 5 A, 12 m one way needs 5.467 mm² by the ISO constant, 5.747 mm² by copper at 20 °C, so 6 mm² either way', () => {
    const byIso = minimumCrossSectionByIsoConstant({ currentA: 5, conductorLengthM: 24, allowedDropV: 0.36 }).minimumCrossSectionMm2
    expect(byIso).toBeCloseTo(5.467, 3)
    expect(evaluate('5 * 24 / 58 / 0.36')).toBeCloseTo(5.747, 3)
    expect(smallest(iso, metric, { ...needs, designCurrentA: 5, requiredCapacityA: 5, conductorLengthM: 24, allowedDropV: 0.36 }, mm2(0.75)))
      .toMatchObject({ designation: '6', governedBy: 'voltage drop' })
  })
  test('derived: the two constants disagree by 8.97 % for the same conductor', () => {
    const drop = (basis: typeof iso) => dropRule(basis).drop(10, 12, mm2(2.5)).output.voltageDropV
    expect(100 * (drop(abyc) / drop(iso) - 1)).toBeCloseTo(8.97, 2)
  })
})

describe('a published chart of gauge sizes for 3 % at 12 V', () => {
  const cells = referenceTable('conductors-vdrop-chart-12v-3pct')
  const chosen = (feet: number, currentA: number): ConductorSize => {
    const { minimumAreaCmil } = minimumAreaByAbycConstant({ currentA, conductorLengthFt: feet, allowedDropV: 0.36 })
    return gauges.filter(({ designation }) => designation !== '3').find(size => cmilFromMm2(size.crossSectionMm2) >= minimumAreaCmil)!
  }
  it('needs the area of its formula in each of the 148 cells', () => {
    expect(cells.length).toBe(148)
    for (const cell of cells) {
      const input = { currentA: Number(cell['amps']), conductorLengthFt: Number(cell['round_trip_ft']), allowedDropV: 0.36 }
      expect(minimumAreaByAbycConstant(input).minimumAreaCmil).toBeCloseTo(Number(cell['formula_cmil_required']), 0)
    }
  })
  it('has the size that we choose, but for cells within 4 % of a size boundary (the chart rounds)', () => {
    const differing = cells.filter(cell => chosen(Number(cell['round_trip_ft']), Number(cell['amps'])).designation !== cell['published_chart_awg'])
    expect(differing.length).toBeLessThanOrEqual(10)
    for (const cell of differing) {
      const required = Number(cell['formula_cmil_required'])
      const nearest = Math.min(...gauges.map(({ crossSectionMm2 }) => Math.abs(cmilFromMm2(crossSectionMm2) / required - 1)))
      expect(nearest).toBeLessThan(0.04)
    }
  })
})

describe('the same sums with units, by mathjs', () => {
  it('gives the drop by both constants', () => {
    const byIso = unit(Number(evaluate('0.0164 * 7.5 * 2 * 9.4 / 4')), 'V')
    expect(dropRule(iso).drop(7.5, 18.8, mm2(4)).output.voltageDropV).toBeCloseTo(byIso.toNumber('V'), 9)
    // 1 cmil is the area of a circle of 0.001 in
    const byAbyc = evaluate('10.75 ohm * 7.5 A * (18.8 m / (1 ft)) / (4 mm^2 / (pi/4 * (0.001 in)^2))')
    expect(dropRule(abyc).drop(7.5, 18.8, mm2(4)).output.voltageDropV).toBeCloseTo(byAbyc.toNumber('V'), 9)
  })
  it('gives the longest run of a cable', () => {
    expect(longestRunByIsoConstant({ allowedDropV: 0.36, crossSectionMm2: 6, currentA: 5 }).oneWayLengthM)
      .toBeCloseTo(evaluate('0.36 V * 6 mm^2 / (0.0164 ohm mm^2/m * 5 A) / 2').toNumber('m'), 9)
    const awg12 = cmilFromMm2(awg('12').crossSectionMm2)
    expect(longestRunByAbycConstant({ allowedDropV: 0.36, conductorAreaCmil: awg12, currentA: 10 }).oneWayLengthFt)
      .toBeCloseTo(Number(evaluate('0.36 * a / (10.75 * 10) / 2', { a: awg12 })), 9)
    expect(ftFromM(1)).toBeCloseTo(unit('1 m').toNumber('ft'), 12)
  })
})

describe('allowable current', () => {
  const allowed = (size: ConductorSize, insulationC: number, inside: boolean, count: number, basis = abyc): number => {
    const entry = enterAmpacityTable(basis.ampacity, size, insulationC)
    if ('reason' in entry) throw new Error(entry.reason)
    return currentCarryingCapacity({
      tableCurrentA: entry.currentA, parallelCount: 1, ambientFactor: inside ? entry.column.engineSpace.factor! : 1, bundleFactor: bundleFactor(basis.bundle, count),
    }).currentCarryingCapacityA
  }
  it.each([
    ['33 CFR 183.425 table 5', '14', 105, false, 2, 35],
    ['published boat-cable table, printed 29.8', '14', 105, true, 2, 29.75],
    ['published boat-cable table', '10', 105, true, 5, 30.6],
    ['by hand: 40 · 0.75', '10', 75, true, 2, 30],
    ['published boat-cable table, printed 189.1', '4/0', 105, true, 12, 189.125],
    ['by hand: 80 · 0.58', '6', 60, true, 2, 46.4],
    ['by hand: 370 · 1.00', '2/0', 200, true, 2, 370],
    ['33 CFR 183.425 table 5 with note 2', '12', 105, false, 10, 22.5],
  ] as const)('%s: %s AWG, %d °C', (_origin, gauge, insulationC, inside, count, expected) => {
    expect(allowed(awg(gauge), insulationC, inside, count)).toBeCloseTo(expected, 9)
  })
  it('from memory: 16 mm² of 105 °C in an engine space 111.8 A, 6 mm² of 85 to 90 °C in a bundle of 8 30.0 A', () => {
    expect(allowed(mm2(16), 105, true, 2, iso)).toBeCloseTo(111.8, 9)
    expect(allowed(mm2(6), 90, false, 8, iso)).toBeCloseTo(30, 9)
  })
  test('by hand: the smallest gauge for 52 A of 105 °C in an engine space is 8 AWG (68 A; 10 AWG has 51.0 A)', () => {
    const choice = smallest(abyc, gauges, { ...needs, designCurrentA: 52, requiredCapacityA: 52, conductorLengthM: 0.1, ambientFactor: 0.85 }, thin)
    expect(choice).toMatchObject({ designation: '8', capacityA: 68, governedBy: 'current-carrying capacity' })
    expect(allowed(awg('10'), 105, true, 2)).toBeCloseTo(51, 9)
  })
})

describe('rating of the protective device', () => {
  test('33 CFR 183.455(c)(1): 12 V, 14 AWG, 35 A permits 52.5 A; the largest blade fuse is 40 A, strictly 35 A', () => {
    const { largestRatedCurrentA } = protectionRating({ currentCarryingCapacityA: 35, permittedFactor: 1.5 })
    expect(largestRatedCurrentA).toBeCloseTo(52.5, 9)
    expect(largestRatingA(protectiveDevices['blade fuse'], largestRatedCurrentA)).toBe(40)
    expect(largestRatingA(protectiveDevices['blade fuse'], 35)).toBe(35)
  })
  test('33 CFR 183.455(c)(2): from 50 V, 20.825 A: the next standard is 25 A, below the 31.2 A of 150 %; strictly 20 A', () => {
    expect(smallestRatingA(protectiveDevices['circuit breaker'], 20.825)).toBe(25)
    expect(largestRatingA(protectiveDevices['circuit breaker'], 20.825)).toBe(20)
    expect(protectionRating({ currentCarryingCapacityA: 20.825, permittedFactor: 1.5 }).largestRatedCurrentA).toBeGreaterThan(25)
  })
})
