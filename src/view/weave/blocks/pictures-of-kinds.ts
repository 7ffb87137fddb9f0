/** In general text: the items of some kinds on a plan of the boat, and on photographs. */
import type { ViewContext } from '../../context.js'
import { locationDrawing, photographBlocks } from '../../pages/location/location-blocks.js'
import type { Block } from '../../view-model.js'
import { itemsOfKinds, wordOfKinds } from '../kinds.js'

const tagsOf = (context: ViewContext, kinds: readonly string[]) => itemsOfKinds(context, kinds).map(({ tag }) => tag)

export function planOfKinds(context: ViewContext, kinds: readonly string[]): readonly Block[] {
  const { title, id } = wordOfKinds(kinds)
  return locationDrawing(context, tagsOf(context, kinds), { id: `plan-${id}`, caption: `On the plan: ${title}` })
}

export const photographsOfKinds = (context: ViewContext, kinds: readonly string[]): readonly Block[] => photographBlocks(context, tagsOf(context, kinds))
