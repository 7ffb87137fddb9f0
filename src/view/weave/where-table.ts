/** Where the items of some kinds are, and how to get at them. */
import { isThere } from '../../model/lookup.js'
import type { Equipment } from '../../model/vessel.js'
import { equipmentKinds, isEquipmentKind } from '../../references/equipment-kinds.js'
import type { ViewContext } from '../context.js'
import { placeText } from '../pages/equipment.view.js'
import { byTag, tableOf } from '../tables.js'
import type { Block } from '../view-model.js'

/** What is there of some kinds, what they are called together, and a word for the ids of blocks about them. Errors: a kind that there is none of. */
export function ofKinds({ vessel }: ViewContext, kinds: readonly string[]): { readonly items: readonly Equipment[]; readonly title: string; readonly id: string } {
  const titles = kinds.map(kind => { if (!isEquipmentKind(kind)) throw new Error(`general text: no kind of equipment "${kind}"`); return equipmentKinds[kind].title })
  return {
    items: vessel.equipment.filter(item => isThere(item) && kinds.includes(item.kind)).toSorted(byTag),
    title: titles.join(', ').toLowerCase(),
    id: kinds[0]!.replace(/\W+/g, '-'),
  }
}

export function whereTable(context: ViewContext, kinds: readonly string[]): readonly Block[] {
  const { items, title, id } = ofKinds(context, kinds)
  return [tableOf(items, {
    id: `where-${id}`,
    caption: `Where: ${title}`,
    empty: 'None is recorded.',
    columns: [
      { title: 'What', width: 'text', cell: item => context.named(item.tag) },
      { title: 'Where', width: 'text', cell: item => placeText(context, item) },
    ],
  })]
}
