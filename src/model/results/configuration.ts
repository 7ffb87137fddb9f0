/** Configuration record: software and settings to restore after a replacement. */
import type { Finding } from '../../findings/finding.js'
import type { Setting, Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface ConfigurationResults {
  /** Equipment that runs software or has a version recorded, removed items left out. */
  readonly software: readonly SoftwareVersion[]
  /** Devices with anything to restore. */
  readonly byItem: ReadonlyMap<Tag, Restore>
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export interface SoftwareVersion { readonly itemTag: Tag; readonly version: string | null; readonly readOn: string | null }

/** What a replacement must be given. */
export interface Restore {
  /** What other entries of the data say already. */
  readonly facts: readonly RestoreFact[]
  /** What was read on the device; of two readings of one setting the later. */
  readonly settings: readonly Setting[]
}

export interface RestoreFact {
  readonly name: string
  /** In words, or a quantity by its name. */
  readonly value: string | { readonly quantity: string; readonly value: number; readonly words: string }
  /** The entry that says it. */
  readonly from: string
  /** What to see to when it is set. */
  readonly remark: string | null
}
