/** The manual as a document. */
import { lookup } from '../../../model/lookup.js'
import type { ContentKey } from '../../../references/tables/required-contents.js'
import { always, held, neverHeld, notApplicable, recorded, type Rule, tagsOf } from '../rule.js'

export const manualRules = {
  'scope-and-identity': ({ vessel: { identity, document } }) => recorded('vessel', {
    'the document number': document.number, 'the issue': document.issue, 'the date of issue': document.issuedOn, 'who prepared it': document.preparedBy,
    'the hull number or the craft identification': identity.hullNumber ?? identity.hullIdentification,
  }),
  'introduction': neverHeld,
  'standards-with-text': always('completeness'),
  'proper-operation': always('operating', 'owner/first-hour'),
  'other-information': ({ vessel }) => {
    const items = [...lookup(vessel).items.values()]
    const lacks = [vessel.document.contact === null ? 'how to reach the installer' : null, items.some(({ documents }) => documents.length > 0) ? null : 'any document of the equipment']
    return lacks.every(lack => lack !== null) ? held([], lacks) : held(['vessel', 'equipment'], lacks)
  },
  'language': () => held(['how-to-read'], ['whether English, in which the general text is written, is what the country of use asks for']),
  'printable': always('how-to-read'),
  'index': always('find'),
  'units': ({ vessel: { units } }) => held(['basis'], [units === 'metric' ? null : 'SI units first: the data ask for the American ones']),
  'definitions': always('glossary'),
  'illustrations': ({ vessel: { circuits, photographs } }) =>
    held(circuits.length === 0 ? [] : ['electrical', 'location', ...(photographs.length === 0 ? [] : ['photographs'])]),
  'graphical-symbols': () => notApplicable('this pack calls controls and hazards by words and prints none of those symbols'),
  'signal-words': always('safety'),
} as const satisfies Partial<Record<ContentKey, Rule>>

/** Of the electronics; asked of their makers, and kept with the boat. */
export const electronicsRule: Rule = ({ vessel, before }) => {
  const { items } = lookup(vessel)
  const devices = before.configuration.software.map(({ itemTag }) => items.get(itemTag)!)
  if (devices.length === 0) return notApplicable('no electronic equipment is recorded')
  const without = devices.filter(({ documents }) => documents.length === 0)
  return held(without.length === devices.length ? [] : ['equipment'], [without.length === 0 ? null : `the makers’ manuals of ${tagsOf(without)}`])
}
