/** `asfitted build`: the handover pack. */
import { readFileSync } from 'node:fs'
import { readdir, stat } from 'node:fs/promises'
import path from 'node:path'
import { build, type Built } from '../build.js'
import { summaryText } from '../findings/report.js'
import { editionTitles } from '../model/edition.js'
import type { Edition, Vessel } from '../model/vessel.js'
import { exitCodeFor, findingsText, notAssessedText, shownPath, typedPath } from './outcome-text.js'
import { progressOn } from './progress.js'
import { dateOf, type ExitCode, type Surroundings, Unusable } from './surroundings.js'

export interface BuildPackOptions {
  readonly out?: string
  readonly pdf: boolean
  readonly edition?: Edition
  readonly catalogue?: string
}

export async function buildPack(folder: string, { out, pdf, edition = 'owner', ...data }: BuildPackOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { stdout, stderr, variables, workingFolder, now } = surroundings
  const started = now()
  const progress = progressOn(stderr)
  const placeFor = (vessel: Vessel): string => {
    const place = out ?? path.join(workingFolder, 'handover', `${folderName(vessel.identity.name)}${edition === 'owner' ? '' : `-${edition}`}`)
    for (const read of [folder, ...(data.catalogue === undefined ? [] : [data.catalogue])]) refuseInside(place, read, surroundings)
    refuseOfAnother(place, vessel, surroundings)
    return place
  }
  const outcome = await build(folder, { ...data, placeFor, pdf, edition, asOf: dateOf(started), variables, step: progress.step }).finally(progress.end)
  if (outcome.status !== 'built') {
    stdout.write(findingsText(outcome, stdout, surroundings))
    stderr.write('No pack was built: mend the errors above first. A pack that was there is as it was.\n')
    return exitCodeFor(outcome)
  }
  stdout.write(await summary(folder, outcome, now().getTime() - started.getTime(), surroundings))
  for (const reason of outcome.lacking) stderr.write(`Left out: ${reason}\n`)
  return exitCodeFor(outcome)
}

/** In the data's own folder the record of the pack would be read as data the next time. */
function refuseInside(place: string, read: string, surroundings: Surroundings): void {
  const relative = path.relative(read, place)
  if (relative !== '' && (relative.startsWith('..') || path.isAbsolute(relative))) return
  const elsewhere = typedPath(path.join(path.dirname(read), 'handover', path.basename(place)), surroundings)
  throw new Unusable(
    `The pack would lie in ${read} and be read as data of the vessel the next time. Name a folder elsewhere, for example --out ${elsewhere}.`,
  )
}

/** Two boats of one name would otherwise take each other's place without a word. */
function refuseOfAnother(place: string, { identity }: Vessel, surroundings: Surroundings): void {
  const there = identityIn(place)
  if (there === null) return
  const same = there.hullIdentification !== null && identity.hullIdentification !== null
    ? there.hullIdentification === identity.hullIdentification
    : there.name === identity.name && there.hullNumber === identity.hullNumber
  if (same) return
  const hull = there.hullNumber === null ? '' : `, hull ${there.hullNumber}`
  throw new Unusable(`${shownPath(place, surroundings)} holds the pack of another vessel, ${there.name}${hull}. Name another folder with --out.`)
}

function identityIn(place: string): Vessel['identity'] | null {
  try {
    return (JSON.parse(readFileSync(path.join(place, 'record', 'vessel.json'), 'utf8')) as Vessel).identity
  } catch {
    // No pack, or one that cannot be read: what stands there is judged by its checksums.
    return null
  }
}

/** A vessel's name as the name of a folder: letters of any script, figures and dashes. */
export function folderName(vesselName: string): string {
  const plain = vesselName.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()
  return plain.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '') || 'vessel'
}

async function summary(folder: string, built: Built, tookMs: number, surroundings: Surroundings): Promise<string> {
  const { place, view, sheetCounts, labelSheetCounts, findings, notAssessed, vessel, edition } = built
  const { issue } = vessel.document
  const part = async (name: string, what: string) => `  ${name.padEnd(16)} ${sizeText(await bytesBelow(path.join(place, name))).padStart(8)}   ${what}\n`
  return [
    `Handover pack of ${vessel.identity.name}${issue === null ? '' : `, issue ${issue}`}, ${editionTitles[edition]}, in ${shownPath(place, surroundings)}\n`,
    await part('site', `${view.pages.length} pages; start at site/index.html`),
    ...await Promise.all((sheetCounts ?? []).map((sheets, i) => part(view.volumes[i]!.file, sheets === 1 ? '1 sheet' : `${sheets} sheets`))),
    ...await Promise.all(view.workbooks.map(({ file, about }) => part(file, about))),
    ...(view.labels.lists.length === 0 ? [] : [await part('labels', labelsText(view, labelSheetCounts))]),
    ...await Promise.all(view.files.map(({ file, about }) => part(file, about))),
    await part('record', `${view.schedules.length} tables, the vessel, every result, the data as read`),
    await part('findings.json', 'the findings, for other programs'),
    await part('SHA256SUMS', 'checksums of every file; sha256sum -c SHA256SUMS'),
    `Findings: ${summaryText(findings)}${findings.length === 0 ? '' : `; asfitted check ${typedPath(folder, surroundings)} shows them`}.\n`,
    `${notAssessedText(notAssessed)}\n`,
    `Built in ${(tookMs / 1000).toFixed(1)} s.\n`,
  ].join('')
}

function labelsText({ labels: { documents, lists } }: Built['view'], sheetCounts: readonly number[] | null): string {
  const tables = lists.length === 1 ? '1 table for a label printer' : `${lists.length} tables for label printers`
  return sheetCounts === null ? tables : `${sheetCounts.reduce((sum, sheets) => sum + sheets, 0)} sheets in ${documents.length} documents, ${tables}`
}

async function bytesBelow(place: string): Promise<number> {
  const standing = await stat(place)
  if (!standing.isDirectory()) return standing.size
  const files = (await readdir(place, { recursive: true, withFileTypes: true })).filter(entry => entry.isFile())
  const sizes = await Promise.all(files.map(async entry => (await stat(path.join(entry.parentPath, entry.name))).size))
  return sizes.reduce((sum, bytes) => sum + bytes, 0)
}

const sizeText = (bytes: number): string => (bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} kB` : `${(bytes / 1e6).toFixed(1)} MB`)
