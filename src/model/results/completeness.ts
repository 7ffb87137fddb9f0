/** Whether the pack holds what standards ask of an owner’s manual, and how far the work is. */
import type { Finding } from '../../findings/finding.js'
import type { ContentKey } from '../../references/tables/required-contents.js'
import type { ItemStatus, ManualContent, Tag } from '../vessel.js'
import type { CheckKind } from './commissioning.js'
import type { Gap } from './gap.js'

export interface CompletenessResults {
  /** Every content that is asked for, in the order of the list. */
  readonly contents: readonly ContentResult[]
  readonly progress: Progress
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

/** What the pack holds of a content. */
export interface Held {
  /** Why the boat has nothing that it would be about; null where she has. */
  readonly notApplicable: string | null
  /** Pages that hold it, the chief one first, by their addresses in the pack. */
  readonly pageKeys: readonly string[]
  /** What of it is not there, one fact each. */
  readonly lacks: readonly string[]
}
export interface ContentResult extends Held {
  readonly key: ContentKey
  readonly isRequired: boolean
  /** What the data say of it. */
  readonly entry: ManualContent | null
}

/** `in part`: the pack holds some of it, and nothing is said of the rest. */
export type ContentState = 'in the pack' | 'in part' | 'elsewhere' | 'not applicable' | 'missing'

/** An entry of the data speaks for what the pack does not hold, and never against what it does. */
export function contentState({ notApplicable, pageKeys, lacks, entry }: Omit<ContentResult, 'key' | 'isRequired'>): ContentState {
  if (notApplicable !== null) return 'not applicable'
  if (pageKeys.length > 0 && lacks.length === 0) return 'in the pack'
  if (entry?.state === 'elsewhere') return 'elsewhere'
  if (entry?.state === 'not applicable') return pageKeys.length > 0 ? 'in the pack' : 'not applicable'
  return pageKeys.length > 0 ? 'in part' : 'missing'
}

/** How far the boat is from being finished. */
export interface Progress {
  /** By zone, in the order of the zones; what has no zone last. Nothing that was removed. */
  readonly byZone: readonly ZoneProgress[]
  /** Cables that are not commissioned. */
  readonly openCables: readonly { readonly tag: Tag; readonly status: ItemStatus | null }[]
  readonly cablesWithoutType: readonly Tag[]
  readonly testsDue: readonly TestDue[]
  /** Devices that run software whose version is not recorded. */
  readonly softwareUnread: readonly Tag[]
  /** Devices that run software without any document of theirs. */
  readonly withoutDocument: readonly Tag[]
  readonly zonesWithoutPhotograph: readonly Tag[]
}
export interface ZoneProgress {
  readonly zoneTag: Tag | null
  readonly counts: Readonly<Record<ItemStatus | 'none', number>>
  /** What is planned or fitted only, or has no status. */
  readonly open: readonly { readonly tag: Tag; readonly status: ItemStatus | null }[]
}
/** A thing that is due for a test, with what has not been read on it yet. */
export interface TestDue { readonly tag: Tag; readonly what: 'circuit' | 'battery' | 'residual-current device' | 'CAN bus' | 'transmitter'; readonly begun: boolean; readonly missing: readonly CheckKind[] }
