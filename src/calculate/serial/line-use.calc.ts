import type { Method } from '../method.js'

export type LineUseInput = Readonly<{ charactersPerS: number; baudRateBaud: number }>
export type LineUseOutput = Readonly<{ lineUsePercent: number }>

/**
 * How much of a serial line's time is taken.
 *
 * Formula   u = 100 · 10 · Σc / B
 * Units     Σc characters a second of all sentences, B [Bd]; u [%]
 * Source    iec-61162-1: ten bits a character
 */
export function lineUse(q: LineUseInput): LineUseOutput {
  return { lineUsePercent: (100 * 10 * q.charactersPerS) / q.baudRateBaud }
}

export const lineUseMethod: Method<LineUseInput, LineUseOutput> = {
  id: 'line-use',
  title: 'Share of a serial line that is taken',
  formula: String.raw`u = \frac{100 \cdot 10\,\Sigma c}{B}`,
  symbols: { charactersPerS: String.raw`\Sigma c`, baudRateBaud: 'B', lineUsePercent: 'u' },
  citations: [{ source: 'iec-61162-1', place: 'framing: start bit, eight data bits, stop bit' }],
  assumes: ['The sentences follow one another without a pause.'],
  compute: lineUse,
  notApplicable: q => (q.baudRateBaud > 0 && q.charactersPerS >= 0 ? null : 'the rate of the line is not above zero'),
  checks: [
    {
      origin: 'by hand', place: 'RMC 70, GGA 67, VTG 45 and ZDA 38 characters once a second: 220 of 480 characters a second',
      input: { charactersPerS: 220, baudRateBaud: 4800 }, expected: { lineUsePercent: 45.83 }, tolerance: 0.005,
    },
    {
      origin: 'by hand', place: 'the same and HDT of 20 characters ten times a second: 420 of 480',
      input: { charactersPerS: 420, baudRateBaud: 4800 }, expected: { lineUsePercent: 87.5 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: '60 AIS reports of 49 characters a second: 2940 of 3840',
      input: { charactersPerS: 2940, baudRateBaud: 38_400 }, expected: { lineUsePercent: 76.6 }, tolerance: 0.05,
    },
  ],
}
