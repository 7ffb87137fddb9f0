/** `asfitted check`: what is wrong, over a limit, missing or doubtful, without writing anything. */
import { examine } from '../build.js'
import { reportJson } from '../findings/report.js'
import { exitCodeFor, findingsText, notAssessedLines, notAssessedText } from './outcome-text.js'
import { dateOf, type ExitCode, type Surroundings } from './surroundings.js'

export async function check(
  folder: string, { json, notAssessed: isListed, ...options }: { readonly catalogue?: string; readonly json?: true; readonly notAssessed?: true }, surroundings: Surroundings,
): Promise<ExitCode> {
  const { stdout } = surroundings
  const examination = await examine(folder, { ...options, asOf: dateOf(surroundings.now()) })
  const notAssessed = examination.status === 'examined' ? examination.notAssessed : null
  const hint = isListed || (notAssessed ?? []).length === 0 ? '' : ' --not-assessed lists them here.'
  stdout.write(json
    ? reportJson(examination.findings, notAssessed)
    : `${findingsText(examination, stdout, surroundings)}${isListed ? notAssessedLines(notAssessed ?? []) : ''}${notAssessedText(notAssessed)}${hint}\n`)
  return exitCodeFor(examination)
}
