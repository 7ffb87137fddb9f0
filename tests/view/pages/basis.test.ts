import { describe, expect, it } from 'vitest'
import { aBattery, aVessel, aZone } from '../../support/vessel-builder.js'
import type { BasisId } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { bibliography, type SourceKey } from '../../../src/references/bibliography.js'
import { protectiveDevices } from '../../../src/references/tables/protective-devices.js'
import { basisPages } from '../../../src/view/pages/basis.view.js'
import type { Page } from '../../../src/view/view-model.js'
import { cellsOf, contextOf, registries, tableIn, wordsOn } from './support.js'

const vessel = aVessel({
  zones: [aZone({ tag: 'ER', space: 'machinery', ambientC: 55 }), aZone({ tag: 'HELM' })],
  batteries: [aBattery({ tag: 'B2', nominalVoltageV: 24 }), aBattery({ tag: 'B1', nominalVoltageV: 12 })],
})
const pageFor = (basis: BasisId): Page => basisPages(contextOf({ ...vessel, basis }))[0]!
const iso = pageFor('iso')
const abyc = pageFor('abyc')
const withRow = (page: Page, table: string, start: string): readonly string[] => {
  const row = cellsOf(tableIn(page, table)).find(([first]) => first?.startsWith(start))
  if (row === undefined) throw new Error(`no row ${start} in ${table}`)
  return row
}

describe('limits', () => {
  // ISO 10133:2012 (published extract) and ISO 13297:2021 (published guide): 3 % and 10 %; ABYC E-11 as quoted in a published appendix: the same.
  it.each([['iso', iso], ['abyc', abyc]] as const)('of %s: 3 %% for critical circuits and feeders, 10 %% for others, each with its source', (_, page) => {
    expect(withRow(page, 'limits', 'Voltage drop from the source to a load of a critical')[1]).toBe('at most 3.0 %')
    expect(withRow(page, 'limits', 'Voltage drop from the source to a load of a general')[1]).toBe('at most 10.0 %')
    expect(withRow(page, 'limits', 'Voltage drop from the source to a panel')[1]).toBe('at most 3.0 %')
    for (const [what, limit, source, standing] of cellsOf(tableIn(page, 'limits'))) {
      expect([limit, source, standing].every(cell => cell !== ''), what).toBe(true)
    }
  })

  it('of abyc permit 150 % of the capacity below 50 V (33 CFR 183.455(c)(1)), those of iso do not', () => {
    expect(withRow(abyc, 'limits', 'Rating above the capacity, below 50 V')[1]).toBe('permitted up to 150.0 % of the capacity')
    expect(wordsOn(iso)).not.toContain('Rating above the capacity, below')
  })

  it('name the smallest sizes: 16 and 18 AWG by 33 CFR 183.425(d), (e); 1 and 0.75 mm² by ISO 10133:2012, 7.7', () => {
    expect(withRow(abyc, 'limits', 'Separate conductor')[1]).toMatch(/^at least 16 AWG/)
    expect(withRow(abyc, 'limits', 'Conductor in a sheath')[1]).toMatch(/^at least 18 AWG/)
    expect(withRow(iso, 'limits', 'Separate conductor')[1]).toMatch(/^at least 1 mm²/)
    expect(withRow(iso, 'limits', 'Conductor in a sheath')[1]).toMatch(/^at least 0\.75 mm²/)
  })

  it('say where a figure is only from memory', () => {
    expect(withRow(iso, 'limits', 'Rating of the protective device')[3]).toBe('from memory')
    expect(withRow(abyc, 'limits', 'Rating of the protective device')[3]).toBe('public law')
    expect(tableIn(iso, 'capacity-table').note?.some(part => typeof part !== 'string' && part.is === 'strong' && part.text === 'from memory')).toBe(true)
    expect(withRow(abyc, 'engine-space-factors', '105')[3]).toBe('published')
    expect(withRow(abyc, 'engine-space-factors', '125')[3]).toBe('from memory')
  })
})

describe('the constant of the voltage drop', () => {
  // By hand from 1/58 Ω·mm²/m and 1 cmil = 5.067075e-4 mm²: 10.75 · 5.067075e-4 / 0.3048 = 0.01787109; 0.01787109 / 0.0164 = 1.08970;
  // 0.0164 · 58 = 0.9512; 0.01787109 · 58 = 1.036523; 20 − 0.0488 / 0.00393 = 7.583; 20 + 0.036523 / 0.00393 = 29.29.
  it('is given for both standards with copper beside them', () => {
    expect(withRow(iso, 'drop-constants', 'ISO 13297').slice(1, 5)).toEqual(['0.0164 Ω·mm²/m', '0.0164 Ω·mm²/m', '-4.88 %', '7.583 °C'])
    expect(withRow(iso, 'drop-constants', 'ABYC E-11').slice(1, 5)).toEqual(['10.75 Ω·cmil/ft', '0.01787 Ω·mm²/m', '3.652 %', '29.29 °C'])
    expect(withRow(iso, 'drop-constants', 'Copper').slice(2, 5)).toEqual(['0.01724 Ω·mm²/m', '0 %', '20 °C'])
  })

  it('tells that the two disagree by 8.97 % and that the ISO one is below copper at 20 °C', () => {
    expect(wordsOn(iso)).toContain('They disagree by 8.97 %.')
    expect(wordsOn(iso)).toContain('The constant of ISO 13297 is 4.88 % below the resistivity of copper at 20 °C, so it understates the drop.')
  })

  it('marks the one that is followed', () => {
    expect(withRow(iso, 'drop-constants', 'ISO 13297')[0]).toBe('ISO 13297 used here')
    expect(withRow(abyc, 'drop-constants', 'ABYC E-11')[0]).toBe('ABYC E-11 used here')
    expect(wordsOn(abyc)).toContain('This pack follows ABYC E-11.')
  })
})

describe('tables', () => {
  // 33 CFR 183.425 table 5, read in the law.
  it('print the current of every size, by the insulation', () => {
    const table = tableIn(abyc, 'capacity-table')
    const column = table.columns.findIndex(({ title }) => title === '105 °C')
    expect(withRow(abyc, 'capacity-table', '14 AWG')[column]).toBe('35 A')
    expect(withRow(abyc, 'capacity-table', '4/0')[column]).toBe('445 A')
    expect(table.rows).toHaveLength(15)
  })

  // 33 CFR 183.425 table 5 note 2, as reprinted in a published catalogue.
  it('print the bundle factors by ranges of conductors', () => {
    expect(cellsOf(tableIn(abyc, 'bundle-factors'))).toEqual([['3', '0.700'], ['4 to 6', '0.600'], ['7 to 24', '0.500'], ['25 and more', '0.400']])
    expect(wordsOn(abyc)).toContain('required from 50 V on, below that as advice')
  })

  it('list what holds for this vessel: zones hotter than their kind, voltages in use, cable tail', () => {
    expect(withRow(iso, 'ambient-temperatures', 'machinery')).toEqual(['machinery', '60 °C (140 °F)', 'ER 55 °C (131 °F)'])
    expect(withRow(iso, 'ambient-temperatures', 'interior')[2]).toBe('–')
    expect(wordsOn(iso)).toContain('that of the battery a circuit comes from: 12 V, 24 V')
  })
})

describe('sources', () => {
  const cited = new Set<SourceKey>([
    ...registries.methods.flatMap(method => method.citations),
    ...Object.values(bases).flatMap(basis => [...basis.citations, basis.protection.citation, basis.bundle.citation, basis.ampacity.citation]),
    ...Object.values(protectiveDevices).map(({ citation }) => citation),
  ].map(({ source }) => source))

  it('list every source that is cited anywhere, with its standing', () => {
    expect(cited.size).toBeGreaterThan(8)
    const listed = new Map(cellsOf(tableIn(iso, 'sources')).map(([, title, , , standing]) => [title, standing]))
    for (const key of cited) expect(listed.get(bibliography[key].title), key).toBe(bibliography[key].standing)
  })

  it('leave no reading of the basis unsaid', () => {
    for (const reading of bases.abyc.readings) expect(wordsOn(abyc)).toContain(reading)
  })
})
