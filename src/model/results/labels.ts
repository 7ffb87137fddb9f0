/** What every label says, and whether it can be read at its size. */
import type { Finding, Limit } from '../../findings/finding.js'
import type { CableEndName } from '../cable-label.js'
import type { DangerKind, SignalWord } from '../content.js'
import type { Comparison, Outcome } from '../results.js'
import type { LabelSize, LabelUse, Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface LabelsResults {
  /** Those that are used, each once. */
  readonly sizes: readonly LabelSize[]
  /** In the order in which they are stuck on: by zone, then by tag. */
  readonly labels: readonly Label[]
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

/** What a label says before it has a size. */
export interface LabelWords {
  readonly use: LabelUse
  readonly aboutTag: Tag
  /** Of a cable. */
  readonly end: CableEndName | null
  readonly danger: DangerKind | null
  readonly signal: SignalWord | null
  readonly headline: string | null
  /** Each begins a line. */
  readonly texts: readonly string[]
  readonly place: LabelPlace
  /** Alike labels: of conductors that are joined at both ends. */
  readonly copiesCount: number
  /** Whether it leads to a page where there is room for the code. */
  readonly hasCode: boolean
}
/** Where it is stuck. */
export interface LabelPlace {
  readonly zoneTag: Tag | null
  readonly atTag: Tag
  readonly words: string | null
}

export interface Label extends LabelWords {
  readonly sizeKey: string
  readonly layout: LabelLayout
  /** The smallest letters on it against the smallest that can be read. */
  readonly comparison: Comparison
  /** Of a wrap-around label on a cable of known diameter. */
  readonly wrap: WrapOutcome | null
}
export type WrapOutcome = Outcome<{ outerDiameterMm: number; printedHeightMm: number }, { girthMm: number; neededHeightMm: number }>

/** Inside the label, from its upper left corner. */
export interface LabelLayout {
  readonly bands: readonly TextBand[]
  /** Of the code, its quiet zone included. */
  readonly code: { readonly leftMm: number; readonly topMm: number; readonly sideMm: number } | null
}
export type BandKind = 'signal' | 'tag' | 'words'
export interface TextBand {
  /** Of a signal word: the symbol stands before it, in a square as high as the band. */
  readonly kind: BandKind
  /** `tag`: the face of tags, in which no two letters are alike. `words`: a narrower one. */
  readonly face: 'tag' | 'words'
  readonly leftMm: number
  readonly topMm: number
  readonly widthMm: number
  readonly heightMm: number
  readonly lines: readonly string[]
  readonly fit: { readonly method: string; readonly textSizeMm: number; readonly letterHeightMm: number }
  readonly least: Limit
}
