/** A procedure in Markdown → one entry: the keys between two lines of `---` at its head, and what stands below them as its text. */
import { find, type FindingKind, type LocatedFinding } from '../findings/finding.js'
import type { Quantities } from '../units/quantity.js'
import { aboutFile, fileNotByKind, frontMatterMissing, keyRepeated, procedureWithoutText } from './findings.js'
import { parseYaml } from './parse-yaml.js'
import { type Field, fieldOf, mapNode, positionOf, scalarNode, type SourceFile, type SourceNode, type Span } from './source-folder.js'

/** `node`: null where the file is not used; its text is then lost, and a finding says why. */
export interface ParsedProcedure { readonly node: SourceNode | null; readonly findings: readonly LocatedFinding[] }

/** The folder at the top of the vessel's in which a Markdown file is a procedure; anywhere else it is a document. */
export const isProcedureFile = (name: string): boolean => /^procedures\/.+\.(md|markdown)$/i.test(name)

/** The key that the text below the front matter stands for. */
const textKey = 'text'

export function parseProcedure(file: SourceFile): ParsedProcedure {
  const findings: LocatedFinding[] = []
  const report = (kind: FindingKind<Quantities>, span: Span, context: Readonly<Record<string, string>> = {}): ParsedProcedure => {
    findings.push({ ...find(kind, aboutFile(file.name, {}, context)), at: positionOf(span) })
    return { node: null, findings }
  }
  const opening = /^---[ \t]*(?:\r\n|\n|\r)/.exec(file.text)
  if (opening === null) return report(frontMatterMissing, lineAt(file, 0), { reason: 'it does not begin with a line of ---' })
  const closing = lineOfDashes(file.text, opening[0].length)
  if (closing === null) return report(frontMatterMissing, lineAt(file, opening[0].length), { reason: 'no second line of --- ends what begins here' })

  // Up to the closing line the text is a document of YAML, and its places are those of the file.
  const { root: head, lost, findings: faults } = parseYaml(file, file.text.slice(0, closing.start))
  findings.push(...faults)
  if (lost) return { node: null, findings }
  if (head !== null && head.type !== 'map' && head.plain !== null) {
    return report(fileNotByKind, { file, start: head.start, end: head.start + 1 }, {
      expected: 'keys and values between the lines of ---', found: head.type === 'list' ? 'a list' : 'a single value', remedy: 'Write at least "title: What it is called".',
    })
  }
  const body = trimmed(file, closing.end)
  if (body === null) return report(procedureWithoutText, { file, ...closing })
  const written = head === null ? null : fieldOf(head, textKey)
  if (written !== null) {
    const { line, column } = positionOf(body)
    report(keyRepeated, written.key, { key: textKey, first: `${file.name}:${line}:${column}, below the front matter` })
  }
  const fields = new Map<string, Field>(head?.type === 'map' ? head.fields : [])
  fields.set(textKey, { key: { ...body, end: body.start + 1 }, value: scalarNode(body, file.text.slice(body.start, body.end).replace(/\r\n?/g, '\n')) })
  return { node: mapNode({ file, start: opening[0].length, end: body.end }, fields), findings }
}

/** The next line of nothing but three dashes. */
function lineOfDashes(text: string, from: number): { readonly start: number; readonly end: number } | null {
  const pattern = /^---[ \t]*$/gm
  pattern.lastIndex = from
  const found = pattern.exec(text)
  return found === null ? null : { start: found.index, end: found.index + found[0].length }
}

function trimmed(file: SourceFile, from: number): Span | null {
  const rest = file.text.slice(from)
  const start = from + rest.length - rest.trimStart().length
  const end = from + rest.trimEnd().length
  return end > start ? { file, start, end } : null
}

const lineAt = (file: SourceFile, start: number): Span => ({ file, start, end: Math.max(start, file.text.slice(start).search(/[\r\n]|$/) + start) })
