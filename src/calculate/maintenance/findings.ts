/** Findings (MNT): upkeep. What is due is no fault of the data; it is told once, as of the day on which the pack was issued. */
import type { FindingKind } from '../../findings/finding.js'
import { didYouMean } from '../../findings/nearest.js'
import { say } from '../../units/format.js'

const since = '0.3.0'
const retired = null

export const maintenanceOverdue: FindingKind<{ taskCount: number }> = {
  id: 'MNT101', name: 'maintenance-overdue', since, retired, severity: 'warning',
  meaning: 'On the day on which the pack was issued, maintenance was overdue: it was not done, or nobody recorded it.',
  message: ({ subject, evidence, context }) => `Vessel ${subject.id}: on ${context?.['day']}, the day of issue, ${evidence.taskCount === 1 ? '1 task was' : `${evidence.taskCount} tasks were`} overdue: ${context?.['tasks']}`,
  remedy: () => 'Record what was done in the meantime, and see to the rest; the page Maintenance lists each task with its date.',
}

export const markedDatePassed: FindingKind<{ itemCount: number }> = {
  id: 'MNT102', name: 'marked-date-passed', since, retired, severity: 'warning',
  meaning: 'The date marked on a thing had passed on the day on which the pack was issued: flares, batteries of beacons, a liferaft, a detector.',
  message: ({ subject, context }) => `Vessel ${subject.id}: the date marked on ${context?.['items']} had passed on ${context?.['day']}, the day of issue`,
  remedy: () => 'Replace it, or have it serviced, and enter the new date.',
}

export const runningHoursMissing: FindingKind<{ itemCount: number }> = {
  id: 'MNT201', name: 'running-hours-missing', since, retired, severity: 'note',
  meaning: 'Tasks are due by running hours, and no reading of the counter is recorded, so that this part of their interval is not looked at.',
  message: ({ subject, context }) => `Vessel ${subject.id}: tasks are due by the running hours of ${context?.['items']}, of which no reading is recorded`,
  remedy: () => 'Record what the counter shows, with the date; from the second reading on the hours in a year follow.',
}

export const taskIncomplete: FindingKind<{}> = {
  id: 'MNT202', name: 'maintenance-task-incomplete', since, retired, severity: 'error',
  meaning: 'A task of maintenance lacks what it needs. One with the key of a general task takes over what is left out; a new one must say it all, and without that it is on no list.',
  message: ({ subject, context }) => `${context?.['what']} ${subject.id}: ${context?.['key']} lacks ${context?.['lacks']}, since no general task has this key${didYouMean(context?.['nearest'])}`,
  remedy: () => 'Enter what is missing, or correct the key; docs/vessel-folder.md lists the general tasks.',
}

export const recordOfUnknownTask: FindingKind<{}> = {
  id: 'MNT301', name: 'record-of-unknown-task', since, retired, severity: 'warning',
  meaning: 'A record of maintenance names a task that nothing on board has, so that it moves no date.',
  message: ({ subject, context }) => `Maintenance record ${subject.id}: there is no task "${context?.['key']}" on board${didYouMean(context?.['nearest'])}`,
  remedy: () => 'Correct the key, or enter the task.',
}

export const recordOfOtherItem: FindingKind<{}> = {
  id: 'MNT302', name: 'record-of-other-item', since, retired, severity: 'warning',
  meaning: 'A record of maintenance is about something that the task is not for, so that it moves no date.',
  message: ({ subject, context }) => `Maintenance record ${subject.id}: the task is not for ${context?.['item']}`,
  remedy: () => 'Correct the item or the key, or give the task this item.',
}

export const recordAhead: FindingKind<{}> = {
  id: 'MNT303', name: 'record-ahead', since, retired, severity: 'warning',
  meaning: 'A record of maintenance or a reading has a date that had not come yet. The next date is counted from it and lies too late.',
  message: ({ subject, context }) => `${context?.['what']} ${subject.id}: that day had not come on ${context?.['day']}`,
  remedy: () => 'Correct the date, or bring the date of issue up to date.',
}

export const hoursBackwards: FindingKind<{ beforeH: number; afterH: number }> = {
  id: 'MNT304', name: 'running-hours-backwards', since, retired, severity: 'warning',
  meaning: 'A counter shows less than before: a reading is wrong, or the counter was changed.',
  message: ({ subject, context, evidence }) => `Running hours of ${subject.id}: ${say('afterH', evidence.afterH)}, after ${say('beforeH', evidence.beforeH)} on ${context?.['before']}`,
  remedy: () => 'Correct the reading. After a change of counter or engine, record the task anew with the hours that it shows.',
}

export const findingKinds = [maintenanceOverdue, markedDatePassed, runningHoursMissing, taskIncomplete, recordOfUnknownTask, recordOfOtherItem, recordAhead, hoursBackwards] as const
