import { describe, expect, it } from 'vitest'
import { currentCarryingCapacityPass } from '../../../src/calculate/conductors/current-carrying-capacity.pass.js'
import { voltageDropPass } from '../../../src/calculate/conductors/voltage-drop.pass.js'
import type { BasisId, Circuit, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aFeeding, aRouting, type GivenFeed, type GivenRun } from '../../support/results-builder.js'
import { aBusbar, aCable, aCableType, aCircuit, anEquipment, aPanel, aVessel, aZone, awg, mm2 } from '../../support/vessel-builder.js'

/**
 * Battery G1, 1 m of 35 mm² (W1) to fuse Q1, 3 m of 35 mm² (W2) to panel A1; from its way A1.7 6.4 m of 2 × 2.5 mm²
 * (W112) to P1. W1 and W2 are single cores whose way back is taken as alike.
 */
function boat(given: Partial<Vessel> = {}): Vessel {
  return aVessel({
    zones: [aZone({ tag: 'Z1' })],
    panels: [aPanel({ tag: 'A1' })],
    cableTypes: [aCableType({ tag: 'T35', size: mm2(35), cores: 1 }), aCableType({ tag: 'T2', size: mm2(2.5) })],
    cables: [
      aCable({ tag: 'W1', from: 'G1', to: 'Q1', typeTag: 'T35', carries: 'positive' }),
      aCable({ tag: 'W2', from: 'Q1', to: 'A1', typeTag: 'T35', carries: 'positive' }),
      aCable({ tag: 'W112', from: 'A1.7', to: 'P1', typeTag: 'T2' }),
    ],
    circuits: circuits(),
    ...given,
  })
}
const circuits = (final: Partial<Circuit> = {}, feeder: Partial<Circuit> = {}): Circuit[] => [
  aCircuit({ tag: 'Q1', fedFromTag: 'G1', loadTags: ['A1'], ...feeder }),
  aCircuit({ tag: 'A1.7', fedFromTag: 'A1', loadTags: ['P1'], loadClass: 'critical', ...final }),
]
interface Given {
  readonly basis?: BasisId
  readonly vessel?: Partial<Vessel>
  readonly currentA?: number
  readonly runs?: Readonly<Record<string, GivenRun>>
  readonly feeds?: Readonly<Record<string, GivenFeed>>
}
function assessed({ basis = 'iso', vessel: given, currentA = 5, runs, feeds }: Given = {}) {
  const vessel = boat(given)
  const routing = aRouting({ W1: { lengthM: 1 }, W2: { lengthM: 3 }, W112: { lengthM: 6.4 }, ...runs })
  const feeding = aFeeding({
    Q1: { chain: ['Q1'], designCurrentA: currentA, supply: [`W1 G1 Q1 ${currentA}`], out: [`W2 Q1 A1 ${currentA}`] },
    'A1.7': { chain: ['Q1', 'A1.7'], designCurrentA: currentA, out: [`W112 A1.7 P1 ${currentA}`] },
    ...feeds,
  })
  const capacity = currentCarryingCapacityPass(vessel, bases[basis], routing, feeding)
  const results = voltageDropPass(vessel, bases[basis], routing, feeding, capacity)
  return { final: results.byCircuit.get('A1.7')!, feeder: results.byCircuit.get('Q1')!, findings: results.findings, results }
}

describe('the drop from source to load', () => {
  it('adds the feeder and its supply side to the branch, out and back', () => {
    // By hand: 0.0164 · 5 · 2 · (1 + 3) / 35 + 0.0164 · 5 · 2 · 6.4 / 2.5 = 0.0187429 + 0.4198400
    const { worst } = assessed().final
    expect(worst?.steps.map(({ circuitTag, cableTag }) => [circuitTag, cableTag])).toEqual([['Q1', 'W1'], ['Q1', 'W2'], ['A1.7', 'W112']])
    expect(worst?.voltageDropV).toBeCloseTo(0.4385829, 6)
    expect(worst?.voltageDropPercent).toBeCloseTo(3.654857, 5)
    expect(worst?.steps.map(({ returnAssumedAlike }) => returnAssumedAlike)).toEqual([true, true, false])
  })
  it('goes by the American constant on that basis', () => {
    // By hand: 10.75 · 5 · 8 / 0.3048 / (35 / 0.0005067075) + 10.75 · 5 · 12.8 / 0.3048 / (2.5 / 0.0005067075) = 0.020424 + 0.457497
    const { worst } = assessed({ basis: 'abyc' }).final
    expect(worst?.voltageDropV).toBeCloseTo(0.477921, 5)
    expect(worst?.steps[2]?.byBasis).toMatchObject({ method: 'voltage-drop-by-abyc-constant', input: { currentA: 5, conductorLengthFt: expect.closeTo(41.9948, 4) } })
  })
  it('stands beside the physical value of the warm conductor', () => {
    // By hand for W112: 2.5 mm² tinned 8.21 Ω/km, 30 °C, Iz 35 A: θ = 30 + 75 · (5/35)² = 31.5306 °C;
    // 5 · 12.8 · 8.21 · (1 + 0.00393 · 11.5306) / 1000 = 0.525440 · 1.045315 = 0.549250
    const step = assessed().final.worst?.steps[2]
    expect(step?.physical).toMatchObject({ status: 'computed', input: { conductorTemperatureC: expect.closeTo(31.5306, 4), resistanceAt20COhmPerKm: 8.21 }, output: { voltageDropV: expect.closeTo(0.54925, 5) } })
    expect(assessed().final.worst?.physicalDropPercent).toBeGreaterThan(assessed().final.worst!.voltageDropPercent)
  })
  it('counts a conductor as hot as its insulation where its temperature cannot be worked out', () => {
    const { final } = assessed({ runs: { W112: { lengthM: 6.4, zonesUnknown: 'no way is known' } } })
    expect(final.worst?.steps[2]?.physical).toMatchObject({ input: { conductorTemperatureC: 105 } })
  })
  it('has no physical value without the insulation temperature, and the value by the basis all the same', () => {
    const { final } = assessed({ vessel: { cableTypes: [aCableType({ tag: 'T35', size: mm2(35) }), aCableType({ tag: 'T2', size: mm2(2.5), insulationC: null })] } })
    expect(final.worst).toMatchObject({ physicalDropV: null, physicalDropPercent: null, voltageDropV: expect.closeTo(0.43858, 5) })
    expect(final.worst?.steps[2]?.physical).toEqual({ status: 'not computed', method: 'voltage-drop-by-resistance', reason: 'cable type T2 has no insulation temperature' })
  })
  it('takes named cables of the way back instead of doubling the length', () => {
    // By hand: 5 A through 4 m out of 35 mm² and 6 m back of 16 mm²: 0.0164 · 5 · (4 / 35 + 6 / 16) = 0.0401214
    const { feeder } = assessed({
      vessel: {
        cableTypes: [aCableType({ tag: 'T35', size: mm2(35) }), aCableType({ tag: 'T16', size: mm2(16) }), aCableType({ tag: 'T2', size: mm2(2.5) })],
        cables: [...boat().cables, aCable({ tag: 'W9', from: 'A1', to: 'G1', typeTag: 'T16', carries: 'negative' })],
        circuits: circuits({}, { returnCableTags: ['W9'] }),
      },
      runs: { W9: { lengthM: 6 } },
    })
    expect(feeder.worst?.voltageDropV).toBeCloseTo(0.0401214, 6)
    expect(feeder.worst?.steps.map(step => step.returnAssumedAlike)).toEqual([false, false, false])
  })
  it('takes the current of all circuits in a cable that they share', () => {
    // By hand: W1 carries 5 A + 20 A: 0.0164 · 25 · 2 / 35 + 0.0164 · 5 · 6 / 35 = 0.0234286 + 0.0140571
    const { feeder } = assessed({
      vessel: { circuits: [...circuits(), aCircuit({ tag: 'Q2', fedFromTag: 'G1', loadTags: ['P2'] })] },
      feeds: { Q2: { chain: ['Q2'], designCurrentA: 20, supply: ['W1 G1 Q1 20'], out: [] } },
    })
    expect(feeder.worst?.voltageDropV).toBeCloseTo(0.0374857, 6)
  })
})

describe('other flows than from a battery to a load', () => {
  it('shares the current among conductors in parallel', () => {
    // By hand: 5 A in two conductors of 35 mm², 2.5 A each: 0.0164 · 2.5 · 2 · 4 / 35 = 0.0093714
    const cables = boat().cables.map(cable => (cable.tag === 'W112' ? cable : { ...cable, parallelCount: 2 }))
    const { feeder } = assessed({ vessel: { cables } })
    expect(feeder.worst?.voltageDropV).toBeCloseTo(0.0093714, 6)
    // Each at 2.5 A of its 210 A: 30 + 75 · (2.5/210)² = 30.01063 °C.
    expect(feeder.worst?.steps[0]?.physical).toMatchObject({ input: { currentA: 2.5, conductorTemperatureC: expect.closeTo(30.01063, 5) } })
  })
  it('of a charging circuit is what is put in, all the way to the battery, whatever is drawn', () => {
    // By hand: 10 A put in through the branch, 14 A through the feeder with another source's 4 A:
    // 0.0164 · (14 · 8 / 35 + 10 · 12.8 / 2.5) = 0.0524800 + 0.8396800
    const vessel = boat()
    const routing = aRouting({ W1: { lengthM: 1 }, W2: { lengthM: 3 }, W112: { lengthM: 6.4 } })
    const given = aFeeding({
      Q1: { chain: ['Q1'], designCurrentA: 50, supply: ['W1 G1 Q1 50'], out: ['W2 Q1 A1 50'] },
      'A1.7': { chain: ['Q1', 'A1.7'], designCurrentA: 10, out: ['W112 A1.7 P1 10'] },
    })
    const putting = (tag: string, putInA: number, only: boolean) => {
      const feed = given.byCircuit.get(tag)!
      const put = (segments: typeof feed.segments) => segments.map(segment => ({ ...segment, putInA }))
      return [tag, { ...feed, infeed: { currentA: putInA, parts: [], only }, supplySegments: put(feed.supplySegments), segments: put(feed.segments) }] as const
    }
    const feeding = { ...given, byCircuit: new Map([putting('Q1', 14, false), putting('A1.7', 10, true)]) }
    const capacity = currentCarryingCapacityPass(vessel, bases.iso, routing, feeding)
    expect(voltageDropPass(vessel, bases.iso, routing, feeding, capacity).byCircuit.get('A1.7')?.worst?.voltageDropV).toBeCloseTo(0.89216, 6)
    // The feeder itself is held to the 50 A that are drawn, and to what is put in once that is more; its drop to the 50 A alone.
    expect(capacity.byCable.get('W1')?.comparison?.value).toBe(50)
    const more = { ...given, byCircuit: new Map([putting('Q1', 60, false), putting('A1.7', 60, true)]) }
    const moreCapacity = currentCarryingCapacityPass(vessel, bases.iso, routing, more)
    expect(moreCapacity.byCable.get('W1')?.comparison?.value).toBe(60)
    // By hand: 0.0164 · 50 · 8 / 35.
    expect(voltageDropPass(vessel, bases.iso, routing, more, moreCapacity).byCircuit.get('Q1')?.worst?.voltageDropV).toBeCloseTo(0.1874286, 6)
  })
  it('of an a.c. circuit has a limit of its own', () => {
    const vessel = boat()
    const routing = aRouting({ W1: { lengthM: 1 }, W2: { lengthM: 3 }, W112: { lengthM: 6.4 } })
    const given = aFeeding({ Q1: { chain: ['Q1'], voltageV: 230, designCurrentA: 5, supply: ['W1 G1 Q1 5'], out: ['W2 Q1 A1 5'] } })
    const feeding = { ...given, byCircuit: new Map([['Q1', { ...given.byCircuit.get('Q1')!, supplyForm: 'ac' as const }]]) }
    const capacity = currentCarryingCapacityPass(vessel, bases.iso, routing, feeding)
    expect(voltageDropPass(vessel, bases.iso, routing, feeding, capacity).byCircuit.get('Q1')?.worst?.comparison.limit).toMatchObject({ value: 5 })
  })
})

describe('a circuit with several loads', () => {
  const twoLoads: Given = {
    vessel: {
      cables: [...boat().cables, aCable({ tag: 'W113', from: 'J1', to: 'P2', typeTag: 'T2' }), aCable({ tag: 'W114', from: 'J1', to: 'P3', typeTag: 'T2' })],
      circuits: circuits({ loadTags: ['P2', 'P3'], loadClass: 'general' }),
    },
    runs: { W113: { lengthM: 2 }, W114: { lengthM: 4 } },
    feeds: { 'A1.7': { chain: ['Q1', 'A1.7'], designCurrentA: 5, out: [{ segment: 'W112 A1.7 J1 5', after: null }, { segment: 'W113 J1 P2 3', after: 0 }, { segment: 'W114 J1 P3 2', after: 0 }] } },
  }
  it('adds what each stretch carries', () => {
    // By hand, less the 0.0187429 V of the feeder: 0.0164 · (5 · 12.8 + 3 · 4) / 2.5 and 0.0164 · (5 · 12.8 + 2 · 8) / 2.5
    const drops = assessed(twoLoads).final.toLoads.map(({ loadTag, voltageDropV }) => [loadTag, voltageDropV])
    expect(drops).toEqual([['P2', expect.closeTo(0.0187429 + 0.49856, 6)], ['P3', expect.closeTo(0.0187429 + 0.5248, 6)]])
  })
  it('has the worst of them, and one finding', () => {
    const { final, findings } = assessed({ ...twoLoads, vessel: { ...twoLoads.vessel, circuits: circuits({ loadTags: ['P2', 'P3'] }) } })
    expect(final.worst?.loadTag).toBe('P3')
    expect(findings.map(({ id, subject }) => [id, subject.id])).toEqual([['DCD102', 'A1.7']])
  })
  it('assesses what it can when one load is not reached', () => {
    const { final } = assessed({ ...twoLoads, vessel: { ...twoLoads.vessel, circuits: circuits({ loadTags: ['P2', 'P9'], loadClass: 'general' }) } })
    expect(final.toLoads.map(({ loadTag }) => loadTag)).toEqual(['P2'])
    expect(final.notAssessed).toEqual([{ loadTag: 'P9', reason: 'no cable of circuit A1.7 reaches P9' }])
  })
})

describe('the limit', () => {
  it('is that of the class for a load, and that of main feeders for a panel or busbar', () => {
    expect(assessed().final.worst?.comparison.limit.value).toBe(3)
    expect(assessed({ vessel: { circuits: circuits({ loadClass: 'general' }) } }).final.worst?.comparison.limit.value).toBe(10)
    expect(assessed().feeder.worst?.comparison.limit).toMatchObject({ value: 3, citation: { source: 'iso-10133', place: 'main conductors of panels and switchboards' } })
    const busbar = assessed({ vessel: { panels: [], busbars: [aBusbar({ tag: 'A1' })] } })
    expect(busbar.feeder.worst?.comparison.limit.value).toBe(3)
  })
  it('is exceeded in words that say how much of it is lost in the feeders', () => {
    const { findings } = assessed()
    expect(findings).toHaveLength(1)
    expect(findings[0]).toMatchObject({
      id: 'DCD102', severity: 'warning', subject: { kind: 'circuit', id: 'A1.7' },
      message: 'Circuit A1.7: voltage drop to P1 3.7\u00A0%, limit 3.0\u00A0% (0.44\u00A0V, 0.02\u00A0V of it in the feeders above)',
    })
  })
  it('is never printed equal to a drop above it', () => {
    // 3.0008 %: by hand 0.36 V · 1.000267 = 0.0164 · 5 · (8 / 35 + 2 · l / 2.5) for l = 5.2037…
    const { findings } = assessed({ runs: { W112: { lengthM: 5.2037 } } })
    expect(findings[0]?.message).toMatch(/drop to P1 3\.00\d+\s%, limit 3\.00\d*\s%/)
    expect(findings[0]?.message).not.toMatch(/(3\.0+)\s%, limit \1\s%/)
  })
  it('met by the basis and missed by the physical value is a note', () => {
    // By hand at 5 A and 5.15 m: by the constant 0.0187429 + 0.33784 = 0.35658 V, 2.97 %; by resistance
    // 5 · 8 · 0.565 · 1.0395 / 1000 + 5 · 10.3 · 8.21 · 1.0453 / 1000 = 0.02349 + 0.44198 = 0.46547 V, 3.88 %
    const { findings, final } = assessed({ runs: { W112: { lengthM: 5.15 } } })
    expect(final.worst?.comparison.within).toBe(true)
    expect(findings.map(({ id, severity }) => [id, severity])).toEqual([['DCD301', 'note']])
    expect(findings[0]?.message).toBe(
      'Circuit A1.7: voltage drop to P1 by the resistance of the conductor 3.9\u00A0%, limit 3.0\u00A0%; by the constant of the basis 2.97\u00A0%',
    )
  })
  it('met by both is silent', () => {
    expect(assessed({ runs: { W112: { lengthM: 3 } } }).findings).toEqual([])
  })
})

describe('what cannot be computed', () => {
  it.each<[string, Given, string]>([
    ['length', { runs: { W112: { lengthM: null } } }, 'the length of cable W112 is not known'],
    ['length of the feeder', { runs: { W2: { lengthM: null } } }, 'the length of cable W2 is not known'],
    ['current', { feeds: { 'A1.7': { chain: ['Q1', 'A1.7'], out: ['W112 A1.7 P1 ?'] } } }, 'the current in cable W112 is not known'],
    ['size', { vessel: { cableTypes: [aCableType({ tag: 'T35', size: mm2(35) }), aCableType({ tag: 'T2' })] } }, 'the conductor size of cable W112 is not recorded'],
    ['way', { feeds: { 'A1.7': { chain: ['Q1', 'A1.7'], out: [] } } }, 'no cable of circuit A1.7 reaches P1'],
    ['feeder', { feeds: { Q1: { chain: ['Q1'], supply: ['W1 G1 Q1 5'], out: [] } } }, 'no cable of circuit Q1 reaches A1'],
  ])('%s', (_case, given, reason) => {
    const { final } = assessed(given)
    expect(final).toEqual({ toLoads: [], worst: null, notAssessed: [{ loadTag: 'P1', reason }] })
  })
  it('source, voltage, loads', () => {
    const out = ['W112 A1.7 P1 5']
    expect(assessed({ feeds: { 'A1.7': { chain: [], source: null, voltageV: null, out } } }).final.notAssessed).toEqual([{ loadTag: null, reason: 'no source is found for the circuit' }])
    expect(assessed({ feeds: { 'A1.7': { chain: ['Q1', 'A1.7'], voltageV: null, out } } }).final.notAssessed).toEqual([{ loadTag: null, reason: 'the nominal voltage of the source is not known' }])
    expect(assessed({ vessel: { circuits: circuits({ loadTags: [] }) } }).final.notAssessed).toEqual([{ loadTag: null, reason: 'no load is recorded for the circuit' }])
  })
})

it('takes gauge sizes by their ideal area, whatever the basis', () => {
  // By hand: 14 AWG 2.0809 mm²: 0.0164 · 5 · 12.8 / 2.0809 = 0.504397
  const { final } = assessed({ vessel: { cableTypes: [aCableType({ tag: 'T35', size: mm2(35) }), aCableType({ tag: 'T2', size: awg('14') })] } })
  expect(final.worst!.steps[2]!.byBasis.output.voltageDropV).toBeCloseTo(0.504397, 5)
})

describe('ways back that branch', () => {
  const twoLoads = (returns: readonly string[]) => boat({
    equipment: ['P1', 'P2', 'E1', 'E2'].map(tag => anEquipment({ tag })),
    cables: [
      aCable({ tag: 'W1', from: 'G1', to: 'Q1', typeTag: 'T35' }), aCable({ tag: 'W2', from: 'Q1', to: 'A1', typeTag: 'T35' }),
      aCable({ tag: 'W11', from: 'A1.7', to: 'P1', typeTag: 'T35', carries: 'positive' }), aCable({ tag: 'W12', from: 'A1.7', to: 'P2', typeTag: 'T35', carries: 'positive' }),
      aCable({ tag: 'W21', from: 'P1', to: 'X9', typeTag: 'T35', carries: 'negative' }), aCable({ tag: 'W22', from: 'P2', to: 'X9', typeTag: 'T35', carries: 'negative' }),
      aCable({ tag: 'W31', from: 'E1', to: 'X9', typeTag: 'T35', carries: 'negative' }), aCable({ tag: 'W32', from: 'E2', to: 'X9', typeTag: 'T35', carries: 'negative' }),
    ],
    busbars: [aBusbar({ tag: 'X9', polarity: 'negative' })],
    circuits: circuits({ loadTags: ['P1', 'P2'], returnCableTags: returns }),
  })
  const runs = Object.fromEntries(['W11', 'W12', 'W21', 'W22', 'W31', 'W32'].map(tag => [tag, { lengthM: 1 }]))
  const feeds = { 'A1.7': { chain: ['Q1', 'A1.7'], designCurrentA: 10, out: ['W11 A1.7 P1 5', 'W12 A1.7 P2 5'] } }
  const waysOf = (returns: readonly string[]) =>
    assessed({ vessel: twoLoads(returns), runs, feeds }).final.toLoads.map(({ steps }) => steps.map(({ cableTag }) => cableTag).filter(tag => /^W[23]\d/.test(tag)))

  it('each load has its own', () => {
    expect(waysOf(['W21', 'W22'])).toEqual([['W21'], ['W22']])
  })
  it('are not assessed where they end at none of the loads', () => {
    const { final } = assessed({ vessel: twoLoads(['W31', 'W32']), runs, feeds })
    expect(final.toLoads).toEqual([])
    expect(final.notAssessed[0]?.reason).toBe('the ways back of circuit A1.7 branch, and which of them leads from P1 is not known')
  })
})
