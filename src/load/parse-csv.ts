/** CSV text → one map for each row, each cell with its place. Collects every fault; throws for none. */
import { CsvError, parse } from 'csv-parse/sync'
import { find, type FindingKind, type LocatedFinding } from '../findings/finding.js'
import type { Quantities } from '../units/quantity.js'
import { aboutFile, csvHeaderUnusable, csvRowRagged, csvSyntax } from './findings.js'
import { type Field, mapNode, positionOf, scalarNode, type SourceFile, type SourceNode, type Span, writtenIn } from './source-folder.js'

/** `lost`: text of the rows that could not be used; the whole text where no row could be. */
export interface ParsedCsv { readonly rows: readonly SourceNode[]; readonly lost: readonly string[]; readonly findings: readonly LocatedFinding[] }

interface Cell extends Span { readonly text: string }
interface Column { readonly path: readonly string[]; readonly span: Span }

export function parseCsv(file: SourceFile): ParsedCsv {
  const { records, fault } = readCells(file)
  const [header, ...body] = records
  if (fault !== null) return { rows: [], lost: [file.text], findings: [fault] }
  if (header === undefined) return { rows: [], lost: [], findings: [] }

  const filled = body.filter(cells => cells.some(({ text }) => text !== ''))
  const { columns, findings: headerFindings } = readHeader(file, header, filled)
  if (headerFindings.length > 0) return { rows: [], lost: [file.text], findings: headerFindings }

  const rows: SourceNode[] = []
  const lost: string[] = []
  const findings: LocatedFinding[] = []
  for (const cells of filled) {
    const used = cells.slice(0, columns.length)
    const beyond = cells.slice(columns.length)
    if (used.length < columns.length || beyond.some(({ text }) => text !== '')) {
      const span = { file, start: cells[0]!.start, end: cells.at(-1)!.end }
      const evidence = { cellCount: cells.length, columnCount: columns.length }
      findings.push({ ...find(csvRowRagged, aboutFile(file.name, evidence)), at: positionOf(span) })
      lost.push(writtenIn(span))
    } else {
      rows.push(rowNode(used.flatMap((cell, index) => (cell.text === '' ? [] : [{ column: columns[index]!, cell }]))))
    }
  }
  return { rows, lost, findings }
}

/** The cells of every row that is not a comment, until the first fault. The parser tells what a row holds and where it ends. */
function readCells(file: SourceFile): { readonly records: readonly (readonly Cell[])[]; readonly fault: LocatedFinding | null } {
  const { text } = file
  const delimiter = delimiterOf(text)
  const offsetOf = byteOffsets(text)
  const records: (readonly Cell[])[] = []
  let rowStart = endOfUnused(text, 0)
  try {
    parse(text, {
      delimiter,
      record_delimiter: ['\r\n', '\n', '\r'],
      comment: '#', comment_no_infix: true,
      skip_empty_lines: true, trim: true,
      relax_column_count: true,
      on_record: (values: readonly string[], { bytes }) => {
        const spans = cellSpans(file, rowStart, delimiter, values.length)
        // A spreadsheet puts a comment that holds the separator in quotes.
        if (!values[0]!.startsWith('#')) records.push(values.map((value, index) => ({ ...spans[index]!, text: value.trim() })))
        rowStart = endOfUnused(text, offsetOf(bytes))
        return null
      },
    })
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    // The number of the cell is one of the facts that the error carries.
    const column = Number((error as { readonly column?: unknown }).column)
    const start = cellSpans(file, rowStart, delimiter, column + 1).at(-1)!.start
    const rest = /[^\r\n]*/y
    rest.lastIndex = start
    const at = positionOf({ file, start, end: start + rest.exec(text)![0].trimEnd().length })
    return { records, fault: { ...find(csvSyntax, aboutFile(file.name, {}, { reason: faultWords(error) })), at } }
  }
  return { records, fault: null }
}

/** Where the first cells of a row stand, without the blanks around them. */
function cellSpans(file: SourceFile, rowStart: number, delimiter: string, count: number): readonly Span[] {
  const cell = new RegExp(` *(?:"[^"]*(?:""[^"]*)*"[^${delimiter}\\r\\n]*|[^${delimiter}\\r\\n]*)`, 'y')
  let offset = rowStart
  return Array.from({ length: count }, () => {
    cell.lastIndex = offset
    const written = cell.exec(file.text)?.[0] ?? ''
    const start = offset + written.length - written.trimStart().length
    const end = offset + written.trimEnd().length
    offset += written.length + delimiter.length
    return { file, start, end: Math.max(start, end) }
  })
}

const faultWords = ({ code }: CsvError): string =>
  code === 'CSV_QUOTE_NOT_CLOSED' ? 'a quotation mark opens here and is never closed' : 'a quotation mark stands inside a cell'

/** Empty lines and comments, which the parser passes over in silence. */
const unused = /(?:[ \t]*(?:#[^\r\n]*)?(?:\r\n|\n|\r))*/y
function endOfUnused(text: string, from: number): number {
  unused.lastIndex = from
  return from + (unused.exec(text)?.[0].length ?? 0)
}

/** The separator that is most frequent in the first line that is neither empty nor a comment. */
function delimiterOf(text: string): string {
  const header = /^(?![ \t]*(?:"?#|$)).+$/m.exec(text)?.[0].replace(/"[^"]*"/g, '') ?? ''
  const count = (separator: string): number => header.split(separator).length
  return [',', ';', '\t'].reduce((best, separator) => (count(separator) > count(best) ? separator : best))
}

/** From offsets in UTF-8 bytes, asked for in rising order, to offsets in the text. */
function byteOffsets(text: string): (bytes: number) => number {
  let offset = 0
  let passed = 0
  return bytes => {
    while (passed < bytes && offset < text.length) {
      const codePoint = text.codePointAt(offset)!
      passed += codePoint < 0x80 ? 1 : codePoint < 0x800 ? 2 : codePoint < 0x10000 ? 3 : 4
      offset += codePoint < 0x10000 ? 1 : 2
    }
    return offset
  }
}

function readHeader(file: SourceFile, cells: readonly Cell[], body: readonly (readonly Cell[])[]) {
  // Spreadsheets leave empty columns at the right; without a value in them they mean nothing.
  const lastUsed = cells.findLastIndex((cell, index) => cell.text !== '' || body.some(row => (row[index]?.text ?? '') !== ''))
  const columns: readonly Column[] = cells.slice(0, lastUsed + 1).map(cell => ({ path: cell.text.split('.'), span: cell }))
  const findings: LocatedFinding[] = []
  const report = (kind: FindingKind<Quantities>, span: Span, reason: string): void => {
    findings.push({ ...find(kind, aboutFile(file.name, {}, { reason })), at: positionOf(span) })
  }
  const seen = new Map<string, 'column' | 'group'>()
  columns.forEach(({ path, span }, index) => {
    const name = path.join('.')
    const groups = path.slice(0, -1).map((_, depth) => path.slice(0, depth + 1).join('.'))
    if (name === '') report(csvHeaderUnusable, span, `Column ${index + 1} has values but no name`)
    else if (path.includes('')) report(csvHeaderUnusable, span, `The column name "${name}" has an empty part beside its dot`)
    else if (seen.get(name) === 'column') report(csvHeaderUnusable, span, `The column "${name}" stands here a second time`)
    else if (seen.has(name) || groups.some(group => seen.get(group) === 'column')) {
      report(csvHeaderUnusable, span, `The column "${name}" holds part of another column, or another column part of it`)
    }
    seen.set(name, 'column')
    for (const group of groups) if (!seen.has(group)) seen.set(group, 'group')
  })
  return { columns, findings }
}

interface FilledCell { readonly column: Column; readonly cell: Cell }

/** An empty cell is an absent key; `protection.type` is the key `type` inside `protection`. */
function rowNode(filled: readonly FilledCell[], depth = 0): SourceNode {
  const byName = new Map<string, FilledCell[]>()
  for (const one of filled) {
    const name = one.column.path[depth]!
    const group = byName.get(name)
    if (group === undefined) byName.set(name, [one])
    else group.push(one)
  }
  const fields = [...byName].map(([name, group]): [string, Field] => {
    const { column, cell } = group[0]!
    const value = column.path.length === depth + 1 ? scalarNode(cell, cell.text) : rowNode(group, depth + 1)
    return [name, { key: column.span, value }]
  })
  const { file, start } = filled[0]!.cell
  return mapNode({ file, start, end: filled.at(-1)!.cell.end }, new Map(fields))
}
