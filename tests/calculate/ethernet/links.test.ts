import { describe, expect, it } from 'vitest'
import { aCable, aCableType, anEquipment, aNetwork, aVessel } from '../../support/vessel-builder.js'
import { aDevice, aSwitch, ethernetOf, foundIn, link, linkOf, networkVessel, port } from './support.js'

describe('a vessel with nothing of Ethernet', () => {
  it('has empty results', () => {
    const results = ethernetOf(aVessel())
    expect([results.links, results.notAssessed, results.findings]).toEqual([[], [], []])
  })
  it('nor does a network fail of which nothing is there', () => {
    expect(ethernetOf(networkVessel({ ethernetNetworks: [aNetwork({ tag: 'LAN' }), aNetwork({ tag: 'L2', switchTags: ['N9'] })] })).networks.get('L2')?.memberTags).toEqual([])
  })
})

describe('the length of a link', () => {
  const lengthOf = (...lengths: readonly (number | null)[]) => ethernetOf(networkVessel({
    equipment: [aSwitch('N1', 2), aDevice('P1'), ...lengths.slice(1).map((_, i) => anEquipment({ tag: `X${i + 1}`, kind: 'connector' }))],
    cables: lengths.map((lengthM, i) => link(`W${i + 1}`, i === 0 ? 'N1:1' : `X${i}`, i === lengths.length - 1 ? 'P1:lan' : `X${i + 1}`, { lengthM })),
  }))

  it('is that of its cable', () => expect(linkOf(lengthOf(20), 'W1').length).toMatchObject({ output: { channelLengthM: 20 } }))

  // 94 m of cable and 8 m of cords, the worked example: 102 m.
  it('is that of all cables that meet in connectors, and then too long', () => {
    const results = lengthOf(3, 94, 5)
    expect(results.links).toHaveLength(1)
    expect(linkOf(results, 'W1')).toMatchObject({
      cableTags: ['W1', 'W2', 'W3'], jointTags: ['X1', 'X2'], ends: [{ tag: 'N1', portName: '1' }, { tag: 'P1', portName: 'lan' }],
      length: { input: { cableLengthM: 94, cordLengthM: 8 }, output: { channelLengthM: 102 } }, lengthComparison: { within: false, margin: -2 },
    })
    expect(foundIn(results)).toEqual(['ETH101 W1'])
  })
  it('is within at the limit itself', () => expect(foundIn(lengthOf(90, 10))).toEqual([]))
  it('is not known while that of one cable is not', () => {
    const results = lengthOf(20, null)
    expect(linkOf(results, 'W1')).toMatchObject({ length: { status: 'not computed' }, lengthComparison: null })
    expect(results.notAssessed.map(({ reason }) => reason)).toContain('length of the link: the length of W2 is not known')
  })
  it('does not go on where three cables meet', () => {
    const results = ethernetOf(networkVessel({
      equipment: [aSwitch('N1', 3), aDevice('P1'), anEquipment({ tag: 'X1', kind: 'connector' })],
      cables: [link('W1', 'N1:1', 'X1'), link('W2', 'X1', 'P1:lan'), link('W3', 'X1', 'N1:2')],
    }))
    expect(results.links.map(({ tag, ends }) => [tag, ends[0].tag, ends[1].tag])).toEqual([['W1', 'N1', 'X1'], ['W2', 'X1', 'P1'], ['W3', 'X1', 'N1']])
  })
})

describe('the speed of a link', () => {
  const speedOf = (near: number | null, far: number | null, cores: number | null = 8) => linkOf(ethernetOf(networkVessel({
    cableTypes: [aCableType({ tag: 'ETH', use: 'ethernet', cores })],
    equipment: [aSwitch('N1', 1, {}, { 1: { speedMbitPerS: near } }), aDevice('P1', {}, { speedMbitPerS: far })], cables: [link('W1', 'N1:1', 'P1:lan')],
  })), 'W1')

  it.each([[1000, 1000, 1000], [1000, 100, 100], [10, 100, 10]])('of ports of %s and %s is %s', (near, far, expected) => expect(speedOf(near, far).speedMbitPerS).toBe(expected))
  it('says which end sets it', () => {
    expect(speedOf(1000, 100).speedReason).toBe('set by port lan of P1')
    expect(speedOf(1000, 1000).speedReason).toBe('both ports alike')
  })
  it('is 100 over a cable of two pairs', () => {
    expect(speedOf(1000, 1000, 4)).toMatchObject({ speedMbitPerS: 100, speedReason: 'set by W1, which has fewer than four pairs' })
    expect(speedOf(1000, 1000, null).speedMbitPerS).toBe(1000)
  })
  it('is not known while that of a port is not', () => expect(speedOf(1000, null)).toMatchObject({ speedMbitPerS: null, speedReason: 'the speed of port lan of P1 is not recorded' }))
})

describe('ports', () => {
  const vessel = networkVessel({
    equipment: [aSwitch('N1', 4), aDevice('P1'), aDevice('P2'), aDevice('P3'), aDevice('P9', { status: 'removed' })],
    cables: [
      link('W1', 'N1:1', 'P1'), link('W2', 'P2:lan', 'N1:2'), link('W3', 'N1:2', 'P3:lan'), link('W4', 'N1:3', 'P9:lan'), link('W5', 'N1:4', 'P2:lan', { status: 'removed' }),
      aCable({ tag: 'W9', from: 'A1', to: 'P1', carries: 'both' }),
    ],
  })
  const results = ethernetOf(vessel)
  const uses = (tag: string) => results.ports.get(tag)?.map(({ name, cables }) => [name, ...cables.map(({ cableTag, farTag }) => `${cableTag} ${farTag}`)])

  it('have what ends at them, also when its other end was removed; a removed cable leaves its port free', () => expect(uses('N1')).toEqual([['1', 'W1 P1'], ['2', 'W2 P2', 'W3 P3'], ['3', 'W4 P9'], ['4']]))
  it('have no link by a removed cable', () => expect(results.links.map(({ tag }) => tag)).toEqual(['W1', 'W2', 'W3']))
  it('are where a cable ends that names none, if there is but one; a power cable does not count', () => expect(uses('P1')).toEqual([['lan', 'W1 N1']]))
  it('take one cable', () => {
    expect(foundIn(results)).toEqual(['ETH109 N1'])
    expect(results.findings[0]).toMatchObject({ evidence: { cableCount: 2 }, context: { port: '2', cables: 'W2 and W3' } })
  })
  it('have each a name of their own', () => {
    const twice = ethernetOf(networkVessel({ equipment: [aDevice('P1', { ports: [port('lan'), port('lan')] })] }))
    expect(foundIn(twice)).toEqual(['ETH305 P1'])
    expect(twice.ports.get('P1')).toHaveLength(1)
  })
  it('may be joined on one item, which is a link all the same', () => {
    const looped = ethernetOf(networkVessel({ equipment: [aSwitch('N1', 3)], cables: [link('W1', 'N1:1', 'N1:2')] }))
    expect(looped.ports.get('N1')?.map(({ cables }) => cables.map(({ farTag, farPortName }) => [farTag, farPortName]))).toEqual([[['N1', '2']], [['N1', '1']], []])
  })
})

describe('members of a network', () => {
  const vessel = (passesEthernet: boolean | null) => networkVessel({
    equipment: [
      aSwitch('N1', 4), aSwitch('N2', 4), aSwitch('N9', 4), aDevice('P1', { passesEthernet, ports: [port('a'), port('b')] }), aDevice('P2'), aDevice('P3'),
      aDevice('P4', { status: 'removed' }), aDevice('P5'),
    ],
    cables: [link('W1', 'N1:1', 'N2:1'), link('W2', 'N2:2', 'P1:a'), link('W3', 'P1:b', 'P2:lan'), link('W4', 'N1:2', 'N9:1'), link('W5', 'N9:2', 'P3:lan'), link('W6', 'N1:3', 'P4:lan')],
    ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1'] }), aNetwork({ tag: 'OTHER', switchTags: ['N9'] })],
  })
  it('are what is reached from its switches, through what passes traffic, up to the switch of another network', () => {
    const { networks } = ethernetOf(vessel(true))
    expect(networks.get('LAN')?.memberTags).toEqual(['N1', 'N2', 'N9', 'P1', 'P2'])
    expect(networks.get('OTHER')?.memberTags).toEqual(['N9', 'N1', 'P3'])
  })
  it('end where nobody wrote down whether traffic passes, and that is said', () => {
    const results = ethernetOf(vessel(null))
    expect(results.networks.get('LAN')?.memberTags).not.toContain('P2')
    expect(results.notAssessed).toContainEqual({ subjectTag: 'P1', reason: expect.stringContaining('whether it passes traffic between them is not recorded') })
  })
  it('end without a word where it does not pass', () => {
    const results = ethernetOf(vessel(false))
    expect(results.networks.get('LAN')?.memberTags).not.toContain('P2')
    expect(results.notAssessed.filter(({ subjectTag }) => subjectTag === 'P1')).toEqual([])
  })
})

describe('a link between switches that is slower than both sides', () => {
  const found = (uplink: number, devices: readonly [number, number]) => foundIn(ethernetOf(networkVessel({
    equipment: [aSwitch('N1', 3, {}, { 3: { speedMbitPerS: uplink } }), aSwitch('N2', 3), aDevice('P1', {}, { speedMbitPerS: devices[0] }), aDevice('P2', {}, { speedMbitPerS: devices[1] })],
    cables: [link('W1', 'N1:1', 'P1:lan'), link('W2', 'N2:1', 'P2:lan'), link('W3', 'N1:3', 'N2:3')],
  })))
  it('is said', () => expect(found(100, [1000, 1000])).toEqual(['ETH307 W3']))
  it('is no matter where one side is no faster', () => {
    expect(found(100, [1000, 100])).toEqual([])
    expect(found(1000, [1000, 1000])).toEqual([])
  })
})
