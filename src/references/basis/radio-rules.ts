/** Limits on antennas and their cables, alike for every basis. Passes only look up and compare. */
import type { Limit } from '../../findings/finding.js'
import { type Citation, commonPractice } from '../bibliography.js'


export const cableLoss: Limit = { relation: 'at most', value: 3, citation: commonPractice('half of the power reaches the antenna: 3 dB in cables, connectors and splitters') }
export const aisCableLossPreferred: Limit = { relation: 'at most', value: 1.5, citation: commonPractice('AIS: 1.5 dB preferred') }

/** Between the nearest points of two things, where neither maker nor ship rules say otherwise. */
export const practiceSeparation = {
  vhf: { relation: 'at least', value: 1.2, citation: commonPractice('VHF antennas 1.2 m from one another') },
  gnss: { relation: 'at least', value: 1, citation: commonPractice('GNSS antenna 1 m from a VHF antenna') },
  radar: { relation: 'at least', value: 1, citation: commonPractice('antennas 1 m from a radar scanner, and out of its beam') },
} as const satisfies Record<string, Limit>

/** Of the VHF antenna of an AIS of class A. */
export const shipSeparation = {
  vertical: { relation: 'at least', value: 2, citation: { source: 'imo-sn-circ-227', place: 'annex 2.2.1: directly above or below the main VHF antenna' } },
  horizontal: { relation: 'at least', value: 10, citation: { source: 'imo-sn-circ-227', place: 'annex 2.2.1: on the same level as the main VHF antenna' } },
  radar: { relation: 'at least', value: 3, citation: { source: 'imo-sn-circ-227', place: 'annex 2.2.1: from radar and other transmitters' } },
} as const satisfies Record<string, Limit>
/** Advice for ships, printed and not held against: small craft have not the room. */
export const gnssShipAdvice: Limit = { relation: 'at least', value: 3, citation: { source: 'ais-manuals', place: 'GNSS antenna from transmitters of high power, and out of their beams' } }
/** Off the line by no more counts as directly above or below. Our reading: the circular gives no tolerance. */
export const noOffsetM = 0.3
/** AIS of class A sends with 12.5 W, of class B with 5 W at most. From memory, ITU-R M.1371. */
export const classAFromW = 10

export const makersClearance: Citation = { source: 'makers-data', place: 'distance to other antennas' }

/** Of an antenna, where its maker states none. */
export const usualStandingWave: Limit = { relation: 'at most', value: 1.5, citation: { source: 'ais-manuals', place: 'VSWR below 1.5 from 156 to 163 MHz' } }
export const makersStandingWave: Citation = { source: 'makers-data', place: 'voltage standing wave ratio of the antenna' }

/** Nearer the horizon satellites are not used. */
export const skyFromElevationDeg = 5
export const skyCitation: Citation = { source: 'ais-manuals', place: 'view of the sky from 5° to 90°' }
/** Share of the sky that may be hidden: planning values. */
export const skyBlocked = {
  gnss: { relation: 'at most', value: 20, citation: commonPractice('planning value: 20 % of the sky for position') },
  satellite: { relation: 'at most', value: 10, citation: commonPractice('planning value: 10 % of the sky for an antenna that follows one satellite') },
} as const satisfies Record<string, Limit>
