/** Writes the site and the single document behind the PDF, through Eleventy, from the view alone. */
import { relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import Eleventy, { type EleventyConfig } from '@11ty/eleventy'
import temml from 'temml'
import { anchorOf } from '../view/site-map.js'
import type { Block, Chapter, Page, View } from '../view/view-model.js'
import { type Place, hrefOf, pathOf, printedPlace, recordHref, relink, sitePlace } from './links.js'
import { markdownToHtml } from './markdown.js'
import { pageMargins } from './page-margins.js'

const projectFolder = fileURLToPath(new URL('../..', import.meta.url))

export interface Drawing { readonly svg: string; readonly widthPx: number; readonly heightPx: number }

export interface SiteOptions {
  /** Gets `site/` and `print/manual.html`. */
  readonly outFolder: string
  /** Drawn diagrams by id. A diagram that is not among them is given in words. */
  readonly drawings: ReadonlyMap<string, Drawing>
  /** Why diagrams are missing, for the reader. */
  readonly undrawnReason: string
}

export async function renderSite(view: View, options: SiteOptions): Promise<void> {
  const outFolder = resolve(options.outFolder)
  // Eleventy resolves its folders from the working directory.
  const here = process.cwd()
  process.chdir(projectFolder)
  try {
    const eleventy = new Eleventy('templates', relative(projectFolder, outFolder), {
      configPath: '.eleventy.js',
      quietMode: true,
      config: config => {
        config.benchmarks.config.setIsVerbose(false)
        addFilters(config)
        for (const [name, value] of Object.entries(globalData(view, options))) config.addGlobalData(name, value)
      },
    })
    // Its reports would stand between ours; what goes wrong is thrown as well.
    eleventy.disableLogger()
    await eleventy.write()
  } finally {
    process.chdir(here)
  }
}

function addFilters(config: EleventyConfig): void {
  config.addFilter('href', (key: string, place: Place) => hrefOf(key, place))
  config.addFilter('recordHref', (file: string, place: Place) => recordHref(file, place))
  config.addFilter('anchor', (key: string) => anchorOf(key))
  config.addFilter('relink', (html: string, place: Place) => relink(html, place))
  config.addFilter('markdown', (source: string, place: Place) => markdownToHtml(source, place))
  config.addFilter('math', (latex: string) => temml.renderToString(latex, { throwOnError: true }))
  config.addFilter('mathBlock', (latex: string) => temml.renderToString(latex, { displayMode: true, throwOnError: true }))
  config.addFilter('classname', (word: string) => word.toLowerCase().replace(/\s+/g, '-'))
}

function globalData(view: View, options: SiteOptions): Record<string, unknown> {
  return {
    view,
    sitePages: view.pages.map(page => ({ page, path: pathOf(page.key), place: sitePlace(page.key) })),
    manualChapters: view.chapters.map(chapter => manualChapter(view, chapter)),
    manualPlace: printedPlace('cover'),
    diagrams: Object.fromEntries([...options.drawings].map(([id, { svg, widthPx, heightPx }]) => [id, { svg, shape: shapeOf(widthPx, heightPx) }])),
    undrawnReason: options.undrawnReason,
    pageMargins: pageMargins(view.titleBlock),
  }
}

const shapeOf = (widthPx: number, heightPx: number): 'wide' | 'tall' => (widthPx >= heightPx ? 'wide' : 'tall')

interface ManualPage { readonly page: Page; readonly blocks: readonly Block[]; readonly place: Place; readonly ownTitle: boolean; readonly opens: boolean }

function manualChapter(view: View, chapter: Chapter) {
  const byKey = new Map(view.pages.map(page => [page.key, page]))
  const pages = chapter.pageKeys.map((key, i): ManualPage => {
    const page = byKey.get(key)
    if (page === undefined) throw new Error(`chapter ${chapter.number} names page ${key}, which does not exist`)
    return { page, blocks: page.printed ?? page.blocks, place: printedPlace(key), ownTitle: page.title !== chapter.title, opens: i === 0 }
  })
  return { ...chapter, pages, inContents: chapter.listed ? pages.filter(({ ownTitle }) => ownTitle).map(({ page }) => page) : [] }
}
