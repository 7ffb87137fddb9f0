/** Rings of network cables, and whether anything on them keeps traffic from going round for ever. */
import { find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Ring } from '../../model/results/ethernet.js'
import type { Gap } from '../../model/results/gap.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { type Edge, graphOf, walkOut } from '../graph.js'
import { ringUnprotected } from './findings.js'
import type { Part } from './part.js'
import type { Wiring } from './wiring.js'

export function ringsPart(vessel: Vessel, wiring: Wiring): Part<readonly Ring[]> {
  const { equipment } = lookup(vessel)
  const isProtected = (tag: Tag): boolean => equipment.get(tag)?.loopProtection === true
  const edges = wiring.wires.filter(({ ends }) => ends.every(({ tag }) => wiring.passes(tag) === true))
    .map(({ tag, ends: [from, to] }): Edge => ({ tag, from: from.tag, to: to.tag, weight: 1 }))
  const rings = ringsIn(edges).map((ring): Ring => {
    const open = ring.filter(({ from, to }) => !isProtected(from) && !isProtected(to))
    const itemTags = [...new Set(ring.flatMap(({ from, to }) => [from, to]))]
    return { itemTags, linkTags: ring.map(({ tag }) => tag), protectedTags: itemTags.filter(isProtected), safe: ringsIn(open).length === 0 }
  })
  return {
    value: rings,
    findings: rings.filter(({ safe }) => !safe).map(({ itemTags, linkTags }) => find(ringUnprotected, {
      subject: { kind: 'equipment', id: itemTags[0]! }, field: null, evidence: { linkCount: linkTags.length }, limit: null,
      context: { links: inWords(linkTags), items: inWords(itemTags) },
    })),
    notAssessed: vessel.equipment.flatMap(item => chainGap(item.tag, wiring)),
  }
}

/** The edges that lie on a ring, those of rings that hang together in one list. */
export function ringsIn(edges: readonly Edge[]): readonly (readonly Edge[])[] {
  const candidates = withoutDeadEnds(edges)
  const graph = graphOf(candidates)
  // An edge lies on a ring when its ends are joined without it.
  const onRing = candidates.filter(({ tag, from, to }) => from === to || walkOut(graph, from, () => true, edge => edge !== tag).tree.some(({ far }) => far === to))
  const rest = graphOf(onRing)
  const placed = new Set<string>()
  return onRing.flatMap(({ tag, from }) => {
    if (placed.has(tag)) return []
    const { tree, loops } = walkOut(rest, from, () => true)
    const together = new Set([...tree, ...loops].map(edge => edge.tag))
    for (const each of together) placed.add(each)
    return [onRing.filter(each => together.has(each.tag))]
  })
}

/** Most of a network is branches, which are gone after a few rounds. */
function withoutDeadEnds(edges: readonly Edge[]): readonly Edge[] {
  const counts = new Map<string, number>()
  for (const { from, to } of edges) for (const node of [from, to]) counts.set(node, (counts.get(node) ?? 0) + 1)
  const kept = edges.filter(({ from, to }) => from === to || (counts.get(from)! > 1 && counts.get(to)! > 1))
  return kept.length === edges.length ? edges : withoutDeadEnds(kept)
}

function chainGap(tag: Tag, { wiresAt, passes }: Wiring): readonly Gap[] {
  const count = wiresAt.get(tag)?.length ?? 0
  return count < 2 || passes(tag) !== null ? []
    : [{ subjectTag: tag, reason: 'rings and what lies beyond it: it has cables on several Ethernet ports, and whether it passes traffic between them is not recorded' }]
}
