import { describe, expect, it } from 'vitest'
import { labelRows, labelWidth } from '../../../src/view/drawings/call-labels.js'

const rowsOf = (texts: readonly string[], width: number) => labelRows(texts.map((text, i) => ({ text, x: i })), { left: 10, width, textOf: ({ text }) => text, wantedX: ({ x }) => x })

describe('labels in rows', () => {
  // By hand: short "AB" is 2 · 6.6 + 9 = 22.2 wide, long "A very long name" 16 · 6.6 + 9 = 114.6.
  it('reckons a width by its letters', () => expect([labelWidth('AB'), labelWidth('A very long name')]).toEqual([expect.closeTo(22.2, 6), expect.closeTo(114.6, 6)]))

  it('takes as many rows as keep every label inside, also where the long names would fall into one', () => {
    // Together 3 · 114.6 + 3 · 22.2 = 410.4, two rows of 300; dealt in turn the long ones alone would be 343.8 in the first.
    const rows = rowsOf(['A very long name', 'AB', 'B very long name', 'CD', 'C very long name', 'EF'], 300)
    for (const row of rows) {
      for (const { thing, labelX } of row) {
        expect(labelX - labelWidth(thing.text) / 2).toBeGreaterThanOrEqual(10)
        expect(labelX + labelWidth(thing.text) / 2).toBeLessThanOrEqual(310)
      }
    }
    expect(rows.flat()).toHaveLength(6)
  })

  it('of nothing has no row', () => expect(rowsOf([], 300)).toEqual([]))
})
