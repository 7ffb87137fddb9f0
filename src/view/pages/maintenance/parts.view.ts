/** Parts and consumables, and how many spare fuses to carry. */
import { grouped } from '../../../model/lookup.js'
import type { Job } from '../../../model/results/maintenance.js'
import type { Part } from '../../../model/vessel.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { dash, joined, lineBreak, orDash } from '../../text.js'
import type { Page, Table, Text } from '../../view-model.js'
import { placeText } from '../../parts/item-parts.js'
import { spareStores } from '../fault-tracing/fault-words.js'
import { maintenanceKeys, maintenanceTrail } from './keys.js'
import { tagsText } from './task-text.js'

export const partsPage = (context: ViewContext): Page => ({
  key: maintenanceKeys.parts, title: 'Parts and spare fuses', kicker: null, printed: null, trail: maintenanceTrail,
  lead: ['What the tasks need, and what to carry. A fuse is replaced by one of the same type and rating, never by a larger one.'],
  blocks: [partsTable(context), fusesTable(context)],
})

function partsTable(context: ViewContext): Table {
  const needed = context.results.maintenance.jobs.flatMap(job => job.task.parts.map(part => ({ job, part })))
  // A part that several tasks need stands once.
  const rows = [...grouped(needed, ({ part }) => [JSON.stringify(part)]).values()]
  return tableOf(rows, {
    id: 'parts',
    caption: 'Parts and consumables',
    empty: 'No task has parts recorded.',
    columns: [
      { title: 'Part', width: 'text', cell: ([first]) => [first!.part.name] },
      { title: 'Maker’s number', width: 'short', cell: ([first]) => numberText(first!.part) },
      { title: 'Quantity', width: 'short', cell: ([first]) => orDash(first!.part.quantity) },
      { title: 'For', width: 'text', cell: same => joined(same.map(({ job }) => forText(context, job)), lineBreak) },
      { title: 'Spare kept', width: 'text', cell: ([first]) => orDash(first!.part.keptAt) },
    ],
  })
}

const numberText = ({ number }: Part): Text => (number === null ? dash : [{ is: 'tag', text: number }])
const forText = (context: ViewContext, { task, items }: Job): Text => [`${task.title}: `, ...tagsText(context, items.map(({ itemTag }) => itemTag))]

function fusesTable(context: ViewContext): Table {
  const stores = spareStores(context)
  const kept: Text = stores.length === 0 ? [] : [' Tools and spares are kept: ', ...joined(stores.map(store => [...context.named(store.tag), ', ', ...placeText(context, store, { withAccess: false })]), '; '), '.']
  return tableOf(context.results.cableBill.spareFuses, {
    id: 'spare-fuses',
    caption: 'Spare fuses to carry',
    empty: 'No circuit is protected by a fuse.',
    note: ['Common practice, no source: of small plug-in fuses two of each rating, or one for four fitted where that is more; of bolted fuses one of each rating.', ...kept],
    columns: [
      { title: 'Type', width: 'text', cell: ({ device }) => [device] },
      { title: 'Rating', width: 'number', cell: ({ ratedCurrentA }) => [say('ratedCurrentA', ratedCurrentA)] },
      { title: 'Fitted', width: 'number', cell: ({ circuitTags }) => [String(circuitTags.length)] },
      { title: 'To carry', width: 'number', cell: ({ spareCount }) => [String(spareCount)] },
      { title: 'Circuits', width: 'text', cell: ({ circuitTags }) => tagsText(context, circuitTags) },
    ],
  })
}
