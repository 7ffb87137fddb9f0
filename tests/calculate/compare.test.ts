import { describe, expect, it } from 'vitest'
import { compare, exceeds } from '../../src/calculate/compare.js'
import type { Limit } from '../../src/findings/finding.js'

const citation = { source: 'circuit-theory', place: '' } as const
const atMost = (value: number): Limit => ({ relation: 'at most', value, citation })
const atLeast = (value: number): Limit => ({ relation: 'at least', value, citation })

describe('compare', () => {
  it('is within at the limit, on either side of it', () => {
    expect(compare('currentA', 10, atMost(10))).toMatchObject({ within: true, margin: 0 })
    expect(compare('currentA', 10, atLeast(10))).toMatchObject({ within: true, margin: 0 })
  })
  it('has a margin that is positive while within', () => {
    expect(compare('currentA', 8, atMost(10))).toMatchObject({ within: true, margin: 2 })
    expect(compare('currentA', 12, atMost(10))).toMatchObject({ within: false, margin: -2 })
    expect(compare('currentA', 12, atLeast(10))).toMatchObject({ within: true, margin: 2 })
    expect(compare('currentA', 8, atLeast(10))).toMatchObject({ within: false, margin: -2 })
  })
  it('does not round', () => {
    expect(exceeds(3.000001, atMost(3))).toBe(true)
  })
  it('forgives the last binary digits: three loads of 0.1 A do not exceed 0.3 A', () => {
    expect(0.1 + 0.1 + 0.1).toBeGreaterThan(0.3)
    expect(exceeds(0.1 + 0.1 + 0.1, atMost(0.3))).toBe(false)
  })
})
