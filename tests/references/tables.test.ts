/** Every table held row by row against the values in tests/reference, whose README says where each was read. */
import { describe, expect, it, test } from 'vitest'
import { bundleFactor } from '../../src/references/basis/basis.js'
import { bases } from '../../src/references/basis/bases.js'
import { type AmpacityTable, enterAmpacityTable } from '../../src/references/tables/ampacity-table.js'
import { awgNumber, awgSize, awgSizes } from '../../src/references/tables/astm-b258-awg.js'
import { cfrTable5 } from '../../src/references/tables/cfr-33-183-table-5.js'
import { class5Row, class5Rows } from '../../src/references/tables/iec-60228-class-5.js'
import { resistivityAt20COhmMm2PerM } from '../../src/references/tables/iec-60028-copper.js'
import { isoAnnexA } from '../../src/references/tables/iso-13297-annex-a.js'
import { conduitFillLimit } from '../../src/references/tables/nec-conduit-fill.js'
import { largestRatingA, type ProtectiveDeviceKey, protectiveDevice, protectiveDeviceKeys, protectiveDevices, smallestRatingA } from '../../src/references/tables/protective-devices.js'
import { cmilFromMm2 } from '../../src/units/convert.js'
import { resistanceAt20COhmPerKm } from '../../src/calculate/conductors/conductor.js'
import { awg, mm2 } from '../support/vessel-builder.js'
import { referenceTable } from '../support/reference-table.js'

const number = (text: string | undefined): number => Number(text)

describe('gauge sizes (ASTM B258)', () => {
  const rows = referenceTable('conductors-awg')
  it('are the sizes of the table, in order', () => {
    expect(awgSizes).toEqual(rows.map(row => row['awg']))
  })
  it.each(rows)('$awg AWG', row => {
    const size = awg(row['awg']!)
    expect(awgNumber(row['awg']!)).toBe(number(row['n']))
    expect(size.crossSectionMm2).toBeCloseTo(number(row['area_mm2']), 4)
    expect(cmilFromMm2(size.crossSectionMm2)).toBeCloseTo(number(row['area_cmil']), 0)
    expect(resistanceAt20COhmPerKm(size, null)).toBeCloseTo(number(row['r20_ohm_per_km']), 4)
    // Published nominal areas are rounded: within 2.5 %
    const nominalCmil = number(row['published_nominal_cmil_awg'])
    if (nominalCmil > 0) expect(Math.abs(cmilFromMm2(size.crossSectionMm2) / nominalCmil - 1)).toBeLessThan(0.025)
  })
  it('4/0 is exactly 211 600 cmil, the defining pair of the standard', () => {
    expect(cmilFromMm2(awg('4/0').crossSectionMm2)).toBeCloseTo(211600, 6)
  })
  it('knows no other designation', () => {
    for (const other of ['25', '5/0', '-1', '1.5', '', '0/1', '00000']) expect(awgSize(other)).toBeNull()
  })
})

describe('class 5 conductors (IEC 60228)', () => {
  it('has the rows of the table, in order', () => {
    const rows = referenceTable('conductors-iec60228-class5').map(row => ({
      crossSectionMm2: number(row['mm2']), plainOhmPerKm: number(row['plain_max_ohm_per_km_20C']), tinnedOhmPerKm: number(row['tinned_max_ohm_per_km_20C']),
    }))
    expect(class5Rows).toEqual(rows)
  })
  it('is above the resistance of the ideal area in every row, as a highest value must be', () => {
    for (const row of class5Rows) expect(row.plainOhmPerKm).toBeGreaterThan((1000 * resistivityAt20COhmMm2PerM) / row.crossSectionMm2)
  })
  it('gives the next thinner size, and the tinned value where tinning is not recorded', () => {
    expect(class5Row(2)?.crossSectionMm2).toBe(1.5)
    expect(class5Row(0.4)).toBeNull()
    expect(resistanceAt20COhmPerKm(mm2(2.5), null)).toBe(8.21)
    expect(resistanceAt20COhmPerKm(mm2(2.5), true)).toBe(8.21)
    expect(resistanceAt20COhmPerKm(mm2(2.5), false)).toBe(7.98)
  })
})

const currentsOf = (table: AmpacityTable) => table.rows.map(({ size, currentsA }) => [size.designation, ...currentsA])

describe('33 CFR 183.425 table 5', () => {
  const columnsC = [60, 75, 80, 90, 105, 125, 200]
  it('has every current of the law', () => {
    expect(cfrTable5.columns.map(({ fromC }) => fromC)).toEqual(columnsC)
    expect(currentsOf(cfrTable5)).toEqual(referenceTable('ampacity-33cfr183-table5').map(row => [row['awg'], ...columnsC.map(column => number(row[`A_at_${column}C`]))]))
  })
  it('has the engine-space factors of note 1', () => {
    const factors = referenceTable('ampacity-33cfr183-engine-space-factors').map(row => [number(row['insulation_C']), number(row['factor_50C_ambient'])])
    expect(cfrTable5.columns.map(({ fromC, engineSpace }) => [fromC, engineSpace.factor])).toEqual(factors)
  })
  it.each(referenceTable('ampacity-33cfr183-bundling-factors'))('has the bundle factor of note 2 for $current_carrying_conductors', row => {
    for (const count of ends(row['current_carrying_conductors']!)) expect(bundleFactor(bases.abyc.bundle, count)).toBe(number(row['factor']))
  })
  it.each(referenceTable('ampacity-105C-published'))('gives the published boat-cable current: $awg AWG $engine_space $bundle', row => {
    const current = allowed(row['awg']!, 105, row['engine_space'] === 'inside', ends(row['bundle']!)[0]!)
    // Printed with one digit after the point
    expect(Math.abs(current - number(row['published_A']))).toBeLessThan(0.0501)
  })
  it('gives all 1050 products of the derived table', () => {
    const rows = referenceTable('ampacity-awg-derived-all')
    expect(rows.length).toBe(1050)
    for (const row of rows) {
      const current = allowed(row['awg']!, number(row['insulation_C']), row['engine_space'] === 'inside', ends(row['bundle']!)[0]!)
      expect(Math.abs(current - number(row['amps']))).toBeLessThanOrEqual(0.0051)
    }
  })
  function allowed(designation: string, insulationC: number, inside: boolean, count: number): number {
    const entry = enterAmpacityTable(cfrTable5, awg(designation), insulationC)
    if ('reason' in entry) throw new Error(entry.reason)
    return entry.currentA * (inside ? entry.column.engineSpace.factor! : 1) * bundleFactor(bases.abyc.bundle, count)
  }
})

describe('ISO 13297 annex A (reference and table both from memory)', () => {
  it('has every current', () => {
    const columns = ['A_at_60C', 'A_at_70C', 'A_at_85_90C', 'A_at_105C', 'A_at_125C', 'A_at_200C']
    expect(currentsOf(isoAnnexA)).toEqual(referenceTable('ampacity-iso-mm2').map(row => [row['mm2'], ...columns.map(column => number(row[column]))]))
  })
  it('has the engine-space and bundle factors', () => {
    const rows = referenceTable('ampacity-iso-factors')
    const engine = rows.filter(({ kind }) => kind === 'engine_space_60C_ambient').map(row => [number(row['key']!.split('-')[0]), number(row['factor'])])
    expect(isoAnnexA.columns.filter(({ engineSpace }) => engineSpace.factor !== null).map(({ fromC, engineSpace }) => [fromC, engineSpace.factor])).toEqual(engine)
    for (const row of rows.filter(({ kind }) => kind === 'bundle')) {
      for (const count of ends(row['key']!)) expect(bundleFactor(bases.iso.bundle, count)).toBe(number(row['factor']))
    }
  })
  it('agrees with the American law within one size, for 105 °C', () => {
    for (const { size, currentsA } of isoAnnexA.rows) {
      const thicker = cfrTable5.rows.find(row => row.size.crossSectionMm2 >= 1.27 * size.crossSectionMm2)
      if (thicker !== undefined) expect(currentsA[3]).toBeLessThanOrEqual(thicker.currentsA[4]!)
    }
  })
})

/** First and last number of "4-6"; "25+" also stands for many more. */
function ends(range: string): readonly number[] {
  if (range.endsWith('+')) return [Number.parseInt(range), 400]
  return range.split('-').map(Number)
}

describe('entering a table', () => {
  const entered = (table: AmpacityTable, size = mm2(2.5), insulationC = 105) => {
    const entry = enterAmpacityTable(table, size, insulationC)
    return 'reason' in entry ? entry.reason : [entry.row.size.designation, entry.column.fromC, entry.currentA]
  }
  it('takes the thinner row, across the two systems', () => {
    expect(entered(cfrTable5, mm2(2.5))).toEqual(['14', 105, 35])
    expect(entered(cfrTable5, mm2(50))).toEqual(['1', 105, 245])
    expect(entered(cfrTable5, mm2(240))).toEqual(['4/0', 105, 445])
    expect(entered(isoAnnexA, awg('14'))).toEqual(['1.5', 105, 25])
    expect(entered(isoAnnexA, awg('4/0'))).toEqual(['95', 105, 390])
    expect(entered(isoAnnexA, mm2(2.4))).toEqual(['1.5', 105, 25])
  })
  it('takes the cooler column', () => {
    expect(entered(isoAnnexA, mm2(2.5), 104)).toEqual(['2.5', 85, 30])
    expect(entered(isoAnnexA, mm2(2.5), 90)).toEqual(['2.5', 85, 30])
    expect(entered(cfrTable5, awg('14'), 89)).toEqual(['14', 80, 25])
    expect(entered(cfrTable5, awg('14'), 250)).toEqual(['14', 200, 45])
  })
  it('says why there is no figure', () => {
    expect(entered(cfrTable5, mm2(0.75))).toBe('the conductor is thinner than the smallest size in table 5 of 33 CFR 183.425')
    expect(entered(isoAnnexA, mm2(2.5), 55)).toBe('the insulation is rated below the lowest column of table A.1 of ISO 13297, 60 °C')
  })
})

describe('protective devices', () => {
  const names: Readonly<Record<string, ProtectiveDeviceKey>> = {
    'blade mini': 'mini blade fuse', 'blade standard': 'blade fuse', 'blade maxi': 'maxi blade fuse', 'bolt-in small': 'bolt-in fuse, small',
    'bolt-in large': 'bolt-in fuse, large', 'battery terminal': 'terminal fuse', 'flat link': 'flat-link fuse', 'class T': 'class T fuse',
  }
  it.each(Object.entries(names))('%s has the ratings of the list', (type, key) => {
    expect(protectiveDevices[key].ratingsA).toEqual(referenceTable('protection-fuse-ratings').filter(row => row['type'] === type).map(row => number(row['rating_A'])))
  })
  it('breakers come in the sizes in common use (common practice, no source)', () => {
    for (const rating of [5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100]) expect(protectiveDevices['circuit breaker'].ratingsA).toContain(rating)
  })
  it('all ratings rise', () => {
    for (const key of protectiveDeviceKeys) {
      const { ratingsA } = protectiveDevice(key)!
      if (ratingsA !== null) expect(ratingsA).toEqual([...new Set(ratingsA)].toSorted((a, b) => a - b))
    }
  })
  it('finds the standard rating below and above', () => {
    expect(largestRatingA(protectiveDevices['blade fuse'], 52.5)).toBe(40)
    expect(largestRatingA(protectiveDevices['blade fuse'], 35)).toBe(35)
    expect(largestRatingA(protectiveDevices['maxi blade fuse'], 10)).toBeNull()
    expect(smallestRatingA(protectiveDevices['blade fuse'], 12)).toBe(15)
    expect(smallestRatingA(protectiveDevices['blade fuse'], 41)).toBeNull()
    expect(smallestRatingA(protectiveDevices['electronic channel'], 12)).toBeNull()
    expect(protectiveDevice('constructor')).toBeNull()
  })
})

test('conduit fill goes by the number of cables (NEC chapter 9, table 1)', () => {
  const [one, two, more] = referenceTable('bundle-conduit-fill').map(row => number(row['max_fill_pct']))
  expect([1, 2, 3, 40].map(count => conduitFillLimit(count).value)).toEqual([one, two, more, more])
})
