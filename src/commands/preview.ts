/** `asfitted preview`: the site as it will be, made again after every change of the data. */
import { rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { examine, type ExamineOptions, viewOf } from '../build.js'
import { forEdition } from '../edition.js'
import { summaryOf, summaryText } from '../findings/report.js'
import { withTemporaryFolder } from '../package/pack-folder.js'
import { type PreviewServer, type Shown, startPreviewServer } from '../preview/preview-server.js'
import { watchFolders } from '../preview/watch-folders.js'
import { readPictures } from '../load/read-pictures.js'
import { picturesMissing } from '../render/pictures.js'
import { openRenderer, pictureFilesOf, type Renderer } from '../renderer.js'
import { findingsText } from './outcome-text.js'
import { dateOf, type ExitCode, exitCode, type Surroundings, Unusable } from './surroundings.js'

export interface PreviewOptions extends ExamineOptions {
  readonly port?: number
}

const lookEveryMs = 300

/** Makes, serves and watches until it is told to stop. */
export async function preview(folder: string, { port = 0, ...data }: PreviewOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { stdout, stderr, stop, variables } = surroundings
  if (!(await stat(folder).then(found => found.isDirectory(), () => false))) {
    throw new Unusable(`${folder} is no folder. Give the path of the folder that holds the vessel’s files.`)
  }
  const server = await serve(port)
  const renderer = await openRenderer(variables)
  try {
    stdout.write(`Preview at ${server.address} (Ctrl-C ends it)\n`)
    if (renderer.lacking !== null) stderr.write(`Diagrams are given in words. ${renderer.lacking}\n`)
    await withTemporaryFolder(path.join(tmpdir(), 'asfitted-preview-'), scratch =>
      forEveryChange([folder, ...(data.catalogue === undefined ? [] : [data.catalogue])], stop, async turn => {
        const { shown, said } = await makeSite(folder, data, path.join(scratch, `${turn}`), renderer, surroundings)
        server.show(shown)
        stdout.write(said)
        await rm(path.join(scratch, `${turn - 1}`), { recursive: true, force: true })
      }))
  } finally {
    await Promise.all([renderer.close(), server.close()])
  }
  return exitCode.clean
}

async function serve(port: number): Promise<PreviewServer> {
  try {
    return await startPreviewServer(port, { reportHtml: reportHtml('The pages are being made. They show by themselves.') })
  } catch (error) {
    const reason = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE' ? 'another program has it' : String(error)
    throw new Unusable(`Port ${port} cannot be used: ${reason}. Name another with --port, or leave --port out.`)
  }
}

/** Does the work once, and again whenever something below the folders has changed since it was begun. */
async function forEveryChange(folders: readonly string[], stop: AbortSignal, work: (turn: number) => Promise<void>): Promise<void> {
  let isDue = true
  let wake = () => {}
  const stopWatching = watchFolders(folders, lookEveryMs, () => {
    isDue = true
    wake()
  })
  stop.addEventListener('abort', () => wake())
  try {
    for (let turn = 1; !stop.aborted;) {
      if (isDue) {
        isDue = false
        await work(turn++)
      } else {
        await new Promise<void>(resolve => { wake = resolve })
      }
    }
  } finally {
    stopWatching()
  }
}

async function makeSite(
  folder: string, data: ExamineOptions, outFolder: string, renderer: Renderer, surroundings: Surroundings,
): Promise<{ readonly shown: Shown; readonly said: string }> {
  const { now } = surroundings
  const started = now()
  const examination = await examine(folder, { ...data, asOf: dateOf(started) })
  const counts = summaryText(summaryOf(examination.findings))
  if (examination.status !== 'examined') {
    return { shown: { reportHtml: reportHtml(findingsText(examination, { write: () => {} }, surroundings)) }, said: `${counts}: the report is shown in place of the pages\n` }
  }
  try {
    const view = await viewOf(forEdition(examination, 'owner'))
    const drawn = await renderer.draw(view)
    const pictures = await renderer.pictures(await readPictures(folder, pictureFilesOf(view)))
    await renderer.writeSite(view, { ...drawn, pictures }, outFolder)
    const took = ((now().getTime() - started.getTime()) / 1000).toFixed(1)
    return { shown: { folder: path.join(outFolder, 'site') }, said: [`${counts} (${took} s)`, ...drawn.failures, ...picturesMissing(pictures)].join('\n') + '\n' }
  } catch (fault) {
    // The author's next change may get round it; until then the fault is in view.
    const text = `A fault of this program, not of your data:\n${fault instanceof Error ? fault.stack : String(fault)}\n`
    return { shown: { reportHtml: reportHtml(text) }, said: text }
  }
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')

const reportHtml = (text: string): string => `<!doctype html>
<html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Preview</title>
<style>body { margin: 2rem; font: 1rem/1.5 sans-serif } pre { font: 0.9rem/1.5 monospace; white-space: pre-wrap }</style>
<h1>Preview</h1><pre>${escaped(text)}</pre></html>
`
