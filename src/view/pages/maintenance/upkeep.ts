/** On the page of a thing: what is to be done to it, how, and when next. */
import type { Job, TaskDue } from '../../../model/results/maintenance.js'
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { lineBreak, linkTo, muted, orDash, strong } from '../../text.js'
import type { Block } from '../../view-model.js'
import { howText } from './how.view.js'
import { dueText, intervalText, levelOf } from './task-text.js'

export function upkeepBlocks(context: ViewContext, tag: Tag): readonly Block[] {
  const { jobs, asOf } = context.results.maintenance
  const rows = jobs.flatMap(job => job.items.filter(({ itemTag }) => itemTag === tag).map(due => ({ job, due })))
  if (rows.length === 0) return []
  return [tableOf<{ job: Job; due: TaskDue }>(rows, {
    id: 'upkeep',
    caption: 'Upkeep',
    empty: '',
    note: [...(asOf === null ? [] : [`As of ${asOf.on}, the ${asOf.is}. `]), 'All of it is under ', linkTo(fixedPages.maintenance, 'Maintenance'), '.'],
    level: ({ due }) => levelOf(due.state),
    columns: [
      { title: 'What', width: 'text', cell: ({ job: { task } }) => [strong(task.title), lineBreak, ...howText(task)] },
      { title: 'Every', width: 'short', cell: ({ job: { task } }) => [intervalText(task), lineBreak, muted(`by ${task.by}`)] },
      { title: 'Last done', width: 'short', cell: ({ due }) => orDash(due.lastDoneOn) },
      { title: 'Next due', width: 'short', cell: ({ due }) => dueText(due) },
    ],
  })]
}
