/**
 * A boat for the tests of radio. T1 (VHF, 25 W) -W1 10 m- T11; positions: forward, to port, up. Attenuation of the cable as
 * its maker would state it, 10 dB/100 m at 156.8 MHz, so that sums are short: 10 m with two connectors lose 1 + 0.5 dB.
 */
import { radioPass } from '../../../src/calculate/radio/index.js'
import type { RadioResults } from '../../../src/model/results/radio.js'
import type { Antenna, CableType, Equipment, Radar, StandingPlace, Structure, Transmitter, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { routingPass } from '../../../src/calculate/wireways/index.js'
import { aCable, aCableType, anEquipment, aVessel } from '../../support/vessel-builder.js'

export const radioOf = (vessel: Vessel): RadioResults => radioPass(vessel, bases[vessel.basis], { routing: routingPass(vessel) })
export const idsOf = ({ findings }: RadioResults): readonly string[] => findings.map(({ id, subject }) => `${id} ${subject.id}`).toSorted()
export const reasonsOf = ({ notAssessed }: RadioResults, tag: string): readonly string[] => notAssessed.filter(({ subjectTag }) => subjectTag === tag).map(({ reason }) => reason)

export const aTransmitter = (given: Partial<Transmitter> = {}): Transmitter => ({ service: 'VHF voice', terminal: 'antenna', powerW: 25, frequencyMHz: 156.8, dutyPercent: null, ...given })
export const anAntenna = (given: Partial<Antenna> = {}): Antenna => ({ gainDbi: 3, fromMHz: 156, toMHz: 163, lengthM: null, vswrFactor: null, clearanceM: null, ...given })
export const aRadar = (given: Partial<Radar> = {}): Radar => ({
  frequencyMHz: 9410, peakPowerW: 4000, pulseUs: 0.7, repetitionHz: 600, gainDbi: 27, horizontalBeamDeg: 4, verticalBeamDeg: 25, meanPowerW: null, safeDistanceM: null, ...given,
})
export const aStructure = (tag: string, fromM: Structure['fromM'], toM: Structure['toM']): Structure => ({ tag, name: `Structure ${tag}`, fromM, toM, notes: null })
export const aPlace = (tag: string, positionM: StandingPlace['positionM'], headHeightM = 1.8): StandingPlace => ({ tag, name: `Place ${tag}`, zoneTag: null, positionM, headHeightM })

export const radio = (tag: string, given: Partial<Equipment> = {}): Equipment => anEquipment({ tag, kind: 'vhf transceiver', transmitters: [aTransmitter()], ...given })
export const whip = (tag: string, positionM: Equipment['positionM'] = null, antenna: Partial<Antenna> = {}): Equipment => anEquipment({ tag, kind: 'vhf antenna', positionM, antenna: anAntenna(antenna) })
export const gnss = (tag: string, positionM: Equipment['positionM'] = null): Equipment => anEquipment({ tag, kind: 'gnss antenna', positionM })
export const scanner = (tag: string, positionM: Equipment['positionM'], radar: Partial<Radar> = {}): Equipment => anEquipment({ tag, kind: 'radar scanner', positionM, radar: aRadar(radar) })
export const coax = (tag: string, from: string, to: string, given: Partial<Parameters<typeof aCable>[0]> = {}) => aCable({ tag, from, to, typeTag: 'C', carries: 'none', lengthM: 10, ...given })
export const stated: CableType = aCableType({ tag: 'C', use: 'coax', coax: { kind: null, attenuation: [{ frequencyMHz: 156.8, lossDbPer100M: 10 }, { frequencyMHz: 162, lossDbPer100M: 10.2 }] } })

/** One radio, its cable and its antenna; lists given stand beside them. */
export const radioBoat = ({ equipment = [], cables = [], cableTypes = [], ...given }: Partial<Vessel> = {}, antenna: Partial<Antenna> = {}, positionM: Equipment['positionM'] = [4, 0, 4]): Vessel => aVessel({
  equipment: [radio('T1'), whip('T11', positionM, antenna), ...equipment],
  cables: [coax('W1', 'T1:antenna', 'T11:coax'), ...cables],
  cableTypes: [stated, ...cableTypes],
  ...given,
})
