/** Where a new load could be taken from: every panel, module, fuse block and busbar, with what it would take and why. */
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Computed, Results } from '../../model/results.js'
import type { FeederChange, PointReserve, ReserveVerdict } from '../../model/results/reserve.js'
import type { LoadClass, SupplyForm, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { exceeds } from '../compare.js'
import { currentAboveCapacity, ratingBelowLoad } from '../conductors/findings.js'
import { runMethod } from '../run-method.js'
import type { Place } from '../wireways/places.js'
import { feedersWith, verdictOfAll } from './added-load.js'
import { type DailyChargeInput, dailyChargeMethod, type DailyChargeOutput } from '../energy/daily-charge.calc.js'
import { insulationOnBoard, type NewCircuit, type Proposal, withNewCircuit } from './new-circuit.js'
import { type NewProtection, newProtection } from './new-protection.js'
import { placeFor } from './place-named.js'
import { byVerdict, verdictBy } from './verdicts.js'

export interface PlaceRequest {
  readonly currentA: number
  /** Share of the current that counts in the feeders above, 0 to 1. */
  readonly demandFactor: number
  /** Where the load is to be: a zone, a wireway point, or any item with a place. */
  readonly atTag: Tag
  readonly nominalVoltageV: number
  readonly form: SupplyForm
  readonly loadClass: LoadClass
  /** It runs for hours on end. */
  readonly continuous: boolean
  /** Hours in which it runs, of each day; null: not asked. */
  readonly dailyH: number | null
}

export interface PlaceAnswer {
  readonly pointTag: Tag
  readonly verdict: ReserveVerdict
  /** Why it does not fit, or is not assessed. */
  readonly reasons: readonly string[]
  readonly reserve: PointReserve
  /** From the one next above upwards. */
  readonly feeders: readonly FeederChange[]
  readonly protection: NewProtection | null
  readonly insulationC: number | null
  readonly circuit: NewCircuit | null
  readonly daily: DailyDraw | null
}

export interface DailyDraw {
  readonly batteryTag: Tag
  readonly charge: Computed<DailyChargeInput, DailyChargeOutput>
  readonly capacityAh: number | null
}

/**
 * Every distribution point, best place first: those that fit, by voltage drop, then those of which something is not
 * known, then those that do not fit.
 *
 * Errors   a fault when the tag stands for no place; `placeNamed` tells
 */
export function placesFor(vessel: Vessel, basis: Basis, results: PlaceResults, request: PlaceRequest): readonly PlaceAnswer[] {
  const at = placeFor(vessel, request.atTag)
  const { busbars } = lookup(vessel)
  const answers = [...results.reserve.byPoint.values()].filter(({ tag }) => busbars.get(tag)?.polarity !== 'negative')
    .map(reserve => answerAt({ vessel, basis, results, request, at }, reserve))
  return answers.toSorted((a, b) => byVerdict(a, b) || dropOf(a) - dropOf(b))
}

const dropOf = ({ circuit }: PlaceAnswer): number => circuit?.drop?.voltageDropPercent ?? Number.MAX_VALUE

/** What of the results it goes by. */
export type PlaceResults = Pick<Results, 'sources' | 'feeding' | 'reserve' | 'findings'>

interface Asked {
  readonly vessel: Vessel
  readonly basis: Basis
  readonly results: PlaceResults
  readonly request: PlaceRequest
  readonly at: Place
}

function answerAt(asked: Asked, reserve: PointReserve): PlaceAnswer {
  const { vessel, results, request } = asked
  const bare: Omit<PlaceAnswer, 'verdict' | 'reasons'> = {
    pointTag: reserve.tag, reserve, feeders: [], protection: null, insulationC: null, circuit: null, daily: null,
  }
  const not = (verdict: ReserveVerdict, reason: string, known = bare): PlaceAnswer => ({ ...known, verdict, reasons: [reason] })
  const { nominalVoltageV, supplyForm } = reserve
  if (nominalVoltageV === null || supplyForm === null) return not('not assessed', reserve.missing[0] ?? 'no source is found for it')
  if (nominalVoltageV !== request.nominalVoltageV || supplyForm !== request.form) return not('does not fit', 'it has another voltage')
  if (reserve.kind === 'panel' && reserve.freeWays?.length === 0) return not('does not fit', 'no way is free')

  const feeders = feedersWith(vessel, results.feeding.byCircuit, results.reserve.byFeeder, reserve.chain, request)
  const daily = dailyDraw(vessel, results, reserve, request)
  const protection = newProtection(vessel, reserve.tag, request.currentA, request.continuous)
  if ('reason' in protection) return not('does not fit', protection.reason, { ...bare, feeders, daily })
  const insulationC = insulationOnBoard(vessel, supplyForm)
  if (insulationC === null) return not('not assessed', 'no cable type on board tells which insulation a new cable would have', { ...bare, feeders, daily, protection })
  const proposal: Proposal = { pointTag: reserve.tag, form: supplyForm, at: asked.at, request, protection, insulationC, feeders }
  const circuit = withNewCircuit(vessel, asked.basis, results, proposal)
  const against = againstOf(proposal, circuit)
  const unknown = unknownOf(reserve, feeders, circuit)
  return {
    ...bare, feeders, daily, protection, insulationC, circuit,
    ...verdictBy(against, unknown),
  }
}

/** Every limit that would be passed; what is said of a feeder is not said again as a finding. */
function againstOf({ feeders, request }: Proposal, circuit: NewCircuit): readonly string[] {
  const over = feeders.map(({ circuitTag, limits }) => ({ circuitTag, passed: limits.filter(({ within }) => !within) })).filter(({ passed }) => passed.length > 0)
  const said = new Set(over.flatMap(({ passed }) => passed.flatMap(({ tag }) => [`${ratingBelowLoad.id} ${tag}`, `${currentAboveCapacity.id} ${tag}`])))
  return [
    ...over.map(({ circuitTag, passed }) => {
      const parts = passed.map(({ of, tag }) => (of === 'protective device' ? of : `${of} ${tag}`))
      return `feeder ${circuitTag} would carry too much for its ${inWords(parts)}`
    }),
    ...sizeAgainst(circuit, request.nominalVoltageV),
    ...circuit.besides.filter(({ id, subject }) => !said.has(`${id} ${subject.id}`)).map(({ message }) => `elsewhere a limit would be passed: ${message}`),
  ]
}

function sizeAgainst({ advice, feederDropV, dropLimit, size }: NewCircuit, nominalVoltageV: number): readonly string[] {
  const limitV = (dropLimit.value / 100) * nominalVoltageV
  if (feederDropV !== null && exceeds(feederDropV, { ...dropLimit, value: limitV })) return ['the feeders above would lose more voltage than is allowed for the whole way']
  return advice.status === 'computed' && size === null ? ['no standard conductor is large enough for the voltage drop and the current'] : []
}

function unknownOf(reserve: PointReserve, feeders: readonly FeederChange[], { advice, drop, capacity, run }: NewCircuit): readonly string[] {
  const ways = reserve.kind === 'panel' && reserve.freeWays === null ? ['which of its ways are free is not recorded'] : []
  const above = verdictOfAll(feeders) === 'not assessed' ? feeders.flatMap(({ circuitTag, missing }) => missing.map(reason => `feeder ${circuitTag}: ${reason}`)) : []
  if (run.length.status === 'not computed') return [...ways, ...above, run.length.reason]
  if (advice.status === 'not computed') return [...ways, ...above, advice.reason]
  const gaps = [drop === null ? 'the voltage drop is not known' : null, capacity?.outcome.status === 'computed' ? null : 'the current-carrying capacity is not known']
  return [...ways, ...above, ...gaps.filter(gap => gap !== null)]
}

function dailyDraw(vessel: Vessel, results: PlaceResults, { chain }: PointReserve, { currentA, dailyH }: PlaceRequest): DailyDraw | null {
  const source = results.feeding.byCircuit.get(chain[0] ?? '')?.sourceTag
  const battery = lookup(vessel).batteries.get(source ?? '')
  if (battery === undefined || dailyH === null) return null
  const charge = runMethod(dailyChargeMethod, { currentA, timeH: dailyH, dutyPercent: 100, carriedAh: 0 })
  return charge.status === 'computed' ? { batteryTag: battery.tag, charge, capacityAh: results.sources.byBattery.get(battery.tag)?.capacityAh ?? null } : null
}
