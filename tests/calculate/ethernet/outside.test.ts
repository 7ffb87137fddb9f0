import { describe, expect, it } from 'vitest'
import { securityOf } from '../../../src/calculate/ethernet/outside.js'
import type { Cable, Equipment, OutsideLink, Vessel, WirelessNetwork } from '../../../src/model/vessel.js'
import { aCable, anEquipment, aNetwork } from '../../support/vessel-builder.js'
import { aDevice, anOutside, aSwitch, aWireless, ethernetOf, foundIn, link, networkVessel } from './support.js'

describe('a wireless network', () => {
  it.each([
    ['open', 'open'], ['None', 'open'], ['WEP', 'weak'], ['WPA', 'weak'], ['WPA1', 'weak'], ['WPA-TKIP', 'weak'], ['WPA/WPA2', 'recorded'], ['WPA2', 'recorded'], ['WPA2/WPA3', 'recorded'], ['WPA3', 'recorded'], [null, 'not recorded'],
  ] as const)('secured by "%s" is %s', (security, expected) => expect(securityOf(aWireless({ security }))).toBe(expected))

  const found = (given: Partial<WirelessNetwork>) => ethernetOf(networkVessel({ ethernetNetworks: [], equipment: [aDevice('K4', { kind: 'wireless access point' })], wirelessNetworks: [aWireless(given)] }))
  it('is found when it is open or weak and not for guests', () => {
    expect(foundIn(found({ security: 'open' }))).toEqual(['ETH304 WL1'])
    expect(found({ security: 'WEP', forGuests: false }).findings).toMatchObject([{ id: 'ETH304', context: { how: 'secured by WEP' } }])
    expect(foundIn(found({ security: 'open', forGuests: true }))).toEqual([])
    expect(foundIn(found({}))).toEqual([])
  })
  it('is noted when nobody wrote down how', () => expect(foundIn(found({ security: null, forGuests: true }))).toEqual(['ETH204 WL1']))
  it('without an access point is not assessed', () => expect(found({ accessPointTag: null }).notAssessed).toMatchObject([{ subjectTag: 'WL1' }]))
})

describe('a link to the outside', () => {
  const vessel = (given: { readonly link?: Partial<OutsideLink>; readonly equipment?: readonly Equipment[]; readonly cables?: readonly Cable[] }): Vessel => networkVessel({
    equipment: [aSwitch('N1', 2), aDevice('K3', { kind: 'mobile-data router', passesEthernet: true, address: '10.0.0.1', addressing: 'static' }), ...given.equipment ?? []],
    cables: [link('W1', 'N1:1', 'K3:lan'), ...given.cables ?? []],
    ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1'], subnet: '10.0.0.0/24', gatewayAddress: '10.0.0.1' })],
    outsideLinks: [anOutside(given.link)],
  })
  const antenna = (tag: string, given: Partial<Equipment> = {}) => anEquipment({ tag, kind: 'mobile-data antenna', ...given })
  const coax = (tag: string, from: string, to: string, given: Partial<Omit<Cable, 'tag' | 'from' | 'to'>> = {}) => aCable({ tag, from, to, typeTag: 'CX', carries: 'none', lengthM: 4, ...given })
  const wayOf = (given: Parameters<typeof vessel>[0]) => ethernetOf(vessel(given)).outsideLinks.get('EX1')!

  it('leads out of the network that its equipment is on, as gateway where it has that address', () => expect(wayOf({}).networks).toEqual([{ tag: 'LAN', gateway: true }]))
  it('has its antenna joined by coaxial cable, through splitters and connectors, with the length of all', () => {
    const { antennas } = wayOf({
      link: { antennaTags: ['T1'] }, equipment: [antenna('T1'), anEquipment({ tag: 'X1', kind: 'antenna splitter' }), anEquipment({ tag: 'X2', kind: 'connector' })],
      cables: [coax('W2', 'T1', 'X1'), coax('W3', 'X2', 'X1'), coax('W4', 'X2:b', 'K3:cell')],
    })
    expect(antennas).toEqual([{ tag: 'T1', builtIn: false, cableTags: ['W2', 'W3', 'W4'], lengthM: 12, planned: false }])
  })
  it('does not reach its antenna through another radio, or by a cable for power', () => {
    const through = vessel({ link: { antennaTags: ['T1'] }, equipment: [antenna('T1'), anEquipment({ tag: 'T2', kind: 'vhf transceiver' })], cables: [coax('W2', 'T1', 'T2'), coax('W3', 'T2', 'K3'), aCable({ tag: 'W4', from: 'T1', to: 'K3' })] })
    expect(ethernetOf(through).findings).toMatchObject([{ id: 'ETH203', subject: { id: 'EX1' }, context: { antenna: 'T1', equipment: 'K3' } }])
  })
  it('says of what is planned that it is, and misses no cable of it', () => {
    const planned = vessel({ link: { antennaTags: ['T1', 'T2'] }, equipment: [antenna('T1', { status: 'planned' }), antenna('T2')], cables: [coax('W2', 'T2', 'K3', { status: 'planned' })] })
    const results = ethernetOf(planned)
    expect([results.outsideLinks.get('EX1')?.antennas.map(each => each.planned), foundIn(results)]).toEqual([[true, true], []])
  })
  it('may have its antenna built in, and a removed one is not there', () => {
    const results = ethernetOf(vessel({ link: { antennaTags: ['K3', 'T1'] }, equipment: [antenna('T1', { status: 'removed' })] }))
    expect([results.outsideLinks.get('EX1')?.antennas, foundIn(results)]).toEqual([[{ tag: 'K3', builtIn: true, cableTags: null, lengthM: null, planned: false }], []])
  })
  it('is found without equipment, or with equipment that was removed', () => {
    expect(foundIn(ethernetOf(vessel({ link: { equipmentTag: null, antennaTags: ['T1'] }, equipment: [antenna('T1')] })))).toEqual(['ETH202 EX1'])
    expect(ethernetOf(vessel({ link: { equipmentTag: 'K9' }, equipment: [antenna('K9', { status: 'removed' })] })).findings).toMatchObject([{ id: 'ETH202', context: { words: 'its equipment K9 is recorded as removed' } }])
  })
  it('is not assessed where its equipment is on no network', () =>
    expect(ethernetOf(vessel({ link: { equipmentTag: 'K9', antennaTags: ['K9'] }, equipment: [antenna('K9')] })).notAssessed).toMatchObject([{ subjectTag: 'EX1', reason: expect.stringContaining('which network it leads out of') }]))
  it('knows who needs it', () => expect(wayOf({ equipment: [aDevice('P1', { dataFromTags: ['EX1'] }), aDevice('P2', { dataFromTags: ['EX1'], status: 'removed' })] }).neededByTags).toEqual(['P1']))
})
