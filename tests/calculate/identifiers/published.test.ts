/** The readings against published tables and worked examples. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readBeacon } from '../../../src/calculate/identifiers/beacon.js'
import { readHullIdentification } from '../../../src/calculate/identifiers/hull-identification.js'
import { readMmsi } from '../../../src/calculate/identifiers/mmsi.js'
import { countryOfCallSign } from '../../../src/references/tables/call-sign-series.js'
import { countryName, countryOf } from '../../../src/references/tables/countries.js'
import { countryOfMid } from '../../../src/references/tables/maritime-identification-digits.js'
import { mmsiForms } from '../../../src/references/tables/mmsi-forms.js'
import { referenceTable } from '../../support/reference-table.js'

describe('MMSI', () => {
  const formats = referenceTable('rf-mmsi-formats')
  const forms = Object.entries(mmsiForms)

  it('has the forms of ITU-R M.585', () => {
    expect(forms.map(([, { pattern }]) => pattern).toSorted()).toEqual(formats.map(({ pattern }) => pattern!).toSorted())
  })

  it.each(formats.map(({ pattern, regex }) => [pattern!, regex!] as const))('%s: any number of that form is read as it', (pattern, regex) => {
    const [key] = forms.find(([, each]) => each.pattern === pattern)!
    fc.assert(fc.property(fc.stringMatching(new RegExp(regex)), mmsi => {
      const at = pattern.indexOf('MID')
      const mid = at < 0 ? null : Number(mmsi.slice(at, at + 3))
      // The pattern lets pass digits that the ITU gives out to nobody: 200, and 776 to 799.
      fc.pre(mid === null || (mid >= 201 && mid <= 775))
      expect(readMmsi(mmsi)).toMatchObject({ form: key, midNumber: mid, fault: null })
    }))
  })

  // Reference numbers of the trade, ITU-R M.585.
  it.each([
    ['232001234', 'ship', 232], ['036699999', 'group', 366], ['003669999', 'coast', 366], ['992351234', 'aid to navigation', 235],
    ['982321234', 'associated craft', 232], ['970210001', 'rescue transmitter', null], ['111232001', 'rescue aircraft', 232], ['823512345', 'handheld', 235],
  ] as const)('%s is a %s', (mmsi, form, midNumber) => {
    expect(readMmsi(mmsi)).toMatchObject({ form, midNumber, fault: null })
  })

  it.each([
    ['199000123', /digits 199,/], ['776000123', /digits 776,/], ['200000123', /digits 200,/], ['03699999', /nine digits/], ['2320012345', /nine digits/],
    ['23200123X', /nine digits/], ['009991234', /digits 999,/], ['971000000', /digits 971,/],
  ])('%s is none', (mmsi, why) => {
    expect(readMmsi(mmsi).form).toBeNull()
    expect(readMmsi(mmsi).fault).toMatch(why)
  })
})

describe('maritime identification digits', () => {
  it.each(referenceTable('itu-mid').map(({ mid, listed_as: name, alpha2 }) => [mid!, name!, alpha2!]))('%s, %s', (mid, _, alpha2) => {
    expect(countryOfMid(Number(mid))).toBe(alpha2)
  })
  it('gives no country to digits that nobody has', () => {
    expect([200, 217, 290, 776].map(countryOfMid)).toEqual([null, null, null, null])
  })
})

describe('call sign series', () => {
  it.each(referenceTable('itu-call-sign-series').map(({ series, listed_as: name, alpha2 }) => [series!, name!, alpha2!]))('%s, %s', (series, _, alpha2) => {
    const [low = '', high = ''] = series.split('-')
    expect([countryOfCallSign(low), countryOfCallSign(high)]).toEqual([alpha2, alpha2])
  })
})

describe('countries', () => {
  const listed = referenceTable('iso-3166-alpha-2')
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ']

  it('has exactly the codes of ISO 3166-1', () => {
    const named = letters.flatMap(first => letters.map(second => first + second)).filter(code => countryName(code) !== null)
    expect(named).toEqual(listed.map(({ code }) => code))
  })

  it.each([
    ['United Kingdom', 'GB'], ['uk', 'GB'], ['Great Britain', 'GB'], ['GB', 'GB'], ['U.S.A.', 'US'], ['The Netherlands', 'NL'], ['Turkey', 'TR'], ['Türkiye', 'TR'],
    ['Côte d’Ivoire', 'CI'], ['Antigua and Barbuda', 'AG'],
  ])('a flag written %s is of %s', (flag, code) => {
    expect(countryOf(flag)).toBe(code)
  })
  it('understands no flag that names no country', () => {
    expect(['Atlantis', '', 'XX', 'ZZ', 'EU'].map(countryOf)).toEqual([null, null, null, null, null])
  })
})

describe('hull identification', () => {
  it.each(referenceTable('manual-hin-cin').map(({ code, kind, valid, why }) => [code!, kind!, valid!, why!]))('%s (%s): valid %s, %s', (code, kind, valid) => {
    const { form, faults } = readHullIdentification(code)
    expect(faults.length === 0 ? 'yes' : 'no').toBe(valid)
    if (valid === 'yes') expect(form).toBe(kind.slice(0, 3))
  })

  it('takes the number as it is published, with hyphens between its parts', () => {
    expect(readHullIdentification('GB-ABC00042-A3-99')).toEqual(readHullIdentification('GBABC00042A399'))
    expect(readHullIdentification('GB-ABC00042-A3-99').faults).toEqual([])
  })

  // 33 CFR 181.25 and the structure of ISO 10087.
  it('says each part in words', () => {
    expect(readHullIdentification('ABC12345D404').parts).toEqual([
      { part: 'ABC', meaning: 'builder' }, { part: '12345', meaning: 'serial number' }, { part: 'D4', meaning: 'built in April of a year ending in 4' },
      { part: '04', meaning: 'model year ending in 04' },
    ])
    expect(readHullIdentification('FR-XYZ12345L626').parts[0]).toEqual({ part: 'FR', meaning: 'country of the builder: France' })
    expect(readHullIdentification('FR-XYZ12345L626').parts[3]!.meaning).toBe('built in December of a year ending in 6')
  })
})

describe('406 MHz beacons', () => {
  const examples = referenceTable('beacon-identities')

  it.each(examples.map(row => [row['identity']!, row['protocol']!, row] as const))('%s, %s', (identity, _, { generation, country, mmsi, callsign }) => {
    const reading = readBeacon(identity)
    expect(reading.faults).toEqual([])
    expect(reading.generation).toBe(generation)
    expect(reading.countryCode).toMatchObject({ status: 'computed', output: { countryCodeNumber: Number(country) } })
    expect([reading.mmsi ?? '', reading.callSign ?? '']).toEqual([mmsi, callsign])
  })

  it.each([['aircraft', /aviation|aircraft/], ['person', /personal/], ['ship', /floats free|does not float|MMSI|maritime|call sign/]])('are told to be of: %s', (carrier, protocol) => {
    const those = examples.filter(row => protocol.test(row['protocol']!))
    expect(those.length).toBeGreaterThan(0)
    expect(those.map(({ identity }) => readBeacon(identity!).carrier)).toEqual(those.map(() => carrier))
  })

  // The digits of the coding guide, bits 44 to 63 taken out by hand: 0000 1101 0100 0001 0001 and 0111 1011 1001 0010 1001.
  it.each([['A22F03504400001', 54289], ['BBAD5EE4A400191', 506153], ['A029C2900D97591', null], ['ADCCB8E29D80001', null]])('%s carries the serial number %s', (identity, serial) => {
    expect(readBeacon(identity).serialNumber).toBe(serial)
  })
  it('say in words which of them float free', () => {
    expect(readBeacon('BBAD5EE4A400191').protocol).toMatch(/that floats free/)
    expect(readBeacon('A22E00027000000').protocol).toMatch(/does not float free/)
  })

  it.each([
    ['a029c2900d97591', /capitals/], ['A029C2900D9759', /14 digits/], ['A029C2900D9759O', /more than the digits/], ['', /0 digits/],
    ['000000000000000', /country code 0/], ['1934039823D000000000000', /fixed bits/], ['9930039823D000000000000', /fixed bits/],
  ])('%s is none', (identity, why) => {
    expect(readBeacon(identity).faults.join()).toMatch(why)
  })
})
