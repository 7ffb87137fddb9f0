/** What a maritime mobile service identity says of itself. */
import { type CountryCode, countryName } from '../../references/tables/countries.js'
import { countryOfMid } from '../../references/tables/maritime-identification-digits.js'
import { aStation, highestMid, lowestMid, type MmsiFormKey, mmsiFormKeys, mmsiForms } from '../../references/tables/mmsi-forms.js'

export interface MmsiReading {
  /** Null where its digits have no known form. */
  readonly form: MmsiFormKey | null
  readonly midNumber: number | null
  readonly country: CountryCode | null
  /** Why it is no identity. */
  readonly fault: string | null
}

export function readMmsi(mmsi: string): MmsiReading {
  const none = { form: null, midNumber: null, country: null }
  if (!/^\d{9}$/.test(mmsi)) return { ...none, fault: 'it has not nine digits' }
  const form = mmsiFormKeys.find(key => mmsi.startsWith(mmsiForms[key].prefix))!
  const { prefix, hasMid } = mmsiForms[form]
  if (!hasMid) return { ...none, form, fault: null }
  const mid = mmsi.slice(prefix.length, prefix.length + 3)
  const midNumber = Number(mid)
  if (midNumber < lowestMid || midNumber > highestMid) {
    return { ...none, fault: `as the number of ${aStation(form)} it would have the maritime identification digits ${mid}, which are not within ${lowestMid} to ${highestMid}` }
  }
  return { form, midNumber, country: countryOfMid(midNumber), fault: null }
}

/** "235, United Kingdom" */
export function midInWords({ midNumber, country }: Pick<MmsiReading, 'midNumber' | 'country'>): string {
  const name = country === null ? null : countryName(country)
  return name === null ? `${midNumber}, of a country that is not in the table` : `${midNumber}, ${name}`
}
