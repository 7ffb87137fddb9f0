import { alg, Graph } from '@dagrejs/graphlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ringsIn } from '../../../src/calculate/ethernet/rings.js'
import type { Edge } from '../../../src/calculate/graph.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { aNetwork } from '../../support/vessel-builder.js'
import { aDevice, aSwitch, ethernetOf, foundIn, link, networkVessel, port } from './support.js'

const edges = fc.array(fc.record({ from: fc.nat(7), to: fc.nat(7) }), { maxLength: 14 })
  .map(list => list.map(({ from, to }, i): Edge => ({ tag: `W${i}`, from: `N${from}`, to: `N${to}`, weight: 1 })))

/** In a second library: how many parts the graph falls into. */
function partCount(list: readonly Edge[]): number {
  const graph = new Graph({ directed: false, multigraph: true })
  for (const { tag, from, to } of list) graph.setEdge(from, to, undefined, tag)
  return alg.components(graph).length
}
const nodeCount = (list: readonly Edge[]): number => new Set(list.flatMap(({ from, to }) => [from, to])).size

/** By the second library: an edge lies on a ring when the graph does not fall apart without it. */
const onRing = (list: readonly Edge[], edge: Edge): boolean => {
  const rest = list.filter(each => each !== edge)
  // What hung on this edge alone is gone with it, and counts as a part of its own.
  const lost = [...new Set([edge.from, edge.to])].filter(node => rest.every(({ from, to }) => from !== node && to !== node)).length
  return edge.from === edge.to || partCount(rest) + lost === partCount(list)
}

describe('rings', () => {
  it('have the edges without which nothing falls apart, by a second library', () => {
    fc.assert(fc.property(edges, list => {
      expect(ringsIn(list).flat().map(({ tag }) => tag).toSorted()).toEqual(list.filter(edge => onRing(list, edge)).map(({ tag }) => tag).toSorted())
    }), { numRuns: 300 })
  })
  it('are there when a graph has more edges than a tree', () => {
    fc.assert(fc.property(edges, list => { expect(ringsIn(list).length > 0).toBe(list.length > nodeCount(list) - partCount(list)) }), { numRuns: 300 })
  })
  it('each hang together and share no node with another', () => {
    fc.assert(fc.property(edges, list => {
      const rings = ringsIn(list)
      for (const ring of rings) expect(partCount(ring)).toBe(1)
      expect(rings.reduce((sum, ring) => sum + nodeCount(ring), 0)).toBe(nodeCount(rings.flat()))
    }), { numRuns: 300 })
  })
})

describe('the rings of a vessel', () => {
  const triangle = (protectedTags: readonly string[], more: Partial<Vessel> = {}): Vessel => networkVessel({
    equipment: ['N1', 'N2', 'N3'].map(tag => aSwitch(tag, 4, { loopProtection: protectedTags.includes(tag) || null })),
    cables: [link('W1', 'N1:1', 'N2:1'), link('W2', 'N2:2', 'N3:1'), link('W3', 'N3:2', 'N1:2')],
    ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1', 'N2', 'N3'] })],
    ...more,
  })
  it('do harm when nothing on them is protected', () => {
    const results = ethernetOf(triangle([]))
    expect(results.rings).toMatchObject([{ itemTags: ['N1', 'N2', 'N3'], linkTags: ['W1', 'W2', 'W3'], safe: false }])
    expect(results.findings).toMatchObject([{ id: 'ETH108', evidence: { linkCount: 3 } }])
  })
  it('do none when one item on them is', () => {
    const results = ethernetOf(triangle(['N2']))
    expect(results.rings).toMatchObject([{ protectedTags: ['N2'], safe: true }])
    expect(foundIn(results)).toEqual([])
  })
  it('do harm beside a protected one when they do not pass it', () => {
    const vessel = triangle(['N1'])
    const results = ethernetOf({ ...vessel, cables: [...vessel.cables, link('W4', 'N2:3', 'N3:3')] })
    expect(results.rings).toMatchObject([{ protectedTags: ['N1'], safe: false }])
  })
  it('need every item on them to pass traffic', () => {
    const vessel = (passesEthernet: boolean | null) => networkVessel({
      equipment: [aSwitch('N1', 2), aDevice('P1', { passesEthernet, ports: [port('a'), port('b')] })], cables: [link('W1', 'N1:1', 'P1:a'), link('W2', 'N1:2', 'P1:b')],
    })
    expect(foundIn(ethernetOf(vessel(true)))).toEqual(['ETH108 N1'])
    expect(foundIn(ethernetOf(vessel(false)))).toEqual([])
    const unknown = ethernetOf(vessel(null))
    expect(unknown.rings).toEqual([])
    expect(unknown.notAssessed).toContainEqual({ subjectTag: 'P1', reason: expect.stringMatching(/^rings/) })
  })
  it('may be a cable from a switch to itself', () => expect(foundIn(ethernetOf(networkVessel({ equipment: [aSwitch('N1', 2)], cables: [link('W1', 'N1:1', 'N1:2')] })))).toEqual(['ETH108 N1']))
})
