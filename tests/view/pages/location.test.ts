/** Pages about where things are: what a reader finds on them, and what they say of a boat of which little is known. */
import { describe, expect, it } from 'vitest'
import type { Box, Photograph, Position, Vessel } from '../../../src/model/vessel.js'
import { equipmentPages } from '../../../src/view/pages/equipment/equipment.view.js'
import { locationDrawing, photographBlocks } from '../../../src/view/pages/location/location-blocks.js'
import { locationPages } from '../../../src/view/pages/location/location.view.js'
import { photographPages } from '../../../src/view/pages/location/photographs.view.js'
import { zonePages } from '../../../src/view/pages/location/zones.view.js'
import { panelPages } from '../../../src/view/pages/panels.view.js'
import type { Block, Drawing, Page, Picture } from '../../../src/view/view-model.js'
import { weave } from '../../../src/view/weave/weave.js'
import { aBattery, aCircuit, anEquipment, aPanel, aProtection, aVessel, aZone } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, wordsOn } from './support.js'

const aBox = (fromM: Position, toM: Position): Box => ({ fromM, toM })
const photograph = (given: Partial<Photograph>): Photograph => ({ file: 'photographs/helm.jpg', caption: 'The helm', zoneTag: 'helm', date: '2026-05-20', by: 'A. Person', callOuts: [], ...given })
const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  identity: { ...aVessel().identity, name: 'Knot', lengthM: 10, beamM: 3, draughtM: 0.8 },
  zones: [
    aZone({ tag: 'helm', name: 'Helm', access: 'Two screws', box: aBox([5, -1, 1], [7, 1, 3]) }), aZone({ tag: 'bilge', name: 'Bilge', box: aBox([4, -1, -0.5], [6, 1, 0]) }), aZone({ tag: 'bow', name: 'Bow' }),
  ],
  equipment: [
    anEquipment({ tag: 'P1', name: 'Display', kind: 'display', zoneTag: 'helm', positionM: [6, 0.5, 2], location: 'in the console' }),
    anEquipment({ tag: 'S1', name: 'Seacock', kind: 'seacock', zoneTag: 'bilge', positionM: [5, 0, -0.4] }),
    anEquipment({ tag: 'F1', name: 'Extinguisher', kind: 'fire extinguisher', zoneTag: 'helm' }),
    anEquipment({ tag: 'E1', name: 'Bow light', kind: 'light', zoneTag: 'bow' }), anEquipment({ tag: 'E2', name: 'Loose lamp', kind: 'torch' }),
  ],
  batteries: [aBattery({ tag: 'G1', name: 'House bank', zoneTag: 'bilge', positionM: [4.5, 0, -0.2] })],
  panels: [aPanel({ tag: 'A1', name: 'Helm panel', zoneTag: 'helm' })],
  circuits: [aCircuit({ tag: 'A1.1', fedFromTag: 'A1', loadTags: ['P1'], protection: aProtection('blade fuse', 5) })],
  photographs: [photograph({ callOuts: [{ itemTag: 'A1', fromLeftPercent: 10, fromTopPercent: 20, words: null }, { itemTag: 'P1', fromLeftPercent: 33.3, fromTopPercent: 66.6, words: 'left of the wheel' }] })],
  ...given,
})
const context = contextOf(boat())
const drawings = (blocks: readonly Block[]) => blocks.filter((block): block is Drawing => block.is === 'drawing')
const pictures = (blocks: readonly Block[]) => blocks.filter((block): block is Picture => block.is === 'picture')
const pageIn = (pages: readonly Page[], key: string) => { const page = pages.find(each => each.key === key); if (page === undefined) throw new Error(`no page ${key}`); return page }

describe('the location plan', () => {
  const [page] = locationPages(context) as readonly [Page]
  it('has a plan for each level and a profile', () => expect(drawings(page.blocks).map(({ id }) => id)).toEqual(['plan-1', 'plan-2', 'profile']))
  it('marks what is looked for in a hurry, and not every display', () => {
    expect(cellsOf(tableIn(page, 'marked-on-plans')).map(([tag, , zone, number]) => [tag, zone, number])).toEqual([['A1', 'Helm', '1'], ['F1', 'Helm', '2'], ['G1', 'Bilge', '1'], ['S1', 'Bilge', '2']])
    const [lower, upper] = drawings(page.blocks) as [Drawing, Drawing]
    expect([lower.svg.includes('>S1<'), lower.svg.includes('>F1<'), upper.svg.includes('>F1<'), upper.svg.includes('>P1<')]).toEqual([true, false, true, false])
  })
  it('lists every item once, by zone and number, with the way to it', () => expect(cellsOf(tableIn(page, 'items-by-zone'))).toEqual([
    ['Helm', '1', 'A1', 'Helm panel', '–', 'Two screws'], ['Helm', '2', 'F1', 'Extinguisher', '–', 'Two screws'], ['Helm', '3', 'P1', 'Display', 'in the console', 'Two screws'],
    ['Bilge', '1', 'G1', 'House bank', '–', 'not recorded'], ['Bilge', '2', 'S1', 'Seacock', '–', 'not recorded'], ['Bow', '1', 'E1', 'Bow light', '–', 'not recorded'],
    ['no zone recorded', '–', 'E2', 'Loose lamp', '–', '–'],
  ]))
  it('says once why there is no plan, and what to record', () => {
    const bare = contextOf(boat({ zones: [aZone({ tag: 'helm' }), aZone({ tag: 'bilge' }), aZone({ tag: 'bow' })] }))
    const [without] = locationPages(bare) as readonly [Page]
    expect(drawings(without.blocks)).toEqual([])
    expect(wordsOn(without).match(/no zone has its corners recorded\. Enter two opposite corners of each zone as from and to/g)).toHaveLength(1)
    expect(tableIn(without, 'items-by-zone').rows).toHaveLength(7)
    for (const zone of zonePages(bare)) expect(zone.blocks.filter(block => block.is === 'drawing')).toEqual([])
    expect(zonePages(bare).filter(({ key }) => key !== 'zones').map(wordsOn).join()).not.toContain('on no plan')
    expect(bare.results.location.notAssessed).toHaveLength(1)
  })
  it('is not there where nothing is', () => expect(locationPages(contextOf(aVessel()))).toEqual([]))
  it('lies over the yard’s own drawing', () => {
    const [over] = locationPages(contextOf(boat({ arrangementDrawings: [{ file: 'plan.png', view: 'plan', lowerLeftM: [0, -1.5, 0], upperRightM: [10, 1.5, 0] }] }))) as readonly [Page]
    expect(drawings(over.blocks).map(({ svg, pictures: shown }) => [svg.includes('asfitted-picture:plan.png'), shown])).toEqual([[true, ['plan.png']], [true, ['plan.png']], [false, []]])
  })
  it('has no id in any drawing', () => { for (const { svg } of drawings(page.blocks)) expect(svg).not.toMatch(/ id=|NaN|undefined/) })
})

describe('a zone', () => {
  const pages = zonePages(context)
  const helm = pageIn(pages, 'zones/helm')
  it('has its plan, its numbered list with fuses, and its photographs', () => {
    expect(drawings(helm.blocks).map(({ id }) => id)).toEqual(['zone-plan', 'zone-profile'])
    expect(cellsOf(tableIn(helm, 'equipment'))).toEqual([
      ['1', 'A1', 'Helm panel', '–', '', '–'], ['2', 'F1', 'Extinguisher', '–', '', '–'], ['3', 'P1', 'Display', 'in the console', 'A1.1 blade fuse 5 A', '–'],
    ])
    expect(pictures(helm.blocks).map(({ file }) => file)).toEqual(['photographs/helm.jpg'])
    expect(wordsOn(helm)).toContain('Dashed here: A1 and F1.')
  })
  it('shows from the side only what has a height', () => {
    const [above, side] = drawings(helm.blocks) as [Drawing, Drawing]
    expect(above.svg.match(/r="8.5"/g)).toHaveLength(3)
    expect(side.svg.match(/r="8.5"/g)).toHaveLength(1)
  })
  it('says that it is on no plan where others are', () => expect(wordsOn(pageIn(pages, 'zones/bow'))).toContain('This zone has no corners recorded (from and to), so it is on no plan.'))
  it('tells the same in words', () => expect(wordsOn(helm)).toContain('1: A1 Helm panel, somewhere in Helm 2: F1 Extinguisher, somewhere in Helm 3: P1 Display, 6.00 m forward of the transom, 0.50 m to port, 2.00 m above the waterline'))
  it('prints no photographs, which have a chapter of their own', () => expect(pictures(helm.printed!)).toEqual([]))
})

describe('the page of an item', () => {
  it('has a small plan with its one dot, and the photographs that show it', () => {
    const { blocks } = pageIn(equipmentPages(context), 'equipment/p1')
    const [plan] = drawings(blocks)
    expect(plan!.caption).toBe('Where it is, number 3 of Helm')
    expect(plan!.svg.match(/<circle/g)).toHaveLength(1)
    expect(plan!.svg.length).toBeLessThan(2500)
    const [picture] = pictures(blocks)
    expect(picture!.marks.map(({ number, fromLeft, fromTop, meant, to }) => [number, fromLeft, fromTop, meant, to])).toEqual([['1', '10%', '20%', false, 'panels/a1'], ['2', '33.3%', '66.6%', true, 'equipment/p1']])
    expect(picture!.list.map(({ number }) => number)).toEqual(['2'])
  })
  it('of a panel likewise', () => {
    const { blocks } = pageIn(panelPages(context, new Map()), 'panels/a1')
    expect([drawings(blocks).length, pictures(blocks).length]).toEqual([1, 1])
  })
  it('has none where no place is known', () => expect(drawings(pageIn(equipmentPages(context), 'equipment/e1').blocks)).toEqual([]))
})

describe('for other pages', () => {
  it('is a plan of the items asked for, with the zones that they are in', () => {
    const [plan] = drawings(locationDrawing(context, ['S1', 'P1', 'E1', 'nothing'], { id: 'here', caption: 'Here' }))
    expect(plan).toMatchObject({ id: 'here', caption: 'Here', narrow: true })
    expect([...plan!.svg.matchAll(/class="tag"[^>]*>([^<]+)/g)].map(([, tag]) => tag).toSorted()).toEqual(['P1', 'S1'])
    const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(plan!.svg)!.map(Number) as [number, number, number]
    // 85 mm wide on paper; a third of the 257 mm between the margins of an A4 sheet is 85 mm.
    expect((85 * height) / width).toBeLessThan(85)
  })
  it('is nothing where no zone has a box or none of the items a place', () => {
    expect(locationDrawing(context, ['E1'], { id: 'here', caption: 'Here' })).toEqual([])
    expect(locationDrawing(contextOf(boat({ zones: [aZone({ tag: 'helm' }), aZone({ tag: 'bilge' }), aZone({ tag: 'bow' })] })), ['P1'], { id: 'here', caption: 'Here' })).toEqual([])
  })
  it('are photographs with one of the items', () => {
    expect(photographBlocks(context, ['S1'])).toEqual([])
    expect(photographBlocks(context, ['S1', 'A1'])).toMatchObject([{ is: 'picture', list: [{ number: '1' }] }])
  })
  it('is woven into general text', () => {
    expect(weave(context, '{{ plan: seacock }}')).toMatchObject([{ is: 'drawing', id: 'plan-seacock', caption: 'On the plan: seacock' }])
    expect(weave(context, '{{ photographs: display, seacock }}')).toMatchObject([{ is: 'picture', file: 'photographs/helm.jpg' }])
    expect(weave(context, '{{ photographs: seacock }}')).toEqual([])
    expect(() => weave(context, '{{ plan: sea serpent }}')).toThrow('no kind of equipment "sea serpent"')
  })
})

describe('photographs', () => {
  it('have a page each, and a list', () => {
    const [list, page] = photographPages(context)
    expect(cellsOf(tableIn(list!, 'photograph-list'))).toEqual([['The helm', 'Helm', '2026-05-20', 'A1 P1']])
    expect(page).toMatchObject({ key: 'photographs/helm', title: 'The helm' })
    expect(pictures(page!.blocks)[0]).toMatchObject({ alternative: 'The helm. Numbered points: 1 A1 Helm panel, 2 P1 Display.', marks: [{ meant: false }, { meant: false }] })
    expect(wordsOn(page!)).toContain('Helm, 2026-05-20, A. Person\n1 A1 Helm panel\n2 P1 Display: left of the wheel')
  })
  it('whose names are alike have pages of their own; one that is entered twice has one', () => {
    const files = ['photographs/Helm.jpg', 'photographs/helm.png', 'helm.jpg', 'helm.jpg']
    const pages = photographPages(contextOf(boat({ photographs: files.map(file => photograph({ file })) }))).slice(1)
    expect(pages.map(({ key }) => key)).toEqual(['photographs/helm', 'photographs/helm-2', 'photographs/helm-3'])
    expect(pages[2]!.blocks.map(({ is }) => is)).toEqual(['picture', 'heading', 'picture'])
  })
  it('are no pages where there are none', () => expect(photographPages(contextOf(boat({ photographs: [] })))).toEqual([]))
})
