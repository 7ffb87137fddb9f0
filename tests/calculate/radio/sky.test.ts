/** Share of the sky that boxes hide, against solid angles known in closed form. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Position, Structure } from '../../../src/model/vessel.js'
import { anEquipment, aVessel } from '../../support/vessel-builder.js'
import { aStructure, coax, gnss, idsOf, radioOf, reasonsOf } from './support.js'

const viewOf = (structures: readonly Structure[], at: Position = [0, 0, 0]) => radioOf(aVessel({ equipment: [gnss('B1', at)], structures })).skies[0]!
const sharePercent = (structures: readonly Structure[], at?: Position): number => viewOf(structures, at).blockedPercent!

/** Solid angle of a plate at the distance d, seen from the foot of the perpendicular on its corner: a wide, b high. */
const corner = (a: number, b: number, d: number): number => Math.atan((a * b) / (d * Math.sqrt(a * a + b * b + d * d)))
const skySolidAngle = 2 * Math.PI * (1 - Math.sin((5 * Math.PI) / 180))

describe('what is hidden', () => {
  it('by a wall without end is half of the sky', () => {
    expect(sharePercent([aStructure('S1', [1, -1e7, -1e7], [2, 1e7, 1e7])])).toBeCloseTo(50, 4)
  })
  it('by a wall without thickness as well, and by one that it stands in nothing', () => {
    expect(sharePercent([aStructure('S1', [1, -1e7, -1e7], [1, 1e7, 1e7])])).toBeCloseTo(50, 4)
    expect(sharePercent([aStructure('S1', [0, -1e7, -1e7], [0, 1e7, 1e7])])).toBe(0)
  })
  it('by four walls is all of it, and by nothing nothing', () => {
    const walls = ([[1, 0], [-2, 0], [0, 1], [0, -2]] as const).map(([x, y], i) => (x !== 0 ? aStructure(`S${i}`, [x, -1e7, -1], [x + 1, 1e7, 1e7]) : aStructure(`S${i}`, [-1e7, y, -1], [1e7, y + 1, 1e7])))
    expect(sharePercent(walls)).toBeCloseTo(100, 4)
    expect(viewOf(walls).sectors).toMatchObject([{ fromDeg: 0, toDeg: 360 }])
    expect(sharePercent([aStructure('S1', [1, -1, -3], [2, 1, -1])])).toBe(0)
  })
  // A plate is a thin box. Solid angle of a rectangle in closed form (textbooks of photometry); the lower edge is above 5° all along.
  it.each([[10, 4, 3, 9], [5, 3, 1, 4], [20, 15, 5, 30]] as const)('by a plate %d m off, %d m to both sides, from %d m to %d m up, is its solid angle', (d, a, from, to) => {
    const expected = (100 * 2 * (corner(a, to, d) - corner(a, from, d))) / skySolidAngle
    const ahead = sharePercent([aStructure('S1', [d, -a, from], [d + 1e-9, a, to])])
    expect(Math.abs(ahead - expected)).toBeLessThan(0.02)
  })
  // A pole thinner than two degrees, 10° to 45° high: 2·atan(0.02/1) of the horizon, (sin 45° − sin 10°)/(1 − sin 5°) of the height.
  it.each([0, 0.1, 0.5, 3.7])('by a thin pole is its width, wherever the pole stands between whole degrees (%d°)', turnDeg => {
    const [x, y] = [Math.cos((turnDeg * Math.PI) / 180), -Math.sin((turnDeg * Math.PI) / 180)]
    const rise = (deg: number) => Math.tan((deg * Math.PI) / 180)
    const share = sharePercent([aStructure('S1', [x, y - 0.02, rise(10)], [x + 1e-9, y + 0.02, rise(45)])])
    const expected = (100 * (2 * Math.atan(0.02)) * (Math.sin(Math.PI / 4) - Math.sin(Math.PI / 18))) / (2 * Math.PI * (1 - Math.sin(Math.PI / 36)))
    expect(Math.abs(share / expected - 1)).toBeLessThan(0.06)
  })
  // A box straight overhead: four times the corner of its underside.
  it('by a roof overhead is its solid angle', () => {
    const expected = (100 * 4 * corner(2, 2, 3)) / skySolidAngle
    expect(Math.abs(sharePercent([aStructure('S1', [-2, -2, 3], [2, 2, 3.001])]) - expected)).toBeLessThan(0.02)
  })
  it('is named by its sector, clockwise from the bow', () => {
    // 45° to both sides of the bow; abeam to starboard (y below zero) 45° to 135°
    expect(viewOf([aStructure('S1', [1, -1, 0], [2, 1, 1])]).sectors).toMatchObject([{ fromDeg: 315, toDeg: 45, structureTags: ['S1'] }])
    expect(viewOf([aStructure('S1', [-1, -2, 0], [1, -1, 1])]).sectors).toMatchObject([{ fromDeg: 45, toDeg: 135 }])
    expect(viewOf([aStructure('S1', [-1, -2, 0], [1, -1, 1])]).sectors[0]!.highestElevationDeg).toBeCloseTo(45, 1)
  })
})

const box = fc.tuple(...[0, 1].map(() => fc.tuple(fc.double({ min: 0.5, max: 8, noNaN: true }), fc.double({ min: -8, max: 8, noNaN: true }), fc.double({ min: -2, max: 8, noNaN: true })))).map(([a, b]): Structure =>
  aStructure('S1', a as unknown as Position, b as unknown as Position))
const turned = ({ fromM, toM, tag }: Structure): Structure => aStructure(tag, [fromM[1], -fromM[0], fromM[2]], [toM[1], -toM[0], toM[2]])

describe('properties', () => {
  it('a quarter turn of everything changes nothing', () => {
    fc.assert(fc.property(box, structure => { expect(sharePercent([turned(structure)])).toBeCloseTo(sharePercent([structure]), 6) }))
  })
  it('a box twice is a box once, and a further box never shows more sky', () => {
    fc.assert(fc.property(box, box, (one, other) => {
      const share = sharePercent([one])
      expect(sharePercent([one, { ...one, tag: 'S2' }])).toBeCloseTo(share, 6)
      const both = sharePercent([one, { ...other, tag: 'S2' }])
      expect(both).toBeGreaterThanOrEqual(share - 1e-9)
      expect(both).toBeLessThanOrEqual(share + sharePercent([other]) + 1e-9)
    }))
  })
  it('sectors add up to the share', () => {
    fc.assert(fc.property(box, structure => {
      const { blockedPercent, sectors } = viewOf([structure])
      expect(sectors.reduce((sum, sector) => sum + sector.blockedPercent, 0)).toBeCloseTo(blockedPercent!, 9)
    }))
  })
})

describe('planning values', () => {
  // A wall to the zenith over 72° hides 20 %; over 36° 10 %.
  const wall = (halfDeg: number) => [aStructure('S1', [1, -Math.tan((halfDeg * Math.PI) / 180), -1], [1.0001, Math.tan((halfDeg * Math.PI) / 180), 1e7])]
  const found = (kind: string, halfDeg: number) => idsOf(radioOf(aVessel({ equipment: [anEquipment({ tag: 'B1', kind, positionM: [0, 0, 0] })], structures: wall(halfDeg) })))
  it('are 20 % for position and 10 % for an antenna that follows one satellite', () => {
    expect([found('gnss antenna', 35), found('gnss antenna', 37), found('satellite antenna', 17), found('satellite antenna', 19)]).toEqual([[], ['RAD304 B1'], [], ['RAD304 B1']])
  })
  it('hold for a receiver with its antenna inside, and not for one with a cable to its antenna', () => {
    expect(found('gnss receiver', 40)).toEqual(['RAD304 B1'])
    const wired = aVessel({ equipment: [anEquipment({ tag: 'B1', kind: 'gnss receiver', positionM: [0, 0, 0] }), gnss('B2', [-50, 0, 9])], cables: [coax('W1', 'B1', 'B2')], structures: wall(40) })
    expect(radioOf(wired).skies.map(({ tag }) => tag)).toEqual(['B2'])
  })
  it('are not held against anything without position or structures, nor from inside a structure', () => {
    const reasons = (structures: readonly Structure[], at: Position | null) => reasonsOf(radioOf(aVessel({ equipment: [gnss('B1', at)], structures })), 'B1')
    expect(reasons([], [0, 0, 0])).toEqual(['view of the sky: no structure is recorded'])
    expect(reasons(wall(40), null)).toContain('view of the sky: its position is not recorded')
    expect(reasons([aStructure('S1', [-1, -1, -1], [1, 1, 1])], [0, 0, 0])).toEqual(['view of the sky: by its position it is inside S1'])
    // On top of it nothing is hidden.
    expect(sharePercent([aStructure('S1', [-1, -1, -1], [1, 1, 0])])).toBe(0)
  })
})
