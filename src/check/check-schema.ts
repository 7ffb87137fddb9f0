/** Each entry against the schema of its kind; every fault of every entry, at its place. */
import type { z } from 'zod'
import type { LocatedFinding } from '../findings/finding.js'
import { nearestOf } from '../findings/nearest.js'
import { isSecret } from '../load/secrets.js'
import { fieldOf, type SourceEntry, type SourceFolder, type SourceNode, type Span, wordsOf, writtenIn } from '../load/source-folder.js'
import { keyMissing, keyUnknown, quantityNotAccepted, valueNotAccepted, vesselMissing, vesselRepeated, wordNotInList } from './findings.js'
import { found, placeInWords, quoted, subjectOf } from './found.js'
import { describedAt, keysOf } from './schema/described.js'
import { type Entry, entryKinds, type KindKey, kindKeys } from './schema/kinds.js'

/** Entries that passed, by kind. */
export type PassedEntries = { readonly [K in KindKey]: readonly Entry<K>[] }
export interface SchemaResult { readonly passed: PassedEntries; readonly findings: readonly LocatedFinding[] }

export function checkSchema({ entries, unread }: SourceFolder): SchemaResult {
  const passed = Object.fromEntries(kindKeys.map(kind => [kind, []])) as unknown as Record<KindKey, unknown[]>
  const findings: LocatedFinding[] = []
  for (const entry of entries) {
    const result = entryKinds[entry.kind].schema.safeParse(entry.node.plain, { error: plainWords })
    if (result.success) passed[entry.kind].push(result.data)
    else for (const issue of result.error.issues) for (const finding of findingsOf(entry, issue)) findings.push(finding)
  }
  const isComplete = unread.texts.length === 0 && !unread.more
  findings.push(...vesselFindings(entries.filter(({ kind }) => kind === 'vessel'), isComplete))
  // The schema of each kind made what stands in its list; the compiler does not follow the key through the loop.
  return { passed: passed as PassedEntries, findings: withoutRepeats(findings) }
}

function vesselFindings([first, ...others]: readonly SourceEntry[], isComplete: boolean): readonly LocatedFinding[] {
  if (first === undefined) return isComplete ? [found(vesselMissing, null, { subject: { kind: 'vessel', id: '' }, evidence: {} })] : []
  return others.map(other =>
    found(vesselRepeated, startOf(other.node), { subject: subjectOf(other), evidence: {}, context: { first: placeInWords(startOf(first.node)) } }))
}

/** Words for the faults that the fields do not speak of themselves. */
const plainWords: z.core.$ZodErrorMap = issue => {
  if (issue.code !== 'invalid_type') return undefined
  return issue.expected === 'object' ? 'keys and values' : issue.expected === 'array' ? 'a list; one of keys and values goes into a YAML file' : undefined
}

function findingsOf(entry: SourceEntry, issue: z.core.$ZodIssue): readonly LocatedFinding[] {
  const { node, missing } = nodeAt(entry.node, issue.path)
  const subject = subjectOf(entry)
  const field = issue.path.length === 0 ? null : issue.path.join('.')
  const part = describedAt(entry.kind, issue.path)

  if (issue.code === 'unrecognized_keys') {
    const keys = keysOf(part)
    return issue.keys.map(key => found(keyUnknown, fieldOf(node, key)?.key ?? node, {
      subject, field: [...issue.path, key].join('.'), evidence: {}, context: { key, ...nearestOf(key, keys), known: keys.join(', ') },
    }))
  }
  if (missing !== null) {
    const about = part?.description ?? issue.message
    return [found(keyMissing, fieldOf(node, missing)?.key ?? startOf(node), { subject, field, evidence: {}, context: { key: [...issue.path.slice(0, -1).filter(step => typeof step === 'string'), missing].join('.'), about } })]
  }
  const at = part?.dimension === undefined ? placeOfWord(node, issue.path) : node
  const written = isSecret(entry.kind, issue.path) ? 'something not shown here' : inSentence(node, at)
  // A word of the list can stand there and yet not be enough: the field says what it needs besides.
  if (part?.enum !== undefined && !part.enum.includes(node.plain as string)) {
    // What protects a circuit is read off the boat: no guess is offered for it.
    const guess = typeof node.plain === 'string' && issue.path.at(-2) !== 'protection'
    const nearest = guess ? nearestOf(node.plain as string, part.enum) : {}
    return [found(wordNotInList, at, { subject, field, evidence: {}, context: { written, ...nearest, known: knownWords(node.plain, part.enum) } })]
  }
  const kind = part?.dimension === undefined ? valueNotAccepted : quantityNotAccepted
  return [found(kind, at, { subject, field, evidence: {}, context: { written, expected: issue.message } })]
}

/** A long list is no help at a terminal: the words that share one with what was written, and where all of them stand. */
function knownWords(written: unknown, words: readonly string[]): string {
  const list = (some: readonly string[]): string => some.map(word => `"${word}"`).join(', ')
  if (words.length <= longestList) return list(words)
  const parts = String(written).toLowerCase().split(/[^\p{L}\p{N}]+/u).filter(part => part.length > 2)
  const alike = words.filter(word => word.split(/[ -]/).some(part => parts.includes(part)))
  return `the ${words.length} words that docs/vessel-folder.md lists${alike.length === 0 ? '' : `, for example ${list(alike)}`}`
}
const longestList = 20

/** The node at a path; if a key on the way is missing or has no value, the map that lacks it. A text stands for the list it was split into. */
function nodeAt(top: SourceNode, path: readonly PropertyKey[]): { readonly node: SourceNode; readonly missing: string | null } {
  let node = top
  for (const step of path) {
    if (node.type === 'scalar') break
    const next = node.type === 'list' ? node.items[Number(step)] : node.fields.get(String(step))?.value
    if (next === undefined || (next.plain === null && node.type === 'map')) return { node, missing: String(step) }
    node = next
  }
  return { node, missing: null }
}

/** The word itself, where a text stands for a list of words. */
function placeOfWord(node: SourceNode, path: readonly PropertyKey[]): Span {
  const last = path.at(-1)
  return (node.type === 'scalar' && typeof last === 'number' ? wordsOf(node)[last]?.span : undefined) ?? node
}

function inSentence(node: SourceNode, at: Span): string {
  if (node.plain === null) return 'empty'
  const isInOneLine = !/[\r\n]/.test(writtenIn(at))
  return node.type === 'scalar' || isInOneLine ? quoted(at) : `a ${node.type}`
}

/** An entry's first key; for a row of a table, whose keys stand in the header, its first cell. */
function startOf(node: SourceNode): Span {
  const [first] = node.type === 'map' ? node.fields.values() : []
  if (first === undefined) return { file: node.file, start: node.start, end: Math.min(node.start + 1, node.end) }
  return first.key.start >= node.start && first.key.end <= node.end ? first.key : first.value
}

/** A column that no kind knows is one fault, not one for each row; so is a value that several entries share by an alias. */
function withoutRepeats(findings: readonly LocatedFinding[]): readonly LocatedFinding[] {
  const seen = new Set<string>()
  return findings.filter(({ id, field, at }) => {
    if (at === null) return true
    const key = [id, field, at.file, at.line, at.column].join('\n')
    return !seen.has(key) && seen.add(key)
  })
}
