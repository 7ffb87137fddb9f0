/** Antennas drawn to scale: places follow from the frame, 372 wide from 40. */
import { describe, expect, it } from 'vitest'
import { antennaPlan, type PlanMark } from '../../../src/view/drawings/antenna-plan.js'

const mark = (tag: string, acrossM: number, footM: number, topM = footM, given: Partial<PlanMark> = {}): PlanMark => ({ tag, is: 'antenna', acrossM, footM, topM, keepM: null, beamDeg: null, ...given })
const plan = (marks: readonly PlanMark[], boxes: Parameters<typeof antennaPlan>[0]['boxes'] = []) =>
  antennaPlan({ title: 'Antennas', marks, boxes, heights: { everyM: 1, text: step => `${step} m` } })
const all = (svg: string, pattern: RegExp) => [...svg.matchAll(pattern)].map(([, ...groups]) => groups.map(Number))

describe('a drawing of the antennas', () => {
  // 6.4 m of height in at most 320: 50 a metre. Span 2 + 2.4 m at 50 is 220 of 372; the middle, 5 m, stands at 226.
  const svg = plan([mark('T1', 4, 4, 5.8), mark('T2', 6, 4), mark('B1', 5, 5, 5, { is: 'scanner', beamDeg: 12.5, keepM: 1 }), mark('H1', 5, 1, 2.8, { is: 'person' })])
  it('is to scale in both directions', () => {
    const [[x1, x2, y1, y2]] = all(svg, /<line x1="([\d.]+)" x2="([\d.]+)" y1="([\d.]+)" y2="([\d.]+)" stroke="#0f5a78"/g) as [[number, number, number, number]]
    expect([x1, x2]).toEqual([176, 176])
    expect(y1 - y2).toBeCloseTo(90, 1)
    expect(all(svg, /<circle cx="([\d.]+)" cy="[\d.]+" r="3"/g)).toEqual([[176], [276]])
  })
  it('opens the beam by its angle to both sides', () => {
    const points = [...svg.matchAll(/<polygon points="([\d.]+),([\d.]+) (-?[\d.]+),(-?[\d.]+)/g)].map(([, ...at]) => at.map(Number))
    expect(points.map(([x, y, farX, farY]) => Math.round(Math.atan2(y! - farY!, Math.abs(farX! - x!)) * (1800 / Math.PI)) / 10)).toEqual([12.5, 12.5])
  })
  it('keeps people away from a scanner in its beam only, from an antenna all round', () => {
    expect(svg.match(/<path d="M/g)).toHaveLength(2)
    const round = plan([mark('T1', 4, 4, 6, { keepM: 2 }), mark('T2', 12, 0)])
    const [[width, height]] = all(round, /width="([\d.]+)" height="([\d.]+)" rx="[\d.]+" fill="none"/g) as [[number, number]]
    // 4 m wide, 2 m of whip and 4 m high
    expect(height / width).toBeCloseTo(6 / 4, 2)
  })
  it('names everything inside its edges, and no two names upon one another', () => {
    const crowd = plan(Array.from({ length: 14 }, (_, i) => mark(`T${i + 10}`, 4 + 0.01 * i, 4)))
    const names = [...crowd.matchAll(/<text x="([\d.]+)" y="([\d.]+)" text-anchor="middle">(T\d+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
    expect(names).toHaveLength(14)
    for (const [x, y] of names) {
      expect(x).toBeGreaterThan(40)
      expect(x).toBeLessThan(412)
      expect(names.filter(([otherX, otherY]) => otherY === y && Math.abs(otherX - x) < 18)).toHaveLength(1)
    }
  })
  it('writes one antenna alone, and markup in a tag', () => {
    expect(plan([mark('T<1>', 0, 0)])).toContain('T&lt;1&gt;')
    expect(plan([mark('T1', 0, 0)])).not.toMatch(/NaN|Infinity| id=/)
  })
  it('names a structure where there is room, and cuts off what lies outside', () => {
    const boxes = [{ tag: 'S1', fromM: -50, toM: 50, footM: 0, topM: 2 }, { tag: 'S2', fromM: 5, toM: 5.1, footM: 0, topM: 2 }]
    const drawn = plan([mark('T1', 4, 4), mark('T2', 6, 4)], boxes)
    expect(drawn).toContain('>S1<')
    expect(drawn).not.toContain('>S2<')
    const [[x]] = all(drawn, /<text x="([\d.]+)" y="[\d.]+" text-anchor="end">S1/g) as [[number]]
    expect(x).toBeLessThanOrEqual(412)
  })
})
