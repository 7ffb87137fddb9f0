import type { CheckRow, Method } from '../method.js'

export type PermittedDeviationInput = Readonly<{ deviationAt1MicroTDeg: number; horizontalFieldMicroT: number }>
export type PermittedDeviationOutput = Readonly<{ permittedDeviationDeg: number }>

/**
 * What an item at its compass safe distance may turn the compass by.
 *
 * Formula   δ = δ₁ / H
 * Units     δ₁ at a horizontal flux density of 1 µT: 5.4 for a standard compass, 18 for steering, standby and emergency ones [°];
 *           H horizontal flux density of the place [µT]; δ [°]
 * Source    iso-25862, annex F, as iec-60945 has it
 */
export function permittedDeviation(q: PermittedDeviationInput): PermittedDeviationOutput {
  return { permittedDeviationDeg: q.deviationAt1MicroTDeg / q.horizontalFieldMicroT }
}

type Row = CheckRow<PermittedDeviationInput, PermittedDeviationOutput>
const row = (place: string, deviationAt1MicroTDeg: number, horizontalFieldMicroT: number, permittedDeviationDeg: number): Row =>
  ({ origin: 'published', place, input: { deviationAt1MicroTDeg, horizontalFieldMicroT }, expected: { permittedDeviationDeg }, tolerance: 5.001e-4 })

export const permittedDeviationMethod: Method<PermittedDeviationInput, PermittedDeviationOutput> = {
  id: 'compass-permitted-deviation',
  title: 'Deviation permitted at the compass safe distance',
  formula: String.raw`\delta = \frac{\delta_1}{H}`,
  symbols: { deviationAt1MicroTDeg: String.raw`\delta_1`, horizontalFieldMicroT: 'H', permittedDeviationDeg: String.raw`\delta` },
  citations: [
    { source: 'iso-25862', place: 'annex F: 5.4°/H for a standard compass, 18°/H for steering, standby and emergency compasses' },
    { source: 'iec-60945', place: 'compass safe distance', standing: 'published' },
  ],
  assumes: ['Of one item by itself: several near it add up.'],
  compute: permittedDeviation,
  notApplicable: q => (q.horizontalFieldMicroT > 0 ? null : 'the horizontal field is not above zero'),
  checks: [
    ...([[18, 0.3, 1], [20, 0.27, 0.9], [30, 0.18, 0.6], [40, 0.135, 0.45]] as const).flatMap(([fieldMicroT, standardDeg, steeringDeg]) => [
      row(`ISO 25862 draft, definition: 5.4°/H at H = ${fieldMicroT} µT`, 5.4, fieldMicroT, standardDeg),
      row(`ISO 25862 draft, definition: 18°/H at H = ${fieldMicroT} µT`, 18, fieldMicroT, steeringDeg),
    ]),
    { ...row('H = 13 µT: 5.4 / 13', 5.4, 13, 0.415), origin: 'by hand' },
    { ...row('H = 13 µT: 18 / 13', 18, 13, 1.385), origin: 'by hand' },
  ],
}
