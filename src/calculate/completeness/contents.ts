/** What this pack holds of each content that is asked of an owner's manual. */
import type { ContentResult } from '../../model/results/completeness.js'
import type { Vessel } from '../../model/vessel.js'
import { type ContentKey, contentKeys, requiredContents } from '../../references/tables/required-contents.js'
import { type BeforeCompleteness, type Rule, ruleFacts } from './rule.js'
import { craftRules } from './rules/craft.js'
import { electricalRules } from './rules/electrical.js'
import { manualRules } from './rules/manual.js'
import { safetyRules } from './rules/safety.js'

const rules: Readonly<Record<ContentKey, Rule>> = { ...craftRules, ...safetyRules, ...manualRules, ...electricalRules }

/** Law and standards of Europe; where others are followed they are advice. */
export function contentsOf(vessel: Vessel, before: BeforeCompleteness): readonly ContentResult[] {
  const facts = ruleFacts(vessel, before)
  const entries = new Map(vessel.manualContents.map(entry => [entry.contentKey, entry]))
  return contentKeys.map(key => ({
    key, isRequired: vessel.basis === 'iso' && requiredContents[key].need === 'required', ...rules[key](facts), entry: entries.get(key) ?? null,
  }))
}
