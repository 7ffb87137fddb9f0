import { describe, expect, it } from 'vitest'
import type { Finding, SourcePosition, SubjectRef } from '../../src/findings/finding.js'
import { locate } from '../../src/findings/locate.js'

const finding = (id: string, field: string | null): Finding => ({
  id: 'XXX101', name: 'x', severity: 'note', message: 'm', remedy: 'r', subject: { kind: 'cable', id }, field, evidence: {}, limit: null,
})
const at = (line: number): SourcePosition => ({ file: 'cables.yaml', line, column: 5, endLine: line, endColumn: 9 })

describe('locate', () => {
  const source = ({ id }: SubjectRef, field: string | null) =>
    id !== 'W1' ? null : field === null ? at(3) : field === 'lengthM' ? at(7) : null

  it('takes the field, else the subject, else nothing', () => {
    const located = locate([finding('W1', 'lengthM'), finding('W1', 'routeTags'), finding('W1', null), finding('W2', null)], source)
    expect(located.map(found => found.at?.line ?? null)).toEqual([7, 3, 3, null])
  })

  it('leaves the finding as it was', () => {
    const [located] = locate([finding('W1', 'lengthM')], source)
    expect(located).toEqual({ ...finding('W1', 'lengthM'), at: at(7) })
  })
})
