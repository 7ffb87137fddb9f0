/** The references that an entry makes, read from the file as it stands, each with its place. */
import { isWebAddress, tagsInText, targetsInText } from '../model/tags-in-text.js'
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

/** Pictures, and links that are no address on the web, in the texts of an entry. */
export const targetsOf = ({ kind, node }: SourceEntry): readonly { readonly field: string; readonly target: string; readonly isPicture: boolean; readonly span: Span }[] =>
  (referenceFields[kind] ?? []).filter(({ form }) => form === 'in text').flatMap(({ path }) => nodesAt(node, path, '')).flatMap(({ field, value }) =>
    (typeof value.plain === 'string' ? targetsInText(writtenIn(value)) : []).filter(({ isPicture, target }) => isPicture || !isWebAddress(target)).map(({ isPicture, target, start }) =>
      ({ field, target, isPicture, span: { file: value.file, start: value.start + start, end: value.start + start + target.length } })))
