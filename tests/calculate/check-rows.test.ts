/** Every calculation of every domain held against the outside values written beside its formula. */
import { describe, expect, it, test } from 'vitest'
import { methods } from '../../src/calculate/calculate.js'
import type { CheckRow } from '../../src/calculate/method.js'
import type { Quantities } from '../../src/units/quantity.js'
import { unitOf } from '../../src/units/quantity.js'

describe.each(methods.map(method => ({ id: method.id, method })))('$id', ({ method }) => {
  const checks: readonly CheckRow<Quantities, Quantities>[] = method.checks
  it('has a check row, and something to check in each', () => {
    expect(checks.length).toBeGreaterThan(0)
    for (const { expected } of checks) expect(Object.keys(expected).length).toBeGreaterThan(0)
  })
  it.each(checks.map(check => ({ place: check.place, check })))('$place', ({ check }) => {
    expect(method.notApplicable(check.input)).toBeNull()
    const output: Quantities = method.compute(check.input)
    for (const [name, expected] of Object.entries(check.expected)) {
      expect(Math.abs(output[name]! - expected!), `${name} = ${output[name]}, ${expected} expected`).toBeLessThanOrEqual(check.tolerance)
    }
  })
  it('has a symbol, and a unit in its name, for each quantity', () => {
    const [{ input } = { input: {} }] = checks
    const names = [...Object.keys(input), ...Object.keys(method.compute(input))]
    expect(Object.keys(method.symbols).toSorted()).toEqual(names.toSorted())
    for (const name of names) expect(unitOf(name), name).not.toBeNull()
  })
  it('says in its formula what its symbols are', () => {
    for (const symbol of Object.values<string>(method.symbols)) expect(method.formula).toContain(symbol)
  })
})

test('ids are unique', () => {
  const ids = methods.map(({ id }) => id)
  expect(ids).toEqual([...new Set(ids)])
})
