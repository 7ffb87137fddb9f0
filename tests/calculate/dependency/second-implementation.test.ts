/** The pass against a second implementation on a general-purpose graph library: what goes dead with each thing. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Tag, Vessel } from '../../../src/model/vessel.js'
import { aBattery, aCable, aCircuit, anEquipment, aPanel, aVessel } from '../../support/vessel-builder.js'
import { secondImplementation } from './second-implementation.js'
import { dependencyOf, vesselAt } from './support.js'

/** Where the two differ; each of the things that can be taken away is tried. */
function differences(vessel: Vessel): readonly string[] {
  const { losses, traces } = dependencyOf(vessel)
  const second = secondImplementation(vessel)
  const followed = new Set([...traces].filter(([, { supplies }]) => supplies.length > 0).map(([tag]) => tag))
  const things = [...vessel.circuits, ...vessel.batteries, ...vessel.busbars, ...vessel.panels, ...vessel.equipment, ...vessel.cables].map(({ tag }) => tag)
  return things.flatMap(tag => {
    const first = new Set((losses.get(tag) ?? []).filter(({ how }) => how === 'dead').map(effect => effect.tag))
    const other = new Set([...second.deadWithout(tag)].filter(dead => followed.has(dead)))
    const only = (a: ReadonlySet<Tag>, b: ReadonlySet<Tag>) => [...a].filter(each => !b.has(each)).toSorted().join(' ')
    const [more, fewer] = [only(first, other), only(other, first)]
    return more === '' && fewer === '' ? [] : [`${tag}: only the pass says ${more || 'none'}; only the second says ${fewer || 'none'}`]
  })
}

describe('what goes dead with each thing, by a second implementation', () => {
  it.each(['sample-vessel', 'tests/vessels/day-boat/vessel', 'tests/vessels/cruiser-24v/vessel', 'tests/vessels/trawler-abyc/vessel', 'starter-vessel'])('%s', async folder => {
    expect(differences(await vesselAt(folder))).toEqual([])
  }, 120_000)
})

/** Two batteries, panels below them or below one another, switches in the cables, loads on one to three circuits, some of them open. */
const smallVessel: fc.Arbitrary<Vessel> = fc.record({
  panels: fc.array(fc.record({ from: fc.nat(), again: fc.option(fc.record({ from: fc.nat(), open: fc.boolean() })), isolator: fc.boolean() }), { minLength: 1, maxLength: 4 }),
  loads: fc.array(fc.array(fc.record({ from: fc.nat(), open: fc.boolean(), isolator: fc.boolean() }), { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 5 }),
}).map(({ panels, loads }) => {
  const points = ['G1', 'G2']
  const wires: { from: Tag; to: Tag; open: boolean; isolator: boolean }[] = []
  panels.forEach(({ from, again, isolator }, i) => {
    // Only from what stands before it: no rings.
    wires.push({ from: points[from % points.length]!, to: `A${i}`, open: false, isolator })
    if (again !== null) wires.push({ from: points[again.from % points.length]!, to: `A${i}`, open: again.open, isolator: false })
    points.push(`A${i}`)
  })
  loads.forEach((ways, i) => ways.forEach(({ from, open, isolator }) => wires.push({ from: points[from % points.length]!, to: `P${i}`, open, isolator })))
  return aVessel({
    batteries: [aBattery({ tag: 'G1' }), aBattery({ tag: 'G2' })],
    panels: panels.map((_, i) => aPanel({ tag: `A${i}` })),
    equipment: [...loads.map((_, i) => anEquipment({ tag: `P${i}` })), ...wires.flatMap(({ isolator }, i) => (isolator ? [anEquipment({ tag: `Q${i}`, kind: 'switch' })] : []))],
    circuits: wires.map(({ from, to, open }, i) => aCircuit({ tag: `F${i}`, fedFromTag: from, loadTags: [to], normalState: open ? 'open' : 'closed' })),
    cables: wires.flatMap(({ to, isolator }, i) => (isolator
      ? [aCable({ tag: `W${i}a`, from: `F${i}`, to: `Q${i}`, carries: 'positive' }), aCable({ tag: `W${i}b`, from: `Q${i}`, to, carries: 'positive' })]
      : [aCable({ tag: `W${i}`, from: `F${i}`, to, carries: 'positive' })])),
  })
})

it('small vessels of any make', () => {
  fc.assert(fc.property(smallVessel, vessel => { expect(differences(vessel)).toEqual([]) }), { numRuns: 150 })
})
