import type { Method } from '../method.js'

export type WrapInput = Readonly<{ outerDiameterMm: number; printedHeightMm: number }>
export type WrapOutput = Readonly<{ girthMm: number; neededHeightMm: number }>

/**
 * How long a label must be to go around a cable: the clear tail goes once around and ends on the far side of the print.
 *
 * Formula   u = π · d,   h = h_p + u
 * Units     d outside diameter of the cable, h_p height of the printed part; u girth, h whole height of the label [mm]
 * Source    plane-geometry
 * Assumes   the label lies without a gap; a round cable
 */
export function wrap(q: WrapInput): WrapOutput {
  const girthMm = Math.PI * q.outerDiameterMm
  return { girthMm, neededHeightMm: q.printedHeightMm + girthMm }
}

export const wrapMethod: Method<WrapInput, WrapOutput> = {
  id: 'label-wrap',
  title: 'Wrap-around label of a cable',
  formula: String.raw`u = \pi\,d \qquad h = h_p + u`,
  symbols: { outerDiameterMm: 'd', printedHeightMm: 'h_p', girthMm: 'u', neededHeightMm: 'h' },
  citations: [{ source: 'plane-geometry', place: 'circumference of a circle' }],
  assumes: ['The cable is round and the label lies without a gap; the clear tail goes once around.'],
  compute: wrap,
  notApplicable: q => (q.outerDiameterMm > 0 ? null : 'the diameter is not above zero'),
  checks: [
    {
      origin: 'by hand', place: '7 mm cable, 22/7 for pi: 22 mm around; 12.7 mm of print and 22 mm are 34.7 mm',
      input: { outerDiameterMm: 7, printedHeightMm: 12.7 }, expected: { girthMm: 22, neededHeightMm: 34.7 }, tolerance: 0.01,
    },
    {
      origin: 'by hand', place: '10 mm cable: 31.416 mm around; 19.05 + 31.416',
      input: { outerDiameterMm: 10, printedHeightMm: 19.05 }, expected: { girthMm: 31.416, neededHeightMm: 50.466 }, tolerance: 5e-4,
    },
  ],
}
