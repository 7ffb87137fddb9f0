import type { Method } from '../method.js'

export type PeukertExponentInput = Readonly<{ slowCapacityAh: number; slowTimeH: number; fastCapacityAh: number; fastTimeH: number }>
export type PeukertExponentOutput = Readonly<{ peukertNumber: number }>

/**
 * Peukert's exponent from two ratings of one battery, for whoever records it.
 *
 * Formula   k = ln(H_1 / H_2) / ln((C_2 / H_2) / (C_1 / H_1))
 * Units     C_1 capacity in the longer time H_1, C_2 capacity in the shorter time H_2 [Ah, h]
 * Source    peukert-1897
 */
export function peukertExponent(q: PeukertExponentInput): PeukertExponentOutput {
  const currents = (q.fastCapacityAh / q.fastTimeH) / (q.slowCapacityAh / q.slowTimeH)
  return { peukertNumber: Math.log(q.slowTimeH / q.fastTimeH) / Math.log(currents) }
}

export const peukertExponentMethod: Method<PeukertExponentInput, PeukertExponentOutput> = {
  id: 'peukert-exponent',
  title: 'Peukert’s exponent from two ratings',
  formula: String.raw`k = \ln\frac{H_1}{H_2} \bigg/ \ln\frac{C_2/H_2}{C_1/H_1}`,
  symbols: { slowCapacityAh: 'C_1', slowTimeH: 'H_1', fastCapacityAh: 'C_2', fastTimeH: 'H_2', peukertNumber: 'k' },
  citations: [{ source: 'peukert-1897', place: 'solved for the exponent' }],
  assumes: ['For the author of the data: the maker’s two capacities give the exponent to record.'],
  compute: peukertExponent,
  notApplicable: q => (q.slowTimeH > q.fastTimeH && q.fastTimeH > 0 && q.fastCapacityAh > 0 && q.slowCapacityAh >= q.fastCapacityAh ? null : 'the slower rating is to have the longer time and the larger capacity'),
  checks: [{
    origin: 'by hand', place: '100 Ah in 20 h and 85 Ah in 5 h: ln 4 / ln 3.4',
    input: { slowCapacityAh: 100, slowTimeH: 20, fastCapacityAh: 85, fastTimeH: 5 }, expected: { peukertNumber: 1.1328 }, tolerance: 5e-5,
  }],
}
