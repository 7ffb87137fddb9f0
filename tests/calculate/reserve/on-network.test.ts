/**
 * Where a device can be plugged in, held against sums by hand: power of the classes by IEEE 802.3 (class 2: 7 W, class 3: 15.4 W for
 * 12.95 W at the device, class 4: 30 W), 20 Ω for 100 m of type 1, links of 100 m by ISO/IEC 11801.
 */
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { type NetworkRequest, onNetworks } from '../../../src/calculate/reserve/on-network.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aNetwork, aVessel, aWireway, aZone } from '../../support/vessel-builder.js'
import { aDevice, aSwitch, link, networkVessel } from '../ethernet/support.js'
import { changed } from './support.js'

/** At the helm a switch with the ports 1 (class 3), 2 (class 4), 3 (no power) free and a camera of class 2 in 4; helm -8 m- mast. */
const boat = (given: Partial<Vessel> = {}): Vessel => networkVessel({
  conditions: { ...aVessel().conditions, cableTailM: 0.5 },
  zones: [aZone({ tag: 'helm' }), aZone({ tag: 'mast' }), aZone({ tag: 'island' })],
  wireways: [aWireway({ tag: 'C1', fromTag: 'helm', toTag: 'mast', lengthM: 8 })],
  equipment: [
    aSwitch('N1', 4, { zoneTag: 'helm', powerBudgetW: 40, powerVoltageV: 50, address: '192.168.5.1', addressing: 'static' }, { 1: { powerClass: 3 }, 2: { powerClass: 4 }, 4: { powerClass: 3 } }),
    aDevice('B1', { zoneTag: 'helm', networkPowerW: 4, address: '192.168.5.2', addressing: 'static' }, { powerClass: 2 }),
  ],
  cables: [link('W1', 'N1:4', 'B1:lan')],
  ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1'], subnet: '192.168.5.0/29' })],
  ...given,
})

const answersOf = (vessel: Vessel, request: Partial<NetworkRequest> = {}) =>
  onNetworks(vessel, bases.iso, calculate(vessel, bases.iso), { atTag: 'mast', powerClass: 3, ...request })
const first = (...given: Parameters<typeof answersOf>) => answersOf(...given)[0]!
const reasonsFor = (...given: Parameters<typeof answersOf>) => first(...given).reasons.join('; ').replaceAll('\u00A0', ' ')

describe('class 3 at the mast', () => {
  const answer = first(boat())

  it('goes into the port that gives enough and no more, by 8 m + 2 · 0.5 m of cable', () => {
    expect(answer).toMatchObject({ switchTag: 'N1', networkTag: 'LAN', verdict: 'fits', reasons: [], port: { name: '1' }, length: { value: 9, limit: { value: 100 } } })
    expect(answer.freePorts.map(({ name }) => name)).toEqual(['1', '2', '3'])
  })

  // 40 W − 7 W = 33 W; 40 W − 7 W − 15.4 W = 17.6 W
  it('leaves 17.6 W of 33 W by class', () => {
    expect(answer.power?.before.reservedMargin).toMatchObject({ output: { marginPowerW: 33 } })
    expect(answer.power?.after.reservedMargin).toMatchObject({ output: { marginPowerW: expect.closeTo(17.6, 9) } })
  })

  /**
   * Camera: 10 m · 0.2 Ω/m = 2 Ω, 50 · I − 2 · I² = 4, I = (50 − √2468) / 4 = 0.080258 A, 4.012883 W.
   * New: 9 m · 0.2 Ω/m = 1.8 Ω, 50 · I − 1.8 · I² = 12.95, I = (50 − √2406.76) / 3.6 = 0.261464 A, 13.073054 W.
   */
  it('leaves 22.91 W of 35.99 W as drawn', () => {
    expect(answer.power?.feed?.power).toMatchObject({ output: { channelResistanceOhm: expect.closeTo(1.8, 9), supplyCurrentA: expect.closeTo(0.261464, 5), portPowerW: expect.closeTo(13.07305, 4) } })
    expect(answer.power?.before.drawnMargin).toMatchObject({ output: { marginPowerW: expect.closeTo(35.98712, 4) } })
    expect(answer.power?.after.drawnMargin).toMatchObject({ output: { marginPowerW: expect.closeTo(22.91406, 4) } })
  })

  // Of .1 to .6 two are taken.
  it('is given the address .3', () => expect(answer.address).toEqual({ subnet: '192.168.5.0/29', nextFree: '192.168.5.3', freeCount: 4, isGiven: false }))
})

it('needs no power for a plain port, and takes one that gives none', () => {
  expect(first(boat(), { powerClass: null })).toMatchObject({ verdict: 'fits', port: { name: '3' }, power: null })
})

it('names the nearest switch first', () => {
  const two = boat({
    equipment: [...boat().equipment, aSwitch('N2', 2, { zoneTag: 'mast' })], ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1', 'N2'] })],
  })
  expect(answersOf(two, { powerClass: null }).map(({ switchTag }) => switchTag)).toEqual(['N2', 'N1'])
  expect(answersOf(two, { powerClass: null, atTag: 'helm' }).map(({ switchTag }) => switchTag)).toEqual(['N1', 'N2'])
})

describe('what stands against it', () => {
  it('a class that no free port gives', () => {
    expect(reasonsFor(boat(), { powerClass: 5 })).toBe('no free port gives class 5; the most is class 4, at port 2')
    const plain = boat({ equipment: changed(boat().equipment, 'N1', { ports: aSwitch('N1', 4, {}, { 4: { powerClass: 3 } }).ports }) })
    expect(reasonsFor(plain)).toBe('no free port gives power')
  })
  it('the budget of the switch, to the watt', () => {
    const withBudget = (powerBudgetW: number) => boat({ equipment: changed(boat().equipment, 'N1', { powerBudgetW }) })
    expect(first(withBudget(37), { powerClass: 4 }).verdict).toBe('fits')
    expect(reasonsFor(withBudget(36), { powerClass: 4 })).toBe('the classes on its ports would reserve 37.0 W, power budget 36.0 W')
  })
  it('more than 100 m of cable', () => {
    expect(reasonsFor(boat({ wireways: [aWireway({ tag: 'C1', fromTag: 'helm', toTag: 'mast', lengthM: 99.5 })] }))).toBe('the cable would be 100.50 m (329.7 ft) long, limit 100.00 m (328.1 ft)')
  })
  it('no free port, no free address', () => {
    expect(reasonsFor(boat({ equipment: changed(boat().equipment, 'N1', { ports: aSwitch('N1', 4).ports.slice(3) }) }))).toBe('no port is free')
    const full = { subnet: '192.168.5.0/30' }
    expect(reasonsFor(boat({ ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1'], ...full })] }))).toBe('no address of 192.168.5.0/30 is free')
  })
})

describe('does not take what is not known for a fit', () => {
  it('a budget', () => {
    expect(first(boat({ equipment: changed(boat().equipment, 'N1', { powerBudgetW: null }) }))).toMatchObject({ verdict: 'not assessed', reasons: ['the power budget of N1 is not recorded'] })
  })
  it('a class of what hangs there', () => {
    const unknown = boat({ equipment: changed(boat().equipment, 'B1', { ports: aDevice('B1').ports }) })
    expect(first(unknown)).toMatchObject({ verdict: 'not assessed', reasons: ['what its devices reserve is not known of all'] })
  })
  it('a way, or the ports', () => {
    expect(first(boat(), { atTag: 'island' })).toMatchObject({ verdict: 'not assessed', reasons: [expect.stringContaining('the length of the cable: no wireways lead')] })
    expect(first(boat({ equipment: changed(boat().equipment, 'N1', { ports: [] }) }))).toMatchObject({ verdict: 'not assessed', reasons: ['its ports are not recorded'] })
  })
  it('has no answer where no switch is', () => expect(answersOf(boat({ ethernetNetworks: [] }))).toEqual([]))
})
