import type { Method } from '../method.js'

export type SingleConductorInput = Readonly<{ currentA: number; deviationAt1MicroTDeg: number }>
export type SingleConductorOutput = Readonly<{ fieldMicroT: number; distanceM: number; keptDistanceM: number }>

/**
 * How far a straight single conductor of direct current must be from a compass so as not to turn it by more than an item at
 * its compass safe distance may.
 *
 * Formula   B = δ₁ · π/180,   r = 0.2 · I / B,   r₅ = r up to the next 0.05
 * Units     δ₁ deviation permitted at 1 µT [°], I [A]; B flux density that does it where it acts most [µT], r, r₅ [m]
 * Source    magnetostatics: B = 0.2 · I / r; iso-25862 for the deviation and the rounding
 * Assumes   small angles, for which the field allowed is the same at every place on Earth
 */
export function singleConductor(q: SingleConductorInput): SingleConductorOutput {
  const fieldMicroT = (q.deviationAt1MicroTDeg * Math.PI) / 180
  const distanceM = (0.2 * q.currentA) / fieldMicroT
  return { fieldMicroT, distanceM, keptDistanceM: Math.ceil(distanceM * 20 - 1e-9) / 20 }
}

export const singleConductorMethod: Method<SingleConductorInput, SingleConductorOutput> = {
  id: 'compass-single-conductor',
  title: 'Single d.c. conductor near a compass',
  formula: String.raw`B = \delta_1 \frac{\pi}{180} \qquad r = \frac{0.2\,I}{B} \qquad r_5 = 0.05 \left\lceil \frac{r}{0.05} \right\rceil`,
  symbols: { currentA: 'I', deviationAt1MicroTDeg: String.raw`\delta_1`, fieldMicroT: 'B', distanceM: 'r', keptDistanceM: 'r_5' },
  citations: [
    { source: 'magnetostatics', place: 'flux density beside a long straight conductor' },
    { source: 'iso-25862', place: 'annex F: 5.4°/H and 18°/H; distances are rounded up to the next 5 cm' },
  ],
  assumes: [
    'The conductor is long and straight and lies where it turns the compass most; its way back is far away.',
    'With the way back beside it, the two fields cancel, and nothing of this is needed.',
  ],
  compute: singleConductor,
  notApplicable: q => (q.currentA < 0 || q.deviationAt1MicroTDeg <= 0 ? 'the current is below zero' : null),
  checks: [
    {
      origin: 'by hand', place: '10 A at 0.3 m make 0.2 · 10 / 0.3 = 6.67 µT; the angle of that field at 1 µT is 6.6667 · 180 / π = 381.97°',
      input: { currentA: 10, deviationAt1MicroTDeg: 381.97 }, expected: { fieldMicroT: 6.67, distanceM: 0.3 }, tolerance: 0.0051,
    },
    {
      origin: 'by hand', place: '10 A beside a steering compass: 18 · π / 180 = 0.31416 µT; 2 / 0.31416 = 6.366 m',
      input: { currentA: 10, deviationAt1MicroTDeg: 18 }, expected: { fieldMicroT: 0.31416, distanceM: 6.3662, keptDistanceM: 6.4 }, tolerance: 5e-5,
    },
    {
      origin: 'by hand', place: 'a distance of 0.62 m is labelled 0.65 m: 0.62 · 0.094248 / 0.2 = 0.29217 A',
      input: { currentA: 0.29217, deviationAt1MicroTDeg: 5.4 }, expected: { distanceM: 0.62, keptDistanceM: 0.65 }, tolerance: 1e-4,
    },
  ],
}
