import { describe, expect, it } from 'vitest'
import { withAcceptances } from '../../src/findings/acceptance.js'
import { isAccepted, type LocatedFinding, type SourcePosition } from '../../src/findings/finding.js'
import type { AcceptedDeviation } from '../../src/model/vessel.js'

const aFinding = (id: string, subject: string, message: string, severity: LocatedFinding['severity'] = 'warning'): LocatedFinding => ({
  id, name: 'a-kind', severity, subject: { kind: 'circuit', id: subject }, field: null, evidence: {}, limit: null, message, remedy: 'Mend it.', at: null,
})
const aDeviation = (findingId: string, subject: string, given: Partial<AcceptedDeviation> = {}): AcceptedDeviation =>
  ({ findingId, subject, reason: 'Known', by: 'A. Person', date: '2026-05-04', message: null, ...given })
const at = (line: number): SourcePosition => ({ file: 'deviations.yaml', line, column: 1, endLine: line, endColumn: 2 })

/** Each finding as `id subject`, with an `A` where it is accepted; those about acceptances with their line. */
function accepted(findings: readonly LocatedFinding[], deviations: readonly AcceptedDeviation[], issuedOn: string | null = null): readonly string[] {
  return withAcceptances(findings, { deviations, places: deviations.map((_, i) => () => at(i + 1)), issuedOn, kindIds: ['DCD101', 'DCD102'] })
    .map(finding => [finding.id, finding.subject.id, ...(isAccepted(finding) ? ['A'] : []), ...(finding.at === null ? [] : [`line ${finding.at.line}`])].join(' '))
}

const drop = aFinding('DCD102', 'F2', 'Circuit F2: voltage drop to E2 7.3\u00A0%')
const otherDrop = aFinding('DCD102', 'F2', 'Circuit F2: voltage drop to E4 8.0\u00A0%')
const rating = aFinding('DCD101', 'F2', 'Circuit F2: 30\u00A0A', 'error')

describe('an accepted deviation', () => {
  it('marks every finding of its id on its subject, and no other', () => {
    expect(accepted([drop, rating, otherDrop, aFinding('DCD102', 'F3', '')], [aDeviation('DCD102', 'F2')])).toEqual(['DCD102 F2 A', 'DCD101 F2', 'DCD102 F2 A', 'DCD102 F3'])
  })

  it('with a message marks only what says this, whichever blanks are typed', () => {
    expect(accepted([drop, otherDrop], [aDeviation('DCD102', 'F2', { message: 'Circuit F2: voltage drop\nto E2 7.3 % ' })])).toEqual(['DCD102 F2 A', 'DCD102 F2'])
  })

  it('no longer holds once the finding says something else, and that is told at its place', () => {
    const [finding, told] = withAcceptances([drop], {
      deviations: [aDeviation('DCD102', 'F2', { message: 'Circuit F2: voltage drop to E2 3.3 %' })], places: [key => (key === 'message' ? at(9) : at(1))], issuedOn: null, kindIds: [],
    })
    expect(isAccepted(finding!)).toBe(false)
    expect(told).toMatchObject({ id: 'ACC301', at: { line: 9 }, message: 'Accepted deviation DCD102 of F2: the finding now says "Circuit F2: voltage drop to E2 7.3 %", so it is no longer accepted' })
  })

  it('leaves severity and words of the finding as they are', () => {
    expect(withAcceptances([rating], { deviations: [aDeviation('DCD101', 'F2')], places: [], issuedOn: null, kindIds: [] }))
      .toEqual([{ ...rating, accepted: { by: 'A. Person', date: '2026-05-04', reason: 'Known' } }])
  })

  it.each([
    ['of another subject', aDeviation('DCD102', 'F4'), 'ACC201'],
    ['of no kind there is', aDeviation('DCD1002', 'F2'), 'ACC201'],
    ['of a fault of the data', aDeviation('SCH101', 'F2'), 'ACC304'],
    ['of a finding about an acceptance', aDeviation('ACC201', 'F2'), 'ACC304'],
  ])('%s marks nothing', (_, deviation, id) => {
    expect(accepted([drop], [deviation])).toEqual(['DCD102 F2', `${id} ${deviation.findingId} of ${deviation.subject} line 1`])
  })

  it('given twice holds by its first entry', () => {
    const twice = [aDeviation('DCD102', 'F2'), aDeviation('DCD102', 'F2', { by: 'B. Other' })]
    expect(accepted([drop], twice)).toEqual(['DCD102 F2 A', 'ACC302 DCD102 of F2 line 2'])
    expect(withAcceptances([drop], { deviations: twice, places: [], issuedOn: null, kindIds: [] })[0]!.accepted!.by).toBe('A. Person')
  })

  it('may be of the day of issue, not of a later one', () => {
    expect(accepted([drop], [aDeviation('DCD102', 'F2')], '2026-05-04')).toEqual(['DCD102 F2 A'])
    expect(accepted([drop], [aDeviation('DCD102', 'F2')], '2026-05-03')).toEqual(['DCD102 F2 A', 'ACC303 DCD102 of F2 line 1'])
  })
})
