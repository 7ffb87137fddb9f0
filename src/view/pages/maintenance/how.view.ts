/** Every task with its steps, what tells that it is in order, and who asks for it. */
import { grouped } from '../../../model/lookup.js'
import type { Job } from '../../../model/results/maintenance.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { lineBreak, linkTo, muted, orDash, strong } from '../../text.js'
import type { Page, Table, Text } from '../../view-model.js'
import { fixedPages } from '../../site-map.js'
import { maintenanceKeys, maintenanceTrail } from './keys.js'
import { intervalText, tagsText } from './task-text.js'

export function howPage(context: ViewContext): Page {
  const groups = grouped(context.results.maintenance.jobs, ({ task }) => [task.group])
  return {
    key: maintenanceKeys.how, title: 'How it is done', kicker: null, trail: maintenanceTrail,
    lead: [
      'Read ', linkTo(fixedPages.safety, 'Safety'), ' first: what is opened is isolated and proved dead. The maker’s manual comes before this one, and local rules before both. ',
      'Record what was done under the key in grey, and the next date follows.',
    ],
    blocks: [...groups].map(([group, jobs], i) => howTable(context, group, jobs, i)),
    printed: [printedHow(groups)],
  }
}

const howTable = (context: ViewContext, group: string, jobs: readonly Job[], i: number): Table => tableOf(jobs, {
  id: `how-${i + 1}`,
  caption: group,
  empty: '',
  columns: [
    { title: 'What', width: 'text', cell: ({ task, items }) => [strong(task.title), lineBreak, ...tagsText(context, items.map(({ itemTag }) => itemTag)), lineBreak, { is: 'tag', text: task.key }] },
    { title: 'How', width: 'text', cell: ({ task }) => howText(task) },
    { title: 'In order when', width: 'text', cell: ({ task }) => orDash(task.inOrder) },
    { title: 'Every, by whom, asked by', width: 'short', cell: ({ task }) => [intervalText(task), lineBreak, task.by, lineBreak, muted([task.source, task.origin === 'general' ? null : task.reason].filter(each => each !== null).join('; '))] },
  ],
})

type PrintedLine = string | Job['task']

/** On paper one table, since short ones would not be parted over sheets; the list by date has what each is done to. */
function printedHow(groups: ReadonlyMap<string, readonly Job[]>): Table {
  const lines = [...groups].flatMap(([group, jobs]): readonly PrintedLine[] => [group, ...differing(jobs).map(({ task }) => task)])
  return tableOf(lines, {
    id: 'how',
    caption: 'Task by task',
    empty: '',
    layout: 'by group',
    columns: [
      { title: 'What', width: 'short', cell: line => (typeof line === 'string' ? [strong(line)] : [strong(line.title), lineBreak, { is: 'tag', text: line.key }]) },
      { title: 'How, and in order when', width: 'text', cell: line => (typeof line === 'string' ? [] : [...howText(line), ...(line.inOrder === null ? [] : [' ', muted('In order when:'), ` ${line.inOrder}`])]) },
      { title: 'Every, by, asked by', width: 'short', cell: line => (typeof line === 'string' ? [] : [`${intervalText(line)}, ${line.by}`, ...(line.source === null ? [] : [lineBreak, muted(line.source)])]) },
    ],
  })
}

/** What differs in its parts alone is done alike. */
const differing = (jobs: readonly Job[]): readonly Job[] =>
  [...grouped(jobs, ({ task }) => [`${task.title} ${howLines(task)} ${intervalText(task)}`]).values()].map(([first]) => first!)

const howLines = ({ how }: Job['task']): string => how.join(' ')

/** Steps in their order; one step alone has no number. */
export const howText = ({ how }: Job['task']): Text =>
  how.flatMap((step, i): Text => [...(i === 0 ? [] : [lineBreak]), how.length === 1 ? step : `${i + 1}. ${step}`])
