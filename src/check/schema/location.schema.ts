/** Pictures of where things are: photographs with call-outs, the yard's own arrangement drawings. */
import { z } from 'zod'
import { date, filePath, oneOf, percentOf, position, tag, text } from './fields.js'

const pointOnPicture = (what: string) => {
  const expected = 'two percentages: from the left edge, from the upper edge'
  return z.preprocess(value => (typeof value === 'string' ? value.split(',') : value),
    z.array(percentOf('Share of the width or height.'), { error: expected }).length(2, { error: expected }))
    .meta({ description: what, orText: 'two percentages parted by a comma' })
}

export const photographSchema = z.strictObject({
  file: filePath('Picture in the vessel folder: JPEG or PNG.'),
  caption: text('What it shows, from where.'),
  zone: tag('Zone that it shows.').optional(),
  date: date('When it was taken.').optional(),
  by: text('Who took it.').optional(),
  'call-outs': z.array(z.strictObject({
    at: pointOnPicture('Where on the picture: from its left and its upper edge.'),
    item: tag('What is there.'),
    words: text('What to see there, where the name does not say it.').optional(),
  })).describe('Numbered points, in their order.').optional(),
})

export const arrangementDrawingSchema = z.strictObject({
  file: filePath('Picture in the vessel folder: JPEG or PNG.'),
  view: oneOf(['plan', 'profile'], 'Seen from above, bow to the right; or from the starboard side, bow to the right.'),
  from: position('The place on the boat at the lower left corner of the picture; the third direction is not used.'),
  to: position('The place at the upper right corner.'),
}).refine(({ view, from, to }) => liesUpAndRight(view, from, to), {
  path: ['to'], error: 'the upper right corner: forward of the lower left one, and to port of it on a plan, above it on a profile',
})

/** Both views have the bow to the right. */
function liesUpAndRight(view: 'plan' | 'profile', from: readonly number[], to: readonly number[]): boolean {
  const up = view === 'plan' ? 1 : 2
  return to[0]! > from[0]! && to[up]! > from[up]!
}
