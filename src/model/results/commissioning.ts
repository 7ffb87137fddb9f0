/** Measured values held against calculated ones. */
import type { Finding, Limit } from '../../findings/finding.js'
import type { Comparison, Outcome } from '../results.js'
import type { Tag } from '../vessel.js'
import type { Gap } from './gap.js'
import type { RadioChain, StandingWaveCheck } from './radio.js'

export interface CommissioningResults {
  /** Every value of every reading, in the order of the readings. */
  readonly checks: readonly ReadingCheck[]
  readonly coverage: Coverage
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export type CheckKind =
  | 'voltage drop' | 'voltage' | 'current' | 'insulation resistance' | 'polarity' | 'trip current' | 'trip time' | 'internal resistance'
  // Worked out with the buses and the radios, and only listed here.
  | 'resistance between data wires' | 'voltage on a bus' | 'load of a bus' | 'standing wave ratio'

/**
 * Which way a reading is off: against what was calculated or recorded, else against its limit.
 * `too high as calculated`: the calculation says so too.
 */
export type Deviation = 'above' | 'below' | 'reversed' | 'too high as calculated'

/** One value of a reading. */
export interface ReadingCheck {
  readonly kind: CheckKind
  /** Number of the reading. */
  readonly number: string
  readonly date: string | null
  readonly subjectTag: Tag
  /** The load it was read at, where there is one. */
  readonly loadTag: Tag | null
  readonly measured: Measured
  /** What it should be, from … to; null where there is no such figure. */
  readonly calculated: { readonly quantity: string; readonly least: number; readonly most: number } | null
  /** Against what a rule or a maker asks for. */
  readonly limits: readonly Comparison[]
  /** Against what was calculated or recorded, with its tolerance. */
  readonly tolerances: readonly Comparison[]
  /** The calculations behind it. */
  readonly workings: readonly Outcome[]
  readonly deviation: Deviation | null
  /** What that usually means; common practice. */
  readonly meaning: Meaning | null
  /** What could not be held against anything, one reason each. */
  readonly gaps: readonly string[]
  /** Number of a later reading of the same; it counts in place of this one. */
  readonly supersededBy: string | null
}
export interface Meaning {
  /** The likeliest first. */
  readonly usually: readonly string[]
  /** One instruction. */
  readonly lookFirst: string
}
export type Measured =
  /** `difference`: the two voltages that it is the difference of. */
  | { readonly quantity: string; readonly value: number; readonly difference?: readonly [number, number] }
  | { readonly words: 'right' | 'reversed' }

/** Whether it was held against anything. */
export const isAssessed = ({ measured, limits, tolerances }: Pick<ReadingCheck, 'measured' | 'limits' | 'tolerances'>): boolean =>
  'words' in measured || limits.length + tolerances.length > 0

/** How far the boat has been measured. */
export interface Coverage {
  readonly circuits: readonly MeasuredCircuit[]
  readonly batteries: readonly MeasuredBattery[]
  /** Residual-current devices: circuits whose protection is one, and equipment. */
  readonly residualDevices: readonly MeasuredResidualDevice[]
  readonly buses: readonly MeasuredThing[]
  readonly transmitters: readonly MeasuredTransmitter[]
}
/** With what is expected of it, for the test sheet; null where that is not known. */
export interface MeasuredCircuit extends MeasuredThing {
  readonly insulation: { readonly testVoltageV: number; readonly minimumInsulationMOhm: number } | null
  /** Voltage lost on the way to each load at the design current: this circuit alone, and with all that its feeders carry. */
  readonly drops: readonly { readonly loadTag: Tag; readonly leastDropV: number; readonly mostDropV: number }[]
}
export interface MeasuredBattery extends MeasuredThing { readonly internalResistanceMilliOhm: number | null }
export interface MeasuredResidualDevice extends MeasuredThing {
  readonly tripCurrent: { readonly leastTripCurrentA: number; readonly mostTripCurrentA: number } | null
  readonly tripTimeMs: number | null
}
/** A connector of a radio, with what is to be read there. */
export interface MeasuredTransmitter extends MeasuredThing {
  readonly chain: RadioChain
  /** Of the antenna. */
  readonly limit: Limit
  readonly mayRead: StandingWaveCheck['expected']
}
export interface MeasuredThing {
  readonly tag: Tag
  /** Readings that are about it. */
  readonly numbers: readonly string[]
  /** Kinds of which nothing has been read yet that could be assessed. */
  readonly missing: readonly CheckKind[]
}
