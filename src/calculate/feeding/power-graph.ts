/** The power cables of a vessel as a graph: what is joined to what, and where a circuit ends. */
import { lookup } from '../../model/lookup.js'
import type { Cable, CableEnd, Tag, Vessel } from '../../model/vessel.js'
import { equipmentKind } from '../../references/equipment-kinds.js'
import { type Edge, type EdgeGraph, graphOf } from '../graph.js'
import { isPowerCable } from '../power-cable.js'

export interface PowerGraph {
  readonly graph: EdgeGraph
  /** The cables in it: those that hold the way out of a circuit, of an a.c. circuit its live conductors. */
  readonly cables: readonly Cable[]
  /** Ends at a terminal block without the name of the terminal: nothing is joined there. */
  readonly unnamedEnds: readonly { readonly cable: Cable; readonly tag: Tag }[]
  /** Whether a circuit goes on beyond a node, or beyond the thing with a tag. */
  passes(nodeOrTag: string): boolean
  /** Whether a cable may be taken from that node on: away from a source selector only by `out`, from a source by its outputs. */
  leaves(cableTag: Tag, node: string): boolean
}

/** The terminal of a source selector to which one of the others is led. */
const selectorOutput = 'out'

/** A node is a thing's tag; at a terminal block it is one terminal, `TB1:3`. Tags hold no colon. */
export const tagOfNode = (node: string): Tag => node.split(':', 1)[0]!

export function powerGraphOf(vessel: Vessel): PowerGraph {
  const { equipment, circuits, cableTypes } = lookup(vessel)
  const returns = new Set(vessel.circuits.flatMap(circuit => circuit.returnCableTags))
  const cables = vessel.cables.filter(cable =>
    cable.status !== 'removed' && (cable.carries === 'both' || cable.carries === 'positive')
    && isPowerCable(cable, cableTypes.get(cable.typeTag ?? '') ?? null) && !returns.has(cable.tag))

  const passing = new Set<string>()
  const unnamedEnds: { cable: Cable; tag: Tag }[] = []
  // Cable and selector at which it comes in.
  const inlets = new Set<string>()
  const nodeOf = (cable: Cable, { tag, terminal }: CableEnd): string => {
    const item = circuits.has(tag) ? undefined : equipment.get(tag)
    const joins = item === undefined ? 'nothing' : equipmentKind(item.kind).joins
    // A source is left by its outputs only, where they are named.
    if (terminal !== null && item?.outputs.some(output => output.terminal !== null) === true && !item.outputs.some(output => output.terminal === terminal)) inlets.add(`${cable.tag} ${tag}`)
    if (joins === 'nothing') return tag
    passing.add(tag)
    if (joins === 'to out' && terminal !== selectorOutput) inlets.add(`${cable.tag} ${tag}`)
    if (joins !== 'same terminal') return tag
    if (terminal === null) unnamedEnds.push({ cable, tag })
    const node = terminal === null ? `${tag}::${cable.tag}` : `${tag}:${terminal}`
    passing.add(node)
    return node
  }
  const edges = cables.map((cable): Edge => ({ tag: cable.tag, from: nodeOf(cable, cable.from), to: nodeOf(cable, cable.to), weight: 1 }))
  return {
    graph: graphOf(edges), cables, unnamedEnds,
    passes: nodeOrTag => passing.has(nodeOrTag),
    leaves: (cableTag, node) => !inlets.has(`${cableTag} ${node}`),
  }
}
