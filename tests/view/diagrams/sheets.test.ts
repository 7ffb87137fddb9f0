import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Box, Drawing } from '../../../src/view/diagrams/mermaid-text.js'
import { estimatedSize, fits, sheetsOf, turned } from '../../../src/view/diagrams/sheets.js'

const aBox = (key: string, name = 'Something or other'): Box => ({ key, is: 'load', tag: key, beside: [], below: [name], page: null })
/** A panel with a line to each of its loads. */
const fan = (loads: readonly string[]): Drawing => turned({
  boxes: [aBox('A1'), ...loads.map(key => aBox(key))],
  lines: loads.map(to => ({ from: 'A1', to, label: [`W${to}`, '2 × 1.5 mm²'], stroke: 'plain' })),
  frames: [],
  placement: 'balanced',
})
const loadsOf = (count: number): readonly string[] => Array.from({ length: count }, (_, i) => `E${i}`)

describe('sheetsOf', () => {
  it('keeps every part once, in order, and fills no sheet beyond its room', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 90 }), count => {
      const parts = loadsOf(count)
      const sheets = sheetsOf(parts, fan)
      expect(sheets.flatMap(sheet => sheet.parts)).toEqual(parts)
      for (const { drawing } of sheets) expect(fits(drawing)).toBe(true)
    }), { numRuns: 40 })
  })
  it('parts them about evenly', () => {
    const counts = sheetsOf(loadsOf(30), fan).map(({ parts }) => parts.length)
    expect(counts.length).toBeGreaterThan(1)
    expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1)
  })
  it('gives a part that is too large a sheet of its own, and leaves the others together', () => {
    const huge = loadsOf(80)
    const sheets = sheetsOf([['E100'], huge, ['E101'], ['E102']], parts => fan(parts.flat()))
    expect(sheets.map(({ parts }) => parts.length)).toEqual([1, 1, 2])
  })
  it('has no sheet for nothing', () => expect(sheetsOf([], fan)).toEqual([]))
})

describe('turned', () => {
  it('lays few things in a long chain down the sheet, and many things side by side across it', () => {
    const chain = loadsOf(9)
    expect(turned({
      boxes: chain.map(key => aBox(key)), frames: [], placement: 'balanced',
      lines: chain.slice(1).map((to, i) => ({ from: chain[i]!, to, label: ['W1'], stroke: 'plain' })),
    }).direction).toBe('top down')
    expect(fan(loadsOf(12)).direction).toBe('left to right')
  })
})

describe('estimatedSize', () => {
  it('never shrinks when a thing is added', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 40 }), count => {
      const [less, more] = [count, count + 1].map(n => estimatedSize({ ...fan(loadsOf(n)), direction: 'left to right' }))
      expect(more!.high).toBeGreaterThan(less!.high)
      expect(more!.wide).toBeGreaterThanOrEqual(less!.wide)
    }))
  })
  it('ends on loops', () => {
    const loop: Drawing = {
      ...fan(['E1', 'E2']),
      lines: [['A1', 'E1'], ['E1', 'E2'], ['E2', 'A1'], ['E1', 'E1']].map(([from, to]) => ({ from: from!, to: to!, label: [], stroke: 'plain' })),
    }
    expect(estimatedSize(loop).wide).toBeGreaterThan(0)
  })
})
