import { describe, expect, it } from 'vitest'
import { equipmentPages } from '../../../src/view/pages/equipment/equipment.view.js'
import { configurationPages, settingsSchedule } from '../../../src/view/pages/record/configuration.view.js'
import { anEquipment, aVessel } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, tablesOf, wordsOn } from './support.js'

const boat = aVessel({
  systems: [{ tag: 'nav', name: 'Navigation', purpose: null, kind: null }],
  equipment: [
    anEquipment({ tag: 'P2', name: 'Second display', kind: 'display', systemTag: 'nav' }),
    anEquipment({
      tag: 'B1', name: 'Sounder', kind: 'sonar module', systemTag: 'nav', maker: 'Fennmark', model: 'S4', software: '4.1', softwareDate: '2026-05-04', address: '10.0.0.5', addressing: 'static',
      transducer: { frequencyKHz: null, powerW: null, beamDeg: null, beamAcrossDeg: null, blindM: null, depthOffset: { reads: 'below keel', offsetM: -0.6 } },
    }),
  ],
  settings: [{ itemTag: 'B1', name: 'Shallow alarm', value: '2.5 m', menu: 'Alarms > Depth', date: '2026-05-04', by: 'A. Fitter', notes: 'As the owner asked.' }],
})
const page = configurationPages(contextOf(boat))[0]!

describe('configuration record', () => {
  it('lists software by system, and what is not recorded', () => {
    expect(cellsOf(tableIn(page, 'software'))).toEqual([
      ['B1 Sounder', 'Navigation', 'Fennmark S4', '4.1', '2026-05-04'], ['P2 Second display', 'Navigation', '–', 'not recorded', '–'],
    ])
  })

  it('lists what to restore on each device, entries first, with where it stands and as of when', () => {
    expect(cellsOf(tableIn(page, 'settings-b1'))).toEqual([
      ['Network address', '10.0.0.5', 'its entry'],
      ['How it comes by its address', 'set on the device', 'its entry'],
      ['Depth offset', '-0.60 m (-2.0 ft), depth is shown below keel sound the depth by hand afterwards: a wrong sign shows more water than there is', 'its entry'],
      ['Shallow alarm Alarms > Depth', '2.5 m As the owner asked.', '2026-05-04, A. Fitter'],
    ])
    expect(wordsOn(page)).toContain('1 device.')
    for (const { columns } of tablesOf(page)) expect(columns.length).toBeLessThanOrEqual(5)
  })

  it('shows the list on the page of the device, and nothing on that of another', () => {
    const pages = equipmentPages(contextOf(boat))
    const pageOf = (tag: string) => pages.find(({ title }) => title.startsWith(`${tag} `))!
    expect(tableIn(pageOf('B1'), 'restore').rows).toHaveLength(4)
    expect(wordsOn(pageOf('B1'))).toContain('Settings to restore after a replacement')
    expect(wordsOn(pageOf('P2'))).not.toContain('Settings to restore')
  })

  it('is in the record as a table for machines', () => {
    const { file, columns, rows } = settingsSchedule(contextOf(boat))
    expect(file).toBe('settings.csv')
    expect(rows).toHaveLength(4)
    expect(rows[3]).toEqual(['B1', 'Sounder', 'Shallow alarm', '2.5 m', 'Alarms > Depth', '2026-05-04', 'A. Fitter', 'read on the device', 'As the owner asked.'])
    for (const row of rows) expect(row).toHaveLength(columns.length)
  })

  it('is left out where there is nothing to say', () => expect(configurationPages(contextOf(aVessel()))).toEqual([]))
})
