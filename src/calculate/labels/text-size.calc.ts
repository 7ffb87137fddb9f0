import { capitalHeightFactor, linePitchFactor } from '../../references/tables/letter-advances.js'
import type { Method } from '../method.js'

export type TextSizeInput = Readonly<{ boxWidthMm: number; boxHeightMm: number; longestLineFactor: number; lineCount: number }>
export type TextSizeOutput = Readonly<{ textSizeMm: number; letterHeightMm: number }>

/**
 * The largest text that fits into a box.
 *
 * Formula   s = min(w / a, t / (1.2 · n)),   h = 0.698 · s
 * Units     w, t width and height of the box [mm]; a width of the longest line in text sizes, n lines; s text size, h height of its capitals [mm]
 * Source    typeface for a and the height of capitals; common-practice for a line pitch of 1.2
 */
export function textSize(q: TextSizeInput): TextSizeOutput {
  const textSizeMm = Math.min(q.boxWidthMm / q.longestLineFactor, q.boxHeightMm / (linePitchFactor * q.lineCount))
  return { textSizeMm, letterHeightMm: capitalHeightFactor * textSizeMm }
}

export const textSizeMethod: Method<TextSizeInput, TextSizeOutput> = {
  id: 'label-text-size',
  title: 'Largest text on a label',
  formula: String.raw`s = \min\left(\frac{w}{a},\ \frac{t}{1.2\,n}\right) \qquad h = 0.698\,s`,
  symbols: { boxWidthMm: 'w', boxHeightMm: 't', longestLineFactor: 'a', lineCount: 'n', textSizeMm: 's', letterHeightMm: 'h' },
  citations: [
    { source: 'typeface', place: 'advances of the letters; capitals 698 thousandths high' },
    { source: 'common-practice', place: 'lines 1.2 text sizes apart' },
  ],
  assumes: ['Letters stand by their own width, without kerning.'],
  compute: textSize,
  notApplicable: q => (q.longestLineFactor > 0 && q.lineCount > 0 ? null : 'there is no text'),
  checks: [
    {
      origin: 'by hand', place: '11 letters of 0.6 are 6.6; 23.4 / 6.6 = 3.545; three lines in 12 mm: 12 / 3.6 = 3.333; 0.698 · 3.333',
      input: { boxWidthMm: 23.4, boxHeightMm: 12, longestLineFactor: 6.6, lineCount: 3 }, expected: { textSizeMm: 3.333, letterHeightMm: 2.327 }, tolerance: 5e-4,
    },
    {
      origin: 'by hand', place: '20 letters of 0.6 are 12 in one line: 24 / 12 = 2; 0.698 · 2',
      input: { boxWidthMm: 24, boxHeightMm: 12, longestLineFactor: 12, lineCount: 1 }, expected: { textSizeMm: 2, letterHeightMm: 1.396 }, tolerance: 5e-4,
    },
  ],
}
