/** The general trees that hold on this boat, and the way from a step to the tree that goes on from there. */
import type { Content } from '../../../model/content.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { linkTo } from '../../text.js'
import type { PageKey, Text } from '../../view-model.js'

type Tree = Content['faultTrees'][number]

export const treeAddress = (key: string): PageKey => `${fixedPages.faultTrees}/${key}`

const hasMains = ({ results }: ViewContext): boolean => results.acSupply.sources.length > 0
/** What a tree is about, where not every boat has it. */
const isThere: Readonly<Record<string, (context: ViewContext) => boolean>> = {
  'no-shore-power': hasMains,
  'residual-current-device-trips': hasMains,
  'can-bus': ({ vessel }) => vessel.canBuses.length > 0,
  'ethernet': ({ vessel }) => vessel.ethernetNetworks.length > 0,
  'serial': ({ results }) => results.serial.byLink.size > 0,
  'radio': ({ results }) => results.radio.chains.length > 0,
  'position-lost': ({ vessel }) => vessel.equipment.some(({ kind, status }) => kind === 'gnss receiver' && status !== 'removed'),
}

export const treesHere = (context: ViewContext): readonly Tree[] => context.content.faultTrees.filter(({ key }) => isThere[key]?.(context) ?? true)

/** Nothing where the boat has no such page. */
export function treeLink(context: ViewContext, key: string): Text {
  const tree = treesHere(context).find(each => each.key === key)
  return tree === undefined ? [] : ['See ', linkTo(treeAddress(key), tree.title), '.']
}
