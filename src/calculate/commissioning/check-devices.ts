/** Readings of residual-current devices and of batteries. */
import { grouped, isDistributionPoint, lookup } from '../../model/lookup.js'
import type { Battery, Measurement, Tag, Vessel } from '../../model/vessel.js'
import { acRules } from '../../references/basis/ac-rules.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Limit } from '../../findings/finding.js'
import { say } from '../../units/format.js'
import { runMethod } from '../run-method.js'
import { bankOf } from '../sources/bank.js'
import type { Upstream } from '../upstream.js'
import { type Checked, checked, held, recorded } from './checked.js'
import { internalResistanceNotAsRecorded, tripCurrentAboveRating, tripCurrentLow, tripTimeAboveLimit } from './findings.js'
import { resistanceRatioCitation, resistanceRatioMethod } from './internal-resistance-ratio.calc.js'
import type { Place } from './place.js'
import { generalTripTimeMs, residualTripCitation, residualTripMethod } from './residual-trip.calc.js'
import { twoPointMethod } from './two-point-resistance.calc.js'

// --- residual-current devices ----------------------------------------------------------------------------------------
interface ResidualDevice { readonly ratedResidualCurrentA: number | null; readonly tripTimeMs: number | null; readonly wholeCraft: boolean }

/** The device that a tag stands for: a circuit's own protection, or an item; null where it is none. */
export function residualDeviceOf(vessel: Vessel, { feeding }: Pick<Upstream, 'feeding'>, tag: Tag): ResidualDevice | null {
  const { circuits, equipment } = lookup(vessel)
  const circuit = circuits.get(tag)
  const item = equipment.get(tag)
  const of = circuit?.protection ?? item
  if (of === undefined || (of.residualCurrentA === null && of.tripTimeMs === null && item?.kind !== 'residual-current device')) return null
  const passing = circuit !== undefined ? [circuit] : vessel.circuits.filter(each => {
    const feed = feeding.byCircuit.get(each.tag)
    return [...feed?.supplySegments ?? [], ...feed?.segments ?? []].some(({ nearTag, farTag }) => nearTag === tag || farTag === tag)
  })
  return {
    ratedResidualCurrentA: of.residualCurrentA,
    tripTimeMs: of.tripTimeMs,
    // Where nothing is known of its place, the stricter rule.
    wholeCraft: passing.length === 0 || passing.some(({ loadTags }) => loadTags.some(load => isDistributionPoint(vessel, load))),
  }
}

/** What a device must do: trip between these residual currents, and within this time; null where no rule here says. */
export interface ResidualLimits { readonly range: ReturnType<typeof rangeOf>; readonly time: Limit | null }
const rangeOf = ({ ratedResidualCurrentA }: ResidualDevice) =>
  (ratedResidualCurrentA === null ? null : runMethod(residualTripMethod, { ratedResidualCurrentA }))

export function residualLimits(basis: Basis, device: ResidualDevice, tag: Tag): ResidualLimits {
  const range = rangeOf(device)
  if (range?.status !== 'computed') return { range, time: null }
  const { residualCurrentA, residualTripTimeMs } = acRules[basis.id]
  const byRule: Limit = device.wholeCraft && range.input.ratedResidualCurrentA <= residualCurrentA.value ? residualTripTimeMs : generalTripTimeMs
  const { tripTimeMs } = device
  // The shorter of the two decides.
  const own = tripTimeMs !== null && tripTimeMs < byRule.value
  return { range, time: own ? { relation: 'at most', value: tripTimeMs, citation: recorded(`longest trip time of ${tag}`) } : byRule }
}

export function residualChecks(vessel: Vessel, basis: Basis, before: Upstream, measurement: Measurement): readonly Checked[] {
  const { residualCurrentA, tripTimeMs, subjectTag } = measurement
  const device = residualDeviceOf(vessel, before, subjectTag)
  const limits: ResidualLimits = device === null ? { range: null, time: null } : residualLimits(basis, device, subjectTag)
  return [
    ...(residualCurrentA === null ? [] : [tripCurrentCheck(measurement, residualCurrentA, limits)]),
    ...(tripTimeMs === null ? [] : [tripTimeCheck(measurement, tripTimeMs, limits)]),
  ]
}

/** Why there is nothing to hold a reading against. */
const gapOf = ({ range }: ResidualLimits, tag: Tag): string =>
  (range?.status === 'not computed' ? range.reason : `no rated residual current is recorded for ${tag}`)

function tripCurrentCheck(measurement: Measurement, residualCurrentA: number, limits: ResidualLimits): Checked {
  const { subjectTag } = measurement
  const about = {
    measurement, loadTag: null, kind: 'trip current', field: 'residualCurrentA', of: `trip current of ${subjectTag}`, measured: { quantity: 'residualCurrentA', value: residualCurrentA },
  } as const
  const { range } = limits
  if (range?.status !== 'computed') return checked({ ...about, gaps: [gapOf(limits, subjectTag)] })
  const { leastTripCurrentA, mostTripCurrentA } = range.output
  return checked({
    ...about,
    workings: [range],
    calculated: { quantity: 'residualCurrentA', least: leastTripCurrentA, most: mostTripCurrentA },
    limits: [
      held('residualCurrentA', residualCurrentA, { relation: 'at most', value: mostTripCurrentA, citation: residualTripCitation }, tripCurrentAboveRating),
      held('residualCurrentA', residualCurrentA, { relation: 'at least', value: leastTripCurrentA, citation: residualTripCitation }, tripCurrentLow),
    ],
  })
}

function tripTimeCheck(measurement: Measurement, tripTimeMs: number, limits: ResidualLimits): Checked {
  const { subjectTag } = measurement
  const { time } = limits
  return checked({
    measurement, loadTag: null, kind: 'trip time', field: 'tripTimeMs', of: `trip time of ${subjectTag}`, measured: { quantity: 'tripTimeMs', value: tripTimeMs },
    ...(time === null ? { gaps: [gapOf(limits, subjectTag)] } : { limits: [held('tripTimeMs', tripTimeMs, time, tripTimeAboveLimit)] }),
  })
}

// --- batteries -------------------------------------------------------------------------------------------------------
export function internalResistanceChecks(measurement: Measurement, { battery }: Place): readonly Checked[] {
  const { internalResistanceMilliOhm } = measurement
  return internalResistanceMilliOhm === null || battery === null ? [] : [resistanceCheck(measurement, battery, internalResistanceMilliOhm, [])]
}

/**
 * Voltages of a battery under load: each belongs with a reading of the same day at another current. The least and the
 * greatest current make the pair.
 */
export function twoPointChecks(measurements: readonly Measurement[], battery: Battery): readonly Checked[] {
  const pairs = measurements.filter((each): each is Pair => each.voltageV !== null && each.currentA !== null)
  const byDay = grouped(pairs, ({ date }) => [date ?? ''])
  return [...byDay.values()].flatMap(ofDay => {
    const [first, ...more] = ofDay.toSorted((a, b) => a.currentA - b.currentA)
    const second = more.at(-1)
    if (first === undefined) return []
    if (second === undefined) return first.currentA > 0 ? [alone(first)] : []
    const points = runMethod(twoPointMethod, {
      firstVoltageV: first.voltageV, firstCurrentA: first.currentA, secondVoltageV: second.voltageV, secondCurrentA: second.currentA,
    })
    return points.status === 'computed'
      ? [resistanceCheck(second, battery, points.output.measuredResistanceMilliOhm, [points])]
      : [alone(second, points.reason)]
  })
}
type Pair = Measurement & { readonly voltageV: number; readonly currentA: number }

const alone = (measurement: Pair, reason = 'it takes a second reading of the same day at another current to get the internal resistance'): Checked => checked({
  measurement, loadTag: null, kind: 'voltage', field: 'voltageV', of: `voltage under load at ${measurement.subjectTag}`,
  measured: { quantity: 'voltageV', value: measurement.voltageV }, gaps: [reason],
})

function resistanceCheck(measurement: Measurement, battery: Battery, measuredResistanceMilliOhm: number, workings: Checked['check']['workings']): Checked {
  const about = {
    measurement, loadTag: null, kind: 'internal resistance', field: measurement.internalResistanceMilliOhm === null ? 'voltageV' : 'internalResistanceMilliOhm',
    of: `internal resistance of ${battery.tag}`, measured: { quantity: 'internalResistanceMilliOhm', value: measuredResistanceMilliOhm },
  } as const
  const recordedResistanceMilliOhm = bankOf(battery).internalResistanceMilliOhm
  if (recordedResistanceMilliOhm === null) return checked({ ...about, workings, gaps: [`no internal resistance is recorded for ${battery.tag}`] })
  const ratio = runMethod(resistanceRatioMethod, { measuredResistanceMilliOhm, recordedResistanceMilliOhm })
  if (ratio.status === 'not computed') return checked({ ...about, workings, gaps: [ratio.reason] })
  const tolerance = (relation: Limit['relation'], value: number) => held(
    'internalResistanceMilliOhm', measuredResistanceMilliOhm, { relation, value, citation: resistanceRatioCitation }, internalResistanceNotAsRecorded,
    { context: { against: `recorded ${say('internalResistanceMilliOhm', recordedResistanceMilliOhm)}` } },
  )
  return checked({
    ...about,
    workings: [...workings, ratio],
    calculated: { quantity: 'internalResistanceMilliOhm', least: recordedResistanceMilliOhm, most: recordedResistanceMilliOhm },
    tolerances: [tolerance('at least', ratio.output.lowestAcceptedMilliOhm), tolerance('at most', ratio.output.highestAcceptedMilliOhm)],
  })
}
