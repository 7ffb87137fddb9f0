/**
 * The texts held against the outside: mermaid itself, in the real browser, draws each of them, prints every name as it was
 * given, and comes out at a size that is legible on A4.
 */
import { beforeAll, describe, expect, it } from 'vitest'
import { check } from '../../../src/check/check.js'
import { readFolder } from '../../../src/load/read-folder.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { findBrowser, openBrowser } from '../../../src/render/browser.js'
import { type DiagramOutcome, drawDiagrams, openDrawingBoard } from '../../../src/render/draw-diagrams.js'
import { ethernetDiagrams } from '../../../src/view/diagrams/ethernet.mermaid.js'
import { legendDiagram } from '../../../src/view/diagrams/legend.mermaid.js'
import { type Box, mermaidText } from '../../../src/view/diagrams/mermaid-text.js'
import { oneLineDiagrams } from '../../../src/view/diagrams/one-line.mermaid.js'
import { systemDiagrams } from '../../../src/view/diagrams/systems.mermaid.js'
import { mediumVessel } from './medium-vessel.js'
import { nastyNames } from './nasty-names.js'
import { boxesIn, diagramsOf } from './support.js'

const choice = await findBrowser(process.env)
const missing = choice.status === 'missing' ? ` (skipped: ${choice.reason} ${choice.remedy})` : ''

const sample = check(await readFolder('sample-vessel')).vessel
if (sample === null) throw new Error('the sample vessel has errors')
const allOf = (vessel: Vessel) => [oneLineDiagrams, ethernetDiagrams, systemDiagrams].flatMap(maker => diagramsOf(maker, vessel))
const diagrams = [legendDiagram(), ...allOf(mediumVessel), ...allOf(sample).map(diagram => ({ ...diagram, id: `sample-${diagram.id}` }))]

/** Each nasty name in the four places where text stands: below a tag, alone in a box, on a line, in the title of a frame. */
const nastyDrawings = nastyNames.map((name, i) => {
  const box = (given: Partial<Box> & Pick<Box, 'key' | 'tag'>): Box => ({ is: 'load', beside: [], below: [], page: null, ...given })
  return {
    id: `nasty-${i}`,
    title: 'nasty',
    mermaid: mermaidText({
      direction: 'left to right', placement: 'balanced',
      boxes: [box({ key: 'A', tag: 'A1', below: [name] }), box({ key: 'B', tag: name })],
      lines: [{ from: 'A', to: 'B', label: ['W1', name], stroke: 'plain' }],
      frames: [{ key: 'F', title: [name], boxKeys: ['B'] }],
    }),
  }
})

/** A4 with margins of 15 mm, less what the caption takes; letters of 10.5 pt at natural size may shrink to two thirds. */
const mmPerPx = 25.4 / 96
const sheetMm = { wide: 180, high: 226 }
const leastScale = 7 / 10.5

describe.skipIf(missing !== '')(`drawn by mermaid in the browser${missing}`, () => {
  let drawn: ReadonlyMap<string, DiagramOutcome>
  beforeAll(async () => {
    if (choice.status === 'missing') return
    const browser = await openBrowser(choice)
    try {
      const sources = [...diagrams.map(({ id, caption, mermaid }) => ({ id, title: caption, mermaid })), ...nastyDrawings]
      drawn = await drawDiagrams(await openDrawingBoard(browser), sources, { cacheFolder: null })
    } finally {
      await browser.close()
    }
  })

  const svgOf = (id: string) => {
    const outcome = drawn.get(id)!
    if (outcome.status === 'failed') throw new Error(outcome.message)
    return outcome
  }
  const textsIn = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) =>
    text!.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&'))

  it.each(diagrams)('$id: every box with its tag, every link to a page, letters of 7 pt or more on A4', ({ id, mermaid }) => {
    const { svg, widthPx, heightPx } = svgOf(id)
    const texts = textsIn(svg)
    for (const label of boxesIn(mermaid).values()) {
      for (const row of label.split(' / ')) expect(texts).toContain(row)
    }
    for (const [, address] of mermaid.matchAll(/ href "([^"]+)"$/gm)) expect(svg).toContain(`href="${address}"`)
    expect(widthPx * mmPerPx * leastScale).toBeLessThanOrEqual(sheetMm.wide)
    expect(heightPx * mmPerPx * leastScale).toBeLessThanOrEqual(sheetMm.high)
    expect(Math.max(widthPx / heightPx, heightPx / widthPx)).toBeLessThanOrEqual(2.6)
  })

  it.each(nastyNames.map((name, i) => ({ name, id: `nasty-${i}` })))('prints $name as it is, wherever it stands', ({ name, id }) => {
    const bare = (text: string) => text.replace(/[\s\u2060]/g, '').replace(/[\u201C\u201D]/g, '"')
    expect(bare(textsIn(svgOf(id).svg).join('')).split(bare(name)).length - 1).toBe(4)
  })
})
