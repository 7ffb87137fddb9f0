/** What general text names by its kind: kinds of equipment, and the items that are entered in lists of their own. */
import { isOnBoard } from '../../model/lookup.js'
import type { Item } from '../../model/lookup.js'
import { kindsOf } from '../../model/item-kinds.js'
import { itemKindTitle } from '../../references/item-kinds.js'
import type { ViewContext } from '../context.js'
import { byTag } from '../tables.js'

/** Errors: a kind that there is none of; general text is part of the program. */
export function titleOfKind(kind: string): string {
  const title = itemKindTitle(kind)
  if (title === null) throw new Error(`general text: no kind of equipment "${kind}"`)
  return title
}

/** `VHF transceiver` stays as it is, `Seacock` becomes `seacock`. */
export const inSentence = (title: string): string => (/^[A-Z][a-z]/.test(title) ? title[0]!.toLowerCase() + title.slice(1) : title)

/** What of these kinds is on board, kind by kind in their order, then by tag. Errors as above. */
export function itemsOfKinds(context: Pick<ViewContext, 'lookup'>, kinds: readonly string[]): readonly Item[] {
  kinds.forEach(titleOfKind)
  const there = [...context.lookup.items.values()].filter(isOnBoard).toSorted(byTag)
  return [...new Set(kinds.flatMap(kind => there.filter(item => kindsOf(item).includes(kind))))]
}

/** What can be reached without going into a machinery space. */
export const outsideMachinery = ({ lookup }: Pick<ViewContext, 'lookup'>, items: readonly Item[]): readonly Item[] =>
  items.filter(({ zoneTag }) => lookup.zones.get(zoneTag ?? '')?.space !== 'machinery')

/** What some kinds are called together in a sentence, and a word for the ids of blocks about them. */
export const wordOfKinds = (kinds: readonly string[]): { readonly title: string; readonly id: string } =>
  ({ title: kinds.map(kind => inSentence(titleOfKind(kind))).join(', '), id: kinds[0]!.replace(/\W+/g, '-') })
