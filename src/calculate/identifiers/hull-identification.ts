/** What the number on the hull says of itself: craft identification number (with a country first) or hull identification number. */
import { type CountryCode, countryName } from '../../references/tables/countries.js'
import type { IdentityPart } from '../../model/results/identifiers.js'

export interface HullReading {
  readonly form: 'CIN' | 'HIN' | null
  readonly country: CountryCode | null
  readonly parts: readonly IdentityPart[]
  /** Last digit of the year of production, and last two digits of the model year. */
  readonly years: { readonly lastDigit: number; readonly modelYear: number } | null
  readonly faults: readonly string[]
}

export const monthNames = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'] as const
const monthOf = (letter: string): string | null => monthNames['ABCDEFGHIJKL'.indexOf(letter)] ?? null

/** Twelve characters, or fourteen with a country, where hyphens may part country, number and dates. */
export function readHullIdentification(written: string): HullReading {
  const cin = /^([A-Z]{2})-?([A-Z0-9]{8})-?([A-Z0-9]{2})-?([A-Z0-9]{2})$/.exec(written)
  if (cin !== null && (written.replaceAll('-', '').length === 14)) return readParts('CIN', cin[1]!, cin[2]! + cin[3]! + cin[4]!)
  if (/^[A-Z0-9]{12}$/.test(written)) return readParts('HIN', null, written)
  return { form: null, country: null, parts: [], years: null, faults: [whyNone(written)] }
}

function whyNone(written: string): string {
  const bare = written.replaceAll('-', '')
  if (/[^A-Z0-9-]/.test(written)) return 'it holds more than capital letters, digits and hyphens'
  if (bare.length === 12) return 'a number of 12 characters has no hyphens'
  if (bare.length === 14) return /^[A-Z]{2}/.test(bare) ? 'its hyphens stand in the wrong places' : 'it does not begin with the two letters of a country'
  return `it has ${bare.length} characters, where a craft identification number has 14 and a hull identification number 12`
}

function readParts(form: 'CIN' | 'HIN', country: CountryCode | null, number: string): HullReading {
  const [maker, serial, letter, digit, modelYear] = [number.slice(0, 3), number.slice(3, 8), number.slice(8, 9), number.slice(9, 10), number.slice(10)]
  const month = monthOf(letter)
  const name = country === null ? null : countryName(country)
  // The rule against I, O and Q is of 33 CFR 181, which holds for numbers with US first too.
  const american = form === 'HIN' || country === 'US'
  const faults = [
    ...(country !== null && name === null ? [`${country} is no country of ISO 3166-1`] : []),
    ...(american && /[IOQ]/.test(serial) ? [`its serial number ${serial} has a letter I, O or Q`] : []),
    ...(month === null ? [`${letter} stands for no month, A to L do`] : []),
    ...(/^\d$/.test(digit) ? [] : [`${digit} stands where the last digit of the year should`]),
    ...(/^\d{2}$/.test(modelYear) ? [] : [`${modelYear} stands where the two digits of the model year should`]),
  ]
  return {
    form, country, faults,
    years: faults.length > 0 ? null : { lastDigit: Number(digit), modelYear: Number(modelYear) },
    parts: [
      ...(country === null ? [] : [{ part: country, meaning: name === null ? 'no country' : `country of the builder: ${name}` }]),
      { part: maker, meaning: 'builder' },
      { part: serial, meaning: 'serial number' },
      { part: letter + digit, meaning: month === null || !/^\d$/.test(digit) ? 'no date' : `built in ${month} of a year ending in ${digit}` },
      { part: modelYear, meaning: /^\d{2}$/.test(modelYear) ? `model year ending in ${modelYear}` : 'no model year' },
    ],
  }
}

/** How the years of the number go with one another and with the year of build. A doubt only: builders count in different ways. */
export function yearDoubts({ lastDigit, modelYear }: NonNullable<HullReading['years']>, yearBuilt: number | null): readonly string[] {
  const follows = (modelYear - lastDigit + 100) % 10
  return [
    ...(follows > 1 ? [`model year ${twoDigits(modelYear)} is neither the year of production, ending in ${lastDigit}, nor the next`] : []),
    ...(yearBuilt !== null && yearBuilt % 10 !== lastDigit ? [`built in a year ending in ${lastDigit}, recorded year of build ${yearBuilt}`] : []),
    ...(yearBuilt !== null && yearBuilt % 10 === lastDigit && follows <= 1 && ![0, 1].includes((modelYear - yearBuilt % 100 + 100) % 100)
      ? [`model year ${twoDigits(modelYear)}, recorded year of build ${yearBuilt}`] : []),
  ]
}
const twoDigits = (year: number): string => String(year).padStart(2, '0')

/** Before August 1984 hull identification numbers had other forms for the dates. */
export const firstYearOfForm = 1984
