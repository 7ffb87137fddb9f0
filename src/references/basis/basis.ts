/**
 * A basis is a rule set as data: limits with their citations, tables, and the conditions in which they apply. Passes only
 * look up and compare.
 */
import type { Limit } from '../../findings/finding.js'
import type { BasisId, LoadClass } from '../../model/vessel.js'
import type { ConductorSize } from '../../units/conductor-size.js'
import type { Citation } from '../bibliography.js'
import type { AmpacityTable } from '../tables/ampacity-table.js'

export interface Basis {
  readonly id: BasisId
  readonly title: string
  /** Highest voltage drop from the source to the load, in percent of the nominal voltage; `feeder`: to a panel or busbar, `ac`: any a.c. circuit. */
  readonly voltageDropPercent: Readonly<Record<LoadClass | 'feeder' | 'ac', Limit>>
  /** The calculation that the basis prescribes for the drop. */
  readonly dropMethod: 'voltage-drop-by-iso-constant' | 'voltage-drop-by-abyc-constant'
  readonly ampacity: AmpacityTable
  readonly bundle: BundleRule
  readonly protection: ProtectionRule
  readonly devices: DeviceRules
  /** Thinnest conductor that may be used, whatever the current. */
  readonly minimumSize: { readonly inSheath: ConductorSize; readonly separate: ConductorSize; readonly citation: Citation }
  /** Choices made where the rules leave one open, one sentence each. */
  readonly readings: readonly string[]
  readonly citations: readonly Citation[]
}

/** What is left of the current when several loaded conductors run together, by the number of them. */
export interface BundleRule {
  /** Nominal voltage from which the factor is required; 0: always. */
  readonly requiredFromV: number
  readonly steps: readonly { readonly fromCount: number; readonly factor: number }[]
  readonly citation: Citation
}

export interface ProtectionRule {
  /** The rating is to be at most the capacity of the conductor. */
  readonly citation: Citation
  /** How far above the capacity the rules still permit a rating; null: not at all. */
  readonly permitted: {
    readonly shareOfCapacity: number
    /** From this nominal voltage on only the next standard rating above the capacity is permitted. */
    readonly anyRatingBelowV: number
    readonly citation: Citation
  } | null
  /** Reasons for which a circuit may have no overcurrent protection. */
  readonly exempt: readonly { readonly reason: string; readonly citation: Citation }[]
}

/** What is asked of a device itself, whatever the conductor behind it. */
export interface DeviceRules {
  /** Largest distance from the source along the conductor, in mm; null where the basis makes no such exception. */
  readonly distance: {
    readonly normal: Limit
    /** The whole conductor lies in a sheath or enclosure. */
    readonly enclosed: Limit | null
    /** The conductor is joined directly to a battery terminal. */
    readonly atBattery: Limit | null
  }
  /** It breaks the largest current that can flow; `byClass`: and at least that of its class in the tables V.A and V.B. */
  readonly interruptingCapacity: { readonly byClass: boolean; readonly citation: Citation }
  readonly voltageRating: { readonly citation: Citation }
  /** A panel or busbar is protected at not more than its own rating. */
  readonly panel: { readonly citation: Citation }
}

/** The bundle factor for a number of loaded conductors, whether or not the voltage makes it a requirement. */
export const bundleFactor = ({ steps }: BundleRule, loadedConductorCount: number): number =>
  steps.findLast(({ fromCount }) => loadedConductorCount >= fromCount)?.factor ?? 1
