/** How much cable of each type was laid, how much to buy, what is terminated where, and the parts that the data tell of. */
import type { Finding } from '../../findings/finding.js'
import type { ConductorSize } from '../../units/conductor-size.js'
import type { Outcome } from '../results.js'
import type { CableUse, Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface CableBillResults {
  /** In the order of the data; types of which there is no cable are left out. */
  readonly types: readonly CableTypeBill[]
  /** Cables that are in no type's sum, or in it without their length. */
  readonly outside: readonly CableOutside[]
  /** Zone of everything that a cable or a serial wire ends at, or that is part of a CAN backbone; null: not recorded. */
  readonly zoneByTag: ReadonlyMap<Tag, Tag | null>
  readonly conductorEnds: readonly ConductorEnds[]
  readonly plugs: readonly Plugs[]
  readonly busParts: readonly BusParts[]
  readonly devices: readonly DeviceCount[]
  /** Of fuses, how many to carry. */
  readonly spareFuses: readonly SpareFuses[]
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export interface CableTypeBill {
  readonly typeTag: Tag
  readonly cableCount: number
  /** Lengths to be cut: conductors in parallel under one tag are as many. */
  readonly pieceCount: number
  /** What is laid and what is planned together, without the cables whose length is not known. */
  readonly all: CableOrder
  /** Of it, the cables that are only planned. */
  readonly planned: CableOrder
  /** Of single-core cable, by what it is for, since each is a drum of its own colour; of others null. */
  readonly byConductor: { readonly positiveLengthM: number; readonly negativeLengthM: number; readonly otherLengthM: number } | null
  /** The longest length in one piece; null when none is known. */
  readonly longest: { readonly cableTag: Tag; readonly pieceLengthM: number } | null
  readonly unknownLengthTags: readonly Tag[]
}
export interface CableOrder {
  readonly cableCount: number
  readonly laidLengthM: number
  readonly order: Outcome<{ laidLengthM: number; sparePercent: number; stepM: number }, { orderLengthM: number }>
}
export interface CableOutside { readonly cableTag: Tag; readonly typeTag: Tag | null; readonly lengthM: number | null; readonly reason: string }

/** Ends of conductors, each of which takes a lug, a ferrule or a contact. */
export interface ConductorEnds { readonly use: CableUse; readonly size: ConductorSize; readonly endCount: number }

/** Connectors on the ends of coaxial and network cable. */
export interface Plugs {
  readonly typeTag: Tag
  readonly use: 'coax' | 'ethernet'
  readonly connectorCount: number
  /** Of them, those taken to be one at each end because their number is not recorded. */
  readonly assumedCount: number
}

export interface BusParts {
  readonly busTag: Tag
  readonly teeCount: number
  readonly powerTeeCount: number
  readonly terminatorCount: number
  readonly isolatorCount: number
  readonly dropCount: number
}

/** Fuses and breakers of one kind and rating; channels of switching modules are none. */
export interface DeviceCount {
  readonly device: string
  readonly ratedCurrentA: number
  /** Poles, where they are recorded. */
  readonly polesCount: number | null
  readonly inPanelCount: number
  /** Not in a way of a panel: each needs a holder or an enclosure of its own. */
  readonly aloneCount: number
}

/** Fuses of one type and rating: where they are, and how many to carry. */
export interface SpareFuses { readonly device: string; readonly ratedCurrentA: number; readonly circuitTags: readonly Tag[]; readonly spareCount: number }
