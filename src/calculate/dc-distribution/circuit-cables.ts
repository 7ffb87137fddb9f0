/** Which cables a circuit is made of, what they carry, and which of them lie between a source and a load. */
import { lookup } from '../../model/lookup.js'
import { type CircuitFeed, designCurrentA, type FeedingResults, type Segment } from '../../model/results.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import type { ProtectionRule } from '../../references/basis/basis.js'
import type { Reason } from './surroundings.js'

/** A cable's part in one circuit. */
export interface CableUse {
  readonly circuit: Circuit
  /** What it carries for this circuit; null when not known. */
  readonly currentA: number | null
}
export type CableUses = ReadonlyMap<Tag, readonly CableUse[]>

/** Cables on the way out as walked, and on the way back as the author named them, each with every circuit that uses it. */
export function cableUses(vessel: Vessel, feeding: FeedingResults): CableUses {
  const uses = new Map<Tag, CableUse[]>()
  const add = (circuit: Circuit, cableTag: Tag, currentA: number | null): void => {
    const known = uses.get(cableTag)
    if (known === undefined) uses.set(cableTag, [{ circuit, currentA }])
    else known.push({ circuit, currentA })
  }
  for (const circuit of vessel.circuits) {
    const feed = feeding.byCircuit.get(circuit.tag)
    for (const { cableTag, currentA } of [...feed?.supplySegments ?? [], ...feed?.segments ?? []]) add(circuit, cableTag, currentA)
    for (const cableTag of circuit.returnCableTags) add(circuit, cableTag, designCurrentA(feed))
  }
  return uses
}

/**
 * What a cable carries for all the circuits that use it: as in a feeder, the sum of what each draws times its demand
 * factor, but never less than what one of them draws alone. Circuits with the demand factor 0 put current in: what they
 * put in together flows the other way, and the larger of the two counts. Normally open circuits and those exempt from the rules for
 * conductors (engine starting) count only where nothing else uses the cable. Null when a current is not known.
 */
export function currentInA(rule: ProtectionRule, uses: readonly CableUse[]): number | null {
  const regular = uses.filter(({ circuit }) => circuit.normalState === 'closed' && exemptionOf(rule, circuit) === null)
  let sumA = 0
  let largestA = 0
  let chargingA = 0
  for (const { circuit, currentA } of regular.length > 0 ? regular : uses) {
    if (currentA === null) return null
    sumA += currentA * circuit.demandFactor
    largestA = Math.max(largestA, currentA)
    if (circuit.demandFactor === 0) chargingA += currentA
  }
  return Math.max(sumA, largestA, chargingA)
}

/** The exemption under which a circuit has no overcurrent protection; null when it is protected or gives another reason. */
export function exemptionOf(rule: ProtectionRule, { protection, unprotectedReason }: Circuit): ProtectionRule['exempt'][number] | null {
  if (protection !== null || unprotectedReason === null) return null
  return rule.exempt.find(({ reason }) => reason === unprotectedReason.trim().toLowerCase()) ?? null
}

/** A cable on the way from a distribution point to a load. */
export interface PathCable {
  readonly circuitTag: Tag
  readonly cableTag: Tag
  readonly currentA: number | null
  /** 2 when its length counts out and back, 1 when the way back has cables of its own. */
  readonly timesLength: 1 | 2
  readonly returnAssumedAlike: boolean
}

/** The cables of one circuit to what it supplies, supply side first, and back; or why they are not known. */
export function pathWithin(
  vessel: Vessel, rule: ProtectionRule, circuit: Circuit, feed: CircuitFeed, toTag: Tag, uses: CableUses,
): readonly PathCable[] | Reason {
  const { cables } = lookup(vessel)
  const wayOut = segmentsTo(feed.segments, toTag)
  if (wayOut === null) return { reason: `no cable of circuit ${circuit.tag} reaches ${toTag}` }
  const wayBack = returnsFrom(vessel, circuit, toTag)
  if ('reason' in wayBack) return wayBack
  const returnNamed = circuit.returnCableTags.length > 0
  const carried = (cableTag: Tag, ownA: number | null): number | null => {
    const sharedA = currentInA(rule, uses.get(cableTag) ?? [])
    return ownA === null || sharedA === null ? null : Math.max(ownA, sharedA)
  }
  return [
    ...[...feed.supplySegments, ...wayOut].map(({ cableTag, currentA }): PathCable => {
      const both = cables.get(cableTag)?.carries === 'both'
      return {
        circuitTag: circuit.tag, cableTag, currentA: carried(cableTag, currentA),
        timesLength: both || !returnNamed ? 2 : 1, returnAssumedAlike: !both && !returnNamed,
      }
    }),
    ...wayBack.map((cableTag): PathCable =>
      ({ circuitTag: circuit.tag, cableTag, currentA: carried(cableTag, designCurrentA(feed)), timesLength: 1, returnAssumedAlike: false })),
  ]
}

/**
 * The named cables of the way back that a load's current takes: those that only lead to another load of the circuit are
 * left out, and what then leads nowhere with them. Not known where several loads have ways back that end at none of them.
 */
export function returnsFrom(vessel: Vessel, circuit: Circuit, loadTag: Tag): readonly Tag[] | Reason {
  const { cables, items, equipment } = lookup(vessel)
  const kept = new Map(circuit.returnCableTags.flatMap(tag => { const cable = cables.get(tag); return cable === undefined ? [] : [[tag, [cable.from.tag, cable.to.tag]] as const] }))
  const otherLoads = new Set(circuit.loadTags.filter(tag => tag !== loadTag))
  // An end left open by a pruned cable; batteries, busbars and panels are where the way back leads.
  const open = new Set<Tag>()
  for (;;) {
    const ends = [...kept.values()].flat()
    const isOpenEnd = (tag: Tag): boolean => tag !== loadTag && (otherLoads.has(tag) || open.has(tag)) && ends.filter(end => end === tag).length === 1
    const pruned = [...kept].find(([, [from, to]]) => isOpenEnd(from!) || isOpenEnd(to!))
    if (pruned === undefined) {
      const loose = ends.filter(end => end !== loadTag && equipment.has(end) && ends.filter(each => each === end).length === 1)
      return otherLoads.size > 0 && loose.length > 1
        ? { reason: `the ways back of circuit ${circuit.tag} branch, and which of them leads from ${loadTag} is not known` }
        : [...kept.keys()]
    }
    kept.delete(pruned[0])
    for (const end of pruned[1]) if (equipment.has(end) || !items.has(end)) open.add(end)
  }
}

function segmentsTo(segments: readonly Segment[], toTag: Tag): readonly Segment[] | null {
  let segment = segments.find(({ farTag }) => farTag === toTag)
  if (segment === undefined) return null
  const path: Segment[] = []
  while (segment !== undefined) {
    path.unshift(segment)
    segment = segment.parent === null ? undefined : segments[segment.parent]
  }
  return path
}
