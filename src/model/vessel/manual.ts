/** What the yard adds to the manual. */
import type { ProcedurePlace } from '../../references/procedure-places.js'
import type { Tag } from '../vessel.js'

export interface Procedure {
  readonly title: string
  /** The page on which it takes the place of the general text; null: it stands beside it where it is about. */
  readonly place: ProcedurePlace | null
  readonly aboutTags: readonly Tag[]
  /** Markdown; `[[P1]]` is a link to what has that tag. */
  readonly text: string
}

/** A kind of equipment that the manual asks for and this boat does not have. */
export interface Absence { readonly kind: string; readonly reason: string }

/** A content asked of an owner's manual that this pack does not hold. */
export interface ManualContent {
  readonly contentKey: string
  readonly state: 'elsewhere' | 'not applicable'
  readonly where: string | null
  readonly reason: string | null
}

export interface AcceptedDeviation {
  readonly findingId: string
  readonly subject: string
  readonly reason: string
  readonly by: string
  readonly date: string
  /** The finding's message as it was accepted; null: whatever it says. */
  readonly message: string | null
}

export type LabelUse = 'cables' | 'ways' | 'equipment' | 'danger'
/** A sheet of labels. Distances from the upper left corner of the sheet. */
export interface LabelSize {
  /** The yard's own may have the key of one that the program knows: it then takes its place. */
  readonly key: string
  readonly title: string
  /** `wrap`: the label goes around a cable, its clear tail over the print. */
  readonly form: 'sheet' | 'wrap'
  readonly pageWidthMm: number
  readonly pageHeightMm: number
  readonly labelWidthMm: number
  readonly labelHeightMm: number
  readonly clearTailMm: number
  readonly columnsCount: number
  readonly rowsCount: number
  readonly leftMm: number
  readonly topMm: number
  readonly stepAcrossMm: number
  readonly stepDownMm: number
  readonly uses: readonly LabelUse[]
}

/** What the yard says of a size: its measures, or only what a size that the program knows is to be used for. */
export type LabelSizeEntry = LabelSize | { readonly key: string; readonly form: null; readonly uses: readonly LabelUse[] }
