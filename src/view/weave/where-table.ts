/** Where the items of some kinds are, and how to get at them. */
import { isThere } from '../../model/lookup.js'
import { equipmentKinds, isEquipmentKind } from '../../references/equipment-kinds.js'
import type { ViewContext } from '../context.js'
import { placeText } from '../pages/equipment.view.js'
import { byTag, tableOf } from '../tables.js'
import type { Block } from '../view-model.js'

export function whereTable(context: ViewContext, kinds: readonly string[]): readonly Block[] {
  const items = context.vessel.equipment.filter(item => isThere(item) && kinds.includes(item.kind)).toSorted(byTag)
  const titles = kinds.map(kind => { if (!isEquipmentKind(kind)) throw new Error(`general text: no kind of equipment "${kind}"`); return equipmentKinds[kind].title })
  return [tableOf(items, {
    id: `where-${kinds[0]!.replace(/\W+/g, '-')}`,
    caption: `Where: ${titles.join(', ').toLowerCase()}`,
    empty: 'None is recorded.',
    columns: [
      { title: 'What', width: 'text', cell: item => context.named(item.tag) },
      { title: 'Where', width: 'text', cell: item => placeText(context, item) },
    ],
  })]
}
