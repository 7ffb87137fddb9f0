/** Which tasks hold for which things: the general one of a kind, in its place what the model's maker asks, in its place what the vessel's data say. */
import { find, type Finding } from '../../findings/finding.js'
import { nearestOf } from '../../findings/nearest.js'
import { grouped } from '../../model/lookup.js'
import type { GeneralTask } from '../../model/content.js'
import type { EffectiveTask, NotDone } from '../../model/results/maintenance.js'
import type { Tag, TaskFacts, Vessel, VesselTask } from '../../model/vessel.js'
import { taskIncomplete } from './findings.js'
import type { Maintained } from './maintained.js'

export interface Assigned { readonly task: EffectiveTask; readonly id: string; readonly things: readonly Maintained[] }

/** A task as far as it is told, on its way. */
type Told = Omit<EffectiveTask, 'title'> & { readonly title: string | null }

/** What makers and the vessel add belongs to no general group. */
const ownGroups = { model: 'As makers ask', vessel: 'Tasks of this boat' } as const

export function effectiveTasks(vessel: Vessel, generalTasks: readonly GeneralTask[], things: readonly Maintained[]): { assigned: readonly Assigned[]; notDone: readonly NotDone[]; findings: readonly Finding[] } {
  const general = new Map(generalTasks.map(task => [task.key, toldOf(task)]))
  const byTag = new Map(things.map(thing => [thing.tag, thing]))
  /** By key, then by tag. */
  const held = new Map<string, Map<Tag, Told>>()
  const hold = (tag: Tag, told: Told): void => { held.set(told.key, (held.get(told.key) ?? new Map()).set(tag, told)) }

  for (const task of generalTasks) for (const thing of things) if (isFor(task, thing)) hold(thing.tag, general.get(task.key)!)
  for (const thing of things) for (const facts of thing.ofModel) hold(thing.tag, inPlaceOf(held.get(facts.key)?.get(thing.tag) ?? general.get(facts.key), facts, 'model', null))
  const astray: VesselTask[] = []
  for (const task of vessel.maintenanceTasks) {
    const known = held.get(task.key)
    const tags = task.itemTags.length > 0 ? task.itemTags : [...known?.keys() ?? []]
    if (tags.length === 0 && !general.has(task.key)) astray.push(task)
    for (const tag of tags) if (byTag.has(tag)) hold(tag, inPlaceOf(known?.get(tag) ?? general.get(task.key), task, 'vessel', task.hoursOfTag))
  }

  const all = [...held].flatMap(([, ofKey]) => [...ofKey].map(([tag, told]) => ({ thing: byTag.get(tag)!, told })))
  const sound = all.filter(({ told }) => !told.notDone && missing(told) === null)
  return {
    assigned: inJobs(sound),
    notDone: struckOut(all.filter(({ told }) => told.notDone)),
    findings: [
      ...[...grouped(all.filter(({ told }) => !told.notDone && missing(told) !== null), ({ told }) => [`${told.origin} ${told.key}`]).values()].map(([first]) => incomplete(first!.told, first!.thing, [...general.keys()])),
      ...astray.map(task => find(taskIncomplete, { subject: { kind: 'maintenance task', id: task.key }, field: null, evidence: {}, limit: null, context: { what: 'Maintenance task', key: 'it', lacks: 'items', ...nearestOf(task.key, [...general.keys()]) } })),
    ],
  }
}

const isFor = ({ kinds, spaces, onlyWhenAsked }: GeneralTask, thing: Maintained): boolean =>
  !onlyWhenAsked && thing.kinds.some(kind => kinds.includes(kind)) && (spaces.length === 0 || (thing.space !== null && spaces.includes(thing.space)))

const toldOf = (task: GeneralTask): Told => {
  const { kinds: _, spaces: _spaces, onlyWhenAsked: _asked, citation: _citation, ...facts } = task
  return { ...facts, origin: 'general', hoursOfTag: null }
}

const hasInterval = ({ everyDaysCount, everyMonthsCount, everyRunningH, everyMadeMonthsCount, lifeMonthsCount, onMarkedDate }: TaskFacts): boolean =>
  onMarkedDate || [everyDaysCount, everyMonthsCount, everyRunningH, everyMadeMonthsCount, lifeMonthsCount].some(every => every !== null)

/** What is said stands, what is not said stays; an interval that is said stands for all the intervals there were. */
function inPlaceOf(base: Told | undefined, facts: TaskFacts, origin: 'model' | 'vessel', hoursOfTag: Tag | null): Told {
  const intervals = base !== undefined && !hasInterval(facts) ? base : facts
  return {
    key: facts.key,
    title: facts.title ?? base?.title ?? null,
    everyDaysCount: intervals.everyDaysCount, everyMonthsCount: intervals.everyMonthsCount, everyRunningH: intervals.everyRunningH,
    everyMadeMonthsCount: intervals.everyMadeMonthsCount, lifeMonthsCount: intervals.lifeMonthsCount, onMarkedDate: intervals.onMarkedDate,
    seasons: facts.seasons.length > 0 ? facts.seasons : base?.seasons ?? [],
    by: facts.by ?? base?.by ?? 'owner',
    how: facts.how.length > 0 ? facts.how : base?.how ?? [],
    inOrder: facts.inOrder ?? base?.inOrder ?? null,
    parts: facts.parts.length > 0 ? facts.parts : base?.parts ?? [],
    source: facts.source ?? base?.source ?? null,
    notDone: facts.notDone,
    reason: facts.reason ?? base?.reason ?? null,
    group: base?.group ?? ownGroups[origin],
    origin,
    hoursOfTag: hoursOfTag ?? base?.hoursOfTag ?? null,
  }
}

function missing(told: Told): string | null {
  const lacks = [told.title === null ? 'a title' : null, hasInterval(told) || told.seasons.length > 0 ? null : 'an interval or a season'].filter(each => each !== null)
  return lacks.length === 0 ? null : lacks.join(' and ')
}

function incomplete(told: Told, thing: Maintained, generalKeys: readonly string[]): Finding {
  const about = { evidence: {}, limit: null }
  const why = { lacks: missing(told)!, ...nearestOf(told.key, generalKeys) }
  return told.origin === 'vessel'
    ? find(taskIncomplete, { ...about, subject: { kind: 'maintenance task', id: told.key }, field: null, context: { what: 'Maintenance task', key: 'it', ...why } })
    : find(taskIncomplete, { ...about, subject: { kind: 'equipment', id: thing.tag }, field: 'maintenance', context: { what: 'Item', key: `the task ${told.key} of its model`, ...why } })
}

/** Things for which a task is the same are done together. */
function inJobs(sound: readonly { thing: Maintained; told: Told }[]): readonly Assigned[] {
  const groups = grouped(sound, ({ told }) => [JSON.stringify(told)])
  const taken = new Set<string>()
  return [...groups.values()].map((same): Assigned => {
    const [{ thing, told }] = same as [typeof same[number]]
    // Which of several ways of one key it is, by what does not change with the next issue.
    const apart = { general: '', model: `.${thing.model}`, vessel: `.${thing.tag}` }[told.origin]
    const id = taken.has(`${told.key}${apart}`) ? `${told.key}${apart}.${thing.tag}` : `${told.key}${apart}`
    taken.add(id)
    return { task: told as EffectiveTask, id, things: same.map(each => each.thing) }
  })
}

function struckOut(struck: readonly { thing: Maintained; told: Told }[]): readonly NotDone[] {
  return [...grouped(struck, ({ told }) => [`${told.key} ${told.reason}`]).values()].map(same =>
    ({ key: same[0]!.told.key, title: same[0]!.told.title ?? same[0]!.told.key, itemTags: same.map(({ thing }) => thing.tag), reason: same[0]!.told.reason }))
}
