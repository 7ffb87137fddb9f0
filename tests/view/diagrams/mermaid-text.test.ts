import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, escaped, legendEntries, mermaidText, rowsOf, wordOf } from '../../../src/view/diagrams/mermaid-text.js'
import { nastyNames } from './nasty-names.js'

const aBox = (given: Partial<Box> & Pick<Box, 'key'>): Box => ({ is: 'load', tag: given.key, beside: [], below: [], page: null, ...given })

describe('wordOf', () => {
  it('is a word that can be read back, so no two texts have the same', () => {
    const readBack = (word: string) => word.replace(/_([0-9a-f]+)_/g, (_, code: string) => String.fromCodePoint(parseInt(code, 16)))
    fc.assert(fc.property(fc.string({ unit: 'binary' }), text => {
      expect(wordOf(text)).toMatch(/^\w*$/)
      expect(readBack(wordOf(text))).toBe(text)
    }))
  })
  it('tells apart what only marks tell apart', () => {
    const tags = ['A1.7', 'A1-7', 'A1_7', 'A1/7', 'A17', 'a1.7', 'A1_2e_7', 'A1:7']
    expect(new Set(tags.map(wordOf)).size).toBe(tags.length)
    expect(wordOf('A1.7')).toBe('A1_2e_7')
  })
})

// That mermaid prints these as they were is held against mermaid itself, in drawing.test.ts.
describe('escaped', () => {
  it('leaves nothing that ends a label, a tag or a line', () => {
    for (const name of nastyNames) expect(escaped(name)).not.toMatch(/["<>\n]/)
    fc.assert(fc.property(fc.string({ unit: 'binary' }), text => {
      expect(escaped(text)).not.toMatch(/["<>\n\r]/)
    }))
  })
  it('leaves ordinary names alone', () => {
    for (const name of ['Pump #2', 'Fan (aft), 12 V', 'Größe 2 × 2.5 mm²', "Owner's cabin", '50 % duty; see note: A/B']) expect(escaped(name)).toBe(name)
  })
  it('parts what would begin a code, and prints quotes as print does', () => {
    expect(escaped('#35;')).toBe('#\u206035;')
    expect(escaped('R&D <b>')).toBe('R&amp;D &lt;b&gt;')
    expect(escaped('the "old" pump, 3"')).toBe('the \u201Cold\u201D pump, 3\u201D')
    expect(escaped(' two\n lines\u0000 ')).toBe('two lines')
  })
})

describe('rowsOf', () => {
  it('has the tag first, then its facts, then the name', () => {
    expect(rowsOf(aBox({ key: 'A1.7', beside: ['way 7', '10 A'], below: ['Helm display, port'] }))).toEqual(['A1.7 · way 7 · 10 A', 'Helm display, port'])
  })
  it('breaks between words, never inside a number with its unit, and leaves a long word whole', () => {
    const rows = rowsOf(aBox({ key: 'G1', beside: ['12\u00A0V', '400\u00A0Ah', 'planned'], below: ['Searchlight on the wheelhouse roof', 'Unterwasserscheinwerfersteuerung'] }))
    expect(rows).toEqual(['G1 · 12\u00A0V · 400\u00A0Ah', 'planned', 'Searchlight on the', 'wheelhouse roof', 'Unterwasserscheinwerfersteuerung'])
  })
})

describe('mermaidText', () => {
  it('writes every part of a drawing', () => {
    expect(mermaidText({
      direction: 'left to right',
      placement: 'balanced',
      boxes: [
        aBox({ key: 'G1', is: 'source', beside: ['12 V'], below: ['House "bank"'], page: 'equipment/g1' }),
        aBox({ key: 'X5:1', is: 'junction', below: ['Terminals'] }),
      ],
      lines: [{ from: 'G1', to: 'X5:1', label: ['W1', '70 mm²'], stroke: 'plain' }, { from: 'X5:1', to: 'G1', label: [], stroke: 'broken' }],
      frames: [{ key: 'Z1', title: ['Locker'], boxKeys: ['X5:1'] }],
    })).toBe(`---
config:
  flowchart:
    wrappingWidth: 2000
  elk:
    nodePlacementStrategy: BRANDES_KOEPF
    nodePlacementAlignment: BALANCED
---
flowchart LR
  classDef source fill:#ffffff,stroke:#1b2a33,stroke-width:4px,color:#1b2a33
  classDef junction fill:#ffffff,stroke:#1b2a33,stroke-width:2px,color:#1b2a33
  nG1["G1 · 12 V<br/>House \u201Cbank\u201D"]
  nG1@{ shape: lin-rect }
  class nG1 source
  click nG1 href "asfitted:equipment/g1"
  nX5_3a_1["X5:1<br/>Terminals"]
  nX5_3a_1@{ shape: stadium }
  class nX5_3a_1 junction
  subgraph fZ1["Locker"]
    nX5_3a_1
  end
  nG1 ---|"W1<br/>70 mm²"| nX5_3a_1
  nX5_3a_1 -.- nG1
`)
  })
  it('has a name for each outline', () => {
    expect(legendEntries.map(({ is }) => is)).toEqual(
      ['source', 'protection', 'switch', 'busbar', 'panel', 'module', 'load', 'junction', 'reference'])
    expect(new Set(legendEntries.map(({ name }) => name)).size).toBe(legendEntries.length)
  })
})
