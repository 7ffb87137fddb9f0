/** What the calculation is told besides the vessel and her basis. */
import type { GeneralTask } from '../model/content.js'

export interface Occasion {
  /** Year-month-day for which what is due is worked out; null: no day, so that nothing is overdue. */
  readonly asOf: string | null
  /** Maintenance for every boat, by kind of equipment. */
  readonly generalTasks: readonly GeneralTask[]
}
export const noOccasion: Occasion = { asOf: null, generalTasks: [] }
