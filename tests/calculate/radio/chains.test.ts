/** The way from a transmitter to its antenna, and what is lost on it. */
import { describe, expect, it } from 'vitest'
import { anEquipment, aVessel } from '../../support/vessel-builder.js'
import { aTransmitter, anAntenna, coax, gnss, idsOf, radio, radioBoat, radioOf, reasonsOf, stated, whip } from './support.js'

const ports = (...pairs: readonly (readonly [string, string, number])[]) => pairs.map(([fromTerminal, toTerminal, lossDb]) => ({ fromTerminal, toTerminal, lossDb }))
const splitter = anEquipment({ tag: 'X1', kind: 'antenna splitter', portLosses: ports(['antenna', 'vhf', 0.5], ['antenna', 'ais', 1]) })
const ais = radio('T2', { kind: 'ais transceiver', transmitters: [aTransmitter({ service: 'AIS', powerW: 2, frequencyMHz: 162 })] })

describe('one cable', () => {
  // 10 m · 10 dB/100 m + 2 · 0.25 dB = 1.5 dB; 25 · 10^−0.15 = 17.70 W; + 3 dBi: 35.31 W
  it('loses what it and its connectors lose', () => {
    const [chain] = radioOf(radioBoat()).chains
    expect(chain!.antennaTag).toBe('T11')
    expect(chain!.lossDb).toBeCloseTo(1.5, 9)
    expect(chain!.power).toMatchObject({ output: { antennaPowerW: expect.closeTo(17.6986, 3) } })
    expect(chain!.radiated).toMatchObject({ output: { radiatedPowerW: expect.closeTo(35.314, 2) } })
    expect(idsOf(radioOf(radioBoat()))).toEqual([])
  })
  it('counts the connectors that are recorded', () => {
    const vessel = radioBoat()
    const bare = { ...vessel, cables: [coax('W1', 'T1:antenna', 'T11:coax', { connectorCount: 0 })] }
    expect(radioOf(bare).chains[0]!.lossDb).toBeCloseTo(1, 9)
  })
  // 25 m: 2.5 + 0.5 = 3 dB is on the limit and within; 25.1 m is above.
  it.each([[25, []], [25.1, ['RAD101 T1']]] as const)('of %d m is held against 3 dB', (lengthM, found) => {
    const vessel = { ...radioBoat(), cables: [coax('W1', 'T1:antenna', 'T11:coax', { lengthM })] }
    expect(idsOf(radioOf(vessel))).toEqual(found)
  })
  it('may be named the other way round, or without its connectors', () => {
    for (const cable of [coax('W1', 'T11:coax', 'T1:antenna'), coax('W1', 'T1', 'T11')]) {
      expect(radioOf({ ...radioBoat(), cables: [cable] }).chains[0]!.antennaTag).toBe('T11')
    }
  })
  it('is not there once it is removed', () => {
    const results = radioOf({ ...radioBoat(), cables: [coax('W1', 'T1:antenna', 'T11:coax', { status: 'removed' })] })
    expect(results.chains[0]).toMatchObject({ antennaTag: null, lossDb: null })
    expect(idsOf(results)).toEqual(['RAD201 T1'])
    expect(reasonsOf(results, 'T1')).toEqual(['loss and exposure of VHF voice: no coaxial cable is recorded at its connector antenna'])
  })
  it('of unknown kind or length leaves the loss not assessed, and the antenna found', () => {
    const silent = radioOf({ ...radioBoat(), cableTypes: [{ ...stated, coax: null }] })
    expect(silent.chains[0]).toMatchObject({ antennaTag: 'T11', lossDb: null, power: { status: 'not computed' } })
    expect(reasonsOf(silent, 'T1')).toEqual(['loss of VHF voice: W1: neither the kind of its cable nor its maker’s attenuation is recorded'])
    const endless = radioOf({ ...radioBoat(), cables: [coax('W1', 'T1:antenna', 'T11:coax', { lengthM: null })] })
    expect(reasonsOf(endless, 'T1')).toEqual(['loss of VHF voice: W1: its length is not known'])
  })
})

describe('a splitter', () => {
  const shared = aVessel({
    equipment: [radio('T1'), ais, splitter, whip('T11', [4, 0, 4])], cableTypes: [stated],
    cables: [coax('W1', 'T1:antenna', 'X1:vhf', { lengthM: 1 }), coax('W2', 'T2:antenna', 'X1:ais', { lengthM: 1 }), coax('W3', 'X1:antenna', 'T11:coax')],
  })
  // VHF: 0.1 + 0.5, 0.5, 1 + 0.5 dB = 2.6 dB. AIS at 10.2 dB/100 m: 0.102 + 0.5, 1, 1.02 + 0.5 = 3.122 dB
  it('takes its loss from each, lets both use one antenna, and asks for no distance', () => {
    const results = radioOf(shared)
    expect(results.chains.map(({ antennaTag }) => antennaTag)).toEqual(['T11', 'T11'])
    expect(results.chains.map(({ lossDb }) => Math.round(lossDb! * 1000) / 1000)).toEqual([2.6, 3.122])
    expect(results.antennas).toMatchObject([{ tag: 'T11', servesTags: ['T1', 'T2'], splitterTags: ['X1'] }])
    expect(results.separations).toEqual([])
    expect(idsOf(results)).toEqual(['RAD101 T2'])
  })
  it('without recorded losses still leads to the antenna, with the loss not assessed', () => {
    const silent = radioOf({ ...shared, equipment: [radio('T1'), ais, { ...splitter, portLosses: [] }, whip('T11', [4, 0, 4])] })
    expect(silent.chains.map(({ antennaTag, lossDb }) => [antennaTag, lossDb])).toEqual([['T11', null], ['T11', null]])
    expect(reasonsOf(silent, 'T1')).toEqual(['loss of VHF voice: X1 has no loss on record from vhf to antenna'])
    expect(idsOf(silent)).toEqual([])
  })
  it('in whose place there is a tee is missed', () => {
    const tee = radioOf({ ...shared, equipment: [radio('T1'), ais, anEquipment({ tag: 'X1', kind: 'connector' }), whip('T11', [4, 0, 4])] })
    expect(tee.chains.map(({ antennaTag }) => antennaTag)).toEqual(['T11', 'T11'])
    expect(idsOf(tee)).toContain('RAD103 T11')
  })
  it('is not asked for between two services of one radio', () => {
    const one = radioBoat({ equipment: [] })
    const both = { ...one, equipment: [radio('T1', { transmitters: [aTransmitter(), aTransmitter({ service: 'DSC', frequencyMHz: 156.8 })] }), whip('T11', [4, 0, 4])] }
    expect(idsOf(radioOf(both))).toEqual([])
  })
})

describe('an antenna', () => {
  it('that is not made for the frequency is an error, on the border it is made for it', () => {
    expect(idsOf(radioOf(radioBoat({}, { fromMHz: 156.8, toMHz: 163 })))).toEqual([])
    expect(idsOf(radioOf(radioBoat({}, { fromMHz: 157, toMHz: 163 })))).toEqual(['RAD102 T11'])
    expect(idsOf(radioOf(radioBoat({}, { fromMHz: 140, toMHz: 150 })))).toEqual(['RAD102 T11'])
  })
  it('of unknown range is not assessed', () => {
    const results = radioOf(radioBoat({}, { fromMHz: null, toMHz: null }))
    expect(idsOf(results)).toEqual([])
    expect(reasonsOf(results, 'T11')).toContain('whether it suits VHF voice: its range of frequencies is not recorded')
  })
  it('may be built in, and beacons are left out', () => {
    const results = radioOf(aVessel({ equipment: [
      anEquipment({ tag: 'K4', kind: 'wireless access point', transmitters: [aTransmitter({ service: 'wireless network', terminal: null, powerW: 0.1, frequencyMHz: 5200 })], antenna: anAntenna({ fromMHz: 5100, toMHz: 5800 }) }),
      anEquipment({ tag: 'P1', kind: 'safety beacon', transmitters: [aTransmitter({ service: 'distress', terminal: null, powerW: 5, frequencyMHz: 406 })] }),
    ] }))
    expect(results.chains.map(({ itemTag, antennaTag, lossDb }) => [itemTag, antennaTag, lossDb])).toEqual([['K4', 'K4', 0]])
  })
  it('is not guessed where several are reached', () => {
    const results = radioOf(aVessel({
      equipment: [radio('T1'), anEquipment({ tag: 'X1', kind: 'connector' }), whip('T11'), whip('T12')], cableTypes: [stated],
      cables: [coax('W1', 'T1:antenna', 'X1'), coax('W2', 'X1', 'T11'), coax('W3', 'X1', 'T12')],
    }))
    expect(results.chains[0]!.antennaGap).toBe('its cables lead to T11 and T12, and which it uses is not known')
  })
})

describe('odd vessels', () => {
  it('without radio have no results, and rings of cable come to an end', () => {
    const empty = radioOf(aVessel())
    expect([empty.chains, empty.antennas, empty.notAssessed, empty.findings]).toEqual([[], [], [], []])
    const ring = radioOf(aVessel({
      equipment: [radio('T1'), anEquipment({ tag: 'X1', kind: 'connector' }), anEquipment({ tag: 'X2', kind: 'connector' })], cableTypes: [stated],
      cables: [coax('W1', 'T1:antenna', 'X1:a'), coax('W2', 'X1:b', 'X2:a'), coax('W3', 'X2:b', 'X1:c')],
    }))
    expect(ring.chains[0]!.antennaTag).toBeNull()
  })
  it('a transceiver that says nothing of what it sends is not assessed', () => {
    expect(reasonsOf(radioOf(aVessel({ equipment: [radio('T1', { transmitters: [] }), gnss('B1')] })), 'T1')).toEqual(['loss, range and exposure: what it transmits is not recorded'])
  })
  it('what is removed is not there', () => {
    const vessel = radioBoat()
    expect(radioOf({ ...vessel, equipment: vessel.equipment.map(item => ({ ...item, status: 'removed' as const })) })).toMatchObject({ chains: [], antennas: [], findings: [] })
  })
})
