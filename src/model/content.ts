/** The manual's general text, the same for every vessel: files of `content/`. */
import type { EmergencyTask, OwnerTask, ProcedurePlace } from '../references/procedure-places.js'
import type { CautionPage, Hazard, SignalWord } from '../references/caution-words.js'
import type { SystemKind } from '../references/system-kinds.js'
import type { Citation } from '../references/bibliography.js'
import type { Doer } from '../references/maintenance-words.js'
import type { LabelSize, SpaceKind, TaskFacts } from './vessel.js'

export interface Content {
  /** By file name without its ending: `how-to-read`, `glossary`, … */
  readonly pages: ReadonlyMap<string, ContentPage>
  /** Safety cautions, in the order of their files. */
  readonly cautions: readonly Caution[]
  readonly emergency: ReadonlyMap<EmergencyTask, TaskText>
  readonly owner: ReadonlyMap<OwnerTask, TaskText>
  /** How to use equipment, by its kinds. */
  readonly operating: readonly OperatingText[]
  /** How to use the usual systems. */
  readonly systems: ReadonlyMap<SystemKind, ContentPage>
  /** Where to look, for faults of a sort, in their order. */
  readonly faultTrees: readonly (ContentPage & { readonly key: string })[]
  readonly maintenanceTasks: readonly GeneralTask[]
  readonly labelSizes: readonly LabelSize[]
  readonly dangerTexts: readonly DangerText[]
}
export interface ContentPage { readonly title: string; readonly markdown: string }
/** Of a page that is reached for in a hurry, or that goes step by step. */
export interface TaskText extends ContentPage { readonly lead: string }
export interface OperatingText extends ContentPage { readonly key: string; readonly kinds: readonly string[] }

export type { SignalWord }
export interface Caution {
  readonly key: string
  readonly signal: SignalWord
  readonly title: string
  readonly markdown: string
  readonly hazard: Hazard
  /** Keys of equipment's kinds it belongs to; kinds and systems both empty: it stands for the whole installation. */
  readonly equipmentKinds: readonly string[]
  readonly systems: readonly SystemKind[]
  /** It holds though nothing that it names is recorded. */
  readonly onEveryBoat: boolean
  /** Kinds of which one must be on board for it to hold; empty: none. */
  readonly needs: readonly string[]
  /** Pages of emergency and owner's tasks that show it. */
  readonly tasks: readonly ProcedurePlace[]
  /** Pages of work that show it. */
  readonly pages: readonly CautionPage[]
}

/** A task of maintenance for every item of some kinds. */
export interface GeneralTask extends TaskFacts {
  readonly title: string
  readonly by: Doer
  readonly source: string
  /** Keys of `references/equipment-kinds.ts` and words of `references/maintained-kinds.ts`. */
  readonly kinds: readonly string[]
  /** Only in these kinds of space; empty: in all. */
  readonly spaces: readonly SpaceKind[]
  /** Not by its kind alone: only where a model or the vessel's data ask for it by its key. */
  readonly onlyWhenAsked: boolean
  /** What it belongs to, as a heading. */
  readonly group: string
  readonly citation: Citation
}

/** What a danger label warns of. */
export type DangerKind =
  | 'mains' | 'shore inlet' | 'lead-acid battery' | 'lithium battery' | 'moving machine' | 'radiation' | 'several supplies' | 'live in light' | 'unprotected conductor'
/** Words of a danger label; `{{ name }}` stands for a fact of the boat. */
export interface DangerText {
  readonly kind: DangerKind
  readonly signal: SignalWord
  readonly title: string
  readonly text: string
  /** Where on the thing it is stuck. */
  readonly where: string
}
