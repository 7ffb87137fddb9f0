/** Everything in the files that bears a tag: entries, and the elements of a CAN bus's backbone. */
import { isTagged, type KindKey, kindNames } from './entry-kinds.js'
import { itemsAt, type SourceEntry, type SourceNode, type Span, textAt, valueAt } from './source-folder.js'

/** A key of a backbone element that gives the element its tag, with the word for it. */
export const backboneTagKeys = { terminator: 'terminator', tee: 'tee', power: 'power insertion point', isolator: 'power isolator' } as const

export interface NamedThing {
  readonly kind: KindKey | 'backbone'
  /** What it is called in a sentence: "cable", "tee". */
  readonly word: string
  readonly tag: string
  readonly node: SourceNode
  /** Where its tag is written. */
  readonly tagSpan: Span
}

/** Entries first, in the order of the files; backbone elements after them. */
export function namedThings(entries: readonly SourceEntry[]): readonly NamedThing[] {
  const named = entries.flatMap(({ kind, id, node }) =>
    isTagged(kind) && id !== null ? [{ kind, word: kindNames[kind].entry, tag: id, node, tagSpan: valueAt(node, kindNames[kind].nameField)! }] : [])
  const elements = entries.flatMap(({ kind, node }) => (kind === 'can-buses' ? itemsAt(node, 'backbone').flatMap(elementThings) : []))
  return [...named, ...elements]
}

const elementThings = (node: SourceNode): readonly NamedThing[] =>
  Object.entries(backboneTagKeys).flatMap(([key, word]) => {
    const tag = textAt(node, key)
    return tag === null ? [] : [{ kind: 'backbone' as const, word, tag, node, tagSpan: valueAt(node, key)! }]
  })

/** Where an entry is named: its tag; without one, where it begins. */
export const nameSpan = ({ kind, node }: SourceEntry): Span =>
  valueAt(node, kindNames[kind].nameField) ?? { file: node.file, start: node.start, end: Math.min(node.start + 1, node.end) }
