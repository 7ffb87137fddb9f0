import type { Method } from '../method.js'

export type DropPercentInput = Readonly<{ voltageDropV: number; nominalVoltageV: number }>
export type DropPercentOutput = Readonly<{ voltageDropPercent: number }>

/**
 * Voltage drop as a share of the nominal voltage.
 *
 * Formula   u = 100 · ΔU / Un
 * Units     ΔU [V] from the source to the load, Un [V]; u [%]
 * Source    abyc-e11, iso-13297: percentages are of the nominal system voltage
 */
export function voltageDropPercent(q: DropPercentInput): DropPercentOutput {
  return { voltageDropPercent: (100 * q.voltageDropV) / q.nominalVoltageV }
}

export const voltageDropPercentMethod: Method<DropPercentInput, DropPercentOutput> = {
  id: 'voltage-drop-percent',
  title: 'Voltage drop in percent',
  formula: String.raw`u = \frac{100\,\Delta U}{U_n}`,
  symbols: { voltageDropV: String.raw`\Delta U`, nominalVoltageV: 'U_n', voltageDropPercent: 'u' },
  citations: [{ source: 'abyc-e11', place: 'voltage drop' }, { source: 'iso-13297', place: 'voltage drop' }],
  assumes: ['ΔU is the sum over every cable from the source to the load, feeders included.'],
  compute: voltageDropPercent,
  notApplicable: q => (q.nominalVoltageV > 0 ? null : 'the nominal voltage is not above zero'),
  checks: [
    { origin: 'published', place: 'ABYC E-11 as quoted: 3 % of 12 V is 0.36 V', input: { voltageDropV: 0.36, nominalVoltageV: 12 }, expected: { voltageDropPercent: 3 }, tolerance: 1e-9 },
    { origin: 'published', place: 'ABYC E-11 as quoted: 10 % of 24 V is 2.4 V', input: { voltageDropV: 2.4, nominalVoltageV: 24 }, expected: { voltageDropPercent: 10 }, tolerance: 1e-9 },
    { origin: 'published', place: 'ABYC E-11 as quoted: 3 % of 32 V is 0.96 V', input: { voltageDropV: 0.96, nominalVoltageV: 32 }, expected: { voltageDropPercent: 3 }, tolerance: 1e-9 },
  ],
}
