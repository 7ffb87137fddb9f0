/**
 * The maintenance as a calendar (RFC 5545) that phones and computers import: whole days, no time zone, and the same UID for the
 * same task from one issue to the next, so that a later calendar moves what an earlier one put in.
 */
import ical, { ICalAlarmType, type ICalEventData } from 'ical-generator'
import { slug } from '../../model/address.js'
import type { EffectiveTask, Job, TaskDue } from '../../model/results/maintenance.js'
import type { Tag } from '../../model/vessel.js'
import { dayOfMonth } from '../../units/calendar-date.js'
import type { ViewContext } from '../context.js'
import { placeText } from '../parts/item-parts.js'
import { circuitPlace } from '../parts/circuit-parts.js'
import { intervalText } from '../pages/maintenance/task-text.js'
import { compareTags, plainText } from '../tables.js'
import type { TextFile } from '../view-model.js'

/** Days ahead of which one is reminded: a station must be found in time. Common practice, no source. */
const reminderDays = { 'monthly': [1], 'usual': [7], 'approved service': [7, 30] } as const
const dayS = 86_400

export function calendarFile(context: ViewContext): TextFile | null {
  const { asOf, jobs } = context.results.maintenance
  const events = asOf === null ? [] : jobs.flatMap(job => eventsOf(context, job, asOf.on))
  if (events.length === 0) return null
  const { name } = context.vessel.identity
  const calendar = ical({ name: `${name}: maintenance`, prodId: { company: 'asfitted', product: 'handover pack', language: 'EN' }, events: [...events] })
  return { file: 'maintenance.ics', about: `${events.length} dates of maintenance, for a calendar`, text: withoutPrivateLines(calendar.toString()) }
}

/** The library adds lines for one program, which all that import whole days do without. */
const withoutPrivateLines = (text: string): string => text.replace(/^X-MICROSOFT-.*\r\n/gm, '')

/**
 * A task that comes again evenly is one event for all its things, from the earliest of their dates on; any other is an event
 * for each thing, since nobody may count on the next issue. Daily and weekly tests are in the checklists.
 */
function eventsOf(context: ViewContext, job: Job, asOf: string): readonly ICalEventData[] {
  const dated = job.items.filter(({ dueOn }) => dueOn !== null)
  if (job.isRoutine || dated.length === 0) return []
  const identity = context.vessel.identity
  const owner = slug(identity.hullIdentification ?? [identity.name, identity.hullNumber].filter(part => part !== null).join('-'))
  const event = (id: string, items: readonly TaskDue[]): ICalEventData => {
    const due = items.map(({ dueOn }) => dueOn!).toSorted()[0]!
    // What is overdue stands on the day of issue: a date gone by reminds nobody.
    const start = due < asOf ? asOf : due
    const repeating = repeatingOf(job.task, start)
    return {
      id: `${slug(id)}.${owner}@asfitted`,
      sequence: new Set(context.vessel.changes.map(({ issue }) => issue)).size,
      stamp: new Date(`${asOf}T00:00:00Z`),
      start: new Date(`${start}T00:00:00Z`),
      allDay: true,
      summary: `${identity.name}: ${job.task.title}`,
      description: description(context, job, items, due < asOf ? due : null),
      // A comma parts categories, and not every program reads an escaped one.
      categories: [{ name: job.task.group.replaceAll(', ', ' / ') }],
      alarms: reminders(job.task).map(days => ({ type: ICalAlarmType.display, trigger: days * dayS, description: job.task.title })),
      ...(repeating === null ? {} : { repeating }),
    }
  }
  return repeatingOf(job.task, dated[0]!.dueOn!) !== null && job.task.everyMadeMonthsCount === null
    ? [event(job.id, dated)]
    : dated.map(due => event(`${job.id}.${due.itemTag}`, [due]))
}

function reminders(task: EffectiveTask): readonly number[] {
  if (task.by === 'approved service') return reminderDays['approved service']
  return task.everyMonthsCount === 1 ? reminderDays.monthly : reminderDays.usual
}

/** A recurrence rule; null where it does not come again evenly. */
function repeatingOf(task: EffectiveTask, start: string): string | null {
  const { everyDaysCount, everyMonthsCount, everyMadeMonthsCount, everyRunningH, lifeMonthsCount, onMarkedDate, seasons } = task
  if (everyRunningH !== null || lifeMonthsCount !== null || onMarkedDate) return null
  const every = [everyDaysCount, everyMonthsCount, everyMadeMonthsCount].filter(each => each !== null)
  if (every.length > 1) return null
  if (everyDaysCount !== null) return `RRULE:FREQ=DAILY;INTERVAL=${everyDaysCount}`
  if (every.length === 0) return seasons.includes('spring') && seasons.includes('autumn') ? null : 'RRULE:FREQ=YEARLY'
  const [monthsCount] = every as [number]
  // After whole years it is the same month again, which has the day unless that is 29 February.
  const alwaysThere = monthsCount % 12 === 0 && !start.endsWith('-02-29')
  return `RRULE:FREQ=MONTHLY;INTERVAL=${monthsCount}${alwaysThere ? '' : lastDayOfShortMonths(dayOfMonth(start))}`
}

/** RFC 5545 leaves out months that lack the day. The last of the days up to it is the day itself, or the last of a short month. */
const lastDayOfShortMonths = (day: number): string =>
  (day <= 28 ? '' : `;BYMONTHDAY=${[28, 29, 30, 31].filter(each => each <= day).join(',')};BYSETPOS=-1`)

function description(context: ViewContext, { task }: Job, items: readonly TaskDue[], overdueSince: string | null): string {
  const onDay = (due: TaskDue): string => (items.some(({ dueOn }) => dueOn !== items[0]!.dueOn) ? `, due ${due.dueOn}` : '')
  const lines = [
    ...(overdueSince === null ? [] : [`Overdue since ${overdueSince}.`]),
    ...task.how,
    ...(task.inOrder === null ? [] : [`In order when: ${task.inOrder}`]),
    `On:`,
    ...items.toSorted((a, b) => compareTags(a.itemTag, b.itemTag)).map(due => `- ${due.itemTag} ${context.nameOf(due.itemTag) ?? ''}, ${whereText(context, due.itemTag)}${onDay(due)}`),
    `By: ${task.by}. Every: ${intervalText(task)}.`,
    ...task.parts.map(({ name, number, quantity, keptAt }) => `Part: ${[name, number, quantity, keptAt === null ? null : `kept: ${keptAt}`].filter(each => each !== null).join(', ')}`),
    ...(task.source === null ? [] : [`Asked by: ${task.source}`]),
    `Record it as: ${task.key}`,
  ]
  return lines.join('\n').replaceAll('\u00A0', ' ')
}

function whereText(context: ViewContext, tag: Tag): string {
  const { items, circuits } = context.lookup
  const item = items.get(tag)
  return plainText(item === undefined ? circuitPlace(context, circuits.get(tag)!, { withAccess: false }) : placeText(context, item, { withAccess: false }))
}
