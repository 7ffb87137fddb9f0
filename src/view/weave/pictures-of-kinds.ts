/** In general text: the items of some kinds on a plan of the boat, and on photographs. */
import type { ViewContext } from '../context.js'
import { locationDrawing, photographBlocks } from '../pages/location/location-blocks.js'
import type { Block } from '../view-model.js'
import { ofKinds } from './where-table.js'

export function planOfKinds(context: ViewContext, kinds: readonly string[]): readonly Block[] {
  const { items, title, id } = ofKinds(context, kinds)
  return locationDrawing(context, items.map(({ tag }) => tag), { id: `plan-${id}`, caption: `On the plan: ${title}` })
}

export const photographsOfKinds = (context: ViewContext, kinds: readonly string[]): readonly Block[] =>
  photographBlocks(context, ofKinds(context, kinds).items.map(({ tag }) => tag))
