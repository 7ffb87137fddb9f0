/**
 * What is dead when one thing is taken away, found a second way: the boat as a graph of conductors, built from the cables
 * alone, from which the thing is removed; then a general-purpose graph library says what is still reached from the sources.
 * It shares nothing with the pass, neither its walk of circuits nor its ways back: current takes any cable that is there.
 */
import { alg, Graph } from '@dagrejs/graphlib'
import type { Cable, Equipment, Tag, Vessel } from '../../../src/model/vessel.js'

const wires = ['switch', 'battery isolator', 'float switch', 'fuse holder', 'residual-current device', 'galvanic isolator', 'source selector', 'shunt', 'junction box', 'connector', 'terminal block']
const roots = ['shore inlet', 'generator', 'solar panel', 'alternator']
const putsIn: readonly string[] = ['alternator', 'charger', 'solar panel', 'solar charge controller']

export function secondImplementation(vessel: Vessel): { deadWithout(removed: Tag): ReadonlySet<Tag> } {
  const use = (cable: Cable) => vessel.cableTypes.find(({ tag }) => tag === cable.typeTag)?.use ?? 'power'
  const circuits = new Map(vessel.circuits.map(circuit => [circuit.tag, circuit]))
  const equipment = new Map(vessel.equipment.map(item => [item.tag, item]))
  const cables = vessel.cables.filter(({ status }) => status !== 'removed')
  const power = cables.filter(cable => ['power', 'ac power'].includes(use(cable)) && cable.carries !== 'none')
  const inlets = new Set(vessel.equipment.filter(({ kind }) => roots.includes(kind)).map(({ tag }) => tag))
  const charges = ({ loadTags }: Vessel['circuits'][number]): boolean => loadTags.every(tag => putsIn.includes(equipment.get(tag)?.kind ?? ''))
  const open = new Set(vessel.circuits.filter(opens).map(({ tag }) => tag))
  const giving = new Set(vessel.circuits.map(({ fedFromTag }) => fedFromTag))

  /** Open in normal use, unless all that lists a load is open. */
  function opens(circuit: Vessel['circuits'][number]): boolean {
    return circuit.normalState === 'open'
      && circuit.loadTags.some(load => vessel.circuits.some(other => other.normalState === 'closed' && other.loadTags.includes(load) && !charges(other)))
  }

  const isWire = (tag: Tag) => wires.includes(equipment.get(tag)?.kind ?? '')
  const goesOn = (tag: Tag) => !equipment.has(tag) || isWire(tag)
  const outputOf = (item: Equipment | undefined, terminal: string | null) => item?.outputs.some(output => output.terminal === terminal) ?? false

  /** Conductors of one polarity. A cable is a node of its own, so that it can be removed like anything else. */
  function conductors(of: 'positive' | 'negative'): Graph {
    const graph = new Graph({ directed: true })
    const join = (from: Tag, to: Tag) => { graph.setEdge(from, to) }
    for (const cable of power.filter(({ carries }) => carries === 'both' || carries === of)) {
      const [a, b] = [cable.from, cable.to]
      for (const [near, far] of [[a, b], [b, a]] as const) {
        // Out of a load nothing comes; into the output of a source nothing goes.
        if (goesOn(near.tag) || inlets.has(near.tag) || outputOf(equipment.get(near.tag), near.terminal)) join(blockNode(near), cable.tag)
        if (!outputOf(equipment.get(far.tag), far.terminal)) join(cable.tag, blockNode(far))
      }
    }
    for (const circuit of vessel.circuits) {
      const cabled = power.some(({ from, to }) => [from.tag, to.tag].includes(circuit.tag) && [from.tag, to.tag].includes(circuit.fedFromTag))
      const supplied = cabled || (of === 'positive' && power.some(cable => leadsTo(cable, circuit.tag, circuit.fedFromTag)))
      if (!supplied || of === 'negative') join(circuit.fedFromTag, circuit.tag)
    }
    // A busbar or panel without a negative conductor of its own is taken to have its loads' negatives at the busbar named for the way back.
    for (const { loadTags, returnCableTags } of of === 'positive' ? [] : vessel.circuits) {
      for (const load of loadTags.filter(tag => !equipment.has(tag) && !power.some(({ carries, from, to }) => carries !== 'positive' && [from.tag, to.tag].includes(tag) && !circuits.has(from.tag)))) {
        for (const bar of vessel.busbars) if (cables.some(({ tag, from, to }) => returnCableTags.includes(tag) && [from.tag, to.tag].includes(bar.tag))) join(bar.tag, load)
      }
    }
    return graph
  }
  /** Terminal blocks join only the same terminal. */
  const blockNode = ({ tag, terminal }: Cable['from']): Tag => (equipment.get(tag)?.kind === 'terminal block' ? `${tag}:${terminal}` : tag)
  const leadsTo = ({ from, to }: Cable, circuitTag: Tag, fedFromTag: Tag): boolean => {
    const other = from.tag === circuitTag ? to.tag : to.tag === circuitTag ? from.tag : null
    return other !== null && isWire(other) && power.some(cable => [cable.from.tag, cable.to.tag].includes(other) && [cable.from.tag, cable.to.tag].includes(fedFromTag))
  }

  /** A bus carries both conductors along its backbone; a switch port along its cable. */
  function alongNetworks(graph: Graph): Graph {
    const both = (a: Tag, b: Tag) => { graph.setEdge(a, b); graph.setEdge(b, a) }
    for (const bus of vessel.canBuses) {
      const chain = bus.backbone.map(part => (part.kind === 'segment' ? part.cableTag : part.tag))
      chain.slice(1).forEach((tag, i) => both(chain[i]!, tag))
      for (const part of bus.backbone) {
        if (part.kind !== 'tee' || part.deviceTag === null || part.dropCableTag === null || !equipment.has(part.deviceTag) || onCircuit(part.deviceTag)) continue
        graph.setEdge(part.tag, part.dropCableTag)
        graph.setEdge(part.dropCableTag, part.deviceTag)
      }
    }
    for (const cable of cables.filter(each => use(each) === 'ethernet')) {
      for (const [near, far] of [[cable.from, cable.to], [cable.to, cable.from]] as const) {
        const port = equipment.get(near.tag)?.ports.find(({ name }) => name === near.terminal)
        if (equipment.get(near.tag)?.kind !== 'network switch' || port?.powerClass == null || !equipment.has(far.tag) || onCircuit(far.tag)) continue
        graph.setEdge(near.tag, cable.tag)
        graph.setEdge(cable.tag, far.tag)
      }
    }
    return graph
  }
  function onCircuit(tag: Tag): boolean {
    return vessel.circuits.some(({ loadTags }) => loadTags.includes(tag))
  }
  const layers = { positive: alongNetworks(conductors('positive')), negative: alongNetworks(conductors('negative')) }

  function without(layer: 'positive' | 'negative', removed: Tag | null): Graph {
    const copy = new Graph({ directed: true })
    // The negative core of a circuit that is normally open could serve another circuit of the same load; it is not counted on.
    for (const node of layers[layer].nodes()) if (node.split(':')[0] !== removed && !open.has(node)) copy.setNode(node)
    for (const { v, w } of layers[layer].edges()) if (copy.hasNode(v) && copy.hasNode(w)) copy.setEdge(v, w)
    return copy
  }
  const reach = (graph: Graph, root: Tag): ReadonlySet<Tag> => new Set(graph.hasNode(root) ? alg.preorder(graph, [root]) : [])
  const intactNegative = new Map<Tag, ReadonlySet<Tag>>()
  for (const { tag } of [...vessel.batteries, ...vessel.equipment]) intactNegative.set(tag, reach(layers.negative, tag))

  /** Current goes back to the source it came from. Converters start one after another, until no more starts. */
  function live(removed: Tag | null): ReadonlySet<Tag> {
    const plus = without('positive', removed)
    const minus = without('negative', removed)
    const left = new Set<Tag>()
    const started = new Set<Tag>()
    for (;;) {
      const root = [...vessel.batteries, ...vessel.equipment].map(({ tag }) => tag)
        .find(tag => !started.has(tag) && tag !== removed && (!equipment.has(tag) || inlets.has(tag) || (giving.has(tag) && left.has(tag))))
      if (root === undefined) return left
      started.add(root)
      const back = reach(minus, root)
      // Where no way back is entered at all, it is taken to be sound.
      for (const tag of reach(plus, root)) if (back.has(tag) || !intactNegative.get(root)!.has(tag)) left.add(tag)
    }
  }
  const intact = live(null)
  return { deadWithout: removed => { const left = live(removed); return new Set([...intact].filter(tag => !left.has(tag) && tag !== removed)) } }
}
