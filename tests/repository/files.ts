/** The project's own files, for the tests about the code base. */
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../..', import.meta.url))

/** Paths below a folder of the project, from its top, sorted. */
export const filesBelow = (folder: string, ending = ''): readonly string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile() && entry.name.endsWith(ending))
    .map(entry => relative(root, join(entry.parentPath, entry.name)))
    .toSorted()

export const foldersIn = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { withFileTypes: true }).filter(entry => entry.isDirectory()).map(entry => entry.name).toSorted()

export const textOf = (path: string): string => readFileSync(join(root, path), 'utf8')
