/** Which cables a circuit is made of, what they carry, and which of them lie between a source and a load. */
import { lookup } from '../../model/lookup.js'
import { type CircuitFeed, designCurrentA, type FeedingResults } from '../../model/results.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import type { ProtectionRule } from '../../references/basis/basis.js'
import { segmentsTo } from '../feeding/segments.js'
import type { Reason } from './surroundings.js'

/** A cable's part in one circuit. */
export interface CableUse {
  readonly circuit: Circuit
  /** What it carries for this circuit; null when not known. */
  readonly currentA: number | null
  /** What charging sources put in through it towards the source of this circuit; null when not known. */
  readonly putInA: number | null
  /** The circuit is for charging: it draws nothing. */
  readonly charges: boolean
}
export type CableUses = ReadonlyMap<Tag, readonly CableUse[]>

/** Cables on the way out as walked, and on the way back as the author named them, each with every circuit that uses it. */
export function cableUses(vessel: Vessel, feeding: FeedingResults): CableUses {
  const uses = new Map<Tag, CableUse[]>()
  const add = (cableTag: Tag, use: CableUse): void => {
    const known = uses.get(cableTag)
    if (known === undefined) uses.set(cableTag, [use])
    else known.push(use)
  }
  for (const circuit of vessel.circuits) {
    const feed = feeding.byCircuit.get(circuit.tag)
    const charges = feed?.infeed?.only ?? false
    for (const { cableTag, currentA, putInA } of [...feed?.supplySegments ?? [], ...feed?.segments ?? []]) add(cableTag, { circuit, currentA, putInA, charges })
    const putInA = feed?.infeed == null ? 0 : feed.infeed.currentA
    for (const cableTag of circuit.returnCableTags) add(cableTag, { circuit, currentA: designCurrentA(feed), putInA, charges })
  }
  return uses
}

/**
 * What is drawn through a cable by all the circuits that use it: as in a feeder, the sum of what each draws times its
 * demand factor, but never less than what one of them draws alone. Normally open circuits and those exempt from the rules
 * for conductors (engine starting) count only where nothing else uses the cable. Null when a current is not known.
 */
export function drawnThroughA(rule: ProtectionRule, uses: readonly CableUse[]): number | null {
  let sumA = 0
  let largestA = 0
  for (const { circuit, currentA, charges } of countedUses(rule, uses)) {
    if (charges) continue
    if (currentA === null) return null
    sumA += currentA * circuit.demandFactor
    largestA = Math.max(largestA, currentA)
  }
  return Math.max(sumA, largestA)
}

/** What a cable must carry: what is drawn or what charging sources put in, which flows the other way; the larger of the two. */
export function currentInA(rule: ProtectionRule, uses: readonly CableUse[]): number | null {
  const drawnA = drawnThroughA(rule, uses)
  const chargingA = putIntoA(rule, uses)
  return drawnA === null || chargingA === null ? null : Math.max(drawnA, chargingA)
}

/**
 * What charging sources put in through a cable together: of several circuits in one chain the feeder's, which holds the
 * others' already; of circuits side by side the sum. Null when one is not known.
 */
export function putIntoA(rule: ProtectionRule, uses: readonly CableUse[]): number | null {
  const counted = countedUses(rule, uses)
  if (counted.some(({ putInA }) => putInA === null)) return null
  const sumWhere = (charges: boolean) => counted.reduce((sum, use) => sum + (use.charges === charges ? use.putInA! : 0), 0)
  return Math.max(sumWhere(true), sumWhere(false))
}

function countedUses(rule: ProtectionRule, uses: readonly CableUse[]): readonly CableUse[] {
  const regular = uses.filter(({ circuit }) => circuit.normalState === 'closed' && exemptionOf(rule, circuit) === null)
  return regular.length > 0 ? regular : uses
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

/**
 * The cables of one circuit to what it supplies, supply side first, and back; or why they are not known. With `charging`
 * they carry what is put in, else what is drawn.
 */
export function pathWithin(
  vessel: Vessel, rule: ProtectionRule, circuit: Circuit, feed: CircuitFeed, toTag: Tag, uses: CableUses, charging = feed.infeed?.only ?? false,
): readonly PathCable[] | Reason {
  const { cables } = lookup(vessel)
  const wayOut = segmentsTo(feed.segments, toTag)
  if (wayOut.length === 0) return { reason: `no cable of circuit ${circuit.tag} reaches ${toTag}` }
  const wayBack = returnsFrom(vessel, circuit, toTag)
  if ('reason' in wayBack) return wayBack
  const returnNamed = circuit.returnCableTags.length > 0
  const carried = (cableTag: Tag, ownA: number | null): number | null => {
    const sharedA = (charging ? putIntoA : drawnThroughA)(rule, uses.get(cableTag) ?? [])
    return ownA === null || sharedA === null ? null : Math.max(ownA, sharedA)
  }
  return [
    ...[...feed.supplySegments, ...wayOut].map(({ cableTag, currentA, putInA }): PathCable => {
      const both = cables.get(cableTag)?.carries === 'both'
      return {
        circuitTag: circuit.tag, cableTag, currentA: carried(cableTag, charging ? putInA : currentA),
        timesLength: both || !returnNamed ? 2 : 1, returnAssumedAlike: !both && !returnNamed,
      }
    }),
    ...wayBack.map((cableTag): PathCable => {
      const ownA = !charging ? designCurrentA(feed) : feed.infeed === null ? 0 : feed.infeed.currentA
      return { circuitTag: circuit.tag, cableTag, currentA: carried(cableTag, ownA), timesLength: 1, returnAssumedAlike: false }
    }),
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
