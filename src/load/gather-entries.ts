/** Files by name → entries by kind. */
import { find, type FindingKind, type LocatedFinding } from '../findings/finding.js'
import { nearestOf } from '../findings/nearest.js'
import type { Quantities } from '../units/quantity.js'
import { catalogueKinds, isKindKey, kindKeys, type KindKey, kindNames, kindOfFileName } from './entry-kinds.js'
import { aboutFile, fileNameNamesNoKind, fileNotByKind, frontMatterMissing, kindNotInCatalogue, kindUnknown } from './findings.js'
import { parseCsv } from './parse-csv.js'
import { isProcedureFile, parseProcedure } from './parse-procedure.js'
import { parseYaml } from './parse-yaml.js'
import { itemsAt, positionOf, type SourceEntry, type SourceFile, type SourceFolder, type SourceNode, type Span, textAt, valueAt, writtenIn } from './source-folder.js'

/** A data file as found: its text, null if there is none to be had, and what was wrong before it was parsed. */
export interface ReadFile { readonly name: string; readonly file: SourceFile | null; readonly finding: LocatedFinding | null }

/** What one file holds. `lost`: text that could not be taken as data. */
interface Gathered { readonly entries: readonly SourceEntry[]; readonly lost: readonly string[]; readonly findings: readonly LocatedFinding[] }

export function gatherEntries(
  files: readonly ReadFile[], fileNames: ReadonlySet<string>, folderFindings: readonly LocatedFinding[],
): SourceFolder {
  const gathered = files.map(gatherFile)
  const entries = gathered.flatMap(part => part.entries)
  const documents = new Set(entries.flatMap(({ node }) => itemsAt(node, 'documents').map(document => textAt(document, 'file')?.replaceAll('\\', '/'))))
  const isDocument = ({ id, subject }: LocatedFinding): boolean => (id === fileNameNamesNoKind.id || id === frontMatterMissing.id) && documents.has(subject.id)
  const parts = gathered.filter(({ findings }) => !findings.some(isDocument))
  return {
    entries,
    fileNames,
    texts: new Map(files.flatMap(({ name, file }) => (file === null ? [] : [[name, file.text] as const]))),
    unread: { texts: parts.flatMap(part => part.lost), more: folderFindings.length > 0 || files.some(({ file }) => file === null) },
    findings: [...folderFindings, ...parts.flatMap(part => part.findings)],
  }
}

function gatherFile({ name, file, finding }: ReadFile): Gathered {
  if (finding !== null || file === null) return { entries: [], lost: file === null ? [] : [file.text], findings: finding === null ? [] : [finding] }
  if (isProcedureFile(name)) return gatherProcedure(file)
  return /\.csv$/i.test(name) ? gatherCsv(file) : gatherYaml(file)
}

function gatherProcedure(file: SourceFile): Gathered {
  const { node, findings } = parseProcedure(file)
  return { entries: node === null ? [] : [entryOf('procedures', node, 1)], lost: node === null ? [file.text] : [], findings }
}

function gatherCsv(file: SourceFile): Gathered {
  const kind = kindOfFileName(file.name)
  if (kind === null) {
    const base = file.name.split('/').at(-1)!.replace(/(-.*)?\.csv$/i, '')
    const context = { ...nearestOf(base, kindKeys), known: kindKeys.join(', ') }
    return { entries: [], lost: [file.text], findings: [{ ...find(fileNameNamesNoKind, aboutFile(file.name, {}, context)), at: null }] }
  }
  const misplaced = placeFinding(kind, file, null)
  if (misplaced !== null) return { entries: [], lost: [file.text], findings: [misplaced] }
  const { rows, lost, findings } = parseCsv(file)
  return { entries: rows.map((node, index) => entryOf(kind, node, index + 1)), lost, findings }
}

function gatherYaml(file: SourceFile): Gathered {
  const { root, lost, findings: parseFindings } = parseYaml(file)
  const findings = [...parseFindings]
  const report = (kind: FindingKind<Quantities>, span: Span, context: Readonly<Record<string, string>>): void => {
    findings.push({ ...find(kind, aboutFile(file.name, {}, context)), at: positionOf(span) })
  }
  const entries: SourceEntry[] = []
  const unused: string[] = lost ? [file.text] : []
  if (root !== null && root.type !== 'map') {
    report(fileNotByKind, beginOf(root), { expected: 'the kinds of entry at the top of the file', found: root.type === 'list' ? 'a list' : 'a single value' })
    unused.push(file.text)
  }
  for (const [name, { key, value }] of root?.type === 'map' ? root.fields : []) {
    if (!isKindKey(name)) {
      report(kindUnknown, key, { key: name, ...nearestOf(name, kindKeys), known: kindKeys.join(', ') })
      unused.push(writtenIn(value))
      continue
    }
    const misplaced = placeFinding(name, file, key)
    const shape = misshapen(name, value)
    if (misplaced !== null) findings.push(misplaced)
    else if (shape !== null) report(fileNotByKind, key, shape)
    if (misplaced !== null || shape !== null) unused.push(writtenIn(value))
    else for (const entry of entriesOf(name, value)) entries.push(entry)
  }
  return { entries, lost: unused, findings }
}

/** A kind with nothing below it yet is a list still to be written. */
function entriesOf(kind: KindKey, value: SourceNode): readonly SourceEntry[] {
  if (value.plain === null) return []
  return value.type === 'list' ? value.items.map((node, index) => entryOf(kind, node, index + 1)) : [entryOf(kind, value, 1)]
}

function entryOf(kind: KindKey, node: SourceNode, ordinal: number): SourceEntry {
  const name = valueAt(node, kindNames[kind].nameField)
  const id = name?.type !== 'scalar' || name.plain === null ? null : (typeof name.plain === 'string' ? name.plain : writtenIn(name))
  return { kind, id, ordinal, node }
}

function misshapen(kind: KindKey, value: SourceNode): Readonly<Record<string, string>> | null {
  const found = value.type === 'scalar' ? 'a single value' : `a ${value.type}`
  if (value.plain === null) return null
  if (kindNames[kind].shape === 'single') {
    return value.type === 'map' ? null : { expected: `keys and values below "${kind}:"`, found, remedy: 'There is one vessel: write its keys below it, without dashes.' }
  }
  return value.type === 'list' ? null : { expected: `a list below "${kind}:"`, found, remedy: 'Begin each entry with a dash.' }
}

function placeFinding(kind: KindKey, file: SourceFile, key: Span | null): LocatedFinding | null {
  if (file.role === 'vessel' || catalogueKinds.includes(kind)) return null
  const facts = aboutFile(file.name, {}, { key: kind, known: catalogueKinds.join(' and ') })
  return { ...find(kindNotInCatalogue, facts), at: key === null ? null : positionOf(key) }
}

/** The first character, where the whole value would mark the whole file. */
const beginOf = ({ file, start }: Span): Span => ({ file, start, end: start + 1 })
