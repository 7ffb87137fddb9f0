import { describe, expect, it } from 'vitest'
import { conductorSizePass } from '../../../src/calculate/conductors/conductor-size.pass.js'
import { currentCarryingCapacityPass } from '../../../src/calculate/conductors/current-carrying-capacity.pass.js'
import { voltageDropPass } from '../../../src/calculate/conductors/voltage-drop.pass.js'
import type { BasisId, CableType, Circuit, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aFeeding, aRouting, type GivenFeed, type GivenRun } from '../../support/results-builder.js'
import { aCable, aCableType, aCircuit, aPanel, aProtection, aVessel, awg, aZone, mm2 } from '../../support/vessel-builder.js'

interface Given {
  readonly basis?: BasisId
  readonly vessel?: Partial<Vessel>
  readonly final?: Partial<Circuit>
  readonly currentA?: number
  readonly runs?: Readonly<Record<string, GivenRun>>
  readonly loadedConductors?: Readonly<Record<string, number>>
  readonly feeds?: Readonly<Record<string, GivenFeed>>
}
/** Battery G1, fuse Q1, 4 m of 35 mm² (W2) to panel A1; W112 of no recorded size from way A1.7 to P1. */
function advised({ basis = 'iso', vessel: given, final, currentA = 5, runs, loadedConductors, feeds }: Given = {}) {
  const vessel = aVessel({
    zones: [aZone({ tag: 'Z1' })],
    panels: [aPanel({ tag: 'A1' })],
    cableTypes: [aCableType({ tag: 'T35', size: mm2(35) }), aCableType({ tag: 'T2', size: null })],
    cables: [aCable({ tag: 'W2', from: 'Q1', to: 'A1', typeTag: 'T35' }), aCable({ tag: 'W112', from: 'A1.7', to: 'P1', typeTag: 'T2' })],
    circuits: [
      aCircuit({ tag: 'Q1', fedFromTag: 'G1', loadTags: ['A1'] }),
      aCircuit({ tag: 'A1.7', fedFromTag: 'A1', loadTags: ['P1'], loadClass: 'critical', ...final }),
    ],
    ...given,
  })
  const routing = aRouting({ W2: { lengthM: 4 }, W112: { lengthM: 6.4 }, ...runs }, loadedConductors)
  const feeding = aFeeding({
    Q1: { chain: ['Q1'], designCurrentA: currentA, out: [`W2 Q1 A1 ${currentA}`] },
    'A1.7': { chain: ['Q1', 'A1.7'], designCurrentA: currentA, out: [`W112 A1.7 P1 ${currentA}`] },
    ...feeds,
  })
  const capacity = currentCarryingCapacityPass(vessel, bases[basis], routing, feeding)
  const drop = voltageDropPass(vessel, bases[basis], routing, feeding, capacity)
  return conductorSizePass(vessel, bases[basis], routing, feeding, drop).byCircuit
}
const advice = (given?: Given) => {
  const result = advised(given).get('A1.7')!
  if (result.status === 'not computed') throw new Error(result.reason)
  return result
}
const reason = (given: Given) => {
  const result = advised(given).get('A1.7')!
  return result.status === 'not computed' ? result.reason : result
}

describe('the smallest size', () => {
  it('keeps to the drop that the feeder leaves', () => {
    // By hand: feeder 0.0164 · 5 · 8 / 35 = 0.0187429 V; left 0.36 − 0.0187429 = 0.3412571 V;
    // 0.0164 · 5 · 12.8 / 0.3412571 = 3.0757 mm² → 4 mm² and 12 AWG would do by the constant. By resistance the feeder takes
    // 5 · 8 · 0.565 · 1.0395 / 1000 = 0.0235 V, which leaves 0.3365 V, and 4 mm² at 30 + 75 · (5/45)² = 30.9 °C loses
    // 5 · 12.8 · 5.09 · 1.0429 / 1000 = 0.3398 V, 12 AWG 5 · 12.8 · 5.2108 · 1.0453 / 1000 = 0.3486 V: too much; 6 mm² 0.226 V.
    const { input, mm2: metric, awg } = advice()
    expect(input).toMatchObject({ designCurrentA: 5, requiredCapacityA: 5, conductorLengthM: 12.8, allowedDropV: expect.closeTo(0.3412571, 6), insulationC: 105, ambientFactor: 1, bundleFactor: 1 })
    // Table A.1, from memory: 6 mm² 60 A; 10 AWG (5.26 mm²) enters at 4 mm², 45 A
    expect(metric).toEqual({ designation: '6', byDropMm2: expect.closeTo(3.0757, 4), capacityA: 60, governedBy: 'voltage drop by resistance' })
    expect(awg).toMatchObject({ designation: '10', capacityA: 45, governedBy: 'voltage drop by resistance' })
  })
  it('is that of its own cables: one that it shares counts with what all circuits lose in it', () => {
    // By hand: W5, 2 m of 35 mm², carries 5 A and 20 A: 0.0164 · 25 · 4 / 35 = 0.0468571 V; left 0.36 − 0.0187429 − 0.0468571 = 0.2944 V
    // for 12.8 m of conductor, W5 left out.
    const shared: Given = {
      vessel: {
        cableTypes: [aCableType({ tag: 'T35', size: mm2(35) }), aCableType({ tag: 'T2', size: mm2(2.5) })],
        cables: [aCable({ tag: 'W2', from: 'Q1', to: 'A1', typeTag: 'T35' }), aCable({ tag: 'W5', from: 'A1', to: 'J1', typeTag: 'T35' }), aCable({ tag: 'W112', from: 'A1.7', to: 'P1', typeTag: 'T2' })],
        circuits: [
          aCircuit({ tag: 'Q1', fedFromTag: 'G1', loadTags: ['A1'] }), aCircuit({ tag: 'A1.7', fedFromTag: 'A1', loadTags: ['P1'], loadClass: 'critical' }),
          aCircuit({ tag: 'A1.8', fedFromTag: 'A1', loadTags: ['P2'] }),
        ],
      },
      runs: { W5: { lengthM: 2 } },
      feeds: {
        'A1.7': { chain: ['Q1', 'A1.7'], designCurrentA: 5, supply: ['W5 A1 J1 5'], out: ['W112 A1.7 P1 5'] },
        'A1.8': { chain: ['Q1', 'A1.8'], designCurrentA: 20, supply: ['W5 A1 J1 20'], out: [] },
      },
    }
    expect(advice(shared).input).toMatchObject({ conductorLengthM: 12.8, allowedDropV: expect.closeTo(0.2944, 6) })
  })
  it('would be one size less without the feeder', () => {
    // By hand: 4 mm² loses 5 · 5.3086 / 1000 V a metre (5.09 · 1.0429 Ω/km): 0.36 V allow 13.56 m of conductor, 6.78 m one way;
    // the 0.3365 V that the feeder leaves allow 12.68 m, 6.34 m one way.
    expect(advice({ runs: { W112: { lengthM: 6.3 } } }).mm2?.designation).toBe('4')
    expect(advice({ runs: { W112: { lengthM: 6.5 } } }).mm2?.designation).toBe('6')
  })
  it('carries the design current', () => {
    // Table A.1, 105 °C, from memory: 2.5 mm² 35 A, 4 mm² 45 A; at 0.5 m and 10 % the drop asks for
    // 0.0164 · 40 · 1 / (1.2 − 0.15) = 0.62 mm²
    expect(advice({ currentA: 40, final: { loadClass: 'general' }, runs: { W112: { lengthM: 0.5 } } }).mm2)
      .toMatchObject({ designation: '4', capacityA: 45, governedBy: 'current-carrying capacity' })
  })
  it('carries the rating of the protective device too', () => {
    const { mm2: metric, input } = advice({ final: { loadClass: 'general', protection: aProtection('blade fuse', 40) }, runs: { W112: { lengthM: 0.5 } } })
    expect(input.requiredCapacityA).toBe(40)
    expect(metric?.designation).toBe('4')
  })
  it('is never below the smallest that the basis allows', () => {
    // ISO 10133 7.7: 0.75 mm² in a sheath, 1 mm² separate
    const short: Given = { currentA: 1, runs: { W112: { lengthM: 0.5 } } }
    expect(advice(short).mm2).toMatchObject({ designation: '0.75', governedBy: 'minimum size' })
    const separate = [aCable({ tag: 'W2', from: 'Q1', to: 'A1', typeTag: 'T35' }), aCable({ tag: 'W112', from: 'A1.7', to: 'P1', typeTag: 'T2', carries: 'positive' })]
    expect(advice({ ...short, vessel: { cables: separate } }).mm2).toMatchObject({ designation: '1', governedBy: 'minimum size' })
    // 33 CFR 183.425(d), (e): 18 AWG in a sheath, 16 AWG separate
    expect(advice({ ...short, basis: 'abyc' }).awg?.designation).toBe('18')
    expect(advice({ ...short, basis: 'abyc', vessel: { cables: separate } }).awg?.designation).toBe('16')
  })
  it('heeds machinery space and bundle', () => {
    // Table A.1, from memory: 10 mm² 90 A · 0.86 · 0.7 = 54.18 A, 16 mm² 130 · 0.86 · 0.7 = 78.26 A
    const hot: Given = {
      currentA: 60, final: { loadClass: 'general' }, vessel: { zones: [aZone({ tag: 'Z1' }), aZone({ tag: 'Z2', space: 'machinery' })] },
      runs: { W112: { lengthM: 1, zones: ['Z1', 'Z2'], wireways: ['WW1'] } }, loadedConductors: { WW1: 5 },
    }
    expect(advice(hot).input).toMatchObject({ ambientFactor: 0.86, bundleFactor: 0.7 })
    expect(advice(hot).mm2).toMatchObject({ designation: '16', capacityA: expect.closeTo(78.26, 6), governedBy: 'current-carrying capacity' })
  })
  it('is none where even the thickest is too thin', () => {
    // By hand: 0.0164 · 5 · 2 · 400 / 0.34 = 193 mm², above 150 mm² and 4/0
    expect(advice({ runs: { W112: { lengthM: 400 } } })).toMatchObject({ status: 'computed', mm2: null, awg: null })
  })
  it('goes by the longest way to a load', () => {
    const { input } = advice({
      final: { loadTags: ['P1', 'P2'] },
      vessel: { cables: [aCable({ tag: 'W2', from: 'Q1', to: 'A1', typeTag: 'T35' }), aCable({ tag: 'W112', from: 'A1.7', to: 'P1', typeTag: 'T2' }), aCable({ tag: 'W113', from: 'P1', to: 'P2', typeTag: 'T2' })] },
      runs: { W113: { lengthM: 2 } },
      feeds: { 'A1.7': { chain: ['Q1', 'A1.7'], designCurrentA: 5, out: ['W112 A1.7 P1 5', 'W113 P1 P2 2'] } },
    })
    expect(input.conductorLengthM).toBeCloseTo(16.8, 9)
  })
  it('is worked out for a feeder against the limit of feeders', () => {
    // By hand: 3 % of 12 V at once from the battery: 0.0164 · 5 · 8 / 0.36 = 1.822 mm² → 2.5 mm²
    expect(advised().get('Q1')).toMatchObject({ status: 'computed', input: { allowedDropV: expect.closeTo(0.36, 9) }, mm2: { designation: '2.5' } })
  })
})

describe('what cannot be worked out', () => {
  it.each<[string, Given, string]>([
    ['design current', { feeds: { 'A1.7': { chain: ['Q1', 'A1.7'], out: ['W112 A1.7 P1 5'] } } }, 'the design current is not known'],
    ['length', { runs: { W112: { lengthM: null } } }, 'the length of cable W112 is not known'],
    ['way', { feeds: { 'A1.7': { chain: ['Q1', 'A1.7'], designCurrentA: 5 } } }, 'no cable of circuit A1.7 reaches P1'],
    ['loads', { final: { loadTags: [] } }, 'no load is recorded for the circuit'],
    ['feeder', { runs: { W2: { lengthM: null } } }, 'the voltage drop of feeder Q1 is not assessed'],
    ['drop left', { runs: { W2: { lengthM: 90 } } }, 'the feeders and shared cables above lose all the voltage that the limit allows'],
    ['zones', { runs: { W112: { zonesUnknown: 'no zone is recorded for P1' } } }, 'the zones that cable W112 passes are not all known: no zone is recorded for P1'],
    ['source', { feeds: { 'A1.7': { chain: [], source: null, voltageV: null, designCurrentA: 5, out: ['W112 A1.7 P1 5'] } } }, 'no source, and so no nominal voltage, is found for the circuit'],
    ['insulation', { vessel: { cableTypes: [aCableType({ tag: 'T35', size: mm2(35) }), aCableType({ tag: 'T2', insulationC: null })] } }, 'no insulation temperature is recorded for any cable of the circuit'],
  ])('%s', (_case, given, expected) => {
    expect(reason(given)).toBe(expected)
  })
})

describe('the other way round: what the only cable of a circuit allows', () => {
  const sized = (size: CableType['size']) => ({ cableTypes: [aCableType({ tag: 'T35', size: mm2(35) }), aCableType({ tag: 'T2', size })] })

  it('by ISO: by hand, 0.36 V less 0.01874 V in the feeder leaves 0.34126 V', () => {
    const { asFitted } = advice({ vessel: sized(mm2(6)) })
    // 0.34126 · 6 / (0.0164 · 5) = 24.970 m of conductor; 0.34126 · 6 / (0.0164 · 12.8) = 9.754 A, below the 60 A of table A.1 (6 mm², 105 °C).
    expect(asFitted).toEqual({ cableTag: 'W112', longestRunM: expect.closeTo(12.485, 3), largestCurrentA: expect.closeTo(9.754, 3) })
  })

  it('by ABYC: by hand, K = 10.75, 10 AWG is 10383 cmil; 0.36 V less 0.02042 V in the feeder leaves 0.33958 V', () => {
    const { asFitted } = advice({ basis: 'abyc', vessel: sized(awg('10')) })
    // 0.33958 · 10383 / (10.75 · 5) = 65.597 ft of conductor, 9.997 m one way; over 12.8 m (41.995 ft) 7.810 A.
    expect(asFitted).toEqual({ cableTag: 'W112', longestRunM: expect.closeTo(9.997, 3), largestCurrentA: expect.closeTo(7.81, 3) })
  })

  it('is limited by the capacity where the way is short', () => {
    expect(advice({ vessel: sized(mm2(6)), runs: { W112: { lengthM: 0.2 } } }).asFitted?.largestCurrentA).toBe(60)
  })

  it('is left open where the size is not known or there is more than one cable', () => {
    expect(advice().asFitted).toBeNull()
    expect(advice({ vessel: sized(mm2(6)), final: { returnCableTags: ['W2'] } }).asFitted).toBeNull()
  })
})
