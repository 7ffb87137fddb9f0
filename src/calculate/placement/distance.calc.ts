import type { Method } from '../method.js'

export type DistanceInput = Readonly<{ forwardM: number; toPortM: number; upM: number }>
export type DistanceOutput = Readonly<{ distanceM: number }>

/**
 * Straight distance between two positions.
 *
 * Formula   r = √(Δx² + Δy² + Δz²)
 * Units     Δx, Δy, Δz how far one lies forward of, to port of and above the other [m]; r [m]
 * Source    plane-geometry
 */
export function distance(q: DistanceInput): DistanceOutput {
  return { distanceM: Math.hypot(q.forwardM, q.toPortM, q.upM) }
}

export const distanceMethod: Method<DistanceInput, DistanceOutput> = {
  id: 'placement-distance',
  title: 'Distance between two positions',
  formula: String.raw`r = \sqrt{\Delta x^2 + \Delta y^2 + \Delta z^2}`,
  symbols: { forwardM: String.raw`\Delta x`, toPortM: String.raw`\Delta y`, upM: String.raw`\Delta z`, distanceM: 'r' },
  citations: [{ source: 'plane-geometry', place: 'distance of two points in space' }],
  assumes: ['The positions recorded are those of the parts that matter; a compass safe distance counts from the nearest point of the item.'],
  compute: distance,
  notApplicable: () => null,
  checks: [
    { origin: 'by hand', place: '3, 4 and 12 m: √(9 + 16 + 144) = √169', input: { forwardM: 3, toPortM: -4, upM: 12 }, expected: { distanceM: 13 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '0.20, 0.30 and 0.60 m: √(0.04 + 0.09 + 0.36) = √0.49', input: { forwardM: 0.2, toPortM: 0.3, upM: -0.6 }, expected: { distanceM: 0.7 }, tolerance: 1e-9 },
  ],
}
