/** The MMSI of the vessel, of her items, and as it is set in her radios. */
import type { Equipment, Setting, Vessel } from '../../model/vessel.js'
import type { IdentityPart } from '../../model/results/identifiers.js'
import { countryName, sameState } from '../../references/tables/countries.js'
import { midCitation } from '../../references/tables/maritime-identification-digits.js'
import { aStation, mmsiCitation, type MmsiFormKey, mmsiForms } from '../../references/tables/mmsi-forms.js'
import { mmsiDiffers, mmsiFormUnknown, mmsiNotAShip, mmsiNotForItsKind, mmsiOfAnotherFlag } from './findings.js'
import { type Fault, type Judged, judged } from './judged.js'
import { midInWords, type MmsiReading, readMmsi } from './mmsi.js'

export function checkVesselMmsi(vessel: Vessel, mmsi: string, flagCountry: string | null): Judged {
  const reading = readMmsi(mmsi)
  const faults: readonly Fault[] = [
    ...formFaults(reading),
    ...(reading.form === null || reading.form === 'ship' ? [] : [{ kind: mmsiNotAShip, words: `the form of ${aStation(reading.form)}, not of a ship station` }]),
    ...(reading.country === null || flagCountry === null || sameState(reading.country, flagCountry) ? []
      : [{ kind: mmsiOfAnotherFlag, words: `digits ${midInWords(reading)}, flag ${countryName(flagCountry)}` }]),
  ]
  return judged(vessel, { ...described(reading, mmsi), what: 'MMSI', holderTag: null, field: 'mmsi', value: mmsi, faults })
}

export function checkItemMmsi(vessel: Vessel, item: Equipment, mmsi: string): Judged {
  const reading = readMmsi(mmsi)
  const faults = reading.form === null ? formFaults(reading) : kindFaults(vessel, item, mmsi, { ...reading, form: reading.form })
  return judged(vessel, { ...described(reading, mmsi), what: 'MMSI', holderTag: item.tag, field: 'mmsi', value: mmsi, faults })
}

const formFaults = ({ fault }: MmsiReading): readonly Fault[] => (fault === null ? [] : [{ kind: mmsiFormUnknown, words: fault }])

const radios: readonly string[] = ['vhf transceiver', 'ais transceiver', 'vhf handset']
export const isRadio = ({ kind }: Equipment): boolean => kind === 'vhf transceiver' || kind === 'ais transceiver'

function kindFaults(vessel: Vessel, item: Equipment, mmsi: string, reading: MmsiReading & { readonly form: MmsiFormKey }): readonly Fault[] {
  const own = vessel.identity.mmsi
  if (item.kind === 'safety beacon') {
    return beaconForms.includes(reading.form) ? [] : [{ kind: mmsiNotForItsKind, words: `the form of ${aStation(reading.form)}; a beacon’s begins with 970, 972 or 974` }]
  }
  if (reading.form === 'associated craft') {
    const parent = own === null ? null : readMmsi(own).midNumber
    return parent === null || parent === reading.midNumber ? []
      : [{ kind: mmsiNotForItsKind, words: `a craft of this vessel has her digits ${parent} after 98, this one ${reading.midNumber}` }]
  }
  if (!radios.includes(item.kind)) return []
  if (reading.form === 'ship') {
    return own === null || own === mmsi ? [] : [{ kind: mmsiDiffers, words: `the vessel’s own is ${own}`, context: { what: 'MMSI', own } }]
  }
  return reading.form === 'handheld' && item.kind !== 'ais transceiver' ? []
    : [{ kind: mmsiNotForItsKind, words: `the form of ${aStation(reading.form)}, on ${item.kind === 'ais transceiver' ? 'an AIS' : 'a VHF radio'}` }]
}
const beaconForms: readonly MmsiFormKey[] = ['rescue transmitter', 'man overboard', 'beacon']

/** A setting that holds an MMSI, and not that of someone else or of a group. */
export const isOwnMmsiSetting = ({ name }: Setting): boolean => /\bmmsi\b/i.test(name) && !/group|contact|directory|buddy|other|coast|tender/i.test(name)

/** A handheld, or a craft of her own, rightly has another number: what it carries then decides. */
export function checkSetting(vessel: Vessel, setting: Setting, item: Equipment | undefined): Judged | null {
  const own = item?.mmsi ?? vessel.identity.mmsi
  const value = setting.value.replace(/[\s-]/g, '')
  // Words are no number: "see certificate". That none is set is a fault all the same.
  if (own === null || !/^(\d+|none|notset|empty)$/i.test(value)) return null
  const reading = readMmsi(value)
  const faults = value === own ? [] : [{ kind: mmsiDiffers, words: `the vessel’s own is ${own}`, context: { what: `setting “${setting.name}”`, own } }]
  return judged(vessel, { ...described(reading, value), what: 'MMSI setting', holderTag: setting.itemTag, field: 'mmsi', value: setting.value, faults })
}

function described(reading: MmsiReading, mmsi: string) {
  return {
    form: reading.form === null ? null : mmsiForms[reading.form].use,
    parts: partsOf(reading, mmsi),
    citations: reading.midNumber === null ? [mmsiCitation] : [mmsiCitation, midCitation],
  }
}

function partsOf({ form, midNumber, country }: MmsiReading, mmsi: string): readonly IdentityPart[] {
  if (form === null) return []
  const { prefix, use } = mmsiForms[form]
  const first = prefix === '' ? [] : [{ part: prefix, meaning: use }]
  if (midNumber === null) {
    return [...first, { part: mmsi.slice(3, 5), meaning: 'maker of the device' }, { part: mmsi.slice(5), meaning: 'its number' }]
  }
  const name = country === null ? null : countryName(country)
  return [
    ...first,
    { part: String(midNumber), meaning: name ?? 'a country that is not in the table' },
    { part: mmsi.slice(prefix.length + 3), meaning: 'number of the station' },
  ]
}
