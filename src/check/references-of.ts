/** The references that an entry makes, read from the file as it stands, each with its place. */
import { tagsInText } from '../model/tags-in-text.js'
import { type SourceEntry, type SourceNode, type Span, valueAt, wordsOf, writtenIn } from '../load/source-folder.js'
import { type Expected, type ReferenceField, referenceFields } from './reference-fields.js'
import { tagPattern } from './schema/fields.js'

export interface Reference {
  /** Keys as in the file, parted by dots. */
  readonly field: string
  readonly name: string
  readonly terminal: string | null
  readonly span: Span
  readonly expected: Expected
}

export const referencesOf = ({ kind, node }: SourceEntry): readonly Reference[] =>
  (referenceFields[kind] ?? []).flatMap(field => nodesAt(node, field.path, '').flatMap(found => readReferences(found, field)))

interface FieldNode { readonly field: string; readonly value: SourceNode }

function nodesAt(node: SourceNode, [step, ...rest]: readonly string[], before: string): readonly FieldNode[] {
  if (step === undefined) return [{ field: before, value: node }]
  const down = (value: SourceNode, name: string) => nodesAt(value, rest, before === '' ? name : `${before}.${name}`)
  if (step === '*') return node.type === 'list' ? node.items.flatMap((item, index) => down(item, String(index))) : []
  const value = valueAt(node, step)
  return value === null ? [] : down(value, step)
}

/** A text that can be no tag has been reported by the schema; it is no reference. */
function readReferences({ field, value }: FieldNode, { form, expected }: ReferenceField): readonly Reference[] {
  if (form === 'in text') return namedInText(value).map(({ name, span }) => ({ field, name, terminal: null, span, expected }))
  const written = form === 'list' || form === 'list of cable ends' ? wordsOf(value) : typeof value.plain === 'string' ? [{ word: value.plain, span: value }] : []
  return written.flatMap(({ word, span }) => {
    const [name = '', terminal = null] = form === 'name' || form === 'list' ? [word] : word.split(':')
    return tagPattern.test(name) ? [{ field, name, terminal: form === 'wire end' ? null : terminal, span, expected }] : []
  })
}

/** Whatever stands between the brackets was meant as a tag, also where none can look like it. */
const namedInText = (value: SourceNode): readonly { readonly name: string; readonly span: Span }[] =>
  (typeof value.plain === 'string' ? tagsInText(writtenIn(value)) : []).map(({ tag, start }) => {
    const at = value.start + start + writtenIn(value).slice(start).indexOf(tag)
    return { name: tag, span: { file: value.file, start: at, end: at + tag.length } }
  })
