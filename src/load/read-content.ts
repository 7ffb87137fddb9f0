/** Reads the manual's general text. It is part of the program: a broken file is a fault of ours, so it throws. */
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parse } from 'yaml'
import { z } from 'zod'
import type { Caution, Content, ContentPage } from '../model/content.js'
import { cautionPages, hazards, signalWords } from '../references/caution-words.js'
import { itemKindTitle } from '../references/item-kinds.js'
import { readMaintenance } from './read-maintenance.js'
import { emergencyTasks, ownerTasks, procedurePlaces } from '../references/procedure-places.js'
import { systemKinds } from '../references/system-kinds.js'
import { readDangerTexts, readLabelSizes } from './read-labels.js'

const contentFolder = fileURLToPath(new URL('../../content', import.meta.url))

const kindsMatter = z.array(z.string().refine(kind => itemKindTitle(kind) !== null, { error: 'no kind of equipment' }))
const pageMatter = z.strictObject({ title: z.string().min(1) })
const taskMatter = pageMatter.extend({ lead: z.string().min(1) })
const operatingMatter = pageMatter.extend({ kinds: kindsMatter })
const cautionMatter = z.strictObject({
  signal: z.enum(signalWords),
  title: z.string().min(1),
  hazard: z.enum(hazards),
  'on-every-boat': z.boolean().default(false),
  'equipment-kinds': kindsMatter,
  needs: kindsMatter.default([]),
  systems: z.array(z.enum(systemKinds)).default([]),
  tasks: z.array(z.enum(procedurePlaces)).default([]),
  pages: z.array(z.enum(cautionPages)).default([]),
})

/** The program's own text does not change while it runs: it is read once. */
let own: Promise<Content> | null = null

/** The manual's general text, or that of another folder. */
export const readContent = (folder: string = contentFolder): Promise<Content> => (folder === contentFolder ? own ??= readFrom(folder) : readFrom(folder))

async function readFrom(folder: string): Promise<Content> {
  const [pages, cautions, emergency, owner, operating, systems, faultTrees, maintenanceTasks, labelSizes, dangerTexts] = await Promise.all([
    readMarkdown(folder, pageMatter),
    readMarkdown(join(folder, 'cautions'), cautionMatter),
    readMarkdown(join(folder, 'emergency'), taskMatter),
    readMarkdown(join(folder, 'owner'), taskMatter),
    readMarkdown(join(folder, 'operating'), operatingMatter),
    readMarkdown(join(folder, 'systems'), pageMatter),
    readMarkdown(join(folder, 'fault-trees'), pageMatter),
    readMaintenance(join(folder, 'maintenance')),
    readLabelSizes(join(folder, 'label-sizes.yaml')),
    readDangerTexts(join(folder, 'danger-labels.yaml')),
  ])
  return {
    pages: new Map(pages.map(({ name, matter, markdown }): [string, ContentPage] => [name, { title: matter.title, markdown }])),
    cautions: cautions.map(({ name, matter, markdown }): Caution => ({
      key: keyOf(name), signal: matter.signal, title: matter.title, markdown, hazard: matter.hazard, equipmentKinds: matter['equipment-kinds'], needs: matter.needs, onEveryBoat: matter['on-every-boat'],
      systems: matter.systems, tasks: matter.tasks, pages: matter.pages,
    })),
    emergency: byName(emergencyTasks, emergency),
    owner: byName(ownerTasks, owner),
    operating: operating.map(({ name, matter, markdown }) => ({ key: name, title: matter.title, kinds: matter.kinds, markdown })),
    systems: byName(systemKinds, systems),
    faultTrees: faultTrees.map(({ name, matter, markdown }) => ({ key: keyOf(name), title: matter.title, markdown })),
    maintenanceTasks,
    labelSizes,
    dangerTexts,
  }
}

interface Read<M> { readonly name: string; readonly matter: M; readonly markdown: string }

/** A text for each of the names; a file that none of them names is a fault. */
function byName<N extends string, M extends object>(names: readonly N[], read: readonly Read<M>[]): ReadonlyMap<N, M & { readonly markdown: string }> {
  const strange = read.filter(({ name }) => !names.some(known => known === name))
  if (strange.length > 0) throw new Error(`${strange[0]!.name}.md: one of ${names.join(', ')} is expected as its name`)
  return new Map(read.map(({ name, matter, markdown }) => [name as N, { ...matter, markdown }]))
}

/** `03-live-working` → `live-working`: the number only gives the order. */
function keyOf(name: string): string {
  const [, key] = /^\d{2}-(.+)$/.exec(name) ?? []
  if (key === undefined) throw new Error(`${name}.md: the name of a caution starts with two digits and a dash`)
  return key
}

async function readMarkdown<T>(folder: string, matterSchema: z.ZodType<T>): Promise<readonly Read<T>[]> {
  const names = (await readdir(folder)).filter(name => name.endsWith('.md')).sort()
  return Promise.all(names.map(async name => {
    const file = join(folder, name)
    const [, head, body] = /^---\r?\n(.*?)\r?\n---\r?\n(.*)$/s.exec(await readFile(file, 'utf8')) ?? []
    if (head === undefined || body === undefined) throw new Error(`${file}: no front matter between two lines of ---`)
    const markdown = body.trim()
    if (markdown === '') throw new Error(`${file}: no text below the front matter`)
    return { name: name.slice(0, -'.md'.length), matter: readMatter(file, head, matterSchema), markdown }
  }))
}

function readMatter<T>(file: string, head: string, schema: z.ZodType<T>): T {
  try {
    return schema.parse(parse(head))
  } catch (error) {
    const reason = error instanceof z.ZodError ? z.prettifyError(error) : String(error)
    throw new Error(`${file}: the front matter cannot be used: ${reason}`, { cause: error })
  }
}
