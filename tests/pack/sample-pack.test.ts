/** The whole pack of the sample vessel, opened as its reader opens it. */
import { execFileSync } from 'node:child_process'
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { Browser } from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { build, type Built } from '../../src/build.js'
import { findBrowser, openBrowser } from '../../src/render/browser.js'

const sample = fileURLToPath(new URL('../../sample-vessel', import.meta.url))
let folder: string
let built: Built
let pages: ReadonlyMap<string, string>

async function buildInto(place: string, pdf: boolean): Promise<Built> {
  const made = await build(sample, { placeFor: () => place, pdf, edition: 'owner', asOf: '2026-05-04', variables: process.env, step: () => undefined })
  if (made.status !== 'built') throw new Error(`the sample is ${made.status}: ${made.findings.map(({ message }) => message).join('; ')}`)
  return made
}

/** Every file below a folder, by its path from there. */
async function filesIn(place: string): Promise<readonly string[]> {
  const entries = await readdir(place, { recursive: true, withFileTypes: true })
  return entries.filter(entry => entry.isFile()).map(entry => path.relative(place, path.join(entry.parentPath, entry.name))).toSorted()
}

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'asfitted-sample-'))
  built = await buildInto(path.join(folder, 'first'), true)
  const files = (await filesIn(built.place)).filter(file => file.endsWith('.html'))
  pages = new Map(await Promise.all(files.map(async file => [file, await readFile(path.join(built.place, file), 'utf8')] as const)))
}, 180_000)
afterAll(() => rm(folder, { recursive: true, force: true }))

describe('site', () => {
  it('has a page for every item, circuit, cable, panel, zone, system and network', () => {
    const { vessel } = built
    const things = [vessel.equipment, vessel.batteries, vessel.busbars, vessel.circuits, vessel.cables, vessel.panels, vessel.zones, vessel.systems, vessel.canBuses, vessel.ethernetNetworks, vessel.wireways]
    expect(pages.size).toBeGreaterThan(things.reduce((sum, list) => sum + list.length, 0))
  })

  it('leads nowhere but to its own files and places', async () => {
    const present = new Set(await filesIn(built.place))
    const wrong: string[] = []
    for (const [file, html] of pages) {
      for (const [, target] of html.matchAll(/ (?:href|src)="([^"]*)"/g)) {
        const [address = '', anchor] = target!.split('#')
        const to = address === '' ? file : path.join(path.dirname(file), decodeURIComponent(address))
        if (/^[a-z]+:|^\//.test(target!) || !present.has(to)) wrong.push(`${file}: ${target}`)
        else if (anchor !== undefined && !pages.get(to)?.includes(` id="${anchor}"`)) wrong.push(`${file}: ${target}`)
      }
    }
    expect(wrong).toEqual([])
  })

  it('prints no gap of the program', () => {
    const wrong = [...pages].filter(([, html]) => /\b(undefined|NaN|null|\[object Object\])\b/.test(html.replace(/<script[\s\S]*?<\/script>/g, '')))
    expect(wrong.map(([file]) => file)).toEqual([])
  })
})

describe('site in a browser', () => {
  let browser: Browser
  beforeAll(async () => {
    const choice = await findBrowser(process.env)
    if (choice.status === 'missing') throw new Error(`${choice.reason} ${choice.remedy}`)
    browser = await openBrowser(choice)
  })
  afterAll(() => browser.close())

  const tour = ['index.html', 'emergency/index.html', 'emergency/fire/index.html', 'emergency/isolate/index.html', 'emergency/flooding/index.html', 'location/index.html', 'owner/orientation/index.html', 'operating/index.html', 'maintenance/index.html', 'labels/index.html', 'completeness/index.html', 'readiness/index.html', 'photographs/index.html', 'find/index.html', 'safety/index.html', 'electrical/index.html', 'circuits/index.html', 'circuits/a5.3/index.html', 'panels/a1/index.html',
    'panels/a3/index.html', 'equipment/g13/index.html', 'equipment/p1/index.html', 'cables/index.html', 'cables/w41/index.html', 'cables/w101/index.html', 'wireways/ww23/index.html', 'networks/lan1/index.html', 'networks/can1/index.html', 'zones/wheelhouse/index.html', 'workshop/index.html', 'workshop/wires-wheelhouse/index.html', 'workshop/bill/index.html', 'workshop/legends/index.html', 'workshop/test-sheets/index.html', 'methods/index.html', 'basis/index.html', 'spare-capacity/index.html']

  it.each([360, 1280])('at %i px asks only for files, throws nothing and never pushes the page sideways', async width => {
    const page = await browser.newPage()
    const asked: string[] = []
    const thrown: string[] = []
    page.on('request', request => asked.push(request.url()))
    page.on('pageerror', error => thrown.push(String(error)))
    await page.setViewport({ width, height: 800 })
    const wide: string[] = []
    for (const file of tour) {
      await page.goto(pathToFileURL(path.join(built.place, 'site', file)).href)
      if (await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth)) wide.push(file)
    }
    await page.close()
    expect(asked.filter(url => !url.startsWith('file:'))).toEqual([])
    expect(thrown).toEqual([])
    expect(wide).toEqual([])
  })

  it('finds the dead bilge pump’s fuse in one step, with and without script', async () => {
    const page = await browser.newPage()
    const find = pathToFileURL(path.join(built.place, 'site/find/index.html')).href
    await page.goto(find)
    await page.type('.find-box', 'bilge pump forward')
    const shown = await page.$$eval('#find-list tbody tr:not([hidden])', rows => rows.map(row => row.textContent!.replace(/\s+/g, ' ')))
    expect(shown.some(text => text.includes('G13') && text.includes('A5.3 circuit breaker 7.5') && text.includes('A5 way 3'))).toBe(true)
    expect(shown.length).toBeLessThan(20)
    await page.setJavaScriptEnabled(false)
    await page.goto(find)
    expect(await page.$$eval('#find-list tbody tr', rows => rows.length)).toBeGreaterThan(400)
    await page.close()
  })
})

describe('printed manual', () => {
  it('gives each chapter the page on which its heading stands, and a bookmark', async () => {
    const pdf = await getDocument({ data: new Uint8Array(await readFile(path.join(built.place, 'manual.pdf'))), verbosity: 0 }).promise
    const textOf = async (sheet: number) => (await (await pdf.getPage(sheet)).getTextContent()).items.map(item => ('str' in item ? item.str : '')).join(' ').replace(/\s+/g, ' ')
      // A ligature is a piece of its own.
      .replace(/ (fi|fl) (?=[a-z])/g, '$1')
    // The contents take as many sheets as there are before the first chapter.
    const { number: firstNumber, title: firstTitle } = built.view.volumes[0]!.chapters[0]!
    const firstSheet = Number(new RegExp(`${firstNumber} ${firstTitle} (\\d+)`).exec(await textOf(2))?.[1])
    const contents = (await Promise.all(Array.from({ length: firstSheet - 2 }, (_, i) => textOf(i + 2)))).join(' ')
    const bookmarks = (await pdf.getOutline()).map(bookmark => bookmark.title)
    for (const { number, title } of built.view.volumes[0]!.chapters) {
      const printed = new RegExp(`${number} ${title.replace(/[()]/g, '.')} (\\d+)`).exec(contents)?.[1]
      expect(printed, title).toBeDefined()
      expect(await textOf(Number(printed)), title).toContain(`${number} ${title}`)
      expect(bookmarks).toContain(`${number} ${title}`)
    }
    expect(pdf.numPages).toBe(built.sheetCounts![0])
    expect(await textOf(pdf.numPages)).toContain(`of ${pdf.numPages}`)
    await pdf.destroy()
  })
})

// A box too wide for its sheet makes the browser shrink every sheet of the document.
describe('printed documents', () => {
  it('are printed at their size: headings of chapters are 20 pt high, as the style asks', async () => {
    const sizes = await Promise.all(built.view.volumes.map(async ({ file }) => {
      const pdf = await getDocument({ data: new Uint8Array(await readFile(path.join(built.place, file))), verbosity: 0 }).promise
      const sheets = Array.from({ length: Math.min(pdf.numPages, 12) }, (_, i) => i + 1)
      const items = (await Promise.all(sheets.map(async sheet => (await (await pdf.getPage(sheet)).getTextContent()).items))).flat()
      await pdf.destroy()
      // A cover's title is larger still.
      const points = items.flatMap(item => ('str' in item && item.str.trim() !== '' ? [Math.hypot(item.transform[0] as number, item.transform[1] as number)] : []))
      return [file, Math.max(...points.filter(size => size < 30))] as const
    }))
    expect(sizes).toEqual(built.view.volumes.map(({ file }) => [file, expect.closeTo(20, 0)]))
    for (const [, size] of sizes) expect(Math.abs(size - 20)).toBeLessThan(0.1)
  })
})

describe('pack', () => {
  it('is confirmed by sha256sum', () => {
    expect(() => execFileSync('sha256sum', ['--check', '--quiet', 'SHA256SUMS'], { cwd: built.place })).not.toThrow()
  })

  it('comes out the same, byte for byte, a second time', async () => {
    const again = await buildInto(path.join(folder, 'second'), false)
    expect(again.view).toEqual(built.view)
    const same = async (file: string) => (await readFile(path.join(built.place, file))).equals(await readFile(path.join(again.place, file)))
    const files = (await filesIn(again.place)).filter(file => file !== 'SHA256SUMS')
    // Built without print, it says of what is printed that it is not there, instead of leading to it.
    const withPrint = [...pages].filter(([, html]) => /<a href="[^"]*\.pdf">/.test(html) && /href="(\.\.\/)+labels\//.test(html)).map(([file]) => file)
    expect(withPrint).toEqual(['site/emergency/index.html', 'site/labels/index.html'])
    expect((await Promise.all(files.map(async file => [file, await same(file)] as const))).filter(([, equal]) => !equal).map(([file]) => file)).toEqual(withPrint)
  }, 180_000)
})
