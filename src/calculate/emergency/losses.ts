/** What ends when one thing is gone: its effects as services lost and left. */
import { lookup } from '../../model/lookup.js'
import type { DependencyResults, Effect } from '../../model/results/dependency.js'
import type { Loss } from '../../model/results/emergency.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { isSupplyPoint } from './supplies.js'

export interface LossOf {
  loss(tag: Tag): Loss
  effects(tag: Tag): readonly Effect[]
}

export function lossesOf(vessel: Vessel, { losses, services }: Pick<DependencyResults, 'losses' | 'services'>): LossOf {
  const { circuits } = lookup(vessel)
  const isLink = (tag: Tag): boolean => { const circuit = circuits.get(tag); return circuit?.normalState === 'open' && circuit.loadTags.some(load => isSupplyPoint(vessel, load)) }
  const effects = (tag: Tag): readonly Effect[] => losses.get(tag) ?? []
  return {
    effects,
    loss: tag => ({
      tag,
      endedTags: effects(tag).filter(({ how }) => how !== 'degraded').map(effect => effect.tag),
      services: services.flatMap(({ service, itemTags, takesAll, takesSome }) => {
        const lostTags = [...takesAll, ...takesSome].find(point => point.tag === tag)?.lostTags ?? []
        return lostTags.length === 0 ? [] : [{ service, ended: takesAll.some(point => point.tag === tag), lostTags, leftTags: itemTags.filter(item => !lostTags.includes(item)) }]
      }),
      linkTags: [...new Set(effects(tag).flatMap(({ restoreBy }) => restoreBy))].filter(isLink),
    }),
  }
}
