import { describe, expect, it } from 'vitest'
import { commissioningPages } from '../../../src/view/pages/commissioning/commissioning.view.js'
import { testSheetPages } from '../../../src/view/pages/workshop/test-sheets.view.js'
import { schedules } from '../../../src/view/files/schedules.js'
import type { Block, Page } from '../../../src/view/view-model.js'
import { boat, type GivenReading, readingsOf } from '../../calculate/commissioning/support.js'
import { cellsOf, contextOf, tableIn, tablesOf, wordsOn, workingsOf } from './support.js'

const contextWith = (...readings: readonly GivenReading[]) => contextOf(boat({ measurements: readingsOf(readings) }))
const pageWith = (...readings: readonly GivenReading[]): Page => commissioningPages(contextWith(...readings))[0]!
const sheetsWith = (...readings: readonly GivenReading[]): Page => testSheetPages(contextWith(...readings))[0]!
const headings = (page: Page) => page.blocks.filter(block => block.is === 'heading').map(({ text }) => text)
const isSheet = (block: Block) => block.is === 'table' && block.forPen === true

describe('nothing measured yet', () => {
  const page = sheetsWith()
  it('has sheets for everything, and no table of readings', () => {
    expect(headings(page)).toEqual(['Test sheets'])
    expect(tablesOf(page).map(({ id }) => id)).toEqual(['instruments', 'sheet-a1', 'sheet-g1', 'sheet-batteries', 'sheet-residual-devices', 'sign-off'])
    expect(page.blocks.filter(isSheet)).toHaveLength(6)
  })
  it('leads to them from the page of what was measured, which has none itself', () => {
    const measured = pageWith()
    expect(measured.blocks.filter(isSheet)).toEqual([])
    expect(wordsOn(measured)).toContain('Circuits 0 of 4 completely measured')
    expect(measured.blocks).toContainEqual(expect.objectContaining({ is: 'paragraph', text: expect.arrayContaining([expect.objectContaining({ to: page.key })]) }))
  })
  it('says of a battery of known chemistry what it shows full and at rest: six lead cells of 2.1 V', () => {
    const whole = boat()
    const known = contextOf({ ...whole, batteries: whole.batteries.map(battery => ({ ...battery, chemistry: 'agm' as const })) })
    expect(cellsOf(tableIn(testSheetPages(known)[0]!, 'sheet-batteries'))[0]![1]).toMatch(/^full and at rest about 12\.60 V/)
  })
  it('says way, circuit, load and what to expect; the rest is to be written in', () => {
    const [first, , third, fourth] = cellsOf(tableIn(page, 'sheet-a1'))
    // By hand, as in the tests of the calculation: 0.475 V alone, 0.628 V with all on; 12 − 0.628
    expect(first).toEqual([
      '1 A1.1 Circuit A1.1 E1 Equipment E1',
      'lost 0.47 V to 0.63 V at 10.0 A load 11.37 V of 12 V 0.5 MΩ at 250 V',
      '', 'source load', '', 'polarity date initials, no.',
    ])
    expect([third?.[0], fourth?.[0]]).toEqual(['3 A1.3 Circuit A1.3 E3 Equipment E3', '3 A1.3 Circuit A1.3 E4 Equipment E4'])
    expect(cellsOf(tableIn(page, 'sheet-batteries'))).toEqual([['G1 Battery G1', 'voltage at rest: chemistry not recorded 4.00 mΩ recorded', '', 'V A', 'V A', '', 'date initials, no.']])
    expect(cellsOf(tableIn(page, 'sheet-residual-devices'))).toEqual([['Q9 Equipment Q9', 'between 15 mA and 30 mA within 100 ms', '', '', '', 'date initials, no.']])
  })
  it('warns before it asks, and defers', () => {
    const callouts = page.blocks.filter(block => block.is === 'callout')
    expect(callouts.map(({ title }) => title)).toEqual([
      'Before anything is measured', 'Shore power and mains voltage can kill', expect.stringMatching(/[Ll]ive/), 'Disconnect electronics before welding and insulation tests',
    ])
    expect(callouts[0]?.markdown).toMatch(/licensed persons[\s\S]*Local codes[\s\S]*competent person[\s\S]*Never on a live circuit/)
    expect(page.blocks.indexOf(callouts[0]!)).toBeLessThan(page.blocks.findIndex(isSheet))
  })
})

describe('readings', () => {
  const readings: readonly GivenReading[] = [
    { subjectTag: 'A1.1', date: '2026-05-04', sourceVoltageV: 12.8, voltageV: 12.26, currentA: 5, insulationMOhm: 20, polarity: 'right' },
    { subjectTag: 'A1.2', date: '2026-05-04', polarity: 'reversed' },
    { subjectTag: 'A1.2', date: '2026-05-05', polarity: 'right' },
    { subjectTag: 'A1.2', voltageDropV: 0.3 },
    { subjectTag: 'Q9', residualCurrentA: 0.032 },
  ]
  const page = pageWith(...readings)
  it('stand against calculation, tolerance and limit, with what is left', () => {
    // 12.80 − 12.26 = 0.54 V; calculated and accepted as in the tests of the drop; 0.54 V · 10 A / 5 A = 1.08 V, 9.0 % of 12 V
    expect(cellsOf(tableIn(page, 'measured-voltage-drop'))[0]).toEqual([
      '1 2026-05-04', 'A1.1 Circuit A1.1 at E1 Equipment E1', '0.54 V 12.80 V − 12.26 V', '0.24 V to 0.43 V',
      'at least 0.14 V (0.40 V left) at most 0.536 V (0.0038 V missed) 9.0 % of nominal, at most 10.0 % (1.0 % left)',
      'outside tolerance',
    ])
    expect(cellsOf(tableIn(page, 'measured-trip-current'))).toEqual([['5', 'Q9 Equipment Q9', '32 mA', '15 mA to 30 mA', 'at most 30 mA (2 mA missed) at least 15 mA (17 mA left)', 'outside limit']])
  })
  it('have on paper the limit that is nearest, and of each kind the sums of what is outside or nearest', () => {
    const printed = { ...page, blocks: page.printed! }
    expect(cellsOf(tableIn(printed, 'measured-voltage-drop'))[0]![4]).toBe('at most 0.536 V (0.0038 V missed)')
    expect(cellsOf(tableIn(printed, 'working-expected-drop-results'))).toEqual(cellsOf(tableIn(page, 'working-expected-drop-results')))
    expect(wordsOn(printed)).toContain('The sums of all others are on the site.')
  })
  it('that were replaced say by which, and raise no alarm', () => {
    expect(cellsOf(tableIn(page, 'measured-polarity')).map(([number, , , , verdict]) => [number, verdict])).toEqual([
      ['1 2026-05-04', 'right'], ['2 2026-05-04', 'replaced by 3'], ['3 2026-05-05', 'right'],
    ])
    expect(tableIn(page, 'measured-polarity').rows.map(({ level }) => level)).toEqual([null, null, null])
  })
  it('that are off are explained, those that could not be assessed say why', () => {
    expect(cellsOf(tableIn(page, 'meanings')).map(([number, what]) => [number, what])).toEqual([['1', 'voltage drop too high, A1.1'], ['5', 'trip current too high, Q9']])
    expect(cellsOf(tableIn(page, 'measured-not-assessed'))).toEqual([['4', 'A1.2 Circuit A1.2 at E2 Equipment E2', 'voltage drop', 'the current was not read at the same time']])
    expect(wordsOn(page)).toContain('not or not wholly assessed')
  })
  it('can be redone by hand', () => {
    expect(workingsOf(page).map(({ title }) => title)).toContain('Voltage drop to be expected at the measured current')
    // By hand, as in the tests of the drop
    expect(cellsOf(tableIn(page, 'working-expected-drop-inputs'))).toEqual([['1', '0.398403 V', '10 A', '0.229778 V', '7.65928 mΩ', '5 A']])
    expect(cellsOf(tableIn(page, 'working-expected-drop-results'))).toEqual([['1', '0.2375 V', '0.429 V', '0.1375 V', '0.5362 V']])
    for (const working of workingsOf(page)) expect(working.sources.join()).toMatch(/^Source: .+\.$/)
  })
  it('leave on the sheets what is still missing, with what is there', () => {
    const sheet = cellsOf(tableIn(sheetsWith(...readings), 'sheet-a1'))
    expect(sheet.map(([circuit]) => circuit)).toEqual(['2 A1.2 Circuit A1.2 E2 Equipment E2', '3 A1.3 Circuit A1.3 E3 Equipment E3', '3 A1.3 Circuit A1.3 E4 Equipment E4'])
    // A drop that could not be assessed is to be measured again.
    expect(sheet[0]?.slice(2)).toEqual(['', 'source load', '', 'right (reading 3) date initials, no.'])
  })
  it('make tables of at most seven columns, each with an id of its own', () => {
    for (const { columns } of tablesOf(page)) expect(columns.length).toBeLessThanOrEqual(7)
    const ids = tablesOf(page).map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
  })
})

it('has no sheet left when everything is measured', () => {
  const all: GivenReading = { subjectTag: 'F1', voltageDropV: 0.2, currentA: 30, insulationMOhm: 20, polarity: 'right' }
  const page = sheetsWith(
    all, { ...all, subjectTag: 'A1.1', currentA: 10, voltageDropV: 0.5 }, { ...all, subjectTag: 'A1.2', currentA: 20, voltageDropV: 0.3 }, { ...all, subjectTag: 'A1.3', atTag: 'E3', currentA: 3 },
    { subjectTag: 'G1', voltageV: 12.7, internalResistanceMilliOhm: 4 }, { subjectTag: 'Q9', residualCurrentA: 0.02, tripTimeMs: 30 },
  )
  expect(page.blocks.filter(isSheet)).toHaveLength(1)
  expect(wordsOn(page)).toContain('Everything has been measured. No sheet is left to fill in.')
})

it('gives the readings to machines', () => {
  const schedule = schedules(contextWith({ subjectTag: 'A1.1', date: '2026-05-04', voltageDropV: 0.9, currentA: 5 })).find(({ file }) => file === 'measurements.csv')
  expect(schedule?.columns.slice(0, 3)).toEqual(['Reading', 'Date', 'Kind'])
  expect(schedule?.rows.map(row => row.slice(0, 3))).toEqual([['1', '2026-05-04', 'voltage drop'], ['1', '2026-05-04', 'current']])
  expect(schedule?.rows[0]?.join(' ')).toContain('bad crimp')
})
