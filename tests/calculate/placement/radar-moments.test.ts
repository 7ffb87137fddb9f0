/** Radar: right triangles. Moments: sums by hand. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Equipment, Position, Radar } from '../../../src/model/vessel.js'
import { aBattery, anEquipment } from '../../support/vessel-builder.js'
import { aBoat, aStructure, idsOf, placementOf, reasonsOf, withStability } from './support.js'

const radar = (given: Partial<Radar> = {}): Radar => ({
  frequencyMHz: null, peakPowerW: null, pulseUs: null, repetitionHz: null, gainDbi: null, horizontalBeamDeg: null, verticalBeamDeg: 25, meanPowerW: null, safeDistanceM: null, ...given,
})
const scanner = (positionM: Position | null = [4, 0, 4], given: Partial<Radar> = {}): Equipment => anEquipment({ tag: 'B1', kind: 'radar scanner', positionM, radar: radar(given) })
const mast = aStructure('ST1', [5.3, 0.1, 2], [5.5, -0.1, 10])

/** What is wanted of lights is the business of another test. */
const ofRadar = (reasons: readonly string[]): readonly string[] => reasons.filter(reason => reason.startsWith('B1'))

describe('a radar 4 m high with a beam of 25°', () => {
  it('is blind nearer than 18.04 m', () => {
    expect(placementOf(aBoat({ equipment: [scanner()] })).radars[0]!.blindDistance).toMatchObject({ output: { blindDistanceM: expect.closeTo(18.04, 2) } })
  })
  // 0.1 m to each side at 1.3 m: 2 · 4.3987°
  it('is blind ahead behind a mast', () => {
    const vessel = aBoat({ equipment: [scanner()], structures: [mast] })
    const { blind } = placementOf(vessel).radars[0]!
    expect(blind).toMatchObject({ ahead: true, sectors: [{ fromDeg: expect.closeTo(355.601, 3), widthDeg: expect.closeTo(8.797, 3) }] })
    expect(idsOf(vessel)).toEqual(['PLC304 B1'])
    expect(placementOf(vessel).findings[0]!.evidence['blindSectorDeg']).toBeCloseTo(8.797, 3)
  })
  it('is told of a mast abaft it, and not warned', () => {
    const vessel = aBoat({ equipment: [scanner([7, 0, 4])], structures: [mast] })
    expect(idsOf(vessel)).toEqual([])
    expect(placementOf(vessel).radars[0]!.blind).toMatchObject({ ahead: false, sectors: [{ fromDeg: expect.closeTo(180 - Math.atan(0.1 / 1.5) * 180 / Math.PI, 6) }] })
  })
  // A roof 1 m below: 12.5° down is 4.51 m away.
  it.each([[8.5, false], [8.6, true]] as const)('sees over a roof that reaches %d m forward: %s', (forwardM, seen) => {
    const roof = aStructure('ST2', [3, 1.5, 1], [forwardM, -1.5, 3])
    expect(placementOf(aBoat({ equipment: [scanner()], structures: [roof] })).radars[0]!.blind!.ahead).toBe(seen)
  })
  it('is not assessed without position, beam or structures, nor for what it stands in', () => {
    expect(ofRadar(reasonsOf(aBoat({ equipment: [scanner(null)] })))).toEqual(['B1: blind sector and blind distance: its position is not recorded'])
    expect(ofRadar(reasonsOf(aBoat({ equipment: [scanner(undefined, { verticalBeamDeg: null })] })))).toEqual(['B1: blind sector and blind distance: the height of its beam is not recorded'])
    expect(ofRadar(reasonsOf(aBoat({ equipment: [scanner()] })))).toEqual(['B1: blind sector: no structure is recorded'])
    expect(ofRadar(reasonsOf(aBoat({ equipment: [scanner([5.4, 0, 4])], structures: [mast] })))).toEqual(['B1: blind sector from ST1: its position lies inside it'])
    expect(idsOf(aBoat({ equipment: [scanner([5.4, 0, 4])], structures: [mast] }))).toEqual([])
    expect(placementOf(aBoat({ equipment: [{ ...scanner(), status: 'removed' }] })).radars).toEqual([])
  })
})

const mass = (tag: string, massKg: number | null, positionM: Position | null): Equipment => anEquipment({ tag, massKg, positionM })

describe('mass and moments', () => {
  const two = [mass('M1', 60, [1, 2, 0.5]), mass('M2', 40, [6, -0.5, 3])]
  it('are summed over equipment and batteries', () => {
    const { moments } = placementOf(aBoat({ equipment: [two[0]!], batteries: [aBattery({ tag: 'G1', massKg: 40, positionM: [6, -0.5, 3] })] }))
    expect(moments!.centre).toMatchObject({ input: { massKg: 100, forwardMomentKgM: 300, portMomentKgM: 100, upMomentKgM: 150 }, output: { forwardM: 3, toPortM: 1, upM: 1.5 } })
  })
  it('leave out what is removed, and say what lacks a mass or a position', () => {
    const { moments } = placementOf(aBoat({ equipment: [...two, { ...mass('M3', 500, [0, 5, 0]), status: 'removed' }, mass('M4', 7, null), mass('M5', null, [0, 0, 0])] }))
    expect([moments!.parts.length, moments!.withoutPlace, moments!.withoutMassTags]).toEqual([2, [{ tag: 'M4', massKg: 7 }], ['M5']])
    expect(reasonsOf(aBoat({ equipment: [...two, mass('M4', 7, null)] }))).toContain('Sandpiper: moments of what has a mass and no position: M4')
    expect(reasonsOf(aBoat({ equipment: [...two, mass('M4', 7, null), mass('M6', 640, null)] }))).toContain('Sandpiper: moments of what has a mass and no position: M6 and M4')
  })
  it('are nothing where no mass is recorded', () => expect(placementOf(aBoat({ equipment: [mass('M1', null, null)] })).moments).toBeNull())

  // Without the fit 9000 kg at 6, 0, 0.5: shift 100 · (3 − 6, 1 − 0, 1.5 − 0.5) / 9100.
  it('shift the centre of gravity of a boat given without them', () => {
    const { moments } = placementOf(aBoat({ equipment: two }))
    expect(moments!.shift).toMatchObject({ output: { shiftForwardM: expect.closeTo(-0.032967, 6), shiftToPortM: expect.closeTo(0.010989, 6), shiftUpM: expect.closeTo(0.010989, 6) } })
    expect(moments!.heel).toMatchObject({ input: { displacementKg: 9100 } })
  })
  it('have shifted that of a boat given with them', () => {
    const { moments } = placementOf(aBoat({ equipment: two }, withStability({ includesEquipment: true })))
    expect(moments!.shift).toMatchObject({ input: { referenceMassKg: 8900 }, output: { shiftForwardM: expect.closeTo(-300 / 8900, 9) } })
    expect(moments!.heel).toMatchObject({ input: { displacementKg: 9000 } })
  })
  it('lead back to where the boat was: what is put on can be taken off', () => {
    const coordinate = fc.double({ min: -5, max: 10, noNaN: true })
    fc.assert(fc.property(fc.double({ min: 1, max: 900, noNaN: true }), coordinate, coordinate, coordinate, (massKg, x, y, z) => {
      const shiftOf = (vessel: Parameters<typeof placementOf>[0]) => {
        const { shift } = placementOf(vessel).moments!
        if (shift.status === 'not computed') throw new Error(shift.reason)
        return shift.output
      }
      const equipment = [mass('M1', massKg, [x, y, z])]
      const put = shiftOf(aBoat({ equipment }))
      const after = withStability({ includesEquipment: true, centreOfGravityM: [6 + put.shiftForwardM, put.shiftToPortM, 0.5 + put.shiftUpM] })
      const taken = shiftOf(aBoat({ equipment }, { displacementKg: 9000 + massKg, ...after }))
      expect([taken.shiftForwardM, taken.shiftToPortM, taken.shiftUpM]).toEqual([put.shiftForwardM, put.shiftToPortM, put.shiftUpM].map(value => expect.closeTo(value, 6)))
    }), { numRuns: 50 })
  })

  // tan 1° · (9000 + 100) kg · 0.9 m = 142.96 kg·m
  it.each([[1.429, []], [1.43, ['PLC113 Sandpiper']], [-1.43, ['PLC113 Sandpiper']]] as const)('heel: 100 kg %d m to port', (toPortM, ids) => {
    expect(idsOf(aBoat({ equipment: [mass('M1', 100, [5, toPortM, 1])] }))).toEqual(ids)
  })
  it('heel to the side they are on', () => {
    const side = (toPortM: number) => placementOf(aBoat({ equipment: [mass('M1', 300, [5, toPortM, 1])] })).findings[0]!.message
    expect([side(1), side(-1)].map(message => /to (\w+),/.exec(message)?.[1])).toEqual(['port', 'starboard'])
  })
  // 5 % of 300 kg are 15 kg.
  it.each([[15, true], [15.1, false]] as const)('are not held against a heel while %d kg without a position are left out: judged %s', (massKg, judged) => {
    const { moments, findings, notAssessed } = placementOf(aBoat({ equipment: [mass('M1', 300, [5, 1, 1]), { ...mass('M2', massKg, [0, 0, 0]), positionM: null }] }))
    expect([moments!.heelComparison !== null, findings.some(({ id }) => id === 'PLC113'), notAssessed.some(({ reason }) => reason.startsWith('heel from the fit against its limit'))])
      .toEqual([judged, judged, !judged])
  })
  it('have no heel and no shift without displacement, metacentric height, centre', () => {
    expect(reasonsOf(aBoat({ equipment: two }, { displacementKg: null })).filter(reason => reason.includes('displacement'))).toHaveLength(2)
    expect(reasonsOf(aBoat({ equipment: two }, withStability({ metacentricHeightM: null })))).toContain('Sandpiper: heel from the fit: the metacentric height is not recorded')
    const open = 'Sandpiper: shift of the centre of gravity and heel: whether the displacement counts the fit is not recorded; it is taken to be without it'
    expect(reasonsOf(aBoat({ equipment: two }, withStability({ includesEquipment: null })))).toContain(open)
    expect(reasonsOf(aBoat({ equipment: two }))).not.toContain(open)
    expect(reasonsOf(aBoat({ equipment: two }, withStability({ centreOfGravityM: null })))).toContain('Sandpiper: shift of the centre of gravity: the centre of gravity of the vessel is not recorded')
    expect(placementOf(aBoat({ equipment: [mass('M4', 7, null)] })).moments!.centre.status).toBe('not computed')
  })
})

describe('the reference point for AIS', () => {
  const ais = anEquipment({ tag: 'T1', kind: 'ais transceiver' })
  it('is given for each receiver where there is a transceiver', () => {
    const equipment = [ais, anEquipment({ tag: 'B1', kind: 'gnss receiver', positionM: [3, 0, 4] })]
    expect(placementOf(aBoat({ equipment }, { lengthM: 12, beamM: 4 })).positionReferences[0]!.dimensions).toMatchObject({ output: { bowM: 9, sternM: 3, portM: 2, starboardM: 2 } })
    expect(placementOf(aBoat({ equipment: equipment.slice(1) })).positionReferences).toEqual([])
  })
  it('is not assessed without particulars or a position', () => {
    expect(reasonsOf(aBoat({ equipment: [ais] })).join()).toContain('no receiver of positions is recorded')
    expect(reasonsOf(aBoat({ equipment: [ais] }, { beamM: null })).join()).toContain('reference point for AIS: the beam of the vessel is not recorded')
    expect(reasonsOf(aBoat({ equipment: [ais] }, { beamM: null, lengthM: null })).join()).toContain('length and beam of the vessel are not recorded')
    const unplaced = anEquipment({ tag: 'B7', kind: 'gnss receiver' })
    expect(reasonsOf(aBoat({ equipment: [ais, unplaced, anEquipment({ ...unplaced, tag: 'B8', positionM: [3, 0, 4] })] }))).toContain('B7: reference point for AIS: its position is not recorded')
  })
})

it('survives a vessel with nothing, and zeros', () => {
  expect(placementOf({ ...aBoat(), identity: { ...aBoat().identity, lengthM: null, propulsion: null } }).notAssessed).toEqual([])
  const zeros = aBoat({ equipment: [scanner([0, 0, 0], { verticalBeamDeg: 0 }), mass('M1', 0, [0, 0, 0])], structures: [aStructure('ST1', [0, 0, 0], [0, 0, 0])] }, { displacementKg: 0, lengthM: 0, beamM: 0 })
  expect(() => placementOf(zeros)).not.toThrow()
  expect(placementOf(zeros).findings.map(({ id }) => id).filter(id => id !== 'PLC104')).toEqual([])
})
