import { describe, expect, it } from 'vitest'
import { jsonOf } from '../../src/package/json.js'

describe('jsonOf', () => {
  it('writes maps as objects, with sorted keys, at every depth', () => {
    const value = { b: new Map<string, unknown>([['z', [1, null]], ['a', new Map([['y', true]])]]), a: 'x', left: undefined }
    const text = jsonOf(value)
    expect(JSON.parse(text)).toEqual({ a: 'x', b: { a: { y: true }, z: [1, null] } })
    expect(text.match(/"\w+"(?=:)/g)).toEqual(['"a"', '"b"', '"a"', '"y"', '"z"'])
  })

  it('gives the same bytes whatever order the entries came in', () => {
    const entries: [string, number][] = [['W2', 2], ['W10', 10], ['W1', 1]]
    expect(jsonOf(new Map(entries))).toBe(jsonOf(Object.fromEntries(entries.toReversed())))
  })

  it('writes every number so that it reads back unrounded', () => {
    for (const number of [0.1 + 0.2, 1e-7, 123456789.125, -0.35]) expect(JSON.parse(jsonOf({ number }))).toEqual({ number })
  })

  it('refuses what JSON would turn into null or drop, and says where it is', () => {
    expect(() => jsonOf({ voltageDrop: new Map([['A1.7', { marginV: Number.NaN }]]) })).toThrow('voltageDrop.A1.7.marginV is NaN')
    expect(() => jsonOf({ list: [1, Infinity] })).toThrow('list.1 is Infinity')
    expect(() => jsonOf({ act: () => 1 })).toThrow('act is a function')
  })
})
