import type { Method } from '../method.js'

export type AttenuationBetweenPointsInput = Readonly<{ lowerFrequencyMHz: number; lowerAttenuationDbPer100M: number; upperFrequencyMHz: number; upperAttenuationDbPer100M: number; frequencyMHz: number }>
export type AttenuationBetweenPointsOutput = Readonly<{ attenuationDbPer100M: number }>

/**
 * Attenuation of a coaxial cable between two frequencies at which its maker states it.
 *
 * Formula   a = a_1 + (a_2 − a_1) · (√f − √f_1) / (√f_2 − √f_1)
 * Units     a_1 at f_1 and a_2 at f_2 as stated [dB/100 m, MHz], f [MHz]; a [dB/100 m]
 * Source    radio-theory
 * Assumes   attenuation goes in a straight line over the root of the frequency
 */
export function attenuationBetweenPoints({ lowerFrequencyMHz, lowerAttenuationDbPer100M, upperFrequencyMHz, upperAttenuationDbPer100M, frequencyMHz }: AttenuationBetweenPointsInput): AttenuationBetweenPointsOutput {
  const share = (Math.sqrt(frequencyMHz) - Math.sqrt(lowerFrequencyMHz)) / (Math.sqrt(upperFrequencyMHz) - Math.sqrt(lowerFrequencyMHz))
  return { attenuationDbPer100M: lowerAttenuationDbPer100M + (upperAttenuationDbPer100M - lowerAttenuationDbPer100M) * share }
}

export const attenuationBetweenPointsMethod: Method<AttenuationBetweenPointsInput, AttenuationBetweenPointsOutput> = {
  id: 'coax-attenuation-between-points',
  title: 'Attenuation of a coaxial cable between two stated values',
  formula: String.raw`a = a_1 + (a_2 - a_1)\,\frac{\sqrt{f} - \sqrt{f_1}}{\sqrt{f_2} - \sqrt{f_1}}`,
  symbols: { lowerFrequencyMHz: 'f_1', lowerAttenuationDbPer100M: 'a_1', upperFrequencyMHz: 'f_2', upperAttenuationDbPer100M: 'a_2', frequencyMHz: 'f', attenuationDbPer100M: 'a' },
  citations: [{ source: 'radio-theory', place: 'skin effect' }],
  assumes: ['Attenuation goes in a straight line over the root of the frequency.'],
  compute: attenuationBetweenPoints,
  notApplicable: q => (q.lowerFrequencyMHz < q.upperFrequencyMHz && q.frequencyMHz >= q.lowerFrequencyMHz && q.frequencyMHz <= q.upperFrequencyMHz ? null : 'the frequency is not between the two stated ones'),
  checks: [
    {
      origin: 'by hand', place: '10 dB at 100 MHz and 20 dB at 400 MHz, at 225 MHz: roots 10, 20 and 15, so half way',
      input: { lowerFrequencyMHz: 100, lowerAttenuationDbPer100M: 10, upperFrequencyMHz: 400, upperAttenuationDbPer100M: 20, frequencyMHz: 225 }, expected: { attenuationDbPer100M: 15 }, tolerance: 1e-9,
    },
    {
      // The two terms are from memory. Over so short a stretch any smooth curve is that straight, so the row does not hang on them.
      origin: 'by hand', place: 'low-loss, 10 mm, by its curve 0.12229·√f + 0.00026·f dB/100 ft: 4.097 dB/100 m at 100 MHz, 5.845 at 200, 5.211 at 160; within 1 %',
      input: { lowerFrequencyMHz: 100, lowerAttenuationDbPer100M: 4.097, upperFrequencyMHz: 200, upperAttenuationDbPer100M: 5.845, frequencyMHz: 160 }, expected: { attenuationDbPer100M: 5.211 }, tolerance: 0.05,
    },
  ],
}
