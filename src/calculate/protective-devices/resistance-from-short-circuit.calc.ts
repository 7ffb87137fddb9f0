import type { Method } from '../method.js'

export type ResistanceFromShortCircuitInput = Readonly<{ openCircuitVoltageV: number; statedShortCircuitCurrentA: number }>
export type ResistanceFromShortCircuitOutput = Readonly<{ internalResistanceMilliOhm: number }>

/**
 * Internal resistance of a battery bank from the short-circuit current that its maker states.
 *
 * Formula   R_i = 1000 · U_0 / I_k
 * Units     U_0 [V], I_k at the terminals [A]; R_i [mΩ]
 * Source    circuit-theory
 * Assumes   the stated current is that of the charged bank
 */
export function resistanceFromShortCircuit(q: ResistanceFromShortCircuitInput): ResistanceFromShortCircuitOutput {
  return { internalResistanceMilliOhm: (1000 * q.openCircuitVoltageV) / q.statedShortCircuitCurrentA }
}

export const resistanceFromShortCircuitMethod: Method<ResistanceFromShortCircuitInput, ResistanceFromShortCircuitOutput> = {
  id: 'battery-resistance-from-short-circuit',
  title: 'Internal resistance from the stated short-circuit current',
  formula: String.raw`R_i = \frac{1000\,U_0}{I_k}`,
  symbols: { openCircuitVoltageV: 'U_0', statedShortCircuitCurrentA: 'I_k', internalResistanceMilliOhm: 'R_i' },
  citations: [{ source: 'circuit-theory', place: 'U = R · I' }],
  assumes: ['The stated current is that of the charged bank at its terminals.'],
  compute: resistanceFromShortCircuit,
  notApplicable: q => (q.openCircuitVoltageV > 0 && q.statedShortCircuitCurrentA > 0 ? null : 'the voltage or the stated short-circuit current is not above zero'),
  checks: [
    {
      origin: 'by hand', place: '12.8 V that give 3200 A: 12.8 / 3200 = 0.004 Ω',
      input: { openCircuitVoltageV: 12.8, statedShortCircuitCurrentA: 3200 }, expected: { internalResistanceMilliOhm: 4 }, tolerance: 1e-9,
    },
  ],
}
