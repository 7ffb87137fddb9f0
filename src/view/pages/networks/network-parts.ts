/** What the pages of networks have in common. */
import { fixedPages } from '../../site-map.js'
import type { Block, Diagram, Page } from '../../view-model.js'

export const networkTrail = [{ text: 'Data networks', to: fixedPages.networks }]

/** Drawings after the first block on the site; on paper, where each takes a sheet, after the rest. */
export const withDrawings = (drawings: readonly Diagram[], [first, ...rest]: readonly [Block, ...Block[]]): Pick<Page, 'blocks' | 'printed'> =>
  ({ blocks: [first, ...drawings, ...rest], printed: [first, ...rest, ...drawings] })
