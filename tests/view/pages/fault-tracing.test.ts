import { describe, expect, it } from 'vitest'
import { deadBlocks, lossBlocks } from '../../../src/view/pages/fault-blocks.js'
import { faultTracingPages } from '../../../src/view/pages/fault-tracing.view.js'
import { plainText } from '../../../src/view/tables.js'
import type { Block, Table } from '../../../src/view/view-model.js'
import { aCircuit, anEquipment, anOutput, aPanel, aProtection, aZone } from '../../support/vessel-builder.js'
import { boat, cables, circuit } from '../../calculate/feeding/support.js'
import { cellsOf, contextOf, tableIn, tablesOf, wordsOn } from './support.js'

const fuse = { protection: aProtection('blade fuse', 5) }
const vessel = boat({
  equipment: [
    anEquipment({ tag: 'G2', name: 'Bilge pump', kind: 'bilge pump', zoneTag: 'bilge', currentMaxA: 3 }),
    anEquipment({ tag: 'E1', name: 'Lamp', kind: 'light', currentMaxA: 1 }),
  ],
  circuits: [circuit('A1.1', ['G2'], { ...fuse, way: 1 }), circuit('A1.2', ['E1'], { ...fuse, manualBypass: 'Turn the key' }), aCircuit({ tag: 'F9', fedFromTag: 'G1', loadTags: ['G2'], normalState: 'open', ...fuse })],
  cables: cables('W1: A1.1 > G2', 'W2: A1.2 > E1', 'W9: F9 > G2'),
}, {
  zones: [aZone({ tag: 'helm', name: 'Helm', access: 'two screws' }), aZone({ tag: 'bilge', name: 'Bilge' })],
  panels: [aPanel({ tag: 'A1', name: 'Helm module', kind: 'switching module', zoneTag: 'helm', location: 'left', networkLoss: 'hold' })],
})
const context = contextOf(vessel)
const [page] = faultTracingPages(context)
const rowsOf = (blocks: readonly Block[]) => cellsOf(blocks[0] as Table)

describe('where to look', () => {
  it('names device, place and access, then each thing back to the battery, then what can be closed', () => {
    const rows = rowsOf(deadBlocks(context, 'G2'))
    expect(rows.map(([at]) => at)).toEqual([
      '1. A1.1 Circuit A1.1', '2. A1 Helm module', '3. F2 Circuit F2', '4. X1 Busbar X1', '5. F1 Circuit F1', '6. Q1 Equipment Q1', '7. G1 Battery G1',
      '8. F9 Circuit F9 (normally off: another way to feed it)',
    ])
    expect(rows[0]![1]).toBe('A1 way 1, Helm (left) (access: two screws)')
    expect(rows[0]![2]).toBe('blade fuse 5 A: tripped, blown or off? Cable W1')
  })
  it('has nothing for what is not followed', () => expect(deadBlocks(context, 'nothing')).toEqual([]))
})

describe('what is lost', () => {
  it('has safety services first, and what brings them back', () => {
    expect(rowsOf(lossBlocks(context, 'A1'))).toEqual([['Bilge pumping', 'G2 Bilge pump', 'close F9'], ['No supply', 'E1 Lamp', 'bypass A1.2']])
  })
  it('does not count a radio without a position as a lost radio', () => {
    const radio = boat({
      equipment: [anEquipment({ tag: 'B1', kind: 'gnss receiver' }), anEquipment({ tag: 'T2', kind: 'vhf transceiver', dataFromTags: ['B1'] })],
      circuits: [circuit('A1.1', ['B1']), circuit('A1.2', ['T2'])], cables: cables('W1: A1.1 > B1', 'W2: A1.2 > T2'),
    })
    expect(rowsOf(lossBlocks(contextOf(radio), 'A1.1')).map(([title]) => title)).toEqual(['Position', 'Without data they need'])
    expect(rowsOf(lossBlocks(contextOf(radio), 'A1.2')).map(([title]) => title)).toEqual(['Distress radio'])
  })
  it('warns of mains where an item gives it or takes it', () => {
    const inverter = boat({
      equipment: [anEquipment({ tag: 'T3', kind: 'inverter', outputs: [anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 230 })] })],
      circuits: [circuit('A1.1', ['T3'])], cables: cables('W1: A1.1 > T3:dc'),
    })
    const noteOf = (blocks: readonly Block[]) => plainText((blocks[0] as Table).note!)
    expect(noteOf(deadBlocks(contextOf(inverter), 'T3'))).toMatch(/^Mains voltage/)
    expect(noteOf(deadBlocks(context, 'E1'))).toMatch(/draw the fuse/)
  })
  it('is nothing for what nothing hangs on', () => expect(lossBlocks(context, 'E1')).toEqual([]))
})

describe('the page', () => {
  it('has the way to look first, then the look-up', () => {
    expect(page!.blocks.slice(0, 2).map(({ is }) => is)).toEqual(['markdown', 'table'])
    expect(cellsOf(tableIn(page!, 'look-up-system-other'))).toEqual([
      ['Bilge pump G2', 'A1.1 blade fuse 5 A', 'A1 way 1, Helm (left)'], ['Lamp E1', 'A1.2 blade fuse 5 A', 'A1, Helm (left)']])
    expect(cellsOf(tableIn(page!, 'look-up-services')).map(([item]) => item)).toEqual(['Bilge pump G2'])
  })
  it('never has more than three columns', () => expect(Math.max(...tablesOf(page!).map(({ columns }) => columns.length))).toBe(3))
  it('names what ends each service', () => {
    const rows = cellsOf(tableIn(page!, 'single-points'))
    const [, givenBy, endedBy] = rows.find(([service]) => service === 'Bilge pumping')!
    expect(givenBy).toBe('G2 Bilge pump')
    // The nearest first; the main fuse and the isolator take alike.
    expect(endedBy).toMatch(/^G2, A1\.1, A1, F2, X1, (F1, Q1|Q1, F1), G1, and 6 cables or parts of a bus$/)
    expect(rows.find(([service]) => service === 'Position')![1]).toBe('nothing recorded')
  })
  it('names what each device takes, and what channels do', () => {
    expect(cellsOf(tableIn(page!, 'trips-a1'))[0]).toEqual(['A1.1 Circuit A1.1, blade fuse 5 A', 'A1 way 1, Helm (left)', 'Bilge pumping: G2 Bilge pump'])
    expect(cellsOf(tableIn(page!, 'module-a1'))[1]).toEqual(['A1.2 Circuit A1.2', 'stays as it is', 'Turn the key'])
    expect(wordsOn(page!)).toContain('no network that it is on is recorded')
  })
})
