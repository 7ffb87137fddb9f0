import type { Method } from '../method.js'

export type ResistanceRatioInput = Readonly<{ measuredResistanceMilliOhm: number; recordedResistanceMilliOhm: number }>
export type ResistanceRatioOutput = Readonly<{ resistanceRatioFactor: number; lowestAcceptedMilliOhm: number; highestAcceptedMilliOhm: number }>

const least = 0.5
const most = 1.5

/**
 * Internal resistance of a battery as measured against the one recorded for it.
 *
 * Formula   k = R / R₀, accepted from R₁ = 0.5 · R₀ to R₂ = 1.5 · R₀
 * Units     R [mΩ]
 * Source    common-practice
 * Assumes   measured by the same way, at a like temperature and state of charge; links and cables of the bank add to it
 */
export function resistanceRatio(q: ResistanceRatioInput): ResistanceRatioOutput {
  return {
    resistanceRatioFactor: q.measuredResistanceMilliOhm / q.recordedResistanceMilliOhm,
    lowestAcceptedMilliOhm: least * q.recordedResistanceMilliOhm,
    highestAcceptedMilliOhm: most * q.recordedResistanceMilliOhm,
  }
}

export const resistanceRatioCitation = { source: 'common-practice', place: 'internal resistance above 1.5 times that of the new battery' } as const

export const resistanceRatioMethod: Method<ResistanceRatioInput, ResistanceRatioOutput> = {
  id: 'internal-resistance-ratio',
  title: 'Internal resistance against the recorded one',
  formula: String.raw`k = \frac{R}{R_0} \qquad R_1 = 0.5\,R_0 \qquad R_2 = 1.5\,R_0`,
  symbols: {
    measuredResistanceMilliOhm: 'R', recordedResistanceMilliOhm: 'R_0', resistanceRatioFactor: 'k', lowestAcceptedMilliOhm: 'R_1', highestAcceptedMilliOhm: 'R_2',
  },
  citations: [resistanceRatioCitation],
  assumes: ['Both were found by the same way, at a like temperature and state of charge.', 'Links and cables of the bank that were within the reading count in it.'],
  compute: resistanceRatio,
  notApplicable: q => (q.recordedResistanceMilliOhm > 0 ? null : 'the recorded internal resistance is not above zero'),
  checks: [
    {
      origin: 'by hand', place: '6 mΩ where the maker states 4 mΩ: 6 / 4; half and one and a half of 4 mΩ',
      input: { measuredResistanceMilliOhm: 6, recordedResistanceMilliOhm: 4 }, expected: { resistanceRatioFactor: 1.5, lowestAcceptedMilliOhm: 2, highestAcceptedMilliOhm: 6 }, tolerance: 1e-9,
    },
  ],
}
