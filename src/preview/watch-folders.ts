/** Notices changes in folders by looking again and again: works the same on every system, disk and editor. */
import { lstat, readdir } from 'node:fs/promises'
import path from 'node:path'

/**
 * Calls `changed` after a file below one of the folders was added, changed or removed, once it has been quiet for one
 * look. Hidden files are passed over, as they are when a vessel is read.
 *
 * Returns   stops the watch
 */
export function watchFolders(folders: readonly string[], everyMs: number, changed: () => void): () => void {
  let stopped = false
  const watch = async () => {
    let reported = await traceOf(folders)
    let seen = reported
    while (!stopped) {
      await new Promise(resolve => setTimeout(resolve, everyMs))
      const now = await traceOf(folders)
      if (stopped) return
      if (now === seen && now !== reported) {
        reported = now
        changed()
      }
      seen = now
    }
  }
  void watch()
  return () => { stopped = true }
}

/** Changes when a file does. A file or folder that cannot be read counts as not there. */
async function traceOf(folders: readonly string[]): Promise<string> {
  const traces = await Promise.all(folders.map(async folder => {
    const entries = await readdir(folder, { withFileTypes: true }).catch(() => [])
    return Promise.all(entries.filter(({ name }) => !name.startsWith('.') && name !== 'node_modules').map(async entry => {
      const place = path.join(folder, entry.name)
      if (entry.isDirectory()) return traceOf([place])
      const { mtimeMs, size } = (await lstat(place).catch(() => null)) ?? { mtimeMs: 0, size: 0 }
      return `${place} ${mtimeMs} ${size}`
    }))
  }))
  return traces.flat().join('\n')
}
