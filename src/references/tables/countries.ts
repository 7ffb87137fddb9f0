/** Countries by the two letters of ISO 3166-1, with the names that the runtime's language data give them. */

export type CountryCode = string

/** Codes that the language data name and the standard does not give to a country: withdrawn, reserved, or for users. */
const notInStandard: ReadonlySet<CountryCode> = new Set([
  'AC', 'AN', 'BU', 'CP', 'CQ', 'CS', 'DD', 'DG', 'DY', 'EA', 'EU', 'EZ', 'FX', 'HV', 'IC', 'NH', 'QO', 'RH', 'SU', 'TA', 'TP', 'UK', 'UN', 'VD',
  'XA', 'XB', 'XK', 'YD', 'YU', 'ZR', 'ZZ',
])

const names = new Intl.DisplayNames(['en-GB'], { type: 'region', fallback: 'none' })

/** Null where the standard has no such code. */
export const countryName = (code: CountryCode): string | null =>
  !/^[A-Z]{2}$/.test(code) || notInStandard.has(code) ? null : names.of(code) ?? null

const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ']
const everyCode: readonly CountryCode[] = letters.flatMap(first => letters.map(second => first + second)).filter(code => countryName(code) !== null)

/** One way of writing for comparison: small letters without accents, `and` for `&`, no article and no points. */
const plain = (words: string): string =>
  words.normalize('NFD').replace(/[\u0300-\u036f.’']/g, '').replaceAll('&', ' and ').toLowerCase().replace(/^the /, '').replace(/[^a-z]+/g, ' ').trim()

/** Names that people write and the language data do not. */
const otherNames: Readonly<Record<string, CountryCode>> = {
  'uk': 'GB', 'great britain': 'GB', 'britain': 'GB', 'england': 'GB', 'scotland': 'GB', 'wales': 'GB',
  'united kingdom of great britain and northern ireland': 'GB', 'british': 'GB',
  'usa': 'US', 'united states of america': 'US', 'america': 'US',
  'holland': 'NL', 'kingdom of netherlands': 'NL', 'republic of ireland': 'IE', 'eire': 'IE', 'federal republic of germany': 'DE', 'deutschland': 'DE',
  'kingdom of denmark': 'DK', 'kingdom of norway': 'NO', 'kingdom of sweden': 'SE', 'french republic': 'FR', 'kingdom of spain': 'ES',
  'turkey': 'TR', 'turkiye': 'TR', 'czech republic': 'CZ', 'russian federation': 'RU', 'hong kong': 'HK', 'commonwealth of bahamas': 'BS',
}
const codeByName: ReadonlyMap<string, CountryCode> = new Map([
  ...everyCode.map(code => [plain(countryName(code)!), code] as const), ...Object.entries(otherNames),
])

/** The country meant by a flag as people write it: its two letters or its name. Null where it is not understood. */
export function countryOf(flag: string): CountryCode | null {
  const letters = flag.trim().toUpperCase()
  return countryName(letters) !== null ? letters : codeByName.get(plain(flag)) ?? null
}

/** Territories whose ships may carry numbers of the state that they belong to, and the other way round. Common practice, no source. */
const territoriesOf: Readonly<Record<CountryCode, readonly CountryCode[]>> = {
  GB: ['GI', 'IM', 'JE', 'GG', 'BM', 'KY', 'VG', 'TC', 'AI', 'MS', 'FK', 'SH', 'PN'],
  US: ['PR', 'VI', 'AS', 'GU', 'MP'],
  NL: ['AW', 'CW', 'SX', 'BQ'],
  DK: ['FO', 'GL'],
  FR: ['GP', 'MQ', 'RE', 'YT', 'NC', 'PF', 'PM', 'WF', 'GF', 'TF', 'BL', 'MF'],
  CN: ['HK', 'MO'],
  NZ: ['CK', 'NU', 'TK'],
  AU: ['CX', 'CC', 'NF'],
  FI: ['AX'],
  NO: ['SJ'],
}
const stateOf = (code: CountryCode): CountryCode => Object.keys(territoriesOf).find(state => territoriesOf[state]!.includes(code)) ?? code

/** Whether both are one state, its territories counted in. */
export const sameState = (a: CountryCode, b: CountryCode): boolean => stateOf(a) === stateOf(b)
