import fc from 'fast-check'
import { evaluate } from 'mathjs'
import { describe, expect, it, test } from 'vitest'
import { awgSizes } from '../../src/references/tables/astm-b258-awg.js'
import { say, sayAgainst, sayAgainstBoth, sayBoth, sayForWorking, saySize, saySizeBoth } from '../../src/units/format.js'
import { unitEndings, unitOf } from '../../src/units/quantity.js'
import { awg, mm2 } from '../support/vessel-builder.js'

/** With ordinary spaces, so that expectations can be read. */
const plain = (printed: string): string => printed.replaceAll('\u00A0', ' ')

test('number and unit stay on one line', () => {
  expect(say('routeLengthM', 6.4)).toBe('6.40\u00A0m')
})

describe('say', () => {
  it.each([
    ['routeLengthM', 6.4, 'metric', '6.40 m'],
    ['routeLengthM', 6.4008, 'us', '21.0 ft'],
    ['boreMm', 32, 'us', '1.26 in'],
    ['massKg', 2, 'us', '4.4 lb'],
    ['ambientC', 30, 'us', '86 °F'],
    ['conductorLengthFt', 21, 'metric', '6.40 m'],
    ['crossSectionMm2', 2.0809, 'us', '4107 cmil'],
    ['conductorAreaCmil', 211600, 'metric', '107.22 mm²'],
    ['voltageDropV', 0.3649, 'metric', '0.36 V'],
    ['voltageDropPercent', 8.21, 'us', '8.2 %'],
    ['bundleFactor', 0.6, 'metric', '0.600'],
    ['nominalVoltageV', 12, 'metric', '12 V'],
    ['ratedCurrentA', 7.5, 'metric', '7.5 A'],
    ['ratedCurrentA', 100, 'metric', '100 A'],
    ['currentA', 10, 'metric', '10.0 A'],
    ['currentA', 0, 'metric', '0.0 A'],
    ['currentA', -0.01, 'metric', '-0.01 A'],
    ['currentA', 0.0031, 'metric', '0.0031 A'],
  ] as const)('%s %d in %s', (name, value, units, printed) => {
    expect(plain(say(name, value, { units }))).toBe(printed)
  })
  it('has no word for a name without a unit', () => {
    expect(() => say('length', 6)).toThrow('length')
  })
})

test('the other system stands in brackets, where it has another unit', () => {
  expect(plain(sayBoth('routeLengthM', 6.4))).toBe('6.40 m (21.0 ft)')
  expect(plain(sayBoth('routeLengthM', 6.4, { units: 'us' }))).toBe('21.0 ft (6.40 m)')
  expect(plain(sayBoth('currentA', 6.4))).toBe('6.4 A')
})

describe('sayAgainst', () => {
  it('adds digits until the two differ', () => {
    const { actual, limit } = sayAgainst('voltageDropPercent', 3.0004, 3)
    expect([plain(actual), plain(limit)]).toEqual(['3.0004 %', '3.0000 %'])
  })
  it('does so after conversion', () => {
    const { actual, limit } = sayAgainst('routeLengthM', 6.41, 6.4, { units: 'us' })
    expect([plain(actual), plain(limit)]).toEqual(['21.03 ft', '21.00 ft'])
  })
  it('takes no difference in the last binary digits for one', () => {
    expect(sayAgainst('currentA', 0.1 + 0.2, 0.3)).toEqual({ actual: '0.3\u00A0A', limit: '0.3\u00A0A' })
  })
  it('never prints two different values alike', () => {
    fc.assert(fc.property(fc.double({ min: 0.01, max: 5000, noNaN: true }), fc.double({ min: 1e-8, max: 0.5, noNaN: true }), (limitValue, excess) => {
      const value = limitValue * (1 + excess)
      const { actual, limit } = sayAgainst('currentA', value, limitValue)
      expect(actual).not.toBe(limit)
      expect(Number.parseFloat(actual)).toBeGreaterThan(Number.parseFloat(limit))
    }))
  })
})

test('a sum redone from the printed inputs gives the printed result', () => {
  // mathjs does the sum: voltage drop by the ISO constant
  const number = (printed: string): number => Number.parseFloat(printed)
  const positive = (max: number) => fc.double({ min: 0.05, max, noNaN: true })
  fc.assert(fc.property(positive(300), positive(60), positive(150), (currentA, conductorLengthM, crossSectionMm2) => {
    const printed = {
      I: number(sayForWorking('currentA', currentA)), L: number(sayForWorking('conductorLengthM', conductorLengthM)), S: number(sayForWorking('crossSectionMm2', crossSectionMm2)),
    }
    const result = number(sayForWorking('voltageDropV', (0.0164 * currentA * conductorLengthM) / crossSectionMm2, 'result'))
    const redone = Number(evaluate('0.0164 * I * L / S', printed))
    // In units of the last of four digits: 0.5 from rounding the result, and at most 0.15 from three inputs that are each
    // rounded to six digits (5e-6 of their value, of up to 9999 such units).
    expect(Math.abs(redone - result)).toBeLessThanOrEqual(0.66 * 10 ** (Math.floor(Math.log10(result)) - 3))
  }))
})

test('a working prints inputs with six significant digits and results with four, without idle zeros', () => {
  expect(plain(sayForWorking('conductorLengthM', 6.553200001))).toBe('6.5532 m')
  expect(plain(sayForWorking('voltageDropV', 0.38485333, 'result'))).toBe('0.3849 V')
  expect(plain(sayForWorking('bundleFactor', 0.6))).toBe('0.6')
})

describe('conductor sizes', () => {
  it('print by designation', () => {
    expect(plain(saySize(mm2(2.5)))).toBe('2.5 mm²')
    expect(plain(saySize(awg('2/0')))).toBe('2/0 AWG')
  })
  // Areas by ASTM B258: 14 AWG 2.0809, 12 AWG 3.3088, 24 AWG 0.2047, 4/0 107.22 mm²
  it('print with the other system', () => {
    expect(plain(saySizeBoth(awg('14')))).toBe('14 AWG (2.08 mm²)')
    expect(plain(saySizeBoth(mm2(2.5)))).toBe('2.5 mm² (between 14 and 12 AWG)')
    expect(plain(saySizeBoth(mm2(0.14)))).toBe('0.14 mm² (thinner than 24 AWG)')
    expect(plain(saySizeBoth(mm2(150)))).toBe('150 mm² (thicker than 4/0 AWG)')
    expect(awgSizes).toHaveLength(18)
  })
})

test('every unit ending is found by itself, and by the name of a quantity that ends in it', () => {
  for (const { ending } of unitEndings) expect(unitOf(`some${ending}`)?.ending).toBe(ending)
  expect(unitOf('length')).toBeNull()
})

test('halves are rounded up as they are written, whatever their binary', () => {
  expect(['currentA', 'currentA', 'currentA', 'voltageV'].map((name, i) => plain(say(name, [0.35, 45.55, -0.35, 1.005][i]!)))).toEqual(['0.4 A', '45.6 A', '-0.4 A', '1.01 V'])
  expect(plain(say('currentA', 1e-7))).toBe('0.0000001 A')
})

it('says a value and its limit in both systems', () => {
  // 9 in and 7 in: the inch is 25.4 mm.
  expect(sayAgainstBoth('distanceMm', 228.6, 177.8)).toEqual({ actual: '228.6\u00A0mm (9.00\u00A0in)', limit: '177.8\u00A0mm (7.00\u00A0in)' })
})
