/** Upkeep: what is due, when, with which parts. */
import type { Finding } from '../../findings/finding.js'
import type { Doer } from '../../references/maintenance-words.js'
import type { Outcome } from '../results.js'
import type { Tag, TaskFacts } from '../vessel.js'
import type { Gap } from './gap.js'

export interface MaintenanceResults {
  /** The day for which it is told what is due; null: no day is known, and nothing is due or overdue. */
  readonly asOf: { readonly on: string; readonly is: 'date of issue' | 'day of the build' } | null
  /** Each task with what it is done to, in the order of the general tasks; those of the vessel follow. */
  readonly jobs: readonly Job[]
  /** General tasks, and those of models, that the vessel's data strike out. */
  readonly notDone: readonly NotDone[]
  /** By the item that has the counter. */
  readonly counters: ReadonlyMap<Tag, Counter>
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export type Origin = 'general' | 'model' | 'vessel'

/** A task as it holds on board: nothing is left to another any more. */
export interface EffectiveTask extends TaskFacts {
  readonly title: string
  readonly by: Doer
  readonly group: string
  readonly origin: Origin
  readonly hoursOfTag: Tag | null
}

/** Things that a task is done to in the same way. */
export interface Job {
  readonly task: EffectiveTask
  /** Told apart where a key holds differently for some things: stable from one issue to the next. */
  readonly id: string
  /** Done so often that it has no date: it stands in the lists. */
  readonly isRoutine: boolean
  readonly items: readonly TaskDue[]
}

export type DueState = 'overdue' | 'due' | 'soon' | 'later' | 'dated' | 'routine' | 'by list' | 'not begun' | 'not assessed'

export interface TaskDue {
  /** Of an item, or of a circuit with residual-current protection. */
  readonly itemTag: Tag
  readonly lastDoneOn: string | null
  readonly limits: readonly DueLimit[]
  /** The earliest that its limits give. */
  readonly dueOn: string | null
  /** The limit that gives it. */
  readonly dueBy: DueLimit | null
  readonly state: DueState
}

export type CountedFrom = 'done' | 'fitted' | 'made' | 'delivered' | 'marked'
export interface Start { readonly what: CountedFrom; readonly on: string }

export interface DueLimit {
  readonly is: 'interval' | 'manufacture' | 'life' | 'marked date' | 'season' | 'running hours'
  readonly from: Start | null
  readonly dueOn: string | null
  /** Why there is no date. */
  readonly reason: string | null
  /** Null where a date is taken as it is marked, or where there is nothing to work with. */
  readonly outcome: Outcome | null
}

export interface NotDone { readonly key: string; readonly title: string; readonly itemTags: readonly Tag[]; readonly reason: string | null }

export interface Counter {
  readonly itemTag: Tag
  /** By date. */
  readonly readings: readonly { readonly on: string; readonly runningH: number }[]
  /** As entered, or from the readings; null: neither. */
  readonly perYearH: number | null
  readonly rate: Outcome | 'entered' | null
}
