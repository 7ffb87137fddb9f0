import type { Finding, LocatedFinding, SourcePosition, SubjectRef } from './finding.js'

/**
 * Adds to each finding where in the files it is about. The passes know subjects and fields only, so they run on vessels
 * built in code; a field that is written nowhere is looked for at its subject.
 */
export function locate(
  findings: readonly Finding[], source: (subject: SubjectRef, field: string | null) => SourcePosition | null,
): LocatedFinding[] {
  return findings.map(finding => ({ ...finding, at: source(finding.subject, finding.field) ?? source(finding.subject, null) }))
}
