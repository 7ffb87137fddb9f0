/** A workbook of the view as a file that spreadsheet programs open (Office Open XML, ECMA-376). */
import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { unzipSync, zipSync } from 'fflate'
import writeXlsxFile, { type Cell } from 'write-excel-file/node'
import type { Sheet, SheetCell, Workbook } from '../view/view-model.js'

/** Writes the workbooks into the pack. */
export async function writeWorkbooks(packFolder: string, workbooks: readonly Workbook[]): Promise<void> {
  for (const workbook of workbooks) {
    const place = path.join(packFolder, workbook.file)
    await mkdir(path.dirname(place), { recursive: true })
    await writeFile(place, await workbookBytes(workbook))
  }
}

/** The bytes of a workbook: the same for the same workbook, whenever and wherever it is written. */
export async function workbookBytes({ sheets }: Workbook): Promise<Uint8Array> {
  const written = await writeXlsxFile(sheets.map(sheet => ({
    sheet: sheet.name,
    data: [sheet.columns.map(({ title, numbers }): Cell => ({ value: title, align: numbers ? 'right' : 'left', ...headerLook })), ...sheet.rows.map(row => row.map(cellOf))],
    columns: widthsOf(sheet).map(width => ({ width })),
    stickyRowsCount: 1,
    orientation: 'landscape' as const,
  }))).toBuffer()
  return zipSync(unzipSync(written), { mtime: fixedTime(), level: 6 })
}

/** The library stamps the parts of the file with the clock; the format knows no year before 1980. Local time, since that is what is stored. */
const fixedTime = (): Date => new Date(1980, 0, 1, 12)

const headerLook = { type: String, fontWeight: 'bold', wrap: true, alignVertical: 'bottom', backgroundColor: '#e9eef1' } as const

/** With its type said, so that no text is taken for anything else: one that begins like a formula stays text. */
function cellOf(cell: SheetCell): Cell {
  if (cell === null || cell === '') return null
  return typeof cell === 'number' ? { type: Number, value: cell } : { type: String, value: cell.replace(notInXml, '') }
}
/** Characters that an XML file cannot hold. */
const notInXml = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g

const narrowest = 8
const widest = 48
/** In characters: wide enough for what is in a column, within reason. */
const widthsOf = ({ columns, rows }: Sheet): readonly number[] => columns.map(({ title }, i) => {
  const longestWord = Math.max(...title.split(' ').map(word => word.length))
  const longest = rows.reduce((most, row) => Math.max(most, String(row[i] ?? '').length), longestWord)
  return Math.min(widest, Math.max(narrowest, longest + 2))
})
