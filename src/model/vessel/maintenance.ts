/** Upkeep: what is to be done, what was done, running hours. */
import type { Doer, Season } from '../../references/maintenance-words.js'
import type { Tag } from '../vessel.js'

/** What one task says; null where it leaves it to the task that it stands in place of. */
export interface TaskFacts {
  readonly key: string
  readonly title: string | null
  readonly everyDaysCount: number | null
  readonly everyMonthsCount: number | null
  readonly everyRunningH: number | null
  /** Counted from the day on which the item was made, again and again. */
  readonly everyMadeMonthsCount: number | null
  /** Once, from the day on which it was made; the date marked on the item takes its place. */
  readonly lifeMonthsCount: number | null
  /** Due on the date marked on the item. */
  readonly onMarkedDate: boolean
  readonly seasons: readonly Season[]
  readonly by: Doer | null
  /** Step by step. */
  readonly how: readonly string[]
  /** What tells that it is in order. */
  readonly inOrder: string | null
  readonly parts: readonly Part[]
  readonly source: string | null
  /** The general task of this key does not hold here. */
  readonly notDone: boolean
  readonly reason: string | null
}
export interface Part { readonly name: string; readonly number: string | null; readonly quantity: string | null; readonly keptAt: string | null }

/** A task of the vessel's own data. */
export interface VesselTask extends TaskFacts {
  /** Empty: everything that the general task of this key is for. */
  readonly itemTags: readonly Tag[]
  readonly hoursOfTag: Tag | null
}

export interface MaintenanceRecord {
  readonly taskKey: string
  /** Null: everything that the task is for. */
  readonly itemTag: Tag | null
  readonly date: string
  readonly runningH: number | null
  readonly by: string | null
  readonly notes: string | null
}

/** A counter as it was read. */
export interface RunningHours {
  readonly itemTag: Tag
  readonly date: string
  readonly runningH: number
  /** Hours in a year to reckon with; null: from the readings. */
  readonly perYearH: number | null
  readonly by: string | null
}
