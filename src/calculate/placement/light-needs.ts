/** Whether the navigation lights that a vessel must have are among those recorded. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { Gap } from '../../model/results/gap.js'
import type { RequiredLight } from '../../model/results/placement.js'
import type { Equipment, Tag, Vessel } from '../../model/vessel.js'
import { lengthClassOf, lightNeeds, type LightNeed } from '../../references/tables/navigation-lights.js'
import { lightMissing } from './findings.js'
import type { FittedLight } from './lights.js'

interface Needs { readonly required: readonly RequiredLight[]; readonly notAssessed: readonly Gap[]; readonly findings: readonly Finding[] }

export function needsOf({ identity, equipment }: Vessel, fitted: readonly FittedLight[], unknown: readonly Equipment[]): Needs {
  const { lengthM, propulsion, name } = identity
  const gap = (reason: string): Needs => ({ required: [], findings: [], notAssessed: [{ subjectTag: name, reason: `which navigation lights she needs: ${reason}` }] })
  if (fitted.length + unknown.length === 0) return lengthM === null && propulsion === null ? { required: [], notAssessed: [], findings: [] } : gap('no navigation light is recorded')
  if (lengthM === null) return gap('the length of the vessel is not recorded')
  if (propulsion === null) return gap('whether she is power-driven or sailing is not recorded')
  const hasEngine = equipment.some(({ kind, status }) => kind === 'engine' && status !== 'removed')
  // What is not described may be the one that is missed.
  const absent: RequiredLight['state'] = unknown.length > 0 ? 'not assessed' : 'missing'
  const required = lightNeeds(propulsion, lengthM, hasEngine).map(({ when, what, citation, sets }): RequiredLight => {
    const tags = firstSet(sets, fitted)
    return { when, what, citation, tags: tags ?? [], state: tags === null ? absent : 'there' }
  })
  const open = required.filter(({ state }) => state === 'not assessed')
  return {
    required,
    notAssessed: open.length === 0 ? [] : [{ subjectTag: name, reason: `whether all navigation lights are there: the kind of ${inWords(unknown.map(({ tag }) => tag))} is not recorded` }],
    findings: required.filter(({ state }) => state === 'missing').map(({ when, what, citation }) => find(lightMissing, {
      subject: { kind: 'vessel', id: name }, field: 'lengthM', evidence: { recordedCount: 0 }, limit: { relation: 'at least', value: 1, citation }, context: { what, when, length: lengthClassOf(lengthM) },
    })),
  }
}

/** The lights of the first set that is whole, or null. */
function firstSet(sets: LightNeed['sets'], fitted: readonly FittedLight[]): readonly Tag[] | null {
  for (const kinds of sets) {
    const taken: Tag[] = []
    for (const kind of kinds) {
      const next = fitted.find(({ item, light }) => light.kind === kind && !taken.includes(item.tag))
      if (next !== undefined) taken.push(next.item.tag)
    }
    if (taken.length === kinds.length) return taken
  }
  return null
}
