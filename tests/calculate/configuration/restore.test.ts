/** What a replacement must be given: collected from the data, and held against what was read. */
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import type { RestoreFact } from '../../../src/model/results/configuration.js'
import type { Equipment, Setting, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aCircuit, anEquipment, aNetwork, aPanel, aProtection, aSerialLink, aVessel } from '../../support/vessel-builder.js'

const resultsOf = (given: Partial<Vessel>) => calculate(aVessel(given), bases.iso).configuration
const worded = ({ name, value }: RestoreFact) => [name, typeof value === 'string' ? value : value.value]
const factsOf = (item: Parameters<typeof anEquipment>[0], given: Partial<Vessel> = {}) =>
  resultsOf({ equipment: [anEquipment(item)], ...given }).byItem.get(item.tag)?.facts ?? []
const idsOf = (given: Partial<Vessel>) => resultsOf(given).findings.map(({ id, subject }) => `${id} ${subject.id}`)
const setting = (given: Pick<Setting, 'itemTag' | 'name' | 'value'> & Partial<Setting>): Setting => ({ menu: null, date: '2026-05-04', by: null, notes: null, ...given })
const identity = { ...aVessel().identity, name: 'Gannet', mmsi: '211000001', callSign: 'DA1234', lengthM: 12, beamM: 4 }

describe('what other entries say', () => {
  it('of a network address: how it comes by it, and of one that is set the network around it', () => {
    const ethernetNetworks = [aNetwork({ tag: 'LAN1', subnet: '10.0.0.0/24', gatewayAddress: '10.0.0.1' }), aNetwork({ tag: 'LAN2', subnet: '192.168.10.0/24', gatewayAddress: '192.168.10.1' })]
    expect(factsOf({ tag: 'P1', address: '192.168.10.20', addressing: 'static' }, { ethernetNetworks }).map(worded)).toEqual([
      ['Network address', '192.168.10.20'], ['How it comes by its address', 'set on the device'], ['Subnet', '192.168.10.0/24'], ['Gateway', '192.168.10.1'],
    ])
    expect(factsOf({ tag: 'P1', address: '192.168.10.20', addressing: 'reserved', macAddress: '02:00:00:00:00:01' }, { ethernetNetworks }).map(worded).slice(1)).toEqual([
      ['How it comes by its address', 'given out, always the same'], ['Hardware address', '02:00:00:00:00:01'],
    ])
    expect(factsOf({ tag: 'P1', address: 'nonsense', addressing: 'static' }, { ethernetNetworks }).map(worded)).toEqual([['Network address', 'nonsense'], ['How it comes by its address', 'set on the device']])
  })

  it('of a bus, a serial line, a depth offset', () => {
    const serialLinks = [aSerialLink({ tag: 'S1', talker: 'K1:out', listeners: ['P1:in'], sentences: [{ formatter: 'RMC', ratePerS: 1, lengthCharacterCount: null }, { formatter: 'HDT', ratePerS: null, lengthCharacterCount: null }] })]
    const device = { tag: 'K1', deviceInstanceNumber: 0, forwards: [{ fromTerminal: 'a', toTerminal: 'out', only: ['HDT'] }] }
    expect(factsOf(device, { serialLinks }).map(worded)).toEqual([
      ['Device instance', '0'], ['Rate at out', 4800], ['Sentences sent at out', 'RMC 1/s, HDT'], ['Passed on from a to out', 'HDT only'],
    ])
    expect(factsOf({ tag: 'P1' }, { serialLinks }).map(worded)).toEqual([['Rate at in', 4800]])
    const transducer = { frequencyKHz: null, powerW: null, beamDeg: null, beamAcrossDeg: null, blindM: null, depthOffset: { reads: 'below keel' as const, offsetM: -0.6 } }
    expect(factsOf({ tag: 'B1', transducer })).toMatchObject([{ name: 'Depth offset', value: { quantity: 'offsetM', value: -0.6, words: 'depth is shown below keel' } }])
  })

  it('of a wireless network and a link to the outside', () => {
    const wirelessNetworks = [{ tag: 'WLAN1', name: 'Gannet', purpose: null, accessPointTag: 'K1', networkTag: null, band: '5 GHz', channel: '36', security: 'WPA3', forGuests: true }]
    const outsideLinks = [{ tag: 'CELL1', name: 'Mobile data', purpose: null, kind: 'mobile data' as const, equipmentTag: 'K1', antennaTags: [], downMbitPerS: null, upMbitPerS: null, provider: 'Coast Mobile', priorityNumber: 1, coverage: null }]
    expect(factsOf({ tag: 'K1' }, { wirelessNetworks, outsideLinks }).map(worded)).toEqual([
      ['Name of the wireless network', 'Gannet'], ['Band and channel of Gannet', '5 GHz, 36'], ['Security of Gannet', 'WPA3'],
      ['Guests on Gannet', 'it is for guests: keep it apart from the vessel’s own network'], ['Provider of Mobile data', 'Coast Mobile'], ['Order in which Mobile data is tried', '1'],
    ])
  })

  it('of who the vessel is, for what sends that', () => {
    expect(factsOf({ tag: 'T1', kind: 'vhf transceiver' }, { identity }).map(worded)).toEqual([['MMSI', '211000001'], ['Call sign', 'DA1234']])
    expect(factsOf({ tag: 'T2', kind: 'ais transceiver' }, { identity }).map(worded)).toEqual([['MMSI', '211000001'], ['Call sign', 'DA1234'], ['Name of the vessel', 'Gannet'], ['Length', 12], ['Beam', 4]])
    expect(factsOf({ tag: 'B9', kind: 'safety beacon', mmsi: '970000001', beaconIdentity: '1D0E9999BF81FE0' }, { identity }).map(worded)).toEqual([['MMSI', '970000001'], ['Identity of the beacon', '1D0E9999BF81FE0']])
    expect(factsOf({ tag: 'P1', kind: 'display' }, { identity })).toEqual([])
  })

  it('of a switching module, channel by channel', () => {
    const panels = [aPanel({ tag: 'A1', kind: 'switching module', networkLoss: 'hold' }), aPanel({ tag: 'A2' })]
    const circuits = [
      aCircuit({ tag: 'F1', name: 'Bilge pump', fedFromTag: 'A1', way: 3, protection: aProtection('electronic channel', 7.5), networkLoss: 'on' }),
      aCircuit({ tag: 'F2', name: 'Lights', fedFromTag: 'A1' }), aCircuit({ tag: 'F3', fedFromTag: 'A2', way: 1 }),
    ]
    const { byItem } = resultsOf({ panels, circuits })
    expect(byItem.get('A1')!.facts.map(worded)).toEqual([['Channel 3, F1', 'Bilge pump, trips at 7.5\u00A0A, network lost: goes on'], ['F2', 'Lights, network lost: stays as it is']])
    expect(byItem.has('A2')).toBe(false)
  })
})

describe('what was read', () => {
  const settings = [
    setting({ itemTag: 'P1', name: 'Brightness', value: '40 %', date: '2026-05-04' }), setting({ itemTag: 'P1', name: 'Brightness', value: '60 %', date: '2026-05-09' }),
    setting({ itemTag: 'P1', name: 'Language', value: 'English', date: null }), setting({ itemTag: 'P1', name: 'Brightness', value: '50 %', date: null }),
  ]
  it('counts as of the last day', () => {
    expect(resultsOf({ equipment: [anEquipment({ tag: 'P1' })], settings }).byItem.get('P1')!.settings.map(({ value }) => value)).toEqual(['60 %', 'English'])
  })

  it('stands for the entry that says the same', () => {
    const read = [setting({ itemTag: 'T1', name: 'Call sign', value: 'DA 1234' }), setting({ itemTag: 'T1', name: 'MMSI', value: '211000002' })]
    expect(resultsOf({ identity, equipment: [anEquipment({ tag: 'T1', kind: 'vhf transceiver' })], settings: read }).byItem.get('T1')!.facts.map(worded)).toEqual([['MMSI', '211000001']])
  })

  it('is gone with the device', () => {
    expect(resultsOf({ equipment: [anEquipment({ tag: 'P1', status: 'removed', address: '10.0.0.1' })], settings }).byItem.size).toBe(0)
  })
})

describe('contradictions', () => {
  const transducer = (offsetM: number): Equipment['transducer'] => ({ frequencyKHz: null, powerW: null, beamDeg: null, beamAcrossDeg: null, blindM: null, depthOffset: { reads: 'below keel', offsetM } })
  const item = anEquipment({ tag: 'P1', kind: 'ais transceiver', software: '1', address: '10.0.0.5', deviceInstanceNumber: 2, transducer: transducer(-0.6) })
  const told = (name: string, value: string) => idsOf({ identity, equipment: [item], settings: [setting({ itemTag: 'P1', name, value })] }).includes('CFG301 P1')

  it.each([
    ['IP address', '10.0.0.6'], ['Network address', '10.0.0.6/24'], ['Device instance', '3'], ['Keel offset', '0.9 m'], ['Depth offset', '-2 ft 6 in'], ['Call sign', 'DA1235'],
  ])('%s %s is another', (name, value) => expect(told(name, value)).toBe(true))

  // −0.6 m is 1.97 ft.
  it.each([
    ['IP address', '10.0.0.5'], ['IP address', 'automatic'], ['Device instance', '02'], ['Engine instance', '7'], ['Keel offset', '0.6 m'], ['Keel offset', '−0.6 m'], ['Depth offset', '2.0 ft'], ['Keel offset', 'on'],
    ['Call sign', 'da 1234'],
  ])('%s %s is the same, or about something else', (name, value) => expect(told(name, value)).toBe(false))
})

describe('what is missing', () => {
  const devices = [anEquipment({ tag: 'P1', kind: 'display' }), anEquipment({ tag: 'K1', kind: 'autopilot computer' }), anEquipment({ tag: 'K2', kind: 'mobile-data router' }), anEquipment({ tag: 'E1', kind: 'light' })]
  it('is no finding before the record is begun', () => expect(idsOf({ equipment: devices })).toEqual([]))

  it('is one from commissioning on, once for the vessel', () => {
    expect(idsOf({ equipment: devices.map(item => ({ ...item, status: 'commissioned' as const })) })).toEqual(['CFG201 Test vessel', 'CFG202 Test vessel', 'CFG204 Test vessel'])
  })

  it('is one from the first entry of its kind on, for what is fitted', () => {
    const [display, ...others] = devices
    expect(idsOf({ equipment: [{ ...display!, software: '1' }, ...others.map(item => ({ ...item, status: 'planned' as const }))] })).toEqual([])
    expect(idsOf({ equipment: [{ ...display!, software: '1' }, ...others] })).toEqual(['CFG201 Test vessel'])
    expect(idsOf({ equipment: devices, settings: [setting({ itemTag: 'P1', name: 'Language', value: 'English' })] })).toEqual(['CFG202 Test vessel'])
  })
})

describe('logins', () => {
  const keptFor = (itemTag: string) => ({ itemTag, name: 'Key', user: null, secret: null, keptAt: 'folder', editions: ['owner' as const], withheld: false })
  const boat = (credentialsOf: readonly string[]): Partial<Vessel> => ({
    equipment: [anEquipment({ tag: 'K1', kind: 'mobile-data router' }), anEquipment({ tag: 'K2', kind: 'wireless access point' }), anEquipment({ tag: 'K3', kind: 'satellite antenna' })],
    wirelessNetworks: [{ tag: 'WL1', name: 'Gannet', purpose: null, accessPointTag: 'K2', networkTag: null, band: null, channel: null, security: null, forGuests: null }],
    outsideLinks: (['K1', 'K3', null] as const).map((equipmentTag, i) => ({
      tag: `EX${i}`, name: 'Link', purpose: null, kind: 'other', equipmentTag, antennaTags: [], downMbitPerS: null, upMbitPerS: null, provider: null, priorityNumber: null, coverage: null,
    })),
    credentials: credentialsOf.map(keptFor),
  })
  const lacking = (credentialsOf: readonly string[]) => resultsOf(boat(credentialsOf)).findings.filter(({ id }) => id === 'CFG204').map(({ message }) => message)

  it('of a device count for the network and the link that it makes, and the other way round', () => {
    expect(lacking(['K1'])).toEqual(['Vessel Test vessel: how to log in is not recorded for K2, EX1 and EX2'])
    expect(lacking(['WL1', 'EX0', 'K3', 'EX2'])).toEqual([])
  })

  it('are not asked for before the first of them is entered', () => expect(lacking([])).toEqual([]))
})

describe('secrets', () => {
  const credential = (secret: string) => ({ itemTag: 'K1', name: 'Menu', user: null, secret, keptAt: null, editions: ['owner' as const], withheld: false })
  const device = anEquipment({ tag: 'K1', software: '1', notes: 'It opens with "gale-9".' })

  it('among the settings are told of by their name', () => {
    const named = (name: string) => idsOf({ equipment: [device], settings: [setting({ itemTag: 'K1', name, value: 'x' })] }).includes('CFG303 K1')
    expect(['Password', 'Wi-Fi key', 'WPA2 key', 'PIN', 'Installer PIN code'].map(named)).toEqual([true, true, true, true, true])
    expect(['Key colour', 'Speaker', 'Password length', 'Pinion ratio'].map(named)).toEqual([false, false, false, false])
  })

  it('are found where they stand word for word, quotation marks and all, and not shown', () => {
    const found = (secret: string, more: Partial<Vessel> = {}) => resultsOf({ equipment: [device], credentials: [credential(secret)], ...more }).findings.filter(({ id }) => id === 'CFG304')
    expect(found('"gale-9"').map(({ message }) => message)).toEqual(['Credential K1: the secret of "Menu" also stands in K1'])
    expect(JSON.stringify(found('"gale-9"'))).not.toContain('gale')
    expect(found('gale-8!')).toEqual([])
    expect(found('opens')).toEqual([])
    expect(found('Gannet', { identity })[0]?.message).toContain('stands in the vessel’s own entry')
  })
})
