/** Thin helpers over the graph library: things joined by tagged edges, the shortest way, a walk outwards. */
import { MultiUndirectedGraph } from 'graphology'
import { bidirectional } from 'graphology-shortest-path/dijkstra.js'

export interface Edge {
  readonly tag: string
  readonly from: string
  readonly to: string
  /** What the shortest way adds up; not negative. */
  readonly weight: number
}
/** `order`: place in the list of edges, so that of two alike the one written first is taken. */
export type EdgeGraph = MultiUndirectedGraph<{ readonly name: string }, { readonly weight: number; readonly order: number }>

// The library keeps neighbours in plain objects: a bare "constructor" would find what every object inherits, and a bare
// "12" would jump the order of writing.
const key = (name: string): string => `:${name}`

/** Nodes are named by the ends of the edges; between two nodes there may be several edges. Edge tags are unique. */
export function graphOf(edges: Iterable<Edge>): EdgeGraph {
  const graph: EdgeGraph = new MultiUndirectedGraph()
  let order = 0
  for (const { tag, from, to, weight } of edges) {
    graph.mergeNode(key(from), { name: from })
    graph.mergeNode(key(to), { name: to })
    graph.addEdgeWithKey(tag, key(from), key(to), { weight, order: order++ })
  }
  return graph
}

/** Tags of the edges along the way of least weight, in order; null when there is no way. Dijkstra, from both ends. */
export function shortestWay(graph: EdgeGraph, from: string, to: string): readonly string[] | null {
  if (from === to) return []
  if (!graph.hasNode(key(from)) || !graph.hasNode(key(to))) return null
  const nodes = bidirectional(graph, key(from), key(to), 'weight') as string[] | null
  if (nodes === null) return null
  return nodes.slice(1).map((node, i) => lightestEdge(graph, nodes[i]!, node))
}

function lightestEdge(graph: EdgeGraph, a: string, b: string): string {
  const weight = (edge: string) => graph.getEdgeAttribute(edge, 'weight')
  return inOrder(graph, graph.edges(a, b)).reduce((best, edge) => (weight(edge) < weight(best) ? edge : best))
}

const inOrder = (graph: EdgeGraph, edges: readonly string[]): readonly string[] =>
  edges.toSorted((a, b) => graph.getEdgeAttribute(a, 'order') - graph.getEdgeAttribute(b, 'order'))

export interface TreeEdge {
  readonly tag: string
  readonly near: string
  readonly far: string
  /** Position in the tree of the edge before it, or null at the start. */
  readonly parent: number | null
}
export interface Walk {
  /** Nearest first, so a parent always stands before its children. */
  readonly tree: readonly TreeEdge[]
  /** Edges that lead to a node already reached: each closes a loop, and is left out of the tree. */
  readonly loops: readonly TreeEdge[]
}

/**
 * Walks outwards from a node, nearest edges first and of those the one written first, on through every node that `passes`, and stops at the others.
 * `uses` may leave an edge out, or let it be taken in one direction only.
 * Each edge is looked at once or twice, so the time grows with what is reached, not with the graph.
 */
export function walkOut(
  graph: EdgeGraph, start: string, passes: (node: string) => boolean, uses: (edge: string, near: string) => boolean = () => true,
): Walk {
  const tree: TreeEdge[] = []
  const loops: TreeEdge[] = []
  if (!graph.hasNode(key(start))) return { tree, loops }
  const reached = new Set([start])
  const used = new Set<string>()
  const leave = (near: string, parent: number | null) => {
    for (const tag of inOrder(graph, graph.edges(key(near)))) {
      if (used.has(tag) || !uses(tag, near)) continue
      used.add(tag)
      const far = graph.getNodeAttribute(graph.opposite(key(near), tag), 'name')
      const edge = { tag, near, far, parent }
      if (reached.has(far)) loops.push(edge)
      else {
        reached.add(far)
        tree.push(edge)
      }
    }
  }
  leave(start, null)
  // The tree grows while it is gone through: that is the queue.
  for (let i = 0; i < tree.length; i++) if (passes(tree[i]!.far)) leave(tree[i]!.far, i)
  return { tree, loops }
}
