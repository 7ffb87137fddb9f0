/**
 * The pack's folder: put together beside its place and swapped in when complete, so that a build that fails, or is
 * stopped, leaves the pack before it as it was.
 */
import { existsSync, renameSync, rmSync } from 'node:fs'
import { chmod, lstat, mkdir, mkdtemp, readdir, realpath, rm } from 'node:fs/promises'
import path from 'node:path'
import { checksumFile, filesBelow, readChecksums, sha256, writeChecksums } from './checksums.js'

/** The place for the pack holds something that a build must not take away. The message names it and says what to do. */
export class PackRefused extends Error {}

/** Files by which a list of checksums is known to be a pack's. */
const landmarks = ['site/index.html', 'record/vessel.json', 'findings.json']
/** What a file manager leaves behind. */
const litter = new Set(['.DS_Store', 'Thumbs.db', 'desktop.ini'])
const shown = 5

/**
 * Fills a new folder, seals it with its checksums and puts it in `target`'s place. What stands there must be an empty
 * folder or a pack as it was written: anything else is refused before any work is done.
 *
 * Errors   PackRefused; whatever `fill` throws. In both cases `target` is as it was and the new folder is gone.
 */
export async function assemblePack<T>(target: string, fill: (folder: string) => Promise<T>): Promise<T> {
  // Behind a symbolic link it is the folder that is replaced, not the link.
  const place = await realpath(target).catch(() => path.resolve(target))
  await refuseForeign(place)
  const parent = path.dirname(place)
  await mkdir(parent, { recursive: true })
  return withTemporaryFolder(path.join(parent, `.${path.basename(place)}.new-`), async folder => {
    // A temporary folder is its maker's alone; a pack is for whoever may read the place it is put in.
    await chmod(folder, 0o755)
    const made = await fill(folder)
    await writeChecksums(folder)
    await swapIn(folder, place)
    return made
  })
}

/** A folder that is gone when `use` has ended, however it ends; also when the process is told to stop. */
export async function withTemporaryFolder<T>(prefix: string, use: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(prefix)
  const removeNow = () => rmSync(folder, { recursive: true, force: true })
  process.once('exit', removeNow)
  try {
    return await use(folder)
  } finally {
    process.off('exit', removeNow)
    await rm(folder, { recursive: true, force: true })
  }
}

/** Refuses a place that holds anything but a pack whose files are all as they were written. */
async function refuseForeign(place: string): Promise<void> {
  for (;;) {
    const looked = await identity(place)
    const objection = await objectionTo(place).catch((error: unknown) => error as Error)
    // Another build may have put its pack here in between: what was seen is then part of the one and part of the other.
    if (looked !== (await identity(place))) continue
    if (objection !== null) throw typeof objection === 'string' ? new PackRefused(objection) : objection
    return
  }
}

/** Number and moment of its last change: the number of a folder that is gone is given again. */
async function identity(place: string): Promise<string | null> {
  const standing = await lstat(place, { bigint: true }).catch(() => null)
  return standing === null ? null : `${standing.ino} ${standing.ctimeNs}`
}

/** Why the place must not be taken, in a sentence with its remedy, or null. */
async function objectionTo(place: string): Promise<string | null> {
  const standing = await lstat(place).catch(() => null)
  if (standing === null) return null
  if (!standing.isDirectory()) return `${place} is a file. Name a folder for the pack.`
  if ((await readdir(place)).every(entry => litter.has(entry))) return null

  const checksums = await readChecksums(place)
  if (checksums === null || !landmarks.every(file => checksums.has(file))) {
    return `${place} is not empty and holds no handover pack: it is left alone. Name another folder for the pack.`
  }
  const added: string[] = []
  const changed: string[] = []
  for (const file of await filesBelow(place)) {
    const sum = checksums.get(file)
    if (sum === undefined) {
      if (!litter.has(path.posix.basename(file))) added.push(file)
    } else if (sum !== (await sha256(path.join(place, file)))) changed.push(file)
  }
  if (added.length + changed.length === 0) return null
  const what = [listed('was added', 'were added', added), listed('was changed', 'were changed', changed)].filter(text => text !== '')
  return `The pack in ${place} is not as it was written: ${what.join('; ')}. A new pack would take that away. `
    + 'Move it elsewhere, or name another folder for the pack.'
}

function listed(one: string, many: string, files: readonly string[]): string {
  if (files.length === 0) return ''
  const names = files.slice(0, shown).join(', ') + (files.length > shown ? ` and ${files.length - shown} more` : '')
  return `${names} ${files.length === 1 ? one : many}`
}

/**
 * Puts `folder` in the place, moving the pack there out of the way. Two builds may do so at once: each moves aside what
 * it finds, and the last one's pack stays.
 */
async function swapIn(folder: string, place: string): Promise<void> {
  // The pack may have been touched while this one was made.
  await refuseForeign(place)
  await withTemporaryFolder(path.join(path.dirname(place), `.${path.basename(place)}.old-`), async aside => {
    for (let attempt = 0; ; attempt++) {
      const old = path.join(aside, String(attempt))
      // Without a pause between the two, so that nothing in this process, a signal's handler least of all, comes in between.
      const moved = moveAside(place, old)
      try {
        renameSync(folder, place)
        return
      } catch (error) {
        if (moved && !existsSync(place)) renameSync(old, place)
        // Another build put its pack there in between.
        if (attempt < 5 && existsSync(path.join(place, checksumFile))) continue
        throw error
      }
    }
  })
}

function moveAside(place: string, old: string): boolean {
  try {
    renameSync(place, old)
    return true
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false
    throw error
  }
}
