import type { Method } from '../method.js'

export type LineRoomInput = Readonly<{ planPercent: number; baudRateBaud: number; charactersPerS: number; lengthCharacterCount: number }>
export type LineRoomOutput = Readonly<{ morePerS: number }>

/**
 * How often one more sentence can be sent before the line is as full as it is planned to be.
 *
 * Formula   f = (p / 100 · B / 10 − Σc) / n
 * Units     p share of the line that is planned [%], B [Bd], Σc characters a second that are sent already, n characters of
 *           the new sentence; f times a second, negative when the plan is passed already
 * Source    iec-61162-1: ten bits a character
 */
export function lineRoom(q: LineRoomInput): LineRoomOutput {
  return { morePerS: ((q.planPercent * q.baudRateBaud) / 1000 - q.charactersPerS) / q.lengthCharacterCount }
}

export const lineRoomMethod: Method<LineRoomInput, LineRoomOutput> = {
  id: 'line-room',
  title: 'Room for one more sentence on a serial line',
  formula: String.raw`f = \frac{\frac{p}{100}\cdot\frac{B}{10} - \Sigma c}{n}`,
  symbols: { planPercent: 'p', baudRateBaud: 'B', charactersPerS: String.raw`\Sigma c`, lengthCharacterCount: 'n', morePerS: 'f' },
  citations: [
    { source: 'iec-61162-1', place: 'framing and length of a sentence' },
    { source: 'common-practice', place: 'a line is planned to be 80 % full at most' },
  ],
  assumes: ['The new sentence is as long as is allowed; a shorter one can be sent more often.'],
  compute: lineRoom,
  notApplicable: q => (q.baudRateBaud > 0 && q.lengthCharacterCount > 0 && q.planPercent > 0 ? null : 'the rate of the line or the length of the sentence is not above zero'),
  checks: [
    {
      origin: 'by hand', place: 'an empty line at 4800 Bd, filled whole: 480 characters a second, 82 each',
      input: { planPercent: 100, baudRateBaud: 4800, charactersPerS: 0, lengthCharacterCount: 82 }, expected: { morePerS: 5.85 }, tolerance: 0.005,
    },
    {
      origin: 'by hand', place: '80 % of 480 is 384; less 220 leaves 164, twice 82',
      input: { planPercent: 80, baudRateBaud: 4800, charactersPerS: 220, lengthCharacterCount: 82 }, expected: { morePerS: 2 }, tolerance: 1e-9,
    },
  ],
}
