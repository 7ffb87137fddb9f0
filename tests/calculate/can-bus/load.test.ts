/** What runs on which bus: messages, bridges, and devices that cannot be told apart. */
import { describe, expect, it } from 'vitest'
import type { BackboneElement, BusMessage, Equipment, Vessel } from '../../../src/model/vessel.js'
import { aBus, anEquipment, aPanel, aVessel } from '../../support/vessel-builder.js'
import { aMessage, busIn, resultsOf } from './support.js'

/** A tee with its device, `K1:a` by connector. */
const tee = (at: string, i: number): BackboneElement => {
  const [deviceTag = '', deviceTerminal = null] = at.split(':')
  return { kind: 'tee', tag: `X-${at}-${i}`, zoneTag: null, deviceTag, dropCableTag: null, deviceTerminal }
}
const bus = (tag: string, devices: readonly string[], protocol: 'nmea 2000' | 'j1939' = 'nmea 2000') =>
  aBus({ tag, protocol, suppliesDevices: false, backbone: devices.map((at, i) => tee(at, i)).map(part => ({ ...part, tag: `${tag}${'tag' in part ? part.tag : ''}` })) })
const sender = (tag: string, sends: readonly BusMessage[], given: Partial<Equipment> = {}) => anEquipment({ tag, sends, ...given })
const bridge = (tag: string, ways: readonly (readonly [from: string, to: string, only?: readonly string[]])[], sends: readonly BusMessage[] = []) =>
  sender(tag, sends, { forwards: ways.map(([fromTerminal, toTerminal, only = null]) => ({ fromTerminal, toTerminal, only })) })

/** Sender, PGN and the bridges on the way. */
const runsOn = (vessel: Vessel, tag: string): readonly string[] =>
  busIn(vessel, tag).load.messages.map(({ senderTag, pgnNumber, throughTags }) => [senderTag, pgnNumber, ...throughTags].join(' '))

describe('a message', () => {
  const messageOf = (message: BusMessage, protocol: 'nmea 2000' | 'j1939' = 'nmea 2000') =>
    busIn(aVessel({ equipment: [sender('B1', [message])], canBuses: [bus('N1', ['B1'], protocol)] })).load.messages[0]!
  const figures = (message: BusMessage, protocol: 'nmea 2000' | 'j1939' = 'nmea 2000') => {
    const { load } = messageOf(message, protocol)
    return load.status === 'computed' ? [load.input.frameCount, load.input.worstBitCount, load.output.framesPerS] : load.reason
  }
  it('counts as is usual for its group, or as recorded', () => {
    expect(figures(aMessage(127250))).toEqual([1, 160, 10])
    expect(figures(aMessage(127250, { intervalMs: 50 }))).toEqual([1, 160, 20])
    expect(figures(aMessage(126996, { intervalMs: 1000 }))).toEqual([20, 160, 20])
    // Three bytes in a single frame: 80 + 10 · 3.
    expect(figures(aMessage(59904, { intervalMs: 1000 }))).toEqual([1, 110, 1])
    // Four bytes of a fast packet are filled up.
    expect(figures(aMessage(127509))).toEqual([1, 160, expect.closeTo(1 / 1.5, 9)])
  })
  it('of a group that is in no list needs interval and length', () => {
    expect(figures(aMessage(65290))).toBe('no usual interval of PGN 65290 is known, and none is recorded')
    expect(figures(aMessage(65290, { intervalMs: 1000 }))).toBe('no usual length of PGN 65290 is known, and none is recorded')
    expect(figures(aMessage(65290, { intervalMs: 1000, payloadByteCount: 8 }))).toEqual([1, 160, 1])
    expect(figures(aMessage(130820, { intervalMs: 1000, payloadByteCount: 8 }))).toEqual([2, 160, 2])
  })
  it('that is too long is not assessed', () => {
    expect(figures(aMessage(127250, { payloadByteCount: 9 }))).toBe('PGN 127250 goes in a single frame, which holds at most 8 bytes')
    expect(figures(aMessage(130820, { intervalMs: 1000, payloadByteCount: 300 }))).toBe('a fast packet holds at most 223 bytes')
    expect(figures(aMessage(127250, { intervalMs: 0 }))).toBe('the interval is not above zero')
  })
  it('on an event counts nothing unless an interval is recorded', () => {
    expect(messageOf(aMessage(129038))).toMatchObject({ rate: 'on event', load: { status: 'not computed' } })
    expect(busIn(aVessel({ equipment: [sender('B1', [aMessage(129038)])], canBuses: [bus('N1', ['B1'])] })).load.missing).toEqual([])
    expect(figures(aMessage(129038, { intervalMs: 1000 }))).toEqual([5, 160, 5])
  })
  it('of an engine goes by the transport protocol where it is long', () => {
    expect(figures(aMessage(65260, { intervalMs: 1000, payloadByteCount: 17 }), 'j1939')).toEqual([4, 160, 4])
    expect(figures(aMessage(61444), 'j1939')).toEqual([1, 160, 50])
  })
  it('of a module counts too', () => {
    const vessel = aVessel({ panels: [aPanel({ tag: 'A1', kind: 'switching module', sends: [aMessage(127501, { intervalMs: 2000 })] })], canBuses: [bus('N1', ['A1'])] })
    expect(busIn(vessel).load.devices).toMatchObject([{ tag: 'A1', framesPerS: 0.5 }])
  })
})

describe('a sum', () => {
  it('is the least that it can be while something is not recorded', () => {
    const { load } = busIn(aVessel({ equipment: [sender('B1', [aMessage(127250), aMessage(65290)]), sender('P1', [])], canBuses: [bus('N1', ['B1', 'P1'])] }))
    expect(load.missing).toEqual([
      'message of B1: no usual interval of PGN 65290 is known, and none is recorded', 'what P1 sends is not recorded, so the load of N1 is the least that it can be',
    ])
    expect(load.devices).toMatchObject([{ tag: 'B1', framesPerS: 10 }])
  })
  it('counts a device with two tees once', () => {
    expect(busIn(aVessel({ equipment: [sender('B1', [aMessage(127250)])], canBuses: [bus('N1', ['B1', 'B1'])] })).load.devices).toMatchObject([{ framesPerS: 10 }])
  })
  it('above half of the capacity is found', () => {
    // 50 % of 250 000 bit/s are 781.25 frames of 160 bits a second.
    const at = (intervalMs: number) => resultsOf(aVessel({ equipment: [sender('B1', [aMessage(127250, { intervalMs })])], canBuses: [bus('N1', ['B1'])] })).findings.map(({ id }) => id)
    expect(at(1.28)).not.toContain('CAN116')
    expect(at(1.27)).toContain('CAN116')
  })
})

describe('bridges', () => {
  const [heading, wind] = [aMessage(127250), aMessage(130306)]
  it('carry what they let pass, in the direction that is recorded', () => {
    const vessel = aVessel({
      equipment: [sender('B1', [heading, wind]), sender('B2', [heading]), bridge('K1', [['a', 'b', ['127250']]], [aMessage(126993)])],
      canBuses: [bus('N1', ['B1', 'K1:a']), bus('N2', ['K1:b', 'B2'])],
    })
    expect(runsOn(vessel, 'N1')).toEqual(['B1 127250', 'B1 130306', 'K1 126993'])
    expect(runsOn(vessel, 'N2')).toEqual(['K1 126993', 'B2 127250', 'B1 127250 K1'])
  })
  it('follow one another, each message once, and come to an end in a ring', () => {
    const both = (a: string, b: string) => [[a, b], [b, a]] as const
    const vessel = aVessel({
      equipment: [sender('B1', [heading]), bridge('K1', both('a', 'b'), [aMessage(126993)]), bridge('K2', both('a', 'b'), [aMessage(126993)]), bridge('K3', both('a', 'b'), [aMessage(126993)])],
      canBuses: [bus('N1', ['B1', 'K1:a', 'K3:b']), bus('N2', ['K1:b', 'K2:a']), bus('N3', ['K2:b', 'K3:a'])],
    })
    for (const tag of ['N1', 'N2', 'N3']) expect(runsOn(vessel, tag).filter(run => run.startsWith('B1'))).toHaveLength(1)
    expect(runsOn(vessel, 'N3')).toContain('B1 127250 K3')
  })
  it('send by the connector that a message names', () => {
    const vessel = aVessel({ equipment: [bridge('K1', [], [{ ...heading, terminal: 'b' }])], canBuses: [bus('N1', ['K1:a']), bus('N2', ['K1:b'])] })
    expect([runsOn(vessel, 'N1'), runsOn(vessel, 'N2')]).toEqual([[], ['K1 127250']])
    const unknown = aVessel({ equipment: [bridge('K1', [], [{ ...heading, terminal: 'b' }])], canBuses: [bus('N1', ['K1']), bus('N2', ['K1'])] })
    expect(busIn(unknown).load.missing).toEqual(['of K1 it is not known by which connector it sends PGN 127250'])
  })
  it('do not pass on what they send themselves', () => {
    const vessel = aVessel({ equipment: [bridge('K1', [['a', 'b']], [{ ...heading, terminal: 'a' }])], canBuses: [bus('N1', ['K1:a']), bus('N2', ['K1:b'])] })
    expect([runsOn(vessel, 'N1'), runsOn(vessel, 'N2')]).toEqual([['K1 127250'], []])
  })
  it('of which a connector is not known are not assessed', () => {
    const vessel = aVessel({ equipment: [sender('B1', [heading]), bridge('K1', [['a', 'b']], [aMessage(126993)])], canBuses: [bus('N1', ['B1', 'K1']), bus('N2', ['K1:b'])] })
    expect(busIn(vessel, 'N1').load.missing).toEqual(['which connector of K1 is on this bus is not recorded, so what it passes on is not known'])
  })
  it('from an engine bus translate: what they send is theirs', () => {
    const engine = sender('M1', [aMessage(61444)])
    const vessel = (sends: readonly BusMessage[]) => aVessel({ equipment: [engine, bridge('K1', [['engine', 'can']], sends)], canBuses: [bus('N1', ['K1:can']), bus('N2', ['M1', 'K1:engine'], 'j1939')] })
    expect(runsOn(vessel([aMessage(127488, { terminal: 'can' })]), 'N1')).toEqual(['K1 127488'])
    expect(busIn(vessel([]), 'N1').load.missing).toContain('K1 brings data from a bus of another kind, and what it sends here is not recorded')
  })
})

describe('devices that send the same', () => {
  const found = (...equipment: readonly Equipment[]) => resultsOf(aVessel({ equipment, canBuses: [bus('N1', equipment.map(({ tag }) => tag))] })).findings.filter(({ id }) => /CAN30[12]/.test(id)).map(({ id, message }) => `${id} ${message}`)
  const batteries = [aMessage(127506), aMessage(127508)]
  it('under one instance in the data are named with the groups, once a pair', () => {
    expect(found(sender('P1', batteries), sender('P2', batteries))).toEqual(['CAN301 Devices P1 and P2: both send PGN 127506 and 127508 as instance 0'])
    expect(found(sender('P1', batteries), sender('P2', batteries, { deviceInstanceNumber: 1 }))).toEqual([])
  })
  it('count an instance up for each engine', () => {
    const engines = (first: number) => sender('K2', [aMessage(127488, { instanceNumber: first })])
    expect(found(sender('K1', [aMessage(127488, { timesCount: 2 })]), engines(1))).toEqual(['CAN301 Devices K1 and K2: both send PGN 127488 as instance 1'])
    expect(found(sender('K1', [aMessage(127488, { timesCount: 2 })]), engines(2))).toEqual([])
  })
  it('without an instance in the data are told apart by the device', () => {
    expect(found(sender('B1', [aMessage(129025)]), sender('B2', [aMessage(129025)]))).toEqual(['CAN302 Devices B1 and B2: both send PGN 129025 under device instance 0'])
    expect(found(sender('B1', [aMessage(129025)]), sender('B2', [aMessage(129025)], { deviceInstanceNumber: 1 }))).toEqual([])
  })
  it('for the bus itself are no doubt', () => expect(found(sender('B1', [aMessage(126993)]), sender('B2', [aMessage(126993)]))).toEqual([]))
  it('are found across a bridge, and named once', () => {
    const vessel = aVessel({
      equipment: [sender('B1', [aMessage(127508)]), sender('B2', [aMessage(127508)]), bridge('K1', [['a', 'b'], ['b', 'a']], [aMessage(126993)])],
      canBuses: [bus('N1', ['B1', 'K1:a']), bus('N2', ['K1:b', 'B2'])],
    })
    expect(resultsOf(vessel).findings.filter(({ id }) => id === 'CAN301')).toHaveLength(1)
  })
})
