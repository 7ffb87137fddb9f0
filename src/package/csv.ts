/** A schedule as a CSV file: for spreadsheets, and for whoever reads the record in ten years. */

/** The part of a schedule that is written. */
export interface CsvTable { readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] }

/**
 * The table as CSV text, one header line first.
 *
 * Source   RFC 4180: comma, CRLF at the end of every line, quotes only where a cell needs them, quotes inside doubled.
 * Guard    spreadsheets run a cell that starts like a formula; such a cell gets an apostrophe in front, unless it is a number
 * Errors   throws when a row has another number of cells than the header: a fault of the schedule's maker
 */
export const csvOf = (table: CsvTable): string => written(table, guarded)

/**
 * The same for label printers. With a byte order mark, by which their programs know UTF-8; a cell stands as it is printed, for an
 * apostrophe before a tag such as `-W7` would be on the label.
 */
export const labelListCsv = (table: CsvTable): string => `\uFEFF${written(table, cell => cell)}`

function written({ columns, rows }: CsvTable, shown: (cell: string) => string): string {
  return [columns, ...rows].map((row, i) => {
    if (row.length !== columns.length) throw new Error(`row ${i} has ${row.length} cells, the header has ${columns.length}`)
    return `${row.map(cell => quoted(shown(cell))).join(',')}\r\n`
  }).join('')
}

const number = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i
/** Tab and carriage return count too: a spreadsheet drops them and takes what follows. */
const startsLikeFormula = /^[=+\-@\t\r]/

const guarded = (cell: string): string => (startsLikeFormula.test(cell) && !number.test(cell) ? `'${cell}` : cell)

const quoted = (cell: string): string => (/[",\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)
