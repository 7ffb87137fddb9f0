/** A rule decides from the data what this pack holds of one content. Its makers: most rules are one of a few shapes. */
import { inWords } from '../../findings/words.js'
import { slug } from '../../model/address.js'
import { grouped, isThere } from '../../model/lookup.js'
import type { Results } from '../../model/results.js'
import type { Held } from '../../model/results/completeness.js'
import type { Equipment, Vessel } from '../../model/vessel.js'
import { type EquipmentKindKey, equipmentKind } from '../../references/equipment-kinds.js'

export type BeforeCompleteness = Pick<Results, 'feeding' | 'sources' | 'acSupply' | 'commissioning' | 'configuration'>
export interface RuleFacts {
  readonly vessel: Vessel
  readonly before: BeforeCompleteness
  /** Equipment on board or planned, by kind. */
  of(...kinds: readonly EquipmentKindKey[]): readonly Equipment[]
  /** Why there is none of these kinds, where the data say so of each of them; else null. */
  absence(...kinds: readonly EquipmentKindKey[]): string | null
}
export type Rule = (facts: RuleFacts) => Held

export function ruleFacts(vessel: Vessel, before: BeforeCompleteness): RuleFacts {
  const byKind = grouped(vessel.equipment.filter(isThere), ({ kind }) => [kind])
  const reasons = new Map(vessel.absences.map(({ kind, reason }) => [kind, reason]))
  return {
    vessel, before,
    of: (...kinds) => kinds.flatMap(kind => byKind.get(kind) ?? []),
    absence: (...kinds) => (kinds.every(kind => reasons.has(kind)) ? [...new Set(kinds.map(kind => reasons.get(kind)!))].join('; ') : null),
  }
}

export const held = (pageKeys: readonly string[], lacks: readonly (string | null)[] = []): Held =>
  ({ notApplicable: null, pageKeys, lacks: lacks.filter(lack => lack !== null) })
export const notApplicable = (reason: string): Held => ({ notApplicable: reason, pageKeys: [], lacks: [] })

/** Of what the data have no field for: another document has to hold it. */
export const neverHeld: Rule = () => held([])
/** General text that every pack carries. */
export const always = (...pageKeys: readonly string[]): Rule => () => held(pageKeys)

/** Facts of the vessel's own entry, by what they are called: all, some or none of them recorded. */
export function recorded(pageKey: string, facts: Readonly<Record<string, unknown>>, alsoLacking: readonly string[] = []): Held {
  const missing = Object.keys(facts).filter(name => facts[name] === null)
  return missing.length === Object.keys(facts).length ? held([], missing) : held([pageKey], [...missing, ...alsoLacking])
}

/** Of what some kinds of equipment stand for; `none`: what to say of a boat of which nothing of the sort is recorded. */
export function gear(facts: RuleFacts, kinds: readonly EquipmentKindKey[], pageKeys: readonly string[], none: (reason: string) => Held, alsoLacking: readonly string[] = []): Held {
  const items = facts.of(...kinds)
  if (items.length === 0) {
    const reason = facts.absence(...kinds)
    return reason === null ? none(`no ${kinds.map(kind => equipmentKind(kind).title.toLowerCase()).join(' and no ')} is recorded`) : notApplicable(reason)
  }
  return held(pageKeys, [placesLacking(items), ...alsoLacking])
}

/** "the place of Q31 and Q32", or null where each has one. */
export function placesLacking(items: readonly Pick<Equipment, 'tag' | 'zoneTag'>[]): string | null {
  const placeless = items.filter(({ zoneTag }) => zoneTag === null)
  return placeless.length === 0 ? null : `the place of ${tagsOf(placeless)}`
}

export const tagsOf = (things: readonly { readonly tag: string }[]): string => inWords(things.map(({ tag }) => tag))
export const itemPages = (items: readonly { readonly tag: string }[]): readonly string[] => items.map(({ tag }) => `equipment/${slug(tag)}`)
