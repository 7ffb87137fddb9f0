/** YAML text → values with their places. Collects every fault; throws for none. */
import { type Document, isAlias, isMap, isScalar, isSeq, type Node, parseDocument, visit, type YAMLError, type YAMLMap, type YAMLWarning } from 'yaml'
import { find, type FindingKind, type LocatedFinding } from '../findings/finding.js'
import type { Quantities } from '../units/quantity.js'
import { aboutFile, aliasUnusable, keyRepeated, nestedTooDeep, yamlSyntax } from './findings.js'
import { type Field, listNode, mapNode, positionOf, scalarNode, type SourceFile, type SourceNode, type Span } from './source-folder.js'

/** `root`: null for a file of comments only, and for one that is not used because some of it is `lost`. */
export interface ParsedYaml { readonly root: SourceNode | null; readonly lost: boolean; readonly findings: readonly LocatedFinding[] }

/** No kind of entry is deeper than ten; the parser itself gives up at some thousand. */
const mostDeep = 64
/** Nodes that the aliases of one file may bring in beyond those written out. */
const mostAliased = 100_000
/** One slip can make hundreds of faults further down; the first ones show where it is. */
const mostSyntaxFindings = 20

/** @param text  the beginning of the file that is YAML; places are those of the file */
export function parseYaml(file: SourceFile, text = file.text): ParsedYaml {
  const document = parseDocument(text, {
    // A file cannot choose older rules, under which `yes` is true and `12:30` a number.
    schema: 'core', resolveKnownTags: false, merge: false,
    stringKeys: true, prettyErrors: false,
    // Checked below, with both places, and without comparing each key to each.
    uniqueKeys: false,
  })
  // Where the parser's stack ends is no place in the file, and every bracket after it a fault.
  if (document.errors.some(({ code }) => code === 'RESOURCE_EXHAUSTION')) {
    return { root: null, lost: true, findings: [{ ...find(nestedTooDeep, aboutFile(file.name, { depthNumber: mostDeep })), at: null }] }
  }
  const faults = causesAmong(file, [...document.errors, ...document.warnings].sort((a, b) => a.pos[0] - b.pos[0]))
  if (faults.length > 0) {
    const shown = faults.slice(0, mostSyntaxFindings)
    const more = faults.length - shown.length
    return { root: null, lost: true, findings: shown.map((fault, index) => syntaxFinding(file, document, fault, index === shown.length - 1 ? more : 0)) }
  }
  return document.contents === null ? { root: null, lost: false, findings: [] } : convert(file, document.contents)
}

/** Of several faults in one line the first is the cause; after a tab as indentation nothing stands where the parser expects it. */
function causesAmong<F extends YAMLError | YAMLWarning>(file: SourceFile, faults: readonly F[]): readonly F[] {
  const tabs = faults.filter(({ code }) => code === 'TAB_AS_INDENT')
  const byLine = new Map<number, F>()
  for (const fault of tabs.length > 0 ? tabs : faults) {
    const line = file.lineStarts.findLastIndex(start => start <= fault.pos[0])
    if (!byLine.has(line)) byLine.set(line, fault)
  }
  return [...byLine.values()]
}

function convert(file: SourceFile, contents: Node): ParsedYaml {
  const findings: LocatedFinding[] = []
  const anchors = new Map<string, SourceNode | 'open'>()
  let aliased = 0
  let lost = false
  const spanOf = (node: Node): Span => ({ file, start: node.range?.[0] ?? 0, end: node.range?.[1] ?? 0 })
  const report = <E extends Quantities>(kind: FindingKind<E>, span: Span, evidence: E, context: Readonly<Record<string, string>> = {}): void => {
    findings.push({ ...find(kind, aboutFile(file.name, evidence, context)), at: positionOf(span) })
  }
  const nothing = (span: Span): SourceNode => {
    lost = true
    return scalarNode(span, null)
  }

  function resolve(name: string, span: Span): SourceNode {
    const target = anchors.get(name)
    const unusable = (reason: string): SourceNode => {
      report(aliasUnusable, span, {}, { alias: name, reason })
      return nothing(span)
    }
    if (target === undefined) return unusable('has no anchor before it')
    if (target === 'open') return unusable('stands inside the value it refers to')
    if (aliased > mostAliased) return nothing(span)
    aliased += target.size
    return aliased > mostAliased ? unusable(`brings the values that aliases repeat in this file above ${mostAliased}`) : target
  }

  function fieldsOf(map: YAMLMap<Node, Node | null>, depth: number): ReadonlyMap<string, Field> {
    const fields = new Map<string, Field>()
    for (const { key, value } of map.items) {
      const name = isScalar(key) ? String(key.value) : (isAlias(key) ? `*${key.source}` : '')
      const keySpan = spanOf(key)
      const first = fields.get(name)
      const converted = value === null ? scalarNode(keySpan, null) : toSource(value, depth + 1)
      if (first === undefined) {
        fields.set(name, { key: keySpan, value: converted })
      } else {
        const { line, column } = positionOf(first.key)
        report(keyRepeated, keySpan, {}, { key: name, first: `${file.name}:${line}:${column}` })
      }
    }
    return fields
  }

  function toSource(node: Node, depth: number): SourceNode {
    const span = spanOf(node)
    if (isAlias(node)) return resolve(node.source, span)
    if (depth > mostDeep) {
      report(nestedTooDeep, span, { depthNumber: mostDeep })
      return nothing(span)
    }
    const anchor = isScalar(node) || isMap(node) || isSeq(node) ? node.anchor : undefined
    if (anchor !== undefined) anchors.set(anchor, 'open')
    const converted = isMap<Node, Node | null>(node) ? mapNode(span, fieldsOf(node, depth))
      : isSeq<Node>(node) ? listNode(span, node.items.map(item => toSource(item, depth + 1)))
      : scalarNode(span, scalarValue(isScalar(node) ? node.value : null))
    if (anchor !== undefined) anchors.set(anchor, converted)
    return converted
  }

  const root = toSource(contents, 0)
  return { root: lost ? null : root, lost, findings }
}

function scalarValue(value: unknown): string | number | boolean | null {
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? value : null
}

function syntaxFinding(file: SourceFile, document: Document, fault: YAMLError, more: number): LocatedFinding {
  const { code, message, pos: [start, end] } = fault
  const opened = code === 'MISSING_CHAR' && message.includes('quote') ? openQuote(document, start) : null
  const words = opened === null ? plainWords[code] : { reason: 'a quotation mark opens here and is never closed', remedy: 'Close it where the value ends.' }
  const reason = `${words?.reason ?? message}${more > 0 ? ` (and ${more} more further down)` : ''}`
  const context = words?.remedy === undefined ? { reason } : { reason, remedy: words.remedy }
  return { ...find(yamlSyntax, aboutFile(file.name, {}, context)), at: positionOf({ file, ...(opened ?? { start, end }) }) }
}

/** The parser misses a quotation mark where the file ends; the author, in the line where it opens. */
function openQuote(document: Document, offset: number): { readonly start: number; readonly end: number } | null {
  let found: { readonly start: number; readonly end: number } | null = null
  visit(document, {
    Scalar: (_key, { type, range }) => {
      if (type?.startsWith('QUOTE') && range && range[0] < offset && range[1] >= offset) found = { start: range[0], end: range[1] }
    },
  })
  return found
}

/** The parser's words where they speak of the parser, and a remedy where the fault has a usual cause. */
const plainWords: Readonly<Partial<Record<YAMLError['code'], { readonly reason?: string; readonly remedy?: string }>>> = {
  BAD_INDENT: { remedy: 'Close the bracket, or indent with spaces so that keys of one entry stand below each other.' },
  BAD_SCALAR_START: { remedy: 'Put the value in quotes.' },
  BLOCK_AS_IMPLICIT_KEY: { reason: 'a second ": " in one line', remedy: 'Put the value in quotes if the colon belongs to it, or begin a new line for the next key.' },
  MISSING_CHAR: { remedy: 'Look for a missing quotation mark, bracket, comma or colon in the line shown or above it.' },
  MULTIPLE_DOCS: { reason: 'a line "---" begins a second document in the file', remedy: 'Remove the line, or put what follows it in a file of its own.' },
  NON_STRING_KEY: { reason: 'a list or a map stands where a key belongs', remedy: 'Check the line for a "?" or a bracket before the colon.' },
  TAB_AS_INDENT: { remedy: 'Indent with spaces.' },
  TAG_RESOLVE_FAILED: { reason: 'a word that begins with "!" stands before a value', remedy: 'Put the value in quotes if the "!" belongs to it, else remove the word.' },
}
