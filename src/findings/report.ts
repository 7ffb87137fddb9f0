/** Findings for the person at the terminal, and for another program. Makes text; printing is the command line's. */
import pc from 'picocolors'
import type { NotAssessed } from '../model/results/gap.js'
import type { UnitSystem } from '../model/vessel.js'
import { cite } from '../references/bibliography.js'
import { sayAgainst } from '../units/format.js'
import { acceptanceText, acceptedPart, isAccepted, type LocatedFinding, type Severity, type SourcePosition } from './finding.js'

export interface ReportOptions {
  /** Text of a file of the vessel folder, for the excerpt; undefined where there is none to be had. */
  readonly textOf: (file: string) => string | undefined
  readonly colour: boolean
  readonly units?: UnitSystem
}
export type Summary = Readonly<Record<Severity, number>>

const severities = ['error', 'warning', 'note'] as const satisfies readonly Severity[]

/** Whether a stream is read by a person who has not asked for plain text (NO_COLOR set to anything). */
export const wantsColour = (stream: { readonly isTTY?: boolean | undefined }, env: Readonly<Record<string, string | undefined>>): boolean =>
  stream.isTTY === true && !env['NO_COLOR']

export function summaryOf(findings: readonly LocatedFinding[]): Summary {
  const count = (severity: Severity): number => findings.filter(finding => finding.severity === severity).length
  return { error: count('error'), warning: count('warning'), note: count('note') }
}

/** `2 errors, 3 warnings (1 of them accepted), 0 notes` */
export function summaryText(findings: readonly LocatedFinding[]): string {
  const [all, accepted] = [summaryOf(findings), summaryOf(findings.filter(isAccepted))]
  return severities.map(severity => `${all[severity]} ${severity}${all[severity] === 1 ? '' : 's'}${acceptedPart(all[severity], accepted[severity])}`).join(', ')
}

/**
 * The findings as one JSON document, for other programs; `notAssessed` is null when nothing was calculated. `accepted`
 * counts those of the `summary` that somebody accepts.
 */
export const reportJson = (findings: readonly LocatedFinding[], notAssessed: readonly NotAssessed[] | null): string =>
  `${JSON.stringify({
    findings: grouped(findings).map(finding => ({ ...finding, accepted: finding.accepted ?? null })),
    summary: summaryOf(findings), accepted: summaryOf(findings.filter(isAccepted)),
    notAssessedCount: notAssessed?.length ?? null, notAssessed,
  }, null, 2)}\n`

/** Errors before warnings before notes; in each, file by file from the top. */
export function reportText(findings: readonly LocatedFinding[], options: ReportOptions): string {
  const paint = painter(options.colour)
  // An excerpt is looked up for each finding; its file is split into lines once.
  const lines = new Map<string, readonly string[]>()
  const linesOf = (file: string): readonly string[] => {
    const split = lines.get(file) ?? options.textOf(file)?.split(/\r\n|\n|\r/) ?? []
    lines.set(file, split)
    return split
  }
  const parts = grouped(findings).map(finding => [
    `${paint.place(printable(placeText(finding)))}  ${paint[finding.severity](finding.severity)}${isAccepted(finding) ? ', accepted' : ''}  ${paint.kind(`${finding.id} ${finding.name}`)}`,
    `  ${printable(finding.message)}`,
    ...(finding.at === null ? [] : excerpt(linesOf(finding.at.file), finding.at, paint[finding.severity])),
    ...limitLines(finding, options.units ?? 'metric'),
    `  remedy  ${printable(finding.remedy)}`,
    ...(isAccepted(finding) ? [`  ${printable(acceptanceText(finding.accepted!))}`] : []),
  ].join('\n'))
  return `${[...parts, summaryText(findings)].join('\n\n')}\n`
}

function grouped(findings: readonly LocatedFinding[]): readonly LocatedFinding[] {
  return [...findings].sort((a, b) =>
    severities.indexOf(a.severity) - severities.indexOf(b.severity)
    || inOrder(a.at?.file ?? '', b.at?.file ?? '')
    || (a.at?.line ?? 0) - (b.at?.line ?? 0)
    || (a.at?.column ?? 0) - (b.at?.column ?? 0)
    || inOrder(a.id, b.id))
}

const inOrder = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)

function placeText({ at, subject }: LocatedFinding): string {
  if (at !== null) return `${at.file}:${at.line}:${at.column}`
  if (subject.id === '') return 'whole folder'
  return subject.kind === 'file' ? subject.id : `${subject.kind} ${subject.id}`
}

function limitLines({ limit, evidence }: LocatedFinding, units: UnitSystem): readonly string[] {
  if (limit === null) return []
  // The first quantity of the evidence is the one that is held against the limit.
  const held = Object.entries(evidence)[0]
  const value = held === undefined ? String(limit.value) : sayAgainst(held[0], held[1], limit.value, { units }).limit
  return [`  limit   ${limit.relation} ${value}, ${cite(limit.citation)}`]
}

// --- the excerpt -----------------------------------------------------------------------------------------------------
const widest = 96
const keptBefore = 32
const tab = '  '

/** The line, and carets below the part of it that is meant; of a long line only the stretch around that part. */
function excerpt(lines: readonly string[], { line, column, endLine, endColumn }: SourcePosition, paint: (text: string) => string): readonly string[] {
  const text = lines[line - 1]
  if (text === undefined) return []
  const start = column - 1
  const end = Math.max(start + 1, endLine === line ? endColumn - 1 : text.length)
  const from = text.length > widest ? Math.max(0, Math.min(start - keptBefore, text.length - widest)) : 0
  const to = Math.min(text.length, from + widest)
  const before = (from > 0 ? '…' : '') + shown(text.slice(from, start))
  const meant = shown(text.slice(start, Math.min(end, to)))
  const after = shown(text.slice(Math.min(end, to), to)) + (to < text.length ? '…' : '')
  const number = String(line)
  return [
    `    ${number} | ${before}${meant}${after}`,
    `    ${' '.repeat(number.length)} | ${' '.repeat(before.length)}${paint('^'.repeat(Math.max(1, meant.length)))}`,
  ]
}

const shown = (text: string): string => printable(text.replaceAll('\t', tab))

/** Control characters of a file, those for the direction of writing included, must not reach the terminal: they do more than print. */
export const printable = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029\u202A-\u202E\u2066-\u2069]/gu, '\uFFFD')

function painter(colour: boolean) {
  const { bold, cyan, dim, red, yellow } = pc.createColors(colour)
  return { place: cyan, kind: dim, error: (text: string) => red(bold(text)), warning: yellow, note: (text: string) => text }
}
