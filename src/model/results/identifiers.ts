/** Identifiers: MMSI, call sign, hull identification, beacons. */
import type { Finding } from '../../findings/finding.js'
import type { Citation } from '../../references/bibliography.js'
import type { Outcome } from '../results.js'
import type { Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface IdentifiersResults {
  /** The vessel's own first, then those of items in their order. */
  readonly identities: readonly IdentityCheck[]
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export interface IdentityCheck {
  readonly what: 'MMSI' | 'MMSI setting' | 'call sign' | 'hull identification' | 'beacon identity'
  /** Null: the vessel herself. */
  readonly holderTag: Tag | null
  readonly value: string
  /** Null where it has no known form. */
  readonly form: string | null
  readonly parts: readonly IdentityPart[]
  readonly verdict: 'in order' | 'not in order' | 'doubtful' | 'not assessed'
  /** Why the verdict, where it is not "in order". */
  readonly reasons: readonly string[]
  readonly citations: readonly Citation[]
  /** Of a beacon. */
  readonly countryCode: Outcome<{ leadingDigitsNumber: number }, { countryCodeNumber: number }> | null
}
/** Some of its characters, and what they say. */
export interface IdentityPart { readonly part: string; readonly meaning: string }
