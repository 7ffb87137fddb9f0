/** Whoever stands before a dead thing is told its fuse, also where no circuit lists the thing itself. */
import { fileURLToPath } from 'node:url'
import { beforeAll, expect, it } from 'vitest'
import { examine, viewOf } from '../../../src/build.js'
import { forEdition } from '../../../src/edition.js'
import { plainText } from '../../../src/view/tables.js'
import type { Block, View } from '../../../src/view/view-model.js'
import { examineCase } from '../../vessels/cases.js'

let view: View
beforeAll(async () => {
  const examined = await examine(fileURLToPath(new URL('../../../sample-vessel', import.meta.url)))
  if (examined.status !== 'examined') throw new Error('the sample vessel has errors')
  view = await viewOf(forEdition(examined, 'owner'))
})

const factOf = (key: string, label: string): string => {
  const entries = view.pages.find(page => page.key === key)!.blocks.flatMap(block => (block.is === 'facts' ? block.entries : []))
  return plainText(entries.find(entry => entry.label === label)!.value).replaceAll('\u00A0', ' ')
}

it.each([
  ['a load that a circuit lists', 'equipment/p1', 'A1.1'],
  ['a float switch in the circuit’s way', 'equipment/b53', 'A5.3'],
  ['an isolator behind the main fuse', 'equipment/q1', 'F1'],
  ['a device that its CAN bus supplies', 'equipment/b6', 'A1.7'],
])('%s', (_, key, circuit) => {
  expect(factOf(key, 'Protected by')).toMatch(new RegExp(`(^|[ ,])${circuit.replace('.', '\\.')} `))
})

it('of a battery is not the fuse behind it', () => {
  expect(factOf('equipment/g1', 'Protected by')).toBe('listed by no circuit')
})

it('of what lives on its network cable is the port that it lives on, and what is kept for it stands there', () => {
  expect(factOf('equipment/b23', 'Protected by')).toBe('no device of its own: it lives on port-2 of K5, over its network cable')
  expect(factOf('equipment/b23', 'Takes over its network cable')).toBe('4.8 W, class 2')
  // Classes 1 and 2 keep 4 W and 7 W of 60 W.
  expect(factOf('equipment/k5', 'Power for its ports')).toBe('60 W together at 52 V; left by class: 49.0 W of 60 W')
})

it('the workings of a vessel under ABYC print cross-section and length as its formula takes them', async () => {
  const examined = await examineCase('trawler-abyc')
  if (examined.status !== 'examined') throw new Error('the case has errors')
  const tables = (await viewOf(forEdition(examined, 'owner'))).pages.flatMap(({ blocks }) => blocks.filter(block => block.is === 'table' && block.id === 'drop-steps'))
  const cells = tables.flatMap(block => (block.is === 'table' ? block.rows.map(row => [plainText(row.cells[2]!), plainText(row.cells[3]!)]) : []))
  expect(cells.length).toBeGreaterThan(10)
  expect(cells.filter(([area, length]) => !/^\d+(\.\d+)?\u00A0cmil$/.test(area!) || !/^\d+(\.\d+)?\u00A0ft$/.test(length!))).toEqual([])
})

it('the verdict of a circuit is good only where no limit is missed by any measure', () => {
  const verdictOf = (circuit: string) => factOf(`circuits/${circuit}`, 'Verdict')
  expect([verdictOf('a1.1'), verdictOf('a5.3'), verdictOf('f32'), verdictOf('a2.8')])
    .toEqual(['within limits', 'outside limit', 'within by the constant only', 'not assessed'])
})

it('a circuit that a charger or alternator feeds as well says so', () => {
  expect(factOf('circuits/f17', 'Live from both ends')).toContain('G3 Alternator')
})

it('a link is brought in at its switch, not at its fuse, and the page says what to do first', () => {
  const table = view.pages.find(({ key }) => key === 'circuits/f1')!.blocks.find(block => block.is === 'table' && block.id === 'loss-f1')!
  if (table.is !== 'table') throw new Error('no table')
  expect(table.rows.map(({ cells }) => plainText(cells[2]!))).toContain('close Q3 (link F38)')
  expect(plainText(table.note!)).toMatch(/^Closing a link joins two supplies\. First find the fault/)
})

it('a battery at a link says how the other side can stand in for it', () => {
  const table = view.pages.find(({ key }) => key === 'equipment/g2')!.blocks.find(block => block.is === 'table' && block.id === 'loss-g2')!
  if (table.is !== 'table') throw new Error('no table')
  expect(plainText(table.note!)).toMatch(/^If it is only flat, Q3 \(link F38\) can join the other side to it/)
})

it('a battery has the cautions of its chemistry', () => {
  const titlesOf = (key: string) => view.pages.find(page => page.key === key)!.blocks.flatMap(block => (block.is === 'callout' ? [block.title] : [])).join(' ')
  expect(titlesOf('equipment/g1')).toMatch(/Lithium/)
  expect(titlesOf('equipment/g1')).not.toMatch(/Lead-acid/)
  expect(titlesOf('equipment/g2')).toMatch(/Lead-acid/)
  expect(titlesOf('equipment/g2')).not.toMatch(/Lithium/)
})

it('of a dead pump: its fuse, a line of cautions, the steps; the caution in full and its data behind', () => {
  const { blocks } = view.pages.find(({ key }) => key === 'equipment/g12')!
  const at = (found: (block: Block) => boolean): number => { const i = blocks.findIndex(found); expect(i).toBeGreaterThanOrEqual(0); return i }
  expect(blocks[0]).toMatchObject({ is: 'facts', entries: [{ label: 'Where' }, { label: 'Protected by' }] })
  const line = blocks[1]!
  expect(line.is === 'paragraph' && plainText(line.text)).toMatch(/^Read first: WARNING Bilge pumps must stay alive/)
  expect(blocks[2]).toMatchObject({ is: 'heading', text: 'G12 does not work' })
  const first = blocks[3]!
  expect(first.is === 'paragraph' && plainText(first.text)).toBe('Water rises? First Water in the boat.')
  const steps = at(({ is }) => is === 'steps')
  expect(at(({ is }) => is === 'callout')).toBeGreaterThan(steps)
  expect(at(block => block.is === 'facts' && block.caption === 'Data')).toBeGreaterThan(steps)
  // Both ways in lie in the same locker: how to get there is said once.
  expect(factOf('equipment/g12', 'Protected by').match(/access: /g)).toHaveLength(1)
})

it('of mains: the danger to life before the steps', () => {
  const { blocks } = view.pages.find(({ key }) => key === 'equipment/t20')!
  expect(blocks.findIndex(block => block.is === 'callout' && block.signal === 'DANGER')).toBeLessThan(blocks.findIndex(({ is }) => is === 'steps'))
})
