import { describe, expect, it } from 'vitest'
import { deadBlocks, lossBlocks } from '../../../src/view/pages/fault-tracing/fault-blocks.js'
import { faultTracingPages } from '../../../src/view/pages/fault-tracing/fault-tracing.view.js'
import { plainText } from '../../../src/view/tables.js'
import type { Block, Steps, Table } from '../../../src/view/view-model.js'
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
const pages = faultTracingPages(context)
const [page] = pages
const under = (name: string) => pages.find(({ key }) => key === `fault-tracing/${name}`)!
const rowsOf = (blocks: readonly Block[]) => cellsOf(blocks[0] as Table)
const stepsIn = (blocks: readonly Block[]): readonly Steps[] => blocks.filter(block => block.is === 'steps')

describe('what does not work', () => {
  const blocks = deadBlocks(context, 'G2')
  const [steps] = stepsIn(blocks)
  it('asks first what else is dead, then walks from the thing to the battery', () => {
    expect(blocks.map(({ is }) => is)).toEqual(['heading', 'paragraph', 'facts', 'steps', 'paragraph'])
    // Of a bilge pump the water comes before the fault.
    expect(blocks[1]!.is === 'paragraph' && plainText(blocks[1]!.text)).toBe('Water rises? First Water in the boat.')
    expect(steps!.steps.map(({ number, title }) => `${number} ${plainText(title)}`)).toEqual([
      '1 At G2 Bilge pump itself', '2 A1.1 Circuit A1.1, blade fuse 5\u00A0A', '3 F2 Circuit F2, no protection recorded', '4 F1 Circuit F1, no protection recorded', '5 Q1 Equipment Q1', '6 G1 Battery G1',
    ])
  })
  it('says how to get to a space once', () => {
    expect(plainText(steps!.steps[1]!.where!)).toBe('A1 way 1, Helm (left) (access: two screws)')
  })
  it('tells by what else is dead where to begin', () => {
    const first = blocks.find(({ is }) => is === 'facts')
    expect(first?.is === 'facts' && first.entries.map(({ label, value }) => `${label}: ${plainText(value)}`)).toEqual(['Step 1: only G2 is dead', 'Step 3: E1 Lamp is dead too'])
  })
  it('names the label to measure at, and says that no figure is assessed where the cable is not known', () => {
    const [, device] = steps!.steps
    expect(device!.lines.map(({ label, text }) => `${label}: ${plainText(text)}`)).toEqual([
      'Look: Is the channel on, and does the display say why not?',
      expect.stringMatching(/^Measure: between \+ and − of W1 A1\.1 \/ G2: how much to expect is not assessed: .*; the same in front of it\.$/),
      'There: behind it: the fault lies further on, in W1. Only in front of it: it is open, or bad.',
      'Not there: on neither side: go on.',
    ])
  })
  it('offers what can be closed', () => {
    const last = blocks.at(-1)
    expect(last?.is === 'paragraph' && plainText(last.text)).toMatch(/^Another way to feed it: close F9\. Find the fault first/)
  })
  it('warns of what can start by itself', () => expect(plainText(stepsIn(deadBlocks(contextOf(boat({
    equipment: [anEquipment({ tag: 'M1', kind: 'windlass', currentMaxA: 50 })], circuits: [circuit('A1.1', ['M1'])], cables: cables('W1: A1.1 > M1'),
  })), 'M1'))[0]!.note!)).toMatch(/^It can start at any moment/))
  it('of a circuit and of a panel too, without what hangs on it', () => {
    expect(deadBlocks(context, 'A1.2').map(({ is }) => is)).toEqual(['heading', 'facts', 'steps'])
    const [, first] = deadBlocks(context, 'A1.2')
    expect(first?.is === 'facts' && first.entries.map(({ label, value }) => `${label}: ${plainText(value)}`)).toEqual(['Step 1: only A1.2 is dead', 'Step 2: G2 Bilge pump is dead too'])
    expect(plainText(stepsIn(deadBlocks(context, 'A1.2'))[0]!.steps[0]!.title)).toMatch(/^A1\.2/)
    expect(stepsIn(deadBlocks(context, 'A1'))[0]!.steps.length).toBe(5)
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
  it('warns of mains, and measures nothing there', () => {
    const inverter = boat({
      equipment: [anEquipment({ tag: 'T3', kind: 'inverter', outputs: [anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 230 })] })],
      circuits: [circuit('A1.1', ['T3'])], cables: cables('W1: A1.1 > T3:dc'),
    })
    const noteOf = (blocks: readonly Block[]) => plainText(stepsIn(blocks)[0]!.note!)
    const live = {
      ...inverter, equipment: [...inverter.equipment, anEquipment({ tag: 'E9', currentMaxA: 1 })],
      circuits: [...inverter.circuits, aCircuit({ tag: 'F10', fedFromTag: 'T3', fedFromTerminal: 'ac', loadTags: ['E9'] })], cables: [...inverter.cables, ...cables('W10: F10 > E9')],
    }
    const blocks = deadBlocks(contextOf(live), 'E9')
    expect(noteOf(blocks)).toMatch(/^Mains voltage\. Look and switch only.*qualified person/)
    expect(stepsIn(blocks)[0]!.steps[0]!.lines.map(({ label }) => label)).toEqual(['Look'])
    expect(noteOf(deadBlocks(context, 'E1'))).toMatch(/Draw the fuse/)
  })
  it('is nothing for what nothing hangs on', () => expect(lossBlocks(context, 'E1')).toEqual([]))
})

describe('the page', () => {
  it('has the way to look first, then the look-up', () => {
    expect(page!.blocks.map(({ is }) => is)).toEqual(['markdown', 'heading', 'table', 'heading', 'cards', 'heading', 'cards', 'heading', 'cards'])
    expect(cellsOf(tableIn(under('system-other'), 'look-up-system-other'))).toEqual([
      ['Bilge pump G2', 'A1.1 blade fuse 5 A, then F2, F1', 'A1 way 1, Helm (left)'], ['Lamp E1', 'A1.2 blade fuse 5 A, then F2, F1', 'A1, Helm (left)']])
    expect(cellsOf(tableIn(page!, 'look-up-services')).map(([item]) => item)).toEqual(['Bilge pump G2'])
  })
  it('leads to each table behind it, and has them all on paper', () => {
    expect(pages.map(({ key }) => key)).toEqual(['fault-tracing', 'fault-tracing/system-other', 'fault-tracing/single-points', 'fault-tracing/if-this-trips', 'fault-tracing/networks-lost', 'fault-tracing/not-followed'])
    const linked = page!.blocks.flatMap(block => (block.is === 'cards' ? block.cards.map(({ to }) => to) : []))
    for (const { key } of pages.slice(1)) expect(linked).toContain(key)
    const onPaper = (page!.printed ?? []).flatMap(block => (block.is === 'table' ? [block.id] : []))
    expect(onPaper).toEqual(expect.arrayContaining(['look-up-system-other', 'single-points', 'trips-a1', 'module-a1', 'not-followed']))
  })
  it('never has more than three columns', () => expect(Math.max(...pages.flatMap(tablesOf).map(({ columns }) => columns.length))).toBe(3))
  it('names what ends each service', () => {
    const rows = cellsOf(tableIn(under('single-points'), 'single-points'))
    const [, givenBy, endedBy] = rows.find(([service]) => service === 'Bilge pumping')!
    expect(givenBy).toBe('G2 Bilge pump')
    // The nearest first; the main fuse and the isolator take alike.
    expect(endedBy).toMatch(/^G2, A1\.1, A1, F2, X1, (F1, Q1|Q1, F1), G1, and 6 cables or parts of a bus$/)
    expect(rows.find(([service]) => service === 'Position')![1]).toBe('nothing recorded')
  })
  it('names what each device takes, and what channels do', () => {
    expect(cellsOf(tableIn(under('if-this-trips'), 'trips-a1'))[0]).toEqual(['A1.1 Circuit A1.1, blade fuse 5 A', 'A1 way 1, Helm (left)', 'Bilge pumping: G2 Bilge pump'])
    expect(cellsOf(tableIn(under('networks-lost'), 'module-a1'))[1]).toEqual(['A1.2 Circuit A1.2', 'stays as it is', 'Turn the key'])
    expect(wordsOn(under('not-followed'))).toContain('no network that it is on is recorded')
  })
})
