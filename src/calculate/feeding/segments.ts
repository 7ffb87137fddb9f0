/** The cables of a circuit as segments, each with the current it carries for that circuit. */
import type { Segment } from '../../model/results.js'
import type { Circuit, Tag } from '../../model/vessel.js'
import type { TreeEdge } from '../graph.js'
import type { Demands, Flow } from './demand.js'
import { tagOfNode } from './power-graph.js'

const segment = ({ tag, near, far, parent }: TreeEdge, { drawnA, putInA }: Flow): Segment =>
  ({ cableTag: tag, nearTag: tagOfNode(near), farTag: tagOfNode(far), parent, currentA: drawnA, putInA })

/** All of a circuit's current comes through each cable on its supply side. */
export const supplySegments = (supply: readonly TreeEdge[], flow: Flow): readonly Segment[] => supply.map(edge => segment(edge, flow))

/** From the protective device to one thing, in order; none where no cable of the circuit reaches it. */
export function segmentsTo(segments: readonly Segment[], toTag: Tag): readonly Segment[] {
  const way: Segment[] = []
  let next = segments.find(({ farTag }) => farTag === toTag)
  while (next !== undefined) {
    way.unshift(next)
    next = next.parent === null ? undefined : segments[next.parent]
  }
  return way
}

/**
 * The cables downstream of the protective device. Each carries what is drawn, and put in, beyond it. Where the author
 * gives the design current it holds for the cables that lead to all of the loads, and no cable is taken to carry more.
 */
export function outwardSegments(
  circuit: Circuit, outwards: readonly TreeEdge[], passes: (node: string) => boolean, demands: Demands,
): readonly Segment[] {
  const listed = new Set(circuit.loadTags)
  const counted = new Set<Tag>()
  // A thing passed on the way draws nothing unless the circuit lists it; the terminals of one block are one thing.
  const beyond = outwards.map(({ far }) => {
    const tag = tagOfNode(far)
    const draws = (listed.has(tag) || !passes(far)) && !counted.has(tag)
    if (draws) counted.add(tag)
    return { flow: draws ? demands.atLoad(circuit, tag) : none, loadCount: draws && listed.has(tag) ? 1 : 0 }
  })
  const allLoads = beyond.reduce((sum, { loadCount }) => sum + loadCount, 0)
  for (let i = outwards.length - 1; i >= 0; i--) {
    const { parent } = outwards[i]!
    if (parent === null) continue
    const [above, below] = [beyond[parent]!, beyond[i]!]
    above.flow = { drawnA: sumOrNull(above.flow.drawnA, below.flow.drawnA), putInA: sumOrNull(above.flow.putInA, below.flow.putInA) }
    above.loadCount += below.loadCount
  }
  const given = circuit.designCurrentA
  return outwards.map((edge, i) => {
    const { flow, loadCount } = beyond[i]!
    if (given === null) return segment(edge, flow)
    const leadsToAll = allLoads > 0 && loadCount === allLoads
    return segment(edge, { ...flow, drawnA: flow.drawnA === null || leadsToAll ? given : Math.min(flow.drawnA, given) })
  })
}

const none: Flow = { drawnA: 0, putInA: 0 }
const sumOrNull = (a: number | null, b: number | null): number | null => (a === null || b === null ? null : a + b)
