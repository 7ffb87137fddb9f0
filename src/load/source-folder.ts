/**
 * What the load stage hands on: every entry as it stands in the files, each value with its place. Offsets inside; line
 * and column are worked out only where a finding needs them.
 */
import type { LocatedFinding, SourcePosition } from '../findings/finding.js'
import type { KindKey } from './entry-kinds.js'

export interface SourceFolder {
  readonly entries: readonly SourceEntry[]
  /** Every file below the vessel folder, by its path from the top, for the files that entries refer to. */
  readonly fileNames: ReadonlySet<string>
  /** Text of the data files, for excerpts. */
  readonly texts: ReadonlyMap<string, string>
  readonly unread: Unread
  readonly findings: readonly LocatedFinding[]
}

/** What the author wrote but could not be taken as data: a reference to it is no mistake of its own. */
export interface Unread {
  readonly texts: readonly string[]
  /** True when there is a file of which not even the text is known. */
  readonly more: boolean
}

/** One thing of the vessel: an item of a list, or the one map of a single kind. */
export interface SourceEntry {
  readonly kind: KindKey
  /** Its tag (or what names it), as written; null when it has none. */
  readonly id: string | null
  /** Counted from 1 in its list; what an entry without a name is called by. */
  readonly ordinal: number
  readonly node: SourceNode
}

export interface SourceFile {
  /** Path from the top of the vessel folder, parted by `/`. */
  readonly name: string
  readonly role: 'vessel' | 'catalogue'
  readonly text: string
  /** Offsets at which lines start. */
  readonly lineStarts: readonly number[]
}

export interface Span { readonly file: SourceFile; readonly start: number; readonly end: number }

interface NodeBase extends Span {
  /** The value without places, as the schemas read it. */
  readonly plain: unknown
  /** How many nodes it stands for, itself and what an alias brings in included. */
  readonly size: number
}
export interface ScalarNode extends NodeBase { readonly type: 'scalar'; readonly plain: string | number | boolean | null }
export interface ListNode extends NodeBase { readonly type: 'list'; readonly items: readonly SourceNode[] }
export interface MapNode extends NodeBase { readonly type: 'map'; readonly fields: ReadonlyMap<string, Field> }
export type SourceNode = ScalarNode | ListNode | MapNode
export interface Field { readonly key: Span; readonly value: SourceNode }

export function sourceFile(name: string, role: SourceFile['role'], text: string): SourceFile {
  const lineStarts = [0, ...Array.from(text.matchAll(/\r\n|\n|\r/g), ({ 0: end, index }) => index + end.length)]
  return { name, role, text, lineStarts }
}

const placed = ({ file, start, end }: Span): Span => ({ file, start, end })

export const scalarNode = (span: Span, plain: ScalarNode['plain']): ScalarNode => ({ type: 'scalar', plain, size: 1, ...placed(span) })

export function listNode(span: Span, items: readonly SourceNode[]): ListNode {
  return { type: 'list', items, plain: items.map(item => item.plain), size: items.reduce((sum, item) => sum + item.size, 1), ...placed(span) }
}

export function mapNode(span: Span, fields: ReadonlyMap<string, Field>): MapNode {
  // Without a prototype, so that no key of the author's can reach one.
  const plain: Record<string, unknown> = Object.create(null)
  let size = 1
  for (const [key, { value }] of fields) {
    // A key without a value is as good as absent, like an empty cell; but it is still there to be checked.
    plain[key] = value.plain ?? undefined
    size += value.size
  }
  return { type: 'map', fields, plain, size, ...placed(span) }
}

/** Line and column count from 1, columns in UTF-16 units; `endColumn` is one past the last character. */
export function positionOf({ file, start, end }: Span): SourcePosition {
  const from = placeOf(file, start)
  const to = placeOf(file, Math.max(end, start))
  return { file: file.name, line: from.line, column: from.column, endLine: to.line, endColumn: to.column }
}

function placeOf({ lineStarts }: SourceFile, offset: number): { line: number; column: number } {
  let low = 0
  let high = lineStarts.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (lineStarts[middle]! <= offset) low = middle
    else high = middle - 1
  }
  return { line: low + 1, column: offset - lineStarts[low]! + 1 }
}

export const fieldOf = (node: SourceNode, key: string): Field | null => (node.type === 'map' ? (node.fields.get(key) ?? null) : null)
export const valueAt = (node: SourceNode, key: string): SourceNode | null => fieldOf(node, key)?.value ?? null
export const itemsAt = (node: SourceNode, key: string): readonly SourceNode[] => {
  const value = valueAt(node, key)
  return value?.type === 'list' ? value.items : []
}
/** The value as text, or null when it is not text. */
export const textAt = (node: SourceNode, key: string): string | null => {
  const plain = valueAt(node, key)?.plain
  return typeof plain === 'string' ? plain : null
}

/** The text from which the node was read. */
export const writtenIn = ({ file, start, end }: Span): string => file.text.slice(start, end)

/** Words of a list: its items, or the words of a text, each with its own place. */
export function wordsOf(node: SourceNode | null): readonly { readonly word: string; readonly span: Span }[] {
  if (node === null) return []
  if (node.type === 'list') return node.items.flatMap(item => (typeof item.plain === 'string' ? [{ word: item.plain, span: item }] : []))
  if (typeof node.plain !== 'string') return []
  return [...writtenIn(node).matchAll(/[^\s"']+/g)].map(({ 0: word, index }) =>
    ({ word, span: { file: node.file, start: node.start + index, end: node.start + index + word.length } }))
}
