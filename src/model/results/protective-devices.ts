/** Device by device: where it sits, what it must break, in which order devices trip; conductors without one. */
import type { Finding } from '../../findings/finding.js'
import type { Citation } from '../../references/bibliography.js'
import type { Comparison, Outcome } from '../results.js'
import type { Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface ProtectiveDevicesResults {
  readonly byBattery: ReadonlyMap<Tag, BatteryFault>
  /** Each battery, positive busbar, panel, and each output of equipment that feeds circuits (`T1:ac-out` where it is named). */
  readonly byPoint: ReadonlyMap<string, Prospective>
  /** Each circuit that has a protective device. */
  readonly byCircuit: ReadonlyMap<Tag, DeviceCheck>
  /** Live conductors ahead of a circuit's device, or of a circuit or on no circuit without one. */
  readonly exposed: readonly ExposedConductor[]
  /** Each panel, and each positive busbar. */
  readonly byPanel: ReadonlyMap<Tag, PanelCheck>
  /** Switches, isolators and what else a circuit goes through, with a rating or in need of one. */
  readonly switches: readonly SwitchCheck[]
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
/** `currentA`: the largest in any cable at it; null when it is not known. */
export interface SwitchCheck { readonly tag: Tag; readonly ratedCurrentA: number | null; readonly currentA: number | null; readonly comparison: Comparison | null }

// --- prospective current ---------------------------------------------------------------------------------------------
/** What stands behind a battery's short-circuit current. */
export interface BatteryFault {
  readonly openCircuitVoltage: Outcome<{ cellCount: number; cellVoltageV: number }, { openCircuitVoltageV: number }>
  readonly internalResistance: Outcome<Readonly<Record<string, number>>, { internalResistanceMilliOhm: number }> | { readonly status: 'recorded'; readonly internalResistanceMilliOhm: number }
  /** Charging sources of its system, with what each adds to a fault. */
  readonly otherSources: readonly OtherSource[]
}
/** `from`: its stated short-circuit current; else the current that it puts in, which it does not exceed by much. */
export interface OtherSource { readonly tag: Tag; readonly currentA: number | null; readonly from: 'short-circuit current' | 'rated current' }

export interface Prospective {
  readonly sourceTag: Tag | null
  /** Conductors between the source and the place, each with its resistance out and back. */
  readonly steps: readonly LoopStep[]
  /** `stated`: that of the output, or what a table assumes for it; conductors, which only make it smaller, are not counted. */
  readonly current:
    | Outcome<{ openCircuitVoltageV: number; internalResistanceMilliOhm: number; conductorResistanceMilliOhm: number; otherSourcesCurrentA: number }, { prospectiveShortCircuitCurrentA: number }>
    | { readonly status: 'stated'; readonly prospectiveShortCircuitCurrentA: number; readonly citation: Citation }
  /** Conductors that could not be counted, and why: without them the current comes out too large, never too small. */
  readonly leftOut: readonly string[]
}
export interface LoopStep {
  readonly circuitTag: Tag
  readonly cableTag: Tag
  readonly resistance: Outcome<{ conductorLengthM: number; crossSectionMm2: number; parallelCount: number }, { conductorResistanceMilliOhm: number }>
  readonly returnAssumedAlike: boolean
}
/** The current in amperes, or null when it could not be worked out. */
export function prospectiveA(prospective: Prospective | undefined): number | null {
  if (prospective === undefined || prospective.current.status === 'not computed') return null
  return prospective.current.status === 'stated' ? prospective.current.prospectiveShortCircuitCurrentA : prospective.current.output.prospectiveShortCircuitCurrentA
}

// --- devices ---------------------------------------------------------------------------------------------------------
export interface DeviceCheck {
  readonly prospective: Prospective
  readonly capability: Capability
  readonly againstCurrent: Comparison | null
  /** By the class of what supplies it; null where the basis has none for it. */
  readonly againstClass: Comparison | null
  readonly againstVoltage: Comparison | null
  readonly distance: DeviceDistance
  /** Against the next device above it; null where there is none. */
  readonly order: RatingOrder | null
  readonly motors: readonly MotorCheck[]
  /** Null where nothing is recorded to run on and on. */
  readonly continuous: ContinuousCheck | null
  /** Current put in by charging sources against its rating; null where nothing is put in, or it is not known. */
  readonly charging: Comparison | null
  readonly notAssessed: readonly DeviceGap[]
}
export interface DeviceGap { readonly about: 'interrupting' | 'distance' | 'start' | 'charging'; readonly reason: string }

/** As recorded, else by its type; null where neither tells. */
export interface Capability {
  readonly interruptingCapacityA: number | null
  readonly voltageRatingV: number | null
  readonly from: 'recorded' | 'type' | 'unknown'
}

export interface DeviceDistance {
  readonly distanceMm: number | null
  readonly from: 'panel' | 'source' | 'measured' | 'cables' | 'unknown'
  /** The device above whose rating the cables in between can carry: they are protected, and the distance does not matter. */
  readonly protectedByTag: Tag | null
  readonly comparison: Comparison | null
}

export interface RatingOrder {
  readonly aboveTag: Tag
  readonly ratio: Outcome<{ upstreamRatedA: number; downstreamRatedA: number }, { ratioFactor: number }>
  /** Both are fuses of one type. */
  readonly likeFuses: boolean
  readonly comparison: Comparison
}

/** Alike counts as not falling: either of the two may open. */
export const doesNotFall = ({ ratio }: RatingOrder): boolean => ratio.status === 'computed' && ratio.output.ratioFactor <= 1

export interface MotorCheck {
  readonly loadTag: Tag
  /** A fuse holder of its own lies in its way; what it holds is not recorded. */
  readonly ownFuse: boolean
  readonly makersFuseA: number | null
  readonly againstMakers: 'equal' | 'above' | 'below' | null
  /** While it starts and the others run; null where no starting current is recorded. */
  readonly starting: Outcome<{ startingCurrentA: number; otherCurrentA: number }, { highestCurrentA: number }> | null
  /** True: the rating is not exceeded while it starts. Null: only the time-current curve could tell. */
  readonly carriesStart: boolean | null
  /** The land rule for d.c. motors, where the maker states no value; advice. */
  readonly advice: Outcome<{ runningCurrentA: number; ratingFactor: number }, { highestRatedCurrentA: number }> | null
}

export interface ContinuousCheck {
  readonly modeTag: Tag
  readonly loadTags: readonly Tag[]
  readonly least: Outcome<{ continuousCurrentA: number; ratingFactor: number }, { leastRatedCurrentA: number }>
  readonly comparison: Comparison | null
}

// --- conductors and panels -------------------------------------------------------------------------------------------
export interface ExposedConductor {
  readonly cableTag: Tag
  /** Null: it is on no circuit. */
  readonly circuitTag: Tag | null
  /** Battery, busbar, panel or source from which it is live. */
  readonly fromTag: Tag
  readonly lengthM: number | null
  readonly state: 'exempt' | 'protected above' | 'within distance' | 'beyond distance' | 'distance not known' | 'unprotected' | 'on no circuit'
  /** Why, in words; null where the state says all. */
  readonly because: string | null
}

export interface PanelCheck {
  readonly kind: 'panel' | 'busbar'
  readonly ratedCurrentA: number | null
  readonly feeders: readonly PanelFeeder[]
}
export interface PanelFeeder {
  readonly circuitTag: Tag
  /** Rating of the feeder's device; null where it has none. */
  readonly protection: Comparison | null
  /** The larger of what is drawn and what is put in; null where it is not known. */
  readonly current: Comparison | null
}
