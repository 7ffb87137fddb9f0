/** What an owner reads on the sample's pages when something is dead; expected by thinking her wiring through, voltages by hand in the tests of the pass. */
import { describe, expect, it } from 'vitest'
import { deadBlocks } from '../../../src/view/pages/fault-tracing/fault-blocks.js'
import { faultTracingPages } from '../../../src/view/pages/fault-tracing/fault-tracing.view.js'
import { faultTreePages } from '../../../src/view/pages/fault-tracing/fault-trees.view.js'
import { plainText } from '../../../src/view/tables.js'
import type { Block, Page, Steps, Table } from '../../../src/view/view-model.js'
import { vesselAt } from '../../calculate/dependency/support.js'
import { aBattery, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, wordsOn } from './support.js'

const sample = contextOf(await vesselAt('sample-vessel'))
const stepsOf = (tag: string): readonly Steps[] => deadBlocks(sample, tag).filter(block => block.is === 'steps')
const wordsOf = (blocks: readonly Block[]): string => wordsOn({ key: '', title: '', kicker: null, lead: null, printed: null, trail: [], blocks })
const linesOf = (steps: Steps, at: number): readonly string[] => steps.steps[at]!.lines.map(({ label, text }) => `${label}: ${plainText(text).replaceAll('\u00A0', ' ')}`)

describe('the steps of the sample', () => {
  it('a pump with a float: pump, float, breaker, main fuse, battery', () => {
    const [supply] = stepsOf('G14')
    expect(supply!.steps.map(({ title }) => plainText(title).replaceAll('\u00A0', ' '))).toEqual([
      'At G14 Bilge pump, lazarette itself', 'B54 Float switch, lazarette', 'F40 Bilge pump, lazarette, by float, circuit breaker 7.5 A', 'G2 Starting bank',
    ])
    // 11.8016 V by hand, less 0.1 V
    // A float that hangs down leaves the pump dead, and nothing to read at it.
    expect(plainText(supply!.note!)).toContain('Measure with G14 switched on and the float of B54 held up: ')
    expect(linesOf(supply!, 0)[1]).toBe('Measure: between + and − of W75 G14:auto / B54:2: at least 11.70 V (it works from 10 V to 15 V).')
    // AGM at rest, common practice
    expect(linesOf(supply!, 3)[0]).toContain('12.80 V full, 12.30 V half, 11.80 V empty')
  })
  it('plus and minus in cables of their own are both named', () => {
    const isolator = stepsOf('P1')[0]!.steps.find(({ title }) => plainText(title).startsWith('F11'))!
    expect(plainText(isolator.lines[1]!.text)).toMatch(/^between \+ W31 F11 \/ A1:\+ and − W32 X2 \/ A1:-: at least /)
  })
  it('what its maker asks for is never undercut by what the cables may lose', () => {
    // With all that it draws the windlass may be left 10.18 V by its cables; its maker asks for 10.5 V.
    expect(linesOf(stepsOf('M17')[0]!, 0)[1]).toMatch(/: at least 10\.50 V \(it works from 10\.5 V to 15 V\)\.$/)
  })
  it('behind an isolator the minus is read where the drop of the way back has been lost too', () => {
    const isolator = stepsOf('P1')[0]!.steps.find(({ title }) => plainText(title).startsWith('Q1'))!
    // W1, W2 and back W5, W4: 0.005201 + 0.03597 + 0.04381 + 0.01289 = 0.0979 V; 12 − 0.0979 − 0.1
    expect(plainText(isolator.lines[1]!.text).replaceAll('\u00A0', ' ')).toBe('between + W3 Q1:2 / X1 and − W5 X2 / B37:load: at least 11.80 V.')
  })
  it('at a fuse it is said where the spares are, at a breaker not', () => {
    const steps = stepsOf('P1')[0]!
    const looks = steps.steps.map((step, i) => [plainText(step.title).split('\u00A0')[0]!.split(' ')[0], /Spare fuses: C32\./.test(linesOf(steps, i)[0]!)])
    expect(looks).toEqual([['At', false], ['A1.1', false], ['F11', true], ['Q1', false], ['F1', true], ['G1', false]])
  })
  it('on a CAN bus the tee, 60 Ω and the neighbours', () => {
    const words = wordsOf(deadBlocks(sample, 'B7'))
    expect(words).toMatch(/Tee X102 of CAN1 Navigation bus/)
    expect(words).toMatch(/its neighbours on the bus show: B9 .*, B8 /)
    expect(words).toMatch(/between the two data wires: 60 Ω/)
    expect(words).toMatch(/W712 B7:can \/ X102/)
  })
  it('on Ethernet the port, both labels and the address', () => {
    const words = wordsOf(deadBlocks(sample, 'S1'))
    expect(words).toMatch(/K5 Network switch, wheelhouse, port-1/)
    expect(words).toMatch(/does 192\.168\.50\.\d+ answer/)
  })
  it('on a serial link the wires and the rate', () => {
    const words = wordsOf(deadBlocks(sample, 'T2'))
    expect(words).toMatch(/Set to 4800 Bd at both ends\?/)
    expect(words).toMatch(/A \(signal \+\): T3:out-A to T2:in-A in W858, white/)
  })
  it('on mains looks and measures nothing', () => {
    const [supply] = stepsOf('T11')
    expect(supply!.steps.flatMap(({ lines }) => lines.map(({ label }) => label))).toEqual(supply!.steps.map(() => 'Look'))
    expect(plainText(supply!.note!)).toMatch(/^Mains voltage/)
  })
  it('every item with a supply has steps, and every step says where it is', () => {
    for (const [tag, lines] of sample.results.faultTracing.byTag) {
      if (lines.every(({ open }) => open)) continue
      const [supply] = deadBlocks(sample, tag).filter(block => block.is === 'steps')
      expect(supply?.steps.length, tag).toBeGreaterThan(0)
      for (const step of supply!.steps) expect(plainText(step.where!), `${tag} ${plainText(step.title)}`).not.toBe('')
    }
  })
})

describe('on paper', () => {
  const [page] = faultTracingPages(sample)
  const tables = page!.printed!.filter((block): block is Table => block.is === 'table')
  const rows = (id: string) => cellsOf(tables.find(table => table.id === id)!)
  it('has the steps of each safety service down to its panel', () => {
    expect(rows('steps-bilge-pumping').map(([at]) => at)).toEqual(expect.arrayContaining(['G14 Bilge pump, lazarette', 'then B54 Float switch, lazarette', 'then F40 Bilge pump, lazarette, by float, circuit breaker 7.5 A; then on from G2']))
    for (const service of ['engine-control', 'bilge-pumping', 'distress-radio', 'navigation-lights', 'position', 'alarms']) expect(rows(`steps-${service}`).length, service).toBeGreaterThan(1)
  })
  it('has the way on from each panel once, and the batteries at its end', () => {
    const heads = rows('steps-trunks').map(([at]) => at!).filter(at => !at.startsWith('then'))
    expect(heads).toEqual([...new Set(heads)])
    expect(heads.some(head => head.startsWith('G1 House bank'))).toBe(true)
    expect(heads.some(head => head.startsWith('X1 '))).toBe(true)
  })
  it('has one line for every other item, with its chain of fuses', () => {
    // Some 50 rows fill a sheet: the steps of what serves safety take no more than four.
    expect(tables.filter(({ id }) => id.startsWith('steps-')).reduce((sum, table) => sum + table.rows.length, 0)).toBeLessThan(130)
    expect(rows('look-up-system-navigation').find(([item]) => item!.startsWith('Helm display, port'))![1]).toBe('A1.1 circuit breaker 10 A, then F11, F1')
  })
  it('and on the site the same without the printed steps', () => {
    expect(page!.blocks.filter(block => block.is === 'table' && block.id.startsWith('steps-'))).toEqual([])
  })
})

describe('texts on faults of a sort', () => {
  const trees: readonly Page[] = faultTreePages(sample)
  const words = (key: string): string => wordsOn(trees.find(page => page.key === `fault-trees/${key}`)!)
  it('there is one for each, with the boat\u2019s own facts', () => {
    expect(trees.map(({ key }) => key.split('/')[1])).toEqual([
      'nothing-works', 'one-circuit-dead', 'fuse-blows-again', 'low-voltage', 'flat-battery', 'not-charged', 'no-shore-power', 'residual-current-device-trips',
      'can-bus', 'ethernet', 'serial', 'radio', 'position-lost', 'corrosion',
    ])
    expect(words('flat-battery')).toMatch(/G1 House bank.*12 V, lithium iron phosphate \| 13\.40 V, 13\.10 V, 12\.00 V/)
    expect(words('nothing-works')).toMatch(/F1 Main fuse, house bank, class T fuse 300 A/)
    // IEC 61008: from half to the whole of 30 mA
    expect(words('residual-current-device-trips')).toMatch(/F51 .*between 15 mA and 30 mA/)
    expect(words('can-bus')).toMatch(/CAN1 Navigation bus.*supply X115, Wheelhouse by A1\.7.*60 Ω/)
    expect(words('ethernet')).toMatch(/router 192\.168\.50\.1.*B21 192\.168\.50\.31.*T9 192\.168\.50\.41/)
    expect(words('serial')).toMatch(/SL1 .*4800 Bd \| T3 .* to T2 /)
    expect(words('not-charged')).toMatch(/G3 Alternator, port engine \| G1/)
    expect(words('position-lost')).toMatch(/B7 GNSS receiver, first/)
  })
  it('a boat without mains, networks and radio has none of theirs', () => {
    const bare = contextOf(aVessel({ batteries: [aBattery({ tag: 'G1' })], equipment: [anEquipment({ tag: 'E1', kind: 'light' })] }))
    expect(faultTreePages(bare).map(({ key }) => key.split('/')[1])).toEqual(['nothing-works', 'one-circuit-dead', 'fuse-blows-again', 'low-voltage', 'flat-battery', 'not-charged', 'corrosion'])
    expect(wordsOn(faultTreePages(bare)[4]!)).toContain('not assessed: its kind is not recorded')
  })
})
