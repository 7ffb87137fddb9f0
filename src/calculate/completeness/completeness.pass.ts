/** Whether the pack holds what standards ask of an owner’s manual, and how far the work is. */
import { find, type Finding, type FindingKind } from '../../findings/finding.js'
import { nearestOf } from '../../findings/nearest.js'
import { inWords } from '../../findings/words.js'
import { type CompletenessResults, contentState, type ContentResult } from '../../model/results/completeness.js'
import type { ManualContent, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { contentKeys, isContentKey } from '../../references/tables/required-contents.js'
import { contentsOf } from './contents.js'
import { contentElsewhereThoughHeld, contentKeyUnknown, contentNotApplicableThoughHeld, requiredContentInPart, requiredContentMissing } from './findings.js'
import { progressOf } from './progress.js'
import type { BeforeCompleteness } from './rule.js'

export function completenessPass(vessel: Vessel, _basis: Basis, before: BeforeCompleteness): CompletenessResults {
  const contents = contentsOf(vessel, before)
  return {
    contents, progress: progressOf(vessel, before), notAssessed: [],
    findings: [...gapFindings(vessel, contents), ...vessel.manualContents.flatMap(entry => entryFindings(entry, contents))],
  }
}

/** While she is being built nothing is late: the page alone shows it. */
function gapFindings({ identity }: Vessel, contents: readonly ContentResult[]): readonly Finding[] {
  if (identity.deliveredOn === null) return []
  const required = contents.filter(({ isRequired }) => isRequired)
  const told = (kind: FindingKind<{ contentCount: number }>, state: ReturnType<typeof contentState>): readonly Finding[] => {
    const keys = required.filter(content => contentState(content) === state).map(({ key }) => key)
    return keys.length === 0 ? [] : [find(kind, {
      subject: { kind: 'vessel', id: identity.name }, field: 'deliveredOn', evidence: { contentCount: keys.length }, limit: null, context: { contents: inWords(keys) },
    })]
  }
  return [...told(requiredContentMissing, 'missing'), ...told(requiredContentInPart, 'in part')]
}

function entryFindings({ contentKey, state, where, reason }: ManualContent, contents: readonly ContentResult[]): readonly Finding[] {
  const facts = { subject: { kind: 'entry of the contents', id: contentKey }, field: null, evidence: {}, limit: null }
  if (!isContentKey(contentKey)) return [find(contentKeyUnknown, { ...facts, context: nearestOf(contentKey, contentKeys) })]
  const { pageKeys, lacks } = contents.find(({ key }) => key === contentKey)!
  if (pageKeys.length === 0 || lacks.length > 0) return []
  return [state === 'elsewhere'
    ? find(contentElsewhereThoughHeld, { ...facts, context: { where: where ?? '' } })
    : find(contentNotApplicableThoughHeld, { ...facts, context: { reason: reason ?? '' } })]
}
