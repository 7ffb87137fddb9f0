/** Things by tag and models by name, as they stand in the files, whether or not they pass their schema. */
import { type NamedThing, namedThings } from '../load/named-things.js'
import { type SourceEntry, type SourceFolder, type SourceNode, textAt, valueAt, writtenIn } from '../load/source-folder.js'

export interface ThingIndex {
  readonly things: readonly NamedThing[]
  readonly byTag: ReadonlyMap<string, NamedThing>
  /** More than one where a tag is repeated: that is reported once, and is no fault of those who refer to it. */
  readonly kindsByTag: ReadonlyMap<string, readonly NamedThing['kind'][]>
  readonly models: ReadonlyMap<string, SourceNode>
  /** Whether a name that is not found may stand in what could not be read, or in an entry that lacks its tag. */
  mayBeUnread(name: string): boolean
}

export function thingIndex({ entries, unread }: SourceFolder): ThingIndex {
  const things = namedThings(entries)
  const byTag = new Map<string, NamedThing>()
  for (const thing of things) if (!byTag.has(thing.tag)) byTag.set(thing.tag, thing)
  const kindsByTag = new Map<string, NamedThing['kind'][]>()
  for (const { tag, kind } of things) kindsByTag.set(tag, [...kindsByTag.get(tag) ?? [], kind])
  const nameless = entries.filter(({ id }) => id === null).map(({ node }) => writtenIn(node))
  const unreadWords = new Set([...unread.texts, ...nameless].flatMap(text => text.match(/[A-Za-z0-9][A-Za-z0-9._/+-]*/g) ?? []))
  return { things, byTag, kindsByTag, models: modelsByName(entries), mayBeUnread: name => unread.more || unreadWords.has(name) }
}

const modelsByName = (entries: readonly SourceEntry[]): ReadonlyMap<string, SourceNode> =>
  // Of two with one name the first counts, as with tags.
  new Map(entries.toReversed().flatMap(({ kind, id, node }) => (kind === 'models' && id !== null ? [[id, node] as const] : [])))

/** An item's own value, else that of its model. */
export function ownOrModels(item: SourceNode, key: string, { models }: ThingIndex): SourceNode | null {
  const model = models.get(textAt(item, 'model') ?? '')
  return valueAt(item, key) ?? (model === undefined ? null : valueAt(model, key))
}
