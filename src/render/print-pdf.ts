/** The manual's one HTML document → PDF, with the page numbers in its table of contents and cross-references. */
import { access, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { RefProxy } from 'pdfjs-dist/types/src/display/api.js'
import type { Browser, CDPSession, Page } from 'puppeteer'
import { openPage } from './browser.js'
import { compactPdf, type DocumentInformation } from './compact-pdf.js'
import { fitSheets } from './fit-sheets.js'
import { sheetContent } from './page-margins.js'

export type PrintStep = 'opening the document' | 'counting pages' | 'printing' | 'compressing'

export interface PrintOptions {
  /** The document, its assets beside it. `<span class="page-of" data-page-of="ANCHOR">` gets the page of ANCHOR. */
  readonly htmlFile: string
  readonly outFile: string
  readonly metadata: DocumentInformation
  readonly onProgress?: (step: PrintStep) => void
}

/** Sheets are counted from 1. */
interface Places {
  readonly pages: number
  readonly pageByAnchor: ReadonlyMap<string, number>
}

/** Filling in numbers may push text to another page; after so many prints it should have come to rest. */
const mostPrints = 3

/**
 * Prints the document on the sheets that its own `@page` rules ask for, tagged and with an outline of its headings.
 *
 * Errors: the document or something that it shows is missing; a page number is asked for an anchor that no link of the
 * document leads to; anchors still change page in the last print.
 */
export async function printManual(browser: Browser, options: PrintOptions): Promise<{ pages: number; bytes: number }> {
  const progress = options.onProgress ?? (() => undefined)
  await access(options.htmlFile)
  progress('opening the document')
  const page = await openPage(browser)
  try {
    await openDocument(page, options.htmlFile)
    await page.evaluate(fitSheets, sheetContent)
    const anchors = await page.evaluate(anchorsAskedFor)
    const headings = await page.evaluate(headingsShown)
    progress('counting pages')
    const session = await page.createCDPSession()
    let places: Places = anchors.length === 0 ? { pages: 0, pageByAnchor: new Map() } : await readPlaces(await printBlank(page, session))
    refuseUnreachable(anchors, places)

    for (let print = 1; ; print++) {
      progress('printing')
      await page.evaluate(fillPageNumbers, Object.fromEntries(places.pageByAnchor))
      const pdf = await printToPdf(session, { tagged: true })
      const printed = await readPlaces(pdf)
      const moved = anchors.filter(anchor => printed.pageByAnchor.get(anchor) !== places.pageByAnchor.get(anchor))
      if (moved.length === 0) {
        progress('compressing')
        const compact = await compactPdf(pdf, options.metadata, headings)
        await writeFile(options.outFile, compact)
        return { pages: printed.pages, bytes: compact.length }
      }
      if (print === mostPrints) throw new Error(`After ${mostPrints} prints these anchors still change page: ${listed(moved)}.`)
      places = printed
    }
  } finally {
    await page.close()
  }
}

/** With everything loaded that it shows. Errors: something that it asks for is not there. */
export async function openDocument(page: Page, htmlFile: string): Promise<void> {
  const failed: string[] = []
  page.on('requestfailed', request => failed.push(request.url()))
  await page.emulateMediaType('print')
  await page.evaluateOnNewDocument(hideWhileReading)
  await page.goto(pathToFileURL(path.resolve(htmlFile)).href, { timeout: 0 })
  await page.evaluate(showWithEverythingLoaded)
  if (failed.length > 0) throw new Error(`${htmlFile} asks for what is not there: ${listed(failed)}.`)
}

function refuseUnreachable(anchors: readonly string[], { pageByAnchor }: Places): void {
  const unreachable = anchors.filter(anchor => !pageByAnchor.has(anchor))
  if (unreachable.length > 0) {
    throw new Error(`The page number of ${listed(unreachable)} is asked for, but no link of the document leads there.`)
  }
}

/** The pages with nothing painted on them: where everything stands, in half the time of a print. */
async function printBlank(page: Page, session: CDPSession): Promise<Buffer> {
  const blank = await page.addStyleTag({ content: '* { visibility: hidden !important }' })
  try {
    return await printToPdf(session, { tagged: false })
  } finally {
    await blank.evaluate(style => { (style as HTMLElement).remove() })
  }
}

/**
 * As `page.pdf()` does, tagged with an outline or neither. That reads the file by `Uint8Array.fromBase64`, for which the
 * PDF reader brings a stand-in where Node has none, and on a large file the stand-in takes a second.
 */
export async function printToPdf(session: CDPSession, { tagged }: { readonly tagged: boolean }): Promise<Buffer> {
  const { stream } = await session.send('Page.printToPDF', {
    transferMode: 'ReturnAsStream', preferCSSPageSize: true, printBackground: true,
    generateTaggedPDF: tagged, generateDocumentOutline: tagged, marginTop: 0, marginBottom: 0, marginLeft: 0, marginRight: 0,
  })
  if (stream === undefined) throw new Error('The browser printed nothing.')
  const parts: Buffer[] = []
  for (;;) {
    const { data, base64Encoded, eof } = await session.send('IO.read', { handle: stream, size: 2 ** 22 })
    parts.push(Buffer.from(data, base64Encoded === true ? 'base64' : 'utf8'))
    if (eof) break
  }
  await session.send('IO.close', { handle: stream })
  return Buffer.concat(parts)
}

/** The page of each named destination. The browser writes one for each anchor that a link of the document leads to. */
async function readPlaces(pdf: Buffer): Promise<Places> {
  // A copy: the reader takes the bytes that it is given away from the caller.
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: VerbosityLevel.ERRORS }).promise
  try {
    const destinations = await document.getDestinations() as Readonly<Record<string, [RefProxy, ...unknown[]]>>
    const indexByObject = new Map<number, number>()
    const pageByAnchor = new Map<string, number>()
    for (const [anchor, [target]] of Object.entries(destinations)) {
      const index = indexByObject.get(target.num) ?? await document.getPageIndex(target)
      indexByObject.set(target.num, index)
      pageByAnchor.set(anchor, index + 1)
    }
    return { pages: document.numPages, pageByAnchor }
  } finally {
    await document.destroy()
  }
}

function listed(names: readonly string[]): string {
  const shown = 10
  const rest = names.length - shown
  return names.slice(0, shown).join(', ') + (rest > 0 ? ` and ${rest} more` : '')
}

// --- in the page ----------------------------------------------------------------------------------------------------

const anchorsAskedFor = (): string[] =>
  [...new Set([...document.querySelectorAll<HTMLElement>('[data-page-of]')].map(({ dataset }) => dataset.pageOf!))]

const headingsShown = (): string[] =>
  [...document.querySelectorAll<HTMLElement>('h1, h2, h3, h4, h5, h6, [role="heading"]')].filter(heading => heading.checkVisibility())
    .map(({ textContent }) => textContent.replace(/\s+/g, ' ').trim()).filter(words => words !== '')

const fillPageNumbers = (pageByAnchor: Readonly<Record<string, number>>): void => {
  for (const place of document.querySelectorAll<HTMLElement>('[data-page-of]')) {
    place.textContent = String(pageByAnchor[place.dataset.pageOf!])
  }
}

/**
 * A browser lays out what it has read so far whenever it finds time, and a link that was half read at that moment is
 * printed as one place and not two. Laid out once and as a whole, a document is printed the same each time.
 */
const hideWhileReading = (): void => {
  const hidden = new CSSStyleSheet()
  hidden.replaceSync('html { display: none !important }')
  document.adoptedStyleSheets = [hidden]
}

const showWithEverythingLoaded = async (): Promise<void> => {
  document.adoptedStyleSheets = []
  for (const lazy of document.querySelectorAll('[loading="lazy"]')) lazy.setAttribute('loading', 'eager')
  await Promise.allSettled([...document.images].map(image => image.decode()))
  // Laying out is what asks for the fonts.
  document.body.getBoundingClientRect()
  await document.fonts.ready
}
