/** One circuit as the one-line diagram draws it and tells it in words. */
import { lookup } from '../../model/lookup.js'
import type { CircuitFeed, Segment } from '../../model/results.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import { joined } from '../text.js'
import type { Text } from '../view-model.js'
import type { Box, Line } from './mermaid-text.js'
import type { VesselBoxes } from './vessel-boxes.js'

export interface CircuitPart {
  readonly circuit: Circuit
  /** Where it is fed from, its protective device, what it goes through, what it feeds. */
  readonly boxes: readonly Box[]
  readonly lines: readonly Line[]
  /** Whether the protective device sits on the distribution point itself, with no cable between. */
  readonly mounted: boolean
  /** What it feeds, by its cables or by its list of loads. */
  readonly loadTags: readonly Tag[]
  readonly words: Text
}

/** A circuit drawn along its cables. Loads that are listed but that no cable reaches hang on a broken line. */
export function circuitPart(vessel: Vessel, vesselBoxes: VesselBoxes, circuit: Circuit, feed: CircuitFeed | undefined): CircuitPart {
  const { boxOf, kindOf, cableLabel, tagged } = vesselBoxes
  const { cables } = lookup(vessel)
  const supply = feed?.supplySegments ?? []
  const onward = feed?.segments ?? []
  const reachedTags = feed?.reachedTags ?? []
  const unreachedTags = feed?.unreachedTags ?? circuit.loadTags

  /** A terminal block is as many boxes as it has terminals in use: each joins only its own cables, one without a name nothing. */
  const end = (cableTag: Tag, tag: Tag, side: 'near' | 'far'): Box => {
    const box = boxOf(tag)
    if (kindOf(tag)?.joins !== 'same terminal') return box
    const cable = cables.get(cableTag)!
    const terminal = (cable.from.tag === tag && (cable.to.tag !== tag || side === 'near') ? cable.from : cable.to).terminal
    return terminal === null ? { ...box, key: `${tag}::${cableTag}` } : { ...box, key: `${tag}:${terminal}`, tag: `${tag}:${terminal}` }
  }
  const ends = (segment: Segment) => ({ from: end(segment.cableTag, segment.nearTag, 'near'), to: end(segment.cableTag, segment.farTag, 'far') })
  const segments = [...supply, ...onward].map(segment => ({ ...ends(segment), cableTag: segment.cableTag }))

  const mounted = supply.length === 0
  const throughTags = [...new Set([...supply, ...onward].map(({ farTag }) => farTag))]
    .filter(tag => tag !== circuit.tag && !reachedTags.includes(tag))
  const facts = boxOf(circuit.tag).beside
  const list = (tags: readonly Tag[]): Text => joined(tags.map(tag => [tagged(tag)]))
  const segmentTags = [...supply, ...onward].map(({ cableTag }) => cableTag)
  return {
    circuit,
    boxes: [boxOf(circuit.fedFromTag), boxOf(circuit.tag), ...segments.flatMap(({ from, to }) => [from, to]), ...unreachedTags.map(boxOf)],
    lines: [
      ...(mounted ? [{ from: circuit.fedFromTag, to: circuit.tag, label: [], stroke: 'plain' } satisfies Line] : []),
      ...segments.map(({ from, to, cableTag }): Line => ({ from: from.key, to: to.key, label: cableLabel(cableTag), stroke: 'plain' })),
      ...unreachedTags.map((tag): Line => ({ from: circuit.tag, to: tag, label: [], stroke: 'broken' })),
    ],
    mounted,
    loadTags: [...new Set([...reachedTags, ...circuit.loadTags])],
    words: [
      tagged(circuit.tag), ...(facts.length === 0 ? [] : [` (${facts.join(', ')})`]),
      ...(throughTags.length === 0 ? [] : [' through ', ...list(throughTags)]),
      ...(reachedTags.length === 0 ? [] : [' to ', ...list(reachedTags)]),
      ...(segmentTags.length === 0 ? [] : [' by ', ...list(segmentTags)]),
      ...(unreachedTags.length === 0 ? [] : [', no cable recorded to ', ...list(unreachedTags)]),
    ],
  }
}
