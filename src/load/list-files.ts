/** Every file below a folder, each once, whatever links lead to it. */
import { readdir, realpath, stat } from 'node:fs/promises'
import { join, sep } from 'node:path'
import { find, type LocatedFinding } from '../findings/finding.js'
import { aboutFile, fileUnreadable, linkOutOfFolder } from './findings.js'

/** `name`: path as it is shown, parted by `/`. `path`: where to read it. */
export interface ListedFile { readonly name: string; readonly path: string }
export interface Listing { readonly files: readonly ListedFile[]; readonly findings: readonly LocatedFinding[] }

/** Hidden files and what package managers put down are no data. */
const isSkipped = (name: string): boolean => name.startsWith('.') || name === 'node_modules'

/**
 * The files of the folder at `top`, sorted by name. `top` must be a folder.
 *
 * @param shownAs  path that names begin with; empty: names begin at the top of the folder
 */
export async function listFiles(top: string, shownAs = ''): Promise<Listing> {
  const root = await realpath(top)
  const files = new Map<string, ListedFile>()
  const findings: LocatedFinding[] = []
  const seenFolders = new Set<string>()
  const links: { readonly folder: string; readonly name: string }[] = []

  const unreadable = (name: string, error: unknown): void => {
    findings.push({ ...find(fileUnreadable, aboutFile(name, {}, { reason: inPlainWords(error) })), at: null })
  }

  async function walk(folder: string, prefix: string): Promise<void> {
    if (seenFolders.has(folder)) return
    seenFolders.add(folder)
    const items = await readdir(folder, { withFileTypes: true }).catch((error: unknown) => unreadable(prefix === '' ? '.' : prefix, error))
    for (const item of items ?? []) {
      if (isSkipped(item.name)) continue
      const name = prefix === '' ? item.name : `${prefix}/${item.name}`
      const path = join(folder, item.name)
      if (item.isSymbolicLink()) links.push({ folder: path, name })
      else if (item.isDirectory()) await walk(path, name)
      else files.set(path, { name, path })
    }
  }

  async function follow(path: string, name: string): Promise<void> {
    try {
      const target = await realpath(path)
      if (target !== root && !target.startsWith(root + sep)) {
        findings.push({ ...find(linkOutOfFolder, aboutFile(name, {})), at: null })
      } else if ((await stat(target)).isDirectory()) {
        await walk(target, name)
      } else if (!files.has(target)) {
        files.set(target, { name, path: target })
      }
    } catch (error) {
      unreadable(name, error)
    }
  }

  await walk(root, shownAs)
  // Links come last, so that a file keeps the name it has without them; those met on the way join the queue.
  for (let next = links.shift(); next !== undefined; next = links.shift()) await follow(next.folder, next.name)
  return { files: [...files.values()].sort((a, b) => (a.name < b.name ? -1 : 1)), findings }
}

/** What the system says, without its error code and the path on this machine. */
export function inPlainWords(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  return systemWords[code] ?? `the system reports ${code === '' ? String(error) : code}`
}

const systemWords: Readonly<Record<string, string>> = {
  EACCES: 'permission is denied',
  EPERM: 'permission is denied',
  ENOENT: 'there is nothing at this path',
  ENOTDIR: 'there is nothing at this path',
  ELOOP: 'it is a link that leads to itself',
  EISDIR: 'it is a folder',
  ENAMETOOLONG: 'the path is too long',
  EMFILE: 'too many files are open',
}
