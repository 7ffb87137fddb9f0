import { describe, expect, it } from 'vitest'
import { routingPass } from '../../../src/calculate/wireways/index.js'
import { outsideAreaMm2 } from '../../../src/calculate/wireways/conduit-fill.calc.js'
import type { Cable, CableType, Wireway } from '../../../src/model/vessel.js'
import { aCable, aCableType, anEquipment, aVessel, aWireway, aZone } from '../../support/vessel-builder.js'

type CableGiven = Partial<Omit<Cable, 'tag' | 'from' | 'to'>>

function load({ wireway = {}, types, cables }: { wireway?: Partial<Wireway>; types: readonly CableType[]; cables: readonly CableGiven[] }) {
  const { byWireway, findings } = routingPass(aVessel({
    zones: [aZone({ tag: 'Z1' }), aZone({ tag: 'Z2' })],
    equipment: [anEquipment({ tag: 'P1', zoneTag: 'Z1' }), anEquipment({ tag: 'P2', zoneTag: 'Z2' })],
    wireways: [aWireway({ tag: 'WW1', fromTag: 'Z1', toTag: 'Z2', kind: 'conduit', ...wireway })],
    cableTypes: types,
    cables: cables.map((given, i) => aCable({ tag: `W${i + 1}`, from: 'P1', to: 'P2', ...given })),
  }))
  return { ...byWireway.get('WW1')!, findings }
}
const conduit = (boreMm: number | null, count: number, outerDiameterMm: number | null) => load({
  wireway: { boreMm }, types: [aCableType({ tag: 'T', outerDiameterMm })], cables: Array.from({ length: count }, () => ({ typeTag: 'T' })),
})

it('counts each conductor of a cable laid in parallel: area, number and loaded conductors', () => {
  const { fill, loadedConductorCount } = load({
    wireway: { boreMm: 40 }, types: [aCableType({ tag: 'T', outerDiameterMm: 12, cores: 1 })], cables: [{ typeTag: 'T', carries: 'positive', parallelCount: 2 }],
  })
  // By hand: 2 · 144 / 1600 = 18 %.
  expect(fill).toMatchObject({ input: { cableCount: 2 }, output: { fillPercent: expect.closeTo(18, 6) } })
  expect(loadedConductorCount).toBe(2)
})

describe('conduit fill', () => {
  // Areas as printed with the worked values of the reference (π/4 · d²).
  it.each([[32, 804.2], [20, 314.2], [25, 490.9], [6.5, 33.18]])('an outside of %f mm is %f mm²', (diameter, area) => {
    expect(outsideAreaMm2(diameter)).toBeCloseTo(area, area > 100 ? 1 : 2)
  })

  // Limits: NEC chapter 9 table 1, 53 % for one, 31 % for two, 40 % for more; the sums by hand.
  it.each([
    [32, 9, 6.5, 37.1, 40, true],
    [32, 10, 6.5, 41.3, 40, false],
    [20, 20, 2.8, 39.2, 40, true],
    [20, 21, 2.8, 41.2, 40, false],
    [25, 2, 10, 32.0, 31, false],
    [13, 1, 10, 59.2, 53, false],
    [24, 3, 8, 33.3, 40, true],
  ])('bore %f mm, %i cables of %f mm: %f %%, limit %f %%', (boreMm, count, diameter, percent, limit, within) => {
    const { fill, fillComparison, findings } = conduit(boreMm, count, diameter)
    expect(fill).toMatchObject({ status: 'computed', input: { boreMm, cableCount: count }, output: { fillPercent: expect.closeTo(percent, 1) } })
    expect(fillComparison).toMatchObject({ limit: { relation: 'at most', value: limit, citation: { source: 'nec-chapter-9' } }, within })
    expect(findings.filter(({ id }) => id === 'WWY101').length).toBe(within ? 0 : 1)
  })

  it('says how full against how full it may be', () => {
    expect(conduit(25, 2, 10).findings[0]?.message).toBe('Wireway WW1: 2 cables fill 32.0\u00A0% of the conduit, limit 31.0\u00A0%')
    // Bore so chosen that 31 % is exceeded by a hair: 100 · 2 · 10² / D².
    const bore = Math.sqrt(20000 / 31.0001)
    expect(conduit(bore, 2, 10).findings[0]?.message).toBe('Wireway WW1: 2 cables fill 31.0001\u00A0% of the conduit, limit 31.0000\u00A0%')
  })

  it('counts cables of every use', () => {
    const { fill } = load({
      wireway: { boreMm: 20 }, types: [aCableType({ tag: 'P', outerDiameterMm: 6 }), aCableType({ tag: 'N', use: 'ethernet', outerDiameterMm: 8 })],
      cables: [{ typeTag: 'P' }, { typeTag: 'N', carries: 'none' }],
    })
    // By hand: (36 + 64) / 400.
    expect(fill).toMatchObject({ output: { fillPercent: expect.closeTo(25, 9) } })
  })

  it('of an empty conduit is nothing, and is held against no limit', () => {
    expect(conduit(20, 0, 5)).toMatchObject({ fill: { output: { fillPercent: 0 } }, fillComparison: null, findings: [] })
  })

  it.each([
    [{ boreMm: null }, 5, 'its bore is not recorded'],
    [{ boreMm: 20, kind: 'tray' as const }, 5, 'it is not a conduit'],
    [{ boreMm: 20 }, null, 'no outside diameter is recorded for the type of W1 and W2'],
    [{ boreMm: 0 }, 5, 'the bore is not above zero'],
  ])('%j with cables of %s mm is not computed: %s', (wireway, outerDiameterMm, reason) => {
    const { fill, fillComparison } = load({ wireway, types: [aCableType({ tag: 'T', outerDiameterMm })], cables: [{ typeTag: 'T' }, { typeTag: 'T' }] })
    expect({ fill, fillComparison }).toEqual({ fill: { status: 'not computed', method: 'conduit-fill', reason }, fillComparison: null })
  })
})

describe('three cables that may jam', () => {
  // NEC chapter 9, informational note 2: ratio of bore to cable between 2.8 and 3.2.
  it.each([[24, 8, true], [22.4, 8, true], [22.3, 8, false], [25.6, 8, true], [25.7, 8, false]])('bore %f mm, diameter %f mm: %s', (bore, diameter, jams) => {
    expect(conduit(bore, 3, diameter).findings.some(({ id }) => id === 'WWY303')).toBe(jams)
  })

  it('are three, not two or four', () => {
    for (const count of [2, 4]) expect(conduit(24, count, 8).findings.some(({ id }) => id === 'WWY303')).toBe(false)
  })
})

describe('loaded conductors', () => {
  const one = (type: Partial<CableType>, cable: CableGiven = {}) =>
    load({ types: [aCableType({ tag: 'T', ...type })], cables: [{ typeTag: 'T', ...cable }] }).loadedConductorCount

  // Common practice: conductors that carry current at the same time; a protective earth never counts.
  it.each([
    ['two-core d.c.', { cores: 2 }, { carries: 'both' }, 2],
    ['single-core d.c., way out', { cores: 1 }, { carries: 'positive' }, 1],
    ['single-core d.c., way back', { cores: 1 }, { carries: 'negative' }, 1],
    ['spare d.c.', { cores: 2 }, { carries: 'none' }, 0],
    ['three-core a.c.', { use: 'ac power', cores: 3 }, { carries: 'none' }, 2],
    ['five-core a.c.', { use: 'ac power', cores: 5 }, { carries: 'none' }, 3],
    ['ethernet', { use: 'ethernet', cores: 8 }, { carries: 'none' }, 0],
    ['CAN bus', { use: 'can bus', cores: 5 }, { carries: 'both' }, 0],
    ['coax', { use: 'coax' }, { carries: 'none' }, 0],
    ['signal', { use: 'signal', cores: 4 }, { carries: 'none' }, 0],
    ['bonding', { use: 'bonding', cores: 1 }, { carries: 'none' }, 0],
  ] as const)('%s', (_, type, cable, count) => {
    expect(one(type, cable)).toBe(count)
  })

  it('of a cable without a type go by what it carries', () => {
    expect(load({ types: [], cables: [{ carries: 'both' }, { carries: 'positive' }, { carries: 'none' }] }).loadedConductorCount).toBe(3)
  })

  it('of all cables in the wireway add up, each cable once', () => {
    const { loadedConductorCount, cableTags } = load({
      types: [aCableType({ tag: 'T' })], cables: [{ typeTag: 'T' }, { typeTag: 'T', routeTags: ['WW1', 'WW1', 'WW1'] }],
    })
    expect({ loadedConductorCount, cableTags }).toEqual({ loadedConductorCount: 4, cableTags: ['W1', 'W2'] })
  })
})
