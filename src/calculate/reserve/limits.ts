/** What each part of a feeder could still carry, and what one more load below it would leave. */
import type { Limit } from '../../findings/finding.js'
import { isDistributionPoint, lookup } from '../../model/lookup.js'
import { cableTagsOf, type CircuitFeed, designCurrentA } from '../../model/results.js'
import type { FeederReserve, LimitedBy, ReserveLimit, ReserveVerdict } from '../../model/results/reserve.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Citation } from '../../references/bibliography.js'
import { exceeds } from '../compare.js'
import { type CableUses, currentInA, exemptionOf } from '../conductors/circuit-cables.js'
import { designCurrent } from '../feeding/design-current.calc.js'
import { feederOf } from '../feeding/supply.js'
import { runMethod } from '../run-method.js'
import type { Upstream } from '../upstream.js'
import { feederMarginMethod } from './feeder-margin.calc.js'

export interface Shared {
  readonly vessel: Vessel
  readonly basis: Basis
  readonly before: Upstream
  readonly uses: CableUses
}

/** A margin, or a sentence on why there is none. */
export type LimitOrReason = ReserveLimit | string
export const isLimit = (limit: LimitOrReason): limit is ReserveLimit => typeof limit !== 'string'
export const isReason = (limit: LimitOrReason): limit is string => typeof limit === 'string'

export const makersRating: Citation = { source: 'common-practice', place: 'the rating that the maker states' }

export function limitOf(of: LimitedBy, tag: Tag, limitCurrentA: number, takenCurrentA: number, citation: Citation): LimitOrReason {
  const margin = runMethod(feederMarginMethod, { limitCurrentA, takenCurrentA })
  if (margin.status === 'not computed') return `${of} ${tag}: ${margin.reason}`
  const limit: Limit = { relation: 'at most', value: limitCurrentA, citation }
  return { of, tag, citation, margin, within: !exceeds(takenCurrentA, limit) }
}

export const leastOf = (limits: readonly ReserveLimit[]): ReserveLimit | null =>
  limits.reduce<ReserveLimit | null>((least, limit) => (least === null || limit.margin.output.marginCurrentA < least.margin.output.marginCurrentA ? limit : least), null)

/** One limit that is passed settles it; that none is passed can only be said when all are known. */
export const verdictOf = (limits: readonly ReserveLimit[], missing: readonly string[]): ReserveVerdict =>
  limits.some(({ within }) => !within) ? 'does not fit' : missing.length > 0 || limits.length === 0 ? 'not assessed' : 'fits'

export const isFeeder = (vessel: Vessel, { loadTags }: Circuit): boolean => loadTags.some(tag => isDistributionPoint(vessel, tag))

export function feederReserve(shared: Shared, circuit: Circuit): FeederReserve {
  const feed = shared.before.feeding.byCircuit.get(circuit.tag)
  const designA = designCurrentA(feed)
  const found = designA === null ? [designUnknown(feed)] : [
    deviceLimit(circuit, designA),
    ...conductorLimits(shared, circuit, designA),
    ...circuit.loadTags.flatMap(tag => pointLimit(shared, tag, takenAt(shared, tag))),
    ...sourceLimit(shared, circuit),
  ]
  const limits = found.filter(isLimit)
  return {
    circuitTag: circuit.tag,
    designCurrentA: designA,
    putInCurrentA: feed?.infeed == null ? 0 : feed.infeed.currentA,
    limits, least: leastOf(limits),
    missing: found.filter(isReason),
  }
}

const designUnknown = (feed: CircuitFeed | undefined): string =>
  `the design current is not known${feed?.designCurrent.status === 'not computed' ? `: ${feed.designCurrent.reason}` : ''}`

function deviceLimit({ tag, protection, unprotectedReason }: Circuit, designA: number): LimitOrReason {
  if (protection === null) return unprotectedReason === null ? 'no protective device is recorded' : `it has no protective device: ${unprotectedReason}`
  return limitOf('protective device', tag, protection.ratedCurrentA, designA, { source: 'iec-60364-4-43', place: 'design current at most the rated current' })
}

/**
 * The cable with the least left, each held against the larger of this circuit's current and what is drawn through it for
 * all that use it. What is put in flows the other way: it is no load on top.
 */
function conductorLimits({ basis, before, uses }: Shared, circuit: Circuit, designA: number): readonly LimitOrReason[] {
  if (exemptionOf(basis.protection, circuit) !== null) return []
  const cableTags = cableTagsOf(circuit, before.feeding.byCircuit.get(circuit.tag))
  if (cableTags.length === 0) return ['no cable of it is recorded']
  const found = cableTags.map((tag): LimitOrReason => {
    const outcome = before.currentCarryingCapacity.byCable.get(tag)?.outcome
    if (outcome?.status !== 'computed') return `the current-carrying capacity of cable ${tag} is not assessed${outcome === undefined ? '' : `: ${outcome.reason}`}`
    const drawnA = currentInA(basis.protection, (uses.get(tag) ?? []).map(use => ({ ...use, putInA: 0 })))
    if (drawnA === null) return `what cable ${tag} carries for all its circuits is not known`
    return limitOf('conductor', tag, outcome.output.currentCarryingCapacityA, Math.max(designA, drawnA), basis.ampacity.citation)
  })
  const least = leastOf(found.filter(isLimit))
  return [...(least === null ? [] : [least]), ...found.filter(isReason)]
}

/** Of a panel or busbar; nothing for an ordinary load that the feeder supplies too. */
export function pointLimit({ vessel }: Shared, tag: Tag, takenA: number | null): readonly LimitOrReason[] {
  const { panels, busbars } = lookup(vessel)
  const point = panels.get(tag) ?? busbars.get(tag)
  if (point === undefined) return []
  const of = panels.has(tag) ? 'panel' : 'busbar'
  if (point.ratedCurrentA === null) return [`the rated current of ${of} ${tag} is not recorded`]
  return [takenA === null ? `what ${of} ${tag} takes is not known` : limitOf(of, tag, point.ratedCurrentA, takenA, makersRating)]
}

/** What the circuits fed from a panel or busbar take together, demand factors applied; null when not known. */
export function takenAt({ vessel, before }: Shared, pointTag: Tag): number | null {
  const feeder = feederOf(vessel, pointTag)
  if (feeder.is !== 'circuit') return null
  const feed = before.feeding.byCircuit.get(feeder.circuit.tag)
  const wholeA = designCurrentA(feed)
  if (feed === undefined || wholeA === null || feeder.circuit.loadTags.length === 1) return wholeA
  const { circuits } = lookup(vessel)
  return togetherA(feed.currentParts.filter(({ tag }) => circuits.get(tag)?.fedFromTag === pointTag))
}

/** As the design current of a feeder: the sum, and never less than the largest of them. */
const togetherA = (parts: readonly { readonly currentA: number; readonly demandFactor: number }[]): number => designCurrent({
  connectedCurrentA: parts.reduce((sum, { currentA, demandFactor }) => sum + currentA * demandFactor, 0),
  demandFactor: 1,
  largestCurrentA: Math.max(0, ...parts.filter(({ demandFactor }) => demandFactor > 0).map(({ currentA }) => currentA)),
}).designCurrentA

/** What the source can give without a break, where that is recorded, held against all that is fed from it. */
function sourceLimit({ vessel, basis, before }: Shared, circuit: Circuit): readonly LimitOrReason[] {
  const { batteries, circuitsFedFrom } = lookup(vessel)
  const from = feederOf(vessel, circuit.fedFromTag, circuit.fedFromTerminal)
  if (from.is !== 'source') return []
  const ratedA = from.source.ratedCurrentA ?? batteries.get(circuit.fedFromTag)?.dischargeCurrentMaxA ?? null
  if (ratedA === null) return []
  const drawing = (circuitsFedFrom.get(circuit.fedFromTag) ?? []).filter(each =>
    // A circuit that is normally open draws all the same once it is switched to.
    (each.normalState === 'closed' || each.tag === circuit.tag) && each.fedFromTerminal === circuit.fedFromTerminal && exemptionOf(basis.protection, each) === null
    && before.feeding.byCircuit.get(each.tag)?.infeed?.only !== true)
  const parts = drawing.map(each => ({ currentA: designCurrentA(before.feeding.byCircuit.get(each.tag)), demandFactor: each.demandFactor, tag: each.tag }))
  const unknown = parts.find(({ currentA }) => currentA === null)
  return [unknown === undefined
    ? limitOf('source', circuit.fedFromTag, ratedA, togetherA(parts.map(part => ({ ...part, currentA: part.currentA ?? 0 }))), makersRating)
    : `what source ${circuit.fedFromTag} gives is not known: the design current of ${unknown.tag} is not known`]
}
