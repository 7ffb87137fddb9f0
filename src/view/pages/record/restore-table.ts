/** What a replacement of a device must be given, as a table: for the configuration record and for the device's own page. */
import type { RestoreFact } from '../../../model/results/configuration.js'
import type { Setting, Tag } from '../../../model/vessel.js'
import { sayBoth } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { joined, muted, notRecorded } from '../../text.js'
import type { Table, Text } from '../../view-model.js'

export type RestoreRow = { readonly is: 'fact'; readonly fact: RestoreFact } | { readonly is: 'setting'; readonly setting: Setting }

/** Entries of the data first, in the order of setting up; then what was read on the device. */
export function restoreRows({ results }: ViewContext, tag: Tag): readonly RestoreRow[] {
  const { facts = [], settings = [] } = results.configuration.byItem.get(tag) ?? {}
  return [...facts.map((fact): RestoreRow => ({ is: 'fact', fact })), ...settings.map((setting): RestoreRow => ({ is: 'setting', setting }))]
}

export function restoreTable(context: ViewContext, tag: Tag, of: { readonly id: string; readonly caption: string }): Table {
  return tableOf(restoreRows(context, tag), {
    ...of, empty: 'Nothing is recorded.',
    columns: [
      { title: 'Setting, and where in its menus', width: 'text', cell: row => withRemark(nameOf(row), row.is === 'fact' ? null : row.setting.menu) },
      { title: 'Value', width: 'text', cell: row => withRemark(valueText(context, row), row.is === 'fact' ? row.fact.remark : row.setting.notes) },
      { title: 'As of', width: 'short', cell: row => asOfText(row) },
    ],
  })
}

export const nameOf = (row: RestoreRow): string => (row.is === 'fact' ? row.fact.name : row.setting.name)

export function valueText({ vessel }: Pick<ViewContext, 'vessel'>, row: RestoreRow): string {
  if (row.is === 'setting') return row.setting.value
  const { value } = row.fact
  if (typeof value === 'string') return value
  return [sayBoth(value.quantity, value.value, vessel), value.words].filter(word => word !== '').join(', ')
}

const withRemark = (value: string, remark: string | null): Text => (remark === null ? [value] : [value, { is: 'break' }, muted(remark)])

function asOfText(row: RestoreRow): Text {
  if (row.is === 'fact') return [muted(row.fact.from)]
  const { date, by } = row.setting
  return date === null && by === null ? [notRecorded] : joined([date, by].filter(word => word !== null).map(word => [word]))
}
