/** What the pages of networks have in common. */
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { muted } from '../../text.js'
import type { Block, Diagram, Page, Text } from '../../view-model.js'

export const networkTrail = [{ text: 'Data networks', to: fixedPages.networks }]

/** Drawings after the first block on the site; on paper, where each takes a sheet, after the rest. */
export const withDrawings = (drawings: readonly Diagram[], [first, ...rest]: readonly [Block, ...Block[]]): Pick<Page, 'blocks' | 'printed'> =>
  ({ blocks: [first, ...drawings, ...rest], printed: [first, ...rest, ...drawings] })

/** The port of the switch that a device lives on; null where it lives on none. */
export function networkSupply({ results, tag: linked }: ViewContext, deviceTag: Tag): Text | null {
  const [feed] = [...results.ethernet.power.values()].flatMap(({ tag, feeds }) => feeds.filter(each => each.deviceTag === deviceTag).map(({ portName }) => ({ tag, portName })))
  return feed === undefined ? null : [...(feed.portName === null ? [] : [`${/^port/i.test(feed.portName) ? '' : 'port '}${feed.portName} of `]), linked(feed.tag), muted(', over its network cable')]
}
