/** Makers of tables: a column says what it is called and what goes into it, once. */
import type { Column, Row, Schedule, Table, Text } from './view-model.js'

export { byTag, compareTags } from '../model/tag-order.js'

export interface ColumnOf<T> {
  readonly title: string
  readonly unit?: string
  readonly width: Column['width']
  readonly align?: Column['align']
  cell(thing: T): Text
}

export interface TableOf<T> {
  readonly id: string
  readonly caption: string
  readonly columns: readonly ColumnOf<T>[]
  readonly empty: string
  readonly note?: Text
  readonly forPen?: boolean
  readonly layout?: Table['layout']
  level?(thing: T): Row['level']
  anchor?(thing: T): string | null
}

export function tableOf<T>(things: readonly T[], table: TableOf<T>): Table {
  return {
    is: 'table',
    id: table.id,
    caption: table.caption,
    columns: table.columns.map(({ title, unit, width, align }) => ({
      title, unit: unit ?? null, width, align: align ?? (width === 'number' ? 'right' : 'left'),
    })),
    rows: things.map(thing => ({
      cells: table.columns.map(column => column.cell(thing)),
      level: table.level?.(thing) ?? null,
      anchor: table.anchor?.(thing) ?? null,
    })),
    note: table.note ?? null,
    empty: table.empty,
    forPen: table.forPen ?? false,
    layout: table.layout ?? null,
  }
}

/** The first rows, and how many more the site has. */
export function firstRows(table: Table, most: number): Table {
  const more = table.rows.length - most
  return more <= 0 ? table : { ...table, rows: table.rows.slice(0, most), note: [...(table.note ?? []), ...(table.note === null ? [] : [' ']), `${more} more on the site.`] }
}

/** The words of a text, without links and marks. */
export const plainText = (text: Text): string =>
  text.map(part => (typeof part === 'string' ? part : part.is === 'page number' ? '' : part.is === 'break' ? ' ' : part.text)).join('').trim()

/** A table as a schedule for machines. */
export const scheduleOf = (file: string, table: Table): Schedule => ({
  file,
  columns: table.columns.map(({ title, unit }) => (unit === null ? title : `${title} (${unit})`)),
  rows: table.rows.map(row => row.cells.map(plainText)),
})
