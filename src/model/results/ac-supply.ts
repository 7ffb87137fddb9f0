/** Mains voltage: shore connection, generator and inverter, how they are switched, residual-current protection, earth and polarity. */
import type { Finding } from '../../findings/finding.js'
import type { Comparison, Outcome } from '../results.js'
import type { Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface AcSupplyResults {
  readonly sources: readonly AcSource[]
  /** Panels and busbars that several a.c. circuits feed. */
  readonly buses: readonly AcBus[]
  readonly sockets: readonly SocketCheck[]
  readonly residualDevices: readonly ResidualDevice[]
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

/** How a requirement stands, in words. */
export interface Requirement {
  readonly state: 'met' | 'missed' | 'doubtful' | 'not assessed' | 'not required'
  readonly words: string
  readonly comparison: Comparison | null
}

/** One a.c. output of an item. */
export interface AcSource {
  readonly tag: Tag
  readonly terminal: string | null
  readonly kind: string
  readonly nominalVoltageV: number
  readonly frequencyHz: number | null
  readonly ratedCurrentA: number | null
  readonly rating: Outcome<{ nominalVoltageV: number; ratedCurrentA: number; shareFactor: number }, { ratedPowerVa: number; workingPowerVa: number }>
  /** Circuits that it can feed, nearest first. */
  readonly circuitTags: readonly Tag[]
  readonly connected: LoadSum
  readonly modes: readonly ModeLoad[]
  /** The largest groups of loads that can run for hours at the same time; null where it cannot be told. */
  readonly together: readonly (readonly Tag[])[] | null
  readonly neutral: Requirement
  /** Of a shore inlet only. */
  readonly shore: ShoreChecks | null
}

/** What draws through a source: an item, or a circuit whose current its author gives. */
export interface AcLoad {
  readonly tag: Tag
  readonly circuitTag: Tag
  readonly currentA: number
  /** Of the load's own system, which behind a transformer is not the source's. */
  readonly nominalVoltageV: number
  readonly powerVa: number
}
export interface LoadSum {
  readonly parts: readonly AcLoad[]
  /** Loads whose current is not known; the sum is then too small. */
  readonly unknownTags: readonly Tag[]
  readonly sum: Outcome<{ connectedPowerVa: number; nominalVoltageV: number }, { connectedCurrentA: number }>
  /** Against the rating. Null without a rating, and where the sum is within it but too small. */
  readonly comparison: Comparison | null
}
export interface ModeLoad {
  readonly modeTag: Tag
  /** False when duties of the mode name other a.c. sources and not this one. */
  readonly running: boolean
  /** The load at the hour when most is on. */
  readonly largest: LoadSum
  readonly largestFromH: number
  readonly largestToH: number
  readonly averages: readonly AverageLoad[]
  readonly averageCurrentA: number
}
/** What a run takes on average of the day, at the source's voltage. */
export interface AverageLoad {
  readonly tag: Tag
  readonly outcome: Outcome<{ currentA: number; dutyPercent: number; runningTimeH: number }, { averageCurrentA: number }>
}

export interface ShoreChecks {
  readonly mains: readonly ShoreMain[]
  readonly polarity: Requirement
  readonly galvanicIsolation: Requirement
}
/** A circuit that is fed straight from the inlet: its device is the main shore breaker. */
export interface ShoreMain {
  readonly circuitTag: Tag
  readonly rating: Requirement
  readonly distance: Requirement
  readonly poles: Requirement
  readonly residualCurrent: Requirement
}

export interface ResidualDevice {
  /** The circuit whose protective device it is, the device itself, or the socket that has one inside. */
  readonly tag: Tag
  readonly circuitTag: Tag
  readonly residualCurrentA: number | null
  readonly tripTimeMs: number | null
}

export interface SocketCheck {
  readonly tag: Tag
  readonly circuitTag: Tag
  readonly check: Requirement
}

export interface AcBus {
  readonly tag: Tag
  readonly feeders: readonly AcFeeder[]
  readonly joined: Requirement
  readonly alike: Requirement
}
export interface AcFeeder {
  readonly circuitTag: Tag
  readonly sourceTags: readonly Tag[]
  readonly normallyClosed: boolean
  /** Its interlock and the source selectors in its way. */
  readonly interlockTags: readonly Tag[]
}

/** "07:30" for an hour of the day. */
export const clockTime = (hourH: number): string => {
  const minutes = Math.round(hourH * 60)
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`
}
