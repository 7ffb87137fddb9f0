/** The protective device behind each of some things: which, and where it is. */
import type { Circuit, Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { joined, lineBreak, muted } from '../../text.js'
import type { Block, Text } from '../../view-model.js'
import { itemsOfKinds } from '../kinds.js'
import { captioned, circuitWhat, circuitWhere, openingAct, reach } from './reach.js'

/** The first word is the caption, the rest are kinds. */
export const fuseReach = (context: ViewContext, words: readonly string[]): readonly Block[] => deviceReach(context, 'fuses', words, () => null)

/** The same, to be opened. */
export const switchOffReach = (context: ViewContext, words: readonly string[]): readonly Block[] =>
  deviceReach(context, 'switch-off', words, circuits => circuits.map(openingAct).find(act => act !== null) ?? null)

function deviceReach(context: ViewContext, name: string, words: readonly string[], act: (circuits: readonly Circuit[]) => string | null): readonly Block[] {
  const [caption, kinds] = captioned(name, words)
  return reach(caption, itemsOfKinds(context, kinds).map(({ tag }) => ({ act: act(context.circuitsOf(tag)), what: context.named(tag), where: devices(context, tag), remark: null })))
}

function devices(context: ViewContext, tag: Tag): Text {
  const circuits = context.circuitsOf(tag)
  if (circuits.length > 0) return joined(circuits.map((circuit): Text => [...circuitWhat(context, circuit), ', ', ...circuitWhere(context, circuit)]), lineBreak)
  const partners = context.results.dependency.traces.get(tag)?.data.map(line => line.tag) ?? []
  return [muted('no fuse of its own'), ...(partners.length === 0 ? [] : [': it works with ', ...joined([...new Set(partners)].map(partner => [context.tag(partner)]))])]
}
