/** What is left: spare ways, and the margin of every feeder, busbar and panel above them. */
import type { Finding } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { FeederReserve, PointReserve, ReserveResults, Trial } from '../../model/results/reserve.js'
import type { Busbar, Panel, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { cableUses } from '../conductors/circuit-cables.js'
import { feederOf } from '../feeding/supply.js'
import type { Upstream } from '../upstream.js'
import { feedersWith, verdictOfAll } from './added-load.js'
import { feederReserve, isFeeder, isLimit, isReason, limitOf, makersRating, pointLimit, type Shared, takenAt } from './limits.js'
import { moduleFindings } from './module-findings.js'

/** The currents of the circuits that are tried at every panel and busbar. */
export const trialCurrentsA: readonly number[] = [5, 10]

export function reservePass(vessel: Vessel, basis: Basis, before: Upstream): ReserveResults {
  const shared: Shared = { vessel, basis, before, uses: cableUses(vessel, before.feeding) }
  const byFeeder = new Map(vessel.circuits.filter(circuit => isFeeder(vessel, circuit)).map(circuit => [circuit.tag, feederReserve(shared, circuit)]))
  const byPoint = new Map([...vessel.panels, ...vessel.busbars].map(point => [point.tag, pointReserve(shared, byFeeder, point)]))
  const findings: readonly Finding[] = vessel.panels.flatMap(panel => moduleFindings(vessel, panel, byPoint.get(panel.tag)!))
  return { byFeeder, byPoint, notAssessed: gapsOf(vessel, byFeeder, byPoint), findings }
}

function pointReserve(shared: Shared, byFeeder: ReadonlyMap<Tag, FeederReserve>, point: Panel | Busbar): PointReserve {
  const { vessel, before } = shared
  const kind = 'ways' in point ? 'panel' : 'busbar'
  const feeder = feederOf(vessel, point.tag)
  const feed = feeder.is === 'circuit' ? before.feeding.byCircuit.get(feeder.circuit.tag) : undefined
  const chain = feed?.chain ?? []
  const takenCurrentA = takenAt(shared, point.tag)
  const putInCurrentA = putInAt(shared, point.tag)
  const rating = 'polarity' in point && point.polarity === 'negative'
    ? ['what comes back through a negative busbar is not added up in this version'] : pointLimit(shared, point.tag, takenCurrentA)
  const putIn = point.ratedCurrentA === null || putInCurrentA === null ? null : limitOf(kind, point.tag, point.ratedCurrentA, putInCurrentA, makersRating)
  return {
    tag: point.tag, kind, chain, takenCurrentA, putInCurrentA,
    freeWays: 'ways' in point ? freeWaysOf(vessel, point) : null,
    nominalVoltageV: feed?.nominalVoltageV ?? null,
    supplyForm: feed?.supplyForm ?? null,
    rating: rating.find(isLimit) ?? null,
    putInRating: putIn !== null && isLimit(putIn) ? putIn : null,
    missing: [
      ...(feeder.is === 'none' && kind === 'panel' ? ['no circuit feeds it'] : []),
      ...(feeder.is === 'several' ? [`it is fed by ${inWords(feeder.circuits.map(({ tag }) => tag))}, so how the current divides is not known`] : []),
      ...rating.filter(isReason),
    ],
    trials: trialCurrentsA.map((currentA): Trial => {
      const feeders = feedersWith(vessel, before.feeding.byCircuit, byFeeder, chain, { currentA, demandFactor: 1 })
      return { currentA, feeders, verdict: verdictOfAll(feeders) }
    }),
  }
}

/** Null where the number of ways, or the way of one of its circuits, is not recorded. */
export function freeWaysOf(vessel: Vessel, { tag, ways }: Panel): readonly number[] | null {
  const used = new Set((lookup(vessel).circuitsFedFrom.get(tag) ?? []).map(circuit => circuit.way))
  return ways === null || used.has(null) ? null : Array.from({ length: ways }, (_, i) => i + 1).filter(way => !used.has(way))
}

/** What charging circuits fed from a panel or busbar, and feeders with such circuits below them, put in. */
function putInAt({ vessel, before }: Shared, pointTag: Tag): number | null {
  const infeeds = (lookup(vessel).circuitsFedFrom.get(pointTag) ?? []).flatMap(({ tag, normalState }) => {
    const infeed = before.feeding.byCircuit.get(tag)?.infeed ?? null
    return infeed === null || normalState === 'open' ? [] : [infeed.currentA]
  })
  return infeeds.reduce<number | null>((sum, currentA) => (sum === null || currentA === null ? null : sum + currentA), 0)
}

/** What more data would settle. A rating that is missing is a gap of the panel or busbar, not of its feeder once more. */
function gapsOf(vessel: Vessel, byFeeder: ReadonlyMap<Tag, FeederReserve>, byPoint: ReadonlyMap<Tag, PointReserve>): ReserveResults['notAssessed'] {
  const { busbars } = lookup(vessel)
  const ofPoints = [...byPoint].filter(([tag]) => busbars.get(tag)?.polarity !== 'negative')
  const said = new Set(ofPoints.flatMap(([, { missing }]) => missing))
  return [...ofPoints, ...[...byFeeder].map(([tag, { missing }]) => [tag, { missing: missing.filter(reason => !said.has(reason)) }] as const)]
    .flatMap(([subjectTag, { missing }]) => missing.map(reason => ({ subjectTag, reason })))
}
