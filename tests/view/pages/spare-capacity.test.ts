import { describe, expect, it } from 'vitest'
import { spareCapacityPage } from '../../../src/view/pages/spare-capacity.view.js'
import { changed, handBoat } from '../../calculate/reserve/support.js'
import { cellsOf, contextOf, tableIn, wordsOn } from './support.js'

describe('spare capacity', () => {
  const page = spareCapacityPage(contextOf(handBoat()))
  const rows = (id: string, of = page) => cellsOf(tableIn(of, id))

  it('lists the spare ways of each panel and what it could still carry', () => {
    expect(rows('spare-ways')).toEqual([['A1 Panel A1', '4: 2, 3, 5 and 6', '12.5 A', '50 A', '37.5 A']])
  })

  it('shows each limit of each feeder as a sum, and which of them governs', () => {
    expect(rows('feeder-margins').map(row => row.slice(0, 6))).toEqual([
      ['F1 to X1', 'protective device', '100 A', '12.5 A', '87.5 A', 'within governs'],
      ['F1 to X1', 'conductor W1', '210 A', '12.5 A', '197.5 A', 'within'],
      ['F1 to X1', 'busbar X1', '150 A', '12.5 A', '137.5 A', 'within'],
      ['F2 to A1', 'protective device', '40 A', '12.5 A', '27.5 A', 'within governs'],
      ['F2 to A1', 'conductor W2', '130 A', '12.5 A', '117.5 A', 'within'],
      ['F2 to A1', 'panel A1', '50 A', '12.5 A', '37.5 A', 'within'],
    ])
  })

  it('tells what 5 A and 10 A more would leave in the tightest feeder', () => {
    expect(rows('one-more-circuit')).toEqual([
      ['A1 Panel A1', '12 V d.c.', 'fits F2 22.5 A left', 'fits F2 17.5 A left'],
      ['X1 Busbar X1', '12 V d.c.', 'fits F1 82.5 A left', 'fits F1 77.5 A left'],
    ])
  })

  it('says of a busbar what is taken and what is put in', () => {
    expect(rows('busbar-margins')).toEqual([['X1 Busbar X1', '150 A', '12.5 A', '137.5 A', '0 A', '150 A']])
  })

  it('marks what is passed and what is not assessed', () => {
    const boat = handBoat()
    const marked = spareCapacityPage(contextOf(handBoat({
      panels: changed(boat.panels, 'A1', { ratedCurrentA: null, ways: null }), circuits: changed(boat.circuits, 'F1', { protection: { ...boat.circuits[0]!.protection!, ratedCurrentA: 10 } }),
    })))
    expect(tableIn(marked, 'feeder-margins').rows.map(({ level }) => level)).toEqual(['error', null, null, null, null, 'not assessed'])
    expect(rows('spare-ways', marked)).toEqual([['A1 Panel A1', 'number of ways not recorded', '12.5 A', 'not recorded', 'not assessed']])
    expect(rows('one-more-circuit', marked)[0]?.[2]).toContain('does not fit F1 -7.5 A left')
  })

  it('tells how to ask the program, and keeps its tables narrow', () => {
    expect(wordsOn(page)).toContain('asfitted reserve FOLDER --at bay --current "8 A"')
    for (const option of ['--len 4', '--power-class 3', '--ethernet', '--model KEY']) expect(wordsOn(page)).toContain(option)
    for (const block of page.blocks) if (block.is === 'table') expect(block.columns.length).toBeLessThanOrEqual(7)
  })
})
