/** What matters where on the boat a thing stands: lights, transducers, compasses, structures, people. */
import type { Tag } from '../vessel.js'

/** Forward of the transom, to port of the centreline, above the waterline; metres. */
export type Position = readonly [number, number, number]

/** `none`: it finds north without magnetism. */
export type CompassClass = 'standard' | 'steering' | 'flux-gate' | 'none'

export type NavigationLightKind =
  | 'masthead' | 'port side' | 'starboard side' | 'both sides' | 'stern' | 'tricolour'
  | 'all-round white' | 'all-round red' | 'all-round green' | 'all-round yellow' | 'towing'
export interface NavigationLight {
  readonly kind: NavigationLightKind
  readonly rangeNmi: number | null
  readonly arcDeg: number | null
  readonly intensityCd: number | null
}

export interface Transducer {
  readonly frequencyKHz: number | null
  readonly powerW: number | null
  /** Full angle of its beam, and across the boat where that differs. */
  readonly beamDeg: number | null
  readonly beamAcrossDeg: number | null
  /** Nothing nearer is seen. */
  readonly blindM: number | null
  readonly depthOffset: DepthOffset | null
}
export interface DepthOffset {
  /** What is read with it. */
  readonly reads: 'below waterline' | 'below keel' | 'below transducer'
  /** As configured: positive up to the waterline, negative down to the keel. */
  readonly offsetM: number
}

/** A mast, arch, funnel or deckhouse that stands in the way of beams, lights and the sky. */
export interface Structure {
  readonly tag: Tag
  readonly name: string
  /** Two opposite corners of the box that it fills. */
  readonly fromM: Position
  readonly toM: Position
  readonly notes: string | null
}

/** Where people stand, sit or sleep. */
export interface StandingPlace {
  readonly tag: Tag
  readonly name: string
  readonly zoneTag: Tag | null
  /** Of the deck or seat. */
  readonly positionM: Position
  /** Of the head above it. */
  readonly headHeightM: number
}

export interface Stability {
  readonly centreOfGravityM: Position | null
  readonly metacentricHeightM: number | null
  /** Whether the displacement given counts what this data folder lists. */
  readonly includesEquipment: boolean | null
  readonly gunwaleHeightM: number | null
}
