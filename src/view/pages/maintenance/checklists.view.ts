/** Checklists by season: zone after zone, as one walks the boat. */
import type { Job } from '../../../model/results/maintenance.js'
import type { Tag } from '../../../model/vessel.js'
import type { Season } from '../../../references/maintenance-words.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { counted, linkTo, muted, orDash, strong } from '../../text.js'
import type { Page, PageKey, Table } from '../../view-model.js'
import { maintenanceKeys, maintenanceTrail } from './keys.js'
import { tagsText, thingsText, zoneOf } from './task-text.js'

interface Line { readonly zoneTag: Tag | null; readonly opensZone: boolean; readonly job: Job; readonly tags: readonly Tag[] }

const lists: readonly { readonly season: Season; readonly key: PageKey; readonly title: string; readonly opening: string }[] = [
  { season: 'spring', key: maintenanceKeys.spring, title: 'Spring checklist', opening: 'Before she is launched, or at the start of the year where she stays afloat.' },
  { season: 'autumn', key: maintenanceKeys.autumn, title: 'Autumn checklist', opening: 'When she is laid up, or before the winter where she stays afloat.' },
  { season: 'before a passage', key: maintenanceKeys.beforeAPassage, title: 'Before a passage', opening: 'On the day before, and daily and weekly tests with it.' },
]

export const checklistPages = (context: ViewContext): readonly Page[] => lists.flatMap(({ season, key, title, opening }) => {
  const lines = linesOf(context, season)
  return lines.length === 0 ? [] : [{
    key, title, kicker: null, trail: maintenanceTrail,
    lead: [`${opening} ${counted(lines.length, 'line')}, zone after zone. Steps are under `, linkTo(maintenanceKeys.how, 'How it is done'), '.'],
    blocks: [checklist(context, key, title, lines, { onPaper: false })], printed: [checklist(context, key, title, lines, { onPaper: true })],
  }]
})

/** In the order in which the zones are entered, and in each in that of the tasks. Routine tests go along before a passage. */
function linesOf(context: ViewContext, season: Season): readonly Line[] {
  const jobs = context.results.maintenance.jobs.filter(({ task, isRoutine }) => task.seasons.includes(season) || (isRoutine && season === 'before a passage'))
  return [...context.vessel.zones.map(({ tag }) => tag), null].flatMap(zoneTag => jobs.flatMap(job => {
    const tags = job.items.map(({ itemTag }) => itemTag).filter(tag => zoneOf(context, tag) === zoneTag)
    return tags.length === 0 ? [] : [{ zoneTag, job, tags }]
  }).map((line, i) => ({ ...line, opensZone: i === 0 })))
}

/** On paper there is room to write what was found; what tells that it is in order stands with the steps. */
const checklist = (context: ViewContext, key: PageKey, title: string, lines: readonly Line[], { onPaper }: { readonly onPaper: boolean }): Table => tableOf(lines, {
  id: key.replace('/', '-'),
  caption: title,
  empty: '',
  layout: 'checklist',
  columns: [
    { title: 'Zone', width: 'short', cell: ({ zoneTag, opensZone }) => (opensZone ? [strong(zoneTag === null ? 'No zone recorded' : context.nameOf(zoneTag) ?? zoneTag)] : []) },
    { title: 'Done', width: 'tag', align: 'center', cell: () => ['☐'] },
    { title: 'What', width: 'text', cell: ({ job: { task } }) => [task.title, ...(task.by === 'owner' ? [] : [' ', muted(`(${task.by})`)])] },
    { title: 'On', width: 'short', cell: ({ tags }) => (onPaper ? tagsText : thingsText)(context, tags) },
    onPaper ? { title: 'Found', width: 'short', cell: () => [] } : { title: 'In order when', width: 'text', cell: ({ job: { task } }) => orDash(task.inOrder) },
  ],
})
