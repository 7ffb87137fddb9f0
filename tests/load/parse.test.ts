/** Values with their places: what stands in the file at a place is the value that was read there. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse as parseWithYaml, stringify } from 'yaml'
import { parseCsv } from '../../src/load/parse-csv.js'
import { parseYaml } from '../../src/load/parse-yaml.js'
import { positionOf, sourceFile, type SourceNode, writtenIn } from '../../src/load/source-folder.js'

const scalarsOf = (node: SourceNode): readonly SourceNode[] =>
  node.type === 'scalar' ? [node] : node.type === 'list' ? node.items.flatMap(scalarsOf) : [...node.fields.values()].flatMap(({ value }) => scalarsOf(value))

const word = fc.stringMatching(/^[A-Za-z][A-Za-z0-9 .:#"',;é⛵-]{0,12}$/)

describe('YAML', () => {
  const value = fc.letrec(tie => ({
    any: fc.oneof({ maxDepth: 3 }, word, fc.integer(), fc.boolean(), fc.array(tie('any'), { maxLength: 3 }), fc.dictionary(word, tie('any'), { maxKeys: 3 })),
  })).any

  test('is read as the library’s own plain values', () => {
    fc.assert(fc.property(fc.dictionary(word, value, { maxKeys: 4 }), data => {
      const text = stringify(data, { lineWidth: 0 })
      const { root, findings } = parseYaml(sourceFile('a.yaml', 'vessel', text))
      expect(findings).toEqual([])
      expect(JSON.parse(JSON.stringify(root?.plain ?? {}))).toEqual(parseWithYaml(text) ?? {})
    }))
  })

  test('every value stands at its place', () => {
    fc.assert(fc.property(fc.dictionary(word, value, { maxKeys: 4 }), data => {
      const { root } = parseYaml(sourceFile('a.yaml', 'vessel', stringify(data, { lineWidth: 0 })))
      for (const node of root === null ? [] : scalarsOf(root)) expect(parseWithYaml(writtenIn(node))).toEqual(node.plain)
    }))
  })
})

describe('CSV', () => {
  const cell = fc.oneof(word, fc.constant(''), fc.constant('two\nlines'))
  const table = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.constantFrom(',', ';', '\t'), fc.constantFrom('\n', '\r\n'))
    .chain(([columns, separator, lineEnd]) => fc.record({
      columns: fc.constant(columns), separator: fc.constant(separator), lineEnd: fc.constant(lineEnd),
      rows: fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { maxLength: 6 }),
      comments: fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
    }))
  // By RFC 4180: quotes around the cell, marks in it doubled.
  const quoted = (text: string): string => (/["\n,;\t#]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
  const unquoted = (text: string): string => (text.startsWith('"') ? text.slice(1, -1).replaceAll('""', '"') : text)

  test('every cell is read and stands at its place', () => {
    fc.assert(fc.property(table, ({ columns, separator, lineEnd, rows, comments }) => {
      const header = Array.from({ length: columns }, (_, index) => `c${index}`)
      const lines = [header, ...rows].map(row => row.map(quoted).join(separator))
      const text = lines.map((line, index) => (comments[index] ? `# a "comment"${lineEnd}${lineEnd}` : '') + line + lineEnd).join('')
      const { rows: read, findings } = parseCsv(sourceFile('cables.csv', 'vessel', text))
      expect(findings).toEqual([])
      const filled = rows.map(row => Object.fromEntries(row.flatMap((value, index) => (value === '' ? [] : [[`c${index}`, value.trim()]])))).filter(row => Object.keys(row).length > 0)
      expect(read.map(row => ({ ...row.plain as object }))).toEqual(filled)
      for (const node of read.flatMap(scalarsOf)) expect(unquoted(writtenIn(node)).trim()).toBe(node.plain)
    }))
  })
})

test('lines and columns count from 1, whatever ends the lines', () => {
  const file = sourceFile('a.yaml', 'vessel', 'ab\r\ncd\nef\rgh')
  const places = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map(letter => {
    const start = file.text.indexOf(letter)
    const { line, column, endLine, endColumn } = positionOf({ file, start, end: start + 1 })
    expect([endLine, endColumn]).toEqual([line, column + 1])
    return `${letter}${line}:${column}`
  })
  expect(places).toEqual(['a1:1', 'b1:2', 'c2:1', 'd2:2', 'e3:1', 'f3:2', 'g4:1', 'h4:2'])
})
