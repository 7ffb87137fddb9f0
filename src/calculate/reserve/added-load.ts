/** What the feeders above a panel or busbar would carry if one more circuit were fed from it. */
import { lookup } from '../../model/lookup.js'
import { type CircuitFeed, designCurrentA } from '../../model/results.js'
import type { FeederChange, FeederReserve, ReserveVerdict } from '../../model/results/reserve.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { designCurrent } from '../feeding/design-current.calc.js'
import { isLimit, isReason, leastOf, limitOf, verdictOf } from './limits.js'

export interface AddedLoad { readonly currentA: number; readonly demandFactor: number }

/**
 * From the feeder next above upwards, each before and after. A feeder that grows from b to a brings a − b, times its
 * demand factor, to the one above it. Where the author gives the design current, the new load is added to it.
 *
 * Formula   I_B' = max(g · I_c + g_n · (a − b), I_1, a)
 */
export function feedersWith(
  vessel: Vessel, byCircuit: ReadonlyMap<Tag, CircuitFeed>, byFeeder: ReadonlyMap<Tag, FeederReserve>, chain: readonly Tag[], added: AddedLoad,
): readonly FeederChange[] {
  const { circuits } = lookup(vessel)
  let below: Growth | null = { beforeA: 0, afterA: added.currentA, demandFactor: added.demandFactor }
  return chain.toReversed().map(circuitTag => {
    const beforeA = designCurrentA(byCircuit.get(circuitTag))
    const afterA: number | null = beforeA === null || below === null ? null : grown(byCircuit.get(circuitTag)!, beforeA, below)
    below = beforeA === null || afterA === null ? null : { beforeA, afterA, demandFactor: circuits.get(circuitTag)!.demandFactor }
    return changeOf(byFeeder.get(circuitTag), circuitTag, beforeA, afterA)
  })
}

interface Growth { readonly beforeA: number; readonly afterA: number; readonly demandFactor: number }

function grown({ designCurrent: outcome }: CircuitFeed, beforeA: number, { beforeA: b, afterA: a, demandFactor }: Growth): number {
  const moreA = demandFactor * (a - b)
  if (outcome.status !== 'computed') return beforeA + moreA
  const { connectedCurrentA, demandFactor: together, largestCurrentA } = outcome.input
  const largestA = demandFactor > 0 ? Math.max(largestCurrentA, a) : largestCurrentA
  return designCurrent({ connectedCurrentA: together * connectedCurrentA + moreA, demandFactor: 1, largestCurrentA: largestA }).designCurrentA
}

function changeOf(reserve: FeederReserve | undefined, circuitTag: Tag, beforeA: number | null, afterA: number | null): FeederChange {
  const unknown = (missing: readonly string[]): FeederChange =>
    ({ circuitTag, beforeCurrentA: beforeA, afterCurrentA: afterA, limits: [], least: null, missing, verdict: 'not assessed' })
  if (reserve === undefined) return unknown(['it feeds no panel or busbar'])
  if (beforeA === null || afterA === null) return unknown(reserve.missing.length > 0 ? reserve.missing : ['what is added below it is not known'])
  const found = reserve.limits.map(({ of, tag, citation, margin }) =>
    limitOf(of, tag, margin.input.limitCurrentA, margin.input.takenCurrentA + afterA - beforeA, citation))
  const limits = found.filter(isLimit)
  const missing = [...reserve.missing, ...found.filter(isReason)]
  return { circuitTag, beforeCurrentA: beforeA, afterCurrentA: afterA, limits, least: leastOf(limits), missing, verdict: verdictOf(limits, missing) }
}

/** Of all feeders together: one that cannot carry it settles it. */
export const verdictOfAll = (feeders: readonly FeederChange[]): ReserveVerdict =>
  feeders.some(({ verdict }) => verdict === 'does not fit') ? 'does not fit'
  : feeders.length === 0 || feeders.some(({ verdict }) => verdict === 'not assessed') ? 'not assessed'
  : 'fits'
