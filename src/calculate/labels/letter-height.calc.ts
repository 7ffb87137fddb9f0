import type { Method } from '../method.js'

export type LetterHeightInput = Readonly<{ readingDistanceMm: number; distanceFactor: number }>
export type LetterHeightOutput = Readonly<{ letterHeightMm: number }>

/**
 * The least height of a capital letter that can be read from a distance.
 *
 * Formula   h = a / z
 * Units     a distance [mm], z how many times the letter's height; h [mm]
 * Source    ansi-z535: z = 300 for most words and 150 for signal words, in favourable conditions
 */
export function letterHeight(q: LetterHeightInput): LetterHeightOutput {
  return { letterHeightMm: q.readingDistanceMm / q.distanceFactor }
}

const guide = 'minimum letter heights in favourable conditions, as quoted in a published guide to facility signs'

export const letterHeightMethod: Method<LetterHeightInput, LetterHeightOutput> = {
  id: 'letter-height',
  title: 'Least height of letters by the distance from which they are read',
  formula: String.raw`h = a/z`,
  symbols: { readingDistanceMm: 'a', distanceFactor: 'z', letterHeightMm: 'h' },
  citations: [{ source: 'ansi-z535', place: 'one unit of height for 300 of distance, for signal words for 150' }],
  assumes: ['Favourable conditions: good light, and eyes that see well. In poor light the same source asks for twice the height.'],
  compute: letterHeight,
  notApplicable: q => (q.distanceFactor > 0 ? null : 'the factor is not above zero'),
  checks: [
    // The source gives inches to two places; half of the last is 0.127 mm.
    { origin: 'published', place: `${guide}: from 10 ft (3048 mm) 0.40 in (10.16 mm)`, input: { readingDistanceMm: 3048, distanceFactor: 300 }, expected: { letterHeightMm: 10.16 }, tolerance: 0.127 },
    { origin: 'published', place: `${guide}: from 200 ft (60 960 mm) 8.00 in (203.2 mm)`, input: { readingDistanceMm: 60960, distanceFactor: 300 }, expected: { letterHeightMm: 203.2 }, tolerance: 0.127 },
    { origin: 'by hand', place: 'from half a metre: 500 / 300', input: { readingDistanceMm: 500, distanceFactor: 300 }, expected: { letterHeightMm: 1.667 }, tolerance: 5e-4 },
  ],
}
