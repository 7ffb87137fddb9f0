/** Which cables a circuit consists of, and what its cables reach. */
import { describe, expect, it } from 'vitest'
import { feedingPass } from '../../../src/calculate/feeding/index.js'
import { aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { boat, cables, circuit, feed, inWords, junction, load, messages } from './support.js'

describe('the walk from a protective device', () => {
  it('tells the supply side, through the isolator, from the way on', () => {
    const { supplySegments, segments, reachedTags, ids } = feed(boat({ circuits: [circuit('A1.1', ['P1'])], equipment: [load('P1', 5)], cables: cables('W1: A1.1 > P1') }), 'F1')
    expect(inWords(supplySegments)).toEqual(['WM1: G1 > Q1, 5 A', 'WM2: Q1 > F1, 5 A'])
    expect(supplySegments.map(({ parent }) => parent)).toEqual([null, 0])
    expect(inWords(segments)).toEqual(['WM3: F1 > X1, 5 A'])
    expect({ reachedTags, ids }).toEqual({ reachedTags: ['X1'], ids: [] })
  })

  it('does not mind from which end a cable is written', () => {
    const turned = (vessel: ReturnType<typeof boat>) => ({ ...vessel, cables: vessel.cables.map(cable => ({ ...cable, from: cable.to, to: cable.from })) })
    const vessel = boat({
      circuits: [circuit('A1.1', ['P1', 'P2'])], equipment: [load('P1', 5), load('P2', 2), junction('J1')],
      cables: cables('W1: A1.1 > J1', 'W2: J1 > P1', 'W3: J1 > P2'),
    })
    expect(feedingPass(turned(vessel))).toEqual(feedingPass(vessel))
  })

  it('branches at a junction box; the trunk carries the sum', () => {
    const vessel = boat({
      circuits: [circuit('A1.1', ['E1', 'E2', 'E3'])], equipment: [load('E1', 1.5), load('E2', 2), load('E3', 0.5), junction('J1'), junction('J2', 'connector')],
      cables: cables('W1: A1.1 > J1', 'W2: J1 > E1', 'W3: J1 > J2', 'W4: J2 > E2', 'W5: J2 > E3'),
    })
    const { segments, reachedTags, ids } = feed(vessel, 'A1.1')
    expect(inWords(segments)).toEqual(['W1: A1.1 > J1, 4 A', 'W2: J1 > E1, 1.5 A', 'W3: J1 > J2, 2.5 A', 'W4: J2 > E2, 2 A', 'W5: J2 > E3, 0.5 A'])
    expect(segments.map(({ parent }) => parent)).toEqual([null, 0, 0, 2, 2])
    expect({ reachedTags, ids }).toEqual({ reachedTags: ['E1', 'E2', 'E3'], ids: [] })
  })

  it('goes through a switch in series', () => {
    const { segments, ids } = feed(boat({
      circuits: [circuit('A1.1', ['M1'])], equipment: [load('M1', 4), junction('S1', 'float switch')], cables: cables('W1: A1.1 > S1:in', 'W2: S1:out > M1'),
    }), 'A1.1')
    expect(inWords(segments)).toEqual(['W1: A1.1 > S1, 4 A', 'W2: S1 > M1, 4 A'])
    expect(ids).toEqual([])
  })

  it('keeps two circuits through one terminal block apart', () => {
    const vessel = boat({
      circuits: [circuit('A1.1', ['P1', 'P3']), circuit('A1.2', ['P2'])],
      equipment: [load('P1', 1), load('P2', 2), load('P3', 4), junction('TB1', 'terminal block')],
      cables: cables('W1: A1.1 > TB1:1', 'W2: TB1:1 > P1', 'W3: A1.2 > TB1:2', 'W4: TB1:2 > P2', 'W5: TB1:1 > P3'),
    })
    expect(inWords(feed(vessel, 'A1.1').segments)).toEqual(['W1: A1.1 > TB1, 5 A', 'W2: TB1 > P1, 1 A', 'W5: TB1 > P3, 4 A'])
    expect(inWords(feed(vessel, 'A1.2').segments)).toEqual(['W3: A1.2 > TB1, 2 A', 'W4: TB1 > P2, 2 A'])
    expect(messages(vessel)).toEqual([])
  })

  it('joins nothing at a terminal block whose terminal is not named', () => {
    const vessel = boat({
      circuits: [circuit('A1.1', ['P1'])], equipment: [load('P1', 1), junction('TB1', 'terminal block')], cables: cables('W1: A1.1 > TB1', 'W2: TB1:1 > P1'),
    })
    expect(feed(vessel, 'A1.1')).toMatchObject({ reachedTags: [], unreachedTags: ['P1'] })
    expect(messages(vessel)).toEqual([
      'FED301 Circuit A1.1: its cables do not reach P1',
      'FED203 Cable W1: its terminal at TB1 is not named, so what it is joined to is not known',
      'FED204 Cable W2: no circuit reaches it, from TB1 to P1',
    ])
  })

  it('takes only cables that hold the way out of a d.c. circuit, and none that have been removed', () => {
    const types = [aCableType({ tag: 'AC', use: 'ac power' }), aCableType({ tag: 'NET', use: 'ethernet' }), aCableType({ tag: 'DC' })]
    const more = [
      aCable({ tag: 'W1', from: 'A1.1', to: 'P1', typeTag: 'DC', carries: 'positive' }),
      aCable({ tag: 'W2', from: 'A1.1', to: 'P2', typeTag: 'DC', carries: 'negative' }),
      aCable({ tag: 'W3', from: 'A1.1', to: 'P3', typeTag: 'DC', status: 'removed' }),
      aCable({ tag: 'W4', from: 'A1.1', to: 'P4', typeTag: 'NET' }),
      aCable({ tag: 'W5', from: 'A1.1', to: 'P5', typeTag: 'DC', carries: 'none' }),
    ]
    const { segments } = feed(boat({ circuits: [circuit('A1.1', ['P1'])], equipment: ['P1', 'P2', 'P3', 'P4', 'P5'].map(tag => load(tag, 1)), cables: more }, { cableTypes: types }), 'A1.1')
    expect(inWords(segments)).toEqual(['W1: A1.1 > P1, 1 A'])
  })

  it('leaves out the cables that the circuit names as its way back', () => {
    const vessel = boat({
      circuits: [circuit('A1.1', ['P1'], { returnCableTags: ['W2'] })], equipment: [load('P1', 1), junction('J1')],
      cables: [aCable({ tag: 'W1', from: 'A1.1', to: 'P1', carries: 'positive' }), aCable({ tag: 'W2', from: 'P1', to: 'J1', carries: 'positive' })],
    })
    expect(feed(vessel, 'A1.1').ids).toEqual([])
  })

  it('gives each circuit its own current on a supply that several share', () => {
    const vessel = aVessel({
      batteries: [aBattery({ tag: 'G1' })], equipment: [junction('Q1', 'battery isolator'), load('M1', 80), load('M2', 30)],
      circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['M1'] }), aCircuit({ tag: 'F2', fedFromTag: 'G1', loadTags: ['M2'] })],
      cables: cables('W1: G1 > Q1', 'W2: Q1 > F1', 'W3: Q1 > F2', 'W4: F1 > M1', 'W5: F2 > M2'),
    })
    expect(inWords(feed(vessel, 'F1').supplySegments)).toEqual(['W1: G1 > Q1, 80 A', 'W2: Q1 > F1, 80 A'])
    expect(inWords(feed(vessel, 'F2').supplySegments)).toEqual(['W1: G1 > Q1, 30 A', 'W3: Q1 > F2, 30 A'])
    expect(messages(vessel)).toEqual([])
  })
})

describe('cables that do not fit', () => {
  const one = { circuits: [circuit('A1.1', ['P1'])], equipment: [load('P1', 1), junction('J1'), junction('J2')] }
  const two = { ...one, equipment: [...one.equipment, load('P2', 2)] }

  it('a loop is reported and cut, and the walk ends', () => {
    const vessel = boat({ ...one, cables: cables('W1: A1.1 > J1', 'W2: J1 > J2', 'W3: J2 > A1.1', 'W4: J2 > P1') })
    const { segments, ids } = feed(vessel, 'A1.1')
    expect(ids).toEqual(['FED304'])
    expect(segments.map(({ farTag }) => farTag)).toEqual(['J1', 'J2', 'P1'])
  })

  it('a second cable to the same load is a loop too: how the current divides is not known', () => {
    const vessel = boat({ ...one, cables: cables('W1: A1.1 > P1', 'W2: A1.1 > P1') })
    expect(inWords(feed(vessel, 'A1.1').segments)).toEqual(['W1: A1.1 > P1, 1 A'])
    expect(messages(vessel)).toEqual(['FED304 Cable W2: other cables join A1.1 and P1 already'])
  })

  it('a loop on the supply side is reported once', () => {
    expect(messages(boat({ ...one, cables: cables('W1: A1.1 > P1', 'WM6: G1 > Q1') }))).toEqual(['FED304 Cable WM6: other cables join G1 and Q1 already'])
  })

  it('a cable from an item to itself is a loop', () => {
    expect(messages(boat({ ...one, cables: cables('W1: A1.1 > J1', 'W2: J1 > P1', 'W3: J1 > J1') }))).toEqual(['FED304 Cable W3: other cables join J1 already'])
  })

  it('a load that is reached and not listed is reported, with its current in the cable', () => {
    const vessel = boat({ ...two, cables: cables('W1: A1.1 > J1', 'W2: J1 > P1', 'W3: J1 > P2') })
    expect(inWords(feed(vessel, 'A1.1').segments)[0]).toBe('W1: A1.1 > J1, 3 A')
    expect(messages(vessel)).toEqual(['FED302 Circuit A1.1: cable W3 leads to P2, which the circuit does not list'])
  })

  it('a load that is listed and not reached is a warning; where no cable is entered at all, a note', () => {
    const both = feedingPass(boat({ ...two, circuits: [circuit('A1.1', ['P1', 'P2'])], cables: cables('W1: A1.1 > P1') })).findings
    expect(both).toMatchObject([{ id: 'FED301', severity: 'warning', subject: { kind: 'circuit', id: 'A1.1' }, field: 'loadTags' }])
    const none = feedingPass(boat({ ...two, circuits: [circuit('A1.1', ['P1', 'P2'])] })).findings
    expect(none).toMatchObject([{ id: 'FED201', severity: 'note', message: 'Circuit A1.1: no cable is entered to P1 and P2' }])
  })

  it('two circuits joined by a cable are reported, from both sides', () => {
    const vessel = boat({ ...two, circuits: [circuit('A1.1', ['P1']), circuit('A1.2', ['P2'])], cables: cables('W1: A1.1 > J1', 'W2: J1 > P1', 'W3: J1 > A1.2', 'W4: A1.2 > P2') })
    expect(messages(vessel)).toEqual([
      'FED303 Circuit A1.1: cable W3 leads to circuit A1.2',
      'FED303 Circuit A1.2: cable W1 leads to circuit A1.1',
      'FED302 Circuit A1.2: cable W2 leads to P1, which the circuit does not list',
    ])
    expect(inWords(feed(vessel, 'A1.1').segments)[0]).toBe('W1: A1.1 > J1, not known')
  })

  it('a power cable that no circuit reaches is a note', () => {
    const vessel = boat({ ...two, circuits: [circuit('A1.1', ['P1'])], cables: cables('W1: A1.1 > P1', 'W9: J1 > P2') })
    expect(feedingPass(vessel).findings).toMatchObject([
      { id: 'FED204', severity: 'note', message: 'Cable W9: no circuit reaches it, from J1 to P2' },
      { id: 'FED202', subject: { kind: 'equipment', id: 'P2' } },
    ])
  })

  it('a cable that is live with no protective device between is a warning', () => {
    const vessel = boat({ ...two, cables: cables('W1: A1.1 > P1', 'W9: X1 > J1', 'W10: J1 > P2') })
    expect(messages(vessel).filter(text => text.startsWith('FED305'))).toEqual([
      'FED305 Cable W9: it is live from X1 and belongs to no circuit', 'FED305 Cable W10: it is live from X1 and belongs to no circuit',
    ])
  })

  it('a supply that comes back to the distribution point on the load side is cut, not followed round', () => {
    const vessel = boat({ ...one, circuits: [circuit('F5', ['P1'], { fedFromTag: 'X1' })], cables: cables('W1: X1 > F5', 'W2: F5 > J1', 'W3: J1 > X1', 'W4: J1 > P1') })
    expect(messages(vessel)).toEqual([
      'FED301 Circuit F5: its cables do not reach P1',
      'FED304 Cable W2: other cables join J1 and F5 already',
      'FED305 Cable W3: it is live from X1 and belongs to no circuit',
      'FED305 Cable W4: it is live from X1 and belongs to no circuit',
    ])
  })
})

describe('ends that are no item', () => {
  const bus = (circuitTag: string | null) => ({
    canBuses: [{ tag: 'N1', name: 'bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null, backbone: [{ kind: 'power' as const, tag: 'T3', zoneTag: null, circuitTag, dropCableTag: null, supplyVoltageV: null }] }],
  })

  it('the supply of a CAN bus ends at its power insertion point', () => {
    const of = (loadTags: string[], circuitTag: string | null) =>
      messages(boat({ circuits: [circuit('A1.1', loadTags, { designCurrentA: 1 })], cables: cables('W1: A1.1 > T3') }, bus(circuitTag)))
    expect(of([], 'A1.1')).toEqual([])
    expect(of(['N1'], null)).toEqual([])
    expect(of(['T3'], null)).toEqual([])
    expect(of([], null)).toEqual(['FED302 Circuit A1.1: cable W1 leads to T3, which the circuit does not list'])
  })

  it('a negative busbar gives nothing its supply', () => {
    const vessel = boat({ equipment: [load('P1', 1)], circuits: [circuit('A1.1', ['P1'])], cables: [...cables('W1: A1.1 > P1'), aCable({ tag: 'W2', from: 'P1', to: 'XN', carries: 'negative' })] }, {})
    expect(messages({ ...vessel, busbars: [...vessel.busbars, aBusbar({ tag: 'XN', polarity: 'negative' })] })).toEqual([])
  })

  it('items of kinds that nobody knows are a fault in our code', () => {
    expect(() => feedingPass(boat({ equipment: [anEquipment({ tag: 'P1', kind: 'gizmo' })], cables: cables('W1: A1.1 > P1') }))).toThrow('no equipment kind "gizmo"')
  })
})
