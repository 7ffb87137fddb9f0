/** Antennas against one another, the beam of a radar, ranges, and people near what transmits. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { apart, elevationFrom } from '../../../src/calculate/radio/geometry.js'
import type { Part } from '../../../src/model/results/radio.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { anEquipment, aVessel } from '../../support/vessel-builder.js'
import { aPlace, anAntenna, aTransmitter, coax, gnss, idsOf, radio, radioBoat, radioOf, reasonsOf, scanner, stated, whip } from './support.js'

const part = fc.record({
  forwardM: fc.double({ min: -20, max: 20, noNaN: true }), toPortM: fc.double({ min: -5, max: 5, noNaN: true }), footM: fc.double({ min: -1, max: 20, noNaN: true }), lengthM: fc.double({ min: 0, max: 6, noNaN: true }),
}).map(({ lengthM, ...rest }): Part => ({ ...rest, topM: rest.footM + lengthM }))

describe('distances', () => {
  it('from A to B are those from B to A, and never less than either share', () => {
    fc.assert(fc.property(part, part, (a, b) => {
      const [there, back] = [apart(a, b), apart(b, a)]
      expect(there.distanceM).toBeCloseTo(back.distanceM, 9)
      expect(there.distanceM).toBeGreaterThanOrEqual(Math.max(there.horizontalM, there.verticalM) - 1e-9)
    }))
  })
  // 3 m along, 4 m across, 1 m to 3 m beside 15 m to 17 m: 5 m level, 12 m up, 13 m
  it('are between the nearest points of two upright parts', () => {
    expect(apart({ forwardM: 0, toPortM: 0, footM: 1, topM: 3 }, { forwardM: 3, toPortM: 4, footM: 15, topM: 17 })).toEqual({ horizontalM: 5, verticalM: 12, distanceM: 13 })
  })
  it('angles are to the nearest part: level where it is beside, 45° where it begins as far up as it is away', () => {
    const whipPart = (footM: number): Part => ({ forwardM: 0, toPortM: 0, footM, topM: footM + 2 })
    expect([elevationFrom(5, whipPart(4), 3), elevationFrom(5, whipPart(8), 3), elevationFrom(5, whipPart(0), 3)].map(Math.round)).toEqual([0, 45, -45])
  })
})

describe('two VHF antennas', () => {
  const two = (second: Parameters<typeof whip>, given: Partial<Vessel> = {}, ais = false) => radioBoat({
    equipment: [radio('T2', ais ? { kind: 'ais transceiver', transmitters: [aTransmitter({ service: 'AIS class A', powerW: 12.5, frequencyMHz: 162 })] } : {}), whip(...second)],
    cables: [coax('W2', 'T2:antenna', 'T12:coax', { lengthM: 1 })], ...given,
  }, { lengthM: 2 })

  it('keep 1.2 m on small craft, to the last digit', () => {
    expect(idsOf(radioOf(two(['T12', [4, 1.2, 4]])))).toEqual([])
    expect(idsOf(radioOf(two(['T12', [4, 1.19, 4]])))).toEqual(['RAD104 T12'])
  })
  it('count from the nearest points: above the top of the other', () => {
    // T11 reaches from 4 m to 6 m
    expect(radioOf(two(['T12', [4, 0, 7.3]])).separations).toMatchObject([{ horizontalM: 0, verticalM: expect.closeTo(1.3, 9), held: 'distance', comparison: { within: true } }])
    expect(idsOf(radioOf(two(['T12', [4, 0, 7.1]])))).toEqual(['RAD104 T12'])
  })
  it('of which one is of an AIS of class A keep 2 m above one another, else 10 m beside', () => {
    expect(radioOf(two(['T12', [4, 0, 8]], {}, true)).separations).toMatchObject([{ held: 'vertical', comparison: { value: 2, within: true, limit: { value: 2 } } }])
    expect(radioOf(two(['T12', [4, 0.3, 7.9]], {}, true)).separations).toMatchObject([{ held: 'vertical', comparison: { within: false } }])
    expect(radioOf(two(['T12', [4, 2, 9]], {}, true)).separations).toMatchObject([{ held: 'horizontal', comparison: { value: 2, within: false, limit: { value: 10 } } }])
    expect(radioOf(two(['T12', [-6, 0, 4]], {}, true)).separations).toMatchObject([{ held: 'horizontal', comparison: { within: true } }])
  })
  it('keep what a maker asks, be it more or less than practice', () => {
    expect(idsOf(radioOf(two(['T12', [4, 1.5, 4], { clearanceM: 2 }])))).toEqual(['RAD104 T12'])
    expect(idsOf(radioOf(two(['T12', [4, 0.8, 4], { clearanceM: 0.5 }])))).toEqual([])
    const both = two(['T12', [4, 0.8, 4], { clearanceM: 0.5 }])
    expect(idsOf(radioOf({ ...both, equipment: both.equipment.map(item => (item.tag === 'T11' ? whip('T11', [4, 0, 4], { lengthM: 2, clearanceM: 1 }) : item)) }))).toEqual(['RAD104 T12'])
  })
  it('without a position are not assessed', () => {
    const results = radioOf(two(['T12', null]))
    expect(results.separations).toEqual([])
    expect(reasonsOf(results, 'T12')).toContain('range and distance to other antennas: its position is not recorded')
  })
})

describe('what stands near a transmitting antenna or a radar', () => {
  it('is gathered into one note each', () => {
    const near = radioBoat({ equipment: [gnss('B1', [4, 0.9, 4]), gnss('B2', [4, -0.5, 4]), gnss('B3', [4, 1, 4])] })
    const found = radioOf(near).findings
    expect(found.map(({ id, subject }) => `${id} ${subject.id}`)).toEqual(['RAD302 T11'])
    expect(found[0]!.message).toMatch(/^Antenna T11: 0\.50.m .* to B2, common practice 1\.00.m .*; to B1 0\.90/)
  })
  it('keeps 1 m from a radar, 3 m if it is of an AIS of class A', () => {
    const beside = (acrossM: number, classA: boolean) => idsOf(radioOf(aVessel({
      equipment: [radio('T1', classA ? { transmitters: [aTransmitter({ service: 'AIS', powerW: 12.5, frequencyMHz: 162 })] } : {}), whip('T11', [4, acrossM, 8]), scanner('B1', [4, 0, 8], { verticalBeamDeg: null })],
      cables: [coax('W1', 'T1:antenna', 'T11', { lengthM: 1 })], cableTypes: [stated],
    }))).filter(id => /RAD104|RAD302/.test(id))
    expect([beside(1, false), beside(0.9, false), beside(3, true), beside(2.9, true)]).toEqual([[], ['RAD302 B1'], [], ['RAD104 T11']])
  })
})

describe('the beam of a radar', () => {
  // Half of 25° is 12.5°; at 2 m that is 0.443 m up or down.
  it.each([[5.44, ['RAD105 B5']], [5.45, []], [4.56, ['RAD105 B5']], [4.55, []]] as const)('5 m up meets an antenna 2 m off at %d m: %j', (heightM, found) => {
    expect(idsOf(radioOf(aVessel({ equipment: [scanner('B1', [4, 0, 5]), gnss('B5', [4, 2, heightM])] })))).toEqual(found)
  })
  it('meets a whip that reaches up into it, which is a note, and one for all of them', () => {
    const vessel = aVessel({ equipment: [scanner('B1', [4, 0, 5]), whip('T1', [4, 2, 4], { lengthM: 0.5 }), whip('T2', [4, -2, 4], { lengthM: 0.6 }), whip('T3', [4, -4, 3], { lengthM: 4 })] })
    expect(idsOf(radioOf(vessel))).toEqual(['RAD303 B1'])
    expect(radioOf(vessel).findings[0]!.message).toBe('Radar B1: its beam is crossed by T2 and T3')
  })
  it('of unknown height is not assessed', () => {
    for (const [vessel, reason] of [[aVessel({ equipment: [scanner('B1', null)] }), 'its position is not recorded'], [aVessel({ equipment: [scanner('B1', [4, 0, 5], { verticalBeamDeg: null })] }), 'the height of its beam is not recorded']] as const) {
      expect(reasonsOf(radioOf(vessel), 'B1')).toContain(`what stands in its beam: ${reason}`)
    }
  })
})

describe('ranges', () => {
  // Whip from 14 m to 16 m: middle 15 m. 2.23 (√15 + √100) = 30.94 NM, (√15 + √15) = 17.27 NM
  it('count from the middle of the radiating part', () => {
    const [range] = radioOf(radioBoat({}, { lengthM: 2 }, [4, 0, 14])).ranges
    expect(range).toMatchObject({ of: 'radio', heightM: 15 })
    expect(range!.to.map(({ outcome }) => (outcome.status === 'computed' ? Math.round(outcome.output.rangeNmi * 100) / 100 : null)).slice(0, 2)).toEqual([30.94, 17.27])
  })
  it('are there for radars and eyes as well, and below the waterline for nothing', () => {
    const results = radioOf(aVessel({ equipment: [scanner('B1', [4, 0, 5]), whip('T1', [0, 0, -1])], standingPlaces: [aPlace('H1', [0, 0, 2.2])] }))
    expect(results.ranges.map(({ of, heightM }) => [of, heightM])).toEqual([['radio', -1], ['radar', 5], ['eye', 4]])
    expect(results.ranges[0]!.to.every(({ outcome }) => outcome.status === 'not computed')).toBe(true)
  })
})

describe('people near a VHF antenna', () => {
  // 25 W less 1.5 dB, 3 dBi: 35.31 W; √(35.31 · 2.56 / (4π · 2)) = 1.8966 m, up to 1.9 m
  const boat = (acrossM: number, given: Partial<Vessel> = {}) => radioBoat({ standingPlaces: [aPlace('H1', [4, acrossM, 3])], ...given }, { lengthM: 2 })
  it('keep the distance of continuous sending, rounded up', () => {
    const [exposure] = radioOf(boat(5)).exposures
    expect(exposure!.deciding!.value).toBe(1.9)
    expect(exposure!.distances[0]!.steady).toMatchObject({ output: { exposureDistanceM: expect.closeTo(1.8966, 3) } })
    // Voice half of the time: divided by √2.
    expect(exposure!.distances[0]!.usual).toMatchObject({ output: { exposureDistanceM: expect.closeTo(1.8966 / Math.SQRT2, 3) } })
    expect(idsOf(radioOf(boat(1.9)))).toEqual([])
    expect(idsOf(radioOf(boat(1.89)))).toEqual(['RAD106 T11'])
  })
  it('are measured from head to foot', () => {
    // Head at 2.8 m, 1.2 m below the whip's foot; 1.5 m beside: 1.92 m. On tiptoe they would be within.
    expect(idsOf(radioOf(radioBoat({ standingPlaces: [aPlace('H1', [4, 1.5, 1])] })))).toEqual([])
    expect(idsOf(radioOf(radioBoat({ standingPlaces: [aPlace('H1', [4, 1.5, 1], 1.9)] })))).toEqual(['RAD106 T11'])
  })
  it('with an unknown loss all of the power counts', () => {
    const results = radioOf(boat(5, { cableTypes: [], cables: [] }))
    const silent = radioOf({ ...boat(5), cableTypes: [{ ...stated, coax: null }] })
    expect(results.exposures).toHaveLength(1)
    // 25 W, 3 dBi: 2.25 m in the published rows, so 2.3 m
    expect(silent.exposures[0]).toMatchObject({ lossTakenOff: false, deciding: { value: 2.3 } })
  })
  it('of an antenna that two share keep what the stronger asks', () => {
    const [exposure] = radioOf(aVessel({
      equipment: [radio('T2', { transmitters: [aTransmitter({ service: 'AIS', powerW: 2 })] }), radio('T1'), whip('T11', [4, 0, 4])], cableTypes: [stated],
      cables: [coax('W1', 'T1:antenna', 'T11'), coax('W2', 'T2:antenna', 'T11')],
    })).exposures
    expect(exposure!.itemTag).toBe('T1')
  })
  it('keep from an antenna that follows a satellite what its maker states', () => {
    const results = radioOf(aVessel({
      equipment: [anEquipment({ tag: 'T5', kind: 'satellite antenna', positionM: [4, 0, 4], antenna: anAntenna({ gainDbi: 10, fromMHz: 1600, toMHz: 1700 }), transmitters: [aTransmitter({ service: 'satellite telephone', terminal: null, frequencyMHz: 1640 })] })],
      standingPlaces: [aPlace('H1', [4, 1, 3])],
    }))
    expect(results.exposures[0]!.people).toEqual([])
    expect(reasonsOf(results, 'T5')).toContain('exposure of people: it sends in a beam that follows its satellite; keep the distance that its maker states')
  })
  it('are not assessed without gain, position or places', () => {
    const reasons = (vessel: Vessel) => reasonsOf(radioOf(vessel), 'T11')
    expect(reasons(radioBoat({}, { gainDbi: null, lengthM: 1 }))).toEqual(['exposure of people: the gain of T11 is not recorded'])
    expect(reasons(radioBoat({}, { lengthM: 1 }))).toEqual(['exposure of people: no place where people stand is recorded'])
    expect(reasons(radioBoat({}, {}, null))).toContain('exposure of people: its position is not recorded')
  })
})

describe('people near a radar', () => {
  // 1.68 W, 27 dBi: 842 W; beam at rest 2.59 m, up to 2.6 m; turning with 4° 0.27 m
  const boat = (feetM: number, awayM: number, radar: Parameters<typeof scanner>[2] = {}) => radioOf(aVessel({ equipment: [scanner('B1', [4, 0, 5], radar)], standingPlaces: [aPlace('H1', [4, awayM, feetM])] }))
  it('keep the distance of a beam at rest, in the beam', () => {
    expect(boat(3.5, 3).exposures[0]).toMatchObject({ deciding: { value: 2.6 }, meanPower: { output: { meanPowerW: 1.68 } }, rotating: { output: { averagePowerW: expect.closeTo(9.356, 2) } } })
    expect(boat(3.5, 3).exposures[0]!.distances[0]!.usual).toMatchObject({ output: { exposureDistanceM: expect.closeTo(0.273, 2) } })
    expect(idsOf(boat(3.5, 2.5))).toEqual(['RAD106 B1'])
    expect(idsOf(boat(3.5, 2.7))).toEqual([])
  })
  it('below the beam are out of it, unless its height is not known', () => {
    expect(idsOf(boat(1.5, 1))).toEqual([])
    expect(idsOf(boat(1.5, 1, { verticalBeamDeg: null }))).toEqual(['RAD106 B1'])
  })
  it('keep what its maker says everywhere, and that first', () => {
    expect(idsOf(boat(1.5, 1, { safeDistanceM: 2.5 }))).toEqual(['RAD106 B1'])
    expect(idsOf(boat(3.5, 2.5, { safeDistanceM: 0.5 }))).toEqual([])
  })
  it('of stated mean power need no pulses; of nothing stated are not assessed', () => {
    expect(boat(3.5, 3, { meanPowerW: 16.25, gainDbi: 30, peakPowerW: null }).exposures[0]).toMatchObject({ meanPower: null, deciding: { value: 11.4 } })
    expect(reasonsOf(boat(3.5, 3, { peakPowerW: null }), 'B1')).toEqual(['exposure of people: neither its mean power nor peak power, pulse and repetition rate together are recorded'])
    expect(reasonsOf(boat(3.5, 3, { frequencyMHz: null }), 'B1')).toEqual(['exposure of people: its frequency is not recorded'])
  })
})
