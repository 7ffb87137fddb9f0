/** From a step to the general tree that goes on from there. */
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { linkTo } from '../text.js'
import type { Text } from '../view-model.js'

export const treeKey = (key: string): string => `${fixedPages.faultTrees}/${key}`

/** Nothing where the manual has no such text. */
export function treeLink({ content }: ViewContext, key: string): Text {
  const tree = content.faultTrees.find(each => each.key === key)
  return tree === undefined ? [] : ['See ', linkTo(treeKey(key), tree.title), '.']
}
