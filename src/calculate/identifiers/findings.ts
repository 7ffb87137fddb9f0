/** Findings (IDN): identifiers: MMSI, call sign, hull identification, beacons. */
import type { FindingKind } from '../../findings/finding.js'

const since = '0.1.0'
const retired = null

/** `context`: `holder` in words, `value` as recorded, `words` what is wrong. */
type Kind = FindingKind<{}>

export const mmsiFormUnknown: Kind = {
  id: 'IDN101', name: 'mmsi-form-unknown', since, retired, severity: 'error',
  meaning: 'The digits of an MMSI have no form that the ITU gives out, so that no call reaches it and no search finds its owner.',
  message: ({ context }) => `MMSI ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Correct the number by the radio licence or by the paper that came with the device.',
}

export const mmsiNotAShip: Kind = {
  id: 'IDN102', name: 'mmsi-not-a-ship-identity', since, retired, severity: 'error',
  meaning: 'The MMSI recorded for the vessel has the form of another kind of station. A distress alert with it does not name a ship.',
  message: ({ context }) => `MMSI ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Correct the number by the radio licence of the ship.',
}

export const mmsiNotForItsKind: Kind = {
  id: 'IDN103', name: 'mmsi-not-for-its-kind', since, retired, severity: 'error',
  meaning: 'An item carries an MMSI of a form that its kind must not have. A rescue transmitter with the number of a ship shows as a ship and raises no alarm.',
  message: ({ context }) => `MMSI ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Correct the number by the paper that came with the device, or have its maker’s agent set the right one.',
}

export const mmsiDiffers: Kind = {
  id: 'IDN104', name: 'mmsi-differs-from-vessel', since, retired, severity: 'error',
  meaning: 'A radio or AIS of the vessel is set to another MMSI than hers. Its distress alert names another ship, or none.',
  message: ({ context }) => `${context?.['holder']}: ${context?.['what']} ${context?.['value']}, the vessel’s own is ${context?.['own']}`,
  remedy: () => 'Set the device to the vessel’s MMSI as its maker describes, or correct the number that is recorded.',
}

export const identityUsedTwice: Kind = {
  id: 'IDN105', name: 'identity-used-twice', since, retired, severity: 'error',
  meaning: 'Two items are recorded with one identity, which must be theirs alone.',
  message: ({ context }) => `${context?.['items']}: ${context?.['what']} ${context?.['value']} on each of them`,
  remedy: () => 'Read the number off each item, and correct the one that was copied.',
}

export const callSignFormUnknown: Kind = {
  id: 'IDN106', name: 'call-sign-form-unknown', since, retired, severity: 'warning',
  meaning: 'The call sign has none of the forms that the Radio Regulations have for ships.',
  message: ({ context }) => `Call sign ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Correct the call sign by the radio licence.',
}

export const hullIdentificationForm: Kind = {
  id: 'IDN107', name: 'hull-identification-form', since, retired, severity: 'warning',
  meaning: 'The craft or hull identification number is not made up as its standard asks.',
  message: ({ context }) => `Hull identification ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Read the number off the hull again, letter by letter: I and 1, O and 0 look alike.',
}

export const beaconIdentityForm: Kind = {
  id: 'IDN108', name: 'beacon-identity-form', since, retired, severity: 'warning',
  meaning: 'The recorded identity of a 406 MHz beacon cannot be one, so that the beacon cannot be registered with it.',
  message: ({ context }) => `Beacon identity ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Read the digits off the label of the beacon again.',
}

export const beaconOfAnotherShip: Kind = {
  id: 'IDN109', name: 'beacon-coded-for-another-ship', since, retired, severity: 'error',
  meaning: 'A 406 MHz beacon carries the MMSI or call sign of another ship. The search would be for her.',
  message: ({ context }) => `Beacon identity ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Take the beacon to its maker’s agent to be coded for this vessel, and register it anew.',
}

export const radioIdentityMissing: Kind = {
  id: 'IDN201', name: 'radio-identity-missing', since, retired, severity: 'note',
  meaning: 'The vessel has a VHF radio or AIS and no MMSI or call sign is recorded. The card for a distress call has blanks where they belong.',
  message: ({ context }) => `${context?.['holder']} has ${context?.['items']}, but no ${context?.['words']} is recorded`,
  remedy: () => 'Record MMSI and call sign as they stand in the radio licence.',
}

export const beaconIdentityMissing: Kind = {
  id: 'IDN202', name: 'beacon-identity-missing', since, retired, severity: 'note',
  meaning: 'Of a distress beacon no identity is recorded, so that nothing can be held against its registration.',
  message: ({ context }) => `${context?.['items']}: no identity recorded`,
  remedy: () => 'Record the hexadecimal identity of a 406 MHz beacon, and the MMSI of a transmitter that shows on AIS.',
}

export const mmsiOfAnotherFlag: Kind = {
  id: 'IDN301', name: 'mmsi-of-another-flag', since, retired, severity: 'warning',
  meaning: 'The vessel’s MMSI was given out by another country than that of her flag. After a change of flag she needs a new one.',
  message: ({ context }) => `MMSI ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Check the number against the radio licence of the present flag.',
}

export const callSignOfAnotherFlag: Kind = {
  id: 'IDN302', name: 'call-sign-of-another-flag', since, retired, severity: 'warning',
  meaning: 'The vessel’s call sign is of the series of another country than that of her flag.',
  message: ({ context }) => `Call sign ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Check the call sign against the radio licence of the present flag.',
}

export const hullIdentificationYears: Kind = {
  id: 'IDN303', name: 'hull-identification-years', since, retired, severity: 'warning',
  meaning: 'The years in the hull identification number do not go together, or not with the recorded year of build.',
  message: ({ context }) => `Hull identification ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Check number and year of build against the builder’s plate.',
}

export const beaconOfAnotherCountry: Kind = {
  id: 'IDN304', name: 'beacon-of-another-country', since, retired, severity: 'warning',
  meaning: 'A 406 MHz beacon is coded for another country than the vessel’s. The rescue services ask the register of that country for her owner.',
  message: ({ context }) => `Beacon identity ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Check that the beacon is registered in the country it is coded for, or take it to its maker’s agent to be coded for her flag.',
}

export const beaconNotForAShip: Kind = {
  id: 'IDN305', name: 'beacon-not-coded-for-a-ship', since, retired, severity: 'warning',
  meaning: 'A 406 MHz beacon on board is coded for an aircraft or for tests.',
  message: ({ context }) => `Beacon identity ${context?.['value']} of ${context?.['holder']}: ${context?.['words']}`,
  remedy: () => 'Check the digits against the label, and have the beacon coded for this vessel.',
}

export const findingKinds = [
  mmsiFormUnknown, mmsiNotAShip, mmsiNotForItsKind, mmsiDiffers, identityUsedTwice, callSignFormUnknown, hullIdentificationForm, beaconIdentityForm,
  beaconOfAnotherShip, radioIdentityMissing, beaconIdentityMissing, mmsiOfAnotherFlag, callSignOfAnotherFlag, hullIdentificationYears,
  beaconOfAnotherCountry, beaconNotForAShip,
] as const
