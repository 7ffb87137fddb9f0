/**
 * How long the work takes on the sample vessel, beside what it may take. Ratios compare two pieces of work done in the
 * same run on the same machine, so they say the same on a slow one.
 */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { performance } from 'node:perf_hooks'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build, examine, type Examined, viewOf } from './build.js'
import { forEdition } from './edition.js'
import { calculate } from './calculate/calculate.js'
import { dependencyPass } from './calculate/dependency/index.js'
import { feedingPass } from './calculate/feeding/index.js'
import { multipliedVessel } from './multiplied-vessel.js'
import { findBrowser, openBrowser, openPage } from './render/browser.js'
import { drawDiagrams, openDrawingBoard } from './render/draw-diagrams.js'
import { diagramSourcesOf, openRenderer, pictureFilesOf } from './renderer.js'
import { volumeDocumentOf } from './render/volume-name.js'
import { readPictures } from './load/read-pictures.js'

const sample = fileURLToPath(new URL('../sample-vessel', import.meta.url))

interface Row {
  readonly what: string
  readonly value: number
  readonly atMost: number
  readonly unit: 's' | '×'
}

async function secondsFor(work: () => unknown): Promise<number> {
  const start = performance.now()
  await work()
  return (performance.now() - start) / 1000
}

/** The middle of several, so that one interruption does not count. */
async function usualSeconds(times: number, work: () => unknown): Promise<number> {
  const taken: number[] = []
  for (let i = 0; i < times; i++) taken.push(await secondsFor(work))
  return taken.toSorted((a, b) => a - b)[Math.floor(times / 2)]!
}

async function examineRows(): Promise<readonly Row[]> {
  const first = await secondsFor(() => examine(sample))
  const usual = await usualSeconds(9, () => examine(sample))
  return [
    { what: 'validate and calculate the sample vessel, first time', value: first, atMost: 0.5, unit: 's' },
    { what: 'validate and calculate it again', value: usual, atMost: 0.5, unit: 's' },
  ]
}

async function growthRows({ vessel, basis }: Examined): Promise<readonly Row[]> {
  // Copied once too, so that all are made alike, and new each time: nothing kept from the run before helps.
  const secondsOf = (copies: number, times: number) => {
    const vessels = Array.from({ length: times }, () => multipliedVessel(vessel, copies))
    return usualSeconds(vessels.length, () => calculate(vessels.pop()!, basis))
  }
  const one = await secondsOf(1, 9)
  const growth = async (copies: number, times: number, atMost: number): Promise<Row> => {
    const many = await secondsOf(copies, times)
    return { what: `calculate ${copies} times the vessel: ${one.toFixed(3)} s becomes ${many.toFixed(3)} s`, value: many / one, atMost, unit: '×' }
  }
  return [
    { what: 'calculate the vessel', value: one, atMost: 0.5, unit: 's' },
    await growth(10, 9, 12),
    await growth(50, 1, 60),
  ]
}

/** What is lost with each thing of a large vessel, and the way back to the source of each item. */
async function dependencyRows({ vessel, basis }: Examined): Promise<readonly Row[]> {
  const copies = 50
  const large = multipliedVessel(vessel, copies)
  const feeding = feedingPass(large)
  const taken = await usualSeconds(3, () => dependencyPass(large, basis, { feeding }))
  return [{ what: `dependency of every node of ${copies} times the vessel`, value: taken, atMost: 2, unit: 's' }]
}

async function packRows(examined: Examined, scratch: string): Promise<readonly Row[]> {
  const choice = await findBrowser(process.env)
  if (choice.status === 'missing') {
    process.stdout.write(`Packs are not measured: ${choice.reason} ${choice.remedy}\n`)
    return []
  }
  const view = await viewOf(forEdition(examined, 'owner'))
  const renderer = await openRenderer(process.env)
  const pictures = await renderer.pictures(await readPictures(sample, pictureFilesOf(view)))
  try {
    const drawn = await renderer.draw(view)
    for (const volume of view.volumes) await renderer.writeVolume(view, volume, { ...drawn, pictures }, scratch)
  } finally {
    await renderer.close()
  }
  const volumes = view.volumes.map(volume => pathToFileURL(path.join(scratch, 'print', volumeDocumentOf(volume))).href)

  // The least that any program could do: the browser draws each diagram and prints each finished document once.
  const bare = await secondsFor(async () => {
    const browser = await openBrowser(choice)
    await drawDiagrams(await openDrawingBoard(browser), diagramSourcesOf(view), { cacheFolder: null })
    for (const volume of volumes) {
      const page = await openPage(browser)
      await page.goto(volume)
      await page.pdf({ path: path.join(scratch, 'bare.pdf'), preferCSSPageSize: true, tagged: true, outline: true })
      await page.close()
    }
    await browser.close()
  })
  const packSeconds = (name: string, drawingCache: string | null) => secondsFor(() => build(sample, {
    placeFor: () => path.join(scratch, name), pdf: true, edition: 'owner', asOf: '2026-01-01', variables: process.env, drawingCache, step: () => {},
  }))
  const cache = path.join(scratch, 'drawings')
  const whole = await packSeconds('pack', cache)
  const again = await packSeconds('pack', cache)
  return [
    { what: 'whole pack of the sample vessel, nothing kept from before', value: whole, atMost: 10, unit: 's' },
    { what: `the same against bare drawing and printing (${bare.toFixed(1)} s)`, value: whole / bare, atMost: 2, unit: '×' },
    { what: 'whole pack again, diagrams unchanged', value: again, atMost: 10, unit: 's' },
  ]
}

const tableOf = (rows: readonly Row[]): string => {
  const widest = Math.max(...rows.map(({ what }) => what.length))
  return rows.map(({ what, value, atMost, unit }) =>
    `${what.padEnd(widest)}  ${value.toFixed(2).padStart(6)} ${unit}   target at most ${String(atMost).padStart(4)} ${unit}   ${value <= atMost ? 'met' : 'NOT MET'}\n`).join('')
}

const scratch = await mkdtemp(path.join(tmpdir(), 'asfitted-bench-'))
try {
  const early = await examineRows()
  const examined = await examine(sample)
  if (examined.status !== 'examined') throw new Error('the sample vessel has errors: run asfitted check on it')
  process.stdout.write(tableOf([...early, ...await growthRows(examined), ...await dependencyRows(examined), ...await packRows(examined, scratch)]))
} finally {
  await rm(scratch, { recursive: true, force: true })
}
