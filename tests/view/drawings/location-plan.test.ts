/** The boat drawn to scale: places worked out by hand from the width of the drawing and its margins. */
import { describe, expect, it } from 'vitest'
import { hullPath, seen } from '../../../src/view/drawings/location-side.js'
import { locationPlan, type LocationPlan, type PlanMark, type PlanZone } from '../../../src/view/drawings/location-plan.js'
import { ticksBetween } from '../../../src/view/drawings/location-ruler.js'

const unknownHull = { lengthM: null, beamM: null, draughtM: null, gunwaleHeightM: null }
const zone = (name: string, from: PlanZone['from'], upTo: PlanZone['upTo'], given: Partial<PlanZone> = {}): PlanZone => ({ name, below: null, to: `zones/${name}`, is: 'named', from, upTo, ...given })
const mark = (tag: string, place: PlanMark['place'], exact = true): PlanMark => ({ tag, to: `equipment/${tag.toLowerCase()}`, place, exact })
const drawn = (given: Partial<LocationPlan>) => locationPlan({ title: 'Plan', view: 'plan', hull: unknownHull, zones: [], marks: [], images: [], units: 'metric', width: 720, ruled: true, ...given })
const spots = (svg: string) => [...svg.matchAll(/<circle cx="([\d.-]+)" cy="([\d.-]+)"/g)].map(([, x, y]) => [Number(x), Number(y)])

// From 0 to 13.1 m with 0.25 m at both ends: 13.6 m in 720 − 34 − 6 = 680, 50 a metre.
const boat = zone('Hold', [0, -1], [13.1, 1])

describe('a plan of the boat', () => {
  // x: 34 + (5 + 0.25) · 50 = 296.5. Height: 1.25 m at the upper edge; one row of names and 6 above it, 22: 22 + (1.25 − 0.5) · 50 = 59.5.
  it('puts a dot where the item is', () => expect(spots(drawn({ zones: [boat], marks: [mark('P1', [5, 0.5])] }))).toEqual([[296.5, 59.5]]))
  // To starboard: no row above, one below: 6 + (1.25 + 0.5) · 50 = 93.5
  it('has port above', () => expect(spots(drawn({ zones: [boat], marks: [mark('P1', [5, -0.5])] }))).toEqual([[296.5, 93.5]]))
  // 4.1 m in 420 − 4 − 6 = 410: 100 a metre.
  it('keeps its scale in a small drawing', () => expect(spots(drawn({ width: 420, ruled: false, zones: [zone('Hold', [0, -1], [3.6, 1])], marks: [mark('P1', [3, -0.5])] }))).toEqual([[4 + 325, 6 + 175]]))
  it('shows by a dashed ring that only the zone is known', () => {
    expect(drawn({ zones: [boat], marks: [mark('P1', [5, 0.5], false)] })).toMatch(/<circle [^>]*stroke-dasharray/)
    expect(drawn({ zones: [boat], marks: [mark('P1', [5, 0.5])] })).not.toMatch(/<circle [^>]*stroke-dasharray/)
  })
  it('leads to zones and items, and has no ids', () => {
    const svg = drawn({ zones: [boat], marks: [mark('P1', [5, 0.5])], hull: { ...unknownHull, lengthM: 13, beamM: 4 } })
    expect(svg).toContain('href="asfitted:zones/Hold"')
    expect(svg).toContain('href="asfitted:equipment/p1"')
    expect(svg).not.toMatch(/ id=|NaN|Infinity|undefined/)
  })
  it('names a zone in its box with what is below, and from the edge where it is too small', () => {
    const svg = drawn({ zones: [{ ...boat, below: '7 items' }, zone('Locker of the anchor chain', [12, -0.2], [12.4, 0.2])] })
    expect(svg).toMatch(/class="over"[^>]*>Hold<.*class="over"[^>]*>7 items</)
    expect(svg).toMatch(/text-anchor="middle">Locker of the anchor chain</)
  })
  it('names a zone where no mark lies', () => {
    const nameAt = (marks: readonly PlanMark[]) => Number(/<text class="over" x="[\d.]+" y="([\d.]+)"/.exec(drawn({ zones: [boat], marks }))![1])
    expect(nameAt([mark('P1', [0.3, -0.8])])).toBeLessThan(40)
    expect(nameAt([mark('P1', [0.3, 0.8]), mark('P2', [12.9, 0.8])])).toBeGreaterThan(100)
  })
  it('reads markup in a name as text', () => expect(drawn({ zones: [zone('A<b>"&', [0, -1], [9, 1])] })).toContain('A&lt;b&gt;'))
})

describe('the yard’s own drawing', () => {
  // Registered at 0 and 10 m, 1 m to either side; nothing else: 10.5 m in 680, 64.76 a metre; 6 above. Left 34 + 0.25 · 64.76 = 50.2, top 6 + 16.2 = 22.2.
  const image = { file: 'drawings/a "plan".png', from: [0, -1], upTo: [10, 1] } as const
  it('lies where its corners are registered', () =>
    expect(drawn({ images: [image] })).toContain('<image href="asfitted-picture:drawings/a &quot;plan&quot;.png" x="50.2" y="22.2" width="647.6" height="129.5" preserveAspectRatio="none"/>'))
  it('takes the place of the plain hull', () => {
    const hull = { lengthM: 10, beamM: 2, draughtM: null, gunwaleHeightM: null }
    expect(drawn({ hull })).toContain('<path')
    expect(drawn({ hull, images: [image] })).not.toContain('<path')
  })
})

describe('the profile', () => {
  // From 0.25 m under −1 to 0.25 m over 3: 4.5 m; zone 13.1 m: 50 a metre. Waterline 6 + 3.25 · 50 = 168.5.
  it('has the waterline at no height, and above is up', () => {
    const svg = drawn({ view: 'profile', zones: [zone('Hold', [0, -1], [13.1, 3])] })
    expect(svg).toMatch(/y1="168.5" y2="168.5" stroke="#2b7da0"/)
    expect(svg).toContain('waterline')
    expect(svg).toContain('>-1<')
  })
  it('is not part of the plan', () => expect(drawn({ zones: [boat] })).not.toContain('waterline'))
})

describe('what is seen', () => {
  it('from above is how far forward and to port, from starboard how far forward and up', () =>
    expect([seen('plan', [4, -1.2, 0.3]), seen('profile', [4, -1.2, 0.3])]).toEqual([[4, -1.2], [4, 0.3]]))
})

describe('a hull', () => {
  const [x, y] = [(m: number) => 100 * m, (m: number) => -100 * m]
  const points = (d: string) => [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, a, b]) => [Number(a), Number(b)] as const)
  it('has the length and the beam that are given', () => {
    const all = points(hullPath('plan', { ...unknownHull, lengthM: 10, beamM: 3 }, x, y)!)
    expect([Math.min(...all.map(([a]) => a)), Math.max(...all.map(([a]) => a))]).toEqual([0, 1000])
    expect([Math.min(...all.map(([, b]) => b)), Math.max(...all.map(([, b]) => b))]).toEqual([-150, 150])
  })
  it('goes down to the draught', () => expect(Math.max(...points(hullPath('profile', { ...unknownHull, lengthM: 10, draughtM: 1.2 }, x, y)!).map(([, b]) => b))).toBe(120))
  it('is not guessed', () => {
    expect(hullPath('plan', { ...unknownHull, lengthM: 10 }, x, y)).toBeNull()
    expect(hullPath('profile', { ...unknownHull, lengthM: 10, beamM: 3 }, x, y)).toBeNull()
    expect(hullPath('plan', { ...unknownHull, beamM: 3 }, x, y)).toBeNull()
  })
})

describe('a ruler', () => {
  it('has whole metres, or as many as keep apart', () => {
    expect(ticksBetween(-0.25, 3.2, 50, 40, 'metric')).toEqual({ symbol: 'm', list: [0, 1, 2, 3].map(m => ({ atM: m, text: String(m) })) })
    expect(ticksBetween(-3, 9, 10, 40, 'metric').list.map(({ text }) => text)).toEqual(['0', '5'])
  })
  // 10 ft are 3.048 m.
  it('has feet for who reads feet', () => expect(ticksBetween(0, 7, 50, 100, 'us')).toEqual({ symbol: 'ft', list: [{ atM: 0, text: '0' }, { atM: 10 * 0.3048, text: '10' }, { atM: 20 * 0.3048, text: '20' }] }))
  it('names the length of the bar in the reader’s units', () => {
    expect(drawn({ zones: [boat] })).toContain('>2 m<')
    expect(drawn({ zones: [boat], units: 'us' })).toContain('>5 ft<')
  })
})
