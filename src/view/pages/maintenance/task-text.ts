/** Words of the maintenance pages: how often, when, by whom, on what. */
import type { DueState, EffectiveTask, Job, TaskDue } from '../../../model/results/maintenance.js'
import type { Tag } from '../../../model/vessel.js'
import { say } from '../../../units/format.js'
import { grouped } from '../../../model/lookup.js'
import type { ViewContext } from '../../context.js'
import { compareTags } from '../../tables.js'
import { dash, joined, lineBreak, muted, verdict } from '../../text.js'
import type { Level, Text } from '../../view-model.js'

/** "year or 200 h": whichever comes first. */
export function intervalText(task: EffectiveTask): string {
  const { everyDaysCount, everyMonthsCount, everyRunningH, everyMadeMonthsCount, lifeMonthsCount, onMarkedDate, seasons } = task
  const regular = [
    ...(everyDaysCount === null ? [] : [everyDaysCount === 1 ? 'daily' : everyDaysCount === 7 ? 'weekly' : `${everyDaysCount} days`]),
    ...(everyMonthsCount === null ? [] : [months(everyMonthsCount)]),
    ...(everyRunningH === null ? [] : [say('ratedRunningH', everyRunningH)]),
    ...(everyMadeMonthsCount === null ? [] : [`${months(everyMadeMonthsCount)} from manufacture`]),
    ...(lifeMonthsCount === null ? [] : [`marked date, else ${months(lifeMonthsCount)} of age`]),
    ...(onMarkedDate && lifeMonthsCount === null ? ['marked date'] : []),
  ]
  const dated = regular.join(' or ')
  const bySeason = seasons.filter(season => season !== 'before a passage').map(season => `each ${season}`)
  return [dated, ...(dated === '' ? [...bySeason, ...seasons.filter(season => season === 'before a passage')] : [])].filter(part => part !== '').join(', ')
}

function months(count: number): string {
  if (count === 1) return 'month'
  return count % 12 === 0 ? (count === 12 ? 'year' : `${count / 12} years`) : `${count} months`
}

const stateWords: Readonly<Record<DueState, readonly [Level, string] | null>> = {
  'overdue': ['warning', 'overdue'], 'due': ['warning', 'due'], 'soon': ['note', 'soon'], 'later': null, 'dated': null,
  'routine': null, 'by list': null, 'not begun': null, 'not assessed': ['not assessed', 'not assessed'],
}

export function dueText({ dueOn, state }: Pick<TaskDue, 'dueOn' | 'state'>): Text {
  const words = stateWords[state]
  const mark: Text = words === null ? [] : [verdict(...words)]
  if (dueOn !== null) return joined([[dueOn], ...(mark.length === 0 ? [] : [mark])], ' ')
  if (mark.length > 0) return mark
  return [muted(state === 'routine' ? 'ticked off on the list' : state === 'by list' ? 'by its list' : 'from delivery on')]
}

export const levelOf = (state: DueState): Level | null => stateWords[state]?.[0] ?? null

/** How the things of a task are named: with their names where there is room, by their tags on paper. */
export type ThingsText = (context: ViewContext, tags: readonly Tag[]) => Text
/** Tags alone: their names stand with the tags everywhere else. */
export const tagsText: ThingsText = (context, tags) => joined(tags.toSorted(compareTags).map(tag => [context.tag(tag)]), ' ')

/** Few things with their names, many by their tags. */
export const thingsText: ThingsText = (context, tags) =>
  (tags.length <= 2 ? joined(tags.toSorted(compareTags).map(tag => context.named(tag)), lineBreak) : tagsText(context, tags))

/** The zone in which the work is: of an item, or of the breaker of a circuit. */
export function zoneOf({ lookup }: ViewContext, tag: Tag): Tag | null {
  const circuit = lookup.circuits.get(tag)
  if (circuit === undefined) return lookup.items.get(tag)?.zoneTag ?? null
  return circuit.zoneTag ?? lookup.items.get(circuit.fedFromTag)?.zoneTag ?? null
}

export const lastDoneText = (items: readonly TaskDue[]): Text => {
  const days = [...new Set(items.map(({ lastDoneOn }) => lastDoneOn))]
  return days.length !== 1 ? [muted('see each')] : days[0] === null ? dash : [days[0]!]
}

export interface DueGroup { readonly job: Job; readonly due: Pick<TaskDue, 'dueOn' | 'state'>; readonly items: readonly TaskDue[] }

/** Things of one task that are due on the same day, earliest first; what has no day comes last. */
export function dueGroups(jobs: readonly Job[]): readonly DueGroup[] {
  const groups = jobs.flatMap(job => {
    const byDay = grouped(job.items, ({ dueOn, state }) => [`${dueOn} ${state}`])
    return [...byDay.values()].map((items): DueGroup => ({ job, due: items[0]!, items }))
  })
  const order = ({ due: { dueOn } }: DueGroup): string => dueOn ?? '9999'
  return groups.toSorted((a, b) => (order(a) < order(b) ? -1 : order(a) > order(b) ? 1 : 0))
}
