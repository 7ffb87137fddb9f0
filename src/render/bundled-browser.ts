/**
 * The headless Chromium that comes with the program on Linux x64, unpacked once into a cache folder with the libraries
 * and the font settings that it needs on a machine with nothing else installed.
 */
import { createReadStream, createWriteStream } from 'node:fs'
import { lstat, mkdtemp, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { pipeline } from 'node:stream/promises'
import { createBrotliDecompress } from 'node:zlib'
import { extract } from 'tar-fs'

export interface BundledBrowser {
  readonly executable: string
  /** Variables to set for the browser's own process. */
  readonly variables: Readonly<Record<string, string>>
}

/** What the folder must hold, with sizes in bytes: temporary folders are cleared file by file, by age. */
type Contents = Readonly<Record<string, number>>
const contentsFile = 'contents.json'

/**
 * Unpacks the bundled browser, or finds it unpacked. Safe for several processes at once: each unpacks into a folder of
 * its own and the first to finish gives it the final name.
 *
 * Errors: the package is not installed, the disk is full, or the cache folder belongs to somebody else.
 */
export async function unpackBundledBrowser(cacheParent: string = tmpdir()): Promise<BundledBrowser> {
  const packageFolder = path.resolve(path.dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '../..')
  const { version } = JSON.parse(await readFile(path.join(packageFolder, 'package.json'), 'utf8')) as { version: string }
  const userId = process.getuid?.() ?? 0
  const folder = path.join(cacheParent, `asfitted-browser-${version}-${userId}`)

  if (!(await isComplete(folder, userId))) {
    const partial = await mkdtemp(`${folder}.`)
    try {
      await unpackInto(partial, path.join(packageFolder, 'bin'))
      await install(partial, folder, userId)
    } finally {
      await rm(partial, { recursive: true, force: true })
    }
  }
  const inherited = process.env.LD_LIBRARY_PATH
  return {
    executable: path.join(folder, 'chromium'),
    variables: {
      LD_LIBRARY_PATH: [path.join(folder, 'lib'), ...(inherited ? [inherited] : [])].join(':'),
      FONTCONFIG_FILE: path.join(folder, 'fonts.conf'),
    },
  }
}

async function unpackInto(folder: string, archives: string): Promise<void> {
  const inflated = (archive: string) =>
    [createReadStream(path.join(archives, archive)), createBrotliDecompress({ chunkSize: 2 ** 20 })] as const
  await Promise.all([
    pipeline(...inflated('chromium.br'), createWriteStream(path.join(folder, 'chromium'), { mode: 0o700 })),
    pipeline(...inflated('al2023.tar.br'), extract(folder)),
    pipeline(...inflated('fonts.tar.br'), extract(folder)),
  ])
  await writeFile(path.join(folder, 'fonts.conf'), fontSettings)
  const files = await readdir(folder, { recursive: true, withFileTypes: true })
  const contents: Record<string, number> = {}
  for (const file of files.filter(entry => entry.isFile())) {
    const name = path.relative(folder, path.join(file.parentPath, file.name))
    contents[name] = (await stat(path.join(folder, name))).size
  }
  await writeFile(path.join(folder, contentsFile), JSON.stringify(contents))
}

/** The machine's own fonts serve for letters that the pack's fonts lack; without any, the bundled ones do. */
const fontSettings = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
  <dir prefix="relative">fonts</dir>
</fontconfig>
`

async function install(partial: string, folder: string, userId: number): Promise<void> {
  const damaged = `${partial}-damaged`
  try {
    for (let attempt = 1; ; attempt++) {
      const failure = await rename(partial, folder).then(() => null, (error: unknown) => error)
      // Another process may have been first.
      if (failure === null || (await isComplete(folder, userId))) return
      if (attempt === 2) throw failure
      // What stands there has lost files: put it aside.
      await rename(folder, damaged).catch(() => undefined)
    }
  } finally {
    await rm(damaged, { recursive: true, force: true })
  }
}

async function isComplete(folder: string, userId: number): Promise<boolean> {
  const own = await lstat(folder).catch(() => null)
  if (own === null) return false
  // The folder for temporary files is open to all: run nothing that another user could have put there.
  if (!own.isDirectory() || own.uid !== userId || (own.mode & 0o022) !== 0) {
    throw new Error(`${folder} is not a folder that only this user can write to`)
  }
  const contents = await readFile(path.join(folder, contentsFile), 'utf8').then(
    text => JSON.parse(text) as Contents, () => null)
  if (contents === null) return false
  const sizes = await Promise.all(Object.keys(contents).map(name => stat(path.join(folder, name)).then(s => s.size, () => -1)))
  return Object.values(contents).every((size, i) => size === sizes[i])
}
