/** Every reference leads to a thing that exists and may stand there. */
import type { LocatedFinding } from '../findings/finding.js'
import { nearestOf } from '../findings/nearest.js'
import { itemsAt, type SourceEntry, type SourceFolder, textAt, valueAt, wordsOf } from '../load/source-folder.js'
import {
  circuitFeedsItsSource, documentMissing, notANetworkSwitch, pictureMissing, referenceOfWrongKind, referenceUnknown, targetNotShown, terminalUnknown,
} from './findings.js'
import { found, subjectOf } from './found.js'
import type { NamedThing } from '../load/named-things.js'
import type { Expected } from './reference-fields.js'
import { type Reference, referencesOf, targetsOf } from './references-of.js'
import { fromTop, isBelowTop } from './schema/fields.js'
import { ownOrModels, type ThingIndex } from './thing-index.js'

export function checkReferences({ entries, fileNames }: SourceFolder, index: ThingIndex): readonly LocatedFinding[] {
  const suggest = suggester(index)
  return entries.flatMap(entry => {
    const references = referencesOf(entry)
    return [
      ...references.flatMap(reference => unresolved(entry, reference, index, suggest)),
      ...references.flatMap(reference => unknownTerminal(entry, reference, index)),
      ...(entry.kind === 'ethernet-networks' ? references.flatMap(reference => noSwitch(entry, reference, index)) : []),
      ...(entry.kind === 'circuits' ? selfFeeding(entry) : []),
      ...missingFiles(entry, fileNames),
      ...targetsOf(entry).map(({ field, span, target, isPicture }) =>
        found(targetNotShown, span, { subject: subjectOf(entry), field, evidence: {}, context: { what: isPicture ? 'the picture' : 'the link', target } })),
    ]
  })
}

function unresolved(entry: SourceEntry, { name, field, span, expected }: Reference, index: ThingIndex, suggest: Suggest): readonly LocatedFinding[] {
  const subject = subjectOf(entry)
  const isModel = expected.kinds.includes('models')
  if (isModel && index.models.has(name)) return []
  const thing = isModel ? undefined : index.byTag.get(name)
  if (thing !== undefined) {
    return mayStandThere(thing, expected, index) ? [] : [found(referenceOfWrongKind, span, {
      subject, field, evidence: {}, context: { named: name, found: thing.word, expected: expected.inWords },
    })]
  }
  return index.mayBeUnread(name) ? [] : [found(referenceUnknown, span, {
    subject, field, evidence: {}, context: { named: name, expected: expected.inWords, ...suggest(name, expected) },
  })]
}

/** By its kind; equipment also by what it must have, since only what gives an output can be a source. */
function mayStandThere({ tag, node }: NamedThing, { kinds, equipmentNeeds }: Expected, index: ThingIndex): boolean {
  const fitting = index.kindsByTag.get(tag)!.filter(kind => kinds.includes(kind))
  return fitting.some(kind => kind !== 'equipment' || equipmentNeeds === undefined || ownOrModels(node, equipmentNeeds, index) !== null)
}

function unknownTerminal(entry: SourceEntry, { name, field, span, terminal }: Reference, index: ThingIndex): readonly LocatedFinding[] {
  const item = index.byTag.get(name)
  if (terminal === null || item === undefined) return []
  const ports = ownOrModels(item.node, 'ports', index)
  const names = ports?.type === 'list' ? ports.items.flatMap(port => textAt(port, 'name') ?? []) : []
  return names.length === 0 || names.includes(terminal) ? [] : [found(terminalUnknown, span, {
    subject: subjectOf(entry), field, evidence: {},
    context: { named: terminal, item: name, ...nearestOf(terminal, names), known: names.join(', ') },
  })]
}

function noSwitch(entry: SourceEntry, { name, field, span }: Reference, index: ThingIndex): readonly LocatedFinding[] {
  const item = index.byTag.get(name)
  if (item?.kind !== 'equipment') return []
  const kind = ownOrModels(item.node, 'kind', index)?.plain ?? 'other'
  return kind === 'network switch' ? [] : [found(notANetworkSwitch, span, {
    subject: subjectOf(entry), field, evidence: {}, context: { named: name, found: String(kind) },
  })]
}

function selfFeeding(circuit: SourceEntry): readonly LocatedFinding[] {
  const source = textAt(circuit.node, 'fed-from')?.split(':', 1)[0]
  return wordsOf(valueAt(circuit.node, 'loads')).filter(({ word }) => word === source).map(({ word, span }) =>
    found(circuitFeedsItsSource, span, { subject: subjectOf(circuit), field: 'loads', evidence: {}, context: { named: word } }))
}

/** Documents of items, and the one file that a picture is. */
function missingFiles(entry: SourceEntry, fileNames: ReadonlySet<string>): readonly LocatedFinding[] {
  const files = itemsAt(entry.node, 'documents').map((document, index) => ({ missing: documentMissing, field: `documents.${index}.file`, node: document }))
  const pictures = entry.kind === 'photographs' || entry.kind === 'arrangement-drawings' ? [{ missing: pictureMissing, field: 'file', node: entry.node }] : []
  return [...files, ...pictures].flatMap(({ missing, field, node }) => {
    const written = textAt(node, 'file')
    if (written === null || !isBelowTop(written) || fileNames.has(fromTop(written))) return []
    return [found(missing, valueAt(node, 'file'), {
      subject: subjectOf(entry), field, evidence: {},
      context: { named: written, ...nearestOf(fromTop(written), [...fileNames]) },
    })]
  })
}

type Suggest = (name: string, expected: Expected) => Readonly<Record<string, string>>

/** Comparing each name with each takes its time; beyond this many the author has another problem than a slip of the pen. */
const mostSuggestions = 200

function suggester({ things, models }: ThingIndex): Suggest {
  const candidates = new Map<Expected, readonly string[]>()
  const suggestions = new Map<string, Readonly<Record<string, string>>>()
  return (name, expected) => {
    const key = `${expected.inWords}: ${name}`
    if (!suggestions.has(key) && suggestions.size < mostSuggestions) {
      const names = candidates.get(expected)
        ?? (expected.kinds.includes('models') ? [...models.keys()] : things.filter(({ kind }) => expected.kinds.includes(kind)).map(({ tag }) => tag))
      candidates.set(expected, names)
      suggestions.set(key, nearestOf(name, names))
    }
    return suggestions.get(key) ?? {}
  }
}
