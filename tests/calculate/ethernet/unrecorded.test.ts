/** What is missing from the record is said, so that no figure looks better than it is. */
import { describe, expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { aCableType, anEquipment, aNetwork } from '../../support/vessel-builder.js'
import { aDevice, anOutside, aSwitch, aWireless, ethernetOf, link, networkVessel } from './support.js'

const boat = networkVessel({
  equipment: [aSwitch('N1', 4), aDevice('K3', { kind: 'mobile-data router', passesEthernet: true, address: '10.0.0.1' }), aDevice('B1', { kind: 'camera', address: '10.0.0.5', streams: [{ name: 'Picture', rateMbitPerS: 6, toTags: ['P1'], multicast: false }] }), aDevice('P1', { address: '10.0.0.9' })],
  cables: [link('W1', 'N1:1', 'K3:lan'), link('W2', 'N1:2', 'B1:lan'), link('W3', 'N1:3', 'P1:lan')],
  ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1'], subnet: '10.0.0.0/24', gatewayAddress: '10.0.0.1', dynamicRange: ['10.0.0.100', '10.0.0.199'] })],
  wirelessNetworks: [aWireless({ tag: 'WL1', accessPointTag: 'K3', networkTag: 'LAN' })],
  outsideLinks: [anOutside({ tag: 'EX1', equipmentTag: 'K3', antennaTags: ['K3'] })],
})
const reasons = (given: Partial<Vessel> = {}) => ethernetOf({ ...boat, ...given }).notAssessed.map(({ subjectTag, reason }) => `${subjectTag} ${reason}`)
const network = (given: Partial<Vessel['ethernetNetworks'][number]>) => ({ ethernetNetworks: boat.ethernetNetworks.map(each => ({ ...each, ...given })) })

describe('what is missing from the record of networks', () => {
  it('is nothing where all is recorded', () => expect(reasons()).toEqual([]))
  it('is the gateway where a link leads out', () => {
    expect(reasons(network({ gatewayAddress: null }))).toEqual(['LAN way out: EX1 leads out of it, and its gateway is not recorded'])
    expect(reasons({ ...network({ gatewayAddress: null }), outsideLinks: [] })).toEqual([])
  })
  it('is the range that is given out where something is', () => {
    const gap = 'LAN free addresses: some are given out, and their range is not recorded, so that fewer are free than it seems'
    expect(reasons(network({ dynamicRange: null }))).toEqual([gap])
    expect(reasons({ ...network({ dynamicRange: null }), wirelessNetworks: [] })).toEqual([])
    expect(reasons({ ...network({ dynamicRange: null }), wirelessNetworks: [], equipment: boat.equipment.map(item => (item.tag === 'P1' ? { ...item, addressing: 'reserved' as const } : item)) })).toEqual([gap])
  })
  it('is the network of a wireless one that is not for guests, where there is any', () => {
    const wireless = (forGuests: boolean) => ({ wirelessNetworks: boat.wirelessNetworks.map(each => ({ ...each, networkTag: null, forGuests })) })
    expect(reasons(wireless(false))).toEqual(['WL1 what it leads to: its network is not recorded'])
    expect(reasons(wireless(true))).toEqual([])
  })
  it('is what a camera sends', () =>
    expect(reasons({ equipment: boat.equipment.map(item => ({ ...item, streams: [] })) })).toEqual(['LAN load of the links: the streams of B1 are not recorded']))
  it('is the network of a switch', () => {
    expect(reasons({ equipment: [...boat.equipment, aSwitch('N2', 2)] })).toEqual(['N2 members and addresses: it is on no Ethernet network on record'])
    expect(reasons({ equipment: [...boat.equipment, aSwitch('N2', 2, { status: 'removed' })] })).toEqual([])
  })
  it('is the antenna of a link through the air', () => {
    expect(reasons({ outsideLinks: boat.outsideLinks.map(each => ({ ...each, antennaTags: [] })) })).toEqual(['EX1 its antennas: none is recorded; where it is built in, name the equipment itself'])
    expect(reasons({ outsideLinks: boat.outsideLinks.map(each => ({ ...each, antennaTags: [], kind: 'wireless network of a harbour' as const })) })).toEqual([])
  })
  it('is how many cores a cable has, where more than 100 Mbit/s depend on it', () => {
    const types = { cableTypes: [aCableType({ tag: 'ETH', use: 'ethernet', cores: null })] }
    expect(reasons(types)).toEqual(['W1', 'W2', 'W3'].map(tag => `${tag} speed of the link: how many cores ETH has is not recorded, and four pairs are taken for granted`))
    expect(reasons({ ...types, equipment: boat.equipment.map(item => (item.tag === 'N1' ? { ...item, ports: item.ports.map(port => ({ ...port, speedMbitPerS: 100 })) } : item)) })).toEqual([])
  })
  it('does not stop at what is not there', () => expect(reasons({ equipment: [anEquipment({ tag: 'N1', kind: 'network switch', status: 'removed' })], cables: [] })).toEqual(expect.any(Array)))
})
