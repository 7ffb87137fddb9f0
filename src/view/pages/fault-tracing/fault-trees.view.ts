/** Where to look, for faults of a sort: numbered decisions with the boat's own facts. */
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import type { Page } from '../../view-model.js'
import { weave } from '../../weave/weave.js'
import { treeAddress, treesHere } from './fault-tree-links.js'

export const faultTreePages = (context: ViewContext): readonly Page[] => treesHere(context).map(({ key, title, markdown }): Page => ({
  key: treeAddress(key),
  title,
  kicker: 'Fault tracing',
  lead: null,
  printed: null,
  trail: [{ text: 'Fault tracing', to: fixedPages.faultTracing }],
  blocks: weave(context, markdown),
}))
