/** One circuit as the one-line diagram draws it and tells it in words. */
import { lookup } from '../../model/lookup.js'
import type { CircuitFeed, Segment } from '../../model/results.js'
import type { Cable, Circuit, Tag, Vessel } from '../../model/vessel.js'
import { compareTags } from '../tables.js'
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

/** A stretch between two things: one cable, or several side by side. */
interface Stretch { readonly from: Box; readonly to: Box; readonly cableTags: readonly Tag[] }

/** A circuit drawn along its cables. Loads that are listed but that no cable reaches hang on a broken line. */
export function circuitPart(vessel: Vessel, boxes: VesselBoxes, circuit: Circuit, feed: CircuitFeed | undefined): CircuitPart {
  const { boxOf, consumerBox, cableLabel, tagged } = boxes
  const { supplySegments = [], segments = [], reachedTags = [], unreachedTags = circuit.loadTags } = feed ?? {}
  const walked = [...outwards(supplySegments), ...outwards(segments)]
  const stretches = walked.map(segment => stretchOf(vessel, boxes, circuit, segment))
  const throughTags = [...new Set(walked.map(({ farTag }) => farTag))].filter(tag => tag !== circuit.tag && !reachedTags.includes(tag))
  const mounted = supplySegments.length === 0

  const facts = boxOf(circuit.tag).beside
  const list = (word: string, tags: readonly Tag[]): Text => (tags.length === 0 ? [] : [word, ...joined(tags.map(tag => [tagged(tag)]))])
  return {
    circuit,
    boxes: [boxOf(circuit.fedFromTag), boxOf(circuit.tag), ...stretches.flatMap(({ from, to }) => [from, to]), ...unreachedTags.map(consumerBox)],
    lines: [
      ...(mounted ? [{ from: circuit.fedFromTag, to: circuit.tag, label: [], stroke: 'plain' } satisfies Line] : []),
      ...stretches.map(({ from, to, cableTags }): Line => ({ from: from.key, to: to.key, label: cableLabel(cableTags), stroke: 'plain' })),
      ...unreachedTags.map((tag): Line => ({ from: circuit.tag, to: tag, label: [], stroke: 'broken' })),
    ],
    mounted,
    loadTags: [...new Set([...reachedTags, ...circuit.loadTags])],
    words: [
      tagged(circuit.tag), ...(facts.length === 0 ? [] : [` (${facts.join(', ')})`]),
      ...list(' through ', throughTags), ...list(' to ', reachedTags.toSorted(compareTags)),
      ...list(' by ', stretches.flatMap(({ cableTags }) => cableTags)),
      ...list(', no cable recorded to ', unreachedTags),
    ],
  }
}

/** The segments branch by branch, each branch in the order of its cables' tags, whatever order the walk met them in. */
function outwards(segments: readonly Segment[], parent: number | null = null): readonly Segment[] {
  return segments.map((segment, i) => ({ segment, i })).filter(({ segment }) => segment.parent === parent)
    .toSorted((a, b) => compareTags(a.segment.cableTag, b.segment.cableTag))
    .flatMap(({ segment, i }) => [segment, ...outwards(segments, i)])
}

/** The walk of a circuit takes one of several cables between the same two things; the drawing names them all. */
function stretchOf(vessel: Vessel, boxes: VesselBoxes, circuit: Circuit, { cableTag, nearTag, farTag }: Segment): Stretch {
  const { cables, cablesAt } = lookup(vessel)
  const cable = cables.get(cableTag)!
  const [from, to] = [endBox(boxes, cable, nearTag, 'near'), endBox(boxes, cable, farTag, 'far')]
  const beside = (cablesAt.get(nearTag) ?? []).filter(other =>
    other !== cable && (other.carries === 'both' || other.carries === 'positive') && other.status !== 'removed'
    && !circuit.returnCableTags.includes(other.tag) && (other.from.tag === farTag || other.to.tag === farTag)
    && endBox(boxes, other, nearTag, 'near').key === from.key && endBox(boxes, other, farTag, 'far').key === to.key)
  return { from, to, cableTags: [cableTag, ...beside.map(({ tag }) => tag)].toSorted(compareTags) }
}

/** A terminal block is as many boxes as it has terminals in use: each joins only its own cables, one without a name nothing. */
function endBox({ consumerBox, kindOf }: VesselBoxes, cable: Cable, tag: Tag, side: 'near' | 'far'): Box {
  const box = consumerBox(tag)
  if (kindOf(tag)?.joins !== 'same terminal') return box
  const first = cable.from.tag === tag && (cable.to.tag !== tag || side === 'near')
  const { terminal } = first ? cable.from : cable.to
  return terminal === null ? { ...box, key: `${tag}::${cable.tag}` } : { ...box, key: `${tag}:${terminal}`, tag: `${tag}:${terminal}` }
}
