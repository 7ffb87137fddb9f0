/** The plot of the state of charge: where a value must stand follows from the frame, 370 by 200 from 38, 10. */
import { describe, expect, it } from 'vitest'
import { chargePlot, type ChargePlot } from '../../../src/view/drawings/charge-plot.js'

const falling = Array.from({ length: 25 }, (_, hour) => 100 - 2 * hour)
const plot = (given: Partial<ChargePlot> = {}) => chargePlot({ title: 'Charge', curves: [{ name: 'G1 House', chargePercent: falling, limitPercent: 50 }], daylight: { fromH: 6, toH: 18 }, ...given })
const all = (svg: string, pattern: RegExp) => [...svg.matchAll(pattern)].map(([, ...groups]) => groups)

describe('a plot of the charge', () => {
  it('sets each hour where it belongs', () => {
    const points = all(plot(), /<polyline class="curve" points="([^"]+)"/g)[0]![0]!.split(' ')
    expect(points).toHaveLength(25)
    expect([points[0], points[12], points[24]]).toEqual(['38,10', '223,58', '408,106'])
  })
  it('draws the lowest allowed', () => expect(all(plot(), /<line class="limit" x1="38" x2="408" y1="([\d.]+)"/g)).toEqual([['110']]))
  it('shades the night, before sunrise and after sunset', () => {
    expect(all(plot(), /<rect class="night" x="([\d.]+)" y="10" width="([\d.]+)"/g)).toEqual([['38', '92.5'], ['315.5', '92.5']])
  })
  it('shades two nights of each day', () => {
    const curves = [{ name: 'G1', chargePercent: Array.from({ length: 73 }, () => 80), limitPercent: 50 }]
    expect(all(plot({ curves }), /(class="night")/g)).toHaveLength(6)
  })
  it('shades nothing where the sun is not known or does not set', () => {
    for (const daylight of [null, { fromH: 0, toH: 24 }]) expect(plot({ daylight })).not.toContain('night"')
  })
  it('tells curves apart by line and mark, not by colour alone', () => {
    const curves = ['G1', 'G2', 'G3', 'G4'].map(name => ({ name, chargePercent: falling, limitPercent: 50 }))
    const dashes = all(plot({ curves }), /<polyline[^>]* stroke-dasharray="([^"]+)"/g).flat()
    expect(new Set(dashes).size).toBe(4)
    for (const name of ['circle', 'polygon', 'rect']) expect(plot({ curves })).toContain(`<${name} `)
  })
  it('writes names that hold signs of markup', () => {
    const svg = plot({ title: 'a "b"', curves: [{ name: 'G1 <House> & co', chargePercent: falling, limitPercent: 50 }] })
    expect(svg).toContain('G1 &lt;House&gt; &amp; co')
    expect(svg).toContain('aria-label="a &quot;b&quot;"')
  })
  it('keeps every line of text and every mark on the sheet', () => {
    const curves = ['G1', 'G2'].map(name => ({ name: `${name} ${'very '.repeat(30)}long`, chargePercent: falling, limitPercent: 20 }))
    const svg = plot({ curves })
    const [[width, height]] = all(svg, /viewBox="0 0 ([\d.]+) ([\d.]+)"/g) as [[string, string]]
    for (const [x, y, text] of all(svg, /<text x="([\d.]+)" y="([\d.]+)" text-anchor="start">([^<]*)/g)) {
      expect(Number(y)).toBeLessThan(Number(height))
      // Six units a letter, as wide as the condensed face gets at 12.
      expect(Number(x) + 6 * text!.length).toBeLessThan(Number(width))
    }
  })
  it('has no ids, since one document holds many', () => expect(plot()).not.toMatch(/ id=/))
})
