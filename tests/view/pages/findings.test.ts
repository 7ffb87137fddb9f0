import { describe, expect, it } from 'vitest'
import { aBattery, aCircuit, aVessel } from '../../support/vessel-builder.js'
import type { LocatedFinding, Severity } from '../../../src/findings/finding.js'
import { findingsPages } from '../../../src/view/pages/findings/findings.view.js'
import { plainText } from '../../../src/view/tables.js'
import { cellsOf, contextOf, tableIn } from './support.js'

const vessel = aVessel({
  batteries: [aBattery({ tag: 'B1' })],
  circuits: [aCircuit({ tag: 'F2', fedFromTag: 'B1' }), aCircuit({ tag: 'F10', fedFromTag: 'B1' })],
})
const aFinding = (id: string, severity: Severity, tag: string, line: number): LocatedFinding => ({
  id, name: `name-of-${id.toLowerCase()}`, severity, subject: { kind: 'circuit', id: tag }, field: null,
  evidence: { voltageDropPercent: 3.4 }, limit: { relation: 'at most', value: 3, citation: { source: 'iso-10133', place: '4.7' } },
  message: `Message of ${id} on ${tag}`, remedy: `Remedy of ${id}.`,
  at: { file: 'circuits.yaml', line, column: 3, endLine: line, endColumn: 9 },
})
const findings = [
  aFinding('DCD301', 'note', 'F2', 9), aFinding('DCD102', 'warning', 'F10', 7), aFinding('DCD102', 'warning', 'F2', 5), aFinding('DCD101', 'error', 'F2', 4),
]
const page = findingsPages(contextOf(vessel, { findings }))[0]!
const lists = page.blocks.filter(block => block.is === 'findings')

describe('a vessel with findings', () => {
  it('has its counts at the top', () => {
    expect(plainText(page.lead!)).toMatch(/^1 error, 2 warnings, 1 note\./)
    expect(cellsOf(tableIn(page, 'findings-by-kind'))).toEqual([
      ['DCD101', 'name-of-dcd101', 'error', '1'], ['DCD102', 'name-of-dcd102', 'warning', '2'], ['DCD301', 'name-of-dcd301', 'note', '1'],
    ])
  })

  it('has errors first, then warnings, then notes, each by kind and then by tag as people count', () => {
    expect(page.blocks.filter(block => block.is === 'heading').map(({ text }) => text)).toEqual(['Errors (1)', 'Warnings (2)', 'Notes (1)'])
    expect(lists.map(list => list.findings.map(({ message }) => message))).toEqual([
      ['Message of DCD101 on F2'], ['Message of DCD102 on F2', 'Message of DCD102 on F10'], ['Message of DCD301 on F2'],
    ])
  })

  it('has with each finding its limit with the source, its remedy and its place in the data', () => {
    const [card] = lists[0]!.findings
    expect(card).toMatchObject({ severity: 'error', remedy: 'Remedy of DCD101.', at: { file: 'circuits.yaml', line: 4 }, kind: { to: 'finding-kinds' } })
    expect(card?.limit).toMatch(/at most 3\.0.%.*ISO 10133.*4\.7/)
  })
})

describe('a vessel with an accepted deviation', () => {
  const accepted = { by: 'A. Person, yard', date: '2026-05-04', reason: 'To be rewired at the refit' }
  const page = findingsPages(contextOf(vessel, { findings: findings.map((finding, i) => (i === 2 ? { ...finding, accepted } : finding)) }))[0]!

  it('keeps the finding in its place, with who accepts it and why', () => {
    const lists = page.blocks.filter(block => block.is === 'findings')
    expect(lists.map(list => list.findings.map(({ message, accepted }) => [message, accepted]))).toEqual([
      [['Message of DCD101 on F2', null]],
      [['Message of DCD102 on F2', 'Accepted by A. Person, yard, 2026-05-04: To be rewired at the refit'], ['Message of DCD102 on F10', null]],
      [['Message of DCD301 on F2', null]],
    ])
  })

  it('counts it, and lists it once more at the end', () => {
    expect(plainText(page.lead!)).toMatch(/^1 error, 2 warnings \(1 of them accepted\), 1 note\./)
    expect(cellsOf(tableIn(page, 'findings-by-kind')).map(cells => cells.at(-1))).toEqual(['0', '1', '0'])
    expect(page.blocks.filter(block => block.is === 'heading').map(({ text }) => text).at(-1)).toBe('Accepted deviations (1)')
    expect(cellsOf(tableIn(page, 'accepted-deviations'))).toEqual([['DCD102', 'warning', 'Message of DCD102 on F2', 'To be rewired at the refit', 'A. Person, yard', '2026-05-04']])
  })
})

it('says of a vessel without findings that there are none', () => {
  const empty = findingsPages(contextOf(vessel))[0]!
  expect(plainText(empty.lead!)).toMatch(/^0 errors, 0 warnings, 0 notes\./)
  expect(empty.blocks.filter(block => block.is === 'findings').map(block => block.empty)).toEqual(['No errors.', 'No warnings.', 'No notes.'])
})
