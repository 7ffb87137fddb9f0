/** The check stage: entries as they stand in the files → a vessel, or the reasons why there is none. */
import type { LocatedFinding } from '../findings/finding.js'
import { type Locate, sourceIndex } from '../load/source-index.js'
import type { SourceFolder } from '../load/source-folder.js'
import type { Equipment, Vessel } from '../model/vessel.js'
import { buildVessel, modelsOf } from './build/build-vessel.js'
import { checkIdentifiers } from './check-identifiers.js'
import { checkReferences } from './check-references.js'
import { checkSchema } from './check-schema.js'
import { thingIndex } from './thing-index.js'

export interface Checked {
  /** Null while any error stands. */
  readonly vessel: Vessel | null
  /** The catalogue, each model as an item of it, by its key; empty while any error stands. */
  readonly models: ReadonlyMap<string, Equipment>
  /** Those of the load stage included; by file and place. */
  readonly findings: readonly LocatedFinding[]
  /** Where a field of the vessel stands, for the findings of later stages. */
  readonly positions: Locate
}

/** Everything that is wrong with the data, in one run: an entry at fault hides no fault of another. */
export function check(source: SourceFolder): Checked {
  const { passed, findings: schemaFindings } = checkSchema(source)
  const index = thingIndex(source)
  const findings = [
    ...source.findings, ...schemaFindings, ...checkIdentifiers(source.entries, index), ...checkReferences(source, index),
  ].sort(byPlace)
  const isSound = findings.every(({ severity }) => severity !== 'error')
  return { vessel: isSound ? buildVessel(passed) : null, models: isSound ? modelsOf(passed) : new Map(), findings, positions: sourceIndex(source.entries) }
}

/** Those without a place first. */
function byPlace({ at: a }: LocatedFinding, { at: b }: LocatedFinding): number {
  if (a === null || b === null) return Number(a !== null) - Number(b !== null)
  if (a.file !== b.file) return a.file < b.file ? -1 : 1
  return a.line - b.line || a.column - b.column
}
