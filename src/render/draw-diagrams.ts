/** Mermaid text → SVG, in one browser page for all diagrams of a pack. */
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import type { Browser, Page } from 'puppeteer'
import { openPage } from './browser.js'
import { digest, openContentCache } from './content-cache.js'
import { addSymbols, type DiagramOutcome, drawInPage, type DrawingRequest, placeZoneTitles, preparePage } from './diagram-page.js'
import { diagramSymbols } from './diagram-symbols.js'
import { diagramFontFaces, mermaidConfig, pxPerUnit } from './diagram-style.js'
import { plainOutline, plainSvg } from './plain-svg.js'
import { straightenLines } from './straight-lines.js'

export type { DiagramOutcome }

export interface DiagramSource {
  /** Unique in the pack; starts every id in the drawing. A letter, then letters, digits, dots, dashes, underscores. */
  readonly id: string
  /** What the drawing shows, for those who cannot see it. */
  readonly title: string
  readonly mermaid: string
}

export interface DrawingOptions {
  /** Folder that keeps drawings from one build to the next, or null. */
  readonly cacheFolder: string | null
}

const require = createRequire(import.meta.url)
/** Its `@font-face` rules hold the pack's letters; text is measured with them. */
const fontStylesheet = fileURLToPath(new URL('../../templates/assets/fonts.css', import.meta.url))

/**
 * Draws each source, in its order. A source that mermaid refuses gives a `failed` entry and leaves the others alone.
 *
 * Errors: two sources with one id, an id that cannot start a name in SVG, a font file that is not there.
 */
export async function drawDiagrams(
  board: DrawingBoard, sources: readonly DiagramSource[], options: DrawingOptions,
): Promise<ReadonlyMap<string, DiagramOutcome>> {
  refuseBadIds(sources)
  const { page } = board
  const cache = options.cacheFolder === null ? null : await openContentCache<DiagramOutcome>(options.cacheFolder, await fingerprint(page.browser()))

  const outcomes = new Map<string, DiagramOutcome>()
  for (const source of sources) {
    const kept = await cache?.read(source)
    if (kept) outcomes.set(source.id, kept)
  }
  const missing = sources.filter(({ id }) => !outcomes.has(id))
  if (missing.length > 0) {
    // The fonts have to be loaded for every letter before anything is measured.
    await page.evaluate(
      (config, faces, text) => globalThis.preparePage(config, faces, text), mermaidConfig, diagramFontFaces, missing.map(source => source.mermaid).join(''))
    for (const source of missing) {
      const drawing = await draw(page, source)
      outcomes.set(source.id, drawing)
      if (drawing.status === 'drawn') await cache?.write(source, drawing)
    }
  }
  return new Map(sources.map(({ id }) => [id, outcomes.get(id)!]))
}

function refuseBadIds(sources: readonly DiagramSource[]): void {
  const seen = new Set<string>()
  for (const { id } of sources) {
    if (!/^[A-Za-z][\w.-]*$/.test(id)) throw new Error(`"${id}" cannot be the id of a diagram`)
    if (seen.has(id)) throw new Error(`two diagrams have the id "${id}"`)
    seen.add(id)
  }
}

/** Each is sent as its own text; in the page they find one another by name. */
const pageScript = [preparePage, drawInPage, straightenLines, placeZoneTitles, addSymbols, plainSvg, plainOutline]
  .map(String).join('\n')
declare const globalThis: { preparePage: typeof preparePage; drawInPage: typeof drawInPage }

async function draw(page: Page, { id, title, mermaid }: DiagramSource): Promise<DiagramOutcome> {
  const request: DrawingRequest = { id, title, source: mermaid, pxPerUnit, symbols: diagramSymbols }
  const drawing = await page.evaluate(request => globalThis.drawInPage(request), request)
  if (drawing.status === 'drawn') return drawing
  // mermaid's message goes over several lines, with a pointer that means nothing elsewhere.
  return { ...drawing, message: `Diagram ${id}: ${drawing.message.replace(/\s*\n[-^\s]*/g, ' ')}` }
}

/** A page with mermaid, the pack's fonts and our own drawing functions. Opening it takes half a second, so it may be done ahead. */
export interface DrawingBoard {
  readonly page: Page
  close(): Promise<void>
}

export async function openDrawingBoard(browser: Browser): Promise<DrawingBoard> {
  const folder = await mkdtemp(path.join(tmpdir(), 'asfitted-drawing-'))
  try {
    const link = `<link rel="stylesheet" href="${pathToFileURL(fontStylesheet).href}">`
    const script = `<script src="${pathToFileURL(mermaidScript).href}"></script>`
    const file = path.join(folder, 'page.html')
    await writeFile(file, `<!doctype html><meta charset="utf-8">${link}${script}<body></body>`)
    const page = await openPage(browser)
    await page.goto(pathToFileURL(file).href)
    await page.evaluate(pageScript)
    return { page, close: () => page.close() }
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

/** The build of mermaid that is one classic script, layout included. */
const mermaidScript = path.join(path.dirname(require.resolve('mermaid')), 'mermaid.min.js')

/** All that a drawing depends on besides its source. */
async function fingerprint(browser: Browser): Promise<string> {
  const { version } = require('mermaid/package.json') as { version: string }
  return digest([version, await browser.version(), mermaidConfig, pxPerUnit, diagramSymbols, pageScript, await readFile(fontStylesheet, 'utf8')])
}
