import { terminatorCitation } from '../../references/tables/can-rules.js'
import type { Method } from '../method.js'

export type TerminationInput = Readonly<{ terminatorCount: number; terminatorResistanceOhm: number }>
export type TerminationOutput = Readonly<{ resistanceOhm: number }>

/**
 * Resistance between the data wires of an unpowered bus: its terminators side by side.
 *
 * Formula   R = R_t / n
 * Units     R_t of one [Ω], n of them; R [Ω]
 * Source    circuit-theory; bus-cable-guides for 120 Ω
 */
export function termination({ terminatorCount, terminatorResistanceOhm }: TerminationInput): TerminationOutput {
  return { resistanceOhm: terminatorResistanceOhm / terminatorCount }
}

const by = (terminatorCount: number, resistanceOhm: number, place: string) =>
  ({ origin: 'by hand', place, input: { terminatorCount, terminatorResistanceOhm: 120 }, expected: { resistanceOhm }, tolerance: 1e-9 }) as const

export const terminationMethod: Method<TerminationInput, TerminationOutput> = {
  id: 'bus-termination',
  title: 'Resistance between the data wires',
  formula: String.raw`R = \frac{R_t}{n}`,
  symbols: { terminatorCount: 'n', terminatorResistanceOhm: 'R_t', resistanceOhm: 'R' },
  citations: [{ source: 'circuit-theory', place: 'resistances side by side' }, terminatorCitation],
  assumes: ['The bus is without supply, and the data pair of the cable counts nothing.', 'Of terminators that differ R_t is the mean by which the sum comes out: n divided by the sum of 1/R.'],
  compute: termination,
  notApplicable: q => (q.terminatorCount > 0 && q.terminatorResistanceOhm > 0 ? null : 'no terminator is recorded'),
  checks: [by(2, 60, 'two of 120 Ω: 60 Ω'), by(1, 120, 'one missing: 120 Ω'), by(3, 40, 'three fitted: 40 Ω')],
}
