import type { Method } from '../method.js'

export type RadarBlindDistanceInput = Readonly<{ heightM: number; verticalBeamDeg: number }>
export type RadarBlindDistanceOutput = Readonly<{ blindDistanceM: number }>

/**
 * Within what distance the beam of a radar passes above the water.
 *
 * Formula   d = h / tan(β/2)
 * Units     h of the scanner above the water [m], β full height of the beam [°]; d [m]
 * Source    plane-geometry
 */
export function radarBlindDistance(q: RadarBlindDistanceInput): RadarBlindDistanceOutput {
  return { blindDistanceM: q.heightM / Math.tan((q.verticalBeamDeg * Math.PI) / 360) }
}

export const radarBlindDistanceMethod: Method<RadarBlindDistanceInput, RadarBlindDistanceOutput> = {
  id: 'radar-blind-distance',
  title: 'Blind distance under the beam of a radar',
  formula: String.raw`d = \frac{h}{\tan(\beta/2)}`,
  symbols: { heightM: 'h', verticalBeamDeg: String.raw`\beta`, blindDistanceM: 'd' },
  citations: [{ source: 'plane-geometry', place: 'lower edge of the beam' }],
  assumes: ['The boat is upright, the water smooth, and the beam ends sharply at half its power.'],
  compute: radarBlindDistance,
  notApplicable: q => (q.heightM <= 0 ? 'the scanner is not recorded above the water' : q.verticalBeamDeg > 0 && q.verticalBeamDeg < 180 ? null : 'the beam is not between 0 and 180°'),
  checks: [{ origin: 'by hand', place: '4 m high, 25°: 4 / tan 12.5°', input: { heightM: 4, verticalBeamDeg: 25 }, expected: { blindDistanceM: 18.04 }, tolerance: 0.005 }],
}
