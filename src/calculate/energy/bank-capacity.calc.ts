import type { Method } from '../method.js'

export type BankCapacityInput = Readonly<{ dailyAh: number; autonomyDays: number; depthOfDischargePercent: number; temperatureFactor: number }>
export type BankCapacityOutput = Readonly<{ capacityAh: number }>

/**
 * Capacity that lasts a number of days with nothing charging it.
 *
 * Formula   C = Q · n / (p / 100 · k_T)
 * Units     Q charge used in a day [Ah], n days, p depth of discharge [%], k_T share of the capacity left in the cold; C [Ah]
 * Source    common-practice
 */
export function bankCapacity(q: BankCapacityInput): BankCapacityOutput {
  return { capacityAh: (q.dailyAh * q.autonomyDays) / ((q.depthOfDischargePercent / 100) * q.temperatureFactor) }
}

const day = { dailyAh: 117.4, autonomyDays: 2 } as const

export const bankCapacityMethod: Method<BankCapacityInput, BankCapacityOutput> = {
  id: 'bank-capacity',
  title: 'Capacity for days without charging',
  formula: String.raw`C = \frac{Q\,n}{(p/100)\,k_T}`,
  symbols: { dailyAh: 'Q', autonomyDays: 'n', depthOfDischargePercent: 'p', temperatureFactor: 'k_T', capacityAh: 'C' },
  citations: [{ source: 'common-practice', place: 'sizing of a battery bank; lead-acid has 85 % of its capacity left at 0 °C' }],
  assumes: ['The loads stay below the rated current.'],
  compute: bankCapacity,
  notApplicable: q => (q.depthOfDischargePercent > 0 && q.temperatureFactor > 0 ? null : 'the depth of discharge or the temperature factor is not above zero'),
  checks: [
    { origin: 'by hand', place: '117.4 Ah a day for two days, half of it usable: 234.8 / 0.5', input: { ...day, depthOfDischargePercent: 50, temperatureFactor: 1 }, expected: { capacityAh: 469.6 }, tolerance: 1e-6 },
    { origin: 'by hand', place: 'the same with lithium iron phosphate, 80 % usable: 234.8 / 0.8', input: { ...day, depthOfDischargePercent: 80, temperatureFactor: 1 }, expected: { capacityAh: 293.5 }, tolerance: 1e-6 },
    { origin: 'by hand', place: 'lead-acid at 0 °C: 234.8 / (0.5 · 0.85)', input: { ...day, depthOfDischargePercent: 50, temperatureFactor: 0.85 }, expected: { capacityAh: 552.47 }, tolerance: 0.005 },
  ],
}
