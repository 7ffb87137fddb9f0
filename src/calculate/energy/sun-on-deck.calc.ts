import type { Method } from '../method.js'

export type SunOnDeckInput = Readonly<{ extraterrestrialKWhPerM2: number; sunshinePercent: number }>
export type SunOnDeckOutput = Readonly<{ irradiationKWhPerM2: number }>

/**
 * What reaches level ground of the sun, by the share of daylight in which it shines (Ångström's formula).
 *
 * Formula   R_s = (0.25 + 0.50 · n / N) · R
 * Units     R without the air [kWh/m²], n / N share of the hours of daylight with sunshine [%]; R_s [kWh/m²]
 * Source    fao-56, equation 35
 */
export function sunOnDeck(q: SunOnDeckInput): SunOnDeckOutput {
  return { irradiationKWhPerM2: (0.25 + (0.5 * q.sunshinePercent) / 100) * q.extraterrestrialKWhPerM2 }
}

export const sunOnDeckMethod: Method<SunOnDeckInput, SunOnDeckOutput> = {
  id: 'sun-on-deck',
  title: 'Sun on deck',
  formula: String.raw`R_s = \left(0.25 + 0.50\,\frac{n}{100}\right) R`,
  symbols: { extraterrestrialKWhPerM2: 'R', sunshinePercent: 'n', irradiationKWhPerM2: 'R_s' },
  citations: [{ source: 'fao-56', place: 'equation 35 with the coefficients 0.25 and 0.50' }],
  assumes: ['The clouds are spread evenly over the day.'],
  compute: sunOnDeck,
  notApplicable: q => (q.sunshinePercent >= 0 && q.sunshinePercent <= 100 ? null : 'the share of sunshine is out of range'),
  checks: [{
    origin: 'published', place: 'example 10 (from memory), 7.1 h of sun in 10.9 h of daylight: 25.1 MJ/m² become 14.5, both divided by 3.6',
    input: { extraterrestrialKWhPerM2: 6.972, sunshinePercent: 65.14 }, expected: { irradiationKWhPerM2: 4.028 }, tolerance: 0.0145,
  }],
}
