/** What a call sign says of itself. */
import { type CountryCode } from '../../references/tables/countries.js'
import { countryOfCallSign } from '../../references/tables/call-sign-series.js'

export interface CallSignReading {
  readonly form: string | null
  readonly country: CountryCode | null
  readonly fault: string | null
}

/** Two characters first, of which at least one is a letter. */
const start = '(?:[A-Z][A-Z]|[A-Z][2-9]|[2-9][A-Z])'
/** A digit next to a letter is not 0 or 1, which could be heard as letters. */
const forms: readonly (readonly [string, RegExp])[] = [
  ['two characters and two letters', new RegExp(`^${start}[A-Z]{2}$`)],
  ['two characters, two letters and a digit', new RegExp(`^${start}[A-Z]{2}[2-9]$`)],
  ['two characters and four digits', /^[A-Z2-9][A-Z][2-9]\d{3}$/],
  ['two characters, a letter and four digits', new RegExp(`^${start}[A-Z][2-9]\\d{3}$`)],
]

export function readCallSign(callSign: string): CallSignReading {
  const found = forms.find(([, pattern]) => pattern.test(callSign))
  if (found !== undefined) return { form: found[0], country: countryOfCallSign(callSign), fault: null }
  return {
    form: null, country: null,
    fault: /[^A-Z0-9]/.test(callSign) ? 'it holds more than capital letters and digits' : 'it has none of the forms of a ship’s call sign',
  }
}
