/**
 * Expected voltages by hand. Resistances at 20 °C: IEC 60228, class 5, plain copper, Ω/km: 1.5 mm² 13.3, 2.5 mm² 7.98, 4 mm² 4.95, 10 mm² 1.91,
 * 25 mm² 0.780; tinned 6 mm² 3.39, 10 mm² 1.95. At θ they are 1 + 0.00393 (θ − 20) times as large (IEC 60028); at 70 °C 1.1965 times.
 */
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import type { FaultLine, FaultPoint } from '../../../src/model/results/fault-tracing.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, anOutput, aPanel, aVessel, mm2 } from '../../support/vessel-builder.js'
import { vesselAt } from '../dependency/support.js'

const type = (tag: string, size: number) => aCableType({ tag, use: 'power', cores: 2, size: mm2(size), insulationC: 70, tinned: false })
const cable = (tag: string, from: string, to: string, typeTag: string, lengthM: number, carries: 'both' | 'positive' | 'negative' = 'both') => aCable({ tag, from, to, typeTag, lengthM, carries })
const load = (tag: string, currentMaxA: number) => anEquipment({ tag, currentMaxA })

/** G1 ─W0 0.2─ F1 ─W1 1 m─ X1 ─ F2 ─W3 2 m─ A1 ─ A1.1 ─W4 5 m─ Q5 ─W5 2 m─ E1 (3 A), A1.2 ─W6 4 m─ E2 (1 A); X1 ─ F3 ─W7 3 m─ M1 (10 A); back by W2, 1 m. */
const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  batteries: [aBattery({ tag: 'G1', nominalVoltageV: 12 })], busbars: [aBusbar({ tag: 'X1' }), aBusbar({ tag: 'X2', polarity: 'negative' })], panels: [aPanel({ tag: 'A1' })],
  equipment: [load('E1', 3), load('E2', 1), load('M1', 10), anEquipment({ tag: 'Q5', kind: 'switch' })],
  cableTypes: [type('t25', 25), type('t10', 10), type('t4', 4), type('t2', 2.5), type('t1', 1.5)],
  circuits: [
    aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['X1'], returnCableTags: ['W2'] }), aCircuit({ tag: 'F2', fedFromTag: 'X1', loadTags: ['A1'] }),
    aCircuit({ tag: 'A1.1', fedFromTag: 'A1', loadTags: ['E1'] }), aCircuit({ tag: 'A1.2', fedFromTag: 'A1', loadTags: ['E2'] }), aCircuit({ tag: 'F3', fedFromTag: 'X1', loadTags: ['M1'] }),
  ],
  cables: [
    cable('W0', 'G1:+', 'F1', 't25', 0.2, 'positive'), cable('W1', 'F1', 'X1', 't25', 1, 'positive'), cable('W2', 'X2', 'G1:-', 't25', 1, 'negative'), cable('W3', 'F2', 'A1', 't10', 2),
    cable('W4', 'A1.1', 'Q5:1', 't2', 5), cable('W5', 'Q5:2', 'E1', 't2', 2), cable('W6', 'A1.2', 'E2', 't1', 4), cable('W7', 'F3', 'M1', 't4', 3),
  ],
  ...given,
})
const linesOf = (vessel: Vessel, tag: string): readonly FaultLine[] => calculate(vessel, bases[vessel.basis]).faultTracing.byTag.get(tag) ?? []
const expectedV = ({ reading }: FaultPoint): number | string => (reading.is !== 'voltage' ? reading.is : reading.expected.status === 'computed' ? reading.expected.output.expectedVoltageV : reading.expected.reason)
const walkOf = (vessel: Vessel, tag: string, line = 0) => (linesOf(vessel, tag)[line]?.points ?? []).map(({ what, tag: at }) => `${what} ${at}`)
const voltsOf = (vessel: Vessel, tag: string, line = 0) => (linesOf(vessel, tag)[line]?.points ?? []).map(expectedV)

// 14 A in W0, W1, W2; 0.78 · 1.1965 = 0.93327 Ω/km: 0.2 m 0.0026132 V, 2.2 m 0.0287447 V. X1 11.9712553 V.
const [atF1, atX1] = [12 - 0.0026132, 12 - 0.0287447]
// 4 A in W3, out and back 4 m of 1.91 · 1.1965 = 2.285315 Ω/km: 0.0365650 V
const atA1 = atX1 - 0.036565

describe('three circuits by hand', () => {
  it('a lamp behind a switch: walked from the lamp to the battery, near first', () => {
    expect(walkOf(boat(), 'E1')).toEqual(['item E1', 'switch Q5', 'device A1.1', 'device F2', 'device F1', 'battery G1'])
    // 3 A in 2.5 mm²: 7.98 · 1.1965 = 9.54807 Ω/km; W4 10 m 0.2864421 V, W5 4 m 0.1145768 V
    const expected = [atA1 - 0.2864421 - 0.1145768, atA1 - 0.2864421, atA1, atX1, atF1, 12]
    voltsOf(boat(), 'E1').forEach((volts, i) => expect(volts).toBeCloseTo(expected[i]!, 5))
  })
  it('another lamp of the panel', () => {
    // 1 A in 1.5 mm²: 13.3 · 1.1965 = 15.91345 Ω/km, 8 m: 0.1273076 V
    expect(voltsOf(boat(), 'E2')[0]).toBeCloseTo(atA1 - 0.1273076, 5)
  })
  it('a motor from the busbar', () => {
    expect(walkOf(boat(), 'M1')).toEqual(['item M1', 'device F3', 'device F1', 'battery G1'])
    // 10 A in 4 mm²: 4.95 · 1.1965 = 5.922675 Ω/km, 6 m: 0.3553605 V
    expect(voltsOf(boat(), 'M1')[0]).toBeCloseTo(atX1 - 0.3553605, 5)
  })
  it('gives the least that is in order: a quarter of the drop, or 0.1 V', () => {
    const least = linesOf(boat(), 'M1')[0]!.points.map(({ reading }) => (reading.is === 'voltage' && reading.expected.status === 'computed' ? reading.expected.output.leastVoltageV : NaN))
    // The motor: 0.3841052 V lost, a quarter is 0.0960263: 0.1 V counts. The battery: 12 − 0.1.
    expect(least[0]).toBeCloseTo(12 - 0.3841052 - 0.1, 5)
    expect(least.at(-1)).toBeCloseTo(11.9, 9)
    // The lamp behind the switch: 0.0287447 + 0.036565 + 0.2864421 + 0.1145768 = 0.4663286 V, a quarter is 0.1165822.
    const [lamp] = linesOf(boat(), 'E1')[0]!.points
    expect(lamp!.reading.is === 'voltage' && lamp!.reading.expected.status === 'computed' && lamp!.reading.expected.output.leastVoltageV).toBeCloseTo(12 - 0.4663286 - 0.1165822, 5)
  })
  it('names the cable ends that are touched', () => {
    const ends = linesOf(boat(), 'M1')[0]!.points.map(({ reading }) => (reading.is === 'voltage' ? [reading.plus, reading.minus].map(end => end && `${end.tag} ${end.end}`) : null))
    expect(ends).toEqual([['W7 to', 'W7 to'], ['W7 from', 'W7 from'], ['W1 from', 'W2 to'], ['W0 from', 'W2 to']])
  })
  it('behind an isolator the minus is touched at the busbar, where the drop of the way back has been lost too', () => {
    const isolated = boat({ equipment: [...boat().equipment, anEquipment({ tag: 'Q1', kind: 'battery isolator' })], cables: [...boat().cables.filter(({ tag }) => tag !== 'W1'), cable('W1', 'F1', 'Q1:1', 't25', 1, 'positive'), cable('W9', 'Q1:2', 'X1', 't25', 1, 'positive')] })
    const points = linesOf(isolated, 'M1')[0]!.points
    const minusOf = (tag: string) => points.filter(point => point.tag === tag).map(({ reading }) => reading.is === 'voltage' && reading.minus && `${reading.minus.tag} ${reading.minus.end}`)
    expect([minusOf('Q1'), minusOf('F1')]).toEqual([['W2 from'], ['W2 to']])
  })
  it('says which cable is suspect between two points', () => {
    expect(linesOf(boat(), 'E1')[0]!.points.map(({ cableTags }) => cableTags)).toEqual([[], ['W5'], ['W4'], ['W3'], ['W1'], ['W0']])
  })
  it('a circuit begins at its device, a panel at what feeds it', () => {
    expect(walkOf(boat(), 'A1.1')).toEqual(['device A1.1', 'device F2', 'device F1', 'battery G1'])
    expect(walkOf(boat(), 'A1')).toEqual(['item A1', 'device F2', 'device F1', 'battery G1'])
  })
})

describe('what is not known is not assessed', () => {
  const without = boat({ cables: boat().cables.map(each => (each.tag === 'W5' ? { ...each, typeTag: null } : each)) })
  it('the item has the reason, what lies before the unknown cable has its figure', () => {
    const volts = voltsOf(without, 'E1')
    expect(volts[0]).toMatch(/^the voltage drop of A1\.1 is not known: .*W5/)
    expect(volts.slice(2).map(value => typeof value)).toEqual(['number', 'number', 'number', 'number'])
  })
  it('and it is a gap', () => {
    const { notAssessed } = calculate(without, bases.iso).faultTracing
    expect(notAssessed).toContainEqual({ subjectTag: 'E1', reason: expect.stringMatching(/^the voltage drop of A1\.1 is not known: .*W5/) })
    expect(calculate(boat(), bases.iso).faultTracing.notAssessed).toEqual([])
  })
})

describe('other ways of supply', () => {
  it('an item on two supplies has both, what is closed by hand last', () => {
    const circuits = [...boat().circuits, aCircuit({ tag: 'F8', fedFromTag: 'X1', loadTags: ['E2'] }), aCircuit({ tag: 'F9', fedFromTag: 'X1', loadTags: ['E2'], normalState: 'open' })]
    const twice = boat({ circuits, cables: [...boat().cables, cable('W8', 'F8', 'E2', 't1', 2), cable('W9', 'F9', 'E2', 't1', 2)] })
    expect(linesOf(twice, 'E2').map(({ circuitTag, open }) => [circuitTag, open])).toEqual([['A1.2', false], ['F8', false], ['F9', true]])
    expect(walkOf(twice, 'E2', 1)).toEqual(['item E2', 'device F8', 'device F1', 'battery G1'])
  })
  it('mains is looked at and not measured; behind the inverter the d.c. side goes on', () => {
    const inverter = boat({
      equipment: [...boat().equipment, anEquipment({ tag: 'T3', kind: 'inverter', currentMaxA: 20, outputs: [anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 230, frequencyHz: 50, ratedCurrentA: 4 })] }), load('E9', 1)],
      circuits: [...boat().circuits, aCircuit({ tag: 'F5', fedFromTag: 'X1', loadTags: ['T3'] }), aCircuit({ tag: 'F10', fedFromTag: 'T3', fedFromTerminal: 'ac', loadTags: ['E9'] })],
      cableTypes: [...boat().cableTypes, aCableType({ tag: 'ac', use: 'ac power' })],
      cables: [...boat().cables, cable('W8', 'F5', 'T3:dc', 't10', 1), cable('W10', 'F10', 'E9', 'ac', 3)],
    })
    expect(walkOf(inverter, 'E9')).toEqual(['item E9', 'device F10', 'source T3', 'device F5', 'device F1', 'battery G1'])
    expect(voltsOf(inverter, 'E9').map(value => typeof value === 'number' ? 'volts' : value)).toEqual(['mains', 'mains', 'mains', 'volts', 'volts', 'volts'])
  })
  it('of two things in a circuit\u2019s way the nearer one first', () => {
    const joined = boat({ equipment: [...boat().equipment, anEquipment({ tag: 'X7', kind: 'junction box' })], cables: [...boat().cables.filter(({ tag }) => tag !== 'W5'), cable('W5', 'Q5:2', 'X7', 't2', 1), cable('W9', 'X7', 'E1', 't2', 1)] })
    expect(walkOf(joined, 'E1').slice(0, 4)).toEqual(['item E1', 'joint X7', 'switch Q5', 'device A1.1'])
    // As before, 2 m beyond the switch: 1 m of them, 0.0572884 V, lies beyond the box.
    expect(voltsOf(joined, 'E1')[1]).toBeCloseTo(atA1 - 0.2864421 - 0.0572884, 5)
  })
  it('of a.c. an owner measures nothing, however low', () => {
    const low = boat({
      equipment: [...boat().equipment, anEquipment({ tag: 'T3', kind: 'inverter', currentMaxA: 2, outputs: [anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 24, frequencyHz: 50, ratedCurrentA: 4 })] }), load('E9', 1)],
      circuits: [...boat().circuits, aCircuit({ tag: 'F10', fedFromTag: 'T3', fedFromTerminal: 'ac', loadTags: ['E9'] })], cables: [...boat().cables, cable('W10', 'F10', 'E9', 't1', 3)],
    })
    expect(voltsOf(low, 'E9')[0]).toBe('mains')
  })
  it('d.c. above 50 V is as mains', () => {
    const high = boat({ batteries: [aBattery({ tag: 'G1', nominalVoltageV: 96 })] })
    expect(voltsOf(high, 'M1')).toEqual(['mains', 'mains', 'mains', 'mains'])
  })
  it('two switches that feed each other end where they began', () => {
    const port = (name: string) => ({ name, kind: 'ethernet' as const, speedMbitPerS: 100, powerClass: 3, baudRates: [], direction: null, signalCurrentA: null })
    const ring = aVessel({
      equipment: ['K1', 'K2'].map(tag => anEquipment({ tag, kind: 'network switch', ports: [port('p1')] })), cableTypes: [aCableType({ tag: 'eth', use: 'ethernet' })],
      cables: [aCable({ tag: 'WE', from: 'K1:p1', to: 'K2:p1', typeTag: 'eth', carries: 'none' })],
      ethernetNetworks: [{ tag: 'LAN', name: 'LAN', purpose: null, subnet: null, gatewayAddress: null, dynamicRange: null, switchTags: ['K1', 'K2'] }],
    })
    expect(walkOf(ring, 'K1').length).toBeLessThan(6)
  })
})

describe('on a network', () => {
  it('a device on its bus alone: plug, tee, where the bus is fed, its fuse and on', () => {
    // 57 Ω/km by makers' guides for light cable; the device 4 LEN, 0.2 A; the feeding point is 10 m away on the backbone, the drop 2 m.
    const bus = boat({
      equipment: [...boat().equipment, anEquipment({ tag: 'B1', kind: 'gnss receiver', loadEquivalencyNumber: 4 }), anEquipment({ tag: 'T2', kind: 'can bus tee' })],
      circuits: [...boat().circuits, aCircuit({ tag: 'A1.3', fedFromTag: 'A1', loadTags: ['T2'], designCurrentA: 0.2 })],
      cableTypes: [...boat().cableTypes, aCableType({ tag: 'can', use: 'can bus', busCable: 'light' })],
      cables: [...boat().cables, cable('W8', 'A1.3', 'T2', 't1', 1), aCable({ tag: 'S1', from: 'T1', to: 'T2', typeTag: 'can', lengthM: 10, carries: 'none' }), aCable({ tag: 'D1', from: 'T1', to: 'B1:can', typeTag: 'can', lengthM: 2, carries: 'none' })],
      canBuses: [{ tag: 'N1', name: 'Bus', purpose: null, protocol: 'nmea 2000', suppliesDevices: true, backboneMaxM: null, backbone: [
        { kind: 'tee', tag: 'T1', zoneTag: null, deviceTag: 'B1', dropCableTag: 'D1', deviceTerminal: null }, { kind: 'segment', cableTag: 'S1' }, { kind: 'power', tag: 'T2', zoneTag: null, circuitTag: 'A1.3', dropCableTag: 'W8', supplyVoltageV: null },
      ] }],
    })
    expect(walkOf(bus, 'B1')).toEqual(['item B1', 'bus T1', 'bus supply T2', 'device A1.3', 'device F2', 'device F1', 'battery G1'])
    const [item, tee, supply] = voltsOf(bus, 'B1') as number[]
    // S1: 2 · 0.057 · 10 · 0.2 = 0.228 V; D1: 2 · 0.057 · 2 · 0.2 = 0.0456 V
    expect(supply! - tee!).toBeCloseTo(0.228, 6)
    expect(tee! - item!).toBeCloseTo(0.0456, 6)
    // W8: 0.2 A in 2 m of 15.91345 Ω/km: 0.0063654 V; the feeders carry 0.2 A more: 14.2 A in 2.2 m, 4.2 A in 4 m
    expect(supply).toBeCloseTo(12 - (14.2 * 2.2 * 0.93327 + 4.2 * 4 * 2.285315 + 0.2 * 2 * 15.91345) / 1000, 5)
  })
  it('a device on its network cable alone: lamps, port, then the switch', () => {
    const port = (name: string, kind: 'ethernet' | 'power', powerClass: number | null) => ({ name, kind, speedMbitPerS: 100, powerClass, baudRates: [], direction: null, signalCurrentA: null })
    const poe = boat({
      equipment: [...boat().equipment, anEquipment({ tag: 'K1', kind: 'network switch', currentMaxA: 1, ports: [port('power', 'power', null), port('p1', 'ethernet', 3)] }), anEquipment({ tag: 'C1', kind: 'camera', ports: [port('lan', 'ethernet', 2)] })],
      circuits: [...boat().circuits, aCircuit({ tag: 'A1.3', fedFromTag: 'A1', loadTags: ['K1'] })],
      cableTypes: [...boat().cableTypes, aCableType({ tag: 'eth', use: 'ethernet' })],
      cables: [...boat().cables, cable('W8', 'A1.3', 'K1:power', 't1', 1), aCable({ tag: 'WE', from: 'K1:p1', to: 'C1:lan', typeTag: 'eth', carries: 'none' })],
      ethernetNetworks: [{ tag: 'LAN', name: 'LAN', purpose: null, subnet: null, gatewayAddress: null, dynamicRange: null, switchTags: ['K1'] }],
    })
    expect(walkOf(poe, 'C1')).toEqual(['item C1', 'network switch K1', 'device A1.3', 'device F2', 'device F1', 'battery G1'])
    expect(linesOf(poe, 'C1')[0]!.points[1]).toMatchObject({ portName: 'p1', cableTags: ['WE'], reading: { is: 'data cable' } })
  })
})

describe('two circuits of the sample by hand', async () => {
  const sample = await vesselAt('sample-vessel')
  it('G14 bilge pump of the lazarette, 5 A from F40', () => {
    // W20 10 mm², 0.2 m out, reckoned twice; 90 A at 30 °C, 105 °C: θ = 30 + 75 (5/90)² = 30.23; 5 · 0.4 · 1.95 · 1.0402 / 1000 = 0.0040568
    // W74 6 mm², 4.4 m; 28.7 A at 60 °C in the engine space, insulation 90 °C: θ = 60 + 30 (5/28.7)² = 60.91; 5 · 8.8 · 3.39 · 1.16078 / 1000 = 0.173142
    // W75 6 mm², 0.6 m; 50 A: θ = 30 + 60 (5/50)² = 30.6; 5 · 1.2 · 3.39 · 1.04166 / 1000 = 0.0211873
    expect(walkOf(sample, 'G14')).toEqual(['item G14', 'switch B54', 'device F40', 'battery G2'])
    const expected = [12 - 0.0040568 - 0.173142 - 0.0211873, 12 - 0.0040568 - 0.173142, 12 - 0.0040568, 12]
    voltsOf(sample, 'G14').forEach((volts, i) => expect(volts).toBeCloseTo(expected[i]!, 4))
  })
  it('P19 alarm board, 0.4 A from A5.6', () => {
    // F2 at 17.4 A in 16 mm² (1.24 Ω/km tinned): W6 0.18 m at 31.34 °C 0.0040568, W7 1.6 m at 32.74 °C 0.0362503, W8 0.6 m at 31.34 °C 0.0135227
    // on the negative side, with the house's whole 180.8 A in 120 mm² (0.164 Ω/km): W5 1.3 m at 54.71 °C 0.0438072, W4 0.4 m at 42.11 °C 0.0128917
    // W506 1.5 mm² (13.7 Ω/km), 3.7 m at 30.06 °C: 0.4 · 7.4 · 13.7 · 1.03954 / 1000 = 0.0421553
    expect(walkOf(sample, 'P19')).toEqual(['item P19', 'device A5.6', 'device F2', 'battery G1'])
    const atA5 = 12 - (0.0040568 + 0.0362503 + 0.0135227 + 0.0438072 + 0.0128917)
    const expected = [atA5 - 0.0421553, atA5, 12 - 0.0040568, 12]
    voltsOf(sample, 'P19').forEach((volts, i) => expect(volts).toBeCloseTo(expected[i]!, 4))
  })
})
