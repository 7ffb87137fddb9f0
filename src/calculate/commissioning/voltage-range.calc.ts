import type { Method } from '../method.js'

export type VoltageRangeInput = Readonly<{ nominalVoltageV: number; belowPercent: number; abovePercent: number }>
export type VoltageRangeOutput = Readonly<{ lowestVoltageV: number; highestVoltageV: number }>

/**
 * Range of supply voltage in which equipment must work, where its maker's own range is not recorded.
 *
 * Formula   U₁ = Un · (1 − p₁ / 100),   U₂ = Un · (1 + p₂ / 100)
 * Units     Un, U₁, U₂ [V]; p₁, p₂ [%]: 10 and 30 for d.c., 10 and 10 for a.c.
 * Source    iec-60945 for the shares
 */
export function voltageRange(q: VoltageRangeInput): VoltageRangeOutput {
  return { lowestVoltageV: q.nominalVoltageV * (1 - q.belowPercent / 100), highestVoltageV: q.nominalVoltageV * (1 + q.abovePercent / 100) }
}

export const voltageRangeCitation = { source: 'iec-60945', place: 'variation of the supply: d.c. +30 % −10 %, a.c. ±10 %' } as const

/** By form of supply, in percent of the nominal voltage. */
export const voltageRangePercent = { dc: { belowPercent: 10, abovePercent: 30 }, ac: { belowPercent: 10, abovePercent: 10 } } as const

export const voltageRangeMethod: Method<VoltageRangeInput, VoltageRangeOutput> = {
  id: 'voltage-range',
  title: 'Range of supply voltage about the nominal voltage',
  formula: String.raw`U_1 = U_n\left(1 - \frac{p_1}{100}\right) \qquad U_2 = U_n\left(1 + \frac{p_2}{100}\right)`,
  symbols: { nominalVoltageV: 'U_n', belowPercent: 'p_1', abovePercent: 'p_2', lowestVoltageV: 'U_1', highestVoltageV: 'U_2' },
  citations: [voltageRangeCitation],
  assumes: ['Used only where the supply range of the item is not recorded.'],
  compute: voltageRange,
  notApplicable: q => (q.nominalVoltageV > 0 ? null : 'the nominal voltage is not above zero'),
  checks: [
    { origin: 'published', place: 'IEC 60945 (from memory), 24 V d.c.: 21.6 V to 31.2 V', input: { nominalVoltageV: 24, belowPercent: 10, abovePercent: 30 }, expected: { lowestVoltageV: 21.6, highestVoltageV: 31.2 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '230 V less and plus a tenth, 23 V', input: { nominalVoltageV: 230, belowPercent: 10, abovePercent: 10 }, expected: { lowestVoltageV: 207, highestVoltageV: 253 }, tolerance: 1e-9 },
  ],
}
