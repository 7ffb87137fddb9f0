import type { Method } from '../method.js'

export type ResistanceFromCrankingInput = Readonly<{ nominalVoltageV: number; crankingCurrentA: number; warmFactor: number }>
export type ResistanceFromCrankingOutput = Readonly<{ internalResistanceMilliOhm: number }>

/**
 * Internal resistance of a lead battery bank, estimated from its cold cranking current.
 *
 * Formula   R_i = 1000 · (U_n / 12) · (12.6 − 7.2) / (k · I_cc)
 * Units     U_n of the bank [V], I_cc cold cranking current of the bank [A], k how much more it gives when warm; R_i [mΩ]
 * Source    sae-j537 for 7.2 V at −18 °C; common-practice for the estimate and for k, 1.5 to 2 at 25 °C
 * Assumes   12.6 V at rest for every 12 V of nominal voltage, and a straight line from there to 7.2 V
 */
export function resistanceFromCranking(q: ResistanceFromCrankingInput): ResistanceFromCrankingOutput {
  return { internalResistanceMilliOhm: (1000 * (q.nominalVoltageV / 12) * (12.6 - 7.2)) / (q.warmFactor * q.crankingCurrentA) }
}

export const resistanceFromCrankingMethod: Method<ResistanceFromCrankingInput, ResistanceFromCrankingOutput> = {
  id: 'battery-resistance-from-cranking',
  title: 'Internal resistance from the cold cranking current',
  formula: String.raw`R_i = \frac{1000\,(U_n/12)\,(12.6 - 7.2)}{k\,I_{cc}}`,
  symbols: { nominalVoltageV: 'U_n', crankingCurrentA: 'I_{cc}', warmFactor: 'k', internalResistanceMilliOhm: 'R_i' },
  citations: [
    { source: 'sae-j537', place: '7.2 V after 30 s at −18 °C' },
    { source: 'common-practice', place: 'internal resistance from the cranking test; at 25 °C 1.5 to 2 times the current' },
  ],
  assumes: [
    'At rest the battery has 12.6 V for every 12 V of nominal voltage, and the voltage falls in a straight line with the current.',
    'At 25 °C it gives 1.5 to 2 times the current of the cold test; the larger is taken, so that the current comes out rather too large.',
  ],
  compute: resistanceFromCranking,
  notApplicable: q => (q.nominalVoltageV > 0 && q.crankingCurrentA > 0 && q.warmFactor >= 1 ? null : 'the voltage, the cranking current or the factor is out of range'),
  checks: [
    {
      origin: 'by hand', place: '800 A cold cranking, cold: (12.6 − 7.2) / 800 = 0.00675 Ω',
      input: { nominalVoltageV: 12, crankingCurrentA: 800, warmFactor: 1 }, expected: { internalResistanceMilliOhm: 6.75 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'the same at 25 °C with the factor 2: 6.75 / 2; two in series double it',
      input: { nominalVoltageV: 24, crankingCurrentA: 800, warmFactor: 2 }, expected: { internalResistanceMilliOhm: 6.75 }, tolerance: 1e-9,
    },
  ],
}
