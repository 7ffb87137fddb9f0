/** Where radiating parts and people are, and how far apart. */
import type { Part } from '../../model/results/radio.js'
import type { Equipment, StandingPlace } from '../../model/vessel.js'

/** A whip radiates along its length above the mount; without a length it is taken to be a point. */
export function partOf({ positionM, antenna }: Equipment): Part | null {
  if (positionM === null) return null
  const [forwardM, toPortM, footM] = positionM
  return { forwardM, toPortM, footM, topM: footM + (antenna?.lengthM ?? 0) }
}

export const personAt = ({ positionM: [forwardM, toPortM, footM], headHeightM }: StandingPlace): Part =>
  ({ forwardM, toPortM, footM, topM: footM + headHeightM })

export interface Apart { readonly horizontalM: number; readonly verticalM: number; readonly distanceM: number }

/** Between the nearest points of two upright things. */
export function apart(a: Part, b: Part): Apart {
  const horizontalM = Math.hypot(a.forwardM - b.forwardM, a.toPortM - b.toPortM)
  const verticalM = Math.max(0, a.footM - b.topM, b.footM - a.topM)
  return { horizontalM, verticalM, distanceM: Math.hypot(horizontalM, verticalM) }
}

/** Elevation of the part of `b` nearest to the level of a point, seen from it, upwards positive. */
export function elevationFrom(heightM: number, b: Part, horizontalM: number): number {
  const nearestM = Math.min(Math.max(heightM, b.footM), b.topM)
  return Math.atan2(nearestM - heightM, horizontalM) * (180 / Math.PI)
}
