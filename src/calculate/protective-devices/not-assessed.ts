/** What could not be held against a limit, with the reason. None of it is a pass. */
import { lookup } from '../../model/lookup.js'
import type { FeedingResults } from '../../model/results.js'
import type { Gap } from '../../model/results/gap.js'
import type { ProtectiveDevicesResults } from '../../model/results/protective-devices.js'
import type { Vessel } from '../../model/vessel.js'
import { currentUnknown } from './capability.js'

export function gapsOf(
  vessel: Vessel, feeding: FeedingResults,
  { byBattery, byPoint, byCircuit, byPanel }: Pick<ProtectiveDevicesResults, 'byBattery' | 'byPoint' | 'byCircuit' | 'byPanel'>,
): readonly Gap[] {
  return [
    ...[...byPoint].flatMap(([subjectTag, { current }]) =>
      current.status === 'not computed' ? [{ subjectTag: subjectTag.split(':', 1)[0]!, reason: `${currentUnknown}${current.reason}` }] : []),
    ...[...byBattery.values()].flatMap(({ otherSources }) => otherSources)
      .filter(({ currentA }) => currentA === null).map(({ tag }) => ({ subjectTag: tag, reason: 'what it adds to a short circuit is left out: neither its short-circuit current nor its rated current is recorded' })),
    ...[...byCircuit].flatMap(([subjectTag, { notAssessed }]) => notAssessed.map(({ reason }) => ({ subjectTag, reason }))),
    ...[...byPanel].filter(([, { ratedCurrentA }]) => ratedCurrentA === null)
      .map(([subjectTag, { kind }]) => ({ subjectTag, reason: `protection and current of the ${kind} against its rating: its rated current is not recorded` })),
    ...openLinks(vessel, feeding),
  ]
}

/** While a normally open circuit from another source is closed, both sources feed a fault. */
function openLinks(vessel: Vessel, { byCircuit }: FeedingResults): readonly Gap[] {
  const { circuitsOfLoad } = lookup(vessel)
  return vessel.circuits.flatMap(({ tag, normalState, interlockTag, loadTags }) => {
    const source = byCircuit.get(tag)?.sourceTag ?? null
    if (normalState === 'closed' || interlockTag !== null || source === null) return []
    const joins = loadTags.some(load => (circuitsOfLoad.get(load) ?? []).some(other =>
      other.normalState === 'closed' && (byCircuit.get(other.tag)?.sourceTag ?? source) !== source))
    return joins ? [{ subjectTag: tag, reason: 'short circuits while it is closed: two sources then feed a fault, and their currents add' }] : []
  })
}
