/** Things to lay a hand on in haste: what the hand does, which, where. */
import { kindsOf } from '../../../model/item-kinds.js'
import { isThere, type Item } from '../../../model/lookup.js'
import type { Circuit, Tag } from '../../../model/vessel.js'
import { handAction } from '../../../references/hand-actions.js'
import type { ViewContext } from '../../context.js'
import { circuitPlace, protectionText } from '../../parts/circuit-parts.js'
import { placeText } from '../../parts/item-parts.js'
import { joined, muted, strong } from '../../text.js'
import type { Block, ReachEntry, Text } from '../../view-model.js'
import { itemsOfKinds, outsideMachinery, titleOfKind } from '../kinds.js'

/** The first word of `words` is the caption; the rest are kinds. */
export function reachOfKinds(context: ViewContext, words: readonly string[], { outside = false } = {}): readonly Block[] {
  const [caption, kinds] = captioned('reach', words)
  return reach(caption, kinds.flatMap(kind => entriesOfKind(context, kind, outside)))
}

/** Errors: no caption; general text is part of the program. */
export function captioned(directive: string, [caption, ...words]: readonly string[]): readonly [string, readonly string[]] {
  if (caption === undefined) throw new Error(`general text: "${directive}" without a caption`)
  return [caption, words]
}

export const reach = (caption: string, entries: readonly ReachEntry[]): readonly Block[] =>
  (entries.length === 0 ? [] : [{ is: 'reach', id: `reach-${caption.toLowerCase().replace(/\W+/g, '-')}`, caption, entries }])

/** Alike things side by side, with one note, are one entry. A kind that is not there is told, with the reason where one is given. */
function entriesOfKind(context: ViewContext, kind: string, outside: boolean): readonly ReachEntry[] {
  const together = new Map<string, Item[]>()
  const items = itemsOfKinds(context, [kind])
  for (const item of outside ? outsideMachinery(context, items) : items) {
    const key = JSON.stringify([item.zoneTag, item.location, item.notes])
    together.set(key, [...together.get(key) ?? [], item])
  }
  return items.length === 0 ? missing(context, kind) : [...together.values()].map(items => entryOf(context, items))
}

/** With their note, unless there is something else to say. */
export function entryOf(context: ViewContext, items: readonly Item[], remark: Text | null = notesOf(items[0]!)): ReachEntry {
  const [first] = items as [Item]
  return {
    act: kindsOf(first).map(handAction).find(action => action !== null) ?? null,
    what: joined(items.map(({ tag }) => context.named(tag))),
    where: placeText(context, first, { withAccess: false }),
    remark,
  }
}

/** What a beacon has written to it is about its battery, and no help now. */
const notesOf = (item: Item): Text | null => (item.notes === null || ('kind' in item && item.kind === 'safety beacon') ? null : [item.notes])

/** Only of kinds that an emergency asks for on this boat: the others are simply not there. */
function missing({ vessel, results }: ViewContext, kind: string): readonly ReachEntry[] {
  const title = titleOfKind(kind)
  const entry = (words: string): ReachEntry => ({ act: null, what: [strong(title)], where: [muted(words)], remark: null })
  const planned = vessel.equipment.filter(item => item.kind === kind && isThere(item))
  const reasons = vessel.absences.filter(absence => absence.kind === kind).map(({ reason }) => reason)
  if (planned.length > 0) return [entry(`planned, not yet on board: ${planned.map(({ tag }) => tag).join(', ')}`)]
  if (reasons.length > 0) return [entry(`none on board: ${reasons.join('; ')}`)]
  return results.emergency.needs.some(({ kinds, state }) => state === 'not recorded' && kinds.includes(kind)) ? [entry('not recorded')] : []
}

/** How a hand opens it. */
export const openingAct = ({ protection }: Circuit): string | null =>
  (protection === null ? null : protection.device.includes('fuse') ? 'Take out' : 'Switch off')

/** A circuit by its protective device: `A2.13 Engine space blower, circuit breaker 7.5 A`. */
export const circuitWhat = (context: ViewContext, circuit: Circuit): Text => [...context.named(circuit.tag), `, ${protectionText(circuit)}`]
export const circuitWhere = (context: ViewContext, circuit: Circuit): Text => circuitPlace(context, circuit)

/** Names, the first few; how many more. */
export function someNames(context: ViewContext, tags: readonly Tag[], most: number): Text {
  const more = tags.length - most
  return [...joined(tags.slice(0, most).map(context.named), '; '), ...(more > 0 ? [`; and ${more} more`] : [])]
}
