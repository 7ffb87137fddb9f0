/** Call sign and hull identification of the vessel. */
import type { Vessel } from '../../model/vessel.js'
import { callSignFormCitation, callSignSeriesCitation } from '../../references/tables/call-sign-series.js'
import { countryName, sameState } from '../../references/tables/countries.js'
import { readCallSign } from './call-sign.js'
import { callSignFormUnknown, callSignOfAnotherFlag, hullIdentificationForm, hullIdentificationYears } from './findings.js'
import { firstYearOfForm, readHullIdentification, yearDoubts } from './hull-identification.js'
import { type Judged, judged } from './judged.js'

export function checkCallSign(vessel: Vessel, callSign: string, flagCountry: string | null): Judged {
  const { form, country, fault } = readCallSign(callSign)
  const name = country === null ? null : countryName(country)
  const faults = [
    ...(fault === null ? [] : [{ kind: callSignFormUnknown, words: fault }]),
    ...(country === null || flagCountry === null || sameState(country, flagCountry) ? []
      : [{ kind: callSignOfAnotherFlag, words: `of the series of ${name}, flag ${countryName(flagCountry)}` }]),
  ]
  return judged(vessel, {
    what: 'call sign', holderTag: null, field: 'callSign', value: callSign, form, faults,
    parts: form === null ? [] : [{ part: callSign.slice(0, 2), meaning: name === null ? 'a series that is not in the table' : `series of ${name}` }],
    citations: [callSignFormCitation, ...(country === null ? [] : [callSignSeriesCitation])],
  })
}

export function checkHullIdentification(vessel: Vessel, number: string): Judged {
  const { form, parts, years, faults } = readHullIdentification(number)
  const { yearBuilt } = vessel.identity
  const judgement = judged(vessel, {
    what: 'hull identification', holderTag: null, field: 'hullIdentification', value: number, parts,
    form: form === null ? null : form === 'CIN' ? 'craft identification number (CIN)' : 'hull identification number (HIN)',
    faults: [
      ...(faults.length === 0 ? [] : [{ kind: hullIdentificationForm, words: faults.join('; ') }]),
      ...(years === null ? [] : yearDoubts(years, yearBuilt).map(words => ({ kind: hullIdentificationYears, words }))),
    ],
    citations: [form === 'CIN' ? { source: 'iso-10087', place: 'structure of the number' } : { source: '33-cfr-181', place: '181.25' }],
  })
  if (yearBuilt === null || yearBuilt >= firstYearOfForm) return judgement
  return {
    check: { ...judgement.check, verdict: 'not assessed', reasons: [`she was built in ${yearBuilt}, when the numbers had other forms`] },
    findings: [],
  }
}
