/** The drawing of a backbone: everything on it, in its order, on the sheet, at a size that can be read. */
import { describe, expect, it } from 'vitest'
import type { DrawnBackbone, DrawnStation } from '../../../src/view/drawings/backbone-parts.js'
import { backboneDrawings } from '../../../src/view/drawings/backbone-drawing.js'

const zoneOf = (name: string) => ({ key: name, name })
const station = (tag: string, given: Partial<DrawnStation> = {}): DrawnStation => ({ kind: 'tee', tag, beneath: null, zone: null, hung: null, words: null, ...given })
const tee = (tag: string, item: string, given: Partial<DrawnStation> = {}): DrawnStation =>
  station(tag, { beneath: '11.58 V', hung: { cable: { text: `D-${item}`, to: null }, length: '2.00 m', item: { text: item, to: `equipment/${item.toLowerCase()}` }, beside: 'LEN 2', name: `Name of ${item}` }, ...given })
const plain = (...stations: readonly DrawnStation[]): DrawnBackbone => ({ title: 'N1', stations, spans: Array.from({ length: stations.length + 1 }, () => []) })

const small: DrawnBackbone = {
  title: 'N1 Bus',
  stations: [
    station('R1', { kind: 'terminator', words: 'terminator, 120 Ω', zone: zoneOf('Arch') }), tee('X1', 'B1', { zone: zoneOf('Arch') }),
    station('X2', { kind: 'power', zone: zoneOf('Helm') }), station('X3', { words: 'free', zone: zoneOf('Helm') }), station('X4', { kind: 'isolator', words: 'power isolator' }),
    station('R2', { kind: 'terminator' }),
  ],
  spans: [[], [], [{ cable: { text: 'W1', to: 'cables/w1' }, facts: '3.40 m, light cable' }], [], [], [], []],
}
const [drawn = ''] = backboneDrawings(small)
const all = (svg: string, pattern: RegExp) => [...svg.matchAll(pattern)].map(([, ...groups]) => groups)
/** Words with their place, from top to bottom as written. */
const words = (svg: string) => all(svg, /<text class="(\w+)" x="([\d.]+)" y="([\d.]+)" text-anchor="(\w+)">([^<]*)</g).map(([kind, x, y, anchor, text]) => ({ kind, x: Number(x), y: Number(y), anchor, text: text! }))

describe('the drawing of a backbone', () => {
  it('says everything in its order, from top to bottom', () => {
    const tags = words(drawn).filter(({ kind }) => kind === 'tag')
    expect(tags.map(({ text }) => text)).toEqual(['R1', 'X1', 'D-B1', 'B1', 'W1', 'X2', 'X3', 'X4', 'R2'])
    const heights = ['R1', 'X1', 'W1', 'X2', 'X3', 'X4', 'R2'].map(tag => tags.find(({ text }) => text === tag)!.y)
    expect(heights).toEqual(heights.toSorted((a, b) => a - b))
    expect(words(drawn).map(({ text }) => text)).toEqual(expect.arrayContaining(['11.58 V', '2.00 m', 'LEN 2', 'Name of B1', '3.40 m, light cable', 'terminator, 120 Ω', 'free', 'power isolator']))
  })
  it('names each zone once above its band', () => {
    expect(words(drawn).filter(({ kind }) => kind === 'zone').map(({ text }) => text)).toEqual(['Arch', 'Helm'])
    expect(all(drawn, /<rect class="(band)"/g)).toHaveLength(2)
  })
  it('joins the stations from the first to the last without a gap', () => {
    const lines = all(drawn, /<line class="backbone" x1="62" y1="([\d.]+)" x2="62" y2="([\d.]+)"/g).map(([y1, y2]) => [Number(y1), Number(y2)] as const)
    for (const [i, [y1]] of lines.entries()) if (i > 0) expect(y1).toBe(lines[i - 1]![1])
    const marks = all(drawn, /<(?:circle class="mark" cx="62" cy="([\d.]+)"|rect class="mark filled" x="54" y="([\d.]+)")/g).map(([cy, y]) => Number(cy ?? Number(y) + 3.5))
    expect([lines[0]![0], lines.at(-1)![1]]).toEqual([marks[0], marks.at(-1)])
  })
  it('tells terminator, tee, insertion and isolator apart by shape', () => {
    expect(all(drawn, /<circle class="(mark)"/g)).toHaveLength(2)
    expect(all(drawn, /<rect class="mark filled" x="[\d.]+" y="[\d.]+" width="(\d+)" height="(\d+)"/g)).toEqual([['16', '7'], ['12', '12'], ['16', '7']])
    expect(all(drawn, /<rect class="(gap)"/g)).toHaveLength(1)
  })
  it('links to the pages of devices and cables', () => {
    expect(all(drawn, /<a href="asfitted:([^"]+)"/g).flat()).toEqual(['equipment/b1', 'cables/w1'])
  })
  it('has no ids, since one document holds many', () => expect(drawn).not.toMatch(/ id=/))
  it('writes names that hold signs of markup', () => expect(backboneDrawings(plain(tee('X1', 'P1', { zone: zoneOf('a <b> & "c"') })))[0]).toContain('a &lt;b&gt; &amp; &quot;c&quot;'))
  it('shows an end that is open', () => {
    const [svg = ''] = backboneDrawings({ title: '', stations: [station('X1')], spans: [[{ cable: { text: 'W1', to: null }, facts: '' }], [{ cable: { text: 'W2', to: null }, facts: '' }]] })
    expect(words(svg).map(({ text }) => text).filter(text => text !== '')).toEqual(['open end: nothing recorded', 'W1', 'X1', 'W2', 'open end: nothing recorded'])
  })
  it('draws nothing where there is nothing', () => expect(backboneDrawings(plain())).toEqual([]))
})

describe('a long backbone', () => {
  const tags = Array.from({ length: 60 }, (_, i) => `X${i + 1}`)
  const long = plain(...tags.map((tag, i) => tee(tag, `P${i + 1}`, { zone: zoneOf(i < 30 ? 'Forward' : 'Aft') })))
  const sheets = backboneDrawings(long)
  const onSheet = (svg: string) => words(svg).filter(({ kind, text }) => kind === 'tag' && /^X/.test(text)).map(({ text }) => text)

  it('goes on from sheet to sheet, each station once', () => {
    expect(sheets.length).toBeGreaterThan(2)
    expect(sheets.flatMap(onSheet)).toEqual(tags)
  })
  it('fills the sheets alike, none higher than a printed page takes', () => {
    const heights = sheets.map(svg => Number(/viewBox="0 0 344 ([\d.]+)"/.exec(svg)![1]))
    // 85 mm wide on paper: 222 mm are 898 units.
    for (const height of heights) expect(height).toBeLessThan(898)
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(120)
  })
  it('says at a break what is on its other side, and in which zone it goes on', () => {
    const markers = sheets.map(svg => words(svg).filter(({ kind }) => kind === 'zone').map(({ text }) => text))
    expect(markers[0]!.at(-1)).toBe(`goes on to ${onSheet(sheets[1]!)[0]}`)
    expect(markers[1]!.slice(0, 2)).toEqual([`from ${onSheet(sheets[0]!).at(-1)}`, 'Forward'])
  })
})

describe('text on the sheet', () => {
  const wide = 'Very long name of a thing that nobody would write on a label in earnest'
  const svg = backboneDrawings({
    title: '', spans: [[], [{ cable: { text: wide, to: null }, facts: wide }], []],
    stations: [tee(wide, wide, { zone: zoneOf(wide), beneath: wide }), station('X2', { words: wide })],
  })[0]!
  it('is cut so that it stays inside', () => {
    for (const { kind, x, anchor, text } of words(svg)) {
      const width = text.length * (kind === 'tag' ? 7 : 5.4)
      expect(anchor === 'end' ? x - width : 0, text).toBeGreaterThanOrEqual(-1)
      expect(anchor === 'end' ? x : x + width, text).toBeLessThanOrEqual(345)
    }
  })
  it('prints at 8 pt or more', () => {
    // Letters of 11.5 units and more, 344 units on 85 mm.
    expect((11.5 * 85 * 72) / 25.4 / 344).toBeGreaterThan(8)
  })
})
