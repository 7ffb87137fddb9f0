import type { Method } from '../method.js'

export type AlternatorOutputInput = Readonly<{ speedRpm: number; lowerSpeedRpm: number; lowerCurrentA: number; upperSpeedRpm: number; upperCurrentA: number }>
export type AlternatorOutputOutput = Readonly<{ outputCurrentA: number }>

/**
 * Current of an alternator at a speed between two points of its curve.
 *
 * Formula   I = I_1 + (I_2 − I_1) · (n − n_1) / (n_2 − n_1)
 * Units     n speed of the engine, n_1 and n_2 of the points beside it [1/min], I_1 and I_2 their currents [A]
 * Source    common-practice: linear between the points, nothing below the first, no more than the last above it
 */
export function alternatorOutput(q: AlternatorOutputInput): AlternatorOutputOutput {
  const share = (q.speedRpm - q.lowerSpeedRpm) / (q.upperSpeedRpm - q.lowerSpeedRpm)
  return { outputCurrentA: q.lowerCurrentA + (q.upperCurrentA - q.lowerCurrentA) * share }
}

export const alternatorOutputMethod: Method<AlternatorOutputInput, AlternatorOutputOutput> = {
  id: 'alternator-output',
  title: 'Current of an alternator by its curve',
  formula: String.raw`I = I_1 + (I_2 - I_1)\,\frac{n - n_1}{n_2 - n_1}`,
  symbols: { speedRpm: 'n', lowerSpeedRpm: 'n_1', lowerCurrentA: 'I_1', upperSpeedRpm: 'n_2', upperCurrentA: 'I_2', outputCurrentA: 'I' },
  citations: [{ source: 'common-practice', place: 'a straight line between the points of the curve' }],
  assumes: ['Below the first point it gives nothing, above the last no more than there.'],
  compute: alternatorOutput,
  notApplicable: q => (q.upperSpeedRpm > q.lowerSpeedRpm && q.speedRpm >= q.lowerSpeedRpm && q.speedRpm <= q.upperSpeedRpm ? null : 'the speed does not lie between the points'),
  checks: [{
    origin: 'by hand', place: '40 A at 1000 and 90 A at 2000 a minute, at 1400: 40 + 50 · 0.4',
    input: { speedRpm: 1400, lowerSpeedRpm: 1000, lowerCurrentA: 40, upperSpeedRpm: 2000, upperCurrentA: 90 }, expected: { outputCurrentA: 60 }, tolerance: 1e-9,
  }],
}
