import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { findBrowser, openBrowser, openPage } from '../../src/render/browser.js'
import { type DiagramOutcome, type DiagramSource, drawDiagrams, type DrawingBoard, openDrawingBoard } from '../../src/render/draw-diagrams.js'

const oneLine = `flowchart TB
  subgraph zE["Engine space"]
    G1["G1<br/>House bank<br/>12 V 400 Ah"]:::source
    G3["G3<br/>Alternator<br/>115 A"]:::source
    F1["F1<br/>Main fuse<br/>300 A"]
    Q1["Q1<br/>Isolator, house"]:::switch
    T1["T1<br/>Charger from the start bank<br/>30 A"]
  end
  subgraph zS["Saloon, under the port seat"]
    X1["X1<br/>Positive busbar"]:::busbar
    F3["F3<br/>100 A"]
    F4["F4<br/>60 A"]
    T2["T2<br/>Inverter & charger<br/>2 kVA"]
  end
  subgraph zH["Helm"]
    A1["A1<br/>Panel, navigation<br/>12 ways"]
    P1["P1<br/>Helm display, port"]
    P2["P2<br/>Helm display, starboard"]
    K1["K1<br/>Switching module"]
    E1["E1<br/>Navigation lights"]
  end
  S1["S1<br/>Shore inlet<br/>230 V 16 A"]:::external
  G1 ---|"W101<br/>95 mm²"| F1
  F1 ---|"W102<br/>95 mm²"| Q1
  Q1 ===|"W103<br/>95 mm²"| X1
  G3 ---|"W115<br/>35 mm²"| T1
  T1 ---|"W117<br/>10 mm²"| X1
  X1 --- F3
  X1 --- F4
  X1 ---|"W122<br/>50 mm²"| T2
  S1 -.->|"W130"| T2
  F3 ---|"W120<br/>25 mm²"| A1
  F4 ---|"W121<br/>16 mm²"| K1
  A1 ---|"W131"| P1
  A1 ---|"W132"| P2
  K1 ---|"W141"| E1
  click A1 href "asfitted:panels/a1" "Panel" _blank
  click P1 href "https://example.org/p1"
  classDef source stroke-width:3.4px
  classDef busbar fill:#1b2a33,color:#ffffff
  classDef external stroke-dasharray:6 5
`
const fan = `flowchart LR
  A1["A1"] --> P1["P1<br/>Ελλάδα, Привет"]
  A1 --> P2
  A1 --> P3
  P3@{ shape: stadium }
`
/** Boxes of unequal height face each other: the layout of itself draws a step of a few units into each line. */
const ways = `flowchart LR
${[1, 2, 3].map(i => `  a${i}["A2.${i} · 10 A<br/>Refrigerator"]
  a${i}@{ shape: fr-rect }
  e${i}["E3${i} · 5 A<br/>Refrigerator"]
  e${i}@{ shape: rounded }`).join('\n')}
  subgraph f["A2<br/>100 A"]
    a1
    a2
    a3
  end
${[1, 2, 3].map(i => `  a${i} ---|"W20${i}<br/>2 × 4 mm²"| e${i}`).join('\n')}
`
/** One of its lines has such a step and a bend that stays. */
const branches = `flowchart LR
  subgraph f["A2<br/>100 A"]
    a1["A2.1 · 10 A<br/>Refrigerator"]
  end
  a1@{ shape: fr-rect }
  a1 ---|"W201<br/>2 × 4 mm²"| e1["E31 · 5 A<br/>Refrigerator"]
${[1, 2, 3].map(i => `  a1 ---|"W21${i}"| g${i}["G${i}"]`).join('\n')}
`
const broken = 'flowchart TB\n  A1[" --- \n'
const sources: readonly DiagramSource[] = [
  { id: 'one-line', title: 'Main distribution <12 V>', mermaid: oneLine },
  { id: 'broken', title: 'Broken', mermaid: broken },
  { id: 'fan', title: 'Fan', mermaid: fan },
  { id: 'ways', title: 'Ways', mermaid: ways },
  { id: 'branches', title: 'Branches', mermaid: branches },
]
const drawn = sources.map(({ id }) => id).filter(id => id !== 'broken')

const fontStylesheet = new URL('../../templates/assets/fonts.css', import.meta.url).href

let browser: Browser
let board: DrawingBoard
let folder: string
let outcomes: ReadonlyMap<string, DiagramOutcome>
/** The drawings in one HTML document, as the pack has them. */
let page: Page

const drawnAs = (id: string): Extract<DiagramOutcome, { status: 'drawn' }> => {
  const outcome = outcomes.get(id)!
  if (outcome.status !== 'drawn') throw new Error(outcome.message)
  return outcome
}

beforeAll(async () => {
  const choice = await findBrowser(process.env)
  if (choice.status === 'missing') throw new Error(`${choice.reason} ${choice.remedy}`)
  browser = await openBrowser(choice)
  folder = await mkdtemp(path.join(tmpdir(), 'asfitted-test-'))
  board = await openDrawingBoard(browser)
  outcomes = await drawDiagrams(board, sources, { cacheFolder: null })
  const links = `<link rel="stylesheet" href="${fontStylesheet}">`
  const file = path.join(folder, 'page.html')
  await writeFile(file, `<!doctype html><meta charset="utf-8">${links}<body style="width:2000px">${drawn.map(id => drawnAs(id).svg).join('')}`)
  page = await openPage(browser)
  await page.goto(pathToFileURL(file).href)
  await page.evaluate(() => document.fonts.ready.then(() => null))
}, 60_000)
afterAll(async () => {
  await browser?.close()
  await rm(folder, { recursive: true, force: true })
})

describe('a drawing', () => {
  it('is well-formed XML with a viewBox, and scales down from its natural size', async () => {
    const { svg, widthPx, heightPx } = drawnAs('one-line')
    const seen = await page.evaluate(text => {
      const parsed = new DOMParser().parseFromString(text, 'image/svg+xml')
      return { fault: parsed.querySelector('parsererror')?.textContent ?? null, root: parsed.documentElement.tagName, viewBox: parsed.documentElement.getAttribute('viewBox') }
    }, svg)
    expect(seen).toMatchObject({ fault: null, root: 'svg' })
    const [, , width, height] = seen.viewBox!.split(' ').map(Number)
    expect(widthPx / heightPx).toBeCloseTo(width! / height!, 1)

    const widths = await page.evaluate(() => {
      const svg = document.querySelector('svg')!
      const wide = svg.getBoundingClientRect()
      document.body.style.width = '200px'
      const narrow = svg.getBoundingClientRect()
      document.body.style.width = '2000px'
      return { wide: wide.width, narrow: narrow.width, ratio: narrow.width / narrow.height }
    })
    expect(widths).toMatchObject({ wide: widthPx, narrow: 200 })
    expect(widths.ratio).toBeCloseTo(width! / height!, 1)
  })

  it('holds all words of its boxes, lines and frames', async () => {
    const texts = await page.$$eval('svg:first-of-type text', found => found.map(({ textContent }) => textContent))
    for (const words of ['G1', 'House bank', '12 V 400 Ah', 'Inverter & charger', 'W101', '95 mm²', 'Saloon, under the port seat', 'Positive busbar']) {
      expect(texts).toContain(words)
    }
  })

  it('is complete in itself: no script, style sheet, foreign object or address of another place, and no NaN', () => {
    for (const id of drawn) {
      const { svg } = drawnAs(id)
      expect(svg).not.toMatch(/<(script|style|foreignObject|image|use)|@import|NaN|Infinity|undefined| on\w+=/)
      expect([...svg.matchAll(/https?:[^"' ]+/g)].map(([address]) => address)).toEqual(['http://www.w3.org/2000/svg'])
    }
  })

  it('keeps links to pages of the pack, as plain links, and drops others', () => {
    expect([...drawnAs('one-line').svg.matchAll(/<a [^>]*>/g)].map(([tag]) => tag)).toEqual([expect.stringMatching(/ href="asfitted:panels\/a1"/)])
    expect(drawnAs('one-line').svg).not.toMatch(/target=|xlink/)
  })

  it('has ids of its own, beside another drawing in the same document', async () => {
    const ids = await page.$$eval('svg [id]', found => found.map(({ id }) => id))
    expect(ids.length).toBeGreaterThan(10)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.every(id => drawn.some(drawing => id.startsWith(`${drawing}:`)))).toBe(true)
    // What refers to an id refers to one of the same drawing.
    const referred = [...drawnAs('fan').svg.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id)
    expect(referred.length).toBeGreaterThan(0)
    for (const id of referred) expect(ids).toContain(id)
  })

  it('says what it is: a picture, or a group where it has links', async () => {
    const said = await page.$$eval('svg', found => found.map(svg =>
      [svg.getAttribute('role'), document.getElementById(svg.getAttribute('aria-labelledby')!)?.textContent]))
    expect(said).toEqual([['group', 'Main distribution <12 V>'], ['img', 'Fan'], ['img', 'Ways'], ['img', 'Branches']])
  })

  it('refers to the pack\'s letters by name', () => {
    expect(drawnAs('fan').svg).toContain('font-family="&quot;IBM Plex Sans Condensed&quot;')
  })
})

describe('the layout', () => {
  it('keeps all words inside their box, measured with the letters they are read in', async () => {
    const outside = await page.$$eval('svg .node', nodes => nodes.flatMap(node => {
      const box = node.querySelector('rect, path, polygon')!.getBoundingClientRect()
      return [...node.querySelectorAll('text')].filter(text => {
        const words = text.getBoundingClientRect()
        return words.left < box.left + 2 || words.right > box.right - 2 || words.top < box.top - 1 || words.bottom > box.bottom + 1
      }).map(({ textContent }) => textContent)
    }))
    expect(outside).toEqual([])
  })

  it('makes boxes no wider than their words need: they were measured with the right letters', async () => {
    const spare = await page.$$eval('svg .node', nodes => nodes.map(node => {
      const box = node.querySelector('rect, path, polygon')!.getBoundingClientRect()
      return { box: box.width, spare: box.width - Math.max(...[...node.querySelectorAll('text')].map(text => text.getBoundingClientRect().width)) }
    }))
    const wide = spare.filter(({ box }) => box > 130)
    expect(wide.length).toBeGreaterThan(3)
    for (const { spare } of wide) expect(spare).toBeLessThan(32)
  })

  it('lets no box, and no words on a line or frame, lie over another', async () => {
    const overlaps = await page.$$eval('svg', drawings => drawings.flatMap(drawing => {
      const boxes = [...drawing.querySelectorAll('.node')]
      const words = [...drawing.querySelectorAll('text')].filter(text => text.closest('.node') === null)
      const things = [...boxes, ...words].map(thing => ({ name: thing.textContent, place: thing.getBoundingClientRect() }))
      return things.flatMap(({ name, place }, i) => things.slice(i + 1)
        .filter(({ place: other }) => place.left < other.right - 1 && other.left < place.right - 1 && place.top + 4 < other.bottom && other.top + 4 < place.bottom)
        .map(other => `${name} / ${other.name}`))
    }))
    expect(overlaps).toEqual([])
  })

  it('titles a frame at its top left, where no line runs through the words', async () => {
    const titles = await page.$$eval('svg', ([drawing]) => {
      const lines = [...drawing!.querySelectorAll<SVGPathElement>(':scope > path')]
      const frames = [...drawing!.querySelectorAll(':scope > rect')].map(frame => frame.getBoundingClientRect())
      return [...drawing!.querySelectorAll('text')].filter(text => ['Engine space', 'Saloon, under the port seat', 'Helm'].includes(text.textContent!)).map(text => {
        const words = text.getBoundingClientRect()
        const frame = frames.find(({ left, right, top }) => left < words.left && right > words.right && Math.abs(top - words.top) < 20)!
        const crossed = lines.some(line => Array.from({ length: Math.ceil(line.getTotalLength()) }, (_, at) =>
          line.getPointAtLength(at).matrixTransform(line.getScreenCTM()!)).some(({ x, y }) => x > words.left && x < words.right && y > words.top && y < words.bottom))
        return { title: text.textContent, fromLeft: words.left - frame.left, crossed }
      })
    })
    expect(titles).toHaveLength(3)
    expect(titles.filter(({ crossed }) => crossed)).toEqual([])
    expect(titles.filter(({ fromLeft }) => fromLeft < 12).length).toBeGreaterThanOrEqual(2)
  })

  /** Corners and ends of each line. A rounded corner is a curve about a point, which counts. */
  const linesOf = (id: string) => [...drawnAs(id).svg.matchAll(/<path d="(M[^"C]+)" fill="none" stroke="#1b2a33"/g)].map(([, d]) =>
    [...d!.matchAll(/(-?[\d.]+)[, ](-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const))

  it('runs lines at right angles', () => {
    expect(linesOf('one-line').length).toBeGreaterThanOrEqual(14)
    for (const line of drawn.flatMap(linesOf)) {
      line.slice(1).forEach(([x, y], i) => expect(Math.min(Math.abs(x - line[i]![0]), Math.abs(y - line[i]![1]))).toBeLessThan(0.5))
    }
  })

  it('takes small steps out of lines that can run straight', () => {
    expect(linesOf('ways')).toHaveLength(3)
    for (const line of linesOf('ways')) expect(new Set(line.map(([, y]) => y)).size).toBe(1)
    expect(linesOf('branches')).toHaveLength(4)
    for (const line of linesOf('branches')) {
      const heights = line.map(([, y]) => y)
      const climb = Math.max(...heights) - Math.min(...heights)
      expect(climb < 0.5 || climb > 22).toBe(true)
    }
  })

  it('draws the accents of the source and the styles of lines', async () => {
    const looks = await page.evaluate(() => {
      const look = (id: string) => {
        const box = document.getElementById(id)!
        const style = getComputedStyle(box.querySelector('rect')!)
        return [style.fill, style.strokeWidth, style.strokeDasharray, getComputedStyle(box.querySelector('text')!).fill]
      }
      return { busbar: look('one-line:X1'), source: look('one-line:G1'), external: look('one-line:S1'), plain: look('one-line:F1') }
    })
    expect(looks.busbar).toEqual(['rgb(27, 42, 51)', '2px', 'none', 'rgb(255, 255, 255)'])
    expect(looks.source.slice(0, 2)).toEqual(['rgb(255, 255, 255)', '3.4px'])
    expect(looks.external[2]).toBe('6px, 5px')
    expect(looks.plain).toEqual(['rgb(255, 255, 255)', '2px', 'none', 'rgb(27, 42, 51)'])
    expect(drawnAs('one-line').svg.match(/<path d="[^"]*" fill="none" stroke="#1b2a33" stroke-width="4.5"/g)).toHaveLength(1)
  })

  it('draws each outline as one chain of points, though mermaid makes some of hundreds of strokes', async () => {
    const outlines = await page.$$eval('[id="fan:P3"] path', paths => paths.map(path => path.getAttribute('d')!))
    expect(outlines.length).toBeGreaterThan(0)
    for (const outline of outlines) {
      expect(outline.match(/M/g)).toHaveLength(1)
      expect(outline).not.toContain('C')
      expect(outline.match(/L/g)!.length).toBeGreaterThan(20)
    }
  })

  it('puts the symbol of a class into its boxes', async () => {
    expect(await page.$$eval('svg .node', nodes => nodes.filter(node => node.querySelector('rect') !== null && node.querySelector('path') !== null).map(({ id }) => id)))
      .toEqual(['one-line:Q1'])
  })
})

describe('a source that mermaid refuses', () => {
  it('gives an entry that names it, and leaves the others alone, in their order', () => {
    expect([...outcomes.keys()]).toEqual(['one-line', 'broken', 'fan', 'ways', 'branches'])
    expect(outcomes.get('broken')).toMatchObject({ status: 'failed', message: expect.stringMatching(/^Diagram broken: Parse error on line \d+: .*Expecting .*$/) })
  })

  it('is a fault of ours where ids are doubled or cannot start a name', async () => {
    const source = { id: 'a', title: '', mermaid: fan }
    await expect(drawDiagrams(board, [source, source], { cacheFolder: null })).rejects.toThrow('two diagrams have the id "a"')
    await expect(drawDiagrams(board, [{ ...source, id: 'a b' }], { cacheFolder: null })).rejects.toThrow('"a b"')
  })
})

describe('the cache', () => {
  it('gives the same drawing without drawing it, until the source changes; failures are not kept', async () => {
    const cacheFolder = path.join(folder, 'cache')
    const first = await drawDiagrams(board, sources, { cacheFolder })
    expect(first.get('one-line')).toEqual(outcomes.get('one-line'))
    const kept = await readdir(cacheFolder)
    expect(kept).toHaveLength(drawn.length)

    // A mark in the file shows where an answer comes from.
    const file = path.join(cacheFolder, kept.find(name => name.endsWith('.json'))!)
    await writeFile(file, (await readFile(file, 'utf8')).replace('<title', '<title data-kept=\\"\\"'))
    const marked = [...(await drawDiagrams(board, sources, { cacheFolder })).values()].filter(drawing => JSON.stringify(drawing).includes('data-kept'))
    expect(marked).toHaveLength(1)

    const changed = sources.map(source => ({ ...source, mermaid: `${source.mermaid}  %% changed\n` }))
    const drawnAnew = await drawDiagrams(board, changed, { cacheFolder })
    expect([...drawnAnew.values()].filter(drawing => JSON.stringify(drawing).includes('data-kept'))).toHaveLength(0)
  }, 30_000)
})
