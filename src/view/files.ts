/** Files of the pack for other programs, besides the schedules: what a calendar imports. */
import type { ViewContext } from './context.js'
import type { TextFile } from './view-model.js'

export const files = (_context: ViewContext): readonly TextFile[] => []
