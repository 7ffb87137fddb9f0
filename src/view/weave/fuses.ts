/** The protective device behind each of some things: which, and where it is. */
import type { Tag } from '../../model/vessel.js'
import type { ViewContext } from '../context.js'
import { joined, lineBreak, muted } from '../text.js'
import type { Block, Text } from '../view-model.js'
import { itemsOfKinds } from './kinds.js'
import { circuitWhat, circuitWhere, reach } from './reach.js'

/** The first word is the caption, the rest are kinds. */
export function fuseReach(context: ViewContext, [caption, ...kinds]: readonly string[]): readonly Block[] {
  if (caption === undefined) throw new Error('general text: "fuses" without a caption')
  return reach(caption, itemsOfKinds(context, kinds).map(({ tag }) => ({ act: null, what: context.named(tag), where: devices(context, tag), remark: null })))
}

function devices(context: ViewContext, tag: Tag): Text {
  const circuits = context.circuitsOf(tag)
  if (circuits.length > 0) return joined(circuits.map((circuit): Text => [...circuitWhat(context, circuit), ', ', ...circuitWhere(context, circuit)]), lineBreak)
  const partners = context.results.dependency.traces.get(tag)?.data.map(line => line.tag) ?? []
  return [muted('no fuse of its own'), ...(partners.length === 0 ? [] : [': it works with ', ...joined([...new Set(partners)].map(partner => [context.tag(partner)]))])]
}
