import temml from 'temml'
import { describe, expect, it } from 'vitest'
import { aVessel } from '../../support/vessel-builder.js'
import { bibliography } from '../../../src/references/bibliography.js'
import { methodPages } from '../../../src/view/pages/methods.view.js'
import { plainText } from '../../../src/view/tables.js'
import type { Text } from '../../../src/view/view-model.js'
import { contextOf, registries, tableIn, wordsOn, workingsOf } from './support.js'

const page = methodPages(contextOf(aVessel()))[0]!

it('has a formula and a table of outside values for every calculation of the registries', () => {
  expect(registries.methods.length).toBeGreaterThan(10)
  expect(workingsOf(page).map(({ formula }) => formula)).toEqual(registries.methods.map(({ formula }) => formula))
})

describe.each(registries.methods.map(method => [method.id, method] as const))('%s', (id, method) => {
  const working = page.blocks[page.blocks.findIndex(block => block.is === 'heading' && block.anchor === id) + 1]
  const { rows } = tableIn(page, `held-against-${id}`)

  it('says what each symbol is, in which unit, what is assumed and which sources it has', () => {
    if (working?.is !== 'working') throw new Error('no working below the heading')
    const lines = [...working.inputs, ...working.results]
    expect(lines.map(({ symbol }) => symbol).sort()).toEqual(Object.values(method.symbols).sort())
    for (const { label, value } of lines) {
      expect(label).toMatch(/^[a-z][^A-Z]*(°C)?$/)
      expect(value).not.toBe('')
    }
    expect(working.inputs).toHaveLength(Object.keys(method.checks[0]!.input).length)
    expect(working.results).not.toEqual([])
    expect(working.assumes).toEqual(method.assumes)
    for (const { source } of method.citations) expect(working.sources.join()).toContain(bibliography[source].designation)
  })

  it('has a formula and symbols that can be set', () => {
    for (const latex of [method.formula, ...Object.values(method.symbols) as string[]]) {
      expect(temml.renderToString(latex, { throwOnError: true })).toContain('<math')
    }
  })

  it('is held against at least one value from outside, and the figures in print agree with it', () => {
    expect(rows.length).toBeGreaterThanOrEqual(1)
    expect(rows).toHaveLength(method.checks.length)
    for (const [i, { cells: [origin, place, inputs, expected, calculated] }] of rows.entries()) {
      const check = method.checks[i]!
      expect([origin, place]).toEqual([[check.origin], [check.place]])
      expectClose(figuresIn(inputs!), Object.values(check.input), 0)
      expectClose(figuresIn(expected!), Object.values(check.expected), 0)
      expectClose(figuresIn(calculated!), Object.values(check.expected), check.tolerance)
    }
  })
})

it('prints no word of the code', () => {
  expect(wordsOn(page)).not.toMatch(/undefined|NaN/)
})

/** The figure of each line of a cell: the last one before its unit and tolerance. */
const figuresIn = (cell: Text): readonly number[] =>
  linesOf(cell).map(line => Number(/(?:^|\s)(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?)(?:\u00A0\S+( (?:ft|m))?)?(?: ± .*)?$/.exec(line)?.[1] ?? Number.NaN))

function linesOf(cell: Text): readonly string[] {
  const ends = [...cell.entries()].filter(([, part]) => typeof part !== 'string' && part.is === 'break').map(([i]) => i)
  return [...ends, cell.length].map((end, i) => plainText(cell.slice(i === 0 ? 0 : ends[i - 1]! + 1, end)))
}

/** Six significant digits are printed. */
function expectClose(printed: readonly number[], values: readonly unknown[], tolerance: number): void {
  expect(printed).toHaveLength(values.length)
  for (const [i, value] of (values as readonly number[]).entries()) {
    expect(Math.abs(printed[i]! - value), `${printed[i]} for ${value}`).toBeLessThanOrEqual(tolerance + 5e-6 * Math.abs(value))
  }
}

describe('on paper', () => {
  const printed = page.printed!

  it('keeps every formula, its symbols, sources and assumptions', () => {
    const workings = printed.filter(block => block.is === 'working')
    expect(workings.map(({ formula, inputs, results, assumes }) => ({ formula, inputs, results, assumes })))
      .toEqual(workingsOf(page).map(({ formula, inputs, results, assumes }) => ({ formula, inputs, results, assumes })))
  })

  it('prints at most two checks, what is published first, and says how many more there are', () => {
    for (const [i, { checks }] of registries.methods.entries()) {
      const [, ...lines] = printed.filter(block => block.is === 'working')[i]!.sources
      const held = lines.filter(line => line.startsWith('Held against ('))
      expect(held).toHaveLength(Math.min(2, checks.length))
      expect(held[0]!.startsWith('Held against (published)')).toBe(checks.some(({ origin }) => origin === 'published'))
      expect(lines.slice(held.length)).toEqual(checks.length === 3 ? ['1 further check on the site.'] : checks.length > 3 ? [`${checks.length - 2} further checks on the site.`] : [])
    }
  })
})
