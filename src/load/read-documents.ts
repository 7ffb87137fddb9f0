/** The files that items of the vessel carry as documents. Which exist is the check stage's matter; here they are read. */
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { DocumentRef } from '../model/vessel.js'

/**
 * Bytes of each document by its name from the top of the vessel folder.
 *
 * Errors   a document that cannot be read, or that has gone since the folder was checked
 */
export async function readDocuments(folder: string, documents: readonly DocumentRef[]): Promise<ReadonlyMap<string, Uint8Array>> {
  const names = [...new Set(documents.map(({ file }) => file))]
  return new Map(await Promise.all(names.map(async name => [name, await readFile(path.join(folder, name))] as const)))
}
