import { describe, expect, it } from 'vitest'
import { panelPages, panelsTable } from '../../../src/view/pages/panels.view.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { aProtection } from '../../support/vessel-builder.js'
import { changed, handBoat } from '../../calculate/reserve/support.js'
import { cellsOf, contextOf, tableIn } from './support.js'

const pageOf = (vessel: Vessel) => panelPages(contextOf(vessel), new Map()).find(({ title }) => title.startsWith('A1'))!
const headings = (vessel: Vessel, id: string) => tableIn(pageOf(vessel), id).columns.map(({ title }) => title)
const rows = (vessel: Vessel, id: string) => cellsOf(tableIn(pageOf(vessel), id))

const boat = handBoat()
const module = handBoat({
  panels: changed(boat.panels, 'A1', { kind: 'switching module', networkLoss: 'hold' }),
  circuits: changed(changed(boat.circuits, 'A1.1', { protection: aProtection('electronic channel', 12), manualBypass: 'Fuse to the right', normalState: 'open', loadClass: 'critical' }),
    'A1.2', { networkLoss: 'on' }),
})

describe('a breaker panel', () => {
  it('is shown way by way: load, current, protection, conductor with its capacity, and free ways as rows', () => {
    expect(headings(boat, 'ways')).toEqual(['Way', 'Circuit', 'Feeds', 'Current', 'Protection', 'Conductor', 'Verdict'])
    expect(rows(boat, 'ways').map(row => row.slice(0, 6))).toEqual([
      ['1', 'A1.1 Circuit A1.1', 'E1 Equipment E1', '10.0 A', 'circuit breaker 15 A', 'W3 2.5 mm² 35.0 A'],
      ['2 to 3', 'spare', '–', '–', '–', '–'],
      ['4', 'A1.2 Circuit A1.2', 'E2 Equipment E2', '5.0 A', 'circuit breaker 10 A', 'W4 2.5 mm² 35.0 A'],
      ['5 to 6', 'spare', '–', '–', '–', '–'],
    ])
  })
  it('has no network to lose, and no bypass where none is recorded', () => {
    expect(headings(boat, 'emergency-working')).toEqual(['Way', 'Circuit', 'Class', 'Normally'])
  })
})

describe('a switching module', () => {
  it('has the same columns, the device being what the channel is set to', () => {
    expect(headings(module, 'ways')).toEqual(['Channel', 'Circuit', 'Feeds', 'Current', 'Set to', 'Conductor', 'Verdict'])
    expect(rows(module, 'ways')[0]?.[4]).toBe('12 A')
  })
  it('tells how each channel is worked when the network or the module is lost; a channel of its own before its module', () => {
    expect(headings(module, 'emergency-working')).toEqual(['Channel', 'Circuit', 'Class', 'Normally', 'Network lost', 'Manual bypass'])
    expect(rows(module, 'emergency-working')).toEqual([
      ['1', 'A1.1 Circuit A1.1', 'critical', 'open', 'stays as it is', 'Fuse to the right'],
      ['4', 'A1.2 Circuit A1.2', 'general', 'closed', 'goes on', 'not recorded'],
    ])
  })
  it('says in words what is not recorded', () => {
    const unsaid = handBoat({ panels: changed(boat.panels, 'A1', { kind: 'switching module' }) })
    expect(rows(unsaid, 'emergency-working').map(row => row.slice(4))).toEqual([['not recorded', 'not recorded'], ['not recorded', 'not recorded']])
  })
})

it('counts spare ways only where they are known', () => {
  const context = (vessel: Vessel) => cellsOf(panelsTable(contextOf(vessel), vessel.panels))[0]?.at(-1)
  expect(context(boat)).toBe('4')
  expect(context(handBoat({ circuits: changed(boat.circuits, 'A1.1', { way: null }) }))).toBe('–')
})
