/** Chapters of the manual of the vessel folder that list the keys of the manual's own text: tasks, contents, label sizes, pages. */
import type { Content, GeneralTask } from '../model/content.js'
import { emergencyTasks, ownerTasks } from '../references/procedure-places.js'
import { requiredContents } from '../references/tables/required-contents.js'
import type { LabelSize } from '../model/vessel.js'
import type { KindKey } from './schema/kinds.js'

export type ListedContent = Pick<Content, 'maintenanceTasks' | 'labelSizes' | 'emergency' | 'owner'>

interface ListChapter { readonly title: string; readonly anchor: string; readonly kinds: readonly KindKey[]; readonly lines: (content: ListedContent) => readonly string[] }

const chapters: readonly ListChapter[] = [
  {
    title: 'Pages that a procedure can take the place of', anchor: 'pages-that-a-procedure-can-take-the-place-of', kinds: ['procedures'],
    lines: ({ emergency, owner }) => table(['Place', 'Page', 'Part of the manual'], [
      ...emergencyTasks.map(place => [code(place), emergency.get(place)?.title ?? '', 'Emergency']),
      ...ownerTasks.map(place => [code(place), owner.get(place)?.title ?? '', 'Living with the boat']),
    ]),
  },
  {
    title: 'General tasks of maintenance', anchor: 'general-tasks-of-maintenance', kinds: ['maintenance-tasks', 'maintenance-records'],
    lines: ({ maintenanceTasks }) => table(['Key', 'What is done', 'How often', 'For'], maintenanceTasks.map(task => [code(task.key), task.title, interval(task), appliesTo(task)])),
  },
  {
    title: 'Contents asked of an owner’s manual', anchor: 'contents-asked-of-an-owners-manual', kinds: ['manual-contents'],
    lines: () => table(['Key', 'What it is', 'Need'], Object.entries(requiredContents).map(([key, { title, need }]) => [code(key), title, need])),
  },
  {
    title: 'Label sizes that the program knows', anchor: 'label-sizes-that-the-program-knows', kinds: ['label-sizes'],
    lines: ({ labelSizes }) => table(['Key', 'What it is', 'Used for, unless the folder says otherwise'], labelSizes.map(({ key, title, uses }: LabelSize) => [code(key), title, uses.join(', ')])),
  },
]

export const listChapters = (content: ListedContent): readonly string[] => chapters.map(({ title, lines }) => [`## ${title}`, '', ...lines(content)].join('\n'))

/** Where the keys that a kind of entry takes are listed, as a paragraph of its chapter. */
export const listsFor = (kind: KindKey): readonly string[] =>
  chapters.filter(({ kinds }) => kinds.includes(kind)).flatMap(({ title, anchor }) => ['', `Its keys: [${title}](#${anchor}).`])

function interval(task: GeneralTask): string {
  const every = (count: number | null, unit: string, after = ''): string | null =>
    count === null ? null : `every ${count === 1 ? unit : `${count} ${unit}s`}${after}`
  return [
    every(task.everyDaysCount, 'day'), every(task.everyMonthsCount, 'month'), every(task.everyRunningH, 'running hour'), every(task.everyMadeMonthsCount, 'month', ' from when it was made'),
    task.lifeMonthsCount === null ? null : `at the end of ${task.lifeMonthsCount} months of life`, task.onMarkedDate ? 'on the date marked on it' : null, ...task.seasons,
  ].filter(each => each !== null).join('; ')
}

const appliesTo = ({ kinds, spaces, onlyWhenAsked }: GeneralTask): string =>
  `${kinds.join(', ')}${spaces.length === 0 ? '' : `, in spaces of the kind ${spaces.join(', ')}`}${onlyWhenAsked ? '; only where the folder or the model asks for it' : ''}`

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): readonly string[] =>
  [heads, heads.map(() => '---'), ...rows].map(cells => `| ${cells.join(' | ')} |`)
const code = (word: string): string => `\`${word}\``
