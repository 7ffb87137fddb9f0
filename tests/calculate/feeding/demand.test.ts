/** Design currents: from the loads up through the feeders, and the sum at each split. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { feedingPass } from '../../../src/calculate/feeding/index.js'
import { type CircuitFeed, designCurrentA } from '../../../src/model/results.js'
import type { Circuit } from '../../../src/model/vessel.js'
import { aBattery, anEquipment, aPanel } from '../../support/vessel-builder.js'
import { boat, cables, circuit, feed, inWords, junction, load } from './support.js'

describe('the current of a load', () => {
  const of = (given: Parameters<typeof load>[2], nominalVoltageV = 12) => {
    const vessel = boat({ equipment: [load('P1', null, given)], circuits: [circuit('A1.1', ['P1'])], cables: cables('W1: A1.1 > P1') }, { batteries: [aBattery({ tag: 'G1', nominalVoltageV })] })
    return feed(vessel, 'A1.1')
  }

  it('is its maximum, else its typical current, else its power over the voltage of its source', () => {
    expect(of({ currentMaxA: 5, currentTypicalA: 3, powerW: 24 }).currentParts).toEqual([{ tag: 'P1', currentA: 5, demandFactor: 1, from: 'maximum current' }])
    expect(of({ currentTypicalA: 3, powerW: 24 }).currentParts).toEqual([{ tag: 'P1', currentA: 3, demandFactor: 1, from: 'typical current' }])
    // By hand: 24 W / 12 V, 24 W / 24 V.
    expect(of({ powerW: 24 }).currentParts).toMatchObject([{ tag: 'P1', currentA: 2, demandFactor: 1, from: 'power' }])
    expect(designCurrentA(of({ powerW: 24 }, 24))).toBe(1)
  })

  it('is not known where nothing is recorded, and the circuit is not computed: not zero', () => {
    const { designCurrent, segments } = of({})
    expect(designCurrent).toEqual({ status: 'not computed', method: 'design-current', reason: 'no current or power is recorded for P1' })
    expect(inWords(segments)).toEqual(['W1: A1.1 > P1, not known'])
  })

  it('is not known from its power where no source is reached', () => {
    const vessel = boat({ equipment: [load('P1', null, { powerW: 24 })], circuits: [circuit('A2.1', ['P1'], { fedFromTag: 'A2' })] })
    expect(feed({ ...vessel, panels: [...vessel.panels, aPanel({ tag: 'A2' })] }, 'A2.1').designCurrent)
      .toMatchObject({ status: 'not computed', reason: 'of P1 only the power is recorded, and the voltage is not known: nothing feeds A2' })
  })

  it('of a load that has been removed does not count, and the user is told', () => {
    const vessel = boat({ equipment: [load('P1', 5), load('P2', 7, { status: 'removed' })], circuits: [circuit('A1.1', ['P1', 'P2'])], cables: cables('W1: A1.1 > P1') })
    const { ids, reachedTags, unreachedTags, ...found } = feed(vessel, 'A1.1')
    expect({ currentA: designCurrentA(found), reachedTags, unreachedTags, ids }).toEqual({ currentA: 5, reachedTags: ['P1'], unreachedTags: [], ids: ['FED308'] })
    expect(feed(boat({ equipment: [load('P2', 7, { status: 'removed' })], circuits: [circuit('A1.1', ['P2'])] }), 'A1.1').designCurrent)
      .toMatchObject({ status: 'not computed', reason: 'all that it feeds has been removed' })
  })
})

describe('the current of a feeder', () => {
  const ways: Circuit[] = [
    circuit('A1.1', ['P1']), circuit('A1.2', ['P2'], { demandFactor: 0.8 }), circuit('A1.3', ['P3'], { normalState: 'open' }), circuit('A1.4', []),
  ]
  const equipment = [load('P1', 10), load('P2', 20), load('P3', 40)]

  it('is the sum of the normally closed circuits beyond, each with its demand factor; a spare way draws nothing', () => {
    const { designCurrent, currentParts, segments } = feed(boat({ equipment, circuits: ways }), 'F2')
    expect(currentParts).toEqual([
      { tag: 'A1.1', currentA: 10, demandFactor: 1, from: 'circuit' }, { tag: 'A1.2', currentA: 20, demandFactor: 0.8, from: 'circuit' },
    ])
    // By hand: 10 + 0.8 · 20 = 26, of 30 connected.
    expect(designCurrent).toMatchObject({ status: 'computed', input: { connectedCurrentA: 30, demandFactor: expect.closeTo(26 / 30, 12), largestCurrentA: 20 }, output: { designCurrentA: expect.closeTo(26, 12) } })
    expect(inWords(segments)).toEqual(['WM5: F2 > A1, 26 A'])
  })

  it('counts a feeder below with that feeder’s own demand factor', () => {
    const vessel = boat({ equipment, circuits: ways })
    const circuits = vessel.circuits.map(each => (each.tag === 'F2' ? { ...each, demandFactor: 0.5 } : each))
    // By hand: 0.5 · 26 = 13, but F2 alone can draw its 26.
    expect(feed({ ...vessel, circuits }, 'F1').designCurrent).toMatchObject({ input: { connectedCurrentA: 26, demandFactor: 0.5 }, output: { designCurrentA: 26 } })
  })

  it('leaves out a circuit whose loads have all been removed, and is computed for the rest', () => {
    const { designCurrent, currentParts } = feed(boat({ equipment: [load('P1', 10), { ...load('P2', 20), status: 'removed' }], circuits: ways.slice(0, 2) }), 'F2')
    expect(currentParts.map(({ tag }) => tag)).toEqual(['A1.1'])
    expect(designCurrent).toMatchObject({ status: 'computed', output: { designCurrentA: 10 } })
  })

  it('is never less than what one circuit beyond draws, but for a charging circuit', () => {
    const oneWay = (demandFactor: number) => boat({ equipment: [load('P1', 60)], circuits: [{ ...ways[0]!, demandFactor }] })
    expect(designCurrentA(feed(oneWay(0.1), 'F2'))).toBe(60)
    expect(designCurrentA(feed(oneWay(0), 'F2'))).toBe(0)
  })

  it('is not computed while one of the circuits beyond is not, and names it', () => {
    const vessel = boat({ equipment: [load('P1', 10), load('P2')], circuits: ways.slice(0, 2) })
    expect(feed(vessel, 'F2').designCurrent).toMatchObject({ status: 'not computed', reason: 'the design current of A1.2 is not known' })
    expect(feed(vessel, 'F2').currentParts.map(({ tag }) => tag)).toEqual(['A1.1'])
    expect(feed(vessel, 'F1').designCurrent).toMatchObject({ status: 'not computed', reason: 'the design current of F2 is not known' })
  })

  it('is not computed, not zero, where nothing is closed beyond', () => {
    expect(feed(boat({ equipment, circuits: [ways[2]!] }), 'F2').designCurrent)
      .toMatchObject({ status: 'not computed', reason: 'no normally closed circuit is fed from A1' })
  })

  it('adds loads of its own to those of a panel', () => {
    const vessel = boat({ equipment: [load('P1', 10), load('M1', 3)], circuits: [circuit('A1.1', ['P1'])] })
    const circuits = vessel.circuits.map(each => (each.tag === 'F2' ? { ...each, loadTags: ['A1', 'M1', 'M1'] } : each))
    expect(designCurrentA(feed({ ...vessel, circuits }, 'F2'))).toBe(13)
  })
})

describe('a design current that the author gives', () => {
  const vessel = (designCurrent: number, second: number | null = 10) => boat({
    equipment: [load('E1', 10), load('E2', second), load('E3', 10), junction('J1'), junction('J2'), junction('J3')],
    circuits: [circuit('A1.1', ['E1', 'E2', 'E3'], { designCurrentA: designCurrent })],
    cables: cables('W1: A1.1 > J1', 'W2: J1 > E1', 'W3: J1 > J2', 'W4: J2 > E2', 'W5: J2 > E3', 'W6: J1 > J3'),
  })

  it('wins over the sum, and no cable is taken to carry more; a cable to nowhere carries nothing', () => {
    const { designCurrent, segments } = feed(vessel(15), 'A1.1')
    expect(designCurrent).toEqual({ status: 'declared', designCurrentA: 15 })
    expect(inWords(segments)).toEqual([
      'W1: A1.1 > J1, 15 A', 'W2: J1 > E1, 10 A', 'W3: J1 > J2, 15 A', 'W6: J1 > J3, 0 A', 'W4: J2 > E2, 10 A', 'W5: J2 > E3, 10 A',
    ])
  })

  it('above the sum holds for the cable to all the loads', () => {
    expect(inWords(feed(vessel(45), 'A1.1').segments).slice(0, 3)).toEqual(['W1: A1.1 > J1, 45 A', 'W2: J1 > E1, 10 A', 'W3: J1 > J2, 20 A'])
  })

  it('stands for a load whose own current is not known', () => {
    expect(inWords(feed(vessel(15, null), 'A1.1').segments)).toContain('W4: J2 > E2, 15 A')
    expect(feed(vessel(15, null), 'A1.1').currentParts.map(({ tag }) => tag)).toEqual(['E1', 'E3'])
  })

  it('counts in the feeder', () => {
    expect(designCurrentA(feed(vessel(15), 'F2'))).toBe(15)
  })
})

describe('power that no circuit counts', () => {
  const ids = (...equipment: Parameters<typeof anEquipment>[0][]) => feed(boat({ equipment: equipment.map(anEquipment) }), 'F1').ids
  const network = (tag: string) => ({ ethernetNetworks: [{ tag: 'N1', name: 'n', purpose: null, subnet: null, gatewayAddress: null, dynamicRange: null, switchTags: [tag] }] })
  const port = (kind: 'ethernet' | 'power', powerClass: number | null = null) => ({ name: kind, kind, speedMbitPerS: null, powerClass, baudRates: [], direction: null, signalCurrentA: null })

  it('is a note', () => {
    expect(ids({ tag: 'P1', powerW: 5 }, { tag: 'P2', currentTypicalA: 1 })).toEqual(['FED202', 'FED202'])
  })

  it('is none of: nothing recorded, removed, a source, a thing on the way', () => {
    expect(ids({ tag: 'P1' }, { tag: 'P2', powerW: 5, status: 'removed' }, { tag: 'G5', kind: 'alternator', currentMaxA: 90 }, { tag: 'S1', kind: 'switch', currentMaxA: 20 })).toEqual([])
  })

  it('is not that of a device fed over its data cable; a network switch is not such a device', () => {
    const camera = anEquipment({ tag: 'B1', powerW: 6, ports: [port('ethernet', 3)] })
    expect(feed(boat({ equipment: [camera] }), 'F1').ids).toEqual([])
    expect(feed(boat({ equipment: [{ ...camera, ports: [port('ethernet', 3), port('power')] }] }), 'F1').ids).toEqual(['FED202'])
    expect(feed(boat({ equipment: [camera] }, network('B1')), 'F1').ids).toEqual(['FED202'])
  })
})

describe('on any tree of cables', () => {
  /** Node i hangs on a node before it; about half of the others are loads. */
  const trees = fc.array(fc.record({ on: fc.nat(), currentA: fc.option(fc.integer({ min: 1, max: 40 }).map(n => n / 4), { freq: 2 }) }), { minLength: 1, maxLength: 30 })
  const vesselOf = (nodes: readonly { on: number; currentA: number | null }[]) => {
    const junctions: string[] = ['A1.1']
    const equipment: ReturnType<typeof anEquipment>[] = []
    const joined = nodes.map(({ on, currentA }, i) => {
      const near = junctions[on % junctions.length]!
      const tag = currentA === null ? `J${i}` : `E${i}`
      equipment.push(currentA === null ? junction(tag) : load(tag, currentA))
      if (currentA === null) junctions.push(tag)
      return `W${i}: ${i % 2 === 0 ? `${near} > ${tag}` : `${tag} > ${near}`}`
    })
    const loads = equipment.filter(({ kind }) => kind === 'other').map(({ tag }) => tag)
    return { vessel: boat({ equipment, circuits: [circuit('A1.1', loads)], cables: cables(...joined) }), loads, equipment }
  }
  const near = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-9)

  it('what enters a thing leaves it or is drawn there (Kirchhoff’s current law)', () => {
    fc.assert(fc.property(trees, nodes => {
      const { vessel, equipment } = vesselOf(nodes)
      const { segments } = feed(vessel, 'A1.1')
      expect(segments.length).toBe(nodes.length)
      const drawn = new Map(equipment.map(({ tag, currentMaxA }) => [tag, currentMaxA ?? 0]))
      for (const [i, { currentA, farTag }] of segments.entries()) {
        const leaving = segments.filter(({ parent }) => parent === i).reduce((sum, segment) => sum + segment.currentA!, 0)
        near(currentA!, leaving + drawn.get(farTag)!)
      }
    }), { numRuns: 200 })
  })

  it('what leaves the device, and its feeders, and the battery, is what the loads draw', () => {
    fc.assert(fc.property(trees, nodes => {
      const { vessel, loads, equipment } = vesselOf(nodes)
      fc.pre(loads.length > 0)
      const total = equipment.reduce((sum, { currentMaxA }) => sum + (currentMaxA ?? 0), 0)
      const { byCircuit } = feedingPass(vessel)
      const first = ({ segments, supplySegments }: CircuitFeed) => [...supplySegments, ...segments].filter(({ parent }) => parent === null)
      near(first(byCircuit.get('A1.1')!).reduce((sum, { currentA }) => sum + currentA!, 0), total)
      for (const tag of ['A1.1', 'F2', 'F1']) near(designCurrentA(byCircuit.get(tag))!, total)
      for (const { currentA } of [...first(byCircuit.get('F1')!), ...first(byCircuit.get('F2')!)]) near(currentA!, total)
    }), { numRuns: 200 })
  })
})
