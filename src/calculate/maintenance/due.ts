/** When a task is due for one thing: each limit by itself, and the earliest of them. */
import type { Counter, DueLimit, DueState, EffectiveTask, Start, TaskDue } from '../../model/results/maintenance.js'
import type { MaintenanceRecord, Tag, Vessel } from '../../model/vessel.js'
import type { Season } from '../../references/maintenance-words.js'
import { addDays, dateOfParts, dateParts } from '../../units/calendar-date.js'
import type { Method } from '../method.js'
import { runMethod } from '../run-method.js'
import { shownOn } from './counters.js'
import { calendarDueMethod } from './due-by-calendar.calc.js'
import { hoursDueMethod } from './due-by-hours.calc.js'
import { seasonDueMethod } from './due-by-season.calc.js'
import { manufactureDueMethod, neverDone } from './due-from-manufacture.calc.js'
import type { Maintained } from './maintained.js'

export interface Known {
  readonly vessel: Vessel
  readonly counters: ReadonlyMap<Tag, Counter>
  readonly asOf: string | null
  /** Whether anything of the upkeep is recorded, the delivery at least. */
  readonly isBegun: boolean
}

/** How long ahead something is said to be due soon. Common practice, no source. */
const soonDays = 30
/** What is done more often has no date. */
const routineDays = 28

/** Done so often that a date would be out of date before it is read. */
export const isRoutine = ({ everyDaysCount }: EffectiveTask): boolean => everyDaysCount !== null && everyDaysCount < routineDays

export function dueOf(task: EffectiveTask, thing: Maintained, known: Known): TaskDue {
  const done = lastDone(known.vessel.maintenanceRecords, task.key, thing.tag)
  const lastDoneOn = done?.date ?? null
  if (isRoutine(task)) return { itemTag: thing.tag, lastDoneOn, limits: [], dueOn: null, dueBy: null, state: 'routine' }
  const start = startOf(thing, lastDoneOn, known.vessel)
  const limits = [
    ...calendarLimits(task, thing, start, lastDoneOn),
    ...seasonLimits(task.seasons, start, known.vessel),
    ...(task.everyRunningH === null ? [] : [hoursLimit(task, task.everyRunningH, thing, done, start, known)]),
  ]
  const dueBy = limits.reduce<DueLimit | null>((earliest, limit) => (limit.dueOn !== null && (earliest?.dueOn == null || limit.dueOn < earliest.dueOn) ? limit : earliest), null)
  const dueOn = dueBy?.dueOn ?? null
  return { itemTag: thing.tag, lastDoneOn, limits, dueOn, dueBy, state: stateOf(dueOn, limits, known) }
}

/** The latest record of the task that is about this thing, or about all. */
const lastDone = (records: readonly MaintenanceRecord[], key: string, tag: Tag): MaintenanceRecord | null =>
  records.filter(record => record.taskKey === key && (record.itemTag === null || record.itemTag === tag))
    .reduce<MaintenanceRecord | null>((last, record) => (last === null || record.date >= last.date ? record : last), null)

/** What was fitted after the last time counts from when it was fitted. */
function startOf({ fittedOn }: Maintained, lastDoneOn: string | null, { identity }: Vessel): Start | null {
  if (lastDoneOn !== null && (fittedOn === null || fittedOn <= lastDoneOn)) return { what: 'done', on: lastDoneOn }
  if (fittedOn !== null) return { what: 'fitted', on: fittedOn }
  return identity.deliveredOn === null ? null : { what: 'delivered', on: identity.deliveredOn }
}

const noStart = 'nothing says when it was last done or fitted, or when the boat was delivered'

function calendarLimits(task: EffectiveTask, thing: Maintained, start: Start | null, lastDoneOn: string | null): readonly DueLimit[] {
  const { everyDaysCount, everyMonthsCount, everyMadeMonthsCount, lifeMonthsCount, onMarkedDate } = task
  const { madeOn, expiresOn } = thing
  const marked: DueLimit | null = expiresOn === null ? null : { is: 'marked date', from: { what: 'marked', on: expiresOn }, dueOn: expiresOn, reason: null, outcome: null }
  const repeats = everyMonthsCount !== null || everyDaysCount !== null
  const made: Start | null = madeOn === null ? null : { what: 'made', on: madeOn }
  // A thing that was replaced is as old as its replacement.
  const born = start?.what === 'done' ? start : made ?? start
  return [
    ...(repeats ? [calendarLimit('interval', start, everyMonthsCount ?? 0, everyDaysCount ?? 0)] : []),
    ...(everyMadeMonthsCount !== null && (made !== null || !repeats) ? [manufactureLimit(made, lastDoneOn, everyMadeMonthsCount)] : []),
    ...(lifeMonthsCount !== null ? [marked ?? calendarLimit('life', born, lifeMonthsCount, 0)] : onMarkedDate && marked !== null ? [marked] : []),
    ...(onMarkedDate && marked === null && !repeats && everyMadeMonthsCount === null && lifeMonthsCount === null ? [without('marked date', 'the date marked on it is not recorded')] : []),
  ]
}

const without = (is: DueLimit['is'], reason: string): DueLimit => ({ is, from: null, dueOn: null, reason, outcome: null })

function calendarLimit(is: 'interval' | 'life', from: Start | null, monthsCount: number, daysCount: number): DueLimit {
  return from === null ? without(is, noStart) : dated(is, from, calendarDueMethod, { ...dateParts('start', from.on), monthsCount, daysCount })
}

function manufactureLimit(made: Start | null, lastDoneOn: string | null, monthsCount: number): DueLimit {
  if (made === null) return without('manufacture', 'the day on which it was made is not recorded')
  return dated('manufacture', made, manufactureDueMethod, { ...dateParts('made', made.on), ...(lastDoneOn === null ? neverDone : dateParts('last', lastDoneOn)), monthsCount })
}

function dated<In extends Readonly<Record<string, number>>>(is: DueLimit['is'], from: Start, method: Method<In, ReturnType<typeof dateParts<'due'>>>, input: In): DueLimit {
  const outcome = runMethod(method, input)
  return outcome.status === 'computed' ? { is, from, dueOn: dateOfParts('due', outcome.output), reason: null, outcome } : { is, from, dueOn: null, reason: outcome.reason, outcome }
}

function seasonLimits(seasons: readonly Season[], start: Start | null, { identity: { season } }: Vessel): readonly DueLimit[] {
  // Without a season she is used all the year round, and the list of that season has no date.
  if (season === null) return []
  const months = { 'spring': season.launchMonthNumber, 'autumn': season.layUpMonthNumber, 'before a passage': null }
  return seasons.flatMap(name => {
    const month = months[name]
    if (month === null) return []
    return [start === null ? without('season', noStart) : dated('season', start, seasonDueMethod, { ...dateParts('start', start.on), seasonMonthNumber: month })]
  })
}

function hoursLimit(task: EffectiveTask, everyRunningH: number, thing: Maintained, done: MaintenanceRecord | null, start: Start | null, { counters }: Known): DueLimit {
  const counterTag = task.hoursOfTag ?? thing.tag
  const counter = counters.get(counterTag)
  const last = counter?.readings.at(-1)
  if (counter === undefined || last === undefined) return without('running hours', `no running hours of ${counterTag} are recorded`)
  if (start === null) return without('running hours', noStart)
  const recordedH = start.what === 'done' && done !== null ? done.runningH : null
  const startH = recordedH ?? shownOn(counter, start.on)
  if (startH === null) return without('running hours', `what ${counterTag} showed on ${start.on} is not recorded, and its last reading is older`)
  if (counter.perYearH === null) {
    return last.runningH < startH + everyRunningH
      ? without('running hours', `how many hours ${counterTag} runs in a year is not known: record a second reading, or the hours in a year`)
      : { is: 'running hours', from: start, dueOn: last.on, reason: null, outcome: null }
  }
  const outcome = runMethod(hoursDueMethod, { startH, everyRunningH, readH: last.runningH, perYearH: counter.perYearH })
  return outcome.status === 'computed'
    ? { is: 'running hours', from: start, dueOn: addDays(last.on, outcome.output.aheadDays), reason: null, outcome }
    : { is: 'running hours', from: start, dueOn: null, reason: outcome.reason, outcome }
}

function stateOf(dueOn: string | null, limits: readonly DueLimit[], { asOf, isBegun }: Known): DueState {
  if (dueOn === null) return limits.length === 0 ? 'by list' : isBegun ? 'not assessed' : 'not begun'
  if (asOf === null) return 'dated'
  if (asOf > dueOn) return 'overdue'
  if (asOf === dueOn) return 'due'
  return dueOn <= addDays(asOf, soonDays) ? 'soon' : 'later'
}
