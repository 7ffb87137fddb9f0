import { workingShare } from '../../references/basis/ac-rules.js'
import type { Method } from '../method.js'

export type SourceRatingInput = Readonly<{ nominalVoltageV: number; ratedCurrentA: number; shareFactor: number }>
export type SourceRatingOutput = Readonly<{ ratedPowerVa: number; workingPowerVa: number }>

/**
 * What an a.c. source or shore connection can give, and what should run from it for hours.
 *
 * Formula   S = U_n · I_n,   S_w = k · S
 * Units     U_n [V], I_n [A], k share of the rating; S and S_w [VA]
 * Source    circuit-theory; the share common-practice
 * Assumes   single phase; for a supply of 120/240 V the voltage between the two live conductors
 */
export function sourceRating(q: SourceRatingInput): SourceRatingOutput {
  const ratedPowerVa = q.nominalVoltageV * q.ratedCurrentA
  return { ratedPowerVa, workingPowerVa: q.shareFactor * ratedPowerVa }
}

export const sourceRatingMethod: Method<SourceRatingInput, SourceRatingOutput> = {
  id: 'ac-source-rating',
  title: 'What an a.c. source can give',
  formula: String.raw`S = U_n I_n \qquad S_w = k\,S`,
  symbols: { nominalVoltageV: 'U_n', ratedCurrentA: 'I_n', shareFactor: 'k', ratedPowerVa: 'S', workingPowerVa: 'S_w' },
  citations: [{ source: 'circuit-theory', place: 'S = U · I' }, workingShare.citation],
  assumes: ['Single phase. Of a 120/240 V supply the voltage is that between its two live conductors.'],
  compute: sourceRating,
  notApplicable: q => (q.nominalVoltageV > 0 && q.ratedCurrentA > 0 ? null : 'the nominal voltage or the rated current is not above zero'),
  checks: [
    {
      origin: 'by hand', place: 'shore connection of 120 V, 30 A: 3600 VA, 2880 W at 80 %',
      input: { nominalVoltageV: 120, ratedCurrentA: 30, shareFactor: 0.8 }, expected: { ratedPowerVa: 3600, workingPowerVa: 2880 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'shore connection of 120/240 V, 50 A: 240 · 50 = 12 000 VA',
      input: { nominalVoltageV: 240, ratedCurrentA: 50, shareFactor: 0.8 }, expected: { ratedPowerVa: 12000 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'shore connection of 230 V, 16 A: 230 · 16 = 3680 VA',
      input: { nominalVoltageV: 230, ratedCurrentA: 16, shareFactor: 0.8 }, expected: { ratedPowerVa: 3680 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'shore connection of 230 V, 32 A: 230 · 32 = 7360 VA',
      input: { nominalVoltageV: 230, ratedCurrentA: 32, shareFactor: 0.8 }, expected: { ratedPowerVa: 7360 }, tolerance: 1e-9,
    },
  ],
}
