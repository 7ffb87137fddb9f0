/** Writes the site and the single document behind the PDF, through Eleventy, from the view alone. */
import { basename, dirname, relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import Eleventy, { type EleventyConfig } from '@11ty/eleventy'
import temml from 'temml'
import { anchorOf } from '../view/site-map.js'
import type { Block, Chapter, Page, View, Volume } from '../view/view-model.js'
import { type Place, hrefOf, packHref, pathOf, pictureHref, printedPlace, recordHref, relink, sitePlace, withoutDeadLinks, withPictures } from './links.js'
import { markdownToHtml } from './markdown.js'
import { pageMargins } from './page-margins.js'
import { type Pictures, writePictures } from './pictures.js'
import { documentOf, volumeDocumentOf } from './volume-name.js'

const projectFolder = fileURLToPath(new URL('../..', import.meta.url))

export interface Drawing { readonly svg: string; readonly widthPx: number; readonly heightPx: number }

export interface RenderOptions {
  /** Gets `site/` or `print/`. */
  readonly outFolder: string
  /** Drawn diagrams by id. A diagram that is not among them is given in words. */
  readonly drawings: ReadonlyMap<string, Drawing>
  /** Why diagrams are missing, for the reader. */
  readonly undrawnReason: string
  /** By file of the vessel folder. */
  readonly pictures: Pictures
  /** Files of the pack that pages link to and that this pack is made without. */
  readonly missing?: ReadonlySet<string>
}

/** Writes the pages of the site to `site/`. */
export async function renderSite(view: View, options: RenderOptions): Promise<void> {
  const folder = resolve(options.outFolder, 'site')
  await runEleventy('templates/site', folder, {
    ...sharedData(view, options),
    sitePages: view.pages.map(page => ({ page, path: pathOf(page.key), place: sitePlace(page.key) })),
  }, { missing: options.missing })
  await writePictures(options.pictures, folder)
}

/** Writes the sheets of labels behind their PDFs to `print/`, each under its document's name. */
export const renderLabels = ({ labels }: View, outFolder: string): Promise<void> =>
  runEleventy('templates/labels', resolve(outFolder, 'print'), { labelDocuments: labels.documents.map(document => ({ ...document, path: documentOf(document) })) })

/** Writes the single document that becomes a PDF to `print/`, into a folder of the volume's name. */
export async function renderVolume(view: View, volume: Volume, options: RenderOptions): Promise<void> {
  const titleBlock = { ...view.titleBlock, title: volume.title }
  const document = resolve(options.outFolder, 'print', volumeDocumentOf(volume))
  const folder = dirname(document)
  await runEleventy('templates/manual', folder, {
    ...sharedData({ ...view, titleBlock }, options),
    volume: { ...volume, document: basename(document) },
    manualChapters: volume.chapters.map(chapter => manualChapter(view, chapter)),
    manualPlace: printedPlace('cover'),
    pageMargins: pageMargins(titleBlock),
  }, { volumeByAnchor: volumesBesides(view, volume) })
  await writePictures(options.pictures, folder)
}

/** What is not in the document that is written. */
interface Elsewhere {
  /** Files of the pack that it is made without. */
  readonly missing?: ReadonlySet<string> | undefined
  /** Names of other printed documents by the anchors of their pages. */
  readonly volumeByAnchor?: ReadonlyMap<string, string>
}

/** Of a page that several have, the first. */
const volumesBesides = ({ volumes }: View, volume: Volume): ReadonlyMap<string, string> =>
  new Map(volumes.filter(other => other !== volume).toReversed()
    .flatMap(({ name, chapters }) => chapters.flatMap(({ pageKeys }) => pageKeys.map(key => [anchorOf(key), name] as const))))

async function runEleventy(templates: string, outFolder: string, data: Readonly<Record<string, unknown>>, elsewhere: Elsewhere = {}): Promise<void> {
  const { missing, volumeByAnchor } = elsewhere
  // Eleventy resolves its folders from the working directory.
  const here = process.cwd()
  process.chdir(projectFolder)
  try {
    const eleventy = new Eleventy(templates, relative(projectFolder, outFolder), {
      configPath: '.eleventy.js',
      quietMode: true,
      config: config => {
        config.benchmarks.config.setIsVerbose(false)
        addFilters(config)
        config.addFilter('isMissing', (file: string) => missing?.has(file) ?? false)
        config.addTransform('dead links', html => withoutDeadLinks(html, volumeByAnchor))
        for (const [name, value] of Object.entries(data)) config.addGlobalData(name, value)
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
  config.addFilter('packHref', (file: string, place: Place) => packHref(file, place))
  config.addFilter('anchor', (key: string) => anchorOf(key))
  config.addFilter('pictureHref', (name: string, place: Place) => pictureHref(name, place))
  config.addFilter('withPictures', (svg: string, pictures: Readonly<Record<string, { readonly name?: string }>>, place: Place) => withPictures(svg, pictures, place))
  config.addFilter('relink', (html: string, place: Place) => relink(html, place))
  config.addFilter('markdown', (source: string, place: Place) => markdownToHtml(source, place))
  config.addFilter('math', (latex: string) => temml.renderToString(latex, { throwOnError: true }))
  config.addFilter('mathBlock', (latex: string) => temml.renderToString(latex, { displayMode: true, throwOnError: true }))
  config.addFilter('classname', (word: string) => word.toLowerCase().replace(/\W+/g, '-'))
}

const sharedData = (view: View, { drawings, undrawnReason, pictures }: RenderOptions) => ({
  view,
  diagrams: Object.fromEntries([...drawings].map(([id, { svg, widthPx }]) => [id, { svg, width: `${Math.ceil(widthPx)}px` }])),
  undrawnReason,
  pictures: Object.fromEntries([...pictures].map(([file, picture]) => [file, 'missing' in picture ? picture : { ...picture, bytes: undefined }])),
})

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
