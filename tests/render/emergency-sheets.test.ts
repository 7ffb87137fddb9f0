/** Each emergency page on one sheet of A4: in the printed volumes, and printed from the site. Counted in the PDF, not in our own figures. */
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { Browser } from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { examine, type Examined, viewOf } from '../../src/build.js'
import { calculate } from '../../src/calculate/calculate.js'
import { forEdition } from '../../src/edition.js'
import { emergencyTasks } from '../../src/references/procedure-places.js'
import { findBrowser, openBrowser } from '../../src/render/browser.js'
import { printManual } from '../../src/render/print-pdf.js'
import { renderSite, renderVolume } from '../../src/render/site.js'
import type { View } from '../../src/view/view-model.js'

let browser: Browser
let folder: string
let sample: Examined

const metadata = { title: 'T', author: 'A', subject: 'S', keywords: [], date: '2026-01-02' }

beforeAll(async () => {
  const choice = await findBrowser(process.env)
  if (choice.status === 'missing') throw new Error(`${choice.reason} ${choice.remedy}`)
  browser = await openBrowser(choice)
  folder = await mkdtemp(path.join(tmpdir(), 'asfitted-sheets-'))
  const examined = await examine(path.resolve('sample-vessel'))
  if (examined.status !== 'examined') throw new Error('the sample cannot be read')
  sample = examined
}, 60_000)
afterAll(async () => {
  await browser?.close()
  await rm(folder, { recursive: true, force: true })
})

/** The words of each sheet. */
async function sheetsOf(bytes: Uint8Array): Promise<readonly string[]> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS }).promise
  const words = await Promise.all(Array.from({ length: pdf.numPages }, async (_, i) => (await (await pdf.getPage(i + 1)).getTextContent()).items.map(item => ('str' in item ? item.str : '')).join(' ').replace(/\s+/g, ' ')))
  await pdf.destroy()
  return words
}

const options = (name: string) => ({ outFolder: path.join(folder, name), drawings: new Map(), undrawnReason: '', pictures: new Map() })

async function printedCards(view: View, name: string): Promise<readonly string[]> {
  const volume = view.volumes.find(({ file }) => file === 'emergency.pdf')!
  await renderVolume(view, volume, options(name))
  const outFile = path.join(folder, name, 'emergency.pdf')
  await printManual(browser, { htmlFile: path.join(folder, name, 'print/emergency/index.html'), outFile, metadata })
  return sheetsOf(await readFile(outFile))
}

describe('the printed cards of the sample', () => {
  it('are as many sheets as chapters, each with its title, its steps and its plan', async () => {
    const view = await viewOf(forEdition(sample, 'owner'))
    const { chapters } = view.volumes.find(({ file }) => file === 'emergency.pdf')!
    expect(chapters.map(({ pageKeys }) => pageKeys[0])).toEqual(['distress-call', ...emergencyTasks.map(task => `emergency/${task}`)])
    const sheets = await printedCards(view, 'sample')
    expect(sheets).toHaveLength(chapters.length)
    chapters.forEach(({ title }, i) => expect(sheets[i]).toContain(title))
    for (const sheet of sheets.slice(1)) {
      expect(sheet).toContain('How to get there')
      expect(sheet).toContain('forward')
      expect(sheet).not.toContain('Not all goes on this sheet')
    }
  }, 120_000)

  it('stand first in the manual', async () => {
    const { volumes } = await viewOf(forEdition(sample, 'owner'))
    expect(volumes[0]!.file).toBe('manual.pdf')
    expect(volumes[0]!.chapters.slice(0, 7).map(({ pageKeys }) => pageKeys[0])).toEqual(['distress-call', ...emergencyTasks.map(task => `emergency/${task}`)])
  })
})

it('a boat with very much gear keeps to one sheet a page, says that there is more, and keeps its steps', async () => {
  const { vessel, basis } = sample
  const more = vessel.equipment.flatMap(item => ['fire extinguisher', 'seacock', 'bilge pump', 'battery isolator', 'lifebuoy'].includes(item.kind)
    ? Array.from({ length: 7 }, (_, i) => ({ ...item, tag: `${item.tag}x${i}`, location: `${item.location}, the ${i + 2}th of them on this side` })) : [])
  const large = { ...vessel, equipment: [...vessel.equipment, ...more] }
  const view = await viewOf(forEdition({ ...sample, vessel: large, results: calculate(large, basis), findings: [] }, 'owner'))
  const sheets = await printedCards(view, 'large')
  expect(sheets).toHaveLength(7)
  const fire = sheets.find(sheet => sheet.includes('Fire or smoke'))!
  expect(fire).toContain('Not all goes on this sheet')
  expect(fire).toContain('leave before you must')
}, 120_000)

describe('printed from the site', () => {
  let root: string
  beforeAll(async () => {
    const view = await viewOf(forEdition(sample, 'owner'))
    const pages = view.pages.filter(({ key }) => key === 'emergency' || key.startsWith('emergency/') || key === 'distress-call')
    await renderSite({ ...view, pages }, options('site'))
    root = path.join(folder, 'site/site')
  }, 60_000)

  it.each(['distress-call', 'emergency', ...emergencyTasks.map(task => `emergency/${task}`)])('the page %s is one sheet', async key => {
    const page = await browser.newPage()
    await page.goto(pathToFileURL(path.join(root, key, 'index.html')).href)
    const sheets = await sheetsOf(await page.pdf({ format: 'A4', margin: { top: '10mm', bottom: '10mm', left: '10mm', right: '10mm' } }))
    await page.close()
    expect(sheets).toHaveLength(1)
  })

  it('each page has one tap to the emergency pages', async () => {
    for (const key of ['emergency/fire', 'distress-call']) {
      const html = await readFile(path.join(root, key, 'index.html'), 'utf8')
      expect(html).toMatch(/<header[\s\S]*<a class="emergency-link" href="[./]*emergency\/index\.html">Emergency<\/a>[\s\S]*<\/header>/)
    }
  })
})
