import { describe, expect, it } from 'vitest'
import { firstRows, plainText, tableOf } from '../../src/view/tables.js'
import type { Block, Working } from '../../src/view/view-model.js'
import { formulaOnce } from '../../src/view/parts/working.js'

const working = (title: string, formula: string | null, source = 'Source: one.'): Working =>
  ({ is: 'working', title, formula, inputs: [{ symbol: 'a', label: title, value: '1', remark: null }], results: [], limit: null, verdict: null, sources: [source], assumes: ['So it is.'] })

describe('a formula on paper', () => {
  const first = working('First', 'a = b')
  const other = working('Other', 'a = c')
  const elsewhere = working('Elsewhere', 'a = b', 'Source: two.')
  const words: Block = { is: 'paragraph', text: ['between'] }

  it('stands once; after that only what goes in and comes out, with where it stands', () => {
    const again = working('Again', 'a = b')
    expect(formulaOnce([first, words, other, again])).toEqual([
      first, words, other, { ...again, formula: null, assumes: [], sources: ['Formula and source as under: First.'] },
    ])
  })
  it('stands again where its source is another, and where there was none', () => {
    expect(formulaOnce([first, elsewhere, working('None', null), working('None either', null)])).toEqual([first, elsewhere, working('None', null), working('None either', null)])
  })
})

describe('the first rows of a table', () => {
  const table = tableOf([1, 2, 3], { id: 't', caption: 'T', empty: '', note: ['A note.'], columns: [{ title: 'N', width: 'number', cell: n => [String(n)] }] })

  it('are all where there are no more', () => expect(firstRows(table, 3)).toEqual(table))
  it('say how many are left out', () => {
    const { rows, note } = firstRows(table, 2)
    expect(rows.map(({ cells: [cell] }) => plainText(cell!))).toEqual(['1', '2'])
    expect(plainText(note!)).toBe('A note. 1 more on the site.')
  })
})
