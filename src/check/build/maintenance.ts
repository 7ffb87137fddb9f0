/** Upkeep → records of the vessel. */
import type { MaintenanceRecord, RunningHours, TaskFacts, VesselTask } from '../../model/vessel.js'
import type { Entry } from '../schema/kinds.js'

type Task = Omit<Entry<'maintenance-tasks'>, 'items' | 'hours-of'>

export const taskFactsOf = (task: Task): TaskFacts => ({
  key: task.task, title: task.title ?? null, everyDaysCount: task.days ?? null, everyMonthsCount: task.months ?? null, everyRunningH: task.hours ?? null,
  everyMadeMonthsCount: task['months-from-made'] ?? null, lifeMonthsCount: task['life-months'] ?? null, onMarkedDate: task['marked-date'] ?? false,
  seasons: task.seasons ?? [], by: task.by ?? null, how: task.how === undefined ? [] : [task.how], inOrder: task['in-order'] ?? null,
  parts: (task.parts ?? []).map(({ name, number, quantity, 'kept-at': keptAt }) => ({ name, number: number ?? null, quantity: quantity ?? null, keptAt: keptAt ?? null })),
  source: task.source ?? null, notDone: task['not-done'] ?? false, reason: task.reason ?? null,
})

export const vesselTaskOf = (task: Entry<'maintenance-tasks'>): VesselTask => ({ ...taskFactsOf(task), itemTags: task.items ?? [], hoursOfTag: task['hours-of'] ?? null })

export const maintenanceRecordOf = ({ task, item, date, hours, by, notes }: Entry<'maintenance-records'>): MaintenanceRecord =>
  ({ taskKey: task, itemTag: item ?? null, date, runningH: hours ?? null, by: by ?? null, notes: notes ?? null })

export const runningHoursOf = (reading: Entry<'running-hours'>): RunningHours =>
  ({ itemTag: reading.item, date: reading.date, runningH: reading.hours, perYearH: reading['per-year'] ?? null, by: reading.by ?? null })
