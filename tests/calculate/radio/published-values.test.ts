/** Tables and sums of this domain against values from outside; each says where they were read. */
import { complex, divide, multiply, add, tanh, abs, subtract } from 'mathjs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { attenuationByRoot } from '../../../src/calculate/radio/attenuation-by-root.calc.js'
import { attenuationBetweenPoints } from '../../../src/calculate/radio/attenuation-between-points.calc.js'
import { attenuationOf } from '../../../src/calculate/radio/attenuation.js'
import { cableLoss } from '../../../src/calculate/radio/cable-loss.calc.js'
import { powerAtAntenna } from '../../../src/calculate/radio/power-at-antenna.calc.js'
import { standingWaveAtAntenna } from '../../../src/calculate/radio/standing-wave-at-antenna.calc.js'
import { standingWaveBehindCable } from '../../../src/calculate/radio/standing-wave-behind-cable.calc.js'
import { coaxKinds, lossDbPer100FtByKind } from '../../../src/references/tables/coax-attenuation.js'
import { exposureLimits, exposureLimitsAt } from '../../../src/references/tables/exposure-limits.js'
import { referenceTable } from '../../support/reference-table.js'

// Two published tables at 150 MHz; the columns at 160 MHz are derived from them outside this program.
describe('attenuation of coaxial cables', () => {
  const keyOf = (type: string) => coaxKinds.find(key => key === type.toLowerCase().replace(/\/u$| c\/u$/, ''))!
  it.each(referenceTable('rf-coax-attenuation'))('$type', row => {
    const kind = keyOf(row['type']!)
    expect(lossDbPer100FtByKind[kind]).toBe(Number(row['dB_per_100ft_150MHz']))
    const attenuation = attenuationOf({ kind, attenuation: [] }, 160)
    const value = attenuation.status === 'computed' ? attenuation.output.attenuationDbPer100M : NaN
    expect(value).toBeCloseTo(Number(row['dB_per_100m_160MHz_sqrt_f']), 1)
    for (const lengthM of [10, 20]) {
      const { lossDb } = cableLoss({ attenuationDbPer100M: value, cableLengthM: lengthM, connectorCount: 0, perConnectorDb: 0.25 })
      expect(lossDb).toBeCloseTo(Number(row[`loss_${lengthM}m_dB`]), 2)
      expect(powerAtAntenna({ powerW: 25, lossDb }).antennaPowerW).toBeCloseTo(Number(row[`W_out_of_25W_${lengthM}m`]), 1)
    }
  })
  it('knows each kind of the tables', () => {
    expect(referenceTable('rf-coax-attenuation').map(row => keyOf(row['type']!)).toSorted()).toEqual([...coaxKinds].toSorted())
  })
  // k1 √f + k2 f, dB/100 ft, from memory: not the only check of these rows.
  it.each([['low-loss 10 mm', 0.12229, 0.00026], ['low-loss 6 mm', 0.24208, 0.00033]] as const)('%s is near its curve of two terms', (kind, k1, k2) => {
    for (const frequencyMHz of [100, 160, 220]) {
      const curve = (k1 * Math.sqrt(frequencyMHz) + k2 * frequencyMHz) / 0.3048
      const { attenuationDbPer100M } = attenuationByRoot({ statedAttenuationDbPer100M: lossDbPer100FtByKind[kind] / 0.3048, statedFrequencyMHz: 150, frequencyMHz })
      expect(Math.abs(attenuationDbPer100M / curve - 1)).toBeLessThan(0.06)
    }
  })
})

describe('a maker’s attenuation', () => {
  const coax = { kind: null, attenuation: [{ frequencyMHz: 100, lossDbPer100M: 10 }, { frequencyMHz: 400, lossDbPer100M: 20 }] }
  it('holds at the frequency at which it is stated, before the table', () => {
    expect(attenuationOf({ ...coax, kind: 'rg-58' }, 400)).toEqual({ status: 'stated', attenuationDbPer100M: 20 })
  })
  // √225 = 15 is half way between √100 and √400.
  it('goes in a straight line over the root of the frequency between', () => {
    expect(attenuationOf(coax, 225)).toMatchObject({ status: 'computed', output: { attenuationDbPer100M: 15 } })
  })
  it('says nothing outside, and of one value alone goes by the root', () => {
    expect(attenuationOf(coax, 450)).toMatchObject({ status: 'not computed', reason: expect.stringContaining('from 100.000\u00A0MHz to 400.000\u00A0MHz') })
    const one = { kind: null, attenuation: [{ frequencyMHz: 100, lossDbPer100M: 10 }] }
    expect(attenuationOf(one, 400)).toMatchObject({ output: { attenuationDbPer100M: 20 } })
    expect(attenuationOf(one, 900).status).toBe('not computed')
    expect(attenuationOf(null, 150).status).toBe('not computed')
    expect(attenuationOf({ kind: 'unheard of', attenuation: [] }, 150).status).toBe('not computed')
  })
  it('stays between its two values', () => {
    fc.assert(fc.property(fc.double({ min: 1, max: 50, noNaN: true }), fc.double({ min: 0.1, max: 50, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (low, more, share) => {
      const { attenuationDbPer100M } = attenuationBetweenPoints({ lowerFrequencyMHz: 100, lowerAttenuationDbPer100M: low, upperFrequencyMHz: 400, upperAttenuationDbPer100M: low + more, frequencyMHz: 100 + 300 * share })
      expect(attenuationDbPer100M).toBeGreaterThanOrEqual(low - 1e-9)
      expect(attenuationDbPer100M).toBeLessThanOrEqual(low + more + 1e-9)
    }))
  })
})

// 47 CFR 1.1310 in a reprint; ICNIRP local in a reprint, whole body from memory.
describe('limits of exposure', () => {
  const titles: Readonly<Record<string, string>> = { 'FCC 47 CFR 1.1310': '47 CFR 1.1310', 'ICNIRP 2020 whole body': 'ICNIRP 2020, whole body', 'ICNIRP 2020 local': 'ICNIRP 2020, local' }
  const rows = referenceTable('rf-exposure-limits')
  const expectedAt = (formula: string, f: number): number => {
    const [, divisor] = /^f\/(\d+)$/.exec(formula) ?? []
    const [, factor, power] = /^(\d+)\*fGHz\^(-[\d.]+)$/.exec(formula) ?? []
    return divisor !== undefined ? f / Number(divisor) : factor !== undefined ? Number(factor) * (f / 1000) ** Number(power) : Number(formula)
  }
  it.each(rows)('$body, $class, from $f_from_MHz MHz', row => {
    const [from, to] = [Number(row['f_from_MHz']), Number(row['f_to_MHz'])]
    const found = exposureLimits.filter(({ title, people, fromMHz, toMHz }) => title === titles[row['body']!] && people === row['class'] && fromMHz === from && toMHz === to)
    expect(found).toHaveLength(1)
    for (const f of [from, (from + to) / 2, to]) expect(found[0]!.limitWPerM2(f)).toBeCloseTo(expectedAt(row['power_density_W_m2']!, f), 9)
    expect(found[0]!.averaging).toBe(`${row['averaging_min']} min`)
  })
  it('has no row that the tables have not', () => expect(exposureLimits).toHaveLength(rows.length))
  it('gives one limit a body and class at each frequency, at a border as well', () => {
    for (const f of [156.8, 300, 1500, 6000, 9410]) {
      const keys = exposureLimitsAt(f).map(({ title, people }) => `${title} ${people}`)
      expect(keys).toEqual([...new Set(keys)])
    }
    // 55 · 9.41^−0.177 and 275 · 9.41^−0.177
    const local = exposureLimitsAt(9410).filter(({ title }) => title === 'ICNIRP 2020, local').map(({ limitWPerM2 }) => limitWPerM2(9410))
    expect(local.map(value => Math.round(value * 10) / 10)).toEqual([37, 184.9])
    expect(exposureLimitsAt(10)).toEqual([])
  })
})

/**
 * The whole line: input impedance of a lossy line with complex numbers of a general-purpose library,
 * Z = Z_0 (Z_L + Z_0 tanh γl)/(Z_0 + Z_L tanh γl), and the standing wave ratio that follows from it.
 */
describe('standing waves behind a cable, by line theory with mathjs', () => {
  const readBehind = (antennaVswr: number, lossDb: number, phase: number): number => {
    const gammaLength = complex(lossDb * (Math.LN10 / 20), phase)
    const t = tanh(gammaLength)
    const [z0, load] = [complex(50, 0), complex(50 * antennaVswr, 0)]
    const input = multiply(z0, divide(add(load, multiply(z0, t)), add(z0, multiply(load, t))))
    const reflection = Number(abs(divide(subtract(input, z0), add(input, z0)) as never))
    return (1 + reflection) / (1 - reflection)
  }
  const cases = [fc.double({ min: 1.05, max: 20, noNaN: true }), fc.double({ min: 0, max: 6, noNaN: true }), fc.double({ min: 0, max: 3, noNaN: true })] as const
  it('reads what the line gives at its near end, whatever its length in waves', () => {
    fc.assert(fc.property(...cases, (antennaVswrFactor, lossDb, phase) => {
      const expected = readBehind(antennaVswrFactor, lossDb, phase)
      expect(Math.abs(standingWaveBehindCable({ antennaVswrFactor, lossDb }).readVswrFactor / expected - 1)).toBeLessThan(1e-6)
    }))
  })
  it('reckons it back to the antenna', () => {
    fc.assert(fc.property(...cases, (antennaVswrFactor, lossDb, phase) => {
      const readVswrFactor = readBehind(antennaVswrFactor, lossDb, phase)
      expect(Math.abs(standingWaveAtAntenna({ readVswrFactor, lossDb }).antennaVswrFactor / antennaVswrFactor - 1)).toBeLessThan(1e-4)
    }))
  })
})
