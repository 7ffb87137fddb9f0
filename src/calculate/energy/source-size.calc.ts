import type { Method } from '../method.js'

export type SourceSizeInput = Readonly<{ capacityAh: number; sharePercent: number }>
export type SourceSizeOutput = Readonly<{ sourceCurrentA: number }>

/**
 * Rating of a charger or alternator as a share of the capacity of the bank it charges.
 *
 * Formula   I = x / 100 · C
 * Units     x share [%], C [Ah]; I [A]
 * Source    common-practice
 */
export function sourceSize(q: SourceSizeInput): SourceSizeOutput {
  return { sourceCurrentA: (q.sharePercent / 100) * q.capacityAh }
}

export const sourceSizeMethod: Method<SourceSizeInput, SourceSizeOutput> = {
  id: 'source-size',
  title: 'Size of a charger or alternator',
  formula: String.raw`I = \frac{x}{100}\,C`,
  symbols: { capacityAh: 'C', sharePercent: 'x', sourceCurrentA: 'I' },
  citations: [{ source: 'common-practice', place: 'charging current by chemistry; an alternator of at least 25 % of a lead-acid bank' }],
  assumes: ['The number of ampere-hours is read as amperes: the capacity drawn in one hour.'],
  compute: sourceSize,
  notApplicable: q => (q.capacityAh > 0 ? null : 'the capacity is not above zero'),
  checks: [{ origin: 'by hand', place: '25 % of 400 Ah', input: { capacityAh: 400, sharePercent: 25 }, expected: { sourceCurrentA: 100 }, tolerance: 1e-9 }],
}
