/**
 * From a folder of data to the handover pack: the six stages in their order. Each is handed what the one before it made;
 * between calculation and view what the edition must not carry is left out.
 */
import { rm } from 'node:fs/promises'
import path from 'node:path'
import { atMost } from './at-most.js'
import { calculate, methods } from './calculate/calculate.js'
import { check } from './check/check.js'
import { type ForEdition, forEdition } from './edition.js'
import { withAcceptances } from './findings/acceptance.js'
import type { LocatedFinding } from './findings/finding.js'
import { locate } from './findings/locate.js'
import { findingKinds } from './findings/registry.js'
import { isUnreadable } from './load/findings.js'
import { readContent } from './load/read-content.js'
import { readDocuments } from './load/read-documents.js'
import { readPictures } from './load/read-pictures.js'
import { readFolder } from './load/read-folder.js'
import { lookup } from './model/lookup.js'
import type { Content } from './model/content.js'
import type { SourceFolder } from './load/source-folder.js'
import { placesOf } from './load/source-index.js'
import type { Results } from './model/results.js'
import type { NotAssessed } from './model/results/gap.js'
import type { Edition, Equipment, Vessel } from './model/vessel.js'
import { assemblePack } from './package/pack-folder.js'
import { writeRecord } from './package/record.js'
import { writeWorkbooks } from './package/workbook.js'
import type { Basis } from './references/basis/basis.js'
import { bases } from './references/basis/bases.js'
import type { Renderer } from './renderer.js'
import { listNotAssessed } from './view/pages/not-assessed.view.js'
import { type Pictures, picturesMissing, picturesReady } from './render/pictures.js'
import type { PrintOptions } from './render/print-pdf.js'
import { volumeDocumentOf } from './render/volume-name.js'
import type { View } from './view/view-model.js'

/** What the first three stages made of a folder. */
export type Examination = Examined | NoVessel

export interface Examined {
  readonly status: 'examined'
  readonly source: SourceFolder
  readonly vessel: Vessel
  /** The catalogue, each model as an item of it, by its key. */
  readonly models: ReadonlyMap<string, Equipment>
  readonly basis: Basis
  readonly content: Content
  readonly results: Results
  readonly findings: readonly LocatedFinding[]
  /** The results that are missing for want of data. */
  readonly notAssessed: readonly NotAssessed[]
}

/** `unreadable`: the files cannot be taken as a vessel's. `invalid`: they can, and what they say is wrong. */
export interface NoVessel {
  readonly status: 'unreadable' | 'invalid'
  readonly source: SourceFolder
  readonly findings: readonly LocatedFinding[]
}

export interface ExamineOptions {
  /** Year-month-day for which what is due is worked out; when left out, no day. */
  readonly asOf?: string
  /** Folder with models and cable types that several vessels share. */
  readonly catalogue?: string
}

/** Reads, checks and calculates. Writes nothing, and never throws for what is wrong with the data. */
export async function examine(folder: string, options: ExamineOptions = {}): Promise<Examination> {
  const source = await readFolder(folder, options)
  const { vessel, models, findings, positions } = check(source)
  if (vessel === null) return { status: findings.some(isUnreadable) ? 'unreadable' : 'invalid', source, findings }

  const basis = bases[vessel.basis]
  const content = await readContent()
  const results = calculate(vessel, basis, { asOf: options.asOf ?? null, generalTasks: content.maintenanceTasks, labelSizes: content.labelSizes, dangerTexts: content.dangerTexts })
  return {
    status: 'examined', source, vessel, models, basis, content, results,
    findings: withAcceptances([...findings, ...locate(results.findings, positions)], {
      deviations: vessel.acceptedDeviations, places: placesOf(source.entries, 'accepted-deviations'),
      issuedOn: vessel.document.issuedOn, kindIds: findingKinds.map(({ id }) => id),
    }),
    notAssessed: listNotAssessed(vessel, results),
  }
}

/** The finished text of every page. */
export async function viewOf({ edition, vessel, basis, content, results, findings }: ForEdition): Promise<View> {
  const { makeView } = await import('./view/make-view.js')
  return makeView({ edition, vessel, basis, results, findings, content, registries: { methods, findingKinds } })
}

export interface BuildOptions extends ExamineOptions {
  /** Where the pack goes, once the vessel is known. */
  readonly placeFor: (vessel: Vessel) => string
  readonly pdf: boolean
  /** Whom the pack is for; what it must not carry is left out of everything in it. */
  readonly edition: Edition
  /** Date of the build, year-month-day: the manual's, where the data give no date of issue. */
  readonly asOf: string
  readonly variables: Readonly<Record<string, string | undefined>>
  /** Folder that keeps drawings from one build to the next, or null for none; the usual one when left out. */
  readonly drawingCache?: string | null
  readonly step: (text: string) => void
}

export interface Built extends Omit<ForEdition, 'status'> {
  readonly status: 'built'
  readonly place: string
  readonly view: View
  /** Sheets of each of the view's volumes; null when nothing was printed. */
  readonly sheetCounts: readonly number[] | null
  /** The same of the view's documents of labels. */
  readonly labelSheetCounts: readonly number[] | null
  /** Why drawings, pictures or the printed manual are missing, and what to do, one sentence each. */
  readonly lacking: readonly string[]
}

/**
 * Builds the pack in its place, or says why there is no vessel to build one for.
 *
 * Errors   what `placeFor` throws; PackRefused; a fault of the disk or the browser. The pack before it stays as it was.
 */
export async function build(folder: string, options: BuildOptions): Promise<Built | NoVessel> {
  options.step('Reading, checking, calculating')
  const examined = await examine(folder, options)
  if (examined.status !== 'examined') return examined
  const shown = forEdition(examined, options.edition)

  options.step('Composing the pages')
  const { openRenderer } = await import('./renderer.js')
  // The browser starts while the pages are composed.
  const opening = openRenderer(options.variables, options.drawingCache)
  try {
    const view = await viewOf(shown)
    return await assemble(folder, shown, view, await opening, options)
  } finally {
    await (await opening).close()
  }
}

async function assemble(folder: string, shown: ForEdition, view: View, renderer: Renderer, options: BuildOptions): Promise<Built> {
  const documents = await readDocuments(folder, [...lookup(shown.vessel).items.values()].flatMap(item => item.documents))
  const { pictureFilesOf } = await import('./renderer.js')
  const pictures = await renderer.pictures(await readPictures(folder, pictureFilesOf(view)))
  const place = options.placeFor(shown.vessel)
  const made = await assemblePack(place, async packFolder => {
    const rendered = await renderInto(packFolder, view, shown.vessel, renderer, pictures, options)
    // The record has pictures as the pages show them: without the place and time that a camera wrote into the file.
    await writeRecord(packFolder, { ...shown, schedules: view.schedules, files: view.files, labelLists: view.labels.lists, methods, documents: new Map([...documents, ...picturesReady(pictures)]) })
    await writeWorkbooks(packFolder, view.workbooks)
    options.step('Checksums')
    return rendered
  })
  return { ...shown, ...made, status: 'built', place, view }
}

/** Site and printed documents; what these were printed from does not stay. */
async function renderInto(
  packFolder: string, view: View, vessel: Vessel, renderer: Renderer, pictures: Pictures, { pdf, asOf, step }: BuildOptions,
): Promise<Pick<Built, 'sheetCounts' | 'labelSheetCounts' | 'lacking'>> {
  step('Drawing the diagrams')
  const drawn = await renderer.draw(view)
  const shown = { ...drawn, pictures }
  const lacking = [
    ...(renderer.lacking === null ? drawn.failures : [`${pdf ? 'drawings and the printed manual' : 'drawings'}. ${renderer.lacking}`]),
    ...picturesMissing(pictures),
  ]
  const isPrinted = pdf && renderer.lacking === null
  const missing = new Set(isPrinted ? [] : [...view.volumes, ...view.labels.documents].map(({ file }) => file))
  const writeSite = () => {
    step('Writing the site')
    return renderer.writeSite(view, shown, packFolder, missing)
  }
  if (!isPrinted) {
    await writeSite()
    return { sheetCounts: null, labelSheetCounts: null, lacking }
  }
  const printFolder = path.join(packFolder, 'print')
  const printing = atMost(printsAtOnce)
  const begun: Promise<unknown>[] = []
  const begin = <T>(print: () => Promise<T>): Promise<T> => {
    const printed = printing(print)
    begun.push(printed)
    // Whoever waits for it hears of its failure; until then it is not to end the process.
    printed.catch(() => undefined)
    return printed
  }
  try {
    const volumes: Promise<{ readonly pages: number }>[] = []
    // Written one after the other: what writes them works in the folder of the process. Each is printed while the next are written.
    for (const volume of view.volumes) {
      await renderer.writeVolume(view, volume, shown, packFolder)
      volumes.push(begin(() => renderer.print({
        htmlFile: path.join(printFolder, volumeDocumentOf(volume)),
        outFile: path.join(packFolder, volume.file),
        metadata: documentInformation(vessel, `${view.vesselName}: ${volume.title}`, asOf),
        onProgress: printStep => step(`Printing ${volume.file}: ${printStep}`),
      })))
    }
    await renderer.writeLabels(view, packFolder)
    const labels = begin(() => {
      step('Printing labels')
      return renderer.printLabels(view, packFolder, title => documentInformation(vessel, title, asOf))
    })
    await writeSite()
    return { sheetCounts: (await Promise.all(volumes)).map(({ pages }) => pages), labelSheetCounts: await labels, lacking }
  } finally {
    // Also after a failure nobody may write into a folder that is taken away.
    await Promise.allSettled(begun)
    await rm(printFolder, { recursive: true, force: true })
  }
}

/** A printed document takes a core and some hundred megabytes. */
const printsAtOnce = 2

/** What a PDF reader shows of the document without opening it. */
function documentInformation({ identity, document }: Vessel, title: string, asOf: string): PrintOptions['metadata'] {
  const given = (facts: readonly (string | null)[]): readonly string[] => facts.filter(fact => fact !== null)
  return {
    title,
    author: given([document.preparedBy, document.installer]).join(', '),
    subject: given([document.number, document.issue === null ? null : `issue ${document.issue}`]).join(', '),
    keywords: given([identity.hullIdentification, identity.hullNumber, identity.model, identity.builder]),
    date: document.issuedOn ?? asOf,
  }
}
