/** For each thing that something supplies: the steps back to the source, with the voltage to be expected at each. */
import { lookup } from '../../model/lookup.js'
import type { FaultLine, FaultTracingResults } from '../../model/results/fault-tracing.js'
import type { Gap } from '../../model/results/gap.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { type Before, faultLines } from './lines.js'

export function faultTracingPass(vessel: Vessel, _basis: Basis, before: Before): FaultTracingResults {
  const lines = faultLines(vessel, before)
  const byTag = new Map<Tag, readonly FaultLine[]>([
    ...[...lookup(vessel).items.keys()].map(tag => [tag, lines.ofItem(tag)] as const),
    ...vessel.circuits.map(({ tag }) => [tag, lines.ofCircuit(tag)] as const),
    ...vessel.canBuses.map(({ tag }) => [tag, lines.ofBus(tag)] as const),
  ].filter(([, found]) => found.some(({ points }) => points.length > 0)))
  return { byTag, notAssessed: gapsOf(byTag), findings: [] }
}

/** Under the thing whose steps lack a figure, each reason once. */
function gapsOf(byTag: FaultTracingResults['byTag']): readonly Gap[] {
  return [...byTag].flatMap(([subjectTag, lines]) => {
    const reasons = lines.flatMap(({ points }) => points.flatMap(({ reading }) => (reading.is === 'voltage' && reading.expected.status === 'not computed' ? [reading.expected.reason] : [])))
    return [...new Set(reasons)].map(reason => ({ subjectTag, reason }))
  })
}
