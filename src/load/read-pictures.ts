/** Pictures of the vessel folder. A pack is made without those that cannot be read, and its pages say so. */
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { inPlainWords } from './list-files.js'

export type PictureFile = { readonly bytes: Uint8Array } | { readonly unread: string }

/** By name from the top of the vessel folder; `unread` says why, in a few words. */
export async function readPictures(folder: string, names: readonly string[]): Promise<ReadonlyMap<string, PictureFile>> {
  return new Map(await Promise.all([...new Set(names)].map(async name =>
    [name, await readFile(path.join(folder, name)).then((bytes): PictureFile => ({ bytes }), (error: unknown) => ({ unread: inPlainWords(error) }))] as const)))
}
