/** What of the dependencies should be acted on. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { ServiceDependency, Trace } from '../../model/results/dependency.js'
import type { SafetyService, Tag, Vessel } from '../../model/vessel.js'
import { serviceDefinitions } from '../../references/safety-services.js'
import type { Data } from './data-facts.js'
import { dataWayNotRecorded, serviceBehindOneDevice, vitalServiceBehindOneDevice } from './findings.js'
import { partsOf } from './services.js'

const vital: ReadonlySet<SafetyService> = new Set<SafetyService>(['bilge pumping', 'engine control'])

export function dependencyFindings(
  vessel: Vessel, traces: ReadonlyMap<Tag, Trace>, services: readonly ServiceDependency[], { noWay }: Data,
): readonly Finding[] {
  return [
    ...noWay.map(({ tag, giverTag }) => find(dataWayNotRecorded, {
      subject: { kind: 'equipment', id: tag }, field: 'dataFromTags', evidence: {}, limit: null, context: { giver: giverTag },
    })),
    ...services.flatMap(service => serviceFindings(vessel, traces, service)),
  ]
}

/** The device with the least loss of those that end the service, where its items were put on circuits of their own. */
function serviceFindings(vessel: Vessel, traces: ReadonlyMap<Tag, Trace>, { service, itemTags, takesAll }: ServiceDependency): readonly Finding[] {
  const { circuits, equipment } = lookup(vessel)
  const apart = partsOf(service, itemTags.map(tag => equipment.get(tag)!)).map(part => part.map(({ tag }) => tag))
    .filter(part => new Set(part.map(tag => ownCircuit(traces.get(tag)))).size > 1)
  const point = takesAll.find(({ tag, lostTags }) => circuits.get(tag)?.protection != null && apart.some(part => part.every(item => lostTags.includes(item))))
  if (point === undefined) return []
  const restore = point.restoreBy.length === 0 ? '' : `; by hand they come back through ${inWords(point.restoreBy)}`
  return [find(vital.has(service) && point.restoreBy.length === 0 ? vitalServiceBehindOneDevice : serviceBehindOneDevice, {
    subject: { kind: 'circuit', id: point.tag }, field: 'protection', evidence: {}, limit: null,
    context: { service: serviceDefinitions[service].title.toLowerCase(), items: inWords(point.lostTags), restore },
  })]
}

/** The nearest circuit by which an item lives, its network's where it has none. */
const ownCircuit = (trace: Trace | undefined): Tag | null => trace?.supplies[0]?.steps.find(({ what }) => what === 'device')?.tag ?? null
