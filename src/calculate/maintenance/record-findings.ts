/** What is wrong with the records, and what was overdue when the pack was issued. */
import { find, type Finding } from '../../findings/finding.js'
import { nearestOf } from '../../findings/nearest.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Counter, Job } from '../../model/results/maintenance.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { backwards } from './counters.js'
import { hoursBackwards, markedDatePassed, maintenanceOverdue, recordAhead, recordOfOtherItem, recordOfUnknownTask, runningHoursMissing } from './findings.js'

const about = { field: null, evidence: {}, limit: null } as const
const ofVessel = ({ identity }: Vessel) => ({ subject: { kind: 'vessel', id: identity.name }, field: null, limit: null })

/** Entries are found again by key and date, since a task is recorded many times. */
const record = (key: string, date: string) => ({ kind: 'maintenance record', id: `${key} of ${date}` })

export function recordFindings(vessel: Vessel, jobs: readonly Job[], knownKeys: ReadonlySet<string>): readonly Finding[] {
  const { items } = lookup(vessel)
  const tagsByKey = new Map<string, ReadonlySet<Tag>>()
  for (const { task, items: things } of jobs) tagsByKey.set(task.key, new Set([...tagsByKey.get(task.key) ?? [], ...things.map(({ itemTag }) => itemTag)]))
  return vessel.maintenanceRecords.flatMap(({ taskKey: key, itemTag, date }) => {
    const subject = record(key, date)
    const tags = tagsByKey.get(key)
    // What was removed since keeps its history; a general task that nothing on board has any more, likewise.
    if (itemTag !== null && items.get(itemTag)?.status === 'removed') return []
    if (tags === undefined) return knownKeys.has(key) ? [] : [find(recordOfUnknownTask, { ...about, subject, context: { key, ...nearestOf(key, [...tagsByKey.keys()]) } })]
    return itemTag === null || tags.has(itemTag) ? [] : [find(recordOfOtherItem, { ...about, subject, context: { item: itemTag } })]
  })
}

/** `today`: the latest day that is known to have come. */
export function datesAhead(vessel: Vessel, today: string | null): readonly Finding[] {
  if (today === null) return []
  const ahead = (what: string, subject: { readonly kind: string; readonly id: string }, date: string): readonly Finding[] =>
    (date <= today ? [] : [find(recordAhead, { ...about, subject, context: { what, day: today } })])
  return [
    ...vessel.maintenanceRecords.flatMap(({ taskKey, date }) => ahead('Maintenance record', record(taskKey, date), date)),
    ...vessel.runningHours.flatMap(({ itemTag, date }) => ahead('Running hours of', reading(itemTag, date), date)),
  ]
}

const reading = (tag: Tag, date: string) => ({ kind: 'reading of running hours', id: `${tag} of ${date}` })

export const counterFindings = (counters: ReadonlyMap<Tag, Counter>): readonly Finding[] =>
  [...counters.values()].flatMap(({ itemTag, readings }) => backwards(readings).map(({ before, after }) => find(hoursBackwards, {
    subject: reading(itemTag, after.on), field: 'runningH', evidence: { beforeH: before.runningH, afterH: after.runningH }, limit: null, context: { before: before.on },
  })))

export function missingCounters(vessel: Vessel, jobs: readonly Job[], counters: ReadonlyMap<Tag, Counter>): readonly Finding[] {
  const wanted = new Set(jobs.flatMap(({ task, items }) => (task.everyRunningH === null ? [] : items.map(({ itemTag }) => task.hoursOfTag ?? itemTag))))
  const tags = [...wanted].filter(tag => !counters.has(tag))
  return tags.length === 0 ? [] : [find(runningHoursMissing, { ...ofVessel(vessel), evidence: { itemCount: tags.length }, context: { items: inWords(tags) } })]
}

/** As of the date of issue, which stands in the data: the same data give the same findings on every day. */
export function overdueFindings(vessel: Vessel, jobs: readonly Job[]): readonly Finding[] {
  const day = vessel.document.issuedOn
  if (day === null) return []
  const late = jobs.map(({ task, items }) => ({ task, items: items.filter(({ dueOn }) => dueOn !== null && dueOn < day) })).filter(({ items }) => items.length > 0)
  const expired = new Set(late.flatMap(({ items }) => items.filter(({ dueBy }) => dueBy?.is === 'marked date').map(({ itemTag }) => itemTag)))
  const tasks = late.filter(({ items }) => items.some(({ dueBy }) => dueBy?.is !== 'marked date')).map(({ task }) => task.key)
  return [
    ...(expired.size === 0 ? [] : [find(markedDatePassed, { ...ofVessel(vessel), evidence: { itemCount: expired.size }, context: { items: inWords([...expired]), day } })]),
    ...(tasks.length === 0 ? [] : [find(maintenanceOverdue, { ...ofVessel(vessel), evidence: { taskCount: tasks.length }, context: { tasks: inWords(tasks), day } })]),
  ]
}
