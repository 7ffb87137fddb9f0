/** One zone with its numbers: places worked out by hand. */
import { describe, expect, it } from 'vitest'
import { type DetailMark, movedApart, type Spot, zoneDetail, type ZoneDetail } from '../../../src/view/drawings/zone-detail.js'

const mark = (number: string, place: DetailMark['place'], exact = true): DetailMark => ({ number, name: `P${number} Display`, to: `equipment/p${number}`, place, exact })
// 2.1 m in 315: 150 a metre; 14 round it.
const drawn = (marks: readonly DetailMark[], given: Partial<ZoneDetail> = {}) => zoneDetail({ title: 'Zone', view: 'plan', box: { from: [3, 0], upTo: [5.1, 1] }, marks, units: 'metric', ...given })
const numbers = (svg: string) => [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="8.5"/g)].map(([, x, y]) => [Number(x), Number(y)] as const)

describe('a zone', () => {
  // x: 14 + 0.5 · 150; y: 14 + (1 − 0.25) · 150
  it('has each number where its item is', () => expect(numbers(drawn([mark('1', [3.5, 0.25]), mark('2', [5.1, 1])]))).toEqual([[89, 126.5], [329, 14]]))
  it('is drawn smaller where an item lies outside it', () => {
    // 4.2 m in 315: 75 a metre.
    expect(numbers(drawn([mark('1', [7.2, 0.5])]))).toEqual([[329, 51.5]])
    expect(drawn([mark('1', [7.2, 0.5])])).toContain('<rect x="14" y="14" width="157.5" height="75"')
  })
  it('leads each number to its page, with its name, and shows what is only known to be there by a dashed ring', () => {
    const svg = drawn([mark('1', [3.5, 0.25]), mark('2', [4.5, 0.25], false)])
    expect(svg).toContain('<a href="asfitted:equipment/p1"><title>P1 Display</title>')
    expect(svg.match(/stroke-dasharray="2.4 1.8"/g)).toHaveLength(1)
    expect(svg).not.toMatch(/ id=|NaN|Infinity/)
  })
  it('has a line from a number that had to make room to its place', () => {
    const svg = drawn([mark('1', [4, 0.5]), mark('2', [4, 0.5])])
    expect(svg.match(/r="2.2"/g)).toHaveLength(2)
    expect(drawn([mark('1', [4, 0.5])])).not.toContain('r="2.2"')
  })
  it('shows the centreline, from the side the waterline, where they run through it', () => {
    expect(drawn([], { box: { from: [0, -1], upTo: [2, 1] } })).toContain('centreline')
    expect(drawn([], { box: { from: [0, -1], upTo: [2, 1] }, view: 'profile' })).toContain('waterline')
    expect(drawn([])).not.toContain('centreline')
  })
  it('names the centreline beside a zone that is too narrow to hold the word', () => {
    // 4 m athwartships in 400: 100 a metre; 1 m wide lies from 121.5 to 221.5.
    expect(drawn([], { box: { from: [0, -2], upTo: [1, 2] } })).toContain('<text class="over" x="225.5" y="218" text-anchor="start">centreline')
  })
  it('is drawn though it has no size', () => expect(drawn([mark('1', [1, 1])], { box: { from: [1, 1], upTo: [1, 1] } })).not.toMatch(/NaN|Infinity/))
})

describe('numbers that would lie on one another', () => {
  const sheet = { width: 343, height: 400 }
  const apart = (spots: readonly Spot[]) => Math.min(...spots.flatMap(([x, y], i) => spots.slice(i + 1).map(([otherX, otherY]) => Math.hypot(x - otherX, y - otherY))))
  it('go half the way each', () => expect(movedApart([[100, 100], [110, 100]], sheet)).toEqual([[95.75, 100], [114.25, 100]]))
  it('stay where there is room', () => expect(movedApart([[100, 100], [119, 100]], sheet)).toEqual([[100, 100], [119, 100]]))
  it('come apart and stay on the sheet, forty in one place in a corner', () => {
    const spots = movedApart(Array.from({ length: 40 }, (): Spot => [2, 2]), sheet)
    expect(apart(spots)).toBeGreaterThan(17)
    for (const [x, y] of spots) expect([x >= 9, x <= 334, y >= 9, y <= 391]).toEqual([true, true, true, true])
  })
  it('come apart the same way each time', () => {
    const homes = Array.from({ length: 12 }, (_, i): Spot => [200 + i, 200])
    expect(movedApart(homes, sheet)).toEqual(movedApart(homes, sheet))
  })
})
