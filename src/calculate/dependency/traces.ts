/** Where to look when an item is dead: from the item back to the source, nearest first. */
import { isSwitch, lookup } from '../../model/lookup.js'
import type { FeedingResults, Segment } from '../../model/results.js'
import type { DataLine, SupplyLine, Trace, TraceStep } from '../../model/results/dependency.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { isInUse, passes } from './deliveries.js'
import { isOpen, type Supply } from './supply-facts.js'

export function tracesOf(
  vessel: Vessel, feeding: FeedingResults, { linesOf, networkSupplyOf }: Supply, dataOf: ReadonlyMap<Tag, readonly DataLine[]>,
): ReadonlyMap<Tag, Trace> {
  const { batteries, busbars, panels, items } = lookup(vessel)
  /** What lies before a thing, back to the source; while it is worked out it stands empty, so that a ring ends. */
  const upwards = new Map<Tag, readonly TraceStep[]>()
  const traced = [...items.keys()].filter(tag => isInUse(vessel, tag) && !passes(vessel, tag))
  return new Map(traced.map(tag => [tag, { supplies: suppliesOf(tag), data: dataOf.get(tag) ?? [] }]))

  function suppliesOf(tag: Tag): readonly SupplyLine[] {
    const lines = linesOf.get(tag) ?? []
    const alone = lines.every(isOpen)
    const byNetwork = networkSupplyOf.get(tag)
    return [
      ...lines.map((line): SupplyLine => ({ circuitTag: line.circuit.tag, open: isOpen(line) && !alone, steps: circuitSteps(line.circuit.tag, line.way) })),
      ...(byNetwork === undefined ? [] : [{ circuitTag: null, open: false, steps: networkSteps(tag) }]),
    ]
  }

  function networkSteps(tag: Tag): readonly TraceStep[] {
    const supply = networkSupplyOf.get(tag)
    if (supply === undefined) return []
    if (supply.is === 'switch port') {
      const [{ switchTag, cableTag }] = supply.links as [(typeof supply.links)[number]]
      return [step(switchTag, 'network switch', [cableTag]), ...feedSteps(switchTag)]
    }
    const [{ circuitTag, throughTags }] = supply.ways as [(typeof supply.ways)[number]]
    const { cables } = lookup(vessel)
    const bus = step(supply.busTag, 'bus', throughTags.filter(through => cables.has(through)))
    return circuitTag === null ? [bus] : [bus, ...circuitSteps(circuitTag, feeding.byCircuit.get(circuitTag)?.segments ?? [])]
  }

  /** The device, the switches on the way out nearest to the item first, then what lies before the device. */
  function circuitSteps(circuitTag: Tag, way: readonly Segment[]): readonly TraceStep[] {
    const circuit = lookup(vessel).circuits.get(circuitTag)!
    const before = feeding.byCircuit.get(circuitTag)?.supplySegments ?? []
    const passed = (segments: readonly Segment[]) => segments.filter(({ farTag }) => passes(vessel, farTag)).toReversed()
      .map(({ farTag, cableTag }) => step(farTag, isSwitch(vessel, farTag) ? 'switch' : 'joint', [cableTag]))
    return [step(circuitTag, 'device', way.map(({ cableTag }) => cableTag)), ...passed(way), ...passed(before), ...pointSteps(circuit.fedFromTag)]
  }

  function pointSteps(tag: Tag): readonly TraceStep[] {
    const what = batteries.has(tag) ? 'battery' : panels.has(tag) ? 'panel' : busbars.has(tag) ? 'busbar' : 'source'
    const others = (linesOf.get(tag) ?? []).slice(1).map(({ circuit }) => circuit.tag)
    return [step(tag, what, [], others), ...feedSteps(tag)]
  }

  function feedSteps(tag: Tag): readonly TraceStep[] {
    const known = upwards.get(tag)
    if (known !== undefined) return known
    upwards.set(tag, [])
    const first = linesOf.get(tag)?.[0]
    const steps = first === undefined ? networkSteps(tag) : circuitSteps(first.circuit.tag, first.way)
    upwards.set(tag, steps)
    return steps
  }
}

const step = (tag: Tag, what: TraceStep['what'], cableTags: readonly Tag[], otherFeedTags: readonly Tag[] = []): TraceStep =>
  ({ tag, what, cableTags, otherFeedTags })
