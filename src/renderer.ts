/** The render stage as one tool: pages, drawings and print, with one browser for as long as it is needed. */
import { constants } from 'node:fs'
import { access, mkdir } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import type { Browser } from 'puppeteer'
import { findBrowser, openBrowser } from './render/browser.js'
import { type DiagramOutcome, type DiagramSource, type DrawingBoard, drawDiagrams, openDrawingBoard } from './render/draw-diagrams.js'
import { type PictureFile, type Pictures, preparePictures } from './render/pictures.js'
import type { PrintOptions } from './render/print-pdf.js'
import { type Drawing, renderLabels, renderSite, renderVolume } from './render/site.js'
import type { View, Volume } from './view/view-model.js'

export interface Renderer {
  /** Why nothing can be drawn and printed, and what to do; null when it can. */
  readonly lacking: string | null
  /** Draws every diagram of the view; without a browser, none. */
  draw(view: View): Promise<Drawn>
  /** Makes the pictures of the vessel folder fit for the pack. */
  pictures(files: ReadonlyMap<string, PictureFile>): Promise<Pictures>
  /** `missing`: files of the pack that its pages link to and that it is made without. */
  writeSite(view: View, drawn: Shown, folder: string, missing?: ReadonlySet<string>): Promise<void>
  /** Writes the document behind a PDF to `print/`. */
  writeVolume(view: View, volume: Volume, drawn: Shown, folder: string): Promise<void>
  /** Prints a written document. Must not be called while something is lacking. */
  print(options: PrintOptions): Promise<{ readonly pages: number; readonly bytes: number }>
  /** Writes the documents behind the sheets of labels to `print/`. */
  writeLabels(view: View, folder: string): Promise<void>
  /** Prints the written sheets of labels into the folder; how many sheets each document has. */
  printLabels(view: View, folder: string, metadataOf: (title: string) => PrintOptions['metadata']): Promise<readonly number[]>
  close(): Promise<void>
}

/**
 * Drawings are kept from one build to the next by their content; deleting the folder costs time only. It is not among
 * the temporary files, where another user of the machine could put drawings of his own in its place.
 */
const usualDrawingCache = fileURLToPath(new URL('../node_modules/.cache/asfitted-drawings', import.meta.url))

/**
 * Never fails for want of a browser: everything but drawings and print is made without one.
 *
 * @param drawingCache  folder that keeps drawings, or null for none
 */
export async function openRenderer(
  variables: Readonly<Record<string, string | undefined>>, drawingCache: string | null = usualDrawingCache,
): Promise<Renderer> {
  const cacheFolder = drawingCache !== null && await canKeep(drawingCache) ? drawingCache : null
  const { browser, board, lacking } = await startBrowser(variables)
  const undrawnReason = lacking === null ? 'This diagram could not be drawn.' : 'This pack was built without drawings.'
  return {
    lacking,
    draw: async view => (board === null ? nothingDrawn : sorted(await drawDiagrams(board, diagramSourcesOf(view), { cacheFolder }))),
    pictures: files => preparePictures(files, cacheFolder),
    writeSite: (view, { drawings, pictures }, folder, missing = new Set()) => renderSite(view, { outFolder: folder, drawings, undrawnReason, pictures, missing }),
    writeVolume: (view, volume, { drawings, pictures }, folder) => renderVolume(view, volume, { outFolder: folder, drawings, undrawnReason, pictures }),
    async print(options) {
      if (browser === null) throw new Error('printing without a browser')
      // What reads and rewrites PDFs is large, and a preview needs none of it.
      const { printManual } = await import('./render/print-pdf.js')
      return printManual(browser, options)
    },
    writeLabels: renderLabels,
    async printLabels(view, folder, metadataOf) {
      if (browser === null) throw new Error('printing without a browser')
      const { printLabels } = await import('./render/print-labels.js')
      return printLabels(browser, view.labels.documents, folder, metadataOf)
    },
    close: async () => {
      await board?.close()
      await browser?.close()
    },
  }
}

/** The program may be installed where its user cannot write. */
const canKeep = (folder: string): Promise<boolean> =>
  mkdir(folder, { recursive: true }).then(() => access(folder, constants.W_OK)).then(() => true, () => false)

type Started =
  | { readonly browser: Browser; readonly board: DrawingBoard; readonly lacking: null }
  | { readonly browser: null; readonly board: null; readonly lacking: string }

async function startBrowser(variables: Readonly<Record<string, string | undefined>>): Promise<Started> {
  const without = (lacking: string): Started => ({ browser: null, board: null, lacking })
  const choice = await findBrowser(variables)
  if (choice.status === 'missing') return without(`${choice.reason} ${choice.remedy}`)
  try {
    const browser = await openBrowser(choice)
    return { browser, board: await openDrawingBoard(browser), lacking: null }
  } catch (error) {
    return without(error instanceof Error ? error.message : String(error))
  }
}

export interface Drawn {
  readonly drawings: ReadonlyMap<string, Drawing>
  /** What could not be drawn, one sentence each; on the pages those diagrams are given in words. */
  readonly failures: readonly string[]
}
/** All that pages show besides text. */
export interface Shown extends Pick<Drawn, 'drawings'> { readonly pictures: Pictures }
const nothingDrawn: Drawn = { drawings: new Map(), failures: [] }

function sorted(outcomes: ReadonlyMap<string, DiagramOutcome>): Drawn {
  const drawings = new Map<string, Drawing>()
  const failures: string[] = []
  for (const [id, outcome] of outcomes) {
    if (outcome.status === 'drawn') drawings.set(id, outcome)
    else failures.push(outcome.message)
  }
  return { drawings, failures }
}

/** Each once, though several pages may show it. */
export function diagramSourcesOf({ pages }: View): readonly DiagramSource[] {
  const diagrams = pages.flatMap(({ blocks }) => blocks.filter(block => block.is === 'diagram'))
  return [...new Map(diagrams.map(({ id, caption, mermaid }) => [id, { id, title: caption, mermaid }])).values()]
}

/** Files of the vessel folder that pages show. */
export const pictureFilesOf = ({ pages }: View): readonly string[] => [...new Set(pages.flatMap(({ blocks, printed }) => [...blocks, ...(printed ?? [])])
  .flatMap(block => (block.is === 'picture' ? [block.file] : block.is === 'drawing' ? block.pictures ?? [] : [])))]
