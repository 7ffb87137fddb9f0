/** What can go wrong, and what is there for it. */
import { inWords } from '../../../findings/words.js'
import type { ContentKey } from '../../../references/tables/required-contents.js'
import { always, gear, held, itemPages, notApplicable, type Rule } from '../rule.js'

/** What nobody records is not known to be absent. */
const unknown = (reason: string) => held([], [reason])

export const safetyRules = {
  'fire-and-flooding-risks': always('emergency/fire', 'emergency/flooding', 'safety'),
  'reboarding': facts => gear(facts, ['boarding ladder'], ['emergency/person-overboard', ...itemPages(facts.of('boarding ladder'))], unknown),
  'liferaft-stowage': facts => gear(facts, ['liferaft'], itemPages(facts.of('liferaft')), unknown),
  'escape': facts => gear(facts, ['escape hatch'], ['emergency/fire', ...itemPages(facts.of('escape hatch'))], unknown),
  'fire-protection': facts => {
    const kinds = ['fire extinguisher', 'fixed fire extinguisher', 'fire blanket'] as const
    return gear(facts, facts.of(...kinds).length > 0 ? [...kinds] : ['fire extinguisher'], ['emergency/fire'], unknown)
  },
  'ignition-protection': ({ vessel: { zones } }) => {
    const unsaid = zones.filter(({ ignitionProtection }) => ignitionProtection === null)
    if (zones.length === 0 || unsaid.length === zones.length) return held([], ['which zones need ignition protection'])
    const lack = unsaid.length === 0 ? null : `whether it is needed in ${inWords(unsaid.map(({ name }) => name))}`
    return lack === null && zones.every(({ ignitionProtection }) => !ignitionProtection) ? notApplicable('no zone is recorded as one that needs it') : held(['zones'], [lack])
  },
} as const satisfies Partial<Record<ContentKey, Rule>>
