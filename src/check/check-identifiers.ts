/** Tags name one thing each, and so do the ways of a panel. */
import type { LocatedFinding } from '../findings/finding.js'
import { kindNames } from '../load/entry-kinds.js'
import { type NamedThing, nameSpan } from '../load/named-things.js'
import { type SourceEntry, textAt, valueAt } from '../load/source-folder.js'
import { slug } from '../model/address.js'
import type { EquipmentKindKey } from '../references/equipment-kinds.js'
import { placeTakenTwice, tagRepeated, tagTooAlike, wayBeyondPanel, wayTakenTwice } from './findings.js'
import { found, placeInWords, subjectOf } from './found.js'
import { ownOrModels, type ThingIndex } from './thing-index.js'

export function checkIdentifiers(entries: readonly SourceEntry[], index: ThingIndex): readonly LocatedFinding[] {
  return [
    ...repeatedTags(index),
    ...(['models', 'measurements', 'manual-contents'] as const).flatMap(kind => repeatedNames(entries.filter(entry => entry.kind === kind))),
    ...repeatedWays(entries.filter(({ kind }) => kind === 'circuits'), index),
    ...repeatedPlaces(entries.filter(({ kind }) => kind === 'procedures')),
  ]
}

/**
 * One namespace for everything that has a tag, so that a tag on a label or in a text means one thing. Only a backbone
 * element may share its tag with the equipment entry that describes the same tee or terminator.
 */
function repeatedTags(index: ThingIndex): readonly LocatedFinding[] {
  const findings: LocatedFinding[] = []
  const byTag = new Map<string, NamedThing>()
  const byAddress = new Map<string, NamedThing>()
  for (const thing of index.things) {
    const { tag, word, tagSpan } = thing
    const subject = { kind: word, id: tag }
    const same = byTag.get(tag)
    if (same !== undefined) {
      if (thing.kind === 'backbone' && isBackbonePart(same, index)) continue
      findings.push(found(tagRepeated, tagSpan, { subject, field: 'tag', evidence: {}, context: { other: inWords(same), first: placeInWords(same.tagSpan) } }))
      continue
    }
    byTag.set(tag, thing)
    const address = slug(tag)
    const alike = byAddress.get(address)
    if (alike === undefined) {
      byAddress.set(address, thing)
    } else {
      const context = { other: inWords(alike), first: placeInWords(alike.tagSpan), address }
      findings.push(found(tagTooAlike, tagSpan, { subject, field: 'tag', evidence: {}, context }))
    }
  }
  return findings
}

const backboneParts: ReadonlySet<unknown> = new Set<EquipmentKindKey>(['can bus tee', 'can bus terminator', 'connector', 'junction box'])
const isBackbonePart = ({ kind, node }: NamedThing, index: ThingIndex): boolean =>
  kind === 'equipment' && backboneParts.has(ownOrModels(node, 'kind', index)?.plain)

const inWords = ({ word, tag }: NamedThing): string => `${word} ${tag}`

/** Of entries that are named by something else than a tag: models by their key, readings by their number, contents by theirs. */
function repeatedNames(entries: readonly SourceEntry[]): readonly LocatedFinding[] {
  const first = new Map<string, SourceEntry>()
  return entries.flatMap(entry => {
    if (entry.id === null) return []
    const same = first.get(entry.id)
    if (same === undefined) first.set(entry.id, entry)
    const { entry: word, nameField } = kindNames[entry.kind]
    return same === undefined ? [] : [found(tagRepeated, nameSpan(entry), {
      subject: subjectOf(entry), field: nameField, evidence: {}, context: { other: `${word} ${entry.id}`, first: placeInWords(nameSpan(same)) },
    })]
  })
}

function repeatedWays(circuits: readonly SourceEntry[], { byTag }: ThingIndex): readonly LocatedFinding[] {
  const taken = new Map<string, SourceEntry>()
  return circuits.flatMap(circuit => {
    const panel = byTag.get(textAt(circuit.node, 'fed-from') ?? '')
    const written = valueAt(circuit.node, 'way')
    const way = wholeNumber(written?.plain)
    if (panel?.kind !== 'panels' || written === null || way === null) return []

    const facts = { subject: subjectOf(circuit), field: 'way' }
    const key = `${panel.tag} ${way}`
    const other = taken.get(key)
    if (other === undefined) taken.set(key, circuit)
    const twice = other === undefined ? [] : [found(wayTakenTwice, written, {
      ...facts, evidence: {}, context: { way: String(way), panel: panel.tag, other: subjectOf(other).id, first: placeInWords(nameSpan(other)) },
    })]
    const ways = wholeNumber(valueAt(panel.node, 'ways')?.plain)
    const beyond = ways === null || way <= ways ? [] : [found(wayBeyondPanel, written, {
      ...facts, evidence: { wayNumber: way, wayCount: ways }, context: { panel: panel.tag },
    })]
    return [...twice, ...beyond]
  })
}

/** A page of the manual shows one procedure in place of its general text. */
function repeatedPlaces(procedures: readonly SourceEntry[]): readonly LocatedFinding[] {
  const taken = new Map<string, SourceEntry>()
  return procedures.flatMap(procedure => {
    const place = textAt(procedure.node, 'place')
    if (place === null) return []
    const other = taken.get(place)
    if (other === undefined) taken.set(place, procedure)
    return other === undefined ? [] : [found(placeTakenTwice, valueAt(procedure.node, 'place'), {
      subject: subjectOf(procedure), field: 'place', evidence: {}, context: { place, other: subjectOf(other).id, first: placeInWords(nameSpan(other)) },
    })]
  })
}

/** As in a YAML file, or as the text of a table's cell. */
function wholeNumber(plain: unknown): number | null {
  const number = typeof plain === 'string' && /^\d+$/.test(plain) ? Number(plain) : plain
  return typeof number === 'number' && Number.isInteger(number) ? number : null
}
