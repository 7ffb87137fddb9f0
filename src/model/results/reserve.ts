/** What is left: spare ways, and the margin of every feeder, busbar and panel above them. */
import type { Finding } from '../../findings/finding.js'
import type { Citation } from '../../references/bibliography.js'
import type { Computed } from '../results.js'
import type { SupplyForm, Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface ReserveResults {
  /** Each circuit that feeds a panel or busbar. */
  readonly byFeeder: ReadonlyMap<Tag, FeederReserve>
  /** Each panel, fuse block and module, and each busbar. */
  readonly byPoint: ReadonlyMap<Tag, PointReserve>
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export type LimitedBy = 'protective device' | 'conductor' | 'panel' | 'busbar' | 'source'
export type Margin = Computed<{ limitCurrentA: number; takenCurrentA: number }, { marginCurrentA: number }>
/** One of the things that must carry a feeder's current, and what it still could. */
export interface ReserveLimit {
  readonly of: LimitedBy
  /** The circuit, cable, panel, busbar or source whose limit it is. */
  readonly tag: Tag
  readonly citation: Citation
  readonly margin: Margin
  readonly within: boolean
}

export interface FeederReserve {
  readonly circuitTag: Tag
  readonly designCurrentA: number | null
  /** What charging sources put in against it; 0 where there are none, null where it is not known. */
  readonly putInCurrentA: number | null
  readonly limits: readonly ReserveLimit[]
  /** The one with the least margin: it governs, unless what is missing has less. */
  readonly least: ReserveLimit | null
  /** Why a limit is not known, one reason each. While there is one, nothing is said to fit. */
  readonly missing: readonly string[]
}

export interface PointReserve {
  readonly tag: Tag
  readonly kind: 'panel' | 'busbar'
  /** Numbers of the ways that no circuit uses; null where they are not known, and for busbars. */
  readonly freeWays: readonly number[] | null
  /** Circuits from the source down to the one that feeds it; empty when no source is reached. */
  readonly chain: readonly Tag[]
  readonly nominalVoltageV: number | null
  readonly supplyForm: SupplyForm | null
  /** What the circuits fed from it take together, demand factors applied. */
  readonly takenCurrentA: number | null
  /** What charging circuits put in at it. */
  readonly putInCurrentA: number | null
  /** Its own rating less what is taken, and less what is put in. */
  readonly rating: ReserveLimit | null
  readonly putInRating: ReserveLimit | null
  readonly missing: readonly string[]
  /** What one more circuit would do to the feeders above. */
  readonly trials: readonly Trial[]
}

export interface Trial { readonly currentA: number; readonly feeders: readonly FeederChange[]; readonly verdict: ReserveVerdict }
export type ReserveVerdict = 'fits' | 'does not fit' | 'not assessed'
/** A feeder before and after a circuit is added somewhere below it. */
export interface FeederChange {
  readonly circuitTag: Tag
  readonly beforeCurrentA: number | null
  readonly afterCurrentA: number | null
  /** With the current after it. */
  readonly limits: readonly ReserveLimit[]
  readonly least: ReserveLimit | null
  readonly missing: readonly string[]
  readonly verdict: ReserveVerdict
}
