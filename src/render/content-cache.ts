/** Results that took long, kept from one build to the next by what they were made from. */
import { createHash } from 'node:crypto'
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises'
import path from 'node:path'

/** `facts`: all that the result depends on besides the cache's fingerprint; what JSON can hold. */
export interface ContentCache<T> {
  read(facts: unknown): Promise<T | null>
  write(facts: unknown, result: T): Promise<void>
}

/** @param fingerprint  what all results depend on: versions, settings */
export async function openContentCache<T>(folder: string, fingerprint: unknown): Promise<ContentCache<T>> {
  await mkdir(folder, { recursive: true })
  const fileOf = (facts: unknown) => path.join(folder, `${digest([fingerprint, facts])}.json`)
  return {
    read: facts => readFile(fileOf(facts), 'utf8').then(text => JSON.parse(text) as T, () => null),
    write: async (facts, result) => {
      // Never half a file under the final name: another build may be reading.
      const partial = `${fileOf(facts)}.${process.pid}`
      await writeFile(partial, JSON.stringify(result))
      await rename(partial, fileOf(facts))
    },
  }
}

export const digest = (facts: unknown): string => createHash('sha256').update(JSON.stringify(facts)).digest('hex')
