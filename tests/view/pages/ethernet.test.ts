import { describe, expect, it } from 'vitest'
import type { LocatedFinding } from '../../../src/findings/finding.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { ethernetPage } from '../../../src/view/pages/networks/ethernet.view.js'
import { outsideLinkPages } from '../../../src/view/pages/networks/outside-links.view.js'
import { spareCapacityPage } from '../../../src/view/pages/spare-capacity.view.js'
import type { Page } from '../../../src/view/view-model.js'
import { aDevice, aSwitch, ethernetOf, link, networkVessel } from '../../calculate/ethernet/support.js'
import { aBattery, aCable, aCircuit, anEquipment, aNetwork, aProtection, aVessel } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, tablesOf, wordsOn, workingsOf } from './support.js'

const camera = (tag: string, address: string) => aDevice(tag, {
  name: `Camera ${tag}`, kind: 'camera', networkPowerW: 4, address, addressing: 'static', streams: [{ name: 'Picture', rateMbitPerS: 6, toTags: ['P1'], multicast: false }],
}, { powerClass: 2, speedMbitPerS: 100 })

const vessel = networkVessel({
  batteries: [aBattery({ tag: 'G1' })],
  circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['N1', 'K3'], protection: aProtection('blade fuse', 10) })],
  equipment: [
    aSwitch('N1', 6, { name: 'Switch', powerBudgetW: 30, powerVoltageV: 54 }, { 1: { powerClass: 3 }, 2: { powerClass: 3 }, 3: { powerClass: 4 } }),
    camera('B1', '10.0.0.21'), camera('B2', '10.0.0.22'), aDevice('P1', { name: 'Display', address: '10.0.0.11', addressing: 'static' }),
    aDevice('K3', { name: 'Router', kind: 'mobile-data router', passesEthernet: true, address: '10.0.0.1', addressing: 'static', dataFromTags: ['EX1'] }), aDevice('P2', { addressing: 'dynamic', dataFromTags: ['EX1'] }),
    anEquipment({ tag: 'T1', kind: 'mobile-data antenna', name: 'Antenna' }), anEquipment({ tag: 'T2', kind: 'mobile-data antenna', name: 'Second antenna', status: 'planned' }),
    aDevice('K4', { name: 'Access point', kind: 'wireless access point' }),
  ],
  cables: [
    link('W1', 'N1:1', 'B1:lan', { lengthM: 30 }), link('W2', 'N1:2', 'B2:lan'), link('W4', 'N1:4', 'P1:lan'), link('W5', 'N1:5', 'K3:lan'), link('W6', 'N1:6', 'P2:lan'),
    aCable({ tag: 'W9', from: 'T1', to: 'K3', typeTag: 'CX', lengthM: 8, carries: 'none' }),
  ],
  ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1'], subnet: '10.0.0.0/24', gatewayAddress: '10.0.0.1', dynamicRange: ['10.0.0.100', '10.0.0.199'] })],
  wirelessNetworks: [{ tag: 'WL1', name: 'Tern', purpose: null, accessPointTag: 'K4', networkTag: 'LAN', band: '5 GHz', channel: '36', security: 'open', forGuests: true }],
  outsideLinks: [{
    tag: 'EX1', name: 'Mobile data', purpose: 'Weather', kind: 'mobile data', equipmentTag: 'K3', antennaTags: ['T1', 'T2'], downMbitPerS: 60, upMbitPerS: 15, provider: 'Northreach', priorityNumber: 1, coverage: 'near the coast',
  }],
})
/** With its findings, as the page gets them. */
const contextWith = (of: Vessel) => contextOf(of, { findings: ethernetOf(of).findings.map((finding): LocatedFinding => ({ ...finding, at: null })) })
const pageOf = (of: Vessel): Page => ethernetPage(contextWith(of), of.ethernetNetworks[0]!, [])
const rows = (page: Page, id: string) => cellsOf(tableIn(page, id))
const narrow = (page: Page) => tablesOf(page).filter(({ columns }) => columns.length > 6).map(({ id }) => id)

describe('the page of an Ethernet network', () => {
  const page = pageOf(vessel)

  // Of 30 W the two cameras of class 2 keep 7 W each.
  it('begins with what somebody asks who adds a device', () => {
    const words = wordsOn(page)
    for (const line of [
      'Members 6, on 1 network switch', 'Free at N1 1 of 6 ports: 3 (up to class 3); power left 16.0 W of 30 W', 'Next free address 10.0.0.2', 'Way out K3 Router', 'Links to the outside EX1 Mobile data', 'Longest link W1, 30.00 m', 'Fullest link W1 from B1 to N1, 6 Mbit/s or 6.0 % of its speed',
    ]) expect(words).toContain(line)
  })
  it('shows each port with its cable and what is at the other end', () => expect(rows(page, 'ports-n1')).toEqual([
    ['1', '1000 Mbit/s', '3', 'W1', 'B1 Camera B1 lan'], ['2', '1000 Mbit/s', '3', 'W2', 'B2 Camera B2 lan'], ['3', '1000 Mbit/s', '4', '–', 'free'],
    ['4', '1000 Mbit/s', '–', 'W4', 'P1 Display lan'], ['5', '1000 Mbit/s', '–', 'W5', 'K3 Router lan'], ['6', '1000 Mbit/s', '–', 'W6', 'P2 Equipment P2 lan'],
  ]))
  // 4 W over 30 m of type 1 (6 Ω) at 54 V: I = 4 / 54 = 0.0741 A and a little, 6 · 0.0741² = 0.033 W.
  it('gives the power of each port, and the sum of the one that loses most', () => {
    expect(rows(page, 'power-n1').map(row => row.slice(0, 5))).toEqual([['1', 'B1 Camera B1', '2', '7 W', '4 W'], ['2', 'B2 Camera B2', '2', '7 W', '4 W']])
    expect(rows(page, 'power-n1')[0]![5]).toBe('0.033 W')
    expect(wordsOn(page)).toContain('Kept 14 W, drawn with what is lost at most 8.0 W. Budget 30 W: 16.0 W left by class, 22.0 W left by what is drawn. Supplied at 54 V.')
    expect(workingsOf(page).map(({ title }) => title)).toContain('The port that loses most: B1 on W1')
    expect(wordsOn(page)).toContain('20 Ω for 100 m, as the standard has it for type 1')
  })
  it('gives length and speed of each link, and what sets it', () => expect(rows(page, 'links')[0]).toEqual(['W1', 'N1 Switch 1', 'B1 Camera B1 lan', '30.00 m', '100 Mbit/s set by port lan of B1']))
  it('gives the sum on each link that carries a stream', () => expect(rows(page, 'link-load')).toEqual([
    ['W1', 'B1 to N1', 'Picture of B1 6 Mbit/s', '6 Mbit/s', '6.0 %'], ['W2', 'B2 to N1', 'Picture of B2 6 Mbit/s', '6 Mbit/s', '6.0 %'],
    ['W4', 'N1 to P1', 'Picture of B1 6 Mbit/s; Picture of B2 6 Mbit/s', '12 Mbit/s', '1.2 %'],
  ]))
  it('lists addresses, and what is given out as such', () => {
    expect(rows(page, 'addresses').slice(-2)).toEqual([['P1 Display', '10.0.0.11', 'set on it'], ['P2 Equipment P2', 'changes', 'given out']])
    expect(wordsOn(page)).toContain('10.0.0.0/24 devices 10.0.0.1 to 10.0.0.254')
  })
  it('keeps its tables narrow, and every id once', () => {
    expect(narrow(page)).toEqual([])
    expect(new Set(tablesOf(page).map(({ id }) => id)).size).toBe(tablesOf(page).length)
  })
  it('marks what is wrong where it stands, and lists it', () => {
    const worse = pageOf({ ...vessel, cables: [...vessel.cables.map(each => (each.tag === 'W2' ? link('W2', 'N1:2', 'B2:lan', { lengthM: 101 }) : each)), link('W7', 'N1:4', 'B1:lan')] })
    expect(tableIn(worse, 'ports-n1').rows.map(({ level }) => level)).toEqual([null, null, null, 'error', 'error', null, null])
    expect(tableIn(worse, 'links').rows.find(({ level }) => level === 'error')?.cells[3]).toContainEqual({ is: 'verdict', level: 'error', text: 'too long' })
    expect(wordsOn(worse)).toMatch(/ETH101 Link W2 .*ETH109|ETH109[^]*ETH101/)
  })
  it('says what is not recorded, of a network of which nearly nothing is', () => {
    const bare = pageOf(networkVessel({ equipment: [aSwitch('N1', 0)], ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1', 'N9'] })] }))
    const words = wordsOn(bare)
    for (const line of ['Next free address not known', 'Way out none recorded', 'Longest link no length is known', 'Fullest link no stream is recorded']) expect(words).toContain(line)
    expect(rows(bare, 'not-assessed-eth')).toEqual([['LAN Network LAN', 'addresses: the address range of the network is not recorded']])
  })
  it('tells of a ring, and what protects it', () => {
    const ring = (loopProtection: boolean | null) => wordsOn(pageOf(networkVessel({ equipment: [aSwitch('N1', 2, { loopProtection }), aSwitch('N2', 2)], cables: [link('W1', 'N1:1', 'N2:1'), link('W2', 'N1:2', 'N2:2')] })))
    expect(ring(true)).toContain('Ring, protected of the cables W1, W2 through N1, N2. Loop protection at N1.')
    expect(ring(null)).toContain('nothing on it is recorded to keep a ring from doing harm')
  })
})

describe('the page of wireless networks and outside links', () => {
  const [page] = outsideLinkPages(contextWith(vessel))
  it('is not there where there are none', () => expect(outsideLinkPages(contextOf(aVessel()))).toEqual([]))
  it('says of each wireless network who it is for, how it is secured and what makes it', () => {
    expect(rows(page!, 'wireless-networks')).toEqual([['WL1', 'Tern', 'guests', 'open', 'LAN Network LAN, unless its access point keeps guests apart']])
    expect(rows(page!, 'access-points')).toEqual([['WL1', 'K4 Access point', 'not recorded', 'none recorded', '5 GHz, 36']])
  })
  it('says of each outside link by what it goes, what feeds it, and what is lost with it', () => {
    expect(rows(page!, 'outside-links')).toEqual([['1', 'EX1 Mobile data', '60 Mbit/s', '15 Mbit/s', 'near the coast']])
    const words = wordsOn(page!)
    for (const line of ['For Weather', 'By mobile data, Northreach', 'Made by K3 Router', 'Supply F1 blade fuse 10 A', 'Leads out of LAN Network LAN, as its gateway', 'If it is lost P2 Equipment P2 no longer gets what comes over it.']) expect(words).toContain(line)
  })
  it('gives the antennas with cable, type and length; what is planned is said', () => expect(rows(page!, 'antennas-ex1')).toEqual([
    ['T1 Antenna', 'not recorded', 'W9', 'Type CX', '8.00 m'], ['T2 Second antenna planned', 'not recorded', 'to come', '–', '–'],
  ]))
  it('keeps its tables narrow', () => expect(narrow(page!)).toEqual([]))
})

describe('free ports on the page of spare capacity', () => {
  // 16 W are left: class 4 keeps 30 W, class 3 15.4 W.
  it('have the class that they offer and the one that still fits', () => {
    const page = spareCapacityPage(contextOf(vessel))
    expect(rows(page, 'free-ports')).toEqual([['N1 Switch', '3', '1000 Mbit/s', '4', 'up to 3']])
    expect(wordsOn(page)).toContain('Power left: N1 16.0 W of 30 W.')
    expect(wordsOn(page)).toContain('Next free address of LAN: 10.0.0.2.')
  })
})
