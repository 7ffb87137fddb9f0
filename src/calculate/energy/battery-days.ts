/** What a day of an operating mode means for each battery: use, balance, endurance, time to charge. */
import type { Outcome } from '../../model/results.js'
import type { BatteryDay, BatteryFacts, ChargeRun } from '../../model/results/energy.js'
import type { Tag } from '../../model/vessel.js'
import { batteryChemistries, leadAcidTail } from '../../references/tables/battery-chemistry.js'
import { runMethod } from '../run-method.js'
import { type Store, storeOf } from './battery-facts.js'
import type { SourceRun } from './charging.js'
import { chargingTimeMethod } from './charging-time.calc.js'
import { dailyBalanceMethod } from './daily-balance.calc.js'
import { hoursOfDay } from './duties.js'
import { enduranceMethod } from './endurance.calc.js'
import type { LoadRun } from './loads.js'
import { sum } from './simulation.js'

/** Only batteries that something draws on or charges in the mode. */
export function batteryDays(facts: readonly BatteryFacts[], loads: readonly LoadRun[], sources: readonly SourceRun[], runs: ReadonlyMap<Tag, ChargeRun>): readonly BatteryDay[] {
  return facts.flatMap((battery): BatteryDay[] => {
    const own = loads.filter(({ day }) => day.batteryTag === battery.tag)
    const charging = sources.filter(({ day }) => day.batteryTag === battery.tag)
    const giving = sources.filter(({ takesByHour }) => takesByHour.some(takes => takes?.batteryTag === battery.tag))
    if (own.length === 0 && charging.length === 0 && giving.length === 0) return []
    const loadAh = sum(own.flatMap(({ averageAByHour }) => averageAByHour))
    const store = storeOf(battery)
    const known = 'reason' in store ? null : store
    const without = (method: string): Outcome<never, never> => ({ status: 'not computed', method, reason: 'reason' in store ? store.reason : '' })
    return [{
      batteryTag: battery.tag,
      loadAh,
      loadWh: loadAh * battery.nominalVoltageV,
      offeredAh: sum(charging.map(({ day }) => day.offeredAh)),
      converted: giving.map(({ day: { itemTag }, offeredAByHour, takesByHour }) => ({
        itemTag, takenAh: sum(hoursOfDay.map(hour => convertedA(battery.tag, offeredAByHour, takesByHour, hour))),
      })),
      balance: known === null ? without(dailyBalanceMethod.id) : runMethod(dailyBalanceMethod, balanceOf(known, own, charging, giving)),
      endurance: known === null ? without(enduranceMethod.id) : runMethod(enduranceMethod, {
        loadCurrentA: loadAh / 24, capacityAh: known.capacityAh, ratedTimeH: known.ratedTimeH, peukertNumber: known.peukertNumber, depthOfDischargePercent: known.depthOfDischargePercent,
      }),
      charging: known === null ? null : chargingOf(battery, known, charging, own, giving),
      run: runs.get(battery.tag) ?? null,
    }]
  })
}

/** What a source takes from this battery in an hour for another. */
function convertedA(batteryTag: Tag, offeredAByHour: SourceRun['offeredAByHour'], takesByHour: SourceRun['takesByHour'], hour: number): number {
  const takes = takesByHour[hour] ?? null
  return takes?.batteryTag === batteryTag ? offeredAByHour[hour]! * takes.ratio : 0
}

function balanceOf(store: Store, own: readonly LoadRun[], charging: readonly SourceRun[], giving: readonly SourceRun[]) {
  const nets = hoursOfDay.map(hour => {
    const converted = giving.map(({ offeredAByHour, takesByHour }) => convertedA(store.tag, offeredAByHour, takesByHour, hour))
    return sum(charging.map(({ offeredAByHour }) => offeredAByHour[hour]!)) - sum(own.map(({ averageAByHour }) => averageAByHour[hour]!)) - sum(converted)
  })
  return {
    surplusAh: sum(nets.map(net => Math.min(store.acceptanceA, Math.max(0, net)))),
    chargeEfficiencyPercent: store.chargeEfficiencyPercent,
    shortfallAh: sum(nets.map(net => Math.max(0, -net))),
  }
}

/** By what gives a steady current: the sun is left out. Meanwhile the loads and converters that run in the same hours take their part. */
function chargingOf(
  { chemistry, tag }: BatteryFacts, store: Store, charging: readonly SourceRun[], own: readonly LoadRun[], giving: readonly SourceRun[],
): BatteryDay['charging'] {
  const steady = charging.filter(({ day: { kind, timeH } }) => kind !== 'solar' && timeH > 0)
  if (steady.length === 0) return null
  const running = hoursOfDay.filter(hour => steady.some(({ offeredAByHour }) => offeredAByHour[hour]! > 0))
  const takenA = (hour: number): number => sum(own.map(({ averageAByHour }) => averageAByHour[hour]!))
    + sum(giving.map(({ offeredAByHour, takesByHour }) => convertedA(tag, offeredAByHour, takesByHour, hour)))
  const loadCurrentA = running.length === 0 ? 0 : sum(running.map(takenA)) / running.length
  const leadAcid = chemistry !== null && batteryChemistries[chemistry].leadAcid
  const time = (tailFactor: number) => runMethod(chargingTimeMethod, {
    dischargedAh: (store.depthOfDischargePercent * store.capacityAh) / 100,
    // What gives at other hours does not add.
    sourceCurrentA: Math.max(...hoursOfDay.map(hour => sum(steady.map(({ offeredAByHour }) => offeredAByHour[hour]!)))),
    loadCurrentA,
    acceptanceA: store.acceptanceA,
    chargeEfficiencyPercent: store.chargeEfficiencyPercent,
    tailFactor,
  })
  return {
    sourceTags: [...new Set(steady.map(({ day }) => day.itemTag))],
    least: time(leadAcid ? leadAcidTail.least : 1),
    most: time(leadAcid ? leadAcidTail.most : 1),
  }
}
