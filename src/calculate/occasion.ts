/** What the calculation is told besides the vessel and her basis. */
import type { Content } from '../model/content.js'

export interface Occasion {
  /** Year-month-day for which what is due is worked out; null: no day, so that nothing is overdue. */
  readonly asOf: string | null
  /** Maintenance for every boat, by kind of equipment. */
  readonly generalTasks: Content['maintenanceTasks']
  readonly labelSizes: Content['labelSizes']
  readonly dangerTexts: Content['dangerTexts']
}
export const noOccasion: Occasion = { asOf: null, generalTasks: [], labelSizes: [], dangerTexts: [] }
