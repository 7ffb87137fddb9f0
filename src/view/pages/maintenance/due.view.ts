/** What is due, by date: the overdue first. */
import type { NotDone } from '../../../model/results/maintenance.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { counted, joined, linkTo, orNotRecorded } from '../../text.js'
import type { Block, Page, Table, Text } from '../../view-model.js'
import { calendarFile } from '../../files/calendar.js'
import { maintenanceKeys } from './keys.js'
import { type DueGroup, dueGroups, dueText, intervalText, lastDoneText, levelOf, tagsText, type ThingsText, thingsText } from './task-text.js'

export function duePage(context: ViewContext): Page {
  const { jobs, notDone } = context.results.maintenance
  const groups = dueGroups(jobs)
  const dated = groups.filter(({ due }) => due.dueOn !== null)
  const undated = groups.filter(({ due }) => due.state === 'not assessed' || due.state === 'not begun')
  const lists = groups.filter(({ due }) => due.state === 'routine' || due.state === 'by list')
  const blocks = (things: ThingsText): readonly Block[] => [
    waysIn(context),
    dueTable(context, dated, things),
    ...(undated.length === 0 ? [] : [undatedTable(context, undated)]),
    ...(lists.length === 0 ? [] : [listTable(context, lists)]),
    ...(notDone.length === 0 ? [] : [notDoneTable(context, notDone)]),
  ]
  return {
    key: fixedPages.maintenance, title: 'Maintenance', kicker: null, lead: lead(context, groups), trail: [],
    blocks: blocks(thingsText), printed: blocks(tagsText),
  }
}

function lead({ results: { maintenance: { asOf } } }: ViewContext, groups: readonly DueGroup[]): Text {
  if (asOf === null) return ['No day is known for which to tell what is due: nothing here is said to be overdue. Hold the dates against today.']
  const many = (state: string): number => groups.filter(({ due }) => due.state === state).length
  const [overdue, soon] = [many('overdue') + many('due'), many('soon')]
  return [
    `As of ${asOf.on}, the ${asOf.is}: ${overdue === 0 ? 'nothing is overdue' : `${counted(overdue, 'task')} overdue`}, ${soon === 0 ? 'nothing' : String(soon)} due within 30 days. `,
    'Dates are counted from what was recorded; hold them against today.',
  ]
}

const waysIn = (context: ViewContext): Block => ({
  is: 'facts', caption: null, entries: [
    { label: 'How it is done', value: [linkTo(maintenanceKeys.how, 'Task by task'), ': steps, what tells that it is in order, who asks for it.'] },
    { label: 'Checklists', value: joined([[linkTo(maintenanceKeys.spring, 'spring')], [linkTo(maintenanceKeys.autumn, 'autumn')], [linkTo(maintenanceKeys.beforeAPassage, 'before a passage')]], ', ') },
    { label: 'To take along', value: joined([[linkTo(maintenanceKeys.parts, 'parts and spare fuses')], [linkTo(maintenanceKeys.log, 'log sheets')]], ', ') },
    ...(calendarFile(context) === null ? [] : [{ label: 'For a calendar', value: [{ is: 'pack file', file: 'maintenance.ics', text: 'maintenance.ics' } as const, ': the dates below, with reminders some days ahead. What is done daily or weekly is not in it.'] }]),
    { label: 'By whom', value: ['Owner: whoever lives on board. Competent person: who has the training and the instruments. Approved service: a station that the maker or the authority approves.'] },
  ],
})

const dueTable = (context: ViewContext, groups: readonly DueGroup[], things: ThingsText): Table => tableOf(groups, {
  id: 'maintenance-due',
  caption: 'What is due, by date',
  empty: 'No date can be counted: no delivery, no fitting and nothing done is recorded.',
  level: ({ due }) => levelOf(due.state),
  columns: [
    { title: 'Due', width: 'tag', cell: ({ due }) => dueText(due) },
    { title: 'What', width: 'text', cell: ({ job }) => [job.task.title] },
    { title: 'On', width: 'text', cell: ({ items }) => things(context, items.map(({ itemTag }) => itemTag)) },
    { title: 'Every', width: 'short', cell: ({ job }) => [intervalText(job.task)] },
    { title: 'By', width: 'short', cell: ({ job }) => [job.task.by] },
    { title: 'Last done', width: 'tag', cell: ({ items }) => lastDoneText(items) },
  ],
})

const undatedTable = (context: ViewContext, groups: readonly DueGroup[]): Table => tableOf(groups, {
  id: 'maintenance-undated',
  caption: 'What has no date',
  empty: '',
  level: ({ due }) => levelOf(due.state),
  columns: [
    { title: 'What', width: 'text', cell: ({ job }) => [job.task.title] },
    { title: 'On', width: 'text', cell: ({ items }) => thingsText(context, items.map(({ itemTag }) => itemTag)) },
    { title: 'Every', width: 'short', cell: ({ job }) => [intervalText(job.task)] },
    { title: 'Because', width: 'text', cell: ({ items }) => joined([...new Set(items.flatMap(({ limits }) => limits.map(({ reason }) => reason)))].filter(reason => reason !== null).map(reason => [reason]), '; ') },
  ],
})

const listTable = (context: ViewContext, groups: readonly DueGroup[]): Table => tableOf(groups, {
  id: 'maintenance-lists',
  caption: 'Without a date: daily, weekly, and by the lists',
  empty: '',
  columns: [
    { title: 'When', width: 'short', cell: ({ job }) => [intervalText(job.task)] },
    { title: 'What', width: 'text', cell: ({ job }) => [job.task.title] },
    { title: 'On', width: 'text', cell: ({ items }) => thingsText(context, items.map(({ itemTag }) => itemTag)) },
    { title: 'By', width: 'short', cell: ({ job }) => [job.task.by] },
  ],
})

const notDoneTable = (context: ViewContext, notDone: readonly NotDone[]): Table => tableOf(notDone, {
  id: 'maintenance-not-done',
  caption: 'Left out on this boat',
  empty: '',
  columns: [
    { title: 'What', width: 'text', cell: ({ title }) => [title] },
    { title: 'On', width: 'text', cell: ({ itemTags }) => tagsText(context, itemTags) },
    { title: 'Because', width: 'text', cell: ({ reason }) => orNotRecorded(reason) },
  ],
})
