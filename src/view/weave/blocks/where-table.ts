/** Where the items of some kinds are, and how to get at them. */
import type { ViewContext } from '../../context.js'
import { placesInTurn } from '../../parts/item-parts.js'
import { tableOf } from '../../tables.js'
import type { Block } from '../../view-model.js'
import { itemsOfKinds, wordOfKinds } from '../kinds.js'

export function whereTable(context: ViewContext, kinds: readonly string[]): readonly Block[] {
  const { title, id } = wordOfKinds(kinds)
  return [tableOf(itemsOfKinds(context, kinds), {
    id: `where-${id}`,
    caption: `Where: ${title}`,
    empty: 'None is recorded.',
    columns: [
      { title: 'What', width: 'text', cell: item => context.named(item.tag) },
      { title: 'Where', width: 'text', cell: placesInTurn(context) },
    ],
  })]
}
