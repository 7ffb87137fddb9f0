/** The machine-readable part of the pack: schedules, vessel, results, findings, and the data that they were made from. */
import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import type { LocatedFinding } from '../findings/finding.js'
import type { NotAssessed } from '../model/results/gap.js'
import { reportJson } from '../findings/report.js'
import type { Results } from '../model/results.js'
import type { Vessel } from '../model/vessel.js'
import type { Basis } from '../references/basis/basis.js'
import { bibliography, type Citation } from '../references/bibliography.js'
import type { Schedule, TextFile } from '../view/view-model.js'
import { csvOf, labelListCsv } from './csv.js'
import { jsonOf } from './json.js'

/** What the record tells of a calculation, for whoever redoes it. */
interface MethodRecord {
  readonly id: string
  readonly title: string
  readonly formula: string
  readonly symbols: Readonly<Record<string, string>>
  readonly citations: readonly Citation[]
  readonly assumes: readonly string[]
}

export interface RecordParts {
  readonly vessel: Vessel
  readonly basis: Basis
  readonly results: Results
  readonly findings: readonly LocatedFinding[]
  readonly notAssessed: readonly NotAssessed[]
  readonly schedules: readonly Schedule[]
  /** Files for other programs, by their path from the top of the pack. */
  readonly files: readonly TextFile[]
  /** Labels as tables, by their path from the top of the pack. */
  readonly labelLists: readonly Schedule[]
  /** Every calculation that a result can name. */
  readonly methods: readonly MethodRecord[]
  /** Text of the data files, by name from the top of the vessel folder: as it was read, but for what the edition must not carry. */
  readonly sourceTexts: ReadonlyMap<string, string>
  /** Documents that items carry, by name from the top of the vessel folder. */
  readonly documents: ReadonlyMap<string, Uint8Array>
}

/** Writes `record/` and `findings.json` into the pack. */
export async function writeRecord(packFolder: string, parts: RecordParts): Promise<void> {
  const files = new Map<string, string | Uint8Array>([
    ['findings.json', reportJson(parts.findings, parts.notAssessed)],
    ['record/vessel.json', jsonOf(parts.vessel)],
    ['record/results.json', jsonOf(resultsRecord(parts))],
    ...parts.files.map(({ file, text }): [string, string] => [file, text]),
    ...parts.labelLists.map((list): [string, string] => [list.file, labelListCsv(list)]),
    ...parts.schedules.map((schedule): [string, string] => [`record/${schedule.file}`, csvOf(schedule)]),
    // A data file that an item lists as its document goes in as a data file: without what the edition must not carry.
    ...[...parts.documents, ...parts.sourceTexts].map(([name, content]): [string, string | Uint8Array] => [sourcePlace(name), content]),
  ])
  for (const [file, content] of files) {
    const place = path.join(packFolder, file)
    await mkdir(path.dirname(place), { recursive: true })
    await writeFile(place, content)
  }
}

/**
 * Every calculated value as the passes gave it, unrounded, with the formula and the sources that it refers to by key.
 * Findings have a file of their own.
 */
function resultsRecord({ basis, results, methods }: RecordParts) {
  return {
    basis,
    results: withoutFindings(results),
    methods: Object.fromEntries(methods.map(({ id, title, formula, symbols, citations, assumes }) => [id, { title, formula, symbols, citations, assumes }])),
    sources: bibliography,
  }
}

function withoutFindings({ findings: _, ...passes }: Results) {
  return Object.fromEntries(Object.entries(passes).map(([pass, result]) => {
    const { findings: _, ...values } = { findings: null, ...result }
    return [pass, values]
  }))
}

/** A catalogue may lie outside the vessel folder, on another disk even; in the record it has a folder of its own. */
function sourcePlace(name: string): string {
  const parts = name.split('/').filter(part => part !== '' && part !== '.')
  const outside = parts[0] === '..' || /^[A-Za-z]:$/.test(parts[0] ?? '') || name.startsWith('/')
  const inside = parts.filter(part => part !== '..' && !part.endsWith(':'))
  return `record/${outside ? 'catalogue' : 'source'}/${inside.join('/')}`
}
