/** Radio: losses, range, antennas too near one another, exposure, standing waves, sight of the sky. */
import type { Finding, Limit } from '../../findings/finding.js'
import type { Comparison, Outcome } from '../results.js'
import type { Quantities } from '../../units/quantity.js'
import type { Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface RadioResults {
  readonly chains: readonly RadioChain[]
  readonly antennas: readonly AntennaUse[]
  readonly ranges: readonly OwnRange[]
  readonly separations: readonly Separation[]
  readonly radars: readonly RadarBeam[]
  readonly exposures: readonly Exposure[]
  readonly skies: readonly SkyView[]
  readonly standingWaves: readonly StandingWaveCheck[]
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

/** One transmitter with its way to the antenna. */
export interface RadioChain {
  readonly itemTag: Tag
  readonly service: string
  readonly terminal: string | null
  readonly powerW: number
  readonly frequencyMHz: number
  /** Share of the time in which it transmits. */
  readonly dutyPercent: number
  /** Null where none is reached, or more than one. */
  readonly antennaTag: Tag | null
  /** Why there is no antenna. */
  readonly antennaGap: string | null
  readonly steps: readonly ChainStep[]
  /** Sum of the steps; null when the loss of one of them is not known. */
  readonly lossDb: number | null
  readonly comparison: Comparison | null
  readonly power: Outcome<{ powerW: number; lossDb: number }, { antennaPowerW: number }>
  readonly radiated: Outcome<{ antennaPowerW: number; gainDbi: number }, { radiatedPowerW: number }>
  /** Whether the antenna is made for the frequency; null when its range is not recorded. */
  readonly coversFrequency: boolean | null
}
export type ChainStep = CableStep | PortStep
export interface CableStep {
  readonly is: 'cable'
  readonly cableTag: Tag
  readonly attenuation: Attenuation
  readonly loss: Outcome<{ attenuationDbPer100M: number; cableLengthM: number; connectorCount: number; perConnectorDb: number }, { lossDb: number }>
}
/** Between two connectors of a splitter, filter or amplifier. */
export interface PortStep { readonly is: 'ports'; readonly itemTag: Tag; readonly fromTerminal: string; readonly toTerminal: string; readonly lossDb: number | null }
export type Attenuation =
  | { readonly status: 'stated'; readonly attenuationDbPer100M: number }
  | Outcome<Quantities, { attenuationDbPer100M: number }>

export const lossOf = (step: ChainStep): number | null => (step.is === 'ports' ? step.lossDb : step.loss.status === 'computed' ? step.loss.output.lossDb : null)

/** An antenna, or an item with one built in: what it serves and where its radiating part is. */
export interface AntennaUse {
  readonly tag: Tag
  readonly use: 'vhf' | 'gnss' | 'satellite' | 'other'
  /** Transmitters that reach it. */
  readonly servesTags: readonly Tag[]
  /** By what several of them share it; empty where nothing but cable joins them. */
  readonly splitterTags: readonly Tag[]
  readonly part: Part | null
}
/** A vertical stretch: a whip, or a person. Forward, to port, and from its foot to its top above the waterline; metres. */
export interface Part { readonly forwardM: number; readonly toPortM: number; readonly footM: number; readonly topM: number }
export const middleM = ({ footM, topM }: Part): number => (footM + topM) / 2

/** How far something on board reaches, by the usual heights of others. */
export interface OwnRange {
  readonly of: 'radio' | 'radar' | 'eye'
  readonly tag: Tag
  readonly heightM: number
  readonly to: readonly { readonly partnerKey: string; readonly outcome: Outcome<{ ownHeightM: number; otherHeightM: number }, { rangeNmi: number }> }[]
}

/** Two antennas, or an antenna and a radar scanner, and the rule on their distance. */
export interface Separation {
  readonly aTag: Tag
  readonly bTag: Tag
  readonly horizontalM: number
  /** 0 where they stand beside one another. */
  readonly verticalM: number
  readonly distanceM: number
  /** What is held against the limit. */
  readonly held: 'distance' | 'vertical' | 'horizontal'
  readonly comparison: Comparison
}

export interface RadarBeam {
  readonly tag: Tag
  readonly scannerHeightM: number | null
  readonly verticalBeamDeg: number | null
  readonly meets: readonly BeamMeeting[]
  /** Why nothing can be said of what it meets. */
  readonly gap: string | null
}
/** Where an antenna or a person is, seen from the scanner. */
export interface BeamMeeting {
  readonly tag: Tag
  readonly of: 'antenna' | 'person'
  readonly horizontalM: number
  readonly distanceM: number
  /** Of the nearest part to the middle of the beam, upwards positive. */
  readonly elevationDeg: number
  readonly inside: boolean
}

/** What a transmitter does to people: of an antenna that several share, the strongest of them. */
export interface Exposure {
  readonly of: 'antenna' | 'radar'
  readonly tag: Tag
  readonly itemTag: Tag
  readonly service: string
  readonly frequencyMHz: number | null
  /** Whether the loss of the cable is taken off. */
  readonly lossTakenOff: boolean
  readonly meanPower: Outcome<{ peakPowerW: number; pulseUs: number; repetitionHz: number }, { meanPowerW: number }> | null
  readonly radiated: Outcome<{ antennaPowerW: number; gainDbi: number }, { radiatedPowerW: number }>
  readonly rotating: Outcome<{ radiatedPowerW: number; horizontalBeamDeg: number }, { averagePowerW: number }> | null
  readonly distances: readonly ExposureRow[]
  /** What people are held against; null when nothing is known. */
  readonly deciding: Limit | null
  readonly dutyPercent: number
  readonly people: readonly ExposedPlace[]
  readonly gap: string | null
}
export interface ExposureRow {
  readonly title: string
  readonly people: 'general' | 'occupational'
  readonly averaging: string
  readonly limit: Limit
  /** Transmitting without a break; of a radar, its beam at rest. */
  readonly steady: ExposureOutcome
  /** With its duty; of a radar, turning. */
  readonly usual: ExposureOutcome | null
}
export type ExposureOutcome = Outcome<{ radiatedPowerW: number; groundFactor: number; limitWPerM2: number }, { exposureDistanceM: number }>
export interface ExposedPlace {
  readonly placeTag: Tag
  readonly distanceM: number
  /** Of a radar: whether some part of the person is in its beam. */
  readonly inBeam: boolean
  readonly comparison: Comparison
  /** Nearer than people should be: to a radar in its beam, or by its maker's word anywhere. */
  readonly tooNear: boolean
}

export interface SkyView {
  readonly tag: Tag
  readonly blockedPercent: number | null
  readonly sectors: readonly SkySector[]
  readonly comparison: Comparison | null
  /** The step along the horizon at which most is hidden by one structure, as an example of the sum; null where nothing is. */
  readonly example: { readonly bearingDeg: number; readonly outcome: Outcome<SkyShare, { blockedPercent: number }> } | null
  readonly gap: string | null
}
type SkyShare = { widthDeg: number; lowestElevationDeg: number; highestElevationDeg: number; skyFromElevationDeg: number }
/** Hidden without a break, clockwise from the bow. */
export interface SkySector {
  readonly fromDeg: number
  readonly toDeg: number
  readonly structureTags: readonly Tag[]
  readonly highestElevationDeg: number
  readonly blockedPercent: number
}

/** A measured voltage standing wave ratio. */
export interface StandingWaveCheck {
  readonly number: string
  readonly date: string | null
  readonly subjectTag: Tag
  /** Where it was read. */
  readonly readAtTag: Tag
  readonly antennaTag: Tag | null
  readonly readVswrFactor: number
  readonly limit: Limit
  readonly lossDb: number | null
  readonly reading: Outcome<{ vswrFactor: number }, { reflectionFactor: number; returnLossDb: number; mismatchLossDb: number; reflectedPercent: number }>
  /** What should be read at most. */
  readonly expected: Outcome<{ antennaVswrFactor: number; lossDb: number }, { readReturnLossDb: number; readVswrFactor: number }>
  readonly atAntenna: Outcome<{ readVswrFactor: number; lossDb: number }, { antennaReturnLossDb: number; antennaVswrFactor: number }>
  readonly verdict: 'within' | 'above limit' | 'hidden by loss' | 'not explained' | 'not assessed'
  readonly gap: string | null
  /** Number of the later reading of the same. */
  readonly supersededBy: string | null
}
