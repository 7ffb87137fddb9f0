/** Every task of every thing as a table for machines. */
import type { ViewContext } from '../../context.js'
import { plainText } from '../../tables.js'
import type { Schedule } from '../../view-model.js'
import { intervalText, zoneOf } from './task-text.js'

export const maintenanceSchedule = (context: ViewContext): Schedule => ({
  file: 'maintenance.csv',
  columns: ['Task', 'Title', 'Item', 'Name', 'Zone', 'Every', 'By', 'Last done', 'Due', 'State', 'As of', 'Asked by', 'From'],
  rows: context.results.maintenance.jobs.flatMap(({ task, items }) => items.map(({ itemTag, lastDoneOn, dueOn, state }) => [
    task.key, task.title, itemTag, context.nameOf(itemTag) ?? '', zoneOf(context, itemTag) ?? '', plainText([intervalText(task)]), task.by,
    lastDoneOn ?? '', dueOn ?? '', state, context.results.maintenance.asOf?.on ?? '', task.source ?? '', task.origin,
  ])),
})
