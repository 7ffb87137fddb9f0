/** Whether each circuit is protected, and the rating held against its load and against its weakest conductor. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import {
  type CapacityResults, type CircuitFeed, type CircuitProtection, type Comparison, designCurrentA, type FeedingResults, type ProtectionResults,
} from '../../model/results.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import type { Basis, ProtectionRule } from '../../references/basis/basis.js'
import { type Citation, cite } from '../../references/bibliography.js'
import { largestRatingA, type ProtectiveDevice, protectiveDevice, smallestRatingA } from '../../references/tables/protective-devices.js'
import { say } from '../../units/format.js'
import { compare, exceeds } from '../compare.js'
import { feederOf } from '../feeding/supply.js'
import { exemptionOf } from './circuit-cables.js'
import { limitedByItsSource, noProtection, ratingAboveCapacity, ratingAboveTarget, ratingBelowLoad, ratingNotStandard, unprotectedAsExempt, unprotectedForStatedReason } from './findings.js'
import { protectionRating } from './protection-rating.calc.js'

export function protectionPass(vessel: Vessel, basis: Basis, feeding: FeedingResults, capacity: CapacityResults): ProtectionResults {
  const byCircuit = new Map<Tag, CircuitProtection>()
  const findings: Finding[] = []
  for (const circuit of vessel.circuits) {
    const feed = feeding.byCircuit.get(circuit.tag)
    const weakest = weakestOf(circuit, feed, capacity)
    const assessed = assess(circuit, basis.protection, feed, weakest)
    byCircuit.set(circuit.tag, assessed)
    findings.push(...findingsOf(circuit, basis.protection, assessed, limitedBySource(vessel, circuit, weakest)))
  }
  return { byCircuit, findings }
}

const limitedSource: Citation = { source: 'iec-60364-7-712', place: 'overload protection left out where the conductors carry 1.25 times the current of the source' }

interface Weakest { readonly cableTag: Tag | null; readonly capacityA: number | null; readonly unknown: readonly string[] }

/** Over every cable downstream of the device, on the way out and on the way back as far as it is named. */
function weakestOf(circuit: Circuit, feed: CircuitFeed | undefined, capacity: CapacityResults): Weakest {
  const cableTags = [...(feed?.segments ?? []).map(({ cableTag }) => cableTag), ...circuit.returnCableTags]
  if (cableTags.length === 0) return { cableTag: null, capacityA: null, unknown: ['no cable of the circuit is recorded'] }
  let weakest: Weakest = { cableTag: null, capacityA: null, unknown: [] }
  for (const cableTag of cableTags) {
    const outcome = capacity.byCable.get(cableTag)?.outcome
    if (outcome?.status !== 'computed') {
      weakest = { ...weakest, unknown: [...weakest.unknown, `the current-carrying capacity of cable ${cableTag} is not assessed`] }
    } else if (outcome.output.currentCarryingCapacityA < (weakest.capacityA ?? Infinity)) {
      weakest = { ...weakest, cableTag, capacityA: outcome.output.currentCarryingCapacityA }
    }
  }
  return weakest
}

function assess(circuit: Circuit, rule: ProtectionRule, feed: CircuitFeed | undefined, weakest: Weakest): CircuitProtection {
  const ratedCurrentA = circuit.protection?.ratedCurrentA ?? null
  const designA = designCurrentA(feed)
  const common = { ratedCurrentA, designCurrentA: designA, weakestCableTag: weakest.cableTag, weakestCapacityA: weakest.capacityA }
  if (ratedCurrentA === null) {
    return { ...common, againstLoad: null, againstCapacity: null, notAssessed: [unprotectedWords(circuit)] }
  }
  const held = againstCapacity(circuit, rule, feed, weakest, ratedCurrentA)
  return {
    ...common,
    againstLoad: designA === null ? null
      : compare('designCurrentA', designA, { relation: 'at most', value: ratedCurrentA, citation: { source: 'iec-60364-4-43', place: 'design current at most the rated current' } }),
    againstCapacity: 'reasons' in held ? null : held,
    notAssessed: [...(designA === null ? ['the design current is not known'] : []), ...('reasons' in held ? held.reasons : [])],
  }
}

const unprotectedWords = ({ unprotectedReason }: Circuit): string =>
  `no overcurrent protective device${unprotectedReason === null ? ' is recorded' : `, reason given: ${unprotectedReason}`}`

/** One cable that is too weak settles it; that none is too weak can only be said when all capacities are known. */
function againstCapacity(
  circuit: Circuit, rule: ProtectionRule, feed: CircuitFeed | undefined, { capacityA, unknown }: Weakest, ratedCurrentA: number,
): Comparison | { readonly reasons: readonly string[] } {
  if (capacityA === null) return { reasons: unknown }
  const limit = ratingLimit(rule, capacityA, feed?.nominalVoltageV ?? null, protectiveDevice(circuit.protection!.device))
  if (limit === null) return { reasons: [...unknown, 'the nominal voltage is not known, and the permitted rating depends on it'] }
  const comparison = compare('ratedCurrentA', ratedCurrentA, limit)
  return comparison.within && unknown.length > 0 ? { reasons: unknown } : comparison
}

/** The largest rating that the basis lets pass; null when it depends on a voltage that is not known. */
function ratingLimit({ citation, permitted }: ProtectionRule, capacityA: number, nominalVoltageV: number | null, device: ProtectiveDevice | null): Limit | null {
  if (permitted === null) return { relation: 'at most', value: capacityA, citation }
  if (nominalVoltageV === null) return null
  const { largestRatedCurrentA } = protectionRating({ currentCarryingCapacityA: capacityA, permittedFactor: permitted.shareOfCapacity })
  if (nominalVoltageV < permitted.anyRatingBelowV) return { relation: 'at most', value: largestRatedCurrentA, citation: permitted.citation }
  const nextStandardA = (device === null ? null : smallestRatingA(device, capacityA)) ?? capacityA
  return { relation: 'at most', value: nextStandardA <= largestRatedCurrentA ? nextStandardA : capacityA, citation: permitted.citation }
}

interface LimitedSource { readonly outputA: number; readonly limitA: number }

/** A source that gives what it can, whatever is joined to it, and cannot give more than every conductor carries; else null. */
function limitedBySource(vessel: Vessel, { fedFromTag, fedFromTerminal }: Circuit, { capacityA: limitA, unknown }: Weakest): LimitedSource | null {
  const feeder = feederOf(vessel, fedFromTag, fedFromTerminal)
  const outputA = feeder.is === 'source' && feeder.source.drives ? feeder.source.shortCircuitCurrentA ?? feeder.source.ratedCurrentA : null
  if (outputA === null || limitA === null || unknown.length > 0) return null
  return exceeds(sourceMarginFactor * outputA, { relation: 'at most', value: limitA, citation: limitedSource }) ? null : { outputA, limitA }
}

/** What conductors are to carry of their source's current, where nothing protects them. */
const sourceMarginFactor = 1.25

function findingsOf(circuit: Circuit, rule: ProtectionRule, assessed: CircuitProtection, limited: LimitedSource | null): readonly Finding[] {
  const { protection } = circuit
  const subject = { kind: 'circuit', id: circuit.tag }
  if (protection === null) {
    return [circuit.unprotectedReason === null || limited === null ? unprotected(circuit, rule)
      : find(limitedByItsSource, { subject, field: 'unprotectedReason', evidence: { ...limited }, limit: { relation: 'at most', value: limited.limitA, citation: limitedSource } })]
  }
  const device = protectiveDevice(protection.device)
  const { ratedCurrentA } = protection
  const findings: Finding[] = []

  if (assessed.againstLoad?.within === false) {
    const { value, limit } = assessed.againstLoad
    const raise = protection.device === 'electronic channel' ? `Set the channel to ${atLeast(device, value)}` : `Fit a ${protection.device} of ${atLeast(device, value)}`
    const remedy = `${raise} if the conductor allows it, or confirm the design current.`
    findings.push(find(ratingBelowLoad, {
      subject, field: 'protection', evidence: { designCurrentA: value, ratedCurrentA }, limit, context: { device: protection.device, remedy },
    }))
  }
  const { weakestCapacityA, weakestCableTag, againstCapacity: held } = assessed
  if (held !== null && weakestCapacityA !== null) {
    const evidence = { ratedCurrentA, currentCarryingCapacityA: weakestCapacityA }
    const context = {
      device: protection.device, cable: weakestCableTag ?? '', permittedBy: cite(held.limit.citation),
      remedy: `${smallerDevice(protection.device, device, weakestCapacityA, assessed.designCurrentA)} a larger conductor in place of ${weakestCableTag}.`,
    }
    const target: Limit = { relation: 'at most', value: weakestCapacityA, citation: rule.citation }
    if (!held.within) findings.push(find(ratingAboveCapacity, { subject, field: 'protection', evidence, limit: held.limit, context }))
    else if (exceeds(ratedCurrentA, target)) findings.push(find(ratingAboveTarget, { subject, field: 'protection', evidence, limit: target, context }))
  }
  if (device?.ratingsA && !device.ratingsA.includes(ratedCurrentA)) {
    const ratings = [largestRatingA(device, ratedCurrentA), smallestRatingA(device, ratedCurrentA)]
      .filter(rating => rating !== null).map(rating => say('ratedCurrentA', rating))
    const near = ratings.length === 1 ? `the nearest standard one is ${ratings[0]}` : `standard ones near it are ${ratings.join(' and ')}`
    findings.push(find(ratingNotStandard, { subject, field: 'protection', evidence: { ratedCurrentA }, limit: null, context: { device: protection.device, near } }))
  }
  return findings
}

function unprotected(circuit: Circuit, rule: ProtectionRule): Finding {
  const about = { subject: { kind: 'circuit', id: circuit.tag }, evidence: {}, limit: null }
  const reason = circuit.unprotectedReason
  if (reason === null) return find(noProtection, { ...about, field: 'protection' })
  const exempt = exemptionOf(rule, circuit)
  return exempt === null
    ? find(unprotectedForStatedReason, { ...about, field: 'unprotectedReason', context: { reason } })
    : find(unprotectedAsExempt, { ...about, field: 'unprotectedReason', context: { reason: `${exempt.reason} by ${cite(exempt.citation)}` } })
}

/** "15 A" where devices come in ratings, "12.4 A or more" where any can be set. */
function atLeast(device: ProtectiveDevice | null, currentA: number): string {
  const standardA = device === null ? null : smallestRatingA(device, currentA)
  return standardA === null ? `${say('currentA', currentA)} or more` : say('ratedCurrentA', standardA)
}

function smallerDevice(name: string, device: ProtectiveDevice | null, capacityA: number, designA: number | null): string {
  const standardA = device?.ratingsA == null ? capacityA : largestRatingA(device, capacityA)
  if (standardA === null || (designA !== null && designA > standardA)) return 'Fit'
  return `Fit a ${name} of ${say('ratedCurrentA', standardA)} or less, or`
}
