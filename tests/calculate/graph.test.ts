import { alg, Graph } from '@dagrejs/graphlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Edge, graphOf, shortestWay, walkOut } from '../../src/calculate/graph.js'

const edge = (tag: string, from: string, to: string, weight = 1): Edge => ({ tag, from, to, weight })

/** Any graph on up to twelve nodes, with parallel edges, loops on a node, parts that do not hang together. */
const edges = fc.array(
  fc.record({ from: fc.integer({ min: 0, max: 11 }), to: fc.integer({ min: 0, max: 11 }), weight: fc.integer({ min: 0, max: 20 }) }),
  { maxLength: 40 },
).map(list => list.map(({ from, to, weight }, i) => edge(`W${i}`, `N${from}`, `N${to}`, weight)))
const node = fc.integer({ min: 0, max: 11 }).map(i => `N${i}`)

/** Distances by a second library, Dijkstra from one end. */
function distances(list: readonly Edge[], from: string): Record<string, { distance: number }> {
  const graph = new Graph({ directed: false, multigraph: true })
  graph.setNode(from)
  for (const { tag, from: a, to: b, weight } of list) graph.setEdge(a, b, weight, tag)
  return alg.dijkstra(graph, from, (e: { v: string; w: string; name?: string }) => graph.edge(e) as number, v => graph.nodeEdges(v) ?? [])
}

describe('shortestWay', () => {
  it('is as short as a second library finds it, and is a way that joins the two', () => {
    fc.assert(fc.property(edges, node, node, (list, from, to) => {
      const way = shortestWay(graphOf(list), from, to)
      const expected = from === to ? 0 : distances(list, from)[to]?.distance ?? Infinity
      if (way === null) return void expect(expected).toBe(Infinity)
      let at = from
      let sum = 0
      for (const tag of way) {
        const { from: a, to: b, weight } = list.find(e => e.tag === tag)!
        expect([a, b]).toContain(at)
        at = at === a ? b : a
        sum += weight
      }
      expect([at, sum]).toEqual([to, expected])
    }), { numRuns: 500 })
  })

  it('takes the shorter of two edges between the same nodes', () => {
    expect(shortestWay(graphOf([edge('long', 'A', 'B', 3), edge('short', 'A', 'B', 2)]), 'A', 'B')).toEqual(['short'])
  })

  it('is not misled by names that every object inherits', () => {
    const graph = graphOf([edge('W1', 'constructor', 'toString'), edge('W2', 'toString', '__proto__')])
    expect(shortestWay(graph, 'constructor', '__proto__')).toEqual(['W1', 'W2'])
    expect(shortestWay(graph, 'constructor', 'valueOf')).toBeNull()
  })
})

describe('walkOut', () => {
  it('stops where a node does not pass, and goes on where it does', () => {
    const graph = graphOf([edge('1', 'S', 'J'), edge('2', 'J', 'L'), edge('3', 'L', 'beyond')])
    const { tree } = walkOut(graph, 'S', name => name === 'J')
    expect(tree.map(({ tag, near, far, parent }) => [tag, near, far, parent])).toEqual([['1', 'S', 'J', null], ['2', 'J', 'L', 0]])
  })

  it('reaches what a second library calls connected, each node once, and cuts one edge for each loop', () => {
    fc.assert(fc.property(edges, node, (list, start) => {
      const { tree, loops } = walkOut(graphOf(list), start, () => true)
      const reached = [start, ...tree.map(({ far }) => far)]
      const connected = Object.entries(distances(list, start)).filter(([, { distance }]) => distance < Infinity).map(([name]) => name)
      expect([...reached].sort()).toEqual(connected.sort())
      const within = list.filter(({ from }) => reached.includes(from))
      // Edges of a connected graph beyond a spanning tree: as many as it has independent loops.
      expect(loops.length).toBe(within.length - (reached.length - 1))
      for (const [i, { near, parent }] of tree.entries()) {
        expect(parent === null ? start : tree[parent]!.far).toBe(near)
        expect(parent ?? -1).toBeLessThan(i)
      }
    }), { numRuns: 300 })
  })

  it('leaves out edges that are not to be used', () => {
    const graph = graphOf([edge('1', 'S', 'A'), edge('2', 'S', 'B')])
    expect(walkOut(graph, 'S', () => true, tag => tag !== '1').tree.map(({ tag }) => tag)).toEqual(['2'])
  })
})
