/** What the readings are held against: kind of item, flag, the ship's own numbers. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { readBeacon } from '../../../src/calculate/identifiers/beacon.js'
import { readCallSign } from '../../../src/calculate/identifiers/call-sign.js'
import { readHullIdentification, yearDoubts } from '../../../src/calculate/identifiers/hull-identification.js'
import type { Equipment, Identity, Setting } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { spelled } from '../../../src/references/tables/spelling.js'
import { anEquipment, aVessel } from '../../support/vessel-builder.js'

const blank = aVessel().identity
const resultsOf = (identity: Partial<Identity>, equipment: readonly Equipment[] = [], settings: readonly Setting[] = []) =>
  calculate(aVessel({ identity: { ...blank, ...identity }, equipment, settings }), bases.iso).identifiers
const idsOf = (...given: Parameters<typeof resultsOf>): readonly string[] => resultsOf(...given).findings.map(({ id, subject }) => `${id} ${subject.id}`)

const ship = { flag: 'United Kingdom', mmsi: '235000111', callSign: 'MABC2' } as const
const setting = (name: string, value: string): Setting => ({ itemTag: 'T1', name, value, menu: null, date: null, by: null, notes: null })

describe('a vessel whose numbers go together', () => {
  it('has no finding, and every identity is in order', () => {
    const { findings, identities, notAssessed } = resultsOf({ ...ship, yearBuilt: 2026, hullIdentification: 'GB-ZQX00041D626' }, [
      anEquipment({ tag: 'T1', kind: 'vhf transceiver', mmsi: '235000111' }), anEquipment({ tag: 'T2', kind: 'vhf transceiver', mmsi: '823500001' }),
      anEquipment({ tag: 'T3', kind: 'ais transceiver', mmsi: '982350001' }), anEquipment({ tag: 'P1', kind: 'safety beacon', mmsi: '970100001' }),
    ], [setting('MMSI', '235 000 111')])
    expect(findings).toEqual([])
    expect(notAssessed).toEqual([])
    expect(identities.map(({ verdict }) => verdict)).toEqual(Array(8).fill('in order'))
  })

  it('may carry numbers with other digits of the same state, or of a territory of hers', () => {
    expect(idsOf({ ...ship, mmsi: '232000111' })).toEqual([])
    expect(idsOf({ ...ship, flag: 'Isle of Man' })).toEqual([])
    expect(idsOf({ ...ship, flag: 'Gibraltar' })).toEqual([])
    expect(idsOf({ ...ship, flag: 'Ireland' })).toEqual(['IDN301 Test vessel', 'IDN302 Test vessel'])
  })
})

describe('items', () => {
  it.each([
    ['safety beacon', '235000111', ['IDN103 X']], ['safety beacon', '982350001', ['IDN103 X']], ['safety beacon', '972100001', []],
    ['vhf transceiver', '823500001', []], ['ais transceiver', '823500001', ['IDN103 X']], ['vhf transceiver', '970100001', ['IDN103 X']],
    ['vhf transceiver', '002350001', ['IDN103 X']], ['ais transceiver', '982350001', []], ['ais transceiver', '982110001', ['IDN103 X']],
    ['ais transceiver', '235000112', ['IDN104 X']], ['vhf transceiver', '235000112', ['IDN104 X']], ['display', '235000112', []], ['display', '199000112', ['IDN101 X']],
  ])('a %s with %s: %j', (kind, mmsi, expected) => {
    expect(idsOf(ship, [anEquipment({ tag: 'X', kind, mmsi })])).toEqual(expected)
  })

  it('that were removed are not there', () => {
    expect(idsOf({}, [anEquipment({ tag: 'X', kind: 'vhf transceiver', status: 'removed', mmsi: '199000112' })])).toEqual([])
  })

  it('share no number but the ship’s', () => {
    const two = (mmsi: string) => ['X', 'Y'].map(tag => anEquipment({ tag, kind: 'vhf transceiver', mmsi }))
    expect(idsOf(ship, two(ship.mmsi))).toEqual([])
    expect(idsOf(ship, two('823500001'))).toEqual(['IDN105 X'])
    expect(resultsOf({ mmsi: ship.mmsi }, two('823500001')).identities.slice(1).map(({ verdict, reasons }) => [verdict, ...reasons])).toEqual(Array(2).fill(['not in order', 'on X and Y alike']))
  })
})

describe('settings', () => {
  const radio = anEquipment({ tag: 'T1', kind: 'vhf transceiver' })
  it('that hold another MMSI are found', () => {
    expect(idsOf(ship, [radio], [setting('Own MMSI', '235000112')])).toEqual(['IDN104 T1'])
    expect(idsOf(ship, [radio], [setting('mmsi', 'not set')])).toEqual(['IDN104 T1'])
  })
  it('of groups and of others are left alone, and words', () => {
    expect(idsOf(ship, [radio], [setting('MMSI', 'see certificate')])).toEqual([])
    expect(idsOf(ship, [radio], [setting('Group MMSI', '023500001'), setting('MMSI of contact 1', '235000112'), setting('ATIS', '9235000112')])).toEqual([])
  })
  it('of a handheld are held against its own number', () => {
    expect(idsOf(ship, [{ ...radio, mmsi: '823500001' }], [setting('MMSI', '823500001')])).toEqual([])
  })
  it('are left alone where the ship has no number', () => {
    expect(idsOf({ flag: 'GB', callSign: 'MABC2' }, [radio], [setting('MMSI', '235000112')])).toEqual(['IDN201 Test vessel'])
  })
})

describe('beacons', () => {
  const beacon = (beaconIdentity: string) => [anEquipment({ tag: 'P', kind: 'safety beacon', beaconIdentity })]
  const norwegian = { flag: 'Norway', mmsi: '257506153', callSign: 'LABC2' }
  it('coded with the ship’s own number are in order', () => {
    expect(idsOf(norwegian, beacon('2024F72524FFBFF'))).toEqual([])
    expect(idsOf({ ...norwegian, mmsi: '257743921' }, beacon('A029C2900D97591'))).toEqual([])
    expect(idsOf({ flag: 'US', mmsi: '367758775' }, beacon('ADF587AA62B157AE36DC552'))).toEqual([])
  })
  it('coded for another ship are found once', () => {
    expect(idsOf(ship, beacon('2024F72524FFBFF'))).toEqual(['IDN109 P'])
    expect(idsOf(ship, beacon('9B7B2059560E9D1'))).toEqual(['IDN109 P'])
  })
  it('of another country are doubtful, unless a person owns them', () => {
    expect(idsOf(ship, beacon('A22E00027000000'))).toEqual(['IDN304 P'])
    expect(idsOf(ship, beacon('A22F03504400001'))).toEqual([])
    expect(idsOf({ flag: 'Russia' }, beacon('A22E00027000000'))).toEqual([])
    expect(idsOf({}, beacon('A22E00027000000'))).toEqual([])
  })
  it('of an aircraft or for tests are doubtful', () => {
    expect(idsOf(ship, beacon('A786492E70174C1'))).toEqual(['IDN305 P'])
    expect(idsOf(ship, beacon('9C7F4B013595551'))).toEqual(['IDN305 P'])
  })
  it('never break the reading, whatever is written', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[0-9A-F]{15}$/), fc.stringMatching(/^[0-9A-F]{23}$/)), written => {
      const { faults, mmsi } = readBeacon(written)
      expect(Array.isArray(faults)).toBe(true)
      if (faults.length === 0 && mmsi !== null) expect(mmsi).toMatch(/^\d{9}$/)
    }))
  })
})

// ITU Radio Regulations 19.50 and 19.55, from memory, with forms that ship stations are known to have.
describe('call signs', () => {
  it.each(['MABC', 'MABC2', '2ABC3', '9HA4567', '3EJH2', 'WDE2345', 'OZ2345', 'C6AB2', 'VLW5678'])('%s has the form of one', callSign => {
    expect(readCallSign(callSign).form).not.toBeNull()
  })
  it.each(['', 'M', 'MAB', 'FX12', 'MABC0', 'MABC1', 'MABCD', '22AB', 'mabc', 'MAB C', 'WDE0345', 'MABC23', 'OZ12345'])('%s has not', callSign => {
    expect(readCallSign(callSign).form).toBeNull()
  })
  it('are of the flag where the series is known', () => {
    expect(readCallSign('2ABC3').country).toBe('GB')
    expect(readCallSign('9HA4567').country).toBe('MT')
  })
})

describe('years in the hull identification', () => {
  it.each([
    [4, 4, null, 0], [4, 5, null, 0], [9, 0, null, 0], [4, 6, null, 1], [3, 99, null, 1], [6, 26, 2026, 0], [6, 27, 2026, 0], [6, 26, 2025, 1], [6, 16, 2026, 1], [9, 0, 2099, 0],
  ])('production in a year ending in %i, model year %i, built %s: %i doubts', (lastDigit, modelYear, yearBuilt, doubts) => {
    expect(yearDoubts({ lastDigit, modelYear }, yearBuilt)).toHaveLength(doubts)
  })
  it('are not read in numbers from before 1984', () => {
    const { findings, identities, notAssessed } = resultsOf({ yearBuilt: 1979, hullIdentification: 'ABC1234ID404' })
    expect(findings).toEqual([])
    expect(identities.map(({ verdict }) => verdict)).toEqual(['not assessed'])
    expect(notAssessed).toHaveLength(1)
  })
  it('lets I, O and Q stand where 33 CFR 181.25 does not hold', () => {
    expect(readHullIdentification('FR-XYZ1234IL626').faults).toEqual([])
    expect(readHullIdentification('US-XYZ1234IL626').faults).toHaveLength(1)
  })
})

describe('what is missing', () => {
  it('is said once for all radios and once for all beacons', () => {
    const items = [...['T1', 'T2'].map(tag => anEquipment({ tag, kind: 'vhf transceiver' })), ...['P1', 'P2'].map(tag => anEquipment({ tag, kind: 'safety beacon' }))]
    expect(resultsOf({}, items).findings.map(({ message }) => message)).toEqual([
      'Test vessel has T1 and T2, but no MMSI and no call sign is recorded', 'P1 and P2: no identity recorded',
    ])
  })
  it('is the identity of a beacon that has only the number of its AIS transmitter', () => {
    expect(idsOf({}, [anEquipment({ tag: 'P', kind: 'safety beacon', mmsi: '974100001' })])).toEqual(['IDN202 P'])
    expect(idsOf({}, [anEquipment({ tag: 'P', kind: 'safety beacon', mmsi: '970100001' })])).toEqual([])
  })
  it('of the year of build, and of the number that is set in a radio, is said', () => {
    const reasons = (...given: Parameters<typeof resultsOf>) => resultsOf(...given).notAssessed.map(({ subjectTag, reason }) => `${subjectTag}: ${reason}`)
    expect(reasons({ ...ship, hullIdentification: 'GB-ZQX00041D626' })).toEqual(['Test vessel: whether the years of the hull identification are hers: the year of build is not recorded'])
    const radios = [anEquipment({ tag: 'T1', kind: 'vhf transceiver' }), anEquipment({ tag: 'T2', kind: 'ais transceiver' }), anEquipment({ tag: 'T3', kind: 'vhf transceiver', mmsi: '823500001' })]
    const open = (tag: string) => `${tag}: whether it sends her MMSI: the one that is set in it is not recorded`
    expect(reasons(ship, radios)).toEqual([open('T1'), open('T2')])
    expect(reasons(ship, radios, [setting('MMSI', ship.mmsi)])).toEqual([open('T2')])
    expect(reasons({ ...ship, mmsi: null }, radios)).toEqual([])
  })
  it('of the flag leaves MMSI and call sign without a verdict on it', () => {
    expect(resultsOf({ ...ship, flag: null }).notAssessed).toHaveLength(1)
    expect(resultsOf({ ...ship, flag: 'Atlantis' }).notAssessed[0]!.reason).toContain('Atlantis')
    expect(resultsOf({ flag: 'GB', mmsi: '290000111' }).notAssessed[0]!.reason).toContain('290')
    expect(resultsOf({ flag: 'Chad', callSign: 'TTAB2' }).notAssessed[0]!.reason).toContain('Chad')
    expect(resultsOf({}).notAssessed).toEqual([])
  })
})

// ITU Radio Regulations, appendix 14.
it('spells letters by the words of the ITU', () => {
  expect(spelled('Oz 9').join(' ')).toBe('Oscar Zulu nine')
  expect(spelled('ABCDEFGHIJKLMNOPQRSTUVWXYZ').join(' ')).toBe(
    'Alfa Bravo Charlie Delta Echo Foxtrot Golf Hotel India Juliett Kilo Lima Mike November Oscar Papa Quebec Romeo Sierra Tango Uniform Victor Whiskey X-ray Yankee Zulu')
})
