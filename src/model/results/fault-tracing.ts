/** Step by step from a dead thing back to its source: where to touch, and which voltage is to be expected there. */
import type { Finding } from '../../findings/finding.js'
import type { Outcome } from '../results.js'
import type { Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface FaultTracingResults {
  /** For each item, circuit and CAN bus that something supplies: each way of supply, those to be closed first last. */
  readonly byTag: ReadonlyMap<Tag, readonly FaultLine[]>
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export interface FaultLine {
  /** The circuit by which the thing lives; null where it lives on a network. */
  readonly circuitTag: Tag | null
  /** Nothing comes this way until it is closed. */
  readonly open: boolean
  /** As one walks: from the thing to the source. */
  readonly points: readonly FaultPoint[]
}

/**
 * `item`: the thing itself. `switch`, `joint`: on the way of a circuit. `device`: a circuit's protective device with the
 * point that feeds it. `source`: equipment that gives an output. `bus`: the tee by which a device is on its bus.
 */
export interface FaultPoint {
  readonly what: 'item' | 'switch' | 'joint' | 'device' | 'battery' | 'source' | 'bus' | 'bus supply' | 'network switch'
  readonly tag: Tag
  /** Of a device the battery, busbar, panel or source it is fed from; of a tee or supply of a bus the bus. */
  readonly atTag: Tag | null
  /** Cables from here up to the point before, nearest to here first. */
  readonly cableTags: readonly Tag[]
  /** Further circuits that feed `atTag`, or can be closed to it. */
  readonly otherFeedTags: readonly Tag[]
  /** Port of a network switch. */
  readonly portName: string | null
  readonly reading: Reading
}

/** One end of a cable, as its label says. */
export interface CableEndRef { readonly tag: Tag; readonly end: 'from' | 'to' }

/** `mains`: nothing for an owner to measure. `data cable`: supply and data share conductors, so that a meter says nothing. */
export type Reading =
  | { readonly is: 'voltage'; readonly plus: CableEndRef | null; readonly minus: CableEndRef | null; readonly sourceTag: Tag | null; readonly expected: ExpectedOutcome }
  | { readonly is: 'mains' }
  | { readonly is: 'data cable' }
export type ExpectedOutcome = Outcome<{ sourceVoltageV: number; voltageDropV: number }, { expectedVoltageV: number; leastVoltageV: number }>
