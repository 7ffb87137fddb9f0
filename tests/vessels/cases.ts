/**
 * Whole small vessels, each a folder beside this file: `vessel/` is what an author would hand in (with `catalogue/` where
 * one is shared), `expected/findings.txt` the whole list of findings.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Examination, examine } from '../../src/build.js'
import type { LocatedFinding } from '../../src/findings/finding.js'

/** What the shell is told of each: 0 no errors, 1 errors, 2 not to be read as a vessel. */
export const exitCodes = {
  'day-boat': 0,
  'trawler-abyc': 0,
  'cruiser-24v': 0,
  'launch-12v': 0,
  'ketch-24v-230v': 1,
  'sedan-12v-120v': 1,
  'conductors-iso': 1,
  'conductors-abyc': 1,
  'feeding': 1,
  'wireways': 1,
  'ac-supply': 1,
  'commissioning': 1,
  'dependency': 0,
  'energy': 1,
  'protective-devices': 1,
  'reserve': 1,
  'radio': 1,
  'identifiers': 1,
  'identifiers-doubtful': 0,
  'placement': 1,
  'serial': 1,
  'configuration': 1,
  'accepted': 1,
  'completeness': 0,
  'location': 0,
  'maintenance': 1,
  'emergency': 0,
  'can-bus': 1,
  'ethernet': 1,
  'labels': 1,
  'schema-faults': 1,
  'no-vessel': 1,
  'references': 1,
  'procedures': 1,
  'catalogue': 1,
  'yaml-faults': 2,
  'csv-faults': 2,
} as const
export type CaseName = keyof typeof exitCodes
export const caseNames = Object.keys(exitCodes) as readonly CaseName[]

export const casesFolder = fileURLToPath(new URL('.', import.meta.url))
export const vesselFolder = (name: CaseName): string => join(casesFolder, name, 'vessel')
export const expectedFile = (name: CaseName, file: string): string => readFileSync(join(casesFolder, name, 'expected', file), 'utf8')

const examined = new Map<CaseName, Promise<Examination>>()
export function examineCase(name: CaseName): Promise<Examination> {
  const existing = examined.get(name)
  if (existing !== undefined) return existing
  const catalogue = join(casesFolder, name, 'catalogue')
  const examination = examine(vesselFolder(name), existsSync(catalogue) ? { catalogue } : {})
  examined.set(name, examination)
  return examination
}

/** `file:line:column ID subject`, file by file from the top. */
export const listOf = (findings: readonly LocatedFinding[]): readonly string[] =>
  [...findings].sort(byPlace).map(({ at, id, subject }) => `${placeOf({ at, subject })} ${id} ${`${subject.kind} ${subject.id}`.trim()}`)

function placeOf({ at, subject }: Pick<LocatedFinding, 'at' | 'subject'>): string {
  if (at !== null) return `${at.file}:${at.line}:${at.column}`
  return subject.kind === 'file' ? subject.id : 'whole folder'
}

const byPlace = (a: LocatedFinding, b: LocatedFinding): number =>
  inOrder(a.at?.file ?? '', b.at?.file ?? '') || (a.at?.line ?? 0) - (b.at?.line ?? 0) || (a.at?.column ?? 0) - (b.at?.column ?? 0)
  || inOrder(a.id, b.id) || inOrder(a.subject.id, b.subject.id)
const inOrder = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)

/** Every data file of a case by its name as findings give it, with its lines. */
export function linesOf(name: CaseName): ReadonlyMap<string, readonly string[]> {
  const below = (folder: string, shownAs: string) => readdirSync(join(casesFolder, name, folder), { recursive: true, encoding: 'utf8' })
    .filter(file => /\.(yaml|csv|md)$/.test(file))
    .map((file): [string, readonly string[]] => [shownAs + file, readFileSync(join(casesFolder, name, folder, file), 'utf8').split('\n')])
  return new Map([...below('vessel', ''), ...(existsSync(join(casesFolder, name, 'catalogue')) ? below('catalogue', '../catalogue/') : [])])
}
