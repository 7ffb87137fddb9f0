import { describe, expect, it } from 'vitest'
import { calculate, methods } from '../../src/calculate/calculate.js'
import { findingKinds } from '../../src/findings/registry.js'
import { bases } from '../../src/references/basis/bases.js'
import { aCable, aCableType, aProtection, aWireway, aZone, mm2 } from '../support/vessel-builder.js'
import { boat, circuit, load } from './feeding/support.js'

/** A 20 A load at the end of 10 m of 1 mm² behind a broken route, so that several passes have something to say. */
const vessel = boat({
  equipment: [load('P1', 20, { zoneTag: 'Z1' })],
  circuits: [circuit('A1.1', ['P1'], { protection: aProtection('blade fuse', 15), zoneTag: 'Z1' })],
  cables: [aCable({ tag: 'W1', from: 'A1.1', to: 'P1', typeTag: 'T', lengthM: 10, routeTags: ['WW1'] })],
}, {
  zones: [aZone({ tag: 'Z1' }), aZone({ tag: 'Z2' })],
  wireways: [aWireway({ tag: 'WW1', fromTag: 'Z1', toTag: 'Z2' })],
  cableTypes: [aCableType({ tag: 'T', size: mm2(1), insulationC: 70 })],
})

describe.each(['iso', 'abyc'] as const)('calculate, by %s', id => {
  const results = calculate(vessel, bases[id])

  it('has a result for every subject', () => {
    expect([...results.routing.byCable.keys()]).toEqual(vessel.cables.map(({ tag }) => tag))
    expect([...results.routing.byWireway.keys()]).toEqual(['WW1'])
    const circuits = vessel.circuits.map(({ tag }) => tag)
    for (const part of [results.feeding, results.voltageDrop, results.protection, results.conductorSize]) {
      expect([...part.byCircuit.keys()].sort()).toEqual([...circuits].sort())
    }
  })

  it('gathers the findings of all passes, each of a kind in the registry', () => {
    const known = new Set(findingKinds.map(kind => kind.id))
    const ids = results.findings.map(finding => finding.id)
    expect(ids.filter(each => !known.has(each))).toEqual([])
    // A broken route; a protective device below the load.
    expect(ids).toEqual(expect.arrayContaining(['WWY301', 'DCD103']))
    const { routing, feeding, currentCarryingCapacity, voltageDrop, protection } = results
    expect(ids.length).toBe([routing, feeding, currentCarryingCapacity, voltageDrop, protection].reduce((sum, part) => sum + part.findings.length, 0))
  })

  it('names only calculations that are in the list', () => {
    const known = new Set(methods.map(method => method.id))
    const used: string[] = []
    JSON.stringify(results, (key: string, value: unknown) => {
      if (key === 'method') used.push(value as string)
      return value instanceof Map ? [...value] : value
    })
    expect(used.length).toBeGreaterThan(5)
    expect(used.filter(each => !known.has(each))).toEqual([])
  })

  it('gives the same for the same vessel, and leaves the vessel as it was', () => {
    const before = structuredClone(vessel)
    expect(calculate(structuredClone(vessel), bases[id])).toEqual(results)
    expect(vessel).toEqual(before)
  })
})
