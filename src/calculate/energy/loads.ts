/** What each load takes in an operating mode, from which battery, hour by hour. */
import { lookup } from '../../model/lookup.js'
import type { FeedingResults } from '../../model/results.js'
import type { EnergyGap, LoadDay } from '../../model/results/energy.js'
import type { Circuit, Duty, Equipment, Tag, Vessel } from '../../model/vessel.js'
import { runMethod } from '../run-method.js'
import { loadCurrent } from '../feeding/load-current.calc.js'
import { dailyChargeMethod } from './daily-charge.calc.js'
import { type ItemDuty, hoursOfDay, type ModeDuties, shareOfHour } from './duties.js'
import { currentRatio, putInThrough, type Supplied, type SupplyFinder } from './supplies.js'

export interface LoadRun { readonly day: LoadDay; readonly averageAByHour: readonly number[] }
export interface ModeLoads { readonly runs: readonly LoadRun[]; readonly gaps: readonly EnergyGap[] }

type OwnCurrent = Pick<LoadDay, 'ownCurrentA' | 'ownFrom' | 'ownVoltageV'>

/** `runningByHour`: sources that run in each hour of the day. */
export function loadsOf(
  vessel: Vessel, feeding: FeedingResults, modeTag: Tag, duties: ModeDuties, finder: SupplyFinder, runningByHour: readonly ReadonlySet<Tag>[],
): ModeLoads {
  const { equipment, circuits, batteries } = lookup(vessel)
  const gaps: EnergyGap[] = []
  const runs = duties.items.flatMap((row): readonly LoadRunBase[] => {
    const found = asLoad(row)
    if (found === null) return []
    if (typeof found === 'string') {
      gaps.push({ subjectTag: row.itemTag, modeTag, reason: found })
      return []
    }
    return bySupply(row, found.circuit, found.own)
  })
  return { runs: withSums(runs), gaps }

  /** Null for a source; a reason in words. */
  function asLoad({ itemTag, duty, wholeCircuit }: ItemDuty): { circuit: Circuit; own: OwnCurrent } | string | null {
    if (wholeCircuit) {
      const circuit = circuits.get(itemTag)!
      const voltageV = feeding.byCircuit.get(itemTag)?.nominalVoltageV ?? null
      return voltageV === null ? `no source is reached from ${itemTag}` : { circuit, own: { ownCurrentA: duty.currentA!, ownFrom: 'given for the circuit', ownVoltageV: voltageV } }
    }
    const item = equipment.get(itemTag)
    if (item === undefined) return batteries.has(itemTag) ? 'a battery is no load; its charging sources and loads have duties' : 'it is neither equipment nor a circuit'
    if (item.status === 'removed') return 'it has been removed'
    const listing = vessel.circuits.filter(({ loadTags }) => loadTags.includes(itemTag))
    if (item.outputs.length > 0 && (duty.currentA === null || listing.some(circuit => putInThrough(vessel, feeding, circuit).has(itemTag)))) return null
    const circuit = listing.find(({ normalState }) => normalState === 'closed') ?? listing[0]
    if (circuit === undefined) return 'no circuit lists it as a load'
    const voltageV = feeding.byCircuit.get(circuit.tag)?.nominalVoltageV ?? null
    if (voltageV === null) return `no source is reached from ${circuit.tag}, which feeds it`
    const own = ownCurrent(item, duty, voltageV)
    return own === null ? 'neither a current nor a power is recorded for it' : { circuit, own }
  }

  /** One entry for each way in which it is supplied in the course of the day. */
  function bySupply(row: ItemDuty, circuit: Circuit, own: OwnCurrent): readonly LoadRunBase[] {
    const { itemTag, duty } = row
    const byWay = new Map<string, { supplied: Exclude<Supplied, { is: 'none' }>; shares: number[] }>()
    const without = new Map<string, number>()
    for (const hour of hoursOfDay) {
      const share = shareOfHour(duty.periods, hour)
      if (share === 0) continue
      const supplied = finder.ofCircuit(circuit, runningByHour[hour]!)
      const covered = supplied.is === 'none' ? undefined : supplied.passed.find(tag => tag !== itemTag && duties.coveringTags.has(tag))
      if (supplied.is === 'none' || covered !== undefined) {
        const reason = supplied.is === 'none' ? supplied.reason : `it is counted in the current given for ${covered}`
        without.set(reason, (without.get(reason) ?? 0) + share)
        continue
      }
      const key = supplied.is === 'outside' ? '' : [supplied.batteryTag, ...supplied.through.map(({ tag }) => tag)].join(' ')
      const way = byWay.get(key) ?? { supplied, shares: hoursOfDay.map(() => 0) }
      way.shares[hour] = share
      byWay.set(key, way)
    }
    const always = byWay.size === 0 && without.size === 1
    for (const [reason, timeH] of without) gaps.push({ subjectTag: itemTag, modeTag, reason: always ? reason : `for ${timeH} h of the day: ${reason}` })
    return [...byWay.values()].map(({ supplied, shares }): LoadRunBase => {
      const onBattery = supplied.is === 'battery'
      const batteryV = onBattery ? batteries.get(supplied.batteryTag)!.nominalVoltageV : own.ownVoltageV
      const through = onBattery ? supplied.through : []
      const currentA = own.ownCurrentA * currentRatio(own.ownVoltageV, batteryV, through)
      const timeH = shares.reduce((sum, share) => sum + share, 0)
      return {
        itemTag, batteryTag: onBattery ? supplied.batteryTag : null, ...own, through, currentA, timeH, dutyPercent: duty.dutyPercent, batteryV,
        averageAByHour: shares.map(share => (currentA * share * duty.dutyPercent) / 100),
      }
    })
  }
}

type LoadRunBase = Omit<LoadDay, 'charge' | 'energyWh'> & { readonly batteryV: number; readonly averageAByHour: readonly number[] }

/** Typical current first: over a day it is the average that counts. */
function ownCurrent(item: Equipment, duty: Duty, ownVoltageV: number): OwnCurrent | null {
  const { currentTypicalA, currentMaxA, powerW } = item
  if (duty.currentA !== null) return { ownCurrentA: duty.currentA, ownFrom: 'the duty', ownVoltageV }
  if (currentTypicalA !== null) return { ownCurrentA: currentTypicalA, ownFrom: 'typical current', ownVoltageV }
  if (currentMaxA !== null) return { ownCurrentA: currentMaxA, ownFrom: 'maximum current', ownVoltageV }
  return powerW === null ? null : { ownCurrentA: loadCurrent({ powerW, nominalVoltageV: ownVoltageV }).loadCurrentA, ownFrom: 'power', ownVoltageV }
}

/** Largest first, each with what the ones before it take of the same battery carried forward. */
function withSums(loads: readonly LoadRunBase[]): readonly LoadRun[] {
  const carried = new Map<Tag | null, number>()
  const chargeOf = ({ currentA, timeH, dutyPercent }: LoadRunBase): number => currentA * timeH * dutyPercent
  return loads.toSorted((a, b) => chargeOf(b) - chargeOf(a)).map(({ averageAByHour, batteryV, ...load }) => {
    const { currentA, timeH, dutyPercent, batteryTag } = load
    const charge = runMethod(dailyChargeMethod, { currentA, timeH, dutyPercent, carriedAh: carried.get(batteryTag) ?? 0 })
    const { totalAh, chargeAh } = charge.status === 'computed' ? charge.output : { totalAh: carried.get(batteryTag) ?? 0, chargeAh: 0 }
    carried.set(batteryTag, totalAh)
    return { day: { ...load, charge, energyWh: chargeAh * batteryV }, averageAByHour }
  })
}
