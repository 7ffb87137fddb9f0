import type { Method } from '../method.js'

export type ProspectiveShortCircuitInput = Readonly<{ openCircuitVoltageV: number; internalResistanceMilliOhm: number; conductorResistanceMilliOhm: number; otherSourcesCurrentA: number }>
export type ProspectiveShortCircuitOutput = Readonly<{ prospectiveShortCircuitCurrentA: number }>

/**
 * Current that flows into a dead short at a place of a battery's system.
 *
 * Formula   I_k = 1000 · U_0 / (R_i + R_c) + I_s
 * Units     U_0 [V], R_i of the bank and R_c of the conductors out and back [mΩ], I_s of other sources [A]; I_k [A]
 * Source    circuit-theory
 * Assumes   terminals, switches and devices have no resistance; inductance only slows the rise; I_s is added whole
 */
export function prospectiveShortCircuit(q: ProspectiveShortCircuitInput): ProspectiveShortCircuitOutput {
  return { prospectiveShortCircuitCurrentA: (1000 * q.openCircuitVoltageV) / (q.internalResistanceMilliOhm + q.conductorResistanceMilliOhm) + q.otherSourcesCurrentA }
}

export const prospectiveShortCircuitMethod: Method<ProspectiveShortCircuitInput, ProspectiveShortCircuitOutput> = {
  id: 'prospective-short-circuit-current',
  title: 'Prospective short-circuit current',
  formula: String.raw`I_k = \frac{1000\,U_0}{R_i + R_c} + I_s`,
  symbols: {
    openCircuitVoltageV: 'U_0', internalResistanceMilliOhm: 'R_i', conductorResistanceMilliOhm: 'R_c', otherSourcesCurrentA: 'I_s', prospectiveShortCircuitCurrentA: 'I_k',
  },
  citations: [{ source: 'circuit-theory', place: 'a source with its internal resistance, short-circuited' }],
  assumes: [
    'Terminals, switches and the devices themselves have no resistance.',
    'What chargers, alternators and converters state as their short-circuit current is added whole, wherever in the system they are joined.',
  ],
  compute: prospectiveShortCircuit,
  notApplicable: q => (q.openCircuitVoltageV > 0 && q.internalResistanceMilliOhm > 0 && q.conductorResistanceMilliOhm >= 0 ? null : 'the voltage or a resistance is out of range'),
  checks: [
    {
      origin: 'by hand', place: '12.8 V, 4 mΩ: 12.8 / 0.004 = 3200',
      input: { openCircuitVoltageV: 12.8, internalResistanceMilliOhm: 4, conductorResistanceMilliOhm: 0, otherSourcesCurrentA: 0 }, expected: { prospectiveShortCircuitCurrentA: 3200 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: '800 A cold cranking, 6.75 mΩ cold: 12.6 / 0.00675 = 1867',
      input: { openCircuitVoltageV: 12.6, internalResistanceMilliOhm: 6.75, conductorResistanceMilliOhm: 0, otherSourcesCurrentA: 0 }, expected: { prospectiveShortCircuitCurrentA: 1867 }, tolerance: 0.5,
    },
    {
      origin: 'by hand', place: '5 mΩ and 6 m of 2/0 AWG out and back at 0.2569 mΩ/m: 12.6 / (0.005 + 0.0015414) = 1926',
      input: { openCircuitVoltageV: 12.6, internalResistanceMilliOhm: 5, conductorResistanceMilliOhm: 1.5414, otherSourcesCurrentA: 0 }, expected: { prospectiveShortCircuitCurrentA: 1926 }, tolerance: 0.5,
    },
    {
      origin: 'by hand', place: 'lithium iron phosphate, 13.2 V, 0.5 mΩ and 0.3 mΩ: 13.2 / 0.0008 = 16 500',
      input: { openCircuitVoltageV: 13.2, internalResistanceMilliOhm: 0.5, conductorResistanceMilliOhm: 0.3, otherSourcesCurrentA: 0 }, expected: { prospectiveShortCircuitCurrentA: 16500 }, tolerance: 1e-6,
    },
    {
      origin: 'by hand', place: 'the first with an alternator of 250 A beside it: 3200 + 250',
      input: { openCircuitVoltageV: 12.8, internalResistanceMilliOhm: 4, conductorResistanceMilliOhm: 0, otherSourcesCurrentA: 250 }, expected: { prospectiveShortCircuitCurrentA: 3450 }, tolerance: 1e-9,
    },
  ],
}
