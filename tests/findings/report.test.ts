import { describe, expect, test } from 'vitest'
import type { LocatedFinding } from '../../src/findings/finding.js'
import { reportJson, reportText, summaryOf, wantsColour } from '../../src/findings/report.js'

const finding: LocatedFinding = {
  id: 'DCD101', name: 'voltage-drop-above-limit', severity: 'warning', subject: { kind: 'circuit', id: 'F7' }, field: 'lengthM',
  evidence: { voltageDropPercent: 3.04 }, limit: { relation: 'at most', value: 3, citation: { source: 'iso-10133', place: 'clause 7' } },
  message: 'Circuit F7: voltage drop 3.04 %, limit 3.00 %', remedy: 'Use a larger cross-section.',
  at: { file: 'circuits/lights.yaml', line: 2, column: 11, endLine: 2, endColumn: 14 },
}
const acceptedFinding: LocatedFinding = {
  ...finding, subject: { kind: 'circuit', id: 'F8' }, message: 'Circuit F8: voltage drop 3.04 %, limit 3.00 %',
  accepted: { by: 'A. Person, yard', date: '2026-05-04', reason: 'To be rewired at the refit' },
}
const text = (finding: LocatedFinding, content: string): readonly string[] =>
  reportText([finding], { textOf: () => content, colour: false }).split('\n')

/** The excerpt alone: the line of the file and the carets. */
const excerptOf = (at: Partial<LocatedFinding['at']>, content: string): readonly string[] =>
  text({ ...finding, at: { ...finding.at!, ...at } }, content).slice(2, 4)

test('a finding as a person reads it', () => {
  expect(reportText([finding], { textOf: () => '- tag: F7\n  length: 6 m\n', colour: false })).toBe(`circuits/lights.yaml:2:11  warning  DCD101 voltage-drop-above-limit
  Circuit F7: voltage drop 3.04 %, limit 3.00 %
    2 |   length: 6 m
      |           ^^^
  limit   at most 3.00\u00A0%, ISO 10133, clause 7
  remedy  Use a larger cross-section.

0 errors, 1 warning, 0 notes
`)
})

test('errors before warnings before notes; in each, file by file from the top', () => {
  const at = (file: string, line: number, column = 1) => ({ file, line, column, endLine: line, endColumn: column })
  const shuffled: readonly LocatedFinding[] = [
    { ...finding, severity: 'note', at: at('a.yaml', 1) },
    { ...finding, severity: 'error', at: at('b.yaml', 1) },
    { ...finding, severity: 'error', at: at('a.yaml', 10) },
    { ...finding, severity: 'error', at: at('a.yaml', 9, 7) },
    { ...finding, severity: 'error', at: at('a.yaml', 9, 3) },
    { ...finding, severity: 'error', at: null, subject: { kind: 'vessel', id: '' } },
    { ...finding, severity: 'warning', at: at('a.yaml', 1) },
  ]
  const report = reportText(shuffled, { textOf: () => undefined, colour: false })
  expect(report.split('\n').filter(line => line.includes('  DCD101')).map(line => line.split('  DCD101')[0])).toEqual([
    'whole folder  error', 'a.yaml:9:3  error', 'a.yaml:9:7  error', 'a.yaml:10:1  error', 'b.yaml:1:1  error', 'a.yaml:1:1  warning', 'a.yaml:1:1  note',
  ])
  expect(report).toMatch(/\n5 errors, 1 warning, 1 note\n$/)
  expect(summaryOf(shuffled)).toEqual({ error: 5, warning: 1, note: 1 })
})

test('without a place: what the finding is about', () => {
  const first = (subject: LocatedFinding['subject']): string => text({ ...finding, at: null, subject }, '')[0]!
  expect(first({ kind: 'file', id: 'cables.csv' })).toMatch(/^cables\.csv {2}warning/)
  expect(first({ kind: 'circuit', id: 'F7' })).toMatch(/^circuit F7 {2}warning/)
  expect(first({ kind: 'vessel', id: '' })).toMatch(/^whole folder {2}warning/)
})

describe('the excerpt', () => {
  test('of a place without length marks one column', () => {
    expect(excerptOf({ line: 1, column: 4, endLine: 1, endColumn: 4 }, 'a: 1')).toEqual(['    1 | a: 1', '      |    ^'])
  })

  test('of a place over several lines marks the first to its end', () => {
    expect(excerptOf({ line: 1, column: 4, endLine: 2, endColumn: 2 }, 'a: {x,\n}')).toEqual(['    1 | a: {x,', '      |    ^^^'])
  })

  test('at the end of a line', () => {
    expect(excerptOf({ line: 1, column: 3, endLine: 1, endColumn: 3 }, 'a:')).toEqual(['    1 | a:', '      |   ^'])
  })

  test('with tabs before and in the place keeps the carets below it', () => {
    expect(excerptOf({ line: 1, column: 3, endLine: 1, endColumn: 6 }, 'a\tb\tc')).toEqual(['    1 | a  b  c', '      |    ^^^^'])
  })

  test('with line numbers of several digits', () => {
    expect(excerptOf({ line: 100, column: 1, endLine: 100, endColumn: 2 }, `${'\n'.repeat(99)}x`)).toEqual(['    100 | x', '        | ^'])
  })

  test.each([[1, 'x'.repeat(400)], [200, 'x'.repeat(400)], [400, 'x'.repeat(400)], [97, 'x'.repeat(97)]])('of column %i of a long line is cropped around it', (column, line) => {
    const marked = `${line.slice(0, column - 1)}Y${line.slice(column)}`
    const [shown = '', carets = ''] = excerptOf({ line: 1, column, endLine: 1, endColumn: column + 1 }, marked)
    expect(shown.length).toBeLessThanOrEqual(8 + 96 + 2)
    expect(shown[carets.indexOf('^')]).toBe('Y')
    expect(carets).toMatch(/^ {6}\| *\^$/)
    expect(shown.startsWith('    1 | …')).toBe(column > 33)
    expect(shown.endsWith('…')).toBe(column < 300 && column !== 97)
  })

  test('of a line that is not there is left out', () => {
    expect(excerptOf({ line: 9, column: 1, endLine: 9, endColumn: 2 }, 'a: 1')[0]).toMatch(/^ {2}limit/)
  })
})

test('control characters of a file do not reach the terminal', () => {
  const hostile = '\u001B[2J\u202Eevil\u0007'
  const report = reportText([{ ...finding, message: hostile, remedy: hostile, at: { ...finding.at!, file: hostile, line: 1, column: 1 } }], { textOf: () => hostile, colour: false })
  expect(report).not.toMatch(/[\u0000-\u0009\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/)
  expect(report).toContain('\uFFFD[2J\uFFFDevil\uFFFD')
})

test('colour, on request, changes no letter', () => {
  const options = { textOf: () => '- tag: F7\n  length: 6 m\n' }
  const coloured = reportText([finding], { ...options, colour: true })
  expect(coloured).toContain('\u001B[')
  expect(coloured.replace(/\u001B\[\d+m/g, '')).toBe(reportText([finding], { ...options, colour: false }))
})

test('colour is wanted on a terminal, unless the environment refuses it (no-color.org)', () => {
  expect(wantsColour({ isTTY: true }, {})).toBe(true)
  expect(wantsColour({}, {})).toBe(false)
  expect(wantsColour({ isTTY: true }, { NO_COLOR: '1' })).toBe(false)
  expect(wantsColour({ isTTY: true }, { NO_COLOR: '' })).toBe(true)
})

test('an accepted finding says so in its first line and its last, and in the count', () => {
  expect(reportText([finding, acceptedFinding], { textOf: () => undefined, colour: false }).split('\n').slice(5)).toEqual([
    'circuits/lights.yaml:2:11  warning, accepted  DCD101 voltage-drop-above-limit', '  Circuit F8: voltage drop 3.04 %, limit 3.00 %',
    '  limit   at most 3.00\u00A0%, ISO 10133, clause 7', '  remedy  Use a larger cross-section.', '  Accepted by A. Person, yard, 2026-05-04: To be rewired at the refit',
    '', '0 errors, 2 warnings (1 of them accepted), 0 notes', '',
  ])
  expect(reportText([acceptedFinding], { textOf: () => undefined, colour: false })).toMatch(/\n0 errors, 1 warning \(accepted\), 0 notes\n$/)
})

test('as JSON', () => {
  const gap = { calculation: 'Voltage drop', needs: 'Record it.', subjectTag: 'A1.2', partTag: 'W7', reason: 'no length' }
  expect(JSON.parse(reportJson([finding, acceptedFinding], [gap]))).toEqual({
    findings: [{ ...finding, accepted: null }, acceptedFinding], summary: { error: 0, warning: 2, note: 0 }, accepted: { error: 0, warning: 1, note: 0 }, notAssessedCount: 1, notAssessed: [gap],
  })
})
