/** The services for the safety of the boat: which items give each, and what single thing takes all or some of them. */
import { grouped } from '../../model/lookup.js'
import type { Effect, ServiceDependency, SinglePoint } from '../../model/results/dependency.js'
import type { Equipment, SafetyService, Tag, Vessel } from '../../model/vessel.js'
import { safetyServiceOf, safetyServices, serviceDefinitions } from '../../references/safety-services.js'
import { isInUse } from './deliveries.js'

/** `isFollowed`: whether it is known what the item lives on; what is not followed would seem never to be lost. */
export function servicesOf(vessel: Vessel, losses: ReadonlyMap<Tag, readonly Effect[]>, isFollowed: (item: Equipment) => boolean): readonly ServiceDependency[] {
  const givers = grouped(vessel.equipment.filter(({ tag }) => isInUse(vessel, tag)), item => [safetyServiceOf(item)].filter(service => service !== null))
  const itemsOf = new Map([...givers].map(([service, items]) => [service, items.filter(isFollowed)]))
  const giving = new Map([...itemsOf].flatMap(([service, items]) => items.map(({ tag }) => [tag, service] as const)))
  const ended = ({ tag, how }: Effect): boolean => {
    const service = giving.get(tag)
    return service !== undefined && how !== 'degraded' && (how !== 'no data' || serviceDefinitions[service].endsWithoutData)
  }
  const points = new Map<SafetyService, SinglePoint[]>(safetyServices.map(service => [service, []]))

  for (const tag of new Set([...losses.keys(), ...giving.keys()])) {
    const effects = losses.get(tag) ?? []
    // An item that is lost itself is lost to its own service as well, and nothing brings it back.
    const lost = [...(giving.has(tag) ? [{ tag, restoreBy: [] }] : []), ...effects.filter(ended)]
    for (const [service, hit] of grouped(lost, each => [giving.get(each.tag)!])) {
      const restoreBy = hit.every(each => each.restoreBy.length > 0) ? [...new Set(hit.flatMap(each => each.restoreBy))] : []
      points.get(service)!.push({ tag, lostTags: hit.map(each => each.tag), restoreBy })
    }
  }
  return safetyServices.map(service => {
    const parts = partsOf(service, itemsOf.get(service) ?? [])
    const ends = ({ lostTags }: SinglePoint) => { const lost = new Set(lostTags); return parts.some(part => part.every(({ tag }) => lost.has(tag))) }
    const leastFirst = points.get(service)!.toSorted((a, b) => (losses.get(a.tag)?.length ?? 0) - (losses.get(b.tag)?.length ?? 0))
    return {
      service,
      itemTags: (itemsOf.get(service) ?? []).map(({ tag }) => tag),
      notAssessedTags: (givers.get(service) ?? []).filter(item => !isFollowed(item)).map(({ tag }) => tag),
      takesAll: leastFirst.filter(ends),
      takesSome: leastFirst.filter(point => !ends(point)),
    }
  })
}

/** The service ends with any of these: with all items of a needed kind, else with all items. */
export function partsOf(service: SafetyService, items: readonly Equipment[]): readonly (readonly Equipment[])[] {
  return items.length === 0 ? [] : serviceDefinitions[service].needsEachKind ? [...grouped(items, ({ kind }) => [kind]).values()] : [items]
}
