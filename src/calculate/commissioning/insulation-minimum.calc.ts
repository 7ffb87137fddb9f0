import type { Method } from '../method.js'

export type InsulationMinimumInput = Readonly<{ nominalVoltageV: number; extraLowVoltageLimitV: number }>
export type InsulationMinimumOutput = Readonly<{ testVoltageV: number; minimumInsulationMOhm: number }>

/**
 * Least insulation resistance of a circuit, and the d.c. voltage with which it is tested.
 *
 * Formula   Un ≤ U_elv: 250 V, 0.5 MΩ;   Un ≤ 500 V: 500 V, 1 MΩ;   above: 1000 V, 1 MΩ
 * Units     Un, U_elv the upper end of extra-low voltage (50 V a.c., 120 V d.c.), test voltage [V]; resistance [MΩ]
 * Source    iec-60364-6, table 6A
 */
export function insulationMinimum(q: InsulationMinimumInput): InsulationMinimumOutput {
  if (q.nominalVoltageV <= q.extraLowVoltageLimitV) return { testVoltageV: 250, minimumInsulationMOhm: 0.5 }
  return { testVoltageV: q.nominalVoltageV <= 500 ? 500 : 1000, minimumInsulationMOhm: 1 }
}

export const insulationCitation = { source: 'iec-60364-6', place: 'table 6A' } as const
/** Sound cable on a dry boat reads far more than the rules ask for. */
export const soundInsulationMOhm = 5
export const soundInsulationCitation = { source: 'common-practice', place: 'insulation resistance below 5 MΩ is looked into' } as const
export const extraLowLimitV = { dc: 120, ac: 50 } as const

export const insulationMinimumMethod: Method<InsulationMinimumInput, InsulationMinimumOutput> = {
  id: 'insulation-minimum',
  title: 'Least insulation resistance',
  formula: String.raw`(U_t, R) = \begin{cases} 250\,\mathrm{V},\ 0.5\,\mathrm{M\Omega} & U_n \le U_{elv} \\ 500\,\mathrm{V},\ 1\,\mathrm{M\Omega} & U_n \le 500\,\mathrm{V} \\ 1000\,\mathrm{V},\ 1\,\mathrm{M\Omega} & \text{above} \end{cases}`,
  symbols: { nominalVoltageV: 'U_n', extraLowVoltageLimitV: 'U_{elv}', testVoltageV: 'U_t', minimumInsulationMOhm: 'R' },
  citations: [insulationCitation, soundInsulationCitation],
  assumes: ['Equipment is disconnected, and the test voltage is d.c. between the live conductors joined and earth or hull.', 'Extra-low voltage ends at 50 V a.c. and 120 V d.c.'],
  compute: insulationMinimum,
  notApplicable: q => (q.nominalVoltageV > 0 ? null : 'the nominal voltage is not above zero'),
  checks: [
    { origin: 'published', place: 'IEC 60364-6 table 6A (from memory), row of extra-low voltage', input: { nominalVoltageV: 24, extraLowVoltageLimitV: 120 }, expected: { testVoltageV: 250, minimumInsulationMOhm: 0.5 }, tolerance: 0 },
    { origin: 'published', place: 'IEC 60364-6 table 6A (from memory), row up to 500 V', input: { nominalVoltageV: 230, extraLowVoltageLimitV: 50 }, expected: { testVoltageV: 500, minimumInsulationMOhm: 1 }, tolerance: 0 },
    { origin: 'published', place: 'IEC 60364-6 table 6A (from memory), row above 500 V', input: { nominalVoltageV: 690, extraLowVoltageLimitV: 50 }, expected: { testVoltageV: 1000, minimumInsulationMOhm: 1 }, tolerance: 0 },
  ],
}
