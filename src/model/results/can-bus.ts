/** CAN buses: lengths, supply, load, terminators, instances, and what room is left. */
import type { Finding } from '../../findings/finding.js'
import type { Quantities } from '../../units/quantity.js'
import type { Comparison, Computed, Outcome } from '../results.js'
import type { BackboneElement, BusCable, BusMessage, CanBus, Equipment, Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface CanBusResults {
  readonly byBus: ReadonlyMap<Tag, BusResult>
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export interface BusResult {
  readonly bus: CanBus
  readonly backbone: Backbone
  /** Cables that do not end where the backbone has them, or that it leaves out, in words. */
  readonly disorders: readonly string[]
  readonly lengths: BusLengths
  readonly termination: BusTermination
  readonly supply: BusSupply
  readonly load: BusLoad
  readonly alike: readonly AlikeSenders[]
  readonly room: BusRoom
  readonly readings: readonly BusReading[]
}

// --- the backbone as built -------------------------------------------------------------------------------------------
/** `spans[i]` leads to station i; one more leads on from the last, to an end that is not recorded. */
export interface Backbone {
  readonly stations: readonly Station[]
  readonly spans: readonly (readonly BusSegment[])[]
}
export interface Station {
  readonly part: Exclude<BackboneElement, { kind: 'segment' }>
  /** On the drop of a tee, in use. */
  readonly device: BusDevice | null
  readonly drop: BusSegment | null
}
/** A cable of the backbone or of a drop. */
export interface BusSegment {
  readonly cableTag: Tag
  readonly lengthM: number | null
  readonly busCable: BusCable | null
  readonly resistanceOhmPerM: number | null
}
export interface BusDevice {
  readonly tag: Tag
  readonly teeTag: Tag
  /** Which of its connectors is on this bus; null where it is not known. */
  readonly terminal: string | null
  readonly loadEquivalencyNumber: number | null
  /** The sum by which the number follows from its current, where none is recorded. */
  readonly lenByCurrent: Computed<{ currentA: number }, { loadEquivalencyNumber: number }> | null
  /** Null where none is recorded; then it is 0. */
  readonly instanceNumber: number | null
  readonly sends: readonly BusMessage[]
  readonly forwards: Equipment['forwards']
}

// --- lengths and terminators -----------------------------------------------------------------------------------------
export type BackboneLengthOutcome = Outcome<
  { cableLengthM: number; firstDropM: number; firstDistanceM: number; lastDropM: number; lastDistanceM: number }, { backboneLengthM: number }
>
export interface BusLengths {
  readonly backbone: BackboneLengthOutcome
  /** Null where the kind of its cable is not known. */
  readonly backboneComparison: Comparison | null
  /** The longest first. */
  readonly drops: readonly { readonly teeTag: Tag; readonly cableTag: Tag; readonly comparison: Comparison }[]
  /** Of the drops whose length is known. */
  readonly dropsTogetherM: number
  readonly dropsComparison: Comparison | null
  readonly devices: Comparison
  readonly missing: readonly string[]
}

export interface BusTermination {
  readonly terminatorTags: readonly Tag[]
  /** One at each end, and no other. */
  readonly asItShouldBe: boolean
  readonly expected: Outcome<{ terminatorCount: number; terminatorResistanceOhm: number }, { resistanceOhm: number }>
}

// --- supply ----------------------------------------------------------------------------------------------------------
export type StretchDrop = Computed<{ resistanceOhmPerM: number; lengthM: number; currentA: number }, { voltageDropV: number }>
export interface BusSupply {
  /** False: its devices are supplied elsewhere. */
  readonly suppliesDevices: boolean
  /** Between the ends and the power isolators. */
  readonly sections: readonly SupplySection[]
}
export type Side = 'towards the first end' | 'towards the last end'
export interface SupplySection {
  /** Positions of its first and last station. */
  readonly from: number
  readonly to: number
  readonly insertionTags: readonly Tag[]
  readonly deviceCount: number
  /** Of those known. */
  readonly loadEquivalencyNumber: number
  /** Why the supply of this section is not assessed, one reason each. */
  readonly missing: readonly string[]
  readonly solved: SolvedSection | null
}
export interface SolvedSection {
  readonly insertion: Insertion
  readonly current: Computed<{ loadEquivalencyNumber: number }, { currentA: number }>
  readonly legs: readonly Leg[]
  readonly tees: readonly TeeSupply[]
  /** The tee that has least left of its drop limit. */
  readonly worst: TeeSupply | null
  /** The current of all devices against the rating of the protective device; null where there is none to hold it against. */
  readonly againstProtection: Comparison | null
  /** The rating against what the supply pair may carry. */
  readonly protection: Comparison | null
}
export interface Insertion {
  readonly tag: Tag
  readonly position: number
  readonly circuitTag: Tag | null
  /** Null where neither a voltage is given nor the drop of the circuit known. */
  readonly voltageV: number | null
  readonly nominalVoltageV: number | null
  /** What the circuit loses up to here; null where a voltage is given, or where it is not known. */
  readonly feedDropV: number | null
  /** Of its circuit up to the source, out and back: what it loses more with each ampere that is added. Null as the drop. */
  readonly feedResistanceOhm: number | null
  readonly regulated: boolean
  readonly highest: Comparison | null
  readonly missing: string | null
}
/** One way along the backbone from the insertion. */
export interface Leg {
  readonly side: Side
  readonly loadEquivalencyNumber: number
  /** To the last device. */
  readonly lengthM: number
  /** Sum of each device's number times its distance: alike on both legs where the insertion is in the middle of the load. */
  readonly momentLenM: number
  /** By the guides; null where the leg has no device. */
  readonly lumped: Computed<{ loadEquivalencyNumber: number; lengthM: number; resistanceOhmPerM: number }, { voltageDropV: number }> | null
  readonly stretches: readonly Stretch[]
}
export interface Stretch {
  readonly cableTag: Tag
  /** The stations at its ends, from the insertion outwards. */
  readonly nearTag: Tag
  readonly farTag: Tag
  readonly loadEquivalencyNumber: number
  readonly drop: StretchDrop
  /** From the insertion to its far end. */
  readonly totalDropV: number
  /** Null where the kind of the cable is not known. */
  readonly current: Comparison | null
}
export interface TeeSupply {
  readonly position: number
  readonly tag: Tag
  readonly side: Side
  readonly distanceM: number
  readonly loopResistanceOhm: number
  readonly dropV: number
  readonly drop: Comparison
  readonly voltageV: number | null
  /** At its device, past the drop cable; null where it has none or something is not known. */
  readonly device: { readonly tag: Tag; readonly dropCable: StretchDrop | null; readonly voltageV: number; readonly lowest: Comparison } | null
}

// --- load ------------------------------------------------------------------------------------------------------------
export interface BusLoad {
  /** What its own devices send, then what bridges bring. */
  readonly messages: readonly MessageLoad[]
  readonly devices: readonly DeviceLoad[]
  readonly total: Outcome<{ nominalBitPerS: number; worstBitPerS: number; capacityBitPerS: number }, { nominalLoadPercent: number; worstLoadPercent: number }>
  readonly comparison: Comparison
  /** Nothing that they send is recorded, so the sum is the least that it can be. */
  readonly silentTags: readonly Tag[]
  readonly missing: readonly string[]
}
export interface MessageLoad {
  readonly senderTag: Tag
  readonly pgnNumber: number
  readonly name: string | null
  /** The bridges that bring it here from the sender's bus; none where it is sent on this bus. */
  readonly throughTags: readonly Tag[]
  readonly timesCount: number
  /** The first instance in the data, counted up by `timesCount`. */
  readonly instanceNumber: number
  readonly intervalMs: number | null
  readonly payloadByteCount: number | null
  /** `on event`: counts nothing. */
  readonly rate: 'as recorded' | 'usual' | 'on event' | 'not known'
  readonly load: Outcome<
    { timesCount: number; frameCount: number; intervalMs: number; nominalBitCount: number; worstBitCount: number },
    { framesPerS: number; nominalBitPerS: number; worstBitPerS: number }
  >
}
export interface DeviceLoad {
  readonly tag: Tag
  readonly throughTags: readonly Tag[]
  readonly framesPerS: number
  readonly nominalBitPerS: number
  readonly worstBitPerS: number
}
/** Two devices that nobody can tell apart by what they send. */
export interface AlikeSenders {
  readonly tags: readonly [Tag, Tag]
  readonly instanceNumber: number
  readonly pgnNumbers: readonly number[]
  /** Whether the data themselves say which engine or tank they are about. */
  readonly inData: boolean
}

// --- room and readings -----------------------------------------------------------------------------------------------
export interface BusRoom {
  readonly devicesLeft: number
  readonly dropsLeftM: number | null
  readonly loadLeftPercent: number | null
  readonly freeTeeTags: readonly Tag[]
  readonly tees: readonly TeeRoom[]
  /** Why there is no figure for the tees of a section. */
  readonly missing: readonly string[]
}
export interface TeeRoom {
  readonly tag: Tag
  readonly free: boolean
  /** The largest load equivalency number of one more device there: what the bus can give, and at most what one device may take. */
  readonly lenLeftNumber: number
  /** Which limit of the bus has least left there, with its sum; null where none is known. */
  readonly governed: { readonly words: string; readonly by: Computed<Quantities, { lenLeftNumber: number }> } | null
}
export interface BusReading {
  readonly number: string
  readonly date: string | null
  readonly atTag: Tag | null
  readonly quantity: 'resistanceOhm' | 'busLoadPercent' | 'voltageV'
  readonly measured: number
  readonly calculated: number | null
  /** Against what a device needs, and against what was calculated; none where nothing can be said. */
  readonly limits: readonly Comparison[]
  readonly tolerances: readonly Comparison[]
  /** Of a voltage: what is left by the sum, from which source voltage, and what was at the source at the reading. */
  readonly from: { readonly leftV: number; readonly nominalVoltageV: number | null; readonly sourceVoltageV: number | null } | null
  readonly agrees: boolean | null
  /** What a deviation usually means, or why nothing can be said. */
  readonly words: string | null
  /** Number of a later reading of the same at the same place; it counts in place of this one. */
  readonly supersededBy: string | null
}
