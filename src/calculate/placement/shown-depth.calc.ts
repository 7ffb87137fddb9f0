import type { Method } from '../method.js'

export type ShownDepthInput = Readonly<{ measuredDepthM: number; offsetM: number }>
export type ShownDepthOutput = Readonly<{ shownDepthM: number }>

/**
 * The depth that is shown for what a transducer measures.
 *
 * Formula   d_s = d_m + o
 * Units     d_m measured below the transducer, o offset [m]; d_s [m]
 * Source    plane-geometry
 */
export function shownDepth(q: ShownDepthInput): ShownDepthOutput {
  return { shownDepthM: q.measuredDepthM + q.offsetM }
}

export const shownDepthMethod: Method<ShownDepthInput, ShownDepthOutput> = {
  id: 'shown-depth',
  title: 'Depth shown',
  formula: String.raw`d_s = d_m + o`,
  symbols: { measuredDepthM: 'd_m', offsetM: 'o', shownDepthM: 'd_s' },
  citations: [{ source: 'plane-geometry', place: 'depth below the waterline or keel from the depth below the transducer' }],
  assumes: ['The device adds the offset to what it measures.'],
  compute: shownDepth,
  notApplicable: () => null,
  checks: [
    { origin: 'by hand', place: '5.0 m measured, transducer 0.6 m below the waterline: 5.0 + 0.6', input: { measuredDepthM: 5, offsetM: 0.6 }, expected: { shownDepthM: 5.6 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '5.0 m measured, keel 1.3 m below the transducer: 5.0 − 1.3', input: { measuredDepthM: 5, offsetM: -1.3 }, expected: { shownDepthM: 3.7 }, tolerance: 1e-9 },
  ],
}
