import { describe, expect, it } from 'vitest'
import { currentCarryingCapacityPass } from '../../../src/calculate/conductors/current-carrying-capacity.pass.js'
import type { BasisId, Cable, CableType, Circuit, Zone } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aFeeding, aRouting, type GivenFeed, type GivenRun } from '../../support/results-builder.js'
import { aCable, aCableType, aCircuit, aVessel, aZone, awg, mm2 } from '../../support/vessel-builder.js'

interface Given {
  readonly basis?: BasisId
  readonly type?: Partial<CableType>
  readonly cable?: Partial<Omit<Cable, 'tag' | 'from' | 'to'>>
  readonly zone?: Partial<Zone>
  readonly run?: GivenRun
  readonly loadedConductors?: number
  readonly currentA?: number | '?'
  readonly feed?: Partial<GivenFeed>
  readonly circuit?: Partial<Circuit>
}

/** One cable W1 of circuit F1 to P1, in wireway WW1 when loaded conductors are given. */
function assessed({ basis = 'abyc', type, cable, zone, run, loadedConductors, currentA = 10, feed, circuit }: Given) {
  const vessel = aVessel({
    basis,
    zones: [aZone({ tag: 'Z1', ...zone })],
    cableTypes: [aCableType({ tag: 'T1', size: awg('14'), ...type })],
    cables: [aCable({ tag: 'W1', from: 'F1', to: 'P1', typeTag: 'T1', ...cable })],
    circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['P1'], ...circuit })],
  })
  const wireways = loadedConductors === undefined ? {} : { WW1: loadedConductors }
  const routing = aRouting({ W1: { wireways: Object.keys(wireways), ...run } }, wireways)
  const feeding = aFeeding({ F1: { chain: ['F1'], out: [`W1 F1 P1 ${currentA}`], ...feed } })
  const results = currentCarryingCapacityPass(vessel, bases[basis], routing, feeding)
  return { capacity: results.byCable.get('W1')!, findings: results.findings, results }
}
const capacityA = (given: Given): number | string => {
  const { outcome } = assessed(given).capacity
  return outcome.status === 'computed' ? outcome.output.currentCarryingCapacityA : outcome.reason
}
const textOf = (given: Given, label: string) => assessed(given).capacity.lookup.find(entry => entry.label === label)?.text
const engine: Partial<Zone> = { space: 'machinery', ambientC: 50 }

describe('the capacity of a cable', () => {
  it.each<[string, Given, number]>([
    ['33 CFR 183.425: 14 AWG, 105 °C, outside', {}, 35],
    ['published boat-cable table: the same in an engine space, printed 29.8', { zone: engine }, 29.75],
    ['published: 10 AWG, engine space, 5 conductors, from 50 V', { type: { size: awg('10') }, zone: engine, loadedConductors: 5, feed: { voltageV: 120 } }, 30.6],
    ['by hand 40 · 0.75: 10 AWG, 75 °C, engine space', { type: { size: awg('10'), insulationC: 75 }, zone: engine }, 30],
    ['published: 4/0, engine space, 12 conductors, from 50 V, printed 189.1', { type: { size: awg('4/0') }, zone: engine, loadedConductors: 12, feed: { voltageV: 50 } }, 189.125],
    ['by hand 80 · 0.58: 6 AWG, 60 °C, engine space', { type: { size: awg('6'), insulationC: 60 }, zone: engine }, 46.4],
    ['by hand 2 · 230: two of 1/0 AWG, 75 °C, in parallel', { type: { size: awg('1/0'), insulationC: 75 }, cable: { parallelCount: 2 } }, 460],
    ['by hand 370 · 1.00: 2/0, 200 °C, engine space', { type: { size: awg('2/0'), insulationC: 200 }, zone: engine }, 370],
    ['33 CFR 183.435(b): 12 AWG, 10 conductors at 12 V, no factor', { type: { size: awg('12') }, loadedConductors: 10 }, 45],
    ['from memory, 130 · 0.86: 16 mm², engine space by ISO', { basis: 'iso', type: { size: mm2(16) }, zone: { space: 'machinery', ambientC: 60 } }, 111.8],
    ['from memory, 50 · 0.60: 6 mm², 90 °C, bundle of 8 by ISO', { basis: 'iso', type: { size: mm2(6), insulationC: 90 }, loadedConductors: 8 }, 30],
    ['table A.1 from memory: 14 AWG by ISO enters at 1.5 mm²', { basis: 'iso' }, 25],
    ['33 CFR 183.425: 2.5 mm² enters at 14 AWG', { type: { size: mm2(2.5) } }, 35],
  ])('%s', (_origin, given, expected) => {
    expect(capacityA(given)).toBeCloseTo(expected, 9)
  })

  it('shows the value with the bundle factor as advice where it is not required', () => {
    // 12 AWG, 12 V, bundle of 10: 45 A by law, 45 · 0.50 = 22.5 A with note 2
    expect(assessed({ type: { size: awg('12') }, loadedConductors: 10 }).capacity.bundledAdviceA).toBeCloseTo(22.5, 9)
    expect(assessed({ type: { size: awg('12') }, loadedConductors: 10, feed: { voltageV: 120 } }).capacity.bundledAdviceA).toBeNull()
    expect(assessed({ type: { size: awg('12') }, loadedConductors: 2 }).capacity.bundledAdviceA).toBeNull()
  })
  it('takes the engine-space factor in a hot zone that is no machinery space, and in a machinery space that is cool', () => {
    expect(capacityA({ zone: { ambientC: 31 } })).toBeCloseTo(29.75, 9)
    expect(capacityA({ zone: { space: 'machinery', ambientC: 30 } })).toBeCloseTo(29.75, 9)
    expect(capacityA({ zone: { ambientC: 30 } })).toBe(35)
  })
  it('goes by the hottest of the zones it passes', () => {
    const vessel = aVessel({
      zones: [aZone({ tag: 'Z1' }), aZone({ tag: 'Z2', space: 'deck', ambientC: 45 }), aZone({ tag: 'Z3', ambientC: 25 })],
      cableTypes: [aCableType({ tag: 'T1', size: awg('14') })], cables: [aCable({ tag: 'W1', from: 'F1', to: 'P1', typeTag: 'T1' })],
      circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['P1'] })],
    })
    const feeding = aFeeding({ F1: { chain: ['F1'], out: ['W1 F1 P1 5'] } })
    const { byCable } = currentCarryingCapacityPass(vessel, bases.abyc, aRouting({ W1: { zones: ['Z1', 'Z2', 'Z3'] } }), feeding)
    expect(byCable.get('W1')).toMatchObject({ outcome: { input: { tableCurrentA: 35, ambientFactor: 0.85 } } })
    expect(byCable.get('W1')?.lookup[3]?.text).toContain('hottest zone Z2, 45\u00A0°C')
  })
  it('counts a cable that runs through no wireway as a bundle of its own conductors', () => {
    expect(textOf({ basis: 'iso' }, 'Bundle')).toBe('2 loaded conductors: factor 1')
    expect(textOf({ basis: 'iso', cable: { carries: 'positive' } }, 'Bundle')).toBe('1 loaded conductor: factor 1')
  })
  it('takes the fullest of its wireways', () => {
    const vessel = aVessel({
      zones: [aZone({ tag: 'Z1' })], cableTypes: [aCableType({ tag: 'T1', size: mm2(6), insulationC: 90 })],
      cables: [aCable({ tag: 'W1', from: 'F1', to: 'P1', typeTag: 'T1' })], circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['P1'] })],
    })
    const routing = aRouting({ W1: { wireways: ['WW1', 'WW2', 'WW3'] } }, { WW1: 2, WW2: 8, WW3: 4 })
    const { byCable } = currentCarryingCapacityPass(vessel, bases.iso, routing, aFeeding({ F1: { chain: ['F1'], out: ['W1 F1 P1 5'] } }))
    expect(byCable.get('W1')).toMatchObject({ outcome: { output: { currentCarryingCapacityA: 30 } } })
    expect(byCable.get('W1')?.lookup.at(-1)?.text).toContain('8 loaded conductors in wireway WW2')
  })
})

describe('the lookup in words', () => {
  it('names the table, with its standing where it is from memory', () => {
    expect(textOf({ basis: 'iso' }, 'Table')).toContain('from memory')
    expect(textOf({}, 'Table')).toContain('183.425 table 5')
    expect(textOf({}, 'Table')).not.toContain('from memory')
    expect(textOf({ zone: engine, type: { insulationC: 125 } }, 'Ambient')).toContain('from memory')
  })
  it('says when row or column are not those of the cable', () => {
    expect(textOf({ basis: 'iso' }, 'Row')).toBe('1.5\u00A0mm², the next thinner size in the table for 14\u00A0AWG (2.08\u00A0mm²)')
    expect(textOf({}, 'Row')).toBe('14\u00A0AWG')
    expect(textOf({ type: { insulationC: 110 } }, 'Column')).toBe('105 °C, for insulation rated 110\u00A0°C')
    expect(textOf({}, 'Column')).toBe('105 °C')
  })
})

describe('what cannot be computed', () => {
  it.each<[string, Given, string]>([
    ['no type', { cable: { typeTag: null } }, 'no cable type is recorded'],
    ['no size', { type: { size: null } }, 'cable type T1 has no conductor size'],
    ['neither size nor insulation', { type: { size: null, insulationC: null } }, 'cable type T1 has no conductor size and insulation temperature'],
    ['too thin', { type: { size: awg('20') } }, 'the conductor is thinner than the smallest size in table 5 of 33 CFR 183.425'],
    ['unknown way', { run: { zonesUnknown: 'no zone is recorded for P1' } }, 'the zones that cable W1 passes are not all known: no zone is recorded for P1'],
    ['no zone', { run: { zones: [] } }, 'no zone is recorded for cable W1'],
    ['too hot', { zone: { space: 'machinery', ambientC: 51 } }, 'hottest zone Z1, 51\u00A0°C (124\u00A0°F), is above the 50\u00A0°C (122\u00A0°F) up to which table 5 of 33 CFR 183.425 has a factor'],
    ['60 °C insulation in an engine space by ISO', { basis: 'iso', type: { size: mm2(2.5), insulationC: 60 }, zone: { space: 'machinery', ambientC: 60 } },
      'insulation of 60 °C is not used in engine spaces by table A.1 of ISO 13297'],
    ['no voltage where the bundle needs it', { loadedConductors: 3, feed: { voltageV: null } }, 'the nominal voltage is not known, and the bundle factor depends on it'],
  ])('%s', (_case, given, reason) => {
    const { capacity } = assessed(given)
    expect(capacity.outcome).toMatchObject({ status: 'not computed', reason })
    expect(capacity.comparison).toBeNull()
  })
  it('is told to the author where data is missing, once for the cable', () => {
    const { findings } = assessed({ type: { insulationC: null } })
    expect(findings.map(({ id, message, remedy }) => [id, message, remedy])).toEqual([
      ['DCD201', 'Cable W1 of circuit F1: cable type T1 has no insulation temperature', 'Enter the insulation temperature of cable type T1.'],
    ])
  })
  it('lists power cables that no circuit reaches', () => {
    const vessel = aVessel({
      cableTypes: [aCableType({ tag: 'T1' }), aCableType({ tag: 'T2', use: 'signal' })],
      cables: [
        aCable({ tag: 'W1', from: 'X2', to: 'P1', typeTag: 'T1', carries: 'negative' }), aCable({ tag: 'W2', from: 'S1', to: 'P1', typeTag: 'T2' }),
        aCable({ tag: 'W3', from: 'X2', to: 'P1', typeTag: 'T1', status: 'removed' }),
      ],
    })
    const { byCable } = currentCarryingCapacityPass(vessel, bases.iso, aRouting({}), aFeeding({}))
    expect([...byCable.keys()]).toEqual(['W1'])
    expect(byCable.get('W1')).toMatchObject({ circuitTag: null, outcome: { status: 'not computed', reason: 'no circuit names it as its way back, so its current is not known' } })
  })
})

describe('the current held against it', () => {
  it('is a finding above the capacity only', () => {
    expect(assessed({ currentA: 35 }).findings).toEqual([])
    const { findings } = assessed({ currentA: 35.02 })
    expect(findings).toHaveLength(1)
    expect(findings[0]).toMatchObject({
      id: 'DCD101', severity: 'error', subject: { kind: 'cable', id: 'W1' },
      message: 'Cable W1 of circuit F1: design current 35.02\u00A0A, current-carrying capacity 35.00\u00A0A',
      limit: { relation: 'at most', value: 35 },
    })
  })
  it('is left open when the current is not known', () => {
    expect(assessed({ currentA: '?' }).capacity).toMatchObject({ outcome: { status: 'computed' }, comparison: null })
  })
  it('is not held against conductors for engine starting', () => {
    const starting = assessed({ currentA: 300, circuit: { unprotectedReason: 'Engine starting' } })
    expect(starting.findings).toEqual([])
    expect(starting.capacity.comparison).toBeNull()
    expect(starting.capacity.lookup.at(-1)?.text).toContain('engine starting')
    expect(assessed({ currentA: 300, circuit: { unprotectedReason: 'short cable' } }).findings).toHaveLength(1)
  })
})

describe('a cable that several circuits use', () => {
  const shared = (circuits: readonly (Partial<Circuit> & { readonly currentA: number })[]) => {
    const vessel = aVessel({
      zones: [aZone({ tag: 'Z1' })], cableTypes: [aCableType({ tag: 'T1', size: mm2(10) })],
      cables: [aCable({ tag: 'W1', from: 'G1', to: 'Q1', typeTag: 'T1' })],
      circuits: circuits.map((circuit, i) => aCircuit({ tag: `F${i + 1}`, fedFromTag: 'G1', ...circuit })),
    })
    const feeding = aFeeding(Object.fromEntries(circuits.map(({ currentA }, i) => [`F${i + 1}`, { chain: [`F${i + 1}`], supply: [`W1 G1 Q1 ${currentA}`] }])))
    return currentCarryingCapacityPass(vessel, bases.iso, aRouting({ W1: {} }), feeding).byCable.get('W1')?.comparison?.value
  }
  it('carries the sum, each times its demand factor', () => {
    expect(shared([{ currentA: 45 }, { currentA: 40, demandFactor: 0.25 }])).toBe(55)
    expect(shared([{ currentA: 30 }, { currentA: 40, demandFactor: 0.5 }])).toBe(50)
  })
  it('carries at least what one of them draws alone', () => {
    expect(shared([{ currentA: 5 }, { currentA: 100, demandFactor: 0.2 }])).toBe(100)
  })
  it('does not count normally open circuits and engine starting', () => {
    expect(shared([{ currentA: 20 }, { currentA: 60, normalState: 'open' }, { currentA: 300, unprotectedReason: 'engine starting' }])).toBe(20)
  })
  it('counts a cable of the way back named by both', () => {
    const vessel = aVessel({
      zones: [aZone({ tag: 'Z1' })], cableTypes: [aCableType({ tag: 'T1', size: mm2(10) })],
      cables: [aCable({ tag: 'W9', from: 'P1', to: 'X2', typeTag: 'T1', carries: 'negative' })],
      circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', returnCableTags: ['W9'] }), aCircuit({ tag: 'F2', fedFromTag: 'G1', returnCableTags: ['W9'] })],
    })
    const feeding = aFeeding({ F1: { chain: ['F1'], designCurrentA: 7 }, F2: { chain: ['F2'], designCurrentA: 8 } })
    const { byCable } = currentCarryingCapacityPass(vessel, bases.iso, aRouting({ W9: {} }), feeding)
    expect(byCable.get('W9')).toMatchObject({ circuitTag: 'F1', comparison: { value: 15 } })
  })
})
