import type { Method } from '../method.js'

export type DepthOffsetInput = Readonly<{ transducerDepthM: number; referenceDepthM: number }>
export type DepthOffsetOutput = Readonly<{ expectedOffsetM: number }>

/**
 * The offset that a depth transducer needs so that depth below the waterline, the keel or itself is shown.
 *
 * Formula   o = t − b
 * Units     t transducer below the waterline [m], b what is read from, below the waterline: 0 for the waterline, the draught
 *           for the keel, t for the transducer itself [m]; o [m], positive up to the waterline, negative down to the keel
 * Source    plane-geometry; nmea-depth for the sign
 */
export function depthOffset(q: DepthOffsetInput): DepthOffsetOutput {
  return { expectedOffsetM: q.transducerDepthM - q.referenceDepthM }
}

export const depthOffsetMethod: Method<DepthOffsetInput, DepthOffsetOutput> = {
  id: 'depth-offset',
  title: 'Depth offset',
  formula: String.raw`o = t - b`,
  symbols: { transducerDepthM: 't', referenceDepthM: 'b', expectedOffsetM: 'o' },
  citations: [
    { source: 'plane-geometry', place: 'depth below the surface = measured depth + transducer below the waterline' },
    { source: 'nmea-depth', place: 'sign of the offset' },
  ],
  assumes: ['The waterline is the one that positions and draught are recorded from; the greatest draught is that of the keel.'],
  compute: depthOffset,
  notApplicable: q => (q.transducerDepthM < 0 ? 'the transducer is recorded above the waterline'
    : q.referenceDepthM > 0 && q.referenceDepthM < q.transducerDepthM ? 'the transducer is recorded deeper than the keel' : null),
  checks: [
    { origin: 'by hand', place: 'transducer 0.6 m below the waterline, read from the waterline: 0.6 − 0', input: { transducerDepthM: 0.6, referenceDepthM: 0 }, expected: { expectedOffsetM: 0.6 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'transducer 0.6 m, keel 1.9 m below the waterline: 0.6 − 1.9', input: { transducerDepthM: 0.6, referenceDepthM: 1.9 }, expected: { expectedOffsetM: -1.3 }, tolerance: 1e-9 },
  ],
}
