/** What several pages say of an item: kind, make, place. */
import type { Item } from '../../model/lookup.js'
import type { Tag } from '../../model/vessel.js'
import { equipmentKinds } from '../../references/equipment-kinds.js'
import type { ViewContext } from '../context.js'
import { muted, notRecorded } from '../text.js'
import type { Text } from '../view-model.js'

export const kindTitle = (kind: string): string => equipmentKinds[kind as keyof typeof equipmentKinds]?.title ?? kind

/** A model that is called after its maker is not said twice. */
export const makerAndModel = ({ maker, model }: Item): string | null =>
  [maker !== null && model?.startsWith(maker) ? null : maker, model].filter(word => word !== null).join(' ') || null

/** Zone, words, and how to get at it. */
export function placeText(context: ViewContext, item: Item, { withAccess = true } = {}): Text {
  const { lookup } = context
  if (item.zoneTag === null) return item.location === null ? [notRecorded] : [item.location]
  const access = lookup.zones.get(item.zoneTag)?.access ?? null
  return [
    ...context.named(item.zoneTag),
    ...(item.location === null ? [] : [`: ${item.location}`]),
    ...(access === null || !withAccess ? [] : [' ', muted(`(access: ${access})`)]),
  ]
}

/** For a list: the way into a space is said at the first thing that is in it. */
export function placesInTurn(context: ViewContext): (item: Item) => Text {
  const told = new Set<Tag>()
  return item => {
    const withAccess = item.zoneTag === null || !told.has(item.zoneTag)
    if (item.zoneTag !== null) told.add(item.zoneTag)
    return placeText(context, item, { withAccess })
  }
}
