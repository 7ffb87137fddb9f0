import type { Method } from '../method.js'

export type RadarBlindDistanceInput = Readonly<{ scannerHeightM: number; verticalBeamDeg: number }>
export type RadarBlindDistanceOutput = Readonly<{ blindDistanceM: number }>

/**
 * Distance from the boat within which a radar's beam passes over the water.
 *
 * Formula   d = h / tan(β/2)
 * Units     h scanner above the waterline [m], β whole height of the beam [°]; d [m]
 * Source    sight-lines
 * Assumes   the boat on an even keel; the edge of the beam is where half of the power is left, so some echo comes from nearer
 */
export function radarBlindDistance({ scannerHeightM, verticalBeamDeg }: RadarBlindDistanceInput): RadarBlindDistanceOutput {
  return { blindDistanceM: scannerHeightM / Math.tan((verticalBeamDeg / 2) * (Math.PI / 180)) }
}

export const radarBlindDistanceMethod: Method<RadarBlindDistanceInput, RadarBlindDistanceOutput> = {
  id: 'radar-blind-distance',
  title: 'Distance within which the radar’s beam passes over the water',
  formula: String.raw`d = \frac{h}{\tan(\beta/2)}`,
  symbols: { scannerHeightM: 'h', verticalBeamDeg: String.raw`\beta`, blindDistanceM: 'd' },
  citations: [{ source: 'sight-lines', place: 'right triangle' }],
  assumes: ['The boat is on an even keel.', 'The edge of the beam is where half of the power is left, so some echo comes from nearer.'],
  compute: radarBlindDistance,
  notApplicable: q => (q.scannerHeightM < 0 ? 'the scanner is below the waterline' : q.verticalBeamDeg > 0 && q.verticalBeamDeg < 180 ? null : 'the beam is no beam'),
  checks: [
    { origin: 'by hand', place: '4 m, 25°: 4 / tan 12.5° = 4 / 0.22169', input: { scannerHeightM: 4, verticalBeamDeg: 25 }, expected: { blindDistanceM: 18.04 }, tolerance: 0.006 },
    { origin: 'by hand', place: '3 m, 90°: tan 45° is 1', input: { scannerHeightM: 3, verticalBeamDeg: 90 }, expected: { blindDistanceM: 3 }, tolerance: 1e-9 },
  ],
}
