import { describe, expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { energyPages } from '../../../src/view/pages/energy/energy.view.js'
import type { Block, Drawing, Page } from '../../../src/view/view-model.js'
import { aMode } from '../../support/vessel-builder.js'
import { boat, duty, hours, house, load } from '../../calculate/energy/support.js'
import { cellsOf, contextOf, tableIn, tablesOf, workingsOf } from './support.js'

function pageOf(vessel: Vessel): Page {
  const [page] = energyPages(contextOf(vessel))
  return page!
}
const drawingsIn = (blocks: readonly Block[]) => blocks.filter((block): block is Drawing => block.is === 'drawing')

const anchored = boat([load('E1', { name: 'Refrigerator', kind: 'refrigerator', currentTypicalA: 4.5 }), load('E2', { name: 'Lights', kind: 'light', currentTypicalA: 2 })], {
  operatingModes: [aMode({ tag: 'M', name: 'At anchor', daysCount: 7 })], duties: [duty('E1', { dutyPercent: 45 }), duty('E2', hours(18, 23))],
})

describe('the energy page', () => {
  const page = pageOf(anchored)
  it('has each load with its sum, to be redone by hand', () => {
    expect(cellsOf(tableIn(page, 'mode-M-loads-G1'))).toEqual([
      ['E1 Refrigerator', '4.5 A', 'typical current', '24 h', '45 %', '48.6 Ah', '48.6 Ah'],
      ['E2 Lights', '2 A', 'typical current', '5 h', '100 %', '10 Ah', '58.6 Ah'],
    ])
  })
  it('sums the day up for the battery', () => {
    const [row] = cellsOf(tableIn(page, 'mode-M-summary'))
    expect(row!.slice(0, 5)).toEqual(['G1 Battery G1', '59 Ah 703.2 Wh', '–', '−59 Ah', '81.9 h'])
    // 58.6 Ah on six days and 36.45 Ah by 18:00 leave 11.95 Ah for 4.025 A: they are gone in the third hour, and the day has four.
    expect(row![5]).toBe('0.0 % hour 165 empty in 4 hours')
  })
  it('draws the charge of every battery, and says it in words', () => {
    const [drawing] = drawingsIn(page.blocks)
    expect(drawing!.caption).toBe('State of charge, At anchor, 7 days')
    expect(JSON.stringify(drawing!.description)).toContain('starts at 100.0\u00A0%')
  })
  it('has the first day by the hour', () => {
    const rows = cellsOf(tableIn(page, 'mode-M-hours-G1'))
    expect(rows).toHaveLength(24)
    expect(rows[0]).toEqual(['0 to 1', '2.0 A', '–', '–', '–', '2.0 A', '99.5 %'])
  })
  it('says where each value of a battery comes from', () => {
    expect(cellsOf(tableIn(page, 'battery-capacity'))[0]).toEqual(['G1 Battery G1', 'flooded lead-acid', '400 Ah recorded', '20 h usual', '50 % usual for the chemistry', '200 Ah 2400 Wh', '1.3 usual for the chemistry'])
  })
  it('has the working of the column method, of endurance and of the ventilation', () => {
    expect(workingsOf(page).map(({ title }) => title)).toEqual(expect.arrayContaining(['Load of F1 by the column method', 'How long G1 lasts uncharged', 'Air for G1']))
  })
  it('has tables of at most seven columns', () => {
    for (const { columns } of tablesOf(page)) expect(columns.length).toBeLessThanOrEqual(7)
  })
  it('has no anchor or table twice', () => {
    const ids = page.blocks.flatMap(block => ('id' in block ? [block.id] : block.is === 'heading' ? [block.anchor] : []))
    expect(ids).toEqual([...new Set(ids)])
  })
  it('prints less, with the plot', () => {
    expect(page.printed!.length).toBeLessThan(page.blocks.length)
    expect(drawingsIn(page.printed!)).toHaveLength(1)
  })
})

describe('without what it needs', () => {
  it('says that no mode is recorded', () => {
    expect(JSON.stringify(pageOf(boat([], { operatingModes: [] })).blocks)).toContain('No operating mode is recorded')
  })
  it('says what is not assessed, never a pass', () => {
    const page = pageOf(boat([load('E1')], { batteries: [{ ...house, chemistry: null }], duties: [duty('E1')] }))
    expect(cellsOf(tableIn(page, 'energy-not-assessed')).map(row => row.join(' | '))).toEqual(expect.arrayContaining([
      'G1 Battery G1 | – | its chemistry is not recorded', 'E1 Equipment E1 | Mode M | neither a current nor a power is recorded for it',
    ]))
  })
  it('has nothing to say of a boat without batteries', () => {
    expect(() => pageOf(boat([], { batteries: [], circuits: [], panels: [], operatingModes: [] }))).not.toThrow()
  })
})
