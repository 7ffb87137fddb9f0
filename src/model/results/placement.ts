/** Placement: compasses, transducers, navigation lights, radar, mass and moments. */
import type { Finding } from '../../findings/finding.js'
import type { Citation } from '../../references/bibliography.js'
import type { Comparison, Computed, Outcome } from '../results.js'
import type { CompassClass, DepthOffset, NavigationLightKind, Position, Tag } from '../vessel.js'
import type { Gap } from './gap.js'
import type { Sector } from './sector.js'

export interface PlacementResults {
  readonly compasses: readonly CompassPlacement[]
  readonly lights: LightsPlacement
  readonly radars: readonly RadarPlacement[]
  readonly transducers: readonly TransducerPlacement[]
  /** What an AIS transceiver is told when it takes its position from here. */
  readonly positionReferences: readonly PositionReference[]
  /** Null where no mass is recorded. */
  readonly moments: MomentResults | null
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

// --- compasses -------------------------------------------------------------------------------------------------------
export interface CompassPlacement {
  readonly tag: Tag
  readonly compassClass: Exclude<CompassClass, 'none'>
  /** What a thing at its safe distance may turn it by. */
  readonly deviation: Outcome<{ deviationAt1MicroTDeg: number; horizontalFieldMicroT: number }, { permittedDeviationDeg: number }>
  /** Least margin first. */
  readonly pairs: readonly CompassPair[]
  /** Of kinds that hold iron, magnets or strong currents, closer than what to keep where nothing is declared; nearest first. */
  readonly undeclared: readonly { readonly tag: Tag; readonly distanceM: number }[]
  /** Direct current in a cable of its own, in or through the compass's zone. */
  readonly singleConductors: readonly SingleConductor[]
}
export interface CompassPair {
  readonly itemTag: Tag
  /** Which of the distances that its maker declares it is held against. */
  readonly declaredFor: 'standard' | 'steering'
  readonly distance: Computed<{ forwardM: number; toPortM: number; upM: number }, { distanceM: number }>
  readonly comparison: Comparison
}
export interface SingleConductor {
  readonly cableTag: Tag
  /** How far it would have to be from the compass if its way back were not beside it. */
  readonly distance: Outcome<{ currentA: number; deviationAt1MicroTDeg: number }, { fieldMicroT: number; distanceM: number; keptDistanceM: number }>
}

// --- navigation lights -----------------------------------------------------------------------------------------------
export type LengthClass = 'under 12 m' | '12 m to under 20 m' | '20 m to under 50 m' | '50 m and over'
export interface LightsPlacement {
  readonly lengthClass: LengthClass | null
  readonly required: readonly RequiredLight[]
  readonly lights: readonly LightPlacement[]
}
export interface RequiredLight {
  readonly when: 'under power' | 'under sail' | 'at anchor'
  readonly what: string
  readonly citation: Citation
  readonly state: 'there' | 'missing' | 'not assessed'
  /** The lights that make it up. */
  readonly tags: readonly Tag[]
}
export interface LightPlacement {
  readonly tag: Tag
  readonly kind: NavigationLightKind
  readonly sector: Sector
  readonly range: Comparison | null
  /** What the range that is required comes to in candela. */
  readonly intensity: Outcome<{ rangeNmi: number }, { intensityCd: number }> | null
  readonly intensityComparison: Comparison | null
  /** As recorded, against what its kind shows. */
  readonly arc: { readonly arcDeg: number; readonly ruleArcDeg: number; readonly alike: boolean } | null
  /** Heights and places against other lights and the hull. */
  readonly places: readonly PlaceCheck[]
  readonly onWrongSide: boolean
  /** Null where it is not assessed. */
  readonly obscured: Obscured | null
}
export interface PlaceCheck { readonly words: string; readonly comparison: Comparison }
export interface Obscured {
  readonly by: readonly { readonly structureTag: Tag; readonly sectors: readonly Sector[] }[]
  /** Together, where it must show. */
  readonly sectors: readonly Sector[]
  readonly comparison: Comparison
}

// --- radar -----------------------------------------------------------------------------------------------------------
export interface RadarPlacement {
  readonly tag: Tag
  readonly blindDistance: Outcome<{ heightM: number; verticalBeamDeg: number }, { blindDistanceM: number }>
  /** Null where it is not assessed. */
  readonly blind: { readonly by: Obscured['by']; readonly sectors: readonly Sector[]; readonly ahead: boolean } | null
}

// --- transducers -----------------------------------------------------------------------------------------------------
export interface TransducerPlacement {
  readonly tag: Tag
  /** By depth below it, fore and aft and across. */
  readonly footprints: readonly { readonly depthM: number; readonly along: Footprint; readonly across: Footprint }[]
  /** What to set, by what is to be read. */
  readonly expected: readonly { readonly reads: DepthOffset['reads']; readonly offset: ExpectedOffset }[]
  readonly configured: ConfiguredOffset | null
}
export type Footprint = Outcome<{ depthM: number; beamDeg: number }, { diameterM: number }>
export type ExpectedOffset = Outcome<{ transducerDepthM: number; referenceDepthM: number }, { expectedOffsetM: number }>
export interface ConfiguredOffset extends DepthOffset {
  readonly signFits: boolean
  readonly error: Outcome<{ offsetM: number; expectedOffsetM: number }, { depthErrorM: number }>
  /** The error, without its sign, against what is tolerated. */
  readonly comparison: Comparison | null
  /** What is shown, and what would be right, where the transducer measures so much. */
  readonly example: { readonly shown: ShownDepth; readonly right: ShownDepth | null }
}
export type ShownDepth = Outcome<{ measuredDepthM: number; offsetM: number }, { shownDepthM: number }>

export interface PositionReference {
  readonly tag: Tag
  readonly dimensions: Outcome<{ lengthM: number; beamM: number; forwardM: number; toPortM: number }, { bowM: number; sternM: number; portM: number; starboardM: number }>
}

// --- mass and moments ------------------------------------------------------------------------------------------------
export interface MomentResults {
  readonly parts: readonly MomentPart[]
  readonly withoutMassTags: readonly Tag[]
  /** With a mass and without a position. */
  readonly withoutPlace: readonly { readonly tag: Tag; readonly massKg: number }[]
  readonly centre: Outcome<{ massKg: number; forwardMomentKgM: number; portMomentKgM: number; upMomentKgM: number }, { forwardM: number; toPortM: number; upM: number }>
  readonly shift: Outcome<
    { massKg: number; referenceMassKg: number; fitForwardM: number; fitToPortM: number; fitUpM: number; vesselForwardM: number; vesselToPortM: number; vesselUpM: number },
    { shiftForwardM: number; shiftToPortM: number; shiftUpM: number }
  >
  readonly heel: Outcome<{ portMomentKgM: number; displacementKg: number; metacentricHeightM: number }, { heelDeg: number }>
  readonly heelComparison: Comparison | null
}
export interface MomentPart {
  readonly tag: Tag
  readonly massKg: number
  readonly positionM: Position
  readonly forwardMomentKgM: number
  readonly portMomentKgM: number
  readonly upMomentKgM: number
}
