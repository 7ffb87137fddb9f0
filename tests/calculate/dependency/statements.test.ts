import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Statement, statements } from '../../../src/calculate/dependency/statements.js'

interface Made { readonly givens: number; readonly derived: number; readonly grounds: readonly { readonly of: number; readonly premises: readonly number[]; readonly byHand: boolean }[] }

/** Any system of statements, rings included. */
const systems: fc.Arbitrary<Made> = fc.record({ givens: fc.integer({ min: 1, max: 5 }), derived: fc.integer({ min: 1, max: 8 }) }).chain(({ givens, derived }) => fc.record({
  givens: fc.constant(givens), derived: fc.constant(derived),
  grounds: fc.array(fc.record({
    of: fc.integer({ min: givens, max: givens + derived - 1 }),
    premises: fc.array(fc.integer({ min: 0, max: givens + derived - 1 }), { maxLength: 3 }),
    byHand: fc.boolean(),
  }), { maxLength: 20 }),
}))

/** The plainest way: start from what is given and go over all grounds until nothing new holds. */
function holding({ givens, grounds }: Made, without: number | null, byHand: boolean, also: ReadonlySet<number> = new Set()): ReadonlySet<number> {
  const holds = new Set([...Array(givens).keys(), ...also].filter(one => one !== without))
  for (let before = -1; before !== holds.size;) {
    before = holds.size
    for (const ground of grounds) if ((byHand || !ground.byHand) && ground.premises.every(one => holds.has(one))) holds.add(ground.of)
  }
  return holds
}

describe('what falls with one that is taken away', () => {
  it('is what a plain repeated search no longer finds, of any system', () => {
    fc.assert(fc.property(systems, made => {
      const all = statements()
      for (let i = 0; i < made.givens; i++) all.given()
      for (let i = 0; i < made.derived; i++) all.derived()
      made.grounds.forEach(({ of, premises, byHand }, i) => all.ground(of, premises, byHand ? `hand ${i}` : null))
      const settled = all.settle()
      const before = holding(made, null, false)
      for (let given = 0; given < made.givens; given++) {
        const after = holding(made, given, false)
        const fallen = settled.fallWith(given)
        expect(fallen.map(({ statement }) => statement).toSorted()).toEqual([...before].filter(one => !after.has(one) && one !== given).toSorted())
        // By hand only what fell is brought back, from what still stands.
        const fell = new Set(fallen.map(({ statement }) => statement))
        const back = holding({ ...made, grounds: made.grounds.filter(({ of }) => fell.has(of)) }, given, true, after)
        expect(fallen.filter(({ restoreBy }) => restoreBy.length > 0).map(({ statement }) => statement).toSorted()).toEqual([...fell].filter(one => back.has(one)).toSorted())
      }
    }), { numRuns: 500 })
  })

  it('does not hold itself up in a ring', () => {
    const all = statements()
    const [source, a, b] = [all.given(), all.derived(), all.derived()] as [Statement, Statement, Statement]
    all.ground(a, [source])
    all.ground(b, [a])
    all.ground(a, [b])
    expect(all.settle().fallWith(source).map(({ statement }) => statement)).toEqual([a, b])
  })

  it('refuses what is not given', () => {
    const all = statements()
    const derived = all.derived()
    expect(() => all.settle().fallWith(derived)).toThrow(/not given/)
  })
})
