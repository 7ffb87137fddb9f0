/** Files of the pack for other programs, besides the schedules: what a calendar imports. */
import { calendarFile } from './calendar.js'
import type { ViewContext } from '../context.js'
import type { TextFile } from '../view-model.js'

export const files = (context: ViewContext): readonly TextFile[] => [calendarFile(context)].filter(file => file !== null)
