/** The owner's part: which pages a boat has, what is woven into them, and the yard's procedures in their places. */
import { describe, expect, it } from 'vitest'
import type { Procedure, Vessel } from '../../../src/model/vessel.js'
import { withCautions } from '../../../src/view/cautions/caution-pages.js'
import { ownerPages } from '../../../src/view/pages/owner/owner.view.js'
import { markdownWithTags, proceduresAbout } from '../../../src/view/pages/owner/procedures.js'
import { operatingPages } from '../../../src/view/pages/owner/operating.view.js'
import { numberedOn } from '../../../src/view/weave/numbering.js'
import { weave } from '../../../src/view/weave/weave.js'
import { markdownToHtml } from '../../../src/render/markdown.js'
import { printedPlace, sitePlace } from '../../../src/render/links.js'
import { plainText } from '../../../src/view/tables.js'
import type { Block, Facts, Table } from '../../../src/view/view-model.js'
import { aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, aPanel, aProtection, aVessel, aZone } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, wordsOn } from './support.js'

const aProcedure = (given: Partial<Procedure>): Procedure => ({ title: 'A procedure', place: null, aboutTags: [], text: 'Text.', ...given })
const pagesOf = (vessel: Partial<Vessel>) => ownerPages(contextOf(aVessel(vessel)))
const keysOf = (vessel: Partial<Vessel>) => pagesOf(vessel).map(({ key }) => key)

describe('pages', () => {
  const always = ['owner', 'owner/orientation', 'owner/first-hour', 'owner/start-up', 'owner/shut-down', 'owner/night-at-anchor', 'owner/leaving-the-boat']

  it('without a shore inlet say nothing of shore power', () => {
    expect(keysOf({})).toEqual(always)
    expect(keysOf({ equipment: [anEquipment({ tag: 'X1', kind: 'shore inlet', status: 'removed' })] })).toEqual(always)
    expect(keysOf({ equipment: [anEquipment({ tag: 'X1', kind: 'shore inlet' })] })).toContain('owner/shore-power-connect')
  })

  it('show the yard’s procedure in place of the general text, also where there would be none', () => {
    const place = 'shore-power-connect'
    const pages = pagesOf({ procedures: [aProcedure({ title: 'Plugging in', place, text: 'From the quay only.' })] })
    const page = pages.find(({ key }) => key === `owner/${place}`)
    expect(page).toMatchObject({ title: 'Plugging in', blocks: [{ is: 'markdown', source: 'From the quay only.' }] })
  })

  it('show cautions of a task at its top', () => {
    const context = contextOf(aVessel())
    const caution = { ...context.content.cautions[0]!, title: 'Mind the step', tasks: ['start-up'] as const, equipmentKinds: [], systems: [], needs: [] }
    const warned = { ...context, content: { ...context.content, cautions: [caution] } }
    const page = withCautions(warned, ownerPages(warned)).find(({ key }) => key === 'owner/start-up')
    expect(page!.blocks[0]).toMatchObject({ is: 'callout', title: 'Mind the step' })
  })

  it('gather on one page the procedures that take no page’s place, so that none is lost', () => {
    const pages = pagesOf({ procedures: [aProcedure({ title: 'Folding the mast' }), aProcedure({ title: 'Plugging in', place: 'start-up' })] })
    const page = pages.find(({ key }) => key === 'owner/procedures')
    expect(page!.blocks.filter(({ is }) => is === 'heading')).toEqual([{ is: 'heading', text: 'Folding the mast', anchor: null }])
    expect(keysOf({ procedures: [aProcedure({ place: 'start-up' })] })).not.toContain('owner/procedures')
  })
})

describe('a procedure', () => {
  const vessel = aVessel({
    zones: [aZone({ tag: 'helm', name: 'Helm' })],
    equipment: [anEquipment({ tag: 'P1', name: 'Display [*port*] | <b>&amp;</b> `x`' })],
    procedures: [aProcedure({ title: 'One', aboutTags: ['P1', 'helm'], text: 'See [[helm]].' }), aProcedure({ title: 'Two', aboutTags: ['P1'] })],
  })
  const context = contextOf(vessel)

  it('stands with each thing that it is about, under its title', () => {
    expect(proceduresAbout(context, 'P1').map(block => (block.is === 'heading' ? block.text : block.is))).toEqual(['One', 'markdown', 'Two', 'markdown'])
    expect(proceduresAbout(context, 'helm')).toEqual([{ is: 'heading', text: 'One', anchor: null }, { is: 'markdown', source: 'See [Helm](asfitted:zones/helm).' }])
  })

  it('links each tag with its name, letter for letter, and leaves code alone', () => {
    const html = markdownToHtml(markdownWithTags(context, 'Use [[P1]], not `[[P1]]`, and {{ name }}.'), sitePlace('owner/start-up'))
    expect(html).toBe('<p>Use <a href="../../equipment/p1/index.html">P1 Display [*port*] | &lt;b&gt;&amp;amp;&lt;/b&gt; `x`</a>, not <code>[[P1]]</code>, and {{ name }}.</p>\n')
  })
  it('leads to no file, fetches no picture, runs nothing, and leaves the words', () => {
    const html = markdownToHtml(markdownWithTags(context, [
      '[Wiring](docs/w.pdf) [ours](asfitted:nowhere) [js](javascript:alert(1)) ![panel](https://host.invalid/p.jpg) [web](https://host.invalid)', '', '[Wiring][1] ![panel][1] <img src=x onerror=y>', '', '[1]: docs/w.pdf',
    ].join('\n')), sitePlace('owner/start-up'))
    expect(html).toBe('<p>Wiring ours [js](javascript:alert(1)) panel <a href="https://host.invalid">web</a></p>\n<p>Wiring panel &lt;img src=x onerror=y&gt;</p>\n')
  })

  it('has no heading that stands as high as the title of its page', () => {
    const text = '# One\n## Two\n### Three'
    const levels = (html: string): readonly string[] => [...html.matchAll(/<h(\d)>/g)].map(([, level]) => level!)
    expect(levels(markdownToHtml(text, sitePlace('owner/start-up')))).toEqual(['2', '2', '3'])
    expect(levels(markdownToHtml(text, printedPlace('owner/start-up')))).toEqual(['2', '2', '3'])
  })
})

it('steps count on over what is left out, and begin again after a heading', () => {
  expect(numberedOn(['1. a', '', '3. c', '   more', '## h', '7. x', '9. y', '1. z', 'in 3. no step'])).toEqual(['1. a', '', '2. c', '   more', '## h', '1. x', '2. y', '1. z', 'in 3. no step'])
})

describe('orientation', () => {
  // Stands at 5 m forward, 1 m to port, on a sole 1 m up. Ahead of 1 m and 0.5 m to port: ahead. 0.2 m aft and 2 m to port: left.
  const at = (tag: string, positionM: readonly [number, number, number] | null) => anEquipment({ tag, name: `Thing ${tag}`, kind: 'display', zoneTag: 'helm', positionM })
  const vessel = aVessel({
    zones: [aZone({ tag: 'bow', name: 'Bow', space: 'deck' }), aZone({ tag: 'helm', name: 'Helm', access: 'By the door' }), aZone({ tag: 'cabin', name: 'Cabin' }), aZone({ tag: 'store', name: 'Store' })],
    standingPlaces: [{ tag: 'SP1', name: 'At the wheel', zoneTag: 'helm', positionM: [5, 1, 1], headHeightM: 1.7 } as Vessel['standingPlaces'][number]],
    equipment: [
      at('P1', [6, 1.5, 2]), at('P2', [4.8, 3, 2]), at('P3', [5.5, 0, 2]), at('P4', [3, 1, 2]), at('P5', [5, 1, 3.5]), at('P6', [5, 1, 0.5]), at('P7', null),
      anEquipment({ tag: 'M1', kind: 'windlass', zoneTag: 'bow', positionM: [10, 0.1, 1] }), anEquipment({ tag: 'E1', kind: 'light', zoneTag: 'cabin', positionM: [2, -1, 2] }),
      anEquipment({ tag: 'B9', kind: 'tank sensor', zoneTag: 'store', positionM: [2, -1, 2] }),
    ],
  })
  const blocks = weave(contextOf(vessel), '{{ orientation }}')
  const facts = blocks.filter((block): block is Facts => block.is === 'facts')
  const sides = (i: number) => Object.fromEntries(facts[i]!.entries.map(({ label, value }) => [label, plainText(value)]))

  it('begins where the first standing place is and goes on to the nearest space; outside comes after inside', () => {
    expect(facts.map(({ caption }) => caption)).toEqual(['Helm: at the wheel, facing forward', 'Cabin', 'Bow'])
    expect(blocks.filter(({ is }) => is === 'heading').map(block => block.is === 'heading' && block.text)).toEqual(['Inside', 'Outside'])
  })

  it('says on which side each thing is, as seen by who stands there', () => {
    expect(sides(0)).toEqual({
      'Space': 'Helm (access: By the door)', 'Ahead': 'P1 Thing P1', 'Left': 'P2 Thing P2', 'Right': 'P3 Thing P3', 'Behind': 'P4 Thing P4', 'Overhead': 'P5 Thing P5', 'Under your feet': 'P6 Thing P6', 'Also here': 'P7 Thing P7',
    })
    expect(sides(1)).toMatchObject({ 'To starboard': 'E1 Equipment E1' })
    expect(sides(2)).toMatchObject({ 'On the centreline': 'M1 Equipment M1' })
  })
})

describe('a boat with isolators', () => {
  // G1 → Q1 → X1 → A1 → P1, E1, and past the isolator straight to the bilge pump M1; G2 → Q2 → M9; Q3 joins the two in need.
  const c = (tag: string, from: string, to: string) => aCable({ tag, from, to, typeTag: 'CT' })
  const vessel = aVessel({
    zones: [aZone({ tag: 'locker' })], cableTypes: [aCableType({ tag: 'CT' })],
    batteries: [aBattery({ tag: 'G1', capacityAh: 100 }), aBattery({ tag: 'G2', capacityAh: 80 })], busbars: [aBusbar({ tag: 'X1' })], panels: [aPanel({ tag: 'A1', name: 'Panel', ways: 6 })],
    equipment: [
      anEquipment({ tag: 'Q1', name: 'House', kind: 'battery isolator', zoneTag: 'locker' }), anEquipment({ tag: 'Q2', name: 'Starting', kind: 'battery isolator' }), anEquipment({ tag: 'Q3', name: 'Link', kind: 'battery isolator' }),
      anEquipment({ tag: 'P1', kind: 'display' }), anEquipment({ tag: 'E1', kind: 'light' }), anEquipment({ tag: 'M1', name: 'Bilge pump', kind: 'bilge pump' }), anEquipment({ tag: 'M9', name: 'Starter', kind: 'starter motor' }),
    ],
    circuits: [
      aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['X1'], protection: aProtection('class T fuse', 100) }), aCircuit({ tag: 'F2', fedFromTag: 'X1', loadTags: ['A1'], protection: aProtection('terminal fuse', 60) }),
      aCircuit({ tag: 'A1.1', fedFromTag: 'A1', way: 1, loadTags: ['P1'], protection: aProtection('circuit breaker', 5) }), aCircuit({ tag: 'A1.2', fedFromTag: 'A1', way: 2, loadTags: ['E1'], protection: aProtection('circuit breaker', 5) }),
      aCircuit({ tag: 'F3', fedFromTag: 'G1', loadTags: ['M1'], protection: aProtection('circuit breaker', 5) }), aCircuit({ tag: 'F4', fedFromTag: 'G2', loadTags: ['M9'], unprotectedReason: 'engine starting' }),
      aCircuit({ tag: 'F5', fedFromTag: 'G2', loadTags: ['X1'], normalState: 'open', protection: aProtection('class T fuse', 100) }),
    ],
    cables: [c('W1', 'F1', 'Q1'), c('W2', 'Q1', 'X1'), c('W3', 'F2', 'A1'), c('W4', 'A1.1', 'P1'), c('W5', 'A1.2', 'E1'), c('W6', 'F3', 'M1'), c('W7', 'F4', 'Q2'), c('W8', 'Q2', 'M9'), c('W9', 'F5', 'Q3'), c('W10', 'Q3', 'X1')],
  })
  const context = contextOf(vessel)
  const tableOfBlocks = (blocks: readonly Block[]): Table => blocks.find((block): block is Table => block.is === 'table')!

  it('turns them off as on the emergency pages, on the other way round, and leaves a link open', () => {
    const order = (way: string) => cellsOf(tableOfBlocks(weave(context, `{{ isolators-in-order: ${way} }}`))).map(([isolator]) => isolator)
    // Q2 carries the starter's current, so it is opened last, as an emergency asks.
    expect(order('off')).toEqual(['1. Q1 House', '2. Q2 Starting', 'leave open: Q3 Link'])
    expect(order('on')).toEqual(['1. Q2 Starting', '2. Q1 House', 'leave open: Q3 Link'])
    expect(() => weave(context, '{{ isolators-in-order: sideways }}')).toThrow(/"on" or "off"/)
  })

  it('names what stays live without them, and nothing else', () => {
    expect(cellsOf(tableOfBlocks(weave(context, '{{ always-live-table }}'))).map(([what, device]) => [what, device])).toEqual([['M1 Bilge pump', 'F3 circuit breaker 5 A']])
  })

  it('tells of each kind on board how it is switched and on what it lives', () => {
    const page = operatingPages(context).find(({ key }) => key === 'operating/displays')!
    expect(wordsOn(page)).toContain('A1.1 A1 way 1')
    expect(wordsOn(page)).toContain('Lives on G1 Battery G1, through Q1')
    expect(operatingPages(context).map(({ key }) => key)).not.toContain('operating/radar')
  })

  it('says that it does not know how long the batteries last without a mode', () => {
    const [block] = weave(context, '{{ on-batteries }}')
    expect(block).toMatchObject({ is: 'paragraph', text: [expect.stringContaining('not assessed')] })
  })
})
