import { alg, Graph } from '@dagrejs/graphlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { routingPass } from '../../../src/calculate/wireways/index.js'
import { cableLengthM } from '../../../src/model/results.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { aBusbar, aCable, aCircuit, anEquipment, aPanel, aPoint, aVessel, aWireway, aZone } from '../../support/vessel-builder.js'

/**
 *   helm ──WW1 2 m── N1 ──WW2 3 m── engine        locker: no wireway leads there
 *     └────────────WW3 6 m───────────┘             N1 is a point in the saloon
 */
const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  zones: [aZone({ tag: 'helm' }), aZone({ tag: 'saloon' }), aZone({ tag: 'engine', space: 'machinery' }), aZone({ tag: 'bilge', space: 'bilge' }), aZone({ tag: 'locker' })],
  points: [aPoint({ tag: 'N1', zoneTag: 'saloon' })],
  wireways: [
    aWireway({ tag: 'WW1', fromTag: 'helm', toTag: 'N1', lengthM: 2, zoneTags: ['helm', 'saloon'] }),
    aWireway({ tag: 'WW2', fromTag: 'engine', toTag: 'N1', lengthM: 3, zoneTags: ['saloon', 'bilge', 'engine'] }),
    aWireway({ tag: 'WW3', fromTag: 'helm', toTag: 'engine', lengthM: 6 }),
  ],
  equipment: [
    anEquipment({ tag: 'P1', zoneTag: 'helm' }), anEquipment({ tag: 'P2', zoneTag: 'helm' }), anEquipment({ tag: 'M1', zoneTag: 'engine' }),
    anEquipment({ tag: 'E1', zoneTag: 'saloon', pointTag: 'N1' }), anEquipment({ tag: 'H1', zoneTag: 'locker' }), anEquipment({ tag: 'B1' }),
  ],
  conditions: { ...aVessel().conditions, cableTailM: 0.4 },
  ...given,
})
const run = (cable: Omit<Parameters<typeof aCable>[0], 'tag'>, given: Partial<Vessel> = {}) => {
  const { byCable, byWireway, findings } = routingPass(boat({ cables: [aCable({ ...cable, tag: 'W1' })], ...given }))
  return { ...byCable.get('W1')!, lengthM: cableLengthM(byCable.get('W1')), byWireway, ids: findings.map(({ id }) => id), findings }
}

describe('a route that is given', () => {
  it('takes each wireway in either direction, in the order written', () => {
    const { routeSource, wirewayTags, zoneTags, length, ids } = run({ from: 'P1', to: 'M1', routeTags: ['WW1', 'WW2'], serviceLoopM: 0.5 })
    expect({ routeSource, wirewayTags, zoneTags, ids }).toEqual({
      routeSource: 'given', wirewayTags: ['WW1', 'WW2'], zoneTags: ['helm', 'saloon', 'bilge', 'engine'], ids: [],
    })
    // By hand: 2 + 3 m of wireway, 0.4 m at each end, 0.5 m loop.
    expect(length).toEqual({
      status: 'computed', method: 'cable-length',
      input: { wirewayLengthM: 5, tailLengthM: 0.4, serviceLoopM: 0.5 }, output: { cableLengthM: expect.closeTo(6.3, 9) },
    })
  })

  it('is kept for bundles but gives no length where it does not hold together', () => {
    const { routeSource, wirewayTags, length, zonesUnknown, findings, byWireway } = run({ from: 'P1', to: 'M1', routeTags: ['WW2', 'WW1'] })
    expect({ routeSource, wirewayTags }).toEqual({ routeSource: 'given', wirewayTags: ['WW2', 'WW1'] })
    expect(length).toMatchObject({ status: 'not computed', reason: 'from helm it goes on with WW2, which joins engine and N1' })
    expect(zonesUnknown).not.toBeNull()
    expect(findings).toMatchObject([{ id: 'WWY301', severity: 'error', subject: { kind: 'cable', id: 'W1' }, field: 'routeTags' }])
    expect(byWireway.get('WW2')?.cableTags).toEqual(['W1'])
  })

  it.each([
    [['WW1'], 'it ends at N1, the cable at engine'],
    [['WW3', 'WW3'], 'it ends at helm, the cable at engine'],
    [['WW1', 'WW9'], 'WW9 is not a wireway'],
    [[], 'it names no wireway, but the ends are in helm and engine'],
  ])('%j: %s', (routeTags, gap) => {
    expect(run({ from: 'P1', to: 'M1', routeTags }).findings.map(({ message }) => message)).toEqual([`Cable W1: its route is broken: ${gap}`])
  })

  it('of no wireways within one zone is as long as its tails', () => {
    const { routeSource, lengthM, zoneTags, ids } = run({ from: 'P1', to: 'P2', routeTags: [] })
    expect({ routeSource, lengthM, zoneTags, ids }).toEqual({ routeSource: 'none', lengthM: 0.8, zoneTags: ['helm'], ids: [] })
  })
})

describe('a route that is not given', () => {
  it('is the shortest way', () => {
    const { routeSource, wirewayTags, lengthM } = run({ from: 'P1', to: 'M1' })
    expect({ routeSource, wirewayTags }).toEqual({ routeSource: 'shortest', wirewayTags: ['WW1', 'WW2'] })
    expect(lengthM).toBeCloseTo(5.8, 9)
  })

  it('starts at the wireway point of an item that names one', () => {
    expect(run({ from: 'E1', to: 'M1' }).wirewayTags).toEqual(['WW2'])
  })

  it('is none within one place', () => {
    expect(run({ from: 'P1', to: 'P2' })).toMatchObject({ routeSource: 'none', wirewayTags: [], zoneTags: ['helm'], lengthM: 0.8, ids: [] })
  })

  it('is not known where no wireways lead, and the user is told once for all cables between the two places', () => {
    const { byCable, findings } = routingPass(boat({ cables: [aCable({ tag: 'W1', from: 'P1', to: 'H1' }), aCable({ tag: 'W2', from: 'H1', to: 'P2' })] }))
    expect(byCable.get('W1')).toMatchObject({ routeSource: 'unknown', zoneTags: ['helm', 'locker'], length: { status: 'not computed', reason: 'no wireways lead from helm to locker' } })
    expect(findings).toMatchObject([{ id: 'WWY202', severity: 'note', subject: { kind: 'zone', id: 'helm' }, evidence: { cableCount: 2 } }])
    expect(findings[0]?.message).toBe('No wireways lead from helm to locker: 2 cables between them have no known way')
  })
})

describe('an end whose place is not recorded', () => {
  it('leaves the length not computed, names what is missing, and tells the user once', () => {
    const { byCable, findings } = routingPass(boat({ cables: [aCable({ tag: 'W1', from: 'P1', to: 'B1' }), aCable({ tag: 'W2', from: 'B1', to: 'M1', routeTags: ['WW3'] })] }))
    expect(byCable.get('W1')).toMatchObject({ routeSource: 'unknown', zoneTags: ['helm'], zonesUnknown: 'no zone is recorded for B1', length: { status: 'not computed', reason: 'no zone is recorded for B1' } })
    expect(byCable.get('W2')).toMatchObject({ routeSource: 'given', wirewayTags: ['WW3'], length: { status: 'not computed' } })
    expect(findings).toMatchObject([{ id: 'WWY201', severity: 'note', subject: { kind: 'equipment', id: 'B1' }, field: 'zoneTag', evidence: { cableCount: 2 } }])
  })

  it('of a circuit is that of its protective device, else that of what it is fed from', () => {
    const given = { busbars: [aBusbar({ tag: 'X1', zoneTag: 'engine' })], panels: [aPanel({ tag: 'A1' })] }
    const circuits = [aCircuit({ tag: 'F1', fedFromTag: 'X1' }), aCircuit({ tag: 'F2', fedFromTag: 'X1', zoneTag: 'helm' }), aCircuit({ tag: 'A1.1', fedFromTag: 'A1' })]
    expect(run({ from: 'F1', to: 'P1' }, { ...given, circuits }).zoneTags).toEqual(['engine', 'saloon', 'bilge', 'helm'])
    expect(run({ from: 'F2', to: 'P1' }, { ...given, circuits }).zoneTags).toEqual(['helm'])
    expect(run({ from: 'A1.1', to: 'P1' }, { ...given, circuits }).findings).toMatchObject([{ id: 'WWY201', subject: { kind: 'panel', id: 'A1' } }])
  })

  it('of a part of a CAN backbone is the zone of the part', () => {
    const canBuses = [{ tag: 'N2', name: 'bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null, backbone: [{ kind: 'terminator' as const, tag: 'R1', zoneTag: 'helm', resistanceOhm: null }, { kind: 'terminator' as const, tag: 'R2', zoneTag: null, resistanceOhm: null }] }]
    expect(run({ from: 'R1', to: 'M1' }, { canBuses })).toMatchObject({ routeSource: 'shortest' })
    expect(run({ from: 'R2', to: 'M1' }, { canBuses }).findings).toMatchObject([{ id: 'WWY201', subject: { kind: 'CAN bus', id: 'R2' } }])
  })
})

describe('a length that is declared', () => {
  it('wins, and the route given still counts for zones and bundles', () => {
    const { routeSource, length, zoneTags, byWireway } = run({ from: 'P1', to: 'M1', routeTags: ['WW3'], lengthM: 9 })
    expect({ routeSource, length, zoneTags }).toEqual({ routeSource: 'given', length: { status: 'declared', cableLengthM: 9 }, zoneTags: ['helm', 'engine'] })
    expect(byWireway.get('WW3')?.cableTags).toEqual(['W1'])
  })

  it('without a route takes the zones of the shortest way and says so', () => {
    expect(run({ from: 'P1', to: 'M1', lengthM: 9 })).toMatchObject({ routeSource: 'shortest', zoneTags: ['helm', 'saloon', 'bilge', 'engine'], lengthM: 9 })
  })

  it('without any way has the zones of its ends, and lacks nothing the user must act on', () => {
    expect(run({ from: 'P1', to: 'H1', lengthM: 9 })).toMatchObject({ routeSource: 'declared', zoneTags: ['helm', 'locker'], zonesUnknown: 'no wireways lead from helm to locker', lengthM: 9, ids: [] })
  })

  it('below that of the wireways is doubtful; equal to it is not', () => {
    const { findings } = run({ from: 'P1', to: 'M1', routeTags: ['WW1', 'WW2'], lengthM: 4.999 })
    expect(findings).toMatchObject([{ id: 'WWY302', severity: 'warning', field: 'lengthM', evidence: { cableLengthM: 4.999, wirewayLengthM: 5 } }])
    expect(findings[0]?.message).toMatch(/4\.999\sm.*5\.000\sm/)
    expect(run({ from: 'P1', to: 'M1', routeTags: ['WW1', 'WW2'], lengthM: 5 }).ids).toEqual([])
  })
})

it('a cable that has been removed is nowhere', () => {
  const { routeSource, wirewayTags, length, byWireway, ids } = run({ from: 'P1', to: 'B1', routeTags: ['WW3'], lengthM: 3, status: 'removed' })
  expect({ routeSource, wirewayTags, ids }).toEqual({ routeSource: 'unknown', wirewayTags: [], ids: [] })
  expect(length).toMatchObject({ status: 'not computed', reason: 'the cable has been removed' })
  expect(byWireway.get('WW3')?.cableTags).toEqual([])
})

describe('on any graph of wireways', () => {
  const zoneNames = Array.from({ length: 8 }, (_, i) => `Z${i}`)
  const zone = fc.constantFrom(...zoneNames)
  const wireways = fc.array(fc.record({ fromTag: zone, toTag: zone, lengthM: fc.integer({ min: 1, max: 9 }) }), { maxLength: 20 })
    .map(list => list.map((ends, i) => aWireway({ ...ends, tag: `WW${i}` })))
  const vesselOf = (ways: ReturnType<typeof aWireway>[], from: string, to: string) => aVessel({
    zones: zoneNames.map(tag => aZone({ tag })), wireways: ways,
    equipment: [anEquipment({ tag: 'P1', zoneTag: from }), anEquipment({ tag: 'P2', zoneTag: to })],
    cables: [aCable({ tag: 'W1', from: 'P1', to: 'P2' }), aCable({ tag: 'W2', from: 'P2', to: 'P1' })],
  })

  it('the way there is the way back, and as long as a second library finds it', () => {
    fc.assert(fc.property(wireways, zone, zone, (ways, from, to) => {
      const { byCable } = routingPass(vesselOf(ways, from, to))
      const there = byCable.get('W1')!
      const back = byCable.get('W2')!
      expect(back.wirewayTags.toReversed()).toEqual(there.wirewayTags)
      expect(cableLengthM(back)).toBe(cableLengthM(there))

      const graph = new Graph({ directed: false, multigraph: true })
      for (const name of zoneNames) graph.setNode(name)
      for (const { tag, fromTag, toTag, lengthM } of ways) graph.setEdge(fromTag, toTag, lengthM, tag)
      const { distance } = alg.dijkstra(graph, from, (e: { v: string; w: string; name?: string }) => graph.edge(e) as number, v => graph.nodeEdges(v) ?? [])[to]!
      expect(cableLengthM(there)).toBe(distance === Infinity ? null : distance)
    }), { numRuns: 300 })
  })

  it('writing the shortest way down as the route changes nothing', () => {
    fc.assert(fc.property(wireways, zone, zone, (ways, from, to) => {
      const vessel = vesselOf(ways, from, to)
      const found = routingPass(vessel).byCable.get('W1')!
      fc.pre(found.length.status === 'computed')
      const given = routingPass({ ...vessel, cables: [{ ...vessel.cables[0]!, routeTags: found.wirewayTags }] })
      expect(given.findings).toEqual([])
      expect(given.byCable.get('W1')!.length).toEqual(found.length)
      expect(given.byCable.get('W1')!.zoneTags).toEqual(found.zoneTags)
    }), { numRuns: 200 })
  })
})
