/** Words and codes that commands share. */
import path from 'node:path'
import type { Examination } from '../build.js'
import { textForExcerpts } from '../load/secrets.js'
import type { LocatedFinding } from '../findings/finding.js'
import { grouped } from '../model/lookup.js'
import type { NotAssessed } from '../model/results/gap.js'
import { printable, reportText, wantsColour } from '../findings/report.js'
import { type ExitCode, exitCode, type OutputStream, type Surroundings } from './surroundings.js'

/** The findings for the person who reads `stream`. */
export function findingsText(examination: Examination, stream: OutputStream, { variables }: Pick<Surroundings, 'variables'>): string {
  const { findings, source, status } = examination
  return reportText(findings, {
    textOf: file => textForExcerpts(source, file) ?? undefined,
    colour: wantsColour(stream, variables),
    units: status === 'examined' ? examination.vessel.units : 'metric',
  })
}

export const notAssessedText = (notAssessed: readonly NotAssessed[] | null): string =>
  notAssessed === null ? 'Nothing was calculated: mend the errors first.'
  : notAssessed.length === 0 ? 'Every result that this version calculates was calculated.'
  : `${notAssessed.length} ${notAssessed.length === 1 ? 'result is' : 'results are'} not assessed for want of data; the pack lists them with what to record.`

/** A paragraph a calculation: what to record, then each subject with its reason. */
export const notAssessedLines = (notAssessed: readonly NotAssessed[]): string =>
  [...grouped(notAssessed, ({ calculation }) => [calculation])].map(([calculation, gaps]) => [
    '', `${calculation}, not assessed`,
    ...gaps.map(({ subjectTag, partTag, reason }) => `  ${printable(`${subjectTag}${partTag === null ? '' : ` (${partTag})`}: ${reason}`)}`),
    `  remedy  ${gaps[0]!.needs}`,
  ]).flat().map(line => `${line}\n`).join('') + (notAssessed.length === 0 ? '' : '\n')

/** An accepted error counts: whether it may be accepted is nothing that a program can judge. */
export const exitCodeFor = ({ status, findings }: { readonly status: string; readonly findings: readonly LocatedFinding[] }): ExitCode =>
  status === 'unreadable' ? exitCode.unusable
  : findings.some(({ severity }) => severity === 'error') ? exitCode.errorsFound
  : exitCode.clean

/** A path as it can be typed from where the user is. */
export function shownPath(place: string, { workingFolder }: Pick<Surroundings, 'workingFolder'>): string {
  const relative = path.relative(workingFolder, place) || '.'
  return relative.startsWith(path.join('..', '..')) ? place : relative
}

/** The same as a word of a command. */
export function typedPath(place: string, surroundings: Pick<Surroundings, 'workingFolder'>): string {
  const shown = shownPath(place, surroundings)
  return /^[\p{L}\p{N}_./\\:+-]+$/u.test(shown) ? shown : `"${shown}"`
}
