/** What charges which battery in an operating mode, hour by hour. */
import { lookup } from '../../model/lookup.js'
import type { FeedingResults } from '../../model/results.js'
import type { EnergyGap, SourceDay, SunDay } from '../../model/results/energy.js'
import type { Duty, Equipment, Output, Tag, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { runMethod } from '../run-method.js'
import { alternatorOutputMethod } from './alternator-output.calc.js'
import { hoursOfDay, type ModeDuties, shareOfHour } from './duties.js'
import { hotAlternatorPercent } from './practice.js'
import { panelsOf, solarByHour } from './solar.js'
import { currentRatio, putInThrough, type SupplyFinder } from './supplies.js'

/** A way by which an item charges a battery. */
export interface ChargingWay { readonly item: Equipment; readonly circuitTag: Tag; readonly batteryTag: Tag; readonly ratedCurrentA: number | null }

export interface SourceRun {
  readonly day: SourceDay
  readonly offeredAByHour: readonly number[]
  /** Where it takes what it gives out of another battery: which, and how many amperes for one. */
  readonly takesByHour: readonly ({ readonly batteryTag: Tag; readonly ratio: number } | null)[]
}
export interface ModeSources { readonly runs: readonly SourceRun[]; readonly gaps: readonly EnergyGap[] }

export function chargingWays(vessel: Vessel, feeding: FeedingResults): readonly ChargingWay[] {
  const { equipment, batteries } = lookup(vessel)
  return vessel.circuits.flatMap(circuit => {
    const batteryTag = feeding.byCircuit.get(circuit.tag)?.sourceTag ?? null
    if (batteryTag === null || !batteries.has(batteryTag)) return []
    return [...putInThrough(vessel, feeding, circuit)].map(([tag, currentA]) =>
      ({ item: equipment.get(tag)!, circuitTag: circuit.tag, batteryTag, ratedCurrentA: currentA ?? circuit.designCurrentA }))
  })
}

const kindOf = ({ kind }: Equipment): SourceDay['kind'] => {
  switch (kind as EquipmentKindKey) {
    case 'alternator': return 'alternator'
    case 'solar panel': case 'solar charge controller': return 'solar'
    case 'dc-dc converter': return 'converter'
    default: return 'charger'
  }
}

interface Given { readonly currentA: number; readonly from: string; readonly curve: SourceDay['curve'] }

export function sourcesOf(
  vessel: Vessel, modeTag: Tag, duties: ModeDuties, ways: readonly ChargingWay[], finder: SupplyFinder,
  runningByHour: readonly ReadonlySet<Tag>[], sun: SunDay | { readonly reason: string },
): ModeSources {
  const { batteries } = lookup(vessel)
  const gaps: EnergyGap[] = []
  const runs = ways.flatMap(way => duties.items.filter(({ itemTag }) => itemTag === way.item.tag).flatMap(({ duty }): SourceRun[] => {
    const run = way.item.status === 'removed' ? 'it has been removed' : runOf(way, duty)
    if (run === null) return []
    if (typeof run !== 'string') return [run]
    gaps.push({ subjectTag: way.item.tag, modeTag, reason: run })
    return []
  }))
  return { runs, gaps }

  /** Null where the row is for another work of the item: an inverter charger that only inverts in this mode. */
  function runOf(way: ChargingWay, duty: Duty): SourceRun | string | null {
    const kind = kindOf(way.item)
    const supply = hoursOfDay.map(hour => (kind === 'alternator' || kind === 'solar' ? null : finder.ofInput(way.item, way.batteryTag, runningByHour[hour]!)))
    const shares = hoursOfDay.map(hour => (supply[hour]?.is === 'none' ? 0 : shareOfHour(duty.periods, hour)))
    const wanted = hoursOfDay.some(hour => shareOfHour(duty.periods, hour) > 0)
    const reason = supply.find(each => each?.is === 'none')
    if (wanted && shares.every(share => share === 0) && reason?.is === 'none') {
      return way.item.kind === ('inverter charger' satisfies EquipmentKindKey) ? null : `it charges nothing: ${reason.reason}`
    }
    const batteryV = batteries.get(way.batteryTag)!.nominalVoltageV
    const common = { itemTag: way.item.tag, batteryTag: way.batteryTag, kind, timeH: shares.reduce((sum, share) => sum + share, 0), dutyPercent: duty.dutyPercent }
    const day = (offered: readonly number[], given: Given, solar: SourceDay['solar']): SourceRun => ({
      day: { ...common, ...given, offeredAh: offered.reduce((sum, each) => sum + each, 0), solar },
      offeredAByHour: offered,
      takesByHour: supply.map(each => (each?.is === 'battery' ? takenFrom(each) : null)),
    })
    const takenFrom = ({ batteryTag, through }: { readonly batteryTag: Tag; readonly through: Parameters<typeof currentRatio>[2] }) =>
      ({ batteryTag, ratio: currentRatio(batteryV, batteries.get(batteryTag)!.nominalVoltageV, through) })

    if (kind === 'solar' && duty.currentA === null) {
      const panels = panelsOf(vessel, way.item)
      if ('reason' in panels) return panels.reason
      if ('reason' in sun) return sun.reason
      const made = solarByHour(sun, panels.peakPowerW, batteryV, way.ratedCurrentA)
      const offered = made.offeredAByHour.map((current, hour) => (current * shares[hour]! * duty.dutyPercent) / 100)
      const from = way.ratedCurrentA === null ? 'panels and sun' : 'panels and sun, up to its rated output'
      return day(offered, { currentA: Math.max(...made.offeredAByHour), from, curve: null }, { panelTags: panels.tags, output: made.output, cutAh: made.cutAh })
    }
    const given = currentOf(way, duty, kind)
    return typeof given === 'string' ? given : day(shares.map(share => (given.currentA * share * duty.dutyPercent) / 100), given, null)
  }
}

function currentOf({ item, ratedCurrentA }: ChargingWay, duty: Duty, kind: SourceDay['kind']): Given | string {
  if (duty.currentA !== null) return { currentA: duty.currentA, from: 'the duty', curve: null }
  const curve = kind === 'alternator' ? item.outputs.find(output => output.curve.length > 0)?.curve ?? [] : []
  if (curve.length > 0 && duty.speedRpm !== null) return onCurve(curve, duty.speedRpm)
  if (ratedCurrentA === null) return curve.length > 0 ? 'the speed of its engine is not given, and its rated current is not recorded' : 'the current of its output is not recorded'
  return kind === 'alternator'
    ? { currentA: (ratedCurrentA * hotAlternatorPercent) / 100, from: `${hotAlternatorPercent} % of its rated ${ratedCurrentA} A, being hot`, curve: null }
    : { currentA: ratedCurrentA, from: 'its rated output', curve: null }
}

function onCurve(curve: Output['curve'], speedRpm: number): Given | string {
  const points = curve.toSorted((a, b) => a.speedRpm - b.speedRpm)
  const first = points[0]!
  const last = points.at(-1)!
  if (speedRpm < first.speedRpm) return { currentA: 0, from: `its curve begins at ${first.speedRpm} a minute`, curve: null }
  if (speedRpm >= last.speedRpm) return { currentA: last.currentA, from: 'the last point of its curve', curve: null }
  const upper = points.findIndex(point => point.speedRpm > speedRpm)
  const [below, above] = [points[upper - 1]!, points[upper]!]
  const outcome = runMethod(alternatorOutputMethod, {
    speedRpm, lowerSpeedRpm: below.speedRpm, lowerCurrentA: below.currentA, upperSpeedRpm: above.speedRpm, upperCurrentA: above.currentA,
  })
  return outcome.status === 'computed' ? { currentA: outcome.output.outputCurrentA, from: `its curve at ${speedRpm} a minute`, curve: outcome } : outcome.reason
}
