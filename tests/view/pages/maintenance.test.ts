/** The maintenance pages: what is due and in which order, checklists by zone, parts and spare fuses, sheets. */
import { noOccasion } from '../../../src/calculate/occasion.js'
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { readContent } from '../../../src/load/read-content.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { maintenancePages } from '../../../src/view/pages/maintenance/maintenance.view.js'
import { upkeepBlocks } from '../../../src/view/pages/maintenance/upkeep.js'
import type { Page, Table } from '../../../src/view/view-model.js'
import { aBattery, aCircuit, aProtection, aRecord, aTask, anEquipment, aVessel, aZone } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, wordsOn } from './support.js'

const generalTasks = (await readContent()).maintenanceTasks
const blank = aVessel()
const boat: Vessel = aVessel({
  identity: { ...blank.identity, name: 'Dunlin', deliveredOn: '2026-05-29', season: { launchMonthNumber: 4, layUpMonthNumber: 10 } },
  document: { ...blank.document, issuedOn: '2026-07-15' },
  zones: [aZone({ tag: 'bow', name: 'Bow' }), aZone({ tag: 'cabin', name: 'Cabin' })],
  equipment: [
    anEquipment({ tag: 'E1', kind: 'torch', name: 'Torch', zoneTag: 'cabin' }),
    anEquipment({ tag: 'Q1', kind: 'escape hatch', name: 'Hatch', zoneTag: 'bow' }),
    anEquipment({ tag: 'M1', kind: 'engine', name: 'Engine', zoneTag: 'cabin' }),
    anEquipment({ tag: 'T1', kind: 'vhf transceiver', name: 'Radio', zoneTag: 'cabin' }),
    anEquipment({ tag: 'C1', kind: 'tools and spares', name: 'Spares', zoneTag: 'cabin', location: 'blue box' }),
  ],
  batteries: [aBattery({ tag: 'G1' })],
  circuits: [
    ...['F1', 'F2', 'F3', 'F4', 'F5', 'F6', 'F7', 'F8', 'F9'].map(tag => aCircuit({ tag, fedFromTag: 'G1', protection: aProtection('blade fuse', 5) })),
    aCircuit({ tag: 'F10', fedFromTag: 'G1', protection: aProtection('blade fuse', 10) }),
    aCircuit({ tag: 'F11', fedFromTag: 'G1', protection: aProtection('class T fuse', 100) }),
    aCircuit({ tag: 'F12', fedFromTag: 'G1', protection: aProtection('circuit breaker', 10) }),
  ],
  maintenanceTasks: [
    aTask({ key: 'engine-impeller', parts: [{ name: 'Impeller', number: 'I-1', quantity: '1', keptAt: 'blue box' }] }),
    aTask({ key: 'escape-hatch-open', itemTags: ['Q1'], notDone: true, reason: 'It is a window.' }),
  ],
  maintenanceRecords: [aRecord('torch-test', '2026-07-01', { by: 'Owner', notes: 'Bright.' })],
})
const context = (vessel: Vessel, asOf: string | null = null) => contextOf(vessel, { results: calculate(vessel, bases.iso, { ...noOccasion, asOf, generalTasks }) })
const pagesOf = (vessel: Vessel): ReadonlyMap<string, Page> => new Map(maintenancePages(context(vessel)).map(page => [page.key, page]))
const pages = pagesOf(boat)
const page = (key: string): Page => pages.get(key)!

describe('what is due', () => {
  it('says as of which day, and lists the earliest first', () => {
    expect(wordsOn(page('maintenance'))).toContain('As of 2026-07-15, the date of issue: nothing is overdue, 1 due within 30 days.')
    const due = cellsOf(tableIn(page('maintenance'), 'maintenance-due'))
    // The torch was tried on 1 July: a month later.
    expect(due[0]).toEqual(['2026-08-01 soon', 'Torches and emergency lights tried', 'E1 Torch', 'month', 'owner', '2026-07-01'])
    expect(due.map(([day]) => day!.slice(0, 10))).toEqual(due.map(([day]) => day!.slice(0, 10)).toSorted())
  })

  it('marks what is overdue, in words too', () => {
    const late = tableIn(pagesOf({ ...boat, document: { ...boat.document, issuedOn: '2026-08-02' } }).get('maintenance')!, 'maintenance-due')
    expect([cellsOf(late)[0]![0], late.rows[0]!.level]).toEqual(['2026-08-01 overdue', 'warning'])
  })

  it('says so where no day is known, and calls nothing overdue', () => {
    const undated = pagesOf({ ...boat, document: { ...boat.document, issuedOn: null } }).get('maintenance')!
    expect(wordsOn(undated)).toContain('No day is known')
    expect(wordsOn(undated)).not.toContain('overdue:')
    expect(tableIn(undated, 'maintenance-due').rows.some(({ level }) => level === 'warning')).toBe(false)
  })

  it('keeps daily and weekly tests, and what is left out with its reason', () => {
    expect(cellsOf(tableIn(page('maintenance'), 'maintenance-lists')).map(([every, what]) => `${every}: ${what}`)).toContain('daily: Internal test of the radio with digital selective calling')
    expect(cellsOf(tableIn(page('maintenance'), 'maintenance-not-done'))).toEqual([['Escape hatches opened', 'Q1', 'It is a window.']])
  })
})

describe('checklists', () => {
  it('go zone after zone in the order of the zones, each named once', () => {
    const withHatch = pagesOf({ ...boat, maintenanceTasks: [] }).get('maintenance/spring')!
    const rows = cellsOf(tableIn(withHatch, 'maintenance-spring'))
    expect(rows.map(([zone]) => zone).filter(zone => zone !== '')).toEqual(['Bow', 'Cabin'])
    expect(rows[0]).toEqual(['Bow', '☐', 'Escape hatches opened', 'Q1 Hatch', 'It opens without tools, and nothing is stowed on or under it.'])
  })

  it('leave room on paper for what was found', () => {
    const [printed] = page('maintenance/before-a-passage').printed as readonly Table[]
    expect(printed!.columns.map(({ title }) => title)).toEqual(['Zone', 'Done', 'What', 'On', 'Found'])
  })
})

it('lists parts with number and place, and spare fuses by type and rating', () => {
  expect(cellsOf(tableIn(page('maintenance/parts'), 'parts'))).toContainEqual(['Impeller', 'I-1', '1', 'Raw-water impeller: M1', 'blue box'])
  const fuses = tableIn(page('maintenance/parts'), 'spare-fuses')
  // Nine of 5 A: one for four is 2.25, so three; one of 10 A: two at least; a bolted fuse: one; a breaker: none.
  expect(cellsOf(fuses).map(row => row.slice(0, 4))).toEqual([['blade fuse', '5 A', '9', '3'], ['blade fuse', '10 A', '1', '2'], ['class T fuse', '100 A', '1', '1']])
  expect(wordsOn(page('maintenance/parts'))).toContain('Common practice, no source')
  expect(wordsOn(page('maintenance/parts'))).toContain('C1 Spares, Cabin: blue box')
})

it('has what was done, and sheets for the pen with the counters of the boat', () => {
  expect(cellsOf(tableIn(page('maintenance/log'), 'maintenance-records'))).toEqual([['2026-07-01', 'Torches and emergency lights tried', 'all', '–', 'Owner', 'Bright.']])
  const sheets = ['log-sheet', 'hours-sheet'].map(id => tableIn(page('maintenance/log'), id))
  expect(sheets.every(({ forPen }) => forPen)).toBe(true)
  expect(sheets[1]!.columns.map(({ title }) => title)).toEqual(['Date', 'M1 Engine', 'By'])
})

it('shows on the page of a thing its own upkeep, and nothing on that of a thing without', () => {
  const [upkeep] = upkeepBlocks(context(boat), 'E1') as readonly [Table]
  expect(cellsOf(upkeep)).toEqual([['Torches and emergency lights tried 1. Switch it on. 2. Change or charge its battery.', 'month by owner', '2026-07-01', '2026-08-01 soon']])
  expect(upkeepBlocks(context(boat), 'Q1')).toEqual([])
})

it('gives each kind of equipment its tasks, or leaves it out on purpose', async () => {
  const { equipmentKindKeys } = await import('../../../src/references/equipment-kinds.js')
  const cared = new Set(generalTasks.flatMap(({ kinds }) => kinds))
  // Kinds that are tried whenever they are used, or that are looked at with what they belong to.
  const nothingOfTheirOwn = ['instrument', 'joystick control', 'keypad', 'remote control', 'temperature sensor', 'pressure sensor', 'tank sensor', 'sonar module', 'safety beacon', 'audio unit', 'microphone',
    'can bus terminator', 'fan', 'switch', 'fuse holder', 'other']
  expect(equipmentKindKeys.filter(kind => !cared.has(kind))).toEqual(nothingOfTheirOwn)
})
