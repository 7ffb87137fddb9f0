/**
 * International call sign series by country (ISO 3166-1 alpha-2), for flags that small craft fly. A country's series are
 * given by their first character where that alone tells the country, else by a range of their first two.
 */
import type { Citation } from '../bibliography.js'
import type { CountryCode } from './countries.js'

const seriesByCountry: Readonly<Record<CountryCode, string>> = {
  AE: 'A6', AG: 'V2', AR: 'AY-AZ L2-L9 LO-LW', AT: 'OE', AU: 'AX VH-VN VZ', BB: '8P', BE: 'ON-OT', BG: 'LZ', BR: 'PP-PY ZV-ZZ', BS: 'C6', BZ: 'V3',
  CA: 'CF-CK CY-CZ VA-VG VO VX-VY XJ-XO', CH: 'HB HE', CL: 'CA-CE XQ-XR 3G', CY: 'C4 H2 P3 5B', CZ: 'OK-OL', DE: 'DA-DR Y2-Y9', DK: 'OU-OZ XP 5P-5Q',
  EE: 'ES', ES: 'AM-AO EA-EH', FI: 'OF-OJ', FR: 'F HW-HY TH TK TM TO-TQ TV-TX', GB: 'G M VP-VQ VS ZB-ZJ ZN-ZO ZQ 2', GR: 'J4 SV-SZ', HR: '9A',
  HU: 'HA HG', IE: 'EI-EJ', IN: 'AT-AW VT-VW 8T-8Y', IS: 'TF', IT: 'I', JM: '6Y', JP: 'JA-JS 7J-7N 8J-8N', LT: 'LY', LU: 'LX', LV: 'YL', MC: '3A',
  ME: '4O', MH: 'V7', MT: '9H', MX: 'XA-XI 4A-4C 6D-6J', MY: '9M 9W', NL: 'PA-PJ P4', NO: 'JW-JX LA-LN 3Y', NZ: 'ZK-ZM E5-E6', PA: 'HO-HP H3 H8-H9 3E-3F',
  PL: 'HF SN-SR 3Z', PT: 'CQ-CU', RO: 'YO-YR', RU: 'R UA-UI', SE: 'SA-SM 7S 8S', SG: 'S6 9V', SI: 'S5', SK: 'OM', SM: 'T7', TH: 'E2 HS',
  TR: 'TA-TC YM', TT: '9Y-9Z', UA: 'EM-EO UR-UZ', US: 'AA-AL K N W', VC: 'J8', ZA: 'S8 ZR-ZU',
}

const within = (start: string) => (series: string): boolean => {
  if (series.length === 1) return start.startsWith(series)
  const [low = '', high = low] = series.split('-')
  return start >= low && start <= high
}

/** The country in whose series a call sign is, or null where the table does not say. */
export const countryOfCallSign = (callSign: string): CountryCode | null =>
  Object.keys(seriesByCountry).find(country => seriesByCountry[country]!.split(' ').some(within(callSign.slice(0, 2)))) ?? null

/** Whether the series of a country are in the table. */
export const knowsSeriesOf = (country: CountryCode): boolean => Object.hasOwn(seriesByCountry, country)

export const callSignFormCitation: Citation = { source: 'itu-rr', place: 'article 19, Nos. 19.50 and 19.55', standing: 'from memory' }
export const callSignSeriesCitation: Citation = { source: 'itu-call-signs', place: 'table of international call sign series' }
