/** What must hold for any figures. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { coldConductor } from '../../../src/calculate/protective-devices/cold-conductor.calc.js'
import { longestRunH } from '../../../src/calculate/protective-devices/continuous.js'
import { prospectiveShortCircuit } from '../../../src/calculate/protective-devices/prospective-short-circuit-current.calc.js'
import { resistanceFromCranking } from '../../../src/calculate/protective-devices/resistance-from-cranking.calc.js'
import { resistanceFromShortCircuit } from '../../../src/calculate/protective-devices/resistance-from-short-circuit.calc.js'
import { prospectiveA } from '../../../src/model/results/protective-devices.js'
import { batteryClass } from '../../../src/references/tables/interrupting-capacity.js'
import { protectiveDevices, typicalCapacityA } from '../../../src/references/tables/protective-devices.js'
import { aBattery } from '../../support/vessel-builder.js'
import { devicesOf, smallSystem, withChanged } from './support.js'

const voltageV = fc.double({ min: 6, max: 60, noNaN: true })
const milliOhm = fc.double({ min: 0.1, max: 200, noNaN: true })
const more = fc.double({ min: 1.001, max: 50, noNaN: true })
const lengthM = fc.double({ min: 0.01, max: 40, noNaN: true })

const shortA = (openCircuitVoltageV: number, internalResistanceMilliOhm: number, conductorResistanceMilliOhm: number, otherSourcesCurrentA = 0): number =>
  prospectiveShortCircuit({ openCircuitVoltageV, internalResistanceMilliOhm, conductorResistanceMilliOhm, otherSourcesCurrentA }).prospectiveShortCircuitCurrentA

describe('short-circuit current', () => {
  it('falls with more conductor, and is largest at the posts', () => {
    fc.assert(fc.property(voltageV, milliOhm, milliOhm, more, (U, Ri, Rc, k) => {
      expect(shortA(U, Ri, k * Rc)).toBeLessThan(shortA(U, Ri, Rc))
      expect(shortA(U, Ri, Rc)).toBeLessThan(shortA(U, Ri, 0))
    }))
  })
  it('at the posts is the one that the resistance was worked out from', () => {
    fc.assert(fc.property(voltageV, fc.double({ min: 100, max: 50000, noNaN: true }), (U, statedA) => {
      const { internalResistanceMilliOhm } = resistanceFromShortCircuit({ openCircuitVoltageV: U, statedShortCircuitCurrentA: statedA })
      expect(shortA(U, internalResistanceMilliOhm, 0) / statedA).toBeCloseTo(1, 9)
    }))
  })
  it('rises with the cranking current, and does not depend on how many are in series', () => {
    fc.assert(fc.property(fc.double({ min: 100, max: 2000, noNaN: true }), more, (crankingA, k) => {
      const atPosts = (nominalVoltageV: number, crankingCurrentA: number) =>
        shortA(1.05 * nominalVoltageV, resistanceFromCranking({ nominalVoltageV, crankingCurrentA, warmFactor: 2 }).internalResistanceMilliOhm, 0)
      expect(atPosts(12, k * crankingA)).toBeGreaterThan(atPosts(12, crankingA))
      expect(atPosts(24, crankingA) / atPosts(12, crankingA)).toBeCloseTo(1, 9)
    }))
  })
})

it('a conductor has less resistance the thicker, the shorter and the more in parallel', () => {
  fc.assert(fc.property(lengthM, fc.double({ min: 0.5, max: 240, noNaN: true }), fc.integer({ min: 1, max: 7 }), more, (L, S, n, k) => {
    const { conductorResistanceMilliOhm } = coldConductor({ conductorLengthM: L, crossSectionMm2: S, parallelCount: n })
    expect(coldConductor({ conductorLengthM: L, crossSectionMm2: k * S, parallelCount: n }).conductorResistanceMilliOhm).toBeLessThan(conductorResistanceMilliOhm)
    expect(coldConductor({ conductorLengthM: L, crossSectionMm2: S, parallelCount: n + 1 }).conductorResistanceMilliOhm).toBeLessThan(conductorResistanceMilliOhm)
    expect(coldConductor({ conductorLengthM: k * L, crossSectionMm2: S, parallelCount: n }).conductorResistanceMilliOhm / conductorResistanceMilliOhm).toBeCloseTo(k, 6)
  }))
})

describe('on a whole vessel', () => {
  const system = smallSystem()
  const at = (vessel: typeof system, tag: string): number => prospectiveA(devicesOf(vessel).byPoint.get(tag))!
  it('the current falls from the battery outwards, whatever the lengths', () => {
    fc.assert(fc.property(lengthM, lengthM, lengthM, (a, b, c) => {
      const cables = system.cables.map(cable => ({ ...cable, lengthM: ({ W1: a, W2: b, W3: c } as Record<string, number>)[cable.tag] ?? cable.lengthM }))
      const [posts, busbar, panel] = ['G1', 'X1', 'A1'].map(tag => at({ ...system, cables }, tag)) as [number, number, number]
      expect(posts).toBeGreaterThan(busbar)
      expect(busbar).toBeGreaterThan(panel)
    }), { numRuns: 30 })
  })
  it('more strings in parallel give more, and a cable that is left out never gives less', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 4 }), (parallelCount, seriesCount) => {
      const strings = (n: number) => smallSystem({
        batteries: [aBattery({
          tag: 'G1', chemistry: 'agm',
          blocks: { seriesCount, parallelCount: n, nominalVoltageV: 12, capacityAh: 100, crankingCurrentA: 500, internalResistanceMilliOhm: 6, shortCircuitCurrentA: null },
        })],
      })
      expect(at(strings(parallelCount + 1), 'A1')).toBeGreaterThan(at(strings(parallelCount), 'A1'))
      const unknown = { ...strings(parallelCount), cables: withChanged(system.cables, 'W2', { lengthM: null }) }
      expect(at(unknown, 'A1')).toBeGreaterThan(at(strings(parallelCount), 'A1'))
    }), { numRuns: 20 })
  })
})

it('what a type breaks never rises with the voltage, nor does a class fall with the cranking current', () => {
  fc.assert(fc.property(fc.constantFrom(...Object.values(protectiveDevices)), voltageV, more, (device, V, k) => {
    const [low, high] = [typicalCapacityA(device, V), typicalCapacityA(device, k * V)]
    if (high !== null) expect(low).toBeGreaterThanOrEqual(high)
  }))
  fc.assert(fc.property(fc.constantFrom(12, 24, 32), fc.double({ min: 1, max: 2200, noNaN: true }), fc.double({ min: 1, max: 2200, noNaN: true }), (V, a, b) => {
    expect(batteryClass(V, Math.max(a, b))!.mainA).toBeGreaterThanOrEqual(batteryClass(V, Math.min(a, b))!.mainA)
  }))
})

it('the longest stretch is at least any single period and at most a day', () => {
  const period = fc.tuple(fc.double({ min: 0, max: 23.9, noNaN: true }), fc.double({ min: 0.1, max: 24, noNaN: true })).map(([fromH, hours]) => ({ fromH, toH: fromH + hours }))
  fc.assert(fc.property(fc.array(period, { minLength: 1, maxLength: 6 }), periods => {
    const longest = longestRunH(periods)
    for (const { fromH, toH } of periods) expect(longest).toBeGreaterThanOrEqual(toH - fromH - 1e-9)
    expect(longest).toBeLessThanOrEqual(24)
    expect(longestRunH(periods.toReversed())).toBeCloseTo(longest, 9)
  }))
})
