/** Where in the files a field of the model stands: subject and field → file, line, column. */
import type { SourcePosition, SubjectRef } from '../findings/finding.js'
import { unitOf } from '../units/quantity.js'
import { isTagged, type KindKey, kindNames } from './entry-kinds.js'
import { namedThings, nameSpan } from './named-things.js'
import { positionOf, type SourceEntry, type SourceNode, type Span, textAt, valueAt } from './source-folder.js'

export type Locate = (subject: SubjectRef, field: string | null) => SourcePosition | null

/** Fields of the model whose key in the files is not made of the same words. */
const keysOfField: Readonly<Record<string, string>> = {
  ambientCBySpace: 'ambient',
  baudRateBaud: 'baud',
  cableTag: 'segment',
  crossSectionMm2: 'size',
  device: 'type',
  dropCableTag: 'drop',
  lengthCharacterCount: 'length',
  gatewayAddress: 'gateway',
  model: 'model-name',
  ratedCurrentA: 'rating',
  routeLengthM: 'length',
  unprotectedReason: 'unprotected',
}
const recordedAgain: ReadonlySet<KindKey> = new Set(['maintenance-records', 'running-hours'])
/** Parts of the model that are no level of their own in the files. */
const flattened: ReadonlySet<string> = new Set(['identity'])

interface Place { readonly node: SourceNode; readonly name: Span }

/**
 * Built once for a folder. A tag is looked up whatever the subject's kind is called, since tags are unique in a vessel;
 * the vessel itself, models and changes have names of their own.
 *
 * A field that the entry does not have is looked for in its model; else the entry's tag is pointed at. Null for a subject
 * that stands in no file.
 */
export function sourceIndex(entries: readonly SourceEntry[]): Locate {
  const tagged = new Map<string, Place>()
  for (const { tag, node, tagSpan } of namedThings(entries)) if (!tagged.has(tag)) tagged.set(tag, { node, name: tagSpan })
  const others = new Map<string, Place>()
  for (const entry of entries) {
    const key = otherKey(kindNames[entry.kind].entry, entry.id ?? '')
    if (!isTagged(entry.kind) && !others.has(key)) others.set(key, { node: entry.node, name: nameSpan(entry) })
    // Of what is recorded again and again, the date tells which.
    const dated = `${key} of ${textAt(entry.node, 'date')}`
    if (recordedAgain.has(entry.kind) && !others.has(dated)) others.set(dated, { node: entry.node, name: nameSpan(entry) })
  }
  const placeOf = ({ kind, id }: SubjectRef): Place | undefined => others.get(otherKey(kind, id)) ?? tagged.get(id)

  return (subject, field) => {
    const place = placeOf(subject)
    if (place === undefined) return null
    if (field === null) return positionOf(place.name)
    const model = others.get(otherKey(kindNames.models.entry, textAt(place.node, 'model') ?? ''))
    return positionOf(valueOf(place.node, field) ?? (model === undefined ? null : valueOf(model.node, field)) ?? place.name)
  }
}

/** Of the entries of a kind that no name tells apart, in their order: where a key of each stands; the entry itself where it has no such key. */
export const placesOf = (entries: readonly SourceEntry[], kind: KindKey): readonly ((key: string) => SourcePosition)[] =>
  entries.filter(entry => entry.kind === kind).map(entry => key => positionOf(valueAt(entry.node, key) ?? nameSpan(entry)))

/** There is one vessel, whatever it is called. */
const otherKey = (kind: string, id: string): string => (kind === kindNames.vessel.entry ? kind : `${kind} ${id}`)

/** The value of a field such as `protection.ratedCurrentA`: the deepest part that is written down, null without any. */
function valueOf(node: SourceNode, field: string): SourceNode | null {
  let found: SourceNode | null = null
  for (const part of field.split('.')) {
    if (flattened.has(part)) continue
    const next: SourceNode | null = childOf(found ?? node, part)
    if (next === null) break
    found = next
  }
  return found
}

function childOf(node: SourceNode, part: string): SourceNode | null {
  if (node.type === 'list') return node.items[Number(part)] ?? null
  for (const key of possibleKeys(part)) {
    const value = valueAt(node, key)
    if (value !== null) return value
  }
  return null
}

/** `currentMaxA` → `current-max`, `fedFromTag` → `fed-from`, `loadTags` → `loads`; first the exceptions, then the words as they are. */
function possibleKeys(part: string): readonly string[] {
  const tagless = part.replace(/Tags?$/, '')
  const unitless = part.slice(0, part.length - (unitOf(part)?.ending.length ?? 0))
  return [keysOfField[part] ?? [], kebab(part), kebab(unitless), part.endsWith('Tags') ? ['s', 'es'].map(plural => kebab(tagless) + plural) : [], kebab(tagless)].flat()
}

const kebab = (name: string): string => name.replace(/[A-Z]/g, letter => `-${letter.toLowerCase()}`)
