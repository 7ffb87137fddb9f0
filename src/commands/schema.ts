/** `asfitted schema`: lets an editor complete and check the vessel's files. */
import { stat } from 'node:fs/promises'
import path from 'node:path'
import { shownPath } from './outcome-text.js'
import { schemaFolder, schemaLine, writeSchemas } from './schema-files.js'
import { type ExitCode, exitCode, type Surroundings, Unusable } from './surroundings.js'

/**
 * Writes the JSON Schemas below `folder` and prints the line by which a file names them.
 *
 * Errors   Unusable when there is no such folder
 */
export async function schema(folder: string, surroundings: Surroundings): Promise<ExitCode> {
  if (!(await stat(folder).catch(() => null))?.isDirectory()) throw new Unusable(`${folder} is no folder. Name the vessel folder.`)
  const written = await writeSchemas(folder)
  surroundings.stdout.write([
    `Written to ${shownPath(path.join(folder, schemaFolder), surroundings)}: ${written.join(', ')}`,
    '',
    'Put this line on top of a YAML file of the vessel folder:',
    `  ${schemaLine('')}`,
    'and in a folder one level down:',
    `  ${schemaLine('../')}`,
    '',
  ].join('\n'))
  return exitCode.clean
}
