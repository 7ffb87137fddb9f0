/** The plot of sectors: the centre is at 210, 170, the outer ring 138 wide, bearings clockwise from the top. */
import { describe, expect, it } from 'vitest'
import { mostRings, type SectorPlot, sectorPlot, type SectorRing } from '../../../src/view/drawings/sector-plot.js'

const ring = (given: Partial<SectorRing> = {}): SectorRing => ({ name: 'E1 Light', shown: [{ sector: { fromDeg: 0, widthDeg: 112.5 }, colour: 'green' }], hidden: [], ...given })
const plot = (rings: readonly SectorRing[], given: Partial<SectorPlot> = {}) => sectorPlot({ title: 'Sectors', rings, hiddenMeans: 'hidden', ...given })
const paths = (svg: string): readonly string[] => [...svg.matchAll(/<path d="(M[^"]+)"/g)].map(([, d]) => d!)
/** The corners of a ring's stretch: outer start, outer end, inner end, inner start. */
const corners = (d: string): readonly (readonly number[])[] => [...d.matchAll(/(?:M|L|[01] [01] [01] )(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)])
const bearingOf = ([x, y]: readonly number[]): number => ((Math.atan2(x! - 210, 170 - y!) * 180) / Math.PI + 360) % 360

describe('a plot of sectors', () => {
  it('begins and ends a sector at its bearings, starboard on the right', () => {
    const [d] = paths(plot([ring()]))
    const [outerStart, outerEnd, innerEnd, innerStart] = corners(d!).map(bearingOf)
    expect(outerStart! % 360).toBeCloseTo(0, 0)
    expect(outerEnd).toBeCloseTo(112.5, 0)
    expect(innerEnd).toBeCloseTo(112.5, 0)
    expect(innerStart! % 360).toBeCloseTo(0, 0)
    expect(corners(d!)[1]![0]).toBeGreaterThan(210)
  })
  it('goes the long way round where a sector is wider than half', () => {
    const [masthead] = paths(plot([ring({ shown: [{ sector: { fromDeg: 247.5, widthDeg: 225 }, colour: 'white' }] })]))
    expect(masthead).toMatch(/A138 138 0 1 1 /)
    expect(paths(plot([ring()]))[0]).toMatch(/A138 138 0 0 1 /)
  })
  it('closes a whole round', () => {
    const [round] = paths(plot([ring({ shown: [{ sector: { fromDeg: 0, widthDeg: 360 }, colour: 'white' }] })]))
    expect(round!.match(/Z/g)).toHaveLength(2)
  })
  it('draws a sliver wide enough to be seen, about its middle', () => {
    const hidden = paths(plot([ring({ hidden: [{ fromDeg: 90, widthDeg: 0.1 }] })]))[1]!
    const [start, end] = corners(hidden).map(bearingOf)
    expect((start! + end!) / 2).toBeCloseTo(90.05, 0)
    expect(end! - start!).toBeGreaterThan(1)
  })
  it('says in words what the colours mean, and that black is hidden only where something is', () => {
    expect(plot([ring({ name: 'E1 Starboard: green' })])).toContain('E1 Starboard: green')
    expect(plot([ring()])).not.toContain('>hidden<')
    expect(plot([ring({ hidden: [{ fromDeg: 10, widthDeg: 5 }] })])).toContain('>hidden<')
  })
  it('finds room for as many rings as it says, and keeps every word on the sheet', () => {
    const svg = plot(Array.from({ length: mostRings }, (_, i) => ring({ name: `E${i} ${'very '.repeat(30)}long`, hidden: [{ fromDeg: 10, widthDeg: 5 }] })))
    const radii = [...svg.matchAll(/A([\d.]+) /g)].map(([, radius]) => Number(radius))
    expect(Math.min(...radii)).toBeGreaterThan(34)
    const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!
    for (const [, x, y, text] of svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)" text-anchor="start">([^<]*)/g)) {
      expect(Number(y)).toBeLessThan(Number(height))
      expect(Number(x) + 6 * text!.length).toBeLessThan(Number(width))
    }
  })
  it('writes names that hold signs of markup, and has no ids', () => {
    expect(plot([ring({ name: '<E1> & co' })], { title: 'a "b"' })).toMatch(/aria-label="a &quot;b&quot;".*&lt;E1&gt; &amp; co/)
    expect(plot([ring()])).not.toMatch(/ id=/)
  })
})
