import type { Method } from '../method.js'

export type TwoPointInput = Readonly<{ firstVoltageV: number; firstCurrentA: number; secondVoltageV: number; secondCurrentA: number }>
export type TwoPointOutput = Readonly<{ measuredResistanceMilliOhm: number; shortCircuitCurrentA: number }>

/**
 * Internal resistance and short-circuit current of a battery from two readings under different loads.
 *
 * Formula   R = 1000 · (U₁ − U₂) / (I₂ − I₁),   I_sc = (U₁ · I₂ − U₂ · I₁) / (U₁ − U₂)
 * Units     U [V], I [A], R [mΩ]
 * Source    iec-60896 (first 4 to 6 times the ten-hour current for 20 s, then 20 to 40 times for 5 s); the line through
 *           two points is circuit-theory
 * Assumes   the voltage falls in a straight line with the current; readings at lighter loads are an estimate only
 */
export function twoPointResistance(q: TwoPointInput): TwoPointOutput {
  const fallV = q.firstVoltageV - q.secondVoltageV
  return {
    measuredResistanceMilliOhm: (1000 * fallV) / (q.secondCurrentA - q.firstCurrentA),
    shortCircuitCurrentA: (q.firstVoltageV * q.secondCurrentA - q.secondVoltageV * q.firstCurrentA) / fallV,
  }
}

export const twoPointMethod: Method<TwoPointInput, TwoPointOutput> = {
  id: 'two-point-resistance',
  title: 'Internal resistance from two readings',
  formula: String.raw`R = \frac{1000\,(U_1 - U_2)}{I_2 - I_1} \qquad I_{sc} = \frac{U_1 I_2 - U_2 I_1}{U_1 - U_2}`,
  symbols: {
    firstVoltageV: 'U_1', firstCurrentA: 'I_1', secondVoltageV: 'U_2', secondCurrentA: 'I_2', measuredResistanceMilliOhm: 'R', shortCircuitCurrentA: 'I_{sc}',
  },
  citations: [{ source: 'iec-60896', place: 'short-circuit current and internal resistance by two points' }, { source: 'circuit-theory', place: 'straight line through two points' }],
  assumes: ['The voltage falls in a straight line with the current.', 'By the standard the first load is 4 to 6 times the ten-hour current, the second 20 to 40 times; lighter loads give an estimate.'],
  compute: twoPointResistance,
  notApplicable: q =>
    !(q.secondCurrentA > q.firstCurrentA) ? 'the two readings were taken at the same current'
    : !(q.firstVoltageV > q.secondVoltageV) ? 'the voltage did not fall as the current rose'
    : null,
  checks: [
    {
      origin: 'by hand', place: 'a source of 12.8 V with 4 mΩ (3200 A shorted) shows 12.6 V at 50 A and 12 V at 200 A: 0.6 V / 150 A; (12.6 · 200 − 12 · 50) / 0.6',
      input: { firstVoltageV: 12.6, firstCurrentA: 50, secondVoltageV: 12, secondCurrentA: 200 }, expected: { measuredResistanceMilliOhm: 4, shortCircuitCurrentA: 3200 }, tolerance: 1e-6,
    },
    {
      origin: 'by hand', place: 'from rest: 12.7 V, then 12.2 V at 100 A: 0.5 V / 100 A; 12.7 V / 5 mΩ',
      input: { firstVoltageV: 12.7, firstCurrentA: 0, secondVoltageV: 12.2, secondCurrentA: 100 }, expected: { measuredResistanceMilliOhm: 5, shortCircuitCurrentA: 2540 }, tolerance: 1e-6,
    },
  ],
}
