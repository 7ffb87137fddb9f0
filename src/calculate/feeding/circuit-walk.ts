/** Which cables belong to each circuit: those that bring its supply, and those it sends out, as a tree. */
import { lookup } from '../../model/lookup.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { type TreeEdge, walkOut } from '../graph.js'
import type { PowerGraph } from './power-graph.js'

export interface CircuitCables {
  /** From the distribution point to the protective device, in order. */
  readonly supply: readonly TreeEdge[]
  /** From the protective device outwards, nearest first. */
  readonly outwards: readonly TreeEdge[]
}
export interface CircuitWalks {
  readonly byCircuit: ReadonlyMap<Tag, CircuitCables>
  /** Cables that join what is joined already, by their tag. They are left out of the trees. */
  readonly loops: ReadonlyMap<Tag, TreeEdge>
  /** For each cable that can be reached from a battery, busbar or panel without passing a protective device: from which. */
  readonly liveFrom: ReadonlyMap<Tag, Tag>
}

/**
 * A protective device has two sides, and the data does not say on which of them a cable sits. What can be reached from
 * the distribution point without passing a device is the supply side; all else at the device leads outwards.
 */
export function walkCircuits(vessel: Vessel, { graph, passes, leaves }: PowerGraph): CircuitWalks {
  const { circuitsFedFrom } = lookup(vessel)
  const byCircuit = new Map<Tag, CircuitCables>()
  const loops = new Map<Tag, TreeEdge>()
  const liveFrom = new Map<Tag, Tag>()
  const points = [...vessel.batteries, ...vessel.busbars.filter(({ polarity }) => polarity === 'positive'), ...vessel.panels]

  for (const point of new Set([...points.map(({ tag }) => tag), ...circuitsFedFrom.keys()])) {
    const live = walkOut(graph, point, passes, leaves)
    for (const { tag } of [...live.tree, ...live.loops]) if (!liveFrom.has(tag)) liveFrom.set(tag, point)

    const fed = circuitsFedFrom.get(point) ?? []
    const positionAt = new Map(live.tree.map(({ far }, position) => [far, position]))
    const supplySide = new Map(fed.map(({ tag }) => [tag, new Set<Tag>()]))
    for (const edge of live.tree) supplySide.get(edge.far)?.add(edge.tag)
    for (const edge of live.loops) {
      supplySide.get(edge.far)?.add(edge.tag)
      // A loop at anything else that ends a circuit is the business of that circuit.
      if (passes(edge.far) || edge.far === point || supplySide.has(edge.far)) loops.set(edge.tag, edge)
    }
    for (const { tag } of fed) {
      const outwards = walkOut(graph, tag, passes, (edge, near) => leaves(edge, near) && supplySide.get(tag)?.has(edge) !== true)
      for (const edge of outwards.loops) loops.set(edge.tag, edge)
      byCircuit.set(tag, { supply: wayTo(live.tree, positionAt.get(tag) ?? null), outwards: outwards.tree })
    }
  }
  return { byCircuit, loops, liveFrom }
}

/** The edges of a tree from its start to the one at `position`, as a tree of their own. */
function wayTo(tree: readonly TreeEdge[], position: number | null): TreeEdge[] {
  const way: TreeEdge[] = []
  for (let at = position; at !== null; at = tree[at]!.parent) way.push(tree[at]!)
  return way.reverse().map((edge, i) => ({ ...edge, parent: i === 0 ? null : i - 1 }))
}
