/** What the rest of a vessel would be found to miss once something is added, and is not found to miss now. */
import type { Finding } from '../../findings/finding.js'
import type { Tag } from '../../model/vessel.js'

interface WithFindings { readonly findings: readonly Finding[] }

/** Notes, and what is found about the new things themselves, are left out. */
export function newlyFound(before: WithFindings, after: readonly WithFindings[], newTags: readonly Tag[]): readonly Finding[] {
  const known = new Set(before.findings.map(keyOf))
  return after.flatMap(({ findings }) => findings)
    .filter(finding => finding.severity !== 'note' && !newTags.includes(finding.subject.id) && !known.has(keyOf(finding)))
}

const keyOf = ({ id, subject }: Finding): string => `${id} ${subject.kind} ${subject.id}`
