/** Reads the general tasks of maintenance: files of `content/maintenance`, a group each. A broken file is a fault of ours, so it throws. */
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { parse } from 'yaml'
import { z } from 'zod'
import type { GeneralTask } from '../model/content.js'
import { bibliography, cite, type Citation, type SourceKey } from '../references/bibliography.js'
import { isEquipmentKind } from '../references/equipment-kinds.js'
import { isMaintainedKind } from '../references/maintained-kinds.js'
import { doers, seasons } from '../references/maintenance-words.js'
import { spaceKinds } from '../references/space-kinds.js'

const standings = ['public law', 'published', 'derived', 'from memory', 'common practice'] as const
const words = z.string().min(1)
const count = z.int().min(1)

const taskSchema = z.strictObject({
  task: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)+$/),
  title: words,
  for: z.array(z.string().refine(kind => isEquipmentKind(kind) || isMaintainedKind(kind), { error: 'no kind of equipment' })).min(1),
  spaces: z.array(z.enum(spaceKinds)).default([]),
  asked: z.literal(true).optional(),
  days: count.optional(),
  months: count.optional(),
  'months-from-made': count.optional(),
  'life-months': count.optional(),
  'marked-date': z.literal(true).optional(),
  seasons: z.array(z.enum(seasons)).default([]),
  by: z.enum(doers),
  // A comma in a list without quotes would part a sentence unseen.
  how: z.array(z.string().regex(/^[A-Z].*\.$/, { error: 'a whole sentence' })).min(1),
  'in-order': z.string().regex(/^[A-Z0-9].*\.$/, { error: 'a whole sentence' }),
  parts: z.array(z.strictObject({ name: words, quantity: words.optional() })).default([]),
  source: z.strictObject({
    key: z.string().refine((key): key is SourceKey => Object.hasOwn(bibliography, key), { error: 'not in the bibliography' }),
    place: z.string().default(''),
    standing: z.enum(standings).optional(),
  }),
}).refine(task => [task.days, task.months, task['months-from-made'], task['life-months'], task['marked-date']].some(given => given !== undefined) || task.seasons.length > 0, { error: 'no interval and no season' })

const groupSchema = z.strictObject({ group: words, tasks: z.array(taskSchema).min(1) })

export async function readMaintenance(folder: string): Promise<readonly GeneralTask[]> {
  const names = (await readdir(folder)).filter(name => name.endsWith('.yaml')).sort()
  const groups = await Promise.all(names.map(async name => groupOf(name, await readFile(join(folder, name), 'utf8'))))
  const tasks = groups.flatMap(({ group, tasks: listed }) => listed.map(task => generalTaskOf(group, task)))
  const twice = tasks.find(({ key }, i) => tasks.findIndex(other => other.key === key) !== i)
  if (twice !== undefined) throw new Error(`maintenance: the task ${twice.key} is there twice`)
  return tasks
}

function groupOf(name: string, text: string): z.output<typeof groupSchema> {
  try {
    return groupSchema.parse(parse(text))
  } catch (error) {
    const reason = error instanceof z.ZodError ? z.prettifyError(error) : String(error)
    throw new Error(`maintenance/${name}: cannot be used: ${reason}`, { cause: error })
  }
}

function generalTaskOf(group: string, task: z.output<typeof taskSchema>): GeneralTask {
  const { key, place, standing } = task.source
  const citation: Citation = { source: key, place, ...(standing === undefined ? {} : { standing }) }
  return {
    key: task.task, title: task.title, group, kinds: task.for, spaces: task.spaces, onlyWhenAsked: task.asked ?? false, citation, source: cite(citation),
    everyDaysCount: task.days ?? null, everyMonthsCount: task.months ?? null, everyRunningH: null,
    everyMadeMonthsCount: task['months-from-made'] ?? null, lifeMonthsCount: task['life-months'] ?? null, onMarkedDate: task['marked-date'] ?? false,
    seasons: task.seasons, by: task.by, how: task.how, inOrder: task['in-order'],
    parts: task.parts.map(({ name, quantity }) => ({ name, number: null, quantity: quantity ?? null, keptAt: null })),
    notDone: false, reason: null,
  }
}
