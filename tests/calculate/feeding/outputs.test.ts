/** Sources that are no battery: what is fed from them, what they put in, what they take. */
import { describe, expect, it } from 'vitest'
import { designCurrentA } from '../../../src/model/results.js'
import { aCircuit, anEquipment, anOutput } from '../../support/vessel-builder.js'
import { boat, cables, circuit, feed, inWords, load } from './support.js'

const charging = (tag: string, loadTag: string, fedFromTag = 'X1') => aCircuit({ tag, fedFromTag, loadTags: [loadTag] })
const source = (tag: string, kind: string, outputs: ReturnType<typeof anOutput>[], given = {}) => anEquipment({ tag, kind, outputs, ...given })

describe('a circuit fed from an output', () => {
  const inverter = source('T20', 'inverter', [anOutput({ form: 'ac', nominalVoltageV: 230, frequencyHz: 50, ratedCurrentA: 7 })], { efficiencyPercent: 88 })
  const vessel = boat({
    equipment: [inverter, load('E1', null, { powerW: 460 }), load('P1', 1)],
    circuits: [circuit('A1.1', ['P1']), charging('F40', 'T20'), aCircuit({ tag: 'F41', fedFromTag: 'T20', loadTags: ['E1'] })],
    cables: cables('W40: X1 > F40', 'W41: F40 > T20', 'W42: T20 > F41', 'W43: F41 > E1', 'W1: A1.1 > P1'),
  })

  it('starts a system of its own: voltage, form, frequency, and a chain of one', () => {
    expect(feed(vessel, 'F41')).toMatchObject({ chain: ['F41'], sourceTag: 'T20', nominalVoltageV: 230, supplyForm: 'ac', frequencyHz: 50, infeed: null, ids: [] })
    // By hand: 460 W / 230 V.
    expect(designCurrentA(feed(vessel, 'F41'))).toBe(2)
  })

  it('loads the system above with what the inverter takes at full output', () => {
    // By hand: 230 V · 7 A / (12 V · 0.88) = 152.5 A.
    expect(feed(vessel, 'F40').currentParts).toMatchObject([{ tag: 'T20', currentA: expect.closeTo(152.4621, 4), demandFactor: 1, from: 'input', by: { input: { outputPowerW: 1610, efficiencyPercent: 88 } } }])
    expect(designCurrentA(feed(vessel, 'F1'))).toBeCloseTo(153.4621, 4)
    expect(feed(vessel, 'F40')).toMatchObject({ supplyForm: 'dc', infeed: null })
  })

  it('is unclear where there are several outputs and none is named', () => {
    const two = source('T20', 'inverter', [anOutput({ terminal: 'a', nominalVoltageV: 230 }), anOutput({ terminal: 'b', nominalVoltageV: 115 })])
    const unclear = { ...vessel, equipment: vessel.equipment.map(item => (item.tag === 'T20' ? two : item)) }
    expect(feed(unclear, 'F41')).toMatchObject({ chain: [], sourceTag: null, ids: ['FED206'] })
    const named = { ...unclear, circuits: unclear.circuits.map(each => (each.tag === 'F41' ? { ...each, fedFromTerminal: 'b' } : each)) }
    expect(feed(named, 'F41')).toMatchObject({ nominalVoltageV: 115, ids: [] })
  })
})

describe('what charging sources put in', () => {
  const charger = source('T11', 'charger', [anOutput({ terminal: 'house', nominalVoltageV: 12, ratedCurrentA: 60 }), anOutput({ terminal: 'start', nominalVoltageV: 12, ratedCurrentA: 20 })])
  const alternator = source('G3', 'alternator', [anOutput({ nominalVoltageV: 12, ratedCurrentA: 130 })])
  const vessel = boat({
    equipment: [charger, alternator, load('P1', 10)],
    circuits: [charging('F17', 'G3'), charging('F18', 'T11'), circuit('A1.1', ['P1'])],
    cables: cables('W17: X1 > F17', 'W18: F17 > G3:B+', 'W19: X1 > F18', 'W20: F18 > T11:house', 'W1: A1.1 > P1'),
  })

  it('is the output’s current in a charging circuit, by the terminal at the end of its cable', () => {
    expect(feed(vessel, 'F17')).toMatchObject({ infeed: { currentA: 130, only: true }, ids: [] })
    expect(feed(vessel, 'F18').infeed).toEqual({ currentA: 60, only: true, parts: [{ tag: 'T11', currentA: 60, demandFactor: 1, from: 'output' }] })
    expect(inWords(feed(vessel, 'F18').segments)).toEqual(['W20: F18 > T11, 60 A'])
  })

  it('is summed in the feeder, against the current and not with it', () => {
    const main = feed(vessel, 'F1')
    // By hand: 130 + 60 put in; 10 drawn.
    expect(main.infeed).toMatchObject({ currentA: 190, only: false })
    expect(designCurrentA(main)).toBe(10)
    expect(main.segments.map(({ currentA, putInA }) => [currentA, putInA])).toEqual([[10, 190]])
  })

  it('is not known where the output has no current, and the terminal is asked for where it could be two', () => {
    const unrated = { ...vessel, equipment: vessel.equipment.map(item => (item.tag === 'G3' ? { ...item, outputs: [anOutput({ nominalVoltageV: 12 })] } : item)) }
    expect(feed(unrated, 'F17')).toMatchObject({ infeed: { currentA: null, only: true }, designCurrent: { status: 'not computed' } })
    expect(feed(unrated, 'F1').infeed).toMatchObject({ currentA: null })
    const unnamed = { ...vessel, cables: vessel.cables.map(cable => (cable.tag === 'W20' ? { ...cable, to: { tag: 'T11', terminal: null } } : cable)) }
    expect(feed(unnamed, 'F18').designCurrent).toMatchObject({
      reason: 'at which output of T11 the circuit ends is not known: name house and start at the end of its cable',
    })
  })

  it('is nothing while the circuit is normally open', () => {
    const open = { ...vessel, circuits: vessel.circuits.map(each => (each.tag === 'F17' ? { ...each, normalState: 'open' as const } : each)) }
    expect(feed(open, 'F1').infeed).toMatchObject({ currentA: 60 })
  })
})

describe('a converter between two systems', () => {
  const converter = source('T12', 'dc-dc converter', [anOutput({ terminal: 'out', nominalVoltageV: 12, ratedCurrentA: 30 })], { efficiencyPercent: 90 })
  const vessel = boat({
    equipment: [converter],
    circuits: [charging('F19', 'T12'), charging('F35', 'T12', 'G1')],
    cables: cables('W1: X1 > F19', 'W2: F19 > T12:out', 'W3: G1 > F35', 'W4: F35 > T12:in'),
  })

  it('gives at its output and takes at its input', () => {
    expect(feed(vessel, 'F19').infeed).toMatchObject({ currentA: 30, only: true })
    // By hand: 12 V · 30 A / (12 V · 0.9).
    expect(feed(vessel, 'F35')).toMatchObject({ infeed: null, currentParts: [{ currentA: expect.closeTo(33.3333, 4), from: 'input' }] })
  })

  it('without a recorded efficiency counts with the least of common practice', () => {
    // By hand: 30 A / 0.85.
    const plain = { ...vessel, equipment: vessel.equipment.map(item => (item.tag === 'T12' ? { ...item, efficiencyPercent: null } : item)) }
    expect(designCurrentA(feed(plain, 'F35'))).toBeCloseTo(35.2941, 4)
  })
})

describe('an inverter charger', () => {
  const both = source('T20', 'inverter charger', [
    anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 230, ratedCurrentA: 8 }), anOutput({ terminal: 'dc', nominalVoltageV: 12, ratedCurrentA: 80 }),
  ], { efficiencyPercent: 90 })
  const inlet = source('X91', 'shore inlet', [anOutput({ form: 'ac', nominalVoltageV: 230, ratedCurrentA: 16 })])
  const vessel = boat({
    equipment: [both, inlet, load('E1', 4)],
    circuits: [charging('F40', 'T20'), aCircuit({ tag: 'F90', fedFromTag: 'X91', loadTags: ['T20'] }), aCircuit({ tag: 'F41', fedFromTag: 'T20', fedFromTerminal: 'ac', loadTags: ['E1'] })],
    cables: cables('W1: X1 > F40', 'W2: F40 > T20:dc', 'W3: X91 > F90', 'W4: F90 > T20:in', 'W5: T20:ac > F41', 'W6: F41 > E1'),
  })

  it('draws through the terminal by which it charges', () => {
    // By hand: 230 V · 8 A / (12 V · 0.9) = 170.4 A drawn; 80 A put in.
    expect(feed(vessel, 'F40')).toMatchObject({ infeed: { currentA: 80, only: false }, currentParts: [{ currentA: expect.closeTo(170.3704, 4) }] })
  })

  it('takes from the shore what it charges with and what it passes on', () => {
    // By hand: 12 V · 80 A / (230 V · 0.9) = 4.638 A, and 4 A for E1.
    expect(designCurrentA(feed(vessel, 'F90'))).toBeCloseTo(8.6377, 4)
  })
})

it('a solar panel decides how much flows to its controller, and the controller gives what it is made for', () => {
  const vessel = boat({
    equipment: [
      source('G50', 'solar panel', [anOutput({ nominalVoltageV: 20, ratedCurrentA: 9 })]),
      source('T40', 'solar charge controller', [anOutput({ nominalVoltageV: 12, ratedCurrentA: 15 })]),
    ],
    circuits: [aCircuit({ tag: 'G50.1', fedFromTag: 'G50', loadTags: ['T40'] }), charging('F20', 'T40')],
    cables: cables('W1: G50 > G50.1', 'W2: G50.1 > T40', 'W3: X1 > F20', 'W4: F20 > T40'),
  })
  expect(feed(vessel, 'G50.1')).toMatchObject({ nominalVoltageV: 20, infeed: null, currentParts: [{ tag: 'T40', currentA: 9, from: 'input' }] })
  expect(feed(vessel, 'F20').infeed).toMatchObject({ currentA: 15, only: true })
})

it('a source selector leads what comes in on any terminal to "out", and never one supply to another', () => {
  const inlet = source('X91', 'shore inlet', [anOutput({ form: 'ac', nominalVoltageV: 230 })])
  const generator = source('G9', 'generator', [anOutput({ form: 'ac', nominalVoltageV: 230 })])
  const vessel = boat({
    equipment: [inlet, generator, anEquipment({ tag: 'Q9', kind: 'source selector' })],
    circuits: [aCircuit({ tag: 'F90', fedFromTag: 'X91', loadTags: ['A1'], interlockTag: 'Q9' }), aCircuit({ tag: 'F91', fedFromTag: 'G9', loadTags: ['A1'], normalState: 'open', interlockTag: 'Q9' })],
    cables: cables('W90: X91 > F90', 'W91: F90 > Q9:1', 'W92: G9 > F91', 'W93: F91 > Q9:2', 'W94: Q9:out > A1'),
  }, { })
  expect(inWords(feed(vessel, 'F90').segments).map(text => text.split(',')[0])).toEqual(['W91: F90 > Q9', 'W94: Q9 > A1'])
  expect(inWords(feed(vessel, 'F91').segments).map(text => text.split(',')[0])).toEqual(['W93: F91 > Q9', 'W94: Q9 > A1'])
  expect(feed(vessel, 'F90').ids.filter(id => id === 'FED303')).toEqual([])
})

it.each([
  ['24 V gear on 12 V', { supplyMinV: 18, supplyMaxV: 32 }, ['FED101']],
  ['exactly at its lowest', { supplyMinV: 12 }, []],
  ['above its highest', { supplyMaxV: 9 }, ['FED101']],
  ['without a range', {}, []],
  ['removed', { supplyMinV: 18, status: 'removed' as const }, ['FED308']],
])('holds the voltage of the circuit against the supply range of its loads: %s', (_, given, ids) => {
  const vessel = boat({ equipment: [load('P1', 1, given)], circuits: [circuit('A1.1', ['P1'])], cables: cables('W1: A1.1 > P1') })
  expect(feed(vessel, 'A1.1').ids).toEqual(ids)
})

describe('what a critical reader tried', () => {
  const ac = (nominalVoltageV: number, terminal: string, ratedCurrentA: number) => anOutput({ terminal, form: 'ac', nominalVoltageV, ratedCurrentA })
  it('the current recorded of an inverter charger is that of its battery side, and only its a.c. circuits are passed on', () => {
    const both = source('T20', 'inverter charger', [ac(230, 'ac', 8), anOutput({ terminal: 'dc', nominalVoltageV: 12, ratedCurrentA: 80 }), anOutput({ terminal: 'aux', nominalVoltageV: 12, ratedCurrentA: 40 })], { efficiencyPercent: 90, currentMaxA: 140 })
    const inlet = source('X91', 'shore inlet', [anOutput({ form: 'ac', nominalVoltageV: 230, ratedCurrentA: 16 })])
    const vessel = boat({
      equipment: [both, inlet, load('E1', 4), load('E2', 40)],
      circuits: [
        aCircuit({ tag: 'F90', fedFromTag: 'X91', loadTags: ['T20'] }), aCircuit({ tag: 'F41', fedFromTag: 'T20', fedFromTerminal: 'ac', loadTags: ['E1'] }),
        aCircuit({ tag: 'F42', fedFromTag: 'T20', fedFromTerminal: 'aux', loadTags: ['E2'] }),
      ],
      cables: cables('W3: X91 > F90', 'W4: F90 > T20:in', 'W5: T20:ac > F41', 'W6: F41 > E1', 'W7: T20:aux > F42', 'W8: F42 > E2'),
    })
    // By hand: (80 + 40) A · 12 V / (230 V · 0.9) = 6.957 A, and the 4 A of E1.
    expect(designCurrentA(feed(vessel, 'F90'))).toBeCloseTo(10.9565, 4)
  })

  it('what has been removed feeds nothing, be it battery or output', () => {
    const plain = boat({ equipment: [load('P1', 1)], circuits: [circuit('A1.1', ['P1'])], cables: cables('W1: A1.1 > P1') })
    const gone = { ...plain, batteries: plain.batteries.map(battery => ({ ...battery, status: 'removed' as const })) }
    expect(feed(gone, 'A1.1')).toMatchObject({ chain: [], sourceTag: null, nominalVoltageV: null })
    expect(feed(gone, 'A1.1').ids).toContain('FED205')
  })

  it('an alternator with a curve alone puts in its highest current', () => {
    const curve = [{ speedRpm: 1000, currentA: 40 }, { speedRpm: 3000, currentA: 120 }]
    const vessel = boat({ equipment: [source('G3', 'alternator', [anOutput({ nominalVoltageV: 12, curve })])], circuits: [charging('F17', 'G3')], cables: cables('W17: X1 > F17', 'W18: F17 > G3') })
    expect(feed(vessel, 'F17').infeed?.currentA).toBe(120)
  })
})
