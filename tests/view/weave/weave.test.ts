/** General text with the boat's facts woven in. */
import { describe, expect, it } from 'vitest'
import { readContent } from '../../../src/load/read-content.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { plainText } from '../../../src/view/tables.js'
import type { Block } from '../../../src/view/view-model.js'
import { weave } from '../../../src/view/weave/weave.js'
import { aBattery, anEquipment, aVessel, aZone } from '../../support/vessel-builder.js'
import { vesselAt } from '../../calculate/dependency/support.js'
import { contextOf } from '../pages/support.js'

const seacock = anEquipment({ tag: 'Q41', name: 'Seacock', kind: 'seacock', zoneTag: 'heads', location: 'under the basin' })
const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({ zones: [aZone({ tag: 'heads', name: 'Heads', access: 'mirror' })], equipment: [seacock], ...given })
const woven = (text: string, vessel = boat()): readonly Block[] => weave(contextOf(vessel), text)
const sourceOf = (text: string, vessel?: Vessel): string => woven(text, vessel).map(block => (block.is === 'markdown' ? block.source : `<${block.is}>`)).join('|')

describe('text', () => {
  it('without anything to weave stays as it is', () => expect(sourceOf('# Title\n\n1. One\n2. Two\n')).toBe('# Title\n\n1. One\n2. Two'))
  it('that comes to nothing is no block', () => expect(woven('{{ if: liferaft }}\nText\n{{ end }}')).toEqual([]))
  it('is parted by what stands between', () => expect(sourceOf('Before\n{{ where: seacock }}\nAfter')).toBe('Before|<table>|After'))
})

describe('words', () => {
  it('stand in a line, with or without words of their own', () => {
    expect(sourceOf('She is {{ vessel }}, {{call-sign}}.')).toBe('She is Test vessel, call sign not recorded.')
    expect(sourceOf('Shut them {{ at: seacock }}.')).toBe('Shut them ([Q41](asfitted:equipment/q41): **Heads**).')
  })

  it('that come to nothing take the blank before them along', () => expect(sourceOf('Shut them {{ at: liferaft }}.')).toBe('Shut them.'))
  it('may stand alone in a line', () => expect(sourceOf('{{ vessel }}')).toBe('Test vessel'))

  it('of a vessel are no marks of Markdown, and no directives', () => {
    const named = (name: string): Vessel => ({ ...boat(), identity: { ...boat().identity, name } })
    expect(sourceOf('{{ vessel }}', named('*A* <b> [x](y) `c` ~z~ a&amp;b'))).toBe('\\*A\\* \\<b\\> \\[x\\](y) \\`c\\` \\~z\\~ a\\&amp;b')
    expect(sourceOf('{{ vessel }} {{ mmsi }}', named('{{ mmsi }}'))).toBe('{{ mmsi }} MMSI not recorded')
    expect(sourceOf('{{ vessel }}', named('$& $1'))).toBe('$\\& $1')
  })

  it('go by zone, the first three', () => {
    const zones = ['a', 'b', 'c', 'd'].map(tag => aZone({ tag, name: tag.toUpperCase() }))
    const equipment = ['a', 'a', 'b', 'c', 'd'].map((zoneTag, i) => anEquipment({ tag: `F${i}`, kind: 'fire extinguisher', zoneTag }))
    const text = sourceOf('Take {{ at: fire extinguisher }}', boat({ zones, equipment })).replace(/\[(\w+)\]\([^)]*\)/g, '$1')
    expect(text).toBe('Take (F0, F1: **A**; F2: **B**; F3: **C**, and more below)')
  })

  it('leave out what is removed, and what is only planned', () => {
    for (const status of ['removed', 'planned'] as const) expect(sourceOf('Shut {{ at: seacock }}.', boat({ equipment: [{ ...seacock, status }] }))).toBe('Shut.')
  })
})

describe('conditions', () => {
  const text = 'a\n{{ if: seacock }}\nb\n{{ else }}\nc\n{{ end }}\nd'
  it('hold for a kind that is on board', () => {
    expect(sourceOf(text)).toBe('a\nb\nd')
    expect(sourceOf(text, boat({ equipment: [] }))).toBe('a\nc\nd')
    expect(sourceOf(text, boat({ equipment: [{ ...seacock, status: 'removed' }] }))).toBe('a\nc\nd')
  })
  it('hold back tables and lists as well', () => {
    expect(sourceOf('{{ if: liferaft }}\n{{ where: seacock }}\n{{ else }}\nnone\n{{ end }}')).toBe('none')
  })
  it('hold for any of several', () => expect(sourceOf('{{ if: liferaft, seacock }}\nyes\n{{ end }}')).toBe('yes'))

  it('stand within one another: the inner holds only where the outer does', () => {
    const nested = '{{ if: liferaft }}\nx\n{{ if: seacock }}\ny\n{{ else }}\nz\n{{ end }}\n{{ else }}\nw\n{{ end }}\nv'
    expect(sourceOf(nested)).toBe('w\nv')
    expect(sourceOf(nested.replaceAll('liferaft', 'seacock'))).toBe('x\ny\nv')
  })

  it('know batteries by their chemistry; one that is not recorded may be either', () => {
    const asked = (chemistry: 'lfp' | 'agm' | null) => sourceOf('{{ if: lithium battery }}\nlithium\n{{ end }}\n{{ if: lead-acid battery }}\nlead\n{{ end }}', boat({ batteries: [aBattery({ tag: 'G1', chemistry })] }))
    expect([asked('lfp'), asked('agm'), asked(null)]).toEqual(['lithium', 'lead', 'lithium\nlead'])
  })

  it('keep the numbers of a list going', () => {
    expect(sourceOf('1. One\n{{ if: liferaft }}\n2. Two\n{{ end }}\n3. Three')).toBe('1. One\n2. Three')
  })
})

describe('faults of the text are faults of ours', () => {
  it.each([
    ['{{ wher: seacock }}', /no directive and no fact "wher"/], ['a {{ nonsense }} b', /no directive and no fact "nonsense"/], ['{{ where: seacok }}', /no kind of equipment "seacok"/],
    ['{{ if: seacok }}\n{{ end }}', /no kind of equipment "seacok"/], ['{{ if: seacock }}\nx', /without its "end"/], ['{{ end }}', /an "end" without its "if"/], ['{{ else }}', /an "else" without its "if"/],
    ['{{ if: seacock }}\n{{ else }}\n{{ else }}\n{{ end }}', /a second "else"/], ['a {{ Vessel }} b', /braces that are no directive/], ['{{ vessel', /braces/], ['{{ reach }}', /without a caption/],
    ['{{ constructor }}', /no directive and no fact/], ['a {{ at: toString }}', /no kind of equipment "toString"/],
  ])('%s', (text, message) => expect(() => woven(text)).toThrow(message))

  it('and show on any boat, also where the text would not hold', () => {
    expect(() => woven('{{ if: liferaft }}\n{{ where: seacok }}\n{{ end }}')).toThrow(/seacok/)
    expect(() => woven('{{ if: liferaft }}\na {{ nonsense }}\n{{ end }}')).toThrow(/nonsense/)
  })
})

it('lists under one caption that follow one another are one list', () => {
  const lists = woven('{{ reach: Shut, seacock }}\n{{ reach: Shut, seacock }}\n{{ reach: Else, seacock }}')
  expect(lists.map(block => (block.is === 'reach' ? `${block.caption} ${block.entries.length}` : block.is))).toEqual(['Shut 2', 'Else 1'])
})

describe('every general text', () => {
  it('can be woven for a boat with everything and for one with nothing', async () => {
    const { emergency, owner, operating, systems, faultTrees } = await readContent()
    const texts = [...emergency.values(), ...owner.values(), ...operating, ...systems.values(), ...faultTrees].map(({ markdown }) => markdown)
    expect(texts.length).toBeGreaterThan(5)
    for (const vessel of [aVessel(), await vesselAt('sample-vessel')]) {
      const context = contextOf(vessel)
      for (const text of texts) {
        const blocks = weave(context, text)
        expect(blocks.flatMap(block => (block.is === 'markdown' ? [block.source] : [])).join('\n')).not.toMatch(/\{\{|\}\}|undefined|null/)
      }
    }
  })
})

describe('a table of where', () => {
  it('names place and access, and says when there is none', () => {
    const [table] = woven('{{ where: seacock, VHF }}'.replace(', VHF', ', vhf transceiver'))
    if (table?.is !== 'table') throw new Error('no table')
    expect(table.caption).toBe('Where: seacock, VHF transceiver')
    expect(table.rows.map(row => row.cells.map(plainText))).toEqual([['Q41 Seacock', 'Heads: under the basin (access: mirror)']])
    const [none] = woven('{{ where: liferaft }}')
    expect(none).toMatchObject({ is: 'table', rows: [], empty: 'None is recorded.' })
  })
})
