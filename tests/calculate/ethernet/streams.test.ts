import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { EthernetResults } from '../../../src/model/results/ethernet.js'
import type { Cable, Equipment, Stream, Vessel } from '../../../src/model/vessel.js'
import { aDevice, aSwitch, ethernetOf, foundIn, link, linkOf, networkVessel } from './support.js'

const aStream = (rateMbitPerS: number, given: Partial<Stream> = {}): Stream => ({ name: 'Picture', rateMbitPerS, toTags: null, multicast: false, ...given })
const loadsOf = (results: EthernetResults, tag: string) => linkOf(results, tag).loads.map(({ streamsMbitPerS }) => streamsMbitPerS)

/** N1 with P1 and P2, joined by W9 to N2 with the camera B1 and P3. */
const twoSwitches = (streams: readonly Stream[], { uplink = 1000, displays = {} as Partial<Equipment>, more = [] as readonly Equipment[] } = {}): Vessel => networkVessel({
  equipment: [
    aSwitch('N1', 4, {}, { 4: { speedMbitPerS: uplink } }), aSwitch('N2', 4),
    aDevice('P1', displays), aDevice('P2', displays), aDevice('P3', displays), aDevice('B1', { kind: 'camera', streams }), ...more,
  ],
  cables: [link('W1', 'N1:1', 'P1:lan'), link('W2', 'P2:lan', 'N1:2'), link('W3', 'N2:1', 'P3:lan'), link('W4', 'N2:2', 'B1:lan'), link('W9', 'N1:4', 'N2:4')],
})

describe('a stream', () => {
  // Three receivers, two of them beyond the uplink.
  it('goes once to each receiver: links carry it as often as receivers lie behind them', () => {
    const results = ethernetOf(twoSwitches([aStream(6, { toTags: ['P1', 'P2', 'P3'] })]))
    expect(['W4', 'W9', 'W1', 'W2', 'W3'].map(tag => loadsOf(results, tag))).toEqual([[0, 18], [0, 12], [6, 0], [0, 6], [6, 0]])
    expect(linkOf(results, 'W9').loads[1]).toMatchObject({ parts: [{ senderTag: 'B1', name: 'Picture', rateMbitPerS: 6, timesCount: 2 }], load: { output: { loadPercent: 1.2 } } })
  })
  it('for all goes once over each link', () => {
    const results = ethernetOf(twoSwitches([aStream(6, { toTags: ['P1', 'P2', 'P3'], multicast: true })]))
    expect(['W4', 'W9', 'W1', 'W2', 'W3'].map(tag => loadsOf(results, tag))).toEqual([[0, 6], [0, 6], [6, 0], [0, 6], [6, 0]])
  })
  it('that names nobody goes to whoever needs data of the sender, by network cable', () => {
    const results = ethernetOf(twoSwitches([aStream(6)], { displays: { dataFromTags: ['B1'] }, more: [aDevice('P7', { dataFromTags: ['B1'] })] }))
    expect(results.streams[0]?.receivers.map(({ tag }) => tag)).toEqual(['P1', 'P2', 'P3'])
    expect(results.notAssessed.filter(({ subjectTag }) => subjectTag === 'B1')).toEqual([])
  })
  it('that nobody takes is said', () => {
    expect(ethernetOf(twoSwitches([aStream(6)])).notAssessed).toContainEqual({ subjectTag: 'B1', reason: 'load of its streams: nothing on a network is recorded to take one of them' })
  })
  it('to what is on no network is not assessed, the others are', () => {
    const results = ethernetOf(twoSwitches([aStream(6, { toTags: ['P1', 'P8'] })], { more: [aDevice('P8')] }))
    expect(results.notAssessed).toContainEqual({ subjectTag: 'B1', reason: expect.stringContaining('no way over the network to P8 is recorded') })
    expect(loadsOf(results, 'W9')).toEqual([0, 6])
  })
  it('does not count to itself or to what was removed', () => {
    const results = ethernetOf(twoSwitches([aStream(6, { toTags: ['B1', 'P1'] })], { displays: { status: 'removed' } }))
    expect([results.streams[0]?.receivers, loadsOf(results, 'W9')]).toEqual([[], [0, 0]])
  })
  it('to an access point loads the way up to it', () => {
    const vessel = twoSwitches([aStream(6, { toTags: ['K4'] })], { more: [aDevice('K4', { kind: 'wireless access point', passesEthernet: true })] })
    const results = ethernetOf({ ...vessel, cables: [...vessel.cables, link('W5', 'N1:3', 'K4:lan')] })
    expect([loadsOf(results, 'W9'), loadsOf(results, 'W5')]).toEqual([[0, 6], [6, 0]])
  })
})

describe('a link', () => {
  const found = (rate: number) => ethernetOf(twoSwitches([aStream(rate, { toTags: ['P1'] })], { uplink: 100 })).findings.filter(({ id }) => id !== 'ETH307')
  it('is planned with 70 %, and can carry 100 %', () => {
    expect(found(70)).toEqual([])
    expect(found(71)).toMatchObject([{ id: 'ETH303', subject: { id: 'W9' }, evidence: { loadPercent: 71, streamsMbitPerS: 71 }, limit: { value: 70 } }])
    expect(found(100)).toMatchObject([{ id: 'ETH303' }])
    expect(found(101)).toMatchObject([{ id: 'ETH107', subject: { id: 'W9' }, evidence: { streamsMbitPerS: 101 }, limit: { value: 100 }, context: { from: 'N2', to: 'N1' } }])
  })
  it('has its whole speed in each direction', () => {
    const vessel = twoSwitches([aStream(60, { toTags: ['P1'] })], { uplink: 100, more: [] })
    const back = { ...vessel, equipment: vessel.equipment.map(item => (item.tag === 'P1' ? { ...item, streams: [aStream(60, { toTags: ['P3'] })] } : item)) }
    expect(loadsOf(ethernetOf(back), 'W9')).toEqual([60, 60])
    expect(foundIn(ethernetOf(back))).toEqual(['ETH307 W9'])
  })
  it('of unknown speed is not assessed while something runs over it', () => {
    const vessel = twoSwitches([aStream(6, { toTags: ['P1'] })])
    const results = ethernetOf({ ...vessel, equipment: vessel.equipment.map(item => (item.tag === 'P1' || item.tag === 'P2' ? aDevice(item.tag, {}, { speedMbitPerS: null }) : item)) })
    expect(results.notAssessed.filter(({ reason }) => reason.startsWith('load of the link'))).toEqual([{ subjectTag: 'W1', reason: 'load of the link: its speed is not known' }])
    expect(linkOf(results, 'W1').loads[0]).toMatchObject({ streamsMbitPerS: 6, againstSpeed: null })
  })
})

/** A tree of switches, devices on them, and streams from any device to any others. */
const anyTree = fc.record({
  switches: fc.array(fc.nat(), { minLength: 1, maxLength: 5 }),
  devices: fc.array(fc.nat(), { minLength: 2, maxLength: 6 }),
  streams: fc.array(fc.record({ from: fc.nat(), to: fc.uniqueArray(fc.nat(5), { minLength: 1, maxLength: 4 }), rate: fc.integer({ min: 1, max: 50 }), multicast: fc.boolean(), swapped: fc.boolean() }), { minLength: 1, maxLength: 5 }),
})

interface Half { readonly cable: string; readonly from: string; readonly to: string }

/** Every way from one thing to another, by trying all; in a tree there is one. */
function waysBetween(halves: readonly Half[], from: string, to: string, seen: readonly string[] = []): readonly (readonly Half[])[] {
  if (from === to) return [[]]
  return halves.filter(half => half.from === from && !seen.includes(half.to)).flatMap(half => waysBetween(halves, half.to, to, [...seen, from]).map(way => [half, ...way]))
}

it('puts on each link of any tree what a count of receivers says', () => {
  fc.assert(fc.property(anyTree, ({ switches, devices, streams }) => {
    const tag = (i: number) => `P${i % devices.length}`
    const cables: Cable[] = [
      ...switches.slice(1).map((above, i) => link(`U${i + 1}`, `N${above % (i + 1)}:u${i + 1}`, `N${i + 1}:up`)),
      ...devices.map((at, i) => (i % 2 === 0 ? link(`W${i}`, `P${i}:lan`, `N${at % switches.length}:d${i}`) : link(`W${i}`, `N${at % switches.length}:d${i}`, `P${i}:lan`))),
    ]
    const sent = (i: number) => streams.filter(({ from }) => tag(from) === `P${i}`).map(({ to, rate, multicast }) => aStream(rate, { toTags: to.map(tag), multicast }))
    const results = ethernetOf(networkVessel({
      equipment: [...switches.map((_, i) => aSwitch(`N${i}`, 0)), ...devices.map((_, i) => aDevice(`P${i}`, { streams: sent(i) }))], cables, ethernetNetworks: [],
    }))
    const halves = cables.flatMap(({ tag: cable, from, to }): Half[] => [{ cable, from: from.tag, to: to.tag }, { cable, from: to.tag, to: from.tag }])
    const expected = new Map<string, number>()
    for (const { from, to, rate, multicast } of streams) {
      const receivers = [...new Set(to.map(tag))].filter(receiver => receiver !== tag(from))
      const steps = receivers.flatMap(receiver => waysBetween(halves, tag(from), receiver)[0]!.map(({ cable, to: onto }) => `${cable} to ${onto}`))
      for (const step of multicast ? new Set(steps) : steps) expected.set(step, (expected.get(step) ?? 0) + rate)
    }
    for (const { tag: cable, ends, loads } of results.links) {
      expect([cable, loads[0].streamsMbitPerS, loads[1].streamsMbitPerS]).toEqual([cable, expected.get(`${cable} to ${ends[1].tag}`) ?? 0, expected.get(`${cable} to ${ends[0].tag}`) ?? 0])
    }
  }), { numRuns: 200 })
})
