/** The column method on the energy page: every battery and feeder, and each panel load by load. */
import type { ColumnItem, ColumnLoad } from '../../../model/results/energy.js'
import { cite } from '../../../references/bibliography.js'
import { loadColumnCitation } from '../../../references/tables/load-columns.js'
import { sayForWorking } from '../../../units/format.js'
import { comparisonText } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { tableOf } from '../../tables.js'
import { dash, joined, lineBreak, muted } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export function columnSummary(context: ViewContext): Table {
  const input = ({ total }: ColumnLoad, name: 'columnASumA' | 'columnBSumA' | 'columnBLargestA'): Text => (total.status === 'computed' ? [sayForWorking(name, total.input[name], 'result')] : dash)
  return tableOf(context.results.energy.columns, {
    id: 'column-method-summary',
    caption: 'Load by the column method',
    empty: 'No battery and no feeder is recorded.',
    columns: [
      { title: 'Battery or feeder', width: 'text', cell: load => [...context.named(load.tag), ...(load.pointTags.length === 0 ? [] : [lineBreak, muted('feeds '), ...joined(load.pointTags.map(tag => [context.tag(tag)]))])] },
      { title: 'A', width: 'number', cell: load => input(load, 'columnASumA') },
      { title: 'B', width: 'number', cell: load => input(load, 'columnBSumA') },
      { title: 'Largest B', width: 'number', cell: load => input(load, 'columnBLargestA') },
      { title: 'Load', width: 'number', cell: ({ total }) => (total.status === 'computed' ? [sayForWorking('columnTotalA', total.output.columnTotalA, 'result')] : [muted('not assessed')]) },
      { title: 'Design current', width: 'number', cell: load => sayOrDash('designCurrentA', load.designCurrentA, context.vessel) },
      { title: 'Held against', width: 'text', cell: load => limitsText(context, load) },
    ],
    note: [`Load = A + the larger of 10 % of B and the largest of B. ${cite(loadColumnCitation)}. It sizes feeder, protective device and battery isolator; an isolator is to be rated for the load of its battery; ratings of switches are under Protection and short circuit. The design current is the sum of the circuits with their demand factors.`],
  })
}

function limitsText(context: ViewContext, { againstProtection, againstPanel }: ColumnLoad): Text {
  const lines = [
    ...(againstProtection === null ? [] : [[muted('device '), ...comparisonText(againstProtection, context)]]),
    ...(againstPanel === null ? [] : [[muted('panel '), ...comparisonText(againstPanel, context)]]),
  ]
  return lines.length === 0 ? dash : joined(lines, lineBreak)
}

/** What stands in the table of a feeder is not repeated for its battery, nor for the feeders above. */
export function columnBlocks(context: ViewContext): readonly Block[] {
  const { columns } = context.results.energy
  return [
    columnSummary(context),
    ...columns.filter(({ items }) => items.length > 0).flatMap((load): Block[] => {
      const below = columns.filter(({ tag, items }) => tag !== load.tag && items.length > 0 && isWithin(items, load.items, load.pointTags.length === 0))
      const elsewhere = new Set(below.flatMap(({ items }) => items.map(({ tag }) => tag)))
      const own = load.items.filter(({ tag }) => !elsewhere.has(tag))
      return [
        ...(own.length === 0 ? [] : [itemTable(context, load, own, below)]),
        workingOf(context, `Load of ${load.tag} by the column method`, load.total),
      ]
    }),
  ]
}

/** Whether all loads of one are among those of the other, and fewer; a battery may have the same as its only feeder. */
const isWithin = (items: readonly ColumnItem[], among: readonly ColumnItem[], orAll: boolean): boolean =>
  (items.length < among.length || (orAll && items.length === among.length)) && items.every(({ tag }) => among.some(other => other.tag === tag))

const order: Readonly<Record<ColumnItem['column'], number>> = { a: 0, b: 1, none: 2 }

const itemTable = (context: ViewContext, load: ColumnLoad, items: readonly ColumnItem[], below: readonly ColumnLoad[]): Table => tableOf(items.toSorted((a, b) => order[a.column] - order[b.column] || b.currentA - a.currentA), {
  id: `column-items-${load.tag}`,
  caption: `Columns of ${load.tag}`,
  empty: '',
  ...(below.length === 0 ? {} : { note: [muted('Further loads stand under '), ...joined(below.map(({ tag }) => [context.tag(tag)])), muted('.')] }),
  columns: [
    { title: 'Load', width: 'text', cell: item => context.named(item.tag) },
    { title: 'Column', width: 'short', cell: item => [item.column === 'none' ? 'left out' : item.column.toUpperCase()] },
    { title: 'Current', width: 'number', cell: item => [sayForWorking('currentA', item.currentA, 'result')] },
    { title: 'Why there', width: 'text', cell: item => [item.reason] },
  ],
})
