/** Reads a vessel folder, and the catalogue folder beside it, into entries with their places. The only stage that reads the vessel. */
import { readFile, realpath, stat } from 'node:fs/promises'
import { relative, resolve, sep } from 'node:path'
import { find, type Finding, type LocatedFinding } from '../findings/finding.js'
import { aboutFile, fileNotUtf8, fileTooLarge, fileUnreadable, folderNotFound, folderWithoutData } from './findings.js'
import { gatherEntries, type ReadFile } from './gather-entries.js'
import { inPlainWords, listFiles, type ListedFile } from './list-files.js'
import { isProcedureFile } from './parse-procedure.js'
import { positionOf, sourceFile, type SourceFile, type SourceFolder } from './source-folder.js'

/** A list of 20 000 cables is 2 MB. */
const mostBytes = 8 * 1024 * 1024

/**
 * Everything that the `.yaml`, `.yml` and `.csv` files below `path` and the procedures in Markdown hold, and what was wrong with them. Never throws for
 * what it finds there.
 *
 * @param options.catalogue  folder with models and cable types that several vessels share; passed over if it lies in the
 *                           vessel folder, where it is read anyway
 */
export async function readFolder(path: string, options: { readonly catalogue?: string } = {}): Promise<SourceFolder> {
  const vessel = await readTop(path, 'vessel', '')
  const { catalogue } = options
  if (catalogue === undefined || await liesIn(catalogue, path)) return gatherEntries(vessel.files, vessel.names, vessel.findings)
  const shared = await readTop(catalogue, 'catalogue', relative(resolve(path), resolve(catalogue)).split(sep).join('/'))
  return gatherEntries([...vessel.files, ...shared.files], vessel.names, [...vessel.findings, ...shared.findings])
}

interface Top {
  readonly files: readonly ReadFile[]
  readonly names: ReadonlySet<string>
  readonly findings: readonly LocatedFinding[]
}

async function readTop(path: string, role: SourceFile['role'], shownAs: string): Promise<Top> {
  const fault = await faultOfFolder(path)
  if (fault !== null) return { files: [], names: new Set(), findings: [nowhere(find(folderNotFound, aboutFile(path, {}, { reason: fault })))] }
  const { files: listed, findings } = await listFiles(path, shownAs)
  const data = listed.filter(({ name }) => /\.(ya?ml|csv)$/i.test(name))
  const procedures = listed.filter(({ name }) => isProcedureFile(name))
  return {
    files: await Promise.all([...data, ...procedures].map(file => readData(file, role))),
    names: new Set(listed.map(({ name }) => name)),
    findings: data.length > 0 ? findings : [...findings, nowhere(find(folderWithoutData, aboutFile(path, {})))],
  }
}

async function faultOfFolder(path: string): Promise<string | null> {
  try {
    return (await stat(path)).isDirectory() ? null : 'this is a file, not a folder'
  } catch (error) {
    return inPlainWords(error)
  }
}

async function readData({ name, path }: ListedFile, role: SourceFile['role']): Promise<ReadFile> {
  const unread = (finding: Finding): ReadFile => ({ name, file: null, finding: nowhere(finding) })
  try {
    const stats = await stat(path)
    // Opening a pipe would wait for ever.
    if (!stats.isFile()) return unread(find(fileUnreadable, aboutFile(name, {}, { reason: 'it is no regular file' })))
    if (stats.size > mostBytes) return unread(find(fileTooLarge, aboutFile(name, { fileSizeCount: stats.size }, { limit: String(mostBytes) })))
    return decode(await readFile(path), name, role)
  } catch (error) {
    return unread(find(fileUnreadable, aboutFile(name, {}, { reason: inPlainWords(error) })))
  }
}

const nowhere = (finding: Finding): LocatedFinding => ({ ...finding, at: null })

/** The text of a file, without its byte order mark; with the first byte that is no UTF-8 as a finding, if there is one. */
export function decode(bytes: Uint8Array, name: string, role: SourceFile['role']): ReadFile {
  const whole = textOf(bytes, { stream: false })
  if (whole !== null) return { name, file: sourceFile(name, role, whole), finding: null }

  let good = 0
  let bad = bytes.length + 1
  while (bad - good > 1) {
    const middle = (good + bad) >> 1
    if (textOf(bytes.subarray(0, middle), { stream: true }) === null) bad = middle
    else good = middle
  }
  const before = textOf(bytes.subarray(0, good), { stream: true }) ?? ''
  const mark = bytes[0] === 0xEF && bytes[1] === 0xBB && bytes[2] === 0xBF ? 3 : 0
  const evidence = { byteNumber: mark + new TextEncoder().encode(before).length + 1 }
  const file = sourceFile(name, role, new TextDecoder().decode(bytes))
  const at = positionOf({ file, start: before.length, end: before.length + 1 })
  return { name, file, finding: { ...find(fileNotUtf8, aboutFile(name, evidence)), at } }
}

/** Null when a byte belongs to no character; with `stream`, one that only lacks its end at the very end is let pass. */
function textOf(bytes: Uint8Array, { stream }: { readonly stream: boolean }): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream })
  } catch {
    return null
  }
}

async function liesIn(inner: string, outer: string): Promise<boolean> {
  try {
    const [inside, outside] = await Promise.all([realpath(inner), realpath(outer)])
    return inside === outside || inside.startsWith(outside + sep)
  } catch {
    return false
  }
}
