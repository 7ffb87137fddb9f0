/** Bearings and sectors: angles by hand from right triangles; the sectors of boxes against rays sampled one by one. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allRound, bearingDeg, type Box, distanceBetweenM, isIn, isInside, overlap, sectorsOfBox, united, widthOf } from '../../src/calculate/geometry.js'
import type { Position } from '../../src/model/vessel.js'

const origin: Position = [0, 0, 0]
const level = { lowestDeg: -5, highestDeg: 5 }
const box = (x: readonly [number, number], y: readonly [number, number], z: readonly [number, number] = [-1, 1]): Box => ({ fromM: [x[0], y[0], z[0]], toM: [x[1], y[1], z[1]] })

describe('distance and bearing', () => {
  it('is 13 m over 3, 4 and 12 m', () => expect(distanceBetweenM([1, 1, 1], [4, -3, 13])).toBe(13))
  it.each([[[5, 0], 0], [[5, -5], 45], [[0, -2], 90], [[-3, 0], 180], [[0, 2], 270], [[1, 1], 315]] as const)('to %s is %d°', (point, expected) => {
    expect(bearingDeg(origin, point)).toBeCloseTo(expected, 9)
  })
})

describe('a box', () => {
  // 0.1 m to either side at 0.3 m: atan(1/3) = 18.435°.
  it('ahead spans its near corners, over the bow', () => {
    const [sector, ...rest] = sectorsOfBox(box([0.3, 0.5], [-0.1, 0.1]), origin, level)
    expect(rest).toEqual([])
    expect([sector!.fromDeg, sector!.widthDeg]).toEqual([expect.closeTo(360 - 18.4349, 3), expect.closeTo(36.8699, 3)])
  })
  it('around the eye is all round, and the eye may lie inside', () => {
    expect(sectorsOfBox(box([-1, 1], [-1, 1]), origin, level)).toEqual([allRound])
    expect([isInside(box([-1, 1], [-1, 1]), origin), isInside(box([0, 1], [-1, 1]), origin)]).toEqual([true, false])
  })
  it('below or above the band is not seen', () => {
    expect(sectorsOfBox(box([2, 3], [-1, 1], [-9, -1]), origin, level)).toEqual([])
    expect(sectorsOfBox(box([2, 3], [-1, 1], [1, 9]), origin, level)).toEqual([])
  })
  // A roof 1 m below the eye comes up to −12.5° at 1 / tan 12.5° = 4.511 m; it reaches 5 m ahead and 2 m to each side.
  it('of which only the far end rises into the band is seen over that end alone', () => {
    const [sector, ...rest] = sectorsOfBox(box([-2, 5], [-2, 2], [-4, -1]), origin, { lowestDeg: -12.5, highestDeg: 12.5 })
    expect(rest).toEqual([])
    const half = (Math.asin(2 / (1 / Math.tan((12.5 * Math.PI) / 180))) * 180) / Math.PI
    expect([sector!.fromDeg, sector!.widthDeg]).toEqual([expect.closeTo(360 - half, 6), expect.closeTo(2 * half, 6)])
    expect(2 * half).toBeCloseTo(52.65, 1)
  })
  it('is seen exactly where a ray to one of its points within the band says so', () => {
    const length = fc.double({ min: 0.2, max: 4, noNaN: true })
    const place = fc.double({ min: -6, max: 6, noNaN: true })
    fc.assert(fc.property(place, place, place, length, length, length, fc.integer({ min: 0, max: 359 }), (x, y, z, a, b, c, degree) => {
      const it = box([x, x + a], [y, y + b], [z, z + c])
      fc.pre(!isInside(it, origin))
      const atDeg = degree + 0.137
      const sectors = sectorsOfBox(it, origin, level)
      const ray = Array.from({ length: 4000 }, (_, i) => (i + 0.5) / 400).filter(r => {
        const [px, py] = [r * Math.cos((atDeg * Math.PI) / 180), -r * Math.sin((atDeg * Math.PI) / 180)]
        return px > x && px < x + a && py > y && py < y + b
      })
      const hit = ray.some(r => [z, z + c].some(h => Math.abs(Math.atan2(h, r)) < (5 * Math.PI) / 180) || (z < 0 && z + c > 0))
      const said = sectors.some(sector => isIn(sector, atDeg))
      if (hit) expect(said).toBe(true)
      // A ray sampled every 2.5 mm may miss a corner, and nothing else.
      if (said && !hit) expect(ray.length < 3 || sectors.some(({ fromDeg, widthDeg }) => Math.min(Math.abs(atDeg - fromDeg), Math.abs(atDeg - fromDeg - widthDeg)) < 1) || Math.min(...[z, z + c].flatMap(h => ray.map(r => Math.abs(Math.abs(Math.atan2(h, r)) * 180 / Math.PI - 5)))) < 0.2).toBe(true)
    }), { numRuns: 300 })
  })
})

describe('sectors together', () => {
  it('join over the bow and where they touch', () => {
    expect(united([{ fromDeg: 350, widthDeg: 20 }, { fromDeg: 5, widthDeg: 30 }, { fromDeg: 35, widthDeg: 5 }])).toEqual([{ fromDeg: 350, widthDeg: expect.closeTo(50, 9) }])
    expect(united([{ fromDeg: 0, widthDeg: 180 }, { fromDeg: 180, widthDeg: 180 }])).toEqual([allRound])
    expect(united([])).toEqual([])
  })
  it('overlap in the common part', () => {
    expect(overlap([{ fromDeg: 300, widthDeg: 120 }], [{ fromDeg: 350, widthDeg: 20 }, { fromDeg: 90, widthDeg: 10 }])).toEqual([{ fromDeg: 350, widthDeg: expect.closeTo(20, 9) }])
    expect(widthOf(overlap([allRound], [{ fromDeg: 112.5, widthDeg: 135 }]))).toBeCloseTo(135, 9)
  })
  it('are never wider together than apart, nor their overlap wider than either', () => {
    const sector = fc.record({ fromDeg: fc.integer({ min: 0, max: 359 }), widthDeg: fc.integer({ min: 1, max: 200 }) })
    fc.assert(fc.property(sector, sector, (a, b) => {
      const [both, common] = [widthOf(united([a, b])), widthOf(overlap([a], [b]))]
      expect(both + common).toBeCloseTo(a.widthDeg + b.widthDeg, 6)
      expect(common).toBeLessThanOrEqual(Math.min(a.widthDeg, b.widthDeg) + 1e-6)
    }))
  })
})
