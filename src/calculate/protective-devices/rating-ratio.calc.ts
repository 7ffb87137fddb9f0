import type { Method } from '../method.js'

export type RatingRatioInput = Readonly<{ upstreamRatedA: number; downstreamRatedA: number }>
export type RatingRatioOutput = Readonly<{ ratioFactor: number }>

/**
 * How much larger the rating of the device above is than that of the device below.
 *
 * Formula   r = I_1 / I_2
 * Units     I_1 nearer the source, I_2 nearer the load [A]; r from 1.6 on is taken to discriminate
 * Source    iec-60269, made for gG fuses on a.c.; common-practice on d.c.
 * Assumes   ratings only; time-current curves are not compared
 */
export function ratingRatio(q: RatingRatioInput): RatingRatioOutput {
  return { ratioFactor: q.upstreamRatedA / q.downstreamRatedA }
}

export const ratingRatioMethod: Method<RatingRatioInput, RatingRatioOutput> = {
  id: 'rating-ratio',
  title: 'Ratio of the ratings of two devices in a row',
  formula: String.raw`r = I_1 / I_2`,
  symbols: { upstreamRatedA: 'I_1', downstreamRatedA: 'I_2', ratioFactor: 'r' },
  citations: [
    { source: 'iec-60269', place: 'gG fuse-links, ratio 1.6' },
    { source: 'common-practice', place: 'the same ratio on d.c. and between other devices' },
  ],
  assumes: ['Ratings only are compared. Which of two devices opens first at a fault is decided by their time-current curves, which are not recorded.'],
  compute: ratingRatio,
  notApplicable: q => (q.upstreamRatedA > 0 && q.downstreamRatedA > 0 ? null : 'a rating is not above zero'),
  checks: [
    { origin: 'by hand', place: '160 A above 100 A, two neighbours in the ratio of the rule: 160 / 100 = 1.6', input: { upstreamRatedA: 160, downstreamRatedA: 100 }, expected: { ratioFactor: 1.6 }, tolerance: 1e-9 },
  ],
}
