/** What was done, and sheets to write on. */
import { isThere } from '../../../model/lookup.js'
import type { MaintenanceRecord, RunningHours, Tag } from '../../../model/vessel.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { byTag, type ColumnOf, tableOf } from '../../tables.js'
import { muted, orDash } from '../../text.js'
import type { Page, Table } from '../../view-model.js'
import { maintenanceKeys, maintenanceTrail } from './keys.js'

const logLinesCount = 17
const hoursLinesCount = 17

export function logPage(context: ViewContext): Page {
  return {
    key: maintenanceKeys.log, title: 'Log', kicker: null, printed: null, trail: maintenanceTrail,
    lead: ['Write here what was done, and hand it to whoever keeps the data of this manual: the next issue counts from it.'],
    blocks: [recordTable(context), ...readingTables(context), logSheet, hoursSheet(context)],
  }
}

function recordTable(context: ViewContext): Table {
  const title = new Map(context.results.maintenance.jobs.map(({ task }) => [task.key, task.title]))
  const latestFirst = (a: MaintenanceRecord, b: MaintenanceRecord): number => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0)
  return tableOf(context.vessel.maintenanceRecords.toSorted(latestFirst), {
    id: 'maintenance-records',
    caption: 'Done so far',
    empty: 'Nothing is recorded as done.',
    columns: [
      { title: 'Date', width: 'short', cell: ({ date }) => [date] },
      { title: 'What', width: 'text', cell: ({ taskKey }) => [title.get(taskKey) ?? taskKey] },
      { title: 'On', width: 'short', cell: ({ itemTag }) => (itemTag === null ? [muted('all')] : [context.tag(itemTag)]) },
      { title: 'Hours', width: 'number', cell: ({ runningH }) => orDash(runningH === null ? null : say('runningH', runningH)) },
      { title: 'By', width: 'short', cell: ({ by }) => orDash(by) },
      { title: 'Found', width: 'text', cell: ({ notes }) => orDash(notes) },
    ],
  })
}

function readingTables(context: ViewContext): readonly Table[] {
  const { counters } = context.results.maintenance
  if (counters.size === 0) return []
  const readings = context.vessel.runningHours.toSorted((a, b) => byTag({ tag: a.itemTag }, { tag: b.itemTag }) || (a.date < b.date ? -1 : 1))
  const rates = [...counters.values()].map(({ itemTag, perYearH, rate }) => `${itemTag}: ${perYearH === null ? 'not known' : `${say('runningH', perYearH)}${rate === 'entered' ? '' : ', from its readings'}`}`)
  const table = tableOf<RunningHours>(readings, {
    id: 'running-hours',
    caption: 'Running hours',
    empty: '',
    note: [`Hours in a year, by which dates are told ahead: ${rates.join('; ')}.`],
    columns: [
      { title: 'Counter', width: 'text', cell: ({ itemTag }) => context.named(itemTag) },
      { title: 'Date', width: 'short', cell: ({ date }) => [date] },
      { title: 'Hours', width: 'number', cell: ({ runningH }) => [say('runningH', runningH)] },
      { title: 'By', width: 'short', cell: ({ by }) => orDash(by) },
    ],
  })
  return [table]
}

const blank = (count: number): readonly null[] => Array.from({ length: count }, () => null)
const toFill = (title: string, width: ColumnOf<null>['width']): ColumnOf<null> => ({ title, width, cell: () => [] })

const logSheet: Table = tableOf(blank(logLinesCount), {
  id: 'log-sheet', caption: 'Log sheet', empty: '', forPen: true, layout: 'log sheet',
  columns: [toFill('Date', 'short'), toFill('Hours', 'short'), toFill('Task', 'text'), toFill('On', 'short'), toFill('Found, parts used', 'text'), toFill('By', 'short'), toFill('Signature', 'short')],
})

function hoursSheet(context: ViewContext): Table {
  const read = [...context.results.maintenance.counters.keys()]
  const engines = context.vessel.equipment.filter(item => (item.kind === 'engine' || item.kind === 'generator') && isThere(item)).map(({ tag }) => tag)
  const tags: readonly Tag[] = [...new Set([...read, ...engines])].toSorted((a, b) => byTag({ tag: a }, { tag: b }))
  return tableOf(tags.length === 0 ? [] : blank(hoursLinesCount), {
    id: 'hours-sheet', caption: 'Running hours, sheet', empty: 'No engine or generator is recorded.', forPen: true, layout: 'hours sheet',
    columns: [toFill('Date', 'short'), ...tags.map(tag => toFill(`${tag} ${context.nameOf(tag) ?? ''}`.trim(), 'short')), toFill('By', 'short')],
  })
}
