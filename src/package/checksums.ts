/**
 * Checksums of a pack's files, in the form that `sha256sum -c` reads: whoever has the pack can prove in ten years that
 * no file was changed, with no program of ours.
 */
import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { readdir, readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'

export const checksumFile = 'SHA256SUMS'

/** Checksum by file, the file named from the pack's top with `/` between folders. */
export type Checksums = ReadonlyMap<string, string>

/** Lists every file of the folder but the list itself, in the order of their names. */
export async function writeChecksums(folder: string): Promise<void> {
  const lines: string[] = []
  for (const file of await filesBelow(folder)) lines.push(`${lineOf(file, await sha256(path.join(folder, file)))}\n`)
  await writeFile(path.join(folder, checksumFile), lines.join(''))
}

/** The list of a folder, or null when it has none or one that is not of this form. */
export async function readChecksums(folder: string): Promise<Checksums | null> {
  const text = await readFile(path.join(folder, checksumFile), 'utf8').catch(() => null)
  if (text === null) return null
  const checksums = new Map<string, string>()
  for (const line of text.split('\n').slice(0, -1)) {
    const [, escaped, sum, name] = /^(\\?)([0-9a-f]{64})  (.+)$/.exec(line) ?? []
    if (sum === undefined || name === undefined) return null
    checksums.set(escaped === '' ? name : unescaped(name), sum)
  }
  return checksums
}

/** Every file below a folder but its list of checksums, sorted, named from the folder's top with `/` between folders. */
export async function filesBelow(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true })
  return entries
    .filter(entry => !entry.isDirectory())
    .map(entry => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
    .filter(file => file !== checksumFile)
    .sort((a, b) => (a < b ? -1 : 1))
}

export async function sha256(file: string): Promise<string> {
  const hash = createHash('sha256')
  for await (const chunk of createReadStream(file)) hash.update(chunk as Buffer)
  return hash.digest('hex')
}

/** A name that holds a backslash or a line end is written escaped, and its line starts with a backslash. */
function lineOf(file: string, sum: string): string {
  const escaped = file.replaceAll('\\', '\\\\').replaceAll('\n', '\\n').replaceAll('\r', '\\r')
  return `${escaped === file ? '' : '\\'}${sum}  ${escaped}`
}
const unescaped = (name: string): string =>
  name.replace(/\\([\\nr])/g, (_, letter: string) => (letter === 'n' ? '\n' : letter === 'r' ? '\r' : '\\'))
