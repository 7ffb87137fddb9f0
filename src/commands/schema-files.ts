/** The JSON Schemas as files of a vessel folder, in a hidden folder that is not read as data. */
import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { anyKindsFileName, jsonSchemas } from '../check/json-schema.js'

export const schemaFolder = '.schema'

/** The line on top of a file by which an editor finds its schema; `up` leads from the file's folder to the vessel folder. */
export const schemaLine = (up: '' | '../'): string => `# yaml-language-server: $schema=${up === '' ? './' : up}${schemaFolder}/${anyKindsFileName}`

/** Writes the schemas below the vessel folder. Returns the names of the files. */
export async function writeSchemas(vesselFolder: string): Promise<readonly string[]> {
  const folder = path.join(vesselFolder, schemaFolder)
  await mkdir(folder, { recursive: true })
  const schemas = jsonSchemas()
  for (const [name, schema] of schemas) await writeFile(path.join(folder, name), `${JSON.stringify(schema, null, 2)}\n`)
  return [...schemas.keys()]
}
