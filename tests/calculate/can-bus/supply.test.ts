/** Supply: against a resistor network solved as a system of equations, and case by case. */
import fc from 'fast-check'
import { lusolve, zeros, type Matrix } from 'mathjs'
import { describe, expect, it } from 'vitest'
import type { BackboneElement } from '../../../src/model/vessel.js'
import { aCircuit } from '../../support/vessel-builder.js'
import { type Along, busBoat, busIn, foundIn, type GivenDevice, isolator, power, terminator } from './support.js'

interface RandomBus { readonly lens: readonly number[]; readonly lengthsM: readonly number[]; readonly at: number }
const randomBus = fc.integer({ min: 1, max: 8 }).chain(count => fc.record({
  lens: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: count, maxLength: count }),
  lengthsM: fc.array(fc.integer({ min: 0, max: 300 }).map(tenths => tenths / 10), { minLength: count, maxLength: count }),
  at: fc.integer({ min: 0, max: count }),
}))

/** Nodes 0 … n along the backbone, the insertion at node `at`, a device at each other node; between neighbours a cable. */
function vesselOf({ lens, lengthsM, at }: RandomBus) {
  const devices: Record<string, GivenDevice> = {}
  let next = 0
  const nodes = Array.from({ length: lens.length + 1 }, (_, i): Along => {
    if (i === at) return power('X0', { supplyVoltageV: 13 })
    const tag = `P${i}`
    devices[tag] = { len: lens[next++]!, drop: 2 }
    return tag
  })
  return { vessel: busBoat({ along: [terminator('R1'), ...nodes.flatMap((node, i) => (i === 0 ? [node] : [lengthsM[i - 1]!, node])), terminator('R2')], devices }), devices }
}

/** Nodal analysis: conductances of both conductors in series, the insertion held at 13 V, currents drawn at the others. */
function nodeVoltages({ lens, lengthsM, at }: RandomBus): readonly number[] {
  const n = lens.length + 1
  const a = zeros(n, n) as Matrix
  const b: number[] = Array.from({ length: n }, () => 0)
  const add = (i: number, j: number, value: number) => a.set([i, j], (a.get([i, j]) as number) + value)
  lengthsM.forEach((lengthM, i) => {
    // A length of nothing counts as a hundredth of a millimetre.
    const g = 1 / (2 * 0.057 * Math.max(lengthM, 1e-5))
    add(i, i, g); add(i + 1, i + 1, g); add(i, i + 1, -g); add(i + 1, i, -g)
  })
  let next = 0
  for (let i = 0; i < n; i++) {
    if (i === at) continue
    b[i] = -0.05 * lens[next++]!
  }
  for (let j = 0; j < n; j++) a.set([at, j], j === at ? 1 : 0)
  b[at] = 13
  return (lusolve(a, b) as Matrix).toArray().map(row => (row as number[])[0]!)
}

describe('voltage along a backbone', () => {
  it('is that of the resistor network', () => {
    fc.assert(fc.property(randomBus, bus => {
      const { vessel, devices } = vesselOf(bus)
      const section = busIn(vessel).supply.sections[0]!.solved!
      const volts = nodeVoltages(bus)
      expect(section.tees).toHaveLength(bus.lens.length)
      for (const { device, voltageV } of section.tees) {
        const node = Number(device!.tag.slice(1))
        expect(voltageV).toBeCloseTo(volts[node]!, 4)
        // Its drop of 2 m of light cable carries its own current.
        expect(device!.voltageV).toBeCloseTo(volts[node]! - 2 * 0.057 * 2 * 0.05 * devices[device!.tag]!.len!, 4)
      }
    }), { numRuns: 150 })
  })
  it('loses never more than the guides say', () => {
    fc.assert(fc.property(randomBus, bus => {
      const section = busIn(vesselOf(bus).vessel).supply.sections[0]!.solved!
      for (const { side, lumped } of section.legs) {
        const worst = Math.max(0, ...section.tees.filter(tee => tee.side === side).map(({ dropV }) => dropV))
        expect(worst).toBeLessThanOrEqual((lumped?.output.voltageDropV ?? 0) + 1e-9)
      }
    }))
  })
})

const ends = (...parts: Along[]): Along[] => [terminator('R1'), ...parts, terminator('R2')]
const two = { P1: { len: 4, drop: 1 }, P2: { len: 4, drop: 1 } }

describe('the way a backbone is fed', () => {
  it('takes the supply as recorded, else the source less what the circuit loses', () => {
    const insertion = (supply: BackboneElement) => busIn(busBoat({ along: ends(supply, 1, 'P1'), devices: { P1: { drop: 1 } } })).supply.sections[0]!.solved!.insertion
    expect(insertion(power('X0', { supplyVoltageV: 13.8 }))).toMatchObject({ voltageV: 13.8, regulated: true, feedDropV: null })
    // 3 A through 2 · 0.02 m of 95 mm² at 0.21 Ω/km: next to nothing.
    expect(insertion(power('X0')).voltageV).toBeCloseTo(12, 3)
    expect(insertion(power('X0')).feedDropV).toBeGreaterThan(0)
  })
  it('loses on the way what the circuit loses', () => {
    const boat = busBoat({ along: ends(power('X0'), 1, 'P1'), devices: { P1: { drop: 1 } } })
    const thin = { tag: 'thin', size: { system: 'mm2' as const, designation: '2.5', crossSectionMm2: 2.5 } }
    const vessel = { ...boat, cableTypes: [...boat.cableTypes, { ...boat.cableTypes[0]!, ...thin }], cables: boat.cables.map(cable => (cable.tag === 'W-F1' ? { ...cable, typeTag: 'thin', lengthM: 5 } : cable)) }
    const { insertion } = busIn(vessel).supply.sections[0]!.solved!
    // 3 A through 10 m of 8.21 Ω/km (IEC 60228, class 5 tinned, 20 °C): 0.2463 V; warm copper up to a third more.
    expect(insertion.feedDropV).toBeGreaterThan(0.2463)
    expect(insertion.feedDropV).toBeLessThan(0.2463 * 1.34)
    expect(insertion.voltageV).toBeCloseTo(12 - insertion.feedDropV!, 9)
  })
  it('is not assessed where a number, a length or a kind of cable is missing', () => {
    const missing = (given: Parameters<typeof busBoat>[0]) => busIn(busBoat(given)).supply.sections[0]!
    expect(missing({ along: ends(power('X0'), 1, 'P1'), devices: { P1: { len: null, drop: 1 } } })).toMatchObject({ solved: null, missing: ['no load equivalency number is recorded for P1'] })
    expect(missing({ along: ends(power('X0'), 1, 'P1'), devices: { P1: { drop: 1 } }, cable: null })).toMatchObject({ solved: null, missing: ['the kind of bus cable is not recorded for W1'] })
  })
  it('leaves out of the sum what lies beyond the outermost tee', () => {
    const boat = busBoat({ along: ends(power('X0'), 1, 'P1', 5), devices: { P1: { drop: 1 } } })
    const unmeasured = { ...boat, cables: boat.cables.map(cable => (cable.tag === 'W2' ? { ...cable, lengthM: null } : cable)) }
    expect(busIn(unmeasured).supply.sections[0]!.solved).not.toBeNull()
  })
  it('finds two insertions on one stretch, and none where an isolator parts them', () => {
    expect(foundIn(busBoat({ along: ends(power('X0'), 1, 'P1', power('X8', { circuitTag: null })), devices: { P1: { drop: 1 } } }))).toContain('CAN113 N1')
    const parted = busBoat({ along: ends(power('X0'), 1, 'P1', isolator('X9'), 1, 'P2', power('X8', { supplyVoltageV: 13 })), devices: two })
    expect(foundIn(parted).filter(id => /CAN11[34]/.test(id))).toEqual([])
    expect(busIn(parted).supply.sections.map(({ insertionTags, loadEquivalencyNumber }) => [...insertionTags, loadEquivalencyNumber])).toEqual([['X0', 4], ['X8', 4]])
  })
  it('finds a stretch behind an isolator that nothing feeds', () => {
    expect(foundIn(busBoat({ along: ends(power('X0'), 1, 'P1', isolator('X9'), 1, 'P2'), devices: two }))).toContain('CAN114 N1')
  })
  it('says nothing of the supply where the bus does not supply', () => {
    const boat = busBoat({ along: ends('P1'), devices: { P1: { len: null, drop: 1 } } })
    const apart = { ...boat, canBuses: boat.canBuses.map(bus => ({ ...bus, suppliesDevices: false })) }
    expect(busIn(apart).supply.sections).toEqual([])
    expect(foundIn(apart).filter(id => /CAN201|CAN114/.test(id))).toEqual([])
  })
  it('takes no device that has been removed', () => {
    const boat = busBoat({ along: ends(power('X0'), 1, 'P1', 'P2'), devices: two })
    const without = { ...boat, equipment: boat.equipment.map(item => (item.tag === 'P2' ? { ...item, status: 'removed' as const } : item)) }
    expect(busIn(without)).toMatchObject({ lengths: { devices: { value: 1 } }, room: { freeTeeTags: ['X2'] } })
    expect(busIn(without).supply.sections[0]!.loadEquivalencyNumber).toBe(4)
  })
})

describe('limits of the supply', () => {
  const found = (given: Parameters<typeof busBoat>[0], fields: Parameters<typeof busBoat>[1] = {}) => foundIn(busBoat(given, fields))
  it('the protective device against the lightest cable', () => {
    const given = { along: ends(power('X0'), 1, 'P1'), devices: { P1: { drop: 1 } } }
    expect(found({ ...given, ratingA: 3 })).not.toContain('CAN111 F1')
    expect(found({ ...given, ratingA: 4 })).toContain('CAN111 F1')
    expect(found({ ...given, ratingA: 4, cable: 'mid' })).not.toContain('CAN111 F1')
    expect(found({ ...given, ratingA: 8, cable: 'heavy' })).not.toContain('CAN111 F1')
  })
  it('the current of all devices against the device, the design and each cable', () => {
    const devices = Object.fromEntries(['P1', 'P2', 'P3', 'P4'].map((tag): [string, GivenDevice] => [tag, { len: 16, drop: 0.5 }]))
    // 64 LEN are 3.2 A.
    expect(found({ along: ends(power('X0'), 0.1, 'P1', 'P2', 'P3', 'P4'), devices })).toEqual(['CAN110 W1', 'CAN112 F1', 'CAN306 F1'])
    // Fed in the middle, 1.6 A each way.
    expect(found({ along: ends('P1', 'P2', 0.1, power('X0'), 0.1, 'P3', 'P4'), devices })).toEqual(['CAN112 F1', 'CAN306 F1'])
  })
  it('more than 1 A of one device, a voltage below 9 V, one above 16 V', () => {
    expect(found({ along: ends(power('X0'), 1, 'P1'), devices: { P1: { len: 21, drop: 1 } } })).toEqual(['CAN115 P1'])
    // 2 · 0.057 · 54 · 0.5 = 3.078 V of 12 V: 8.92 V.
    expect(found({ along: ends(power('X0'), 54, 'P1'), devices: { P1: { len: 10, drop: 0 } } })).toEqual(['CAN107 N1', 'CAN108 P1'])
    expect(found({ along: ends(power('X0', { supplyVoltageV: 24 }), 1, 'P1'), devices: { P1: { drop: 1 } } })).toEqual(['CAN109 X0'])
  })
  it('nothing to hold the current against without a device on record', () => {
    const section = busIn(busBoat({ along: ends(power('X0'), 1, 'P1'), devices: { P1: { drop: 1 } } }, { circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['X0'], designCurrentA: 3 })] })).supply.sections[0]!
    expect(section.solved).toMatchObject({ protection: null, againstProtection: null })
    expect(section.missing).toEqual(['no protective device is recorded for circuit F1'])
  })
})
