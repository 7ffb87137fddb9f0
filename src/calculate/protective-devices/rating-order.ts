/** Whether ratings fall from source to load, so that the device nearest to a fault may be expected to open first. */
import { lookup } from '../../model/lookup.js'
import type { CircuitFeed } from '../../model/results.js'
import type { RatingOrder } from '../../model/results/protective-devices.js'
import type { Circuit, Protection, Vessel } from '../../model/vessel.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { ratingRatioMethod } from './rating-ratio.calc.js'

export type ProtectedCircuit = Circuit & { readonly protection: Protection }
export const isProtected = (circuit: Circuit | undefined): circuit is ProtectedCircuit => circuit !== undefined && circuit.protection !== null

/** The nearest circuit with a device on the way to the source; null when there is none. */
export function deviceAbove(vessel: Vessel, feed: CircuitFeed | undefined): ProtectedCircuit | null {
  const { circuits } = lookup(vessel)
  return (feed?.chain ?? []).slice(0, -1).map(tag => circuits.get(tag)).findLast(isProtected) ?? null
}

export function ratingOrder(vessel: Vessel, circuit: ProtectedCircuit, feed: CircuitFeed | undefined): RatingOrder | null {
  const above = deviceAbove(vessel, feed)
  if (above === null) return null
  const { protection } = circuit
  return {
    aboveTag: above.tag,
    ratio: runMethod(ratingRatioMethod, { upstreamRatedA: above.protection.ratedCurrentA, downstreamRatedA: protection.ratedCurrentA }),
    likeFuses: protection.device === above.protection.device && protection.device.includes('fuse'),
    comparison: compare('ratedCurrentA', protection.ratedCurrentA, {
      relation: 'at most', value: above.protection.ratedCurrentA, citation: { source: 'common-practice', place: 'ratings fall from the source to the load' },
    }),
  }
}
