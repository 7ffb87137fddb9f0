/** Labels on paper: measured on the printed page, codes read off it by a reader of another maker. */
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import jsqr from 'jsqr'
import { getDocument, type PDFDocumentProxy, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { Browser } from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { findBrowser, openBrowser, openPage } from '../../src/render/browser.js'
import { printLabels } from '../../src/render/print-labels.js'
import { renderLabels } from '../../src/render/site.js'
import { type LabelFace, widthFactor } from '../../src/references/tables/letter-advances.js'
import { labelPrints } from '../../src/view/labels/label-prints.js'
import type { View } from '../../src/view/view-model.js'
import { labelledVessel, resultsWithLabels } from '../support/labelled-vessel.js'
import { aView } from '../support/view-builder.js'
import { contextOf } from '../view/pages/support.js'

const address = 'https://boat.example/manual/'
const ptPerMm = 72 / 25.4

let browser: Browser
let folder: string
let view: View
const metadataOf = (title: string) => ({ title, author: '', subject: '', keywords: [], date: '2026-03-04' })
const opened = new Map<string, PDFDocumentProxy>()

beforeAll(async () => {
  const choice = await findBrowser(process.env)
  if (choice.status === 'missing') throw new Error(`${choice.reason} ${choice.remedy}`)
  browser = await openBrowser(choice)
  folder = await mkdtemp(path.join(tmpdir(), 'asfitted-labels-'))
  const vessel = labelledVessel()
  const addressed = { ...vessel, document: { ...vessel.document, manualAddress: address } }
  view = { ...aView, labels: labelPrints(contextOf(addressed, { results: resultsWithLabels(addressed) })) }
  await renderLabels(view, folder)
  await printLabels(browser, view.labels.documents, folder, metadataOf)
  for (const { file } of view.labels.documents) {
    const data = new Uint8Array(await readFile(path.join(folder, file)))
    opened.set(file, await getDocument({ data, verbosity: VerbosityLevel.ERRORS }).promise)
  }
})
afterAll(async () => {
  for (const pdf of opened.values()) await pdf.destroy()
  await browser?.close()
  await rm(folder, { recursive: true, force: true })
})

function pdfOf(file: string): PDFDocumentProxy {
  const pdf = opened.get(file)
  if (pdf === undefined) throw new Error(`${file} was not printed; there are ${[...opened.keys()].join(', ')}`)
  return pdf
}

it('comes out the same a second time', async () => {
  const again = path.join(folder, 'again')
  await renderLabels(view, again)
  await printLabels(browser, view.labels.documents, again, metadataOf)
  for (const { file } of view.labels.documents) expect((await readFile(path.join(again, file))).equals(await readFile(path.join(folder, file))), file).toBe(true)
})

interface Word { readonly text: string; readonly xMm: number; readonly yMm: number; readonly sizeMm: number }
/** Each run of text with where it begins: from the left, and its line from the upper edge. */
async function wordsOf(file: string, sheet: number): Promise<readonly Word[]> {
  const page = await pdfOf(file).getPage(sheet)
  const { height } = page.getViewport({ scale: 1 })
  const { items } = await page.getTextContent()
  return items.flatMap(item => {
    if (!('str' in item) || item.str.trim() === '') return []
    const [, , , size = 0, x = 0, y = 0] = item.transform as number[]
    return [{ text: item.str, xMm: x / ptPerMm, yMm: (height - y) / ptPerMm, sizeMm: size / ptPerMm }]
  })
}

async function wordOf(file: string, sheet: number, text: string, nth = 0): Promise<Word> {
  const found = (await wordsOf(file, sheet)).filter(word => word.text === text)
  if (found[nth] === undefined) throw new Error(`"${text}" stands ${found.length} times on sheet ${sheet} of ${file}`)
  return found[nth]
}

describe('the printed page', () => {
  it.each([['labels/cables-a4-wrap-25x38.pdf', 1], ['labels/ways-a4-65.pdf', 1], ['labels/equipment-a4-21.pdf', 2], ['labels/test-sheets-210x297.pdf', 3]])('%s is A4, in %i sheets', async (file, sheets) => {
    expect(pdfOf(file).numPages).toBe(sheets)
    const { width, height } = (await pdfOf(file).getPage(1)).getViewport({ scale: 1 })
    // 210 and 297 mm are 595.28 and 841.89 points; the browser rounds to a 300th of an inch.
    expect(Math.abs(width - 595.28)).toBeLessThan(0.35)
    expect(Math.abs(height - 841.89)).toBeLessThan(0.35)
  })
})

// By hand, from the measures of content/label-sizes.yaml.
describe('wrap-around labels 25.4 × 38.1 mm', () => {
  const file = 'labels/cables-a4-wrap-25x38.pdf'
  // Margin of 1.2 mm in a label: 16.1 + 1.2. Two labels a cable, seven in a row.
  it.each([
    { tag: 'W1', nth: 0, at: 'first', xMm: 17.3, row: 0 },
    { tag: 'W4', nth: 0, at: 'seventh: six steps of 25.4', xMm: 17.3 + 152.4, row: 0 },
    { tag: 'W4', nth: 1, at: 'eighth: the next row', xMm: 17.3, row: 1 },
    { tag: 'W10', nth: 1, at: 'twentieth, the last: five steps', xMm: 17.3 + 127, row: 2 },
  ])('$tag at the $at', async ({ tag, nth, xMm, row }) => {
    const [word, first] = [await wordOf(file, 1, tag, nth), await wordOf(file, 1, 'W1')]
    expect(word.xMm).toBeCloseTo(xMm, 1)
    expect(word.yMm - first.yMm).toBeCloseTo(38.1 * row, 1)
  })

  it('have their text in the printed part, the upper 12.7 mm', async () => {
    for (const { yMm } of await wordsOf(file, 1)) {
      const inLabel = (yMm - 15.15) % 38.1
      expect(inLabel).toBeGreaterThan(1.2)
      expect(inLabel).toBeLessThan(12.7 - 1.2)
    }
  })
})

describe('labels 38.1 × 21.2 mm', () => {
  const file = 'labels/ways-a4-65.pdf'
  // The reader takes the wide gaps for ends of words: the first is the number of the way.
  const headline = (i: number) => String(i)
  // Margin of 1.5 mm in a label: 4.7 + 1.5; steps of 40.6 across, five in a row.
  it.each([
    { i: 1, at: 'first', xMm: 6.2, row: 0 },
    { i: 4, at: 'fourth: three steps', xMm: 6.2 + 121.8, row: 0 },
    { i: 7, at: 'seventh, the last: one step in the next row', xMm: 6.2 + 40.6, row: 1 },
  ])('way $i at the $at', async ({ i, xMm, row }) => {
    const [word, first] = [await wordOf(file, 1, headline(i)), await wordOf(file, 1, headline(1))]
    expect(word.xMm).toBeCloseTo(xMm, 1)
    expect(word.yMm - first.yMm).toBeCloseTo(21.2 * row, 1)
  })

  it('has its first line as large and as far down as by hand', async () => {
    const { sizeMm, yMm } = await wordOf(file, 1, headline(1))
    // 13 letters of 0.6 in 35.1 mm: 35.1 / 7.8 = 4.5. The band is 0.45 of 18.2 mm high: its middle is at 10.7 + 1.5 + 4.095 mm,
    // and capitals of 0.698 · 4.5 = 3.141 mm reach half of that below it.
    expect(sizeMm).toBeCloseTo(4.5, 2)
    expect(yMm).toBeCloseTo(16.295 + 1.5705, 1)
  })
})

describe('labels 63.5 × 38.1 mm', () => {
  it('go on upon a second sheet: 21 on the first, A1 and 24 boxes in all', async () => {
    const file = 'labels/equipment-a4-21.pdf'
    // 7.25 + 1.5; the 22nd is the first of the second sheet.
    expect((await wordOf(file, 1, 'A1')).xMm).toBeCloseTo(8.75, 1)
    expect((await wordOf(file, 1, 'X20')).xMm).toBeCloseTo(8.75 + 132, 1)
    expect((await wordOf(file, 2, 'X21')).xMm).toBeCloseTo(8.75, 1)
    expect((await wordOf(file, 2, 'X24')).xMm).toBeCloseTo(8.75, 1)
    expect((await wordOf(file, 2, 'X24')).yMm - (await wordOf(file, 2, 'X21')).yMm).toBeCloseTo(38.1, 1)
  })
})

interface Picture { readonly data: Uint8ClampedArray; readonly width: number; readonly height: number }
/** A rectangle of the sheet, millimetres, as a printer of so many dots to the inch makes it. */
async function picture(file: string, dotsPerInch: number, box: { xMm: number; yMm: number; widthMm: number; heightMm: number }): Promise<Picture> {
  const page = await pdfOf(file).getPage(1)
  const dots = (lengthMm: number) => Math.round((lengthMm / 25.4) * dotsPerInch)
  const viewport = page.getViewport({ scale: dotsPerInch / 72, offsetX: -dots(box.xMm), offsetY: -dots(box.yMm) })
  const { canvas, context } = factoryOf(pdfOf(file)).create(dots(box.widthMm), dots(box.heightMm))
  await page.render({ canvas, canvasContext: context, viewport }).promise
  const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height)
  return { data, width, height }
}
/** Where it draws outside a browser; its types leave it out. */
interface CanvasFactory { create(width: number, height: number): { canvas: HTMLCanvasElement; context: CanvasRenderingContext2D } }
const factoryOf = (pdf: PDFDocumentProxy): CanvasFactory => (pdf as unknown as { canvasFactory: CanvasFactory }).canvasFactory

// Its types describe a module of the other kind.
const decode = jsqr as unknown as typeof jsqr.default
const read = ({ data, width, height }: Picture): string | null => decode(data, width, height)?.data ?? null

describe('codes', () => {
  const file = 'labels/equipment-a4-21.pdf'
  // Second label of the first row, by hand: 7.25 + 66, 15.15; it is X1, after A1.
  const second = { xMm: 73.25, yMm: 15.15, widthMm: 63.5, heightMm: 38.1 }

  it.each([600, 300, 203])('is read off a label printed with %i dots to the inch', async dotsPerInch => {
    expect(read(await picture(file, dotsPerInch, second))).toBe(`${address}equipment/x1/`)
    expect(read(await picture(file, dotsPerInch, { ...second, xMm: 7.25 }))).toBe(`${address}panels/a1/`)
  })

  it('is read with a scratch across it: a tenth of its modules may be gone', async () => {
    const { data, width, height } = await picture(file, 300, second)
    // A white stripe of 1 mm across the middle of a code of 25 mm.
    const stripe = Math.round((1 / 25.4) * 300)
    const from = (Math.floor(height / 2) - Math.floor(stripe / 2)) * width * 4
    data.fill(255, from, from + stripe * width * 4)
    expect(read({ data, width, height })).toBe(`${address}equipment/x1/`)
  })

  it('is not read when half of it is gone, so that what is read was there', async () => {
    const { data, width, height } = await picture(file, 300, second)
    data.fill(255, 0, Math.floor(height / 2) * width * 4)
    expect(read({ data, width, height })).toBeNull()
  })
})

describe('the widths by which text is fitted', () => {
  const samples: readonly (readonly [LabelFace, string])[] = [
    ['tag', 'W12 G1:- / B37:battery'], ['tag', '10  A4.10  7.5\u00A0A'], ['words', 'Switching module, forward'], ['words', 'Überspannung Ø 5 mm² (½ in) – “Ångström” čšž'],
    ['words', 'THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG'], ['words', 'the quick brown fox jumps over the lazy dog'], ['words', '0123456789 .,:;-/+=!?()[]&%@#'],
  ]

  it.each(samples)('in the face of %s "%s" is as wide as a browser sets it', async (face, text) => {
    const page = await openPage(browser)
    try {
      await page.goto(`file://${path.join(folder, 'print/labels/ways-a4-65.html')}`)
      const family = face === 'tag' ? 'IBM Plex Mono' : 'IBM Plex Sans Condensed'
      const width = await page.evaluate(async (text, family) => {
        await document.fonts.load(`600 100px "${family}"`, text)
        const span = document.createElement('span')
        span.style.cssText = `position:absolute;white-space:pre;font:600 1000px "${family}";font-kerning:none;font-variant-ligatures:none`
        span.textContent = text
        document.body.append(span)
        return span.getBoundingClientRect().width
      }, text, family)
      // Advances are whole thousandths; so is what the browser adds up.
      expect(Math.abs(width - 1000 * widthFactor(text, face))).toBeLessThan(text.length * 0.6)
    } finally {
      await page.close()
    }
  })
})
