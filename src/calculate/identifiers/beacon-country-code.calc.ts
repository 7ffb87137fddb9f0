import { highestMid, lowestMid } from '../../references/tables/mmsi-forms.js'
import type { Method } from '../method.js'

export type BeaconCountryInput = Readonly<{ leadingDigitsNumber: number }>
export type BeaconCountryOutput = Readonly<{ countryCodeNumber: number }>

/**
 * Country code of a 406 MHz beacon from the first three of its hexadecimal digits. They hold twelve bits: one that tells
 * the kind of protocol, ten of the country, and the first of what follows.
 *
 * Formula   c = ⌊(h mod 2048) / 2⌋
 * Units     h first three digits read as one hexadecimal number [1]; c maritime identification digits [1]
 * Source    cospas-t001 bits 26 to 37 for 15 digits; cospas-t018 bits 1 to 12 for 23 digits
 */
export function beaconCountryCode(q: BeaconCountryInput): BeaconCountryOutput {
  return { countryCodeNumber: Math.floor((q.leadingDigitsNumber % 2048) / 2) }
}

export const beaconCountryCodeMethod: Method<BeaconCountryInput, BeaconCountryOutput> = {
  id: 'beacon-country-code',
  title: 'Country code of a 406 MHz beacon',
  formula: String.raw`c = \left\lfloor \frac{h \bmod 2048}{2} \right\rfloor`,
  symbols: { leadingDigitsNumber: 'h', countryCodeNumber: 'c' },
  citations: [
    { source: 'cospas-t001', place: 'bits 26 (protocol) and 27 to 36 (country code)' },
    { source: 'cospas-t018', place: 'composition of the 23 digits: bit 1, country code in bits 2 to 11' },
  ],
  assumes: ['The first three digits are read as one hexadecimal number: 202 is 2 × 256 + 0 × 16 + 2 = 514.'],
  compute: beaconCountryCode,
  notApplicable: q => (q.leadingDigitsNumber >= 0 && q.leadingDigitsNumber <= 0xfff && inRange(beaconCountryCode(q)) ? null
    : `its country code ${beaconCountryCode(q).countryCodeNumber} is not within ${lowestMid} to ${highestMid}`),
  checks: [
    {
      origin: 'published', place: 'Cospas-Sarsat coding guide, country code: 232 is coded 0011101000; with the bits 0 before and 0 after it 000111010000 = 1D0 = 464',
      input: { leadingDigitsNumber: 464 }, expected: { countryCodeNumber: 232 }, tolerance: 0,
    },
    {
      origin: 'published', place: 'Cospas-Sarsat coding guide, standard location protocol with MMSI: 2024F72524FFBFF, country 257; 202 = 514',
      input: { leadingDigitsNumber: 514 }, expected: { countryCodeNumber: 257 }, tolerance: 0,
    },
    {
      origin: 'published', place: 'Cospas-Sarsat coding guide, maritime user protocol: A029C2900D97591, country 257; A02 = 2562',
      input: { leadingDigitsNumber: 2562 }, expected: { countryCodeNumber: 257 }, tolerance: 0,
    },
    {
      origin: 'published', place: 'C/S T.018, appendix B: 9934039823D000000000000, country 201; 993 = 2451',
      input: { leadingDigitsNumber: 2451 }, expected: { countryCodeNumber: 201 }, tolerance: 0,
    },
    {
      origin: 'published', place: 'C/S G.005, second generation with MMSI: ADF587AA62B157AE36DC552, country 367; ADF = 2783',
      input: { leadingDigitsNumber: 2783 }, expected: { countryCodeNumber: 367 }, tolerance: 0,
    },
  ],
}

const inRange = ({ countryCodeNumber }: BeaconCountryOutput): boolean => countryCodeNumber >= lowestMid && countryCodeNumber <= highestMid
