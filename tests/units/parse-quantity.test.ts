import fc from 'fast-check'
import { unit } from 'mathjs'
import { describe, expect, it, test } from 'vitest'
import { type Dimension, parseQuantity, quantityPattern } from '../../src/units/parse-quantity.js'

/** Every spelling beside the same unit in mathjs, a general-purpose library with unit conversion. */
const spellings: readonly (readonly [Dimension, spelling: string, mathjsUnit: string, modelUnit: string])[] = [
  ['length', 'm', 'm', 'm'], ['length', 'cm', 'cm', 'm'], ['length', 'mm', 'mm', 'm'], ['length', 'ft', 'ft', 'm'], ['length', 'in', 'in', 'm'],
  ['coordinate', 'm', 'm', 'm'], ['coordinate', 'ft', 'ft', 'm'],
  ['diameter', 'mm', 'mm', 'mm'], ['diameter', 'cm', 'cm', 'mm'], ['diameter', 'in', 'in', 'mm'],
  ['current', 'A', 'A', 'A'], ['current', 'mA', 'mA', 'A'],
  ['voltage', 'V', 'V', 'V'], ['voltage', 'mV', 'mV', 'V'],
  ['power', 'W', 'W', 'W'], ['power', 'kW', 'kW', 'W'],
  ['charge', 'Ah', 'A hour', 'A hour'],
  ['energy', 'Wh', 'W hour', 'W hour'], ['energy', 'kWh', 'kW hour', 'W hour'],
  ['mass', 'kg', 'kg', 'kg'], ['mass', 'g', 'g', 'kg'], ['mass', 't', 'tonne', 'kg'], ['mass', 'lb', 'lbm', 'kg'],
  ['temperature', '°C', 'degC', 'degC'], ['temperature', 'C', 'degC', 'degC'], ['temperature', '°F', 'degF', 'degC'], ['temperature', 'F', 'degF', 'degC'],
  ['resistance', 'ohm', 'ohm', 'ohm'], ['resistance', 'Ω', 'ohm', 'ohm'], ['resistance', 'mohm', 'mohm', 'ohm'], ['resistance', 'mΩ', 'mohm', 'ohm'],
  ['resistance', 'kohm', 'kohm', 'ohm'],
  ['data rate', 'Mbit/s', 'Mb/s', 'Mb/s'], ['data rate', 'kbit/s', 'kb/s', 'Mb/s'], ['data rate', 'Gbit/s', 'Gb/s', 'Mb/s'],
]

describe.each(spellings)('a %s in %s', (dimension, spelling, mathjsUnit, modelUnit) => {
  it('converts as mathjs does', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 10_000_000 }), fc.boolean(), (thousandths, spaced) => {
      const number = thousandths / 1000
      const parsed = parseQuantity(`${number}${spaced ? ' ' : ''}${spelling}`, dimension)
      const expected = unit(number, mathjsUnit).toNumber(modelUnit)
      expect(parsed.ok).toBe(true)
      if (parsed.ok) expect(parsed.value).toBeCloseTo(expected, 6)
    }), { numRuns: 50 })
  })
})

test('feet and inches are added', () => {
  // mathjs: 21 ft + 6 in
  expect(parseQuantity('21 ft 6 in', 'length')).toEqual({ ok: true, value: expect.closeTo(unit('21 ft').to('m').toNumber('m') + unit('6 in').toNumber('m'), 12) })
  expect(parseQuantity('-1 ft 6 in', 'coordinate')).toEqual({ ok: true, value: expect.closeTo(-0.4572, 12) })
})

describe('conductor sizes', () => {
  it('keeps a metric size by its number', () => {
    for (const written of ['2.5 mm2', '2.5 mm²', '2.50mm2']) {
      expect(parseQuantity(written, 'conductor size')).toEqual({ ok: true, value: { system: 'mm2', designation: '2.5', crossSectionMm2: 2.5 } })
    }
  })
  it('keeps a gauge by its designation, with its area by ASTM B258', () => {
    const areas = { '14 AWG': ['14', 2.0809], 'AWG 14': ['14', 2.0809], '2/0 AWG': ['2/0', 67.431], '00 AWG': ['2/0', 67.431], '0 AWG': ['1/0', 53.475] } as const
    for (const [written, [designation, mm2]] of Object.entries(areas)) {
      expect(parseQuantity(written, 'conductor size')).toEqual({ ok: true, value: { system: 'awg', designation, crossSectionMm2: expect.closeTo(mm2, 3) } })
    }
  })
  it.each(['30 AWG', '5/0 AWG', '0 mm2', '2.5', '14', '14 awg', '2.5 mm'])('refuses %s', written => {
    expect(parseQuantity(written, 'conductor size').ok).toBe(false)
  })
})

describe('what it refuses', () => {
  it('a bare number, naming the units with an example', () => {
    expect(parseQuantity('6.4', 'length')).toEqual({ ok: false, expected: 'a length with its unit (m, cm, mm, ft or in), for example "6.4 m"' })
    expect(parseQuantity('10', 'percent')).toEqual({ ok: false, expected: 'a percentage with its unit (%), for example "80 %"' })
  })
  it('a decimal comma, with the mended text', () => {
    expect(parseQuantity('6,4 m', 'length')).toEqual({ ok: false, expected: 'a decimal point: "6.4 m"' })
    expect(parseQuantity('2,5 mm2', 'conductor size')).toEqual({ ok: false, expected: 'a decimal point: "2.5 mm2"' })
    expect(parseQuantity('2,5', 'conductor size')).toEqual({ ok: false, expected: 'a decimal point: "2.5" and the unit after it' })
    expect(parseQuantity('1,200 W', 'power')).toEqual({ ok: false, expected: 'a decimal point, and nothing between thousands: "1200 W" or "1.200 W"' })
  })
  it.each([
    ['6 M', 'length'], ['-3 m', 'length'], ['21 ft 12 in', 'length'], ['6 m 4', 'length'], ['1e3 m', 'length'], ['m', 'length'], ['', 'length'],
    ['10 a', 'current'], ['5 MA', 'current'], ['-5 A', 'current'], ['10 m', 'current'], [`${'9'.repeat(400)} A`, 'current'],
  ] as const)('%s as a %s', (written, dimension) => {
    expect(parseQuantity(written, dimension).ok).toBe(false)
  })
})

test('a negative temperature is a temperature, with either minus sign', () => {
  expect(parseQuantity('-5 °C', 'temperature')).toEqual({ ok: true, value: -5 })
  expect(parseQuantity('−5 °C', 'temperature')).toEqual({ ok: true, value: -5 })
})

test('what is read matches the pattern given to editors', () => {
  fc.assert(fc.property(fc.constantFrom(...spellings), fc.string({ maxLength: 6 }), ([dimension, spelling], before) => {
    const written = `${before} ${spelling}`
    if (parseQuantity(written, dimension).ok) expect(written).toMatch(quantityPattern(dimension))
  }))
  // JSON Schema takes the source of the pattern alone, and validators compile it with or without the Unicode flag.
  for (const [dimension] of spellings) {
    expect(quantityPattern(dimension).flags).toBe('')
    expect(new RegExp(quantityPattern(dimension).source, 'u').source).toBe(quantityPattern(dimension).source)
  }
})
