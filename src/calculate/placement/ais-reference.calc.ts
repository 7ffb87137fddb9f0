import type { Method } from '../method.js'

export type AisReferenceInput = Readonly<{ lengthM: number; beamM: number; forwardM: number; toPortM: number }>
export type AisReferenceOutput = Readonly<{ bowM: number; sternM: number; portM: number; starboardM: number }>

/**
 * The four distances by which an AIS transceiver tells where on the boat its antenna for position stands.
 *
 * Formula   A = L − x,  B = x,  C = b/2 − y,  D = b/2 + y
 * Units     L length, b beam, x of the antenna forward of the transom, y to port [m]; A to the bow, B to the stern, C to port, D to starboard [m]
 * Source    itu-r-m1371: A + B is the length, C + D the beam
 */
export function aisReference(q: AisReferenceInput): AisReferenceOutput {
  return { bowM: q.lengthM - q.forwardM, sternM: q.forwardM, portM: q.beamM / 2 - q.toPortM, starboardM: q.beamM / 2 + q.toPortM }
}

export const aisReferenceMethod: Method<AisReferenceInput, AisReferenceOutput> = {
  id: 'ais-reference',
  title: 'Reference point for the position in AIS',
  formula: String.raw`A = L - x \qquad B = x \qquad C = \frac{b}{2} - y \qquad D = \frac{b}{2} + y`,
  symbols: { lengthM: 'L', beamM: 'b', forwardM: 'x', toPortM: 'y', bowM: 'A', sternM: 'B', portM: 'C', starboardM: 'D' },
  citations: [{ source: 'itu-r-m1371', place: 'reference point for the position reported, dimensions A to D' }],
  assumes: ['The transom is the aftermost point of the hull. The message carries whole metres.'],
  compute: aisReference,
  notApplicable: q => (q.forwardM >= 0 && q.forwardM <= q.lengthM && Math.abs(q.toPortM) <= q.beamM / 2 ? null : 'its position lies outside length and beam of the hull'),
  checks: [
    {
      origin: 'by hand', place: 'A 9, B 3, C 2, D 2 m: length 12 m, beam 4 m; so the antenna is 3 m forward on the centreline',
      input: { lengthM: 12, beamM: 4, forwardM: 3, toPortM: 0 }, expected: { bowM: 9, sternM: 3, portM: 2, starboardM: 2 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: '0.5 m to port: 2 − 0.5 to port, 2 + 0.5 to starboard',
      input: { lengthM: 12, beamM: 4, forwardM: 3, toPortM: 0.5 }, expected: { portM: 1.5, starboardM: 2.5 }, tolerance: 1e-9,
    },
  ],
}
