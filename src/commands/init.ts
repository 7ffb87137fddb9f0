/** `asfitted init`: a new vessel folder to fill in. */
import { cp, mkdir, readdir, stat } from 'node:fs/promises'
import { shownPath, typedPath } from './outcome-text.js'
import { starterFolder } from './own-folders.js'
import { schemaFolder, writeSchemas } from './schema-files.js'
import { type ExitCode, exitCode, type Surroundings, Unusable } from './surroundings.js'

/** A repository may be there before the data. */
const mayStand = new Set(['.git', '.gitignore', '.DS_Store'])

/**
 * Copies the starter vessel to `folder` and writes the JSON Schemas that its files name.
 *
 * Errors   Unusable when the folder holds something, or is a file
 */
export async function init(folder: string, surroundings: Surroundings): Promise<ExitCode> {
  const standing = await stat(folder).catch(() => null)
  if (standing !== null && !standing.isDirectory()) throw new Unusable(`${folder} is a file. Name a folder that is not there yet, or an empty one.`)
  const entries = standing === null ? [] : (await readdir(folder)).filter(entry => !mayStand.has(entry))
  if (entries.length > 0) {
    throw new Unusable(`${folder} is not empty (${entries.slice(0, 3).join(', ')}${entries.length > 3 ? ', …' : ''}). Name a folder that is not there yet, or an empty one.`)
  }
  await mkdir(folder, { recursive: true })
  await cp(starterFolder, folder, { recursive: true, errorOnExist: true, force: false })
  await writeSchemas(folder)

  const typed = typedPath(folder, surroundings)
  const files = (await readdir(folder, { recursive: true })).filter(file => /\.(ya?ml|csv|md)$/.test(file)).sort()
  surroundings.stdout.write([
    `A vessel folder was started in ${shownPath(folder, surroundings)}:`,
    ...files.map(file => `  ${file}`),
    `  ${schemaFolder}/ (for editors; not read as data)`,
    '',
    'It describes a small example boat. Next: read README.md there, fill in vessel.yaml and the other files, and use',
    `  asfitted check ${typed}`,
    '    to see what is wrong or missing,',
    `  asfitted preview ${typed}`,
    '    to see the pages while you write,',
    `  asfitted build ${typed}`,
    '    to make the handover pack.',
    '',
  ].join('\n'))
  return exitCode.clean
}
