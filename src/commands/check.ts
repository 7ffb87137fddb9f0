/** `asfitted check`: what is wrong, over a limit, missing or doubtful, without writing anything. */
import { examine } from '../build.js'
import { reportJson } from '../findings/report.js'
import { exitCodeFor, findingsText, notAssessedText } from './outcome-text.js'
import { dateOf, type ExitCode, type Surroundings } from './surroundings.js'

export async function check(
  folder: string, { json, ...options }: { readonly catalogue?: string; readonly json?: true }, surroundings: Surroundings,
): Promise<ExitCode> {
  const { stdout } = surroundings
  const examination = await examine(folder, { ...options, asOf: dateOf(surroundings.now()) })
  const notAssessedCount = examination.status === 'examined' ? examination.notAssessedCount : null
  stdout.write(json
    ? reportJson(examination.findings, notAssessedCount)
    : `${findingsText(examination, stdout, surroundings)}${notAssessedText(notAssessedCount)}\n`)
  return exitCodeFor(examination)
}
