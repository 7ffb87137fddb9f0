/**
 * How much of a page goes on one sheet of A4. Nothing is measured before it is printed, so its height is reckoned from the number of its
 * letters; the figures are those of the sample's sheets, held against the print in the tests. Common practice, no source.
 */
import { plainText } from '../../tables.js'
import type { Block, Reach, ReachEntry, SheetFit } from '../../view-model.js'

/** Of a line in millimetres, and the letters that go on it. */
interface Face { readonly lineMm: number; readonly lettersPerLineCount: number }
const stepFace: Face = { lineMm: 4.4, lettersPerLineCount: 108 }
const sourceFace: Face = { lineMm: 3.2, lettersPerLineCount: 150 }
const textFace: Face = { lineMm: 4.2, lettersPerLineCount: 122 }
const placeFace: Face = { lineMm: 3.45, lettersPerLineCount: 64 }
const remarkFace: Face = { lineMm: 3.1, lettersPerLineCount: 76 }
const accessFace: Face = { lineMm: 3.25, lettersPerLineCount: 68 }

const titleMm = 16
const drawingMm = 46
/** What the sheet holds inside its margins and its title block. */
const sheetMm = 264
const mostEntries = 6
/** Large letters make lines higher, and fewer of them go on a line. */
const largeFactor = 1.28

const linesOf = (letterCount: number, { lettersPerLineCount }: Face): number => Math.max(1, Math.ceil(letterCount / lettersPerLineCount))
const heightMm = (text: string, face: Face): number => linesOf(text.length, face) * face.lineMm

/** The first that goes on the sheet; of a boat with very much gear the last, whether it does or not. */
export function sheetFit(blocks: readonly Block[]): SheetFit {
  const fits: readonly SheetFit[] = ['all', 'without drawings', 'without remarks']
  if (pageMm(blocks, 'all') * largeFactor <= sheetMm) return 'all, large'
  return fits.find(fit => pageMm(blocks, fit) <= sheetMm) ?? 'first of each list'
}

export function pageMm(blocks: readonly Block[], fit: SheetFit): number {
  const drawn = fit === 'all' && blocks.some(({ is }) => is === 'drawing') ? drawingMm : 0
  const accessMm = blocks.reduce((sum, block) => sum + (block.is === 'facts' ? factsMm(block.entries.map(({ label, value }) => `${label} ${plainText(value)}`), drawn > 0 ? 1 : 2) : 0), 0)
  const othersMm = blocks.reduce((sum, block) => sum + (block.is === 'reach' ? reachMm(block, fit) : block.is === 'markdown' ? markdownMm(block.source) : block.is === 'paragraph' ? heightMm(plainText(block.text), textFace) + 1 : 0), 0)
  // Plan and ways of access stand side by side.
  return titleMm + othersMm + Math.max(drawn, accessMm)
}

const factsMm = (lines: readonly string[], columnCount: number): number =>
  4 + lines.reduce((sum, line) => sum + Math.ceil(line.length / (accessFace.lettersPerLineCount * columnCount)) * accessFace.lineMm + 0.5, 0)

function markdownMm(source: string): number {
  const plain = source.replace(/\]\(asfitted:[^)]*\)/g, '').replace(/[*[\]\\]/g, '')
  return plain.split('\n').filter(line => line.trim() !== '').reduce((sum, line) =>
    sum + (line.startsWith('## ') ? 6.5 : /^\d+\. /.test(line) ? heightMm(line, stepFace) + 1.3 : line.startsWith('Source: ') ? heightMm(line, sourceFace) : heightMm(line, textFace) + 1), 0)
}

/** Two columns, the longer by a part of an entry. */
function reachMm({ entries }: Reach, fit: SheetFit): number {
  const heights = (fit === 'first of each list' ? entries.slice(0, mostEntries) : entries).map(entry => entryMm(entry, fit))
  const columnMm = heights.reduce((sum, height) => sum + height, 0) / 2
  return 6.2 + columnMm + (heights.length === 0 ? 0 : Math.max(...heights) / 8)
}

function entryMm({ act, what, where, remark }: ReachEntry, fit: SheetFit): number {
  const place = [act ?? '', plainText(what), where === null ? '' : plainText(where)].join('  ')
  return heightMm(place, placeFace) + (remark === null || fit === 'without remarks' || fit === 'first of each list' ? 0 : heightMm(plainText(remark), remarkFace)) + 1.2
}
