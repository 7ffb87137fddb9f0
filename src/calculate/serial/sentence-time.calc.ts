import type { Method } from '../method.js'

export type SentenceTimeInput = Readonly<{ lengthCharacterCount: number; ratePerS: number; baudRateBaud: number }>
export type SentenceTimeOutput = Readonly<{ lineTimeMs: number; charactersPerS: number }>

/** One start bit, eight data bits, one stop bit. */
const bitsPerCharacter = 10

/**
 * How long one sentence holds the line, and how many characters a second it brings.
 *
 * Formula   t = 1000 · 10 · n / B,   c = n · f
 * Units     n characters with start and line end, f sentences a second, B bits a second [Bd]; t [ms], c characters a second
 * Source    iec-61162-1: a character is one start bit, eight data bits and one stop bit
 */
export function sentenceTime(q: SentenceTimeInput): SentenceTimeOutput {
  return {
    lineTimeMs: (1000 * bitsPerCharacter * q.lengthCharacterCount) / q.baudRateBaud,
    charactersPerS: q.lengthCharacterCount * q.ratePerS,
  }
}

export const sentenceTimeMethod: Method<SentenceTimeInput, SentenceTimeOutput> = {
  id: 'sentence-time',
  title: 'Time that a sentence takes on a serial line',
  formula: String.raw`t = \frac{1000 \cdot 10\,n}{B} \qquad c = n\,f`,
  symbols: { lengthCharacterCount: 'n', ratePerS: 'f', baudRateBaud: 'B', lineTimeMs: 't', charactersPerS: 'c' },
  citations: [{ source: 'iec-61162-1', place: 'framing: start bit, eight data bits, stop bit' }],
  assumes: ['The sentence has the same length every time.'],
  compute: sentenceTime,
  notApplicable: q => (q.baudRateBaud > 0 && q.lengthCharacterCount > 0 && q.ratePerS >= 0 ? null : 'the rate of the line or the length of the sentence is not above zero'),
  checks: [
    {
      origin: 'by hand', place: '82 characters, the longest that is allowed: 820 bits at 4800 Bd',
      input: { lengthCharacterCount: 82, ratePerS: 1, baudRateBaud: 4800 }, expected: { lineTimeMs: 170.83, charactersPerS: 82 }, tolerance: 0.005,
    },
    {
      origin: 'by hand', place: 'the same at 38 400 Bd',
      input: { lengthCharacterCount: 82, ratePerS: 1, baudRateBaud: 38_400 }, expected: { lineTimeMs: 21.35 }, tolerance: 0.005,
    },
    {
      origin: 'by hand', place: 'a heading of 29 characters ten times a second: 290 bits at 4800 Bd, 290 characters a second',
      input: { lengthCharacterCount: 29, ratePerS: 10, baudRateBaud: 4800 }, expected: { lineTimeMs: 60.42, charactersPerS: 290 }, tolerance: 0.005,
    },
  ],
}
