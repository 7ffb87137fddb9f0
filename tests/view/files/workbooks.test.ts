import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { examine } from '../../../src/build.js'
import { isThere } from '../../../src/model/lookup.js'
import { tableOf } from '../../../src/view/tables.js'
import type { Sheet } from '../../../src/view/view-model.js'
import { workshopPages } from '../../../src/view/pages/workshop/workshop.view.js'
import { schedules } from '../../../src/view/files/schedules.js'
import { sheetOf, workbooks } from '../../../src/view/files/workbooks.js'
import { aVessel } from '../../support/vessel-builder.js'
import { contextOf } from '../pages/support.js'

describe('a table as a sheet', () => {
  const length = (...texts: readonly string[]) => sheetOf('S', tableOf(texts, { id: 't', caption: '', empty: '', columns: [{ title: 'Length', width: 'number', cell: text => [text] }] }))
  it('has quantities of one unit as numbers, with the unit in the title', () => {
    expect(length('1.60\u00A0m', '12.00\u00A0m')).toEqual({ name: 'S', columns: [{ title: 'Length (m)', numbers: true }], rows: [[1.6], [12]] })
    expect(length('3', '12').rows).toEqual([[3], [12]])
  })
  it('keeps what stands there instead of a quantity, and text where units differ', () => {
    expect(length('1.60\u00A0m', 'n.a.', '–').rows).toEqual([[1.6], ['n.a.'], ['–']])
    expect(length('1.60\u00A0m', '3\u00A0A')).toMatchObject({ columns: [{ title: 'Length', numbers: false }], rows: [['1.60 m'], ['3 A']] })
    expect(length('1.8\u00A0% of 3.0\u00A0%').rows).toEqual([['1.8 % of 3.0 %']])
  })
  it('takes no tag for a number', () => {
    const tagged = tableOf(['007'], { id: 't', caption: '', empty: '', columns: [{ title: 'Tag', width: 'tag', cell: text => [text] }] })
    expect(sheetOf('S', tagged).rows).toEqual([['007']])
  })
})

describe('the workbook of the sample vessel', async () => {
  const sample = await examine(fileURLToPath(new URL('../../../sample-vessel', import.meta.url)))
  if (sample.status !== 'examined') throw new Error('the sample is no vessel')
  const { vessel, findings } = sample
  const context = contextOf(vessel, { findings })
  const [book] = workbooks(context, workshopPages(context))
  const named = (name: string): Sheet => book!.sheets.find(sheet => sheet.name === name)!
  const column = (sheet: Sheet, title: string) => { const at = sheet.columns.findIndex(each => each.title === title); expect(at, title).toBeGreaterThan(-1); return sheet.rows.map(row => row[at]) }

  it('has a sheet for each table', () => {
    expect(book!.sheets.map(({ name }) => name)).toEqual(['Wire list', 'Bill of cable', 'Parts', 'Cables', 'Circuits', 'Equipment', 'Labels', 'Panel legends', 'Test sheets', 'Findings'])
    for (const { name, columns, rows } of book!.sheets) for (const row of rows) expect([name, row.length]).toEqual([name, columns.length])
  })
  it('has each cable twice in the wire list, once at each end, with its zone', () => {
    const wires = named('Wire list')
    const at = wires.columns.findIndex(({ title }) => title === 'Label at this end')
    const labelled = wires.rows.filter(row => row[at] !== '')
    const counts = new Map<unknown, number>()
    for (const tag of labelled.map(row => row[wires.columns.findIndex(({ title }) => title === 'Cable')])) counts.set(tag, (counts.get(tag) ?? 0) + 1)
    expect([...counts].filter(([, count]) => count !== 2)).toEqual([])
    expect(counts.size).toBe(vessel.cables.filter(isThere).length)
    expect(new Set(column(wires, 'Zone')).size).toBeGreaterThan(15)
  })
  it('has lengths that can be summed: 0.5 m and 0.8 m of 95 mm² are 1.3 m, 2 m to order', () => {
    const bill = named('Bill of cable')
    const at = column(bill, 'Type').indexOf('1x95')
    expect([column(bill, 'Laid (m)')[at], column(bill, 'To order (m)')[at], column(bill, 'Longest piece (m)')[at], column(bill, 'Which is')[at]]).toEqual([1.3, 2, 0.8, 'W16'])
    expect(column(bill, 'To order (m)').every(value => typeof value === 'number')).toBe(true)
  })
  it('asks for each reading that a sheet asks for, polarity too', () => {
    const asked = new Set(column(named('Test sheets'), 'To read'))
    for (const reading of ['Insulation', 'Voltage', 'Current', 'Polarity', 'Resistance, dead', 'Found']) expect(asked).toContain(reading)
    expect([...asked].filter(reading => /date|initials/i.test(String(reading)))).toEqual([])
    expect(column(named('Test sheets'), 'Reading').every(cell => cell === null)).toBe(true)
  })
  it('gives wire list and bill to machines too, as many rows as there are ends and types', () => {
    const rowsOf = (file: string) => schedules(context).find(schedule => schedule.file === file)!.rows.length
    expect([rowsOf('wires.csv'), rowsOf('cable-bill.csv')]).toEqual([named('Wire list').rows.length, named('Bill of cable').rows.length])
  })
  it('is not made where there are no workshop documents', () => expect(workbooks(contextOf(aVessel()), [])).toEqual([]))
})
