import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { getDocument, type PDFDocumentProxy, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { RefProxy } from 'pdfjs-dist/types/src/display/api.js'
import type { Browser } from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { findBrowser, openBrowser, openPage } from '../../src/render/browser.js'
import { compactPdf } from '../../src/render/compact-pdf.js'
import { printManual } from '../../src/render/print-pdf.js'

const metadata = {
  title: 'Handover manual, Ørnefjell', author: 'Brandt & Sønner', subject: 'Ηλεκτρικά', keywords: ['as fitted', 'électricité'], date: '2026-03-04',
}
const pageOf = (anchor: string) => `<a href="#${anchor}"><span class="page-of" data-page-of="${anchor}">000</span></a>`
const documentOf = (body: string, head = '') => `<!doctype html><html lang="en"><meta charset="utf-8"><title>Manual</title>
  <style>@page { size: A5; margin: 15mm; @bottom-right { content: "sheet " counter(page) " of " counter(pages) } }
  h1 { break-before: page } table { width: 100% }</style>${head}${body}`

const chapters = [
  { anchor: 'vessel', title: 'The vessel', rows: 10 }, { anchor: 'electrical-a1.7', title: 'Electrical system', rows: 90 },
  { anchor: 'networks', title: 'Data networks', rows: 50 },
]
const cable = (chapter: string, i: number) => `W-${chapter}-${i}`
const manual = documentOf(`
  <p>${chapters.map(({ anchor, title }) => `${title} ${pageOf(anchor)}`).join('<br>')}</p>
  ${chapters.map(({ anchor, title, rows }) => `<h1 id="${anchor}">${title}</h1>
    <table><thead><tr><th>Cable<th>Length</thead><tbody>${Array.from({ length: rows }, (_, i) =>
      `<tr id="${cable(anchor, i)}"><td>Row ${cable(anchor, i)}<td>${i} m`).join('')}</table>`).join('')}
  <h1>Cable index</h1><svg viewBox="0 0 40 10" width="80"><a href="#networks"><text y="8" font-size="8">N1</text></a></svg>
  ${chapters.map(({ anchor, rows }) => `<p>last ${anchor} ${pageOf(cable(anchor, rows - 1))}</p>`).join('')}`)

let browser: Browser
let folder: string
let printed: { pages: number; bytes: number }
let bytes: Buffer
let pdf: PDFDocumentProxy
/** Words of each sheet. */
let sheets: readonly string[]

async function print(html: string, name: string) {
  const htmlFile = path.join(folder, `${name}.html`)
  const outFile = path.join(folder, `${name}.pdf`)
  await writeFile(htmlFile, html)
  return { outFile, ...await printManual(browser, { htmlFile, outFile, metadata }) }
}
const open = (data: Uint8Array) => getDocument({ data: new Uint8Array(data), verbosity: VerbosityLevel.ERRORS }).promise
const wordsOf = (document: PDFDocumentProxy) => Promise.all(Array.from({ length: document.numPages }, async (_, i) => {
  const { items } = await (await document.getPage(i + 1)).getTextContent()
  return items.map(item => ('str' in item ? item.str : '')).join(' ').replace(/\s+/g, ' ')
}))
const sheetWith = (words: string) => sheets.findIndex((text, i) => i > 0 && text.includes(words)) + 1

beforeAll(async () => {
  const choice = await findBrowser(process.env)
  if (choice.status === 'missing') throw new Error(`${choice.reason} ${choice.remedy}`)
  browser = await openBrowser(choice)
  folder = await mkdtemp(path.join(tmpdir(), 'asfitted-test-'))
  const { outFile, ...result } = await print(manual, 'manual')
  printed = result
  bytes = await readFile(outFile)
  pdf = await open(bytes)
  sheets = await wordsOf(pdf)
}, 60_000)
afterAll(async () => {
  await pdf?.destroy()
  await browser?.close()
  await rm(folder, { recursive: true, force: true })
})

describe('page numbers', () => {
  it('in the table of contents are the sheets on which the headings stand', () => {
    for (const { title } of chapters) expect(sheets[0]).toContain(`${title} ${sheetWith(`${title} Cable Length`)}`)
    expect(new Set(chapters.map(({ title }) => sheetWith(`${title} Cable Length`))).size).toBe(3)
  })

  it('in the index are the sheets on which the rows stand, on any sheet of a long table', () => {
    for (const { anchor, rows } of chapters) expect(sheets.at(-1)).toContain(`last ${anchor} ${sheetWith(`Row ${cable(anchor, rows - 1)} `)}`)
    expect(sheetWith('Row W-electrical-a1.7-89 ')).toBeGreaterThan(sheetWith('Electrical system Cable'))
  })

  it('are those that the browser prints in the margin', () => {
    expect(printed).toEqual({ pages: pdf.numPages, bytes: bytes.length })
    sheets.forEach((text, i) => expect(text).toContain(`sheet ${i + 1} of ${pdf.numPages}`))
  })

  it('are right where filling them in moves what they tell of', async () => {
    const { outFile } = await print(documentOf(`<p>Far ${pageOf('far').replace('000', 'to be filled<br>'.repeat(120))}</p><h1 id="far">Far away</h1>`), 'moving')
    const document = await open(await readFile(outFile))
    const words = await wordsOf(document)
    await document.destroy()
    expect(words).toHaveLength(2)
    expect(words[0]).toContain('Far 2')
    expect(words[1]).toContain('Far away')
  })

  it('that never come to rest are an error that names the anchor', async () => {
    const restless = documentOf(`<p>Far ${pageOf('far')}</p><h1 id="between" style="display:none">Between</h1><h1 id="far">Far away</h1>
      <script>new MutationObserver(() => { const b = document.getElementById('between').style; b.display = b.display ? '' : 'none' })
        .observe(document.querySelector('.page-of'), { childList: true })</script>`)
    await expect(print(restless, 'restless')).rejects.toThrow(/3 prints.*change page: far\./)
  })

  it('of an anchor to which no link leads are an error that names it', async () => {
    const unreachable = documentOf('<p><span class="page-of" data-page-of="gone">000</span> <span data-page-of="near"></span><h1 id="near">Near</h1>')
    await expect(print(unreachable, 'unreachable')).rejects.toThrow(/gone, near .*no link/)
  })
})

describe('the printed manual', () => {
  it('has a place for each link, and an outline of its headings', async () => {
    const destinations = await pdf.getDestinations()
    expect(Object.keys(destinations).sort()).toEqual([...chapters.map(({ anchor }) => anchor), ...chapters.map(({ anchor, rows }) => cable(anchor, rows - 1))].sort())
    const { title } = chapters[1]!
    expect(await pdf.getPageIndex(destinations['electrical-a1.7']![0] as RefProxy) + 1).toBe(sheetWith(`${title} Cable Length`))
    expect((await pdf.getOutline()).map(entry => entry.title)).toEqual([...chapters.map(entry => entry.title), 'Cable index'])
    const links = (await (await pdf.getPage(pdf.numPages)).getAnnotations()).map(({ dest }) => dest as string)
    expect(links).toContain('networks')
  })

  it('is tagged: rows and header cells can be read as such', async () => {
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true })
    const roles = JSON.stringify(await (await pdf.getPage(2)).getStructTree()).match(/"role":"\w+"/g)!
    expect(roles).toEqual(expect.arrayContaining(['"role":"H1"', '"role":"Table"', '"role":"TR"', '"role":"TH"', '"role":"TD"']))
  })

  it('is on the sheets that its own rules ask for', async () => {
    // A5 is 148 mm by 210 mm (ISO 216); a point is 1/72 inch.
    const { view } = await pdf.getPage(1)
    expect(view![2]! / 72 * 25.4).toBeCloseTo(148, 0)
    expect(view![3]! / 72 * 25.4).toBeCloseTo(210, 0)
  })

  it('says what it is, in any script', async () => {
    const { info } = await pdf.getMetadata()
    expect(info).toMatchObject({
      Title: 'Handover manual, Ørnefjell', Author: 'Brandt & Sønner', Subject: 'Ηλεκτρικά', Keywords: 'as fitted, électricité',
      CreationDate: 'D:20260304000000Z', ModDate: 'D:20260304000000Z', Language: 'en',
    })
  })

  it('is much smaller than as the browser leaves it', async () => {
    const page = await openPage(browser)
    await page.goto(`file://${path.join(folder, 'manual.html')}`)
    const plain = await page.pdf({ tagged: true, outline: true, preferCSSPageSize: true })
    await page.close()
    expect(bytes.length).toBeLessThan(plain.length / 2)
  })

  it('has the same bytes when it is printed again', async () => {
    const { outFile } = await print(manual, 'again')
    expect((await readFile(outFile)).equals(bytes)).toBe(true)
  })
})

describe('what cannot be printed', () => {
  it('is a document that is not there, or asks for what is not there', async () => {
    await expect(printManual(browser, { htmlFile: path.join(folder, 'none.html'), outFile: path.join(folder, 'none.pdf'), metadata })).rejects.toThrow('none.html')
    const lacking = documentOf('<img src="gone.png" loading="lazy"><p>text', '<link rel="stylesheet" href="https://example.org/far.css">')
    await expect(print(lacking, 'lacking')).rejects.toThrow(/lacking\.html asks for what is not there: .*(far\.css.*gone\.png|gone\.png.*far\.css)/)
  })

  it('is what some other program has written', async () => {
    await expect(compactPdf(bytes, metadata, [])).rejects.toThrow('unknown form')
    await expect(compactPdf(Buffer.from('%PDF-1.4\n'), metadata, [])).rejects.toThrow('unknown form')
  })
})
