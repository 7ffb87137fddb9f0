/** Tests over the lists of all calculations and all kinds of finding. */
import { describe, expect, it } from 'vitest'
import { methods } from '../../src/calculate/calculate.js'
import { findingKinds } from '../../src/findings/registry.js'
import { bibliography } from '../../src/references/bibliography.js'
import { unitOf } from '../../src/units/quantity.js'
import { filesBelow, textOf } from './files.js'

const calculations = filesBelow('src/calculate', '.calc.ts')

describe('calculations', () => {
  it.each(calculations)('%s is in its domain’s list', file => {
    const exported = [...textOf(file).matchAll(/^export const (\w+Method)\b/gm)].map(([, name]) => name!)
    expect(exported.length).toBeGreaterThan(0)
    const index = textOf(file.replace(/[^/]+$/, 'index.ts'))
    expect(exported.filter(name => !index.includes(name))).toEqual([])
  })

  it('has each id once', () => {
    const ids = methods.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(methods.length).toBe(calculations.flatMap(file => [...textOf(file).matchAll(/^export const (\w+Method)\b/gm)]).length)
  })

  it.each(methods.map(method => [method.id, method] as const))('%s has check rows, formula, citations and named units', (_, method) => {
    expect(method.checks.length).toBeGreaterThan(0)
    expect(method.formula).not.toBe('')
    expect(method.citations.length).toBeGreaterThan(0)
    for (const { source } of method.citations) expect(bibliography).toHaveProperty(source)
    for (const { input, expected, place } of method.checks) {
      expect(place).not.toBe('')
      expect([...Object.keys(input), ...Object.keys(expected)].filter(name => unitOf(name) === null)).toEqual([])
    }
  })

  it.each(calculations)('%s names in its comments only sources of its records', file => {
    const text = textOf(file)
    const ids = [...text.matchAll(/^  id: '([^']+)'/gm)].map(([, id]) => id)
    const recorded = methods.filter(({ id }) => ids.includes(id)).flatMap(({ citations }) => citations.map(({ source }) => source as string))
    const commented = [...text.matchAll(/^ \* Source\s+(.*)$/gm)].flatMap(([, line]) => line!.match(/\b[a-z0-9]+(?:-[a-z0-9]+)+\b/g) ?? []).filter(key => key in bibliography)
    expect(commented.length).toBeGreaterThan(0)
    expect(commented.filter(key => !recorded.includes(key))).toEqual([])
  })
})

describe('kinds of finding', () => {
  it('has each id once, three letters and three digits', () => {
    const ids = findingKinds.map(({ id }) => id)
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([])
    expect(ids.filter(id => !/^[A-Z]{3}[1-3]\d\d$/.test(id))).toEqual([])
  })

  it('keeps every id ever used', () => {
    const ever = textOf('tests/repository/finding-ids.txt').split('\n').filter(line => line !== '')
    const now = findingKinds.map(({ id, name }) => `${id} ${name}`).toSorted()
    expect(now).toEqual(ever)
  })

  it.each(findingKinds.map(kind => [kind.id, kind] as const))('%s has a name and a meaning', (_, kind) => {
    expect(kind.name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)+$/)
    expect(kind.meaning).toMatch(/\.$/)
  })
})
