/** Data and safety services: expected by thinking the boat through; no source but the wiring itself. */
import { describe, expect, it } from 'vitest'
import type { Equipment, Vessel } from '../../../src/model/vessel.js'
import { aCable, aCableType, aCircuit, anEquipment, anOutsideLink, aProtection } from '../../support/vessel-builder.js'
import { boat, cables, circuit } from '../feeding/support.js'
import { dependencyOf, lossOf } from './support.js'

/** Every item on a circuit `A1.<its tag>` of its own; signal cables as written, `S1: B1 > K1`. */
function signals(equipment: readonly Equipment[], written: readonly string[], given: Partial<Vessel> = {}, fed = equipment): Vessel {
  return boat({
    equipment,
    circuits: fed.map(({ tag }) => circuit(`A1.${tag}`, [tag], { protection: aProtection('blade fuse', 5) })),
    cables: [...cables(...fed.map(({ tag }) => `W${tag}: A1.${tag} > ${tag}`)), ...cables(...written).map(cable => aCable({ ...cable, from: cable.from.tag, to: cable.to.tag, typeTag: 'sig', carries: 'none' }))],
  }, { cableTypes: [aCableType({ tag: 'sig', use: 'signal' })], ...given })
}
const item = (tag: string, kind: string, dataFromTags: readonly string[] = []) => anEquipment({ tag, kind, dataFromTags })

describe('data', () => {
  const through = signals([item('B1', 'gnss receiver'), item('K1', 'gateway'), item('P1', 'display', ['B1'])], ['S1: B1 > K1', 'S2: K1 > P1'])
  it.each(['S1', 'S2'])('is lost with its cable %s', tag => expect(lossOf(through, tag)).toEqual(['P1 no data']))
  it('is lost with its giver, and with the gateway between', () => {
    expect(lossOf(through, 'B1')).toEqual(['P1 no data'])
    expect(lossOf(through, 'A1.B1')).toEqual(['B1 dead', 'P1 no data'])
    expect(lossOf(through, 'A1.K1')).toEqual(['K1 dead', 'P1 no data'])
  })
  it('names the way, nearest first', () => {
    expect(dependencyOf(through).traces.get('P1')!.data).toEqual([{ is: 'giver', tag: 'B1', wayTags: ['S2', 'K1', 'S1'] }])
  })
  it('is not passed on by a display', () => {
    const vessel = signals([item('B1', 'gnss receiver'), item('P2', 'display'), item('P1', 'display', ['B1'])], ['S1: B1 > P2', 'S2: P2 > P1'])
    expect(dependencyOf(vessel).findings.map(({ id, subject }) => `${id} ${subject.id}`)).toEqual(['DEP201 P1'])
    expect(lossOf(vessel, 'S1')).toEqual([])
    expect(lossOf(vessel, 'A1.B1')).toEqual(['B1 dead', 'P1 no data'])
  })
  it('of one kind may come from any giver, of another kind may not', () => {
    const two = signals([item('B1', 'gnss receiver'), item('B2', 'gnss receiver'), item('B3', 'compass'), item('P1', 'display', ['B1', 'B2', 'B3'])], ['S1: B1 > P1', 'S2: B2 > P1', 'S3: B3 > P1'])
    expect(lossOf(two, 'S1')).toEqual(['P1 degraded'])
    expect(lossOf(two, 'S3')).toEqual(['P1 no data'])
  })
  it('of a giver that is removed are told of', () => {
    const vessel = signals([{ ...item('B1', 'wind sensor'), status: 'removed' }, item('P1', 'display', ['B1'])], ['S1: B1 > P1'])
    expect(dependencyOf(vessel).notAssessed).toContainEqual({ subjectTag: 'P1', reason: 'it needs data from B1, which is removed' })
  })
  it('from the outside comes in at the equipment that makes the link; of two links either will do', () => {
    const outsideLinks = ['EX1', 'EX2'].map(tag => anOutsideLink({ tag, equipmentTag: 'K3' }))
    const vessel = signals([item('K3', 'mobile-data router'), item('P1', 'display', ['EX1', 'EX2']), item('P2', 'display', ['EX2'])], ['S1: K3 > P1', 'S2: K3 > P2'], { outsideLinks })
    expect(lossOf(vessel, 'EX1')).toEqual(['P1 degraded'])
    expect(lossOf(vessel, 'EX2')).toEqual(['P2 no data', 'P1 degraded'])
    expect(lossOf(vessel, 'A1.K3')).toEqual(['K3 dead', 'P1 no data', 'P2 no data'])
    expect(dependencyOf(vessel).findings).toEqual([])
  })
})

it('what has no supply of its own is cut off with what it works with; an alarm that sounds by itself is not', () => {
  const radio = item('T2', 'vhf transceiver')
  const vessel = signals([radio, item('P8', 'vhf handset'), item('B41', 'smoke alarm')], ['S1: P8 > T2', 'S2: B41 > T2'], {}, [radio])
  expect(lossOf(vessel, 'A1.T2')).toEqual(['T2 dead', 'P8 cut off', 'B41 degraded'])
  expect(lossOf(vessel, 'S1')).toEqual(['P8 cut off'])
})

describe('safety services', () => {
  const pumps = (more: Partial<Vessel> = {}) => signals([item('G1P', 'bilge pump'), item('G2P', 'bilge pump')], [], more)
  const service = (vessel: Vessel, name: string) => dependencyOf(vessel).services.find(({ service }) => service === name)!

  it('end with what takes all their items, and lose part with what takes one', () => {
    const { takesAll, takesSome } = service(pumps(), 'bilge pumping')
    expect(takesAll.map(({ tag }) => tag).toSorted()).toEqual(['A1', 'F1', 'F2', 'G1', 'Q1', 'WM1', 'WM2', 'WM3', 'WM4', 'WM5', 'X1'].toSorted())
    expect(takesSome.map(({ tag, lostTags }) => `${tag} ${lostTags}`).toSorted()).toEqual(['A1.G1P G1P', 'A1.G2P G2P', 'G1P G1P', 'G2P G2P', 'WG1P G1P', 'WG2P G2P'])
  })
  it('warn of the nearest device before both pumps', () => {
    const vessel = pumps()
    const guarded = { ...vessel, circuits: vessel.circuits.map(each => ({ ...each, protection: aProtection('blade fuse', 30) })) }
    expect(dependencyOf(guarded).findings.map(({ id, message }) => `${id} ${message}`)).toEqual([
      'DEP302 Circuit F2: its protective device alone stands before all of bilge pumping, G1P and G2P'])
  })
  it('do not warn where one circuit was meant to feed all, and only note what comes back by hand', () => {
    const one = boat({ equipment: [item('G1P', 'bilge pump'), item('G2P', 'bilge pump')], circuits: [circuit('A1.1', ['G1P', 'G2P'], { protection: aProtection('blade fuse', 5) })], cables: cables('W1: A1.1 > G1P', 'W2: A1.1 > G2P') })
    expect(dependencyOf(one).findings).toEqual([])
    const vessel = pumps()
    const linked = { ...vessel, circuits: [...vessel.circuits.map(each => ({ ...each, protection: aProtection('blade fuse', 30) })), aCircuit({ tag: 'F9', fedFromTag: 'X1', loadTags: ['A1'], normalState: 'open' })] }
    expect(dependencyOf(linked).findings.map(({ id }) => id)).toEqual(['DEP301'])
  })
  it('of engines and levers end with either', () => {
    const vessel = signals([item('M7', 'engine'), item('M8', 'engine'), item('S1L', 'engine control')], [])
    expect(service(vessel, 'engine control').takesAll.map(({ tag }) => tag)).toContain('A1.S1L')
    expect(service(vessel, 'engine control').takesAll.map(({ tag }) => tag)).not.toContain('A1.M7')
  })
  it('follow the author before the kind; a radio without a position still speaks', () => {
    const vessel = signals([item('B1', 'gnss receiver'), { ...item('T2', 'vhf transceiver', ['B1']) }, { ...item('M9', 'thruster'), safetyService: 'steering' }], ['S1: B1 > T2'])
    expect(service(vessel, 'steering').itemTags).toEqual(['M9'])
    expect(service(vessel, 'distress radio').takesAll.map(({ tag }) => tag)).not.toContain('S1')
    expect(lossOf(vessel, 'S1')).toEqual(['T2 no data'])
  })
})
