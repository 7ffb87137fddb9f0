/** The boat herself: what she is, what she carries, how she is worked. Most of it is for the builder's own manual. */
import type { Held } from '../../../model/results/completeness.js'
import type { ContentKey } from '../../../references/tables/required-contents.js'
import { gear, held, neverHeld, notApplicable, recorded, type Rule, tagsOf } from '../rule.js'

export const craftRules = {
  'design-category': ({ vessel: { identity } }) => recorded('vessel', { 'the design category': identity.designCategory }),
  'craft-identification': ({ vessel: { identity } }) => recorded('identifiers', { 'the craft identification number': identity.hullIdentification }),
  'builders-plate': ({ vessel: { identity } }) => recorded('vessel', {
    'the builder': identity.builder, 'the design category': identity.designCategory, 'the number of persons': identity.maximumPersons,
  }, ['the builder’s address', 'the CE marking', 'the maximum recommended load']),
  'craft-data': ({ vessel: { identity } }) => recorded('vessel', {
    'the model': identity.model, 'the builder': identity.builder, 'the year of build': identity.yearBuilt, 'the design category': identity.designCategory,
    'the length': identity.lengthM, 'the beam': identity.beamM, 'the draught': identity.draughtM, 'the displacement': identity.displacementKg,
  }),
  'unladen-mass': ({ vessel: { identity } }) => recorded('vessel', { 'the displacement': identity.displacementKg }),
  'maximum-persons': ({ vessel: { identity } }) => recorded('vessel', { 'the number of persons': identity.maximumPersons }),
  'maximum-load': neverHeld,
  'stability': neverHeld,
  'openings-and-flooding': facts => gear(facts, ['seacock', 'bilge pump', 'manual bilge pump'], ['emergency/flooding'], reason => held([], [reason]), ['which openings are kept shut at sea']),
  'windows-and-hatches': neverHeld,
  'visibility': neverHeld,
  'handling': neverHeld,
  'engines': facts => unlessAbsent(facts.absence('engine')),
  'fuel': facts => {
    const valves = facts.of('fuel shut-off valve')
    if (valves.length > 0) return held(['emergency/fire', 'emergency/isolate'], ['how fuel is taken on'])
    const burning = facts.of('engine', 'generator')
    return burning.length === 0 ? notApplicable('no engine and no generator is recorded') : held([], [`the fuel shut-off of ${tagsOf(burning)}`])
  },
  'steering': facts => held(['emergency/loss-of-steering'], [
    facts.of('emergency tiller').length > 0 || facts.absence('emergency tiller') !== null ? null : 'how she is steered when the gear fails: no emergency tiller is recorded',
  ]),
  'gas': facts => gear(facts, ['gas cylinder', 'gas appliance', 'gas shut-off valve'], ['emergency/fire'], notApplicable, ['how a bottle is changed and the system tested for leaks']),
  'navigation-lights': facts => {
    const [lights, horns] = [facts.of('navigation light'), facts.of('horn')]
    const unknown = lights.filter(({ navigationLight }) => navigationLight === null)
    if (lights.length + horns.length === 0) return held([], ['navigation lights and a sound signal, of which none is recorded'])
    return held(['placement', 'equipment'], [
      lights.length === 0 ? 'navigation lights, of which none is recorded' : null,
      unknown.length > 0 ? `what lights they are: ${tagsOf(unknown)}` : null,
      horns.length === 0 ? 'the sound signal' : null,
    ])
  },
  'discharge': facts => (facts.of('toilet').length === 0 ? notApplicable(facts.absence('toilet') ?? 'no toilet is recorded') : held([])),
  'anchoring-mooring-towing': neverHeld,
} as const satisfies Partial<Record<ContentKey, Rule>>

const unlessAbsent = (reason: string | null): Held => (reason === null ? held([]) : notApplicable(reason))
