/** What needs what: the chain of each item to its source, what goes dead with each device, single points behind safety services. */
import { lookup } from '../../model/lookup.js'
import type { DependencyResults } from '../../model/results/dependency.js'
import type { Equipment, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { livesAlone, serviceDefinitions } from '../../references/safety-services.js'
import type { Upstream } from '../upstream.js'
import { dataFacts } from './data-facts.js'
import { isInUse, passes } from './deliveries.js'
import { dependencyFindings } from './dependency-findings.js'
import { facts } from './facts.js'
import { lossesOf } from './losses.js'
import { partTag } from './network-supply.js'
import { servicesOf } from './services.js'
import { supplyFacts } from './supply-facts.js'
import { tracesOf } from './traces.js'

export function dependencyPass(vessel: Vessel, _basis: Basis, { feeding }: Pick<Upstream, 'feeding'>): DependencyResults {
  const made = facts()
  const supply = supplyFacts(vessel, feeding, made)
  const data = dataFacts(vessel, made, supply)
  for (const tag of thingsOf(vessel)) made.sound(tag)
  const supplied = [...lookup(vessel).items.keys()].filter(tag => isInUse(vessel, tag) && !passes(vessel, tag) && !supply.unsupplied.has(tag))
  for (const tag of supplied) made.watch({ statement: supply.live(tag), tag, how: 'dead', cause: { of: 'supply', tag: null } })

  const settled = made.settle()
  const isFollowed = ({ tag, kind }: Equipment): boolean => {
    if (!settled.holds(supply.live(tag))) return false
    const partnered = data.partnered.get(tag)
    return !supply.unsupplied.has(tag) || livesAlone.has(kind) || (partnered !== undefined && settled.holds(partnered))
  }
  const traces = tracesOf(vessel, feeding, supply, data.linesOf)
  const losses = lossesOf(vessel, made, settled)
  const services = servicesOf(vessel, losses, isFollowed)
  const dead = supplied.filter(tag => supply.linesOf.has(tag) && !settled.holds(supply.live(tag)))
  return {
    traces, losses, services,
    notAssessed: [
      ...made.gaps,
      ...dead.map(subjectTag => ({ subjectTag, reason: 'no source is reached by the circuits that supply it' })),
      ...services.flatMap(({ service, notAssessedTags }) => notAssessedTags.map(subjectTag =>
        ({ subjectTag, reason: `what it lives on is not recorded, so it is not counted for ${serviceDefinitions[service].title.toLowerCase()}` }))),
    ],
    findings: dependencyFindings(vessel, traces, services, data),
  }
}

/** Everything that can fail, each once. */
function thingsOf(vessel: Vessel): ReadonlySet<Tag> {
  const inUse = [...lookup(vessel).items.keys()].filter(tag => isInUse(vessel, tag))
  const cables = vessel.cables.filter(({ status }) => status !== 'removed')
  const buses = vessel.canBuses.flatMap(bus => [bus.tag, ...bus.backbone.map(partTag)])
  return new Set([...vessel.circuits.map(({ tag }) => tag), ...inUse, ...cables.map(({ tag }) => tag), ...buses])
}
