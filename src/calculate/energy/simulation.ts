/**
 * The state of charge of every battery, hour by hour. In each hour the sources carry the loads first; what they give
 * beyond charges the battery as far as it takes it, what they lack the battery gives.
 */
import { grouped } from '../../model/lookup.js'
import type { ChargeRun, HourRow } from '../../model/results/energy.js'
import type { OperatingMode, Tag } from '../../model/vessel.js'
import type { Store } from './battery-facts.js'
import { chargeTaken } from './charge-taken.calc.js'
import type { SourceRun } from './charging.js'
import { discharge } from './discharge.calc.js'
import type { LoadRun } from './loads.js'

export interface SimulationInput {
  readonly mode: Pick<OperatingMode, 'daysCount' | 'startChargePercent'>
  readonly stores: readonly Store[]
  readonly loads: readonly LoadRun[]
  readonly sources: readonly SourceRun[]
}

export function simulate({ mode, stores, loads, sources }: SimulationInput): ReadonlyMap<Tag, ChargeRun> {
  const charge = new Map(stores.map(store => [store.tag, mode.startChargePercent]))
  const rows = new Map(stores.map(({ tag }): [Tag, HourRow[]] => [tag, []]))
  const storeOf = new Map(stores.map(store => [store.tag, store]))

  const intoStore = grouped(sources, ({ day: { batteryTag } }) => (batteryTag === null ? [] : [batteryTag]))
  const outOfStore = grouped(sources, ({ takesByHour }) => takesByHour.flatMap(takes => takes?.batteryTag ?? []))

  const loadByHour = sumByHour(loads.map(({ day: { batteryTag }, averageAByHour }) => [batteryTag, averageAByHour]))
  const offeredByHour = sumByHour(sources.map(({ day: { batteryTag }, offeredAByHour }) => [batteryTag, offeredAByHour]))

  for (let number = 0; number < mode.daysCount * 24; number++) {
    const hour = number % 24
    const settled = new Map<Tag, HourRow>()
    const underWay = new Set<Tag>()
    const taken = new Map<SourceRun, number>()

    /**
     * What a source may offer: no more than the battery it takes from still has. That battery comes after the ones it
     * charges; where it was settled before, converters run in a ring, and this one is taken to rest.
     */
    const offerOf = (source: SourceRun): number => {
      const offered = source.offeredAByHour[hour]!
      const takes = source.takesByHour[hour] ?? null
      if (takes === null || offered === 0) return offered
      const giver = storeOf.get(takes.batteryTag)
      if (giver === undefined) return offered
      if (settled.has(giver.tag)) return 0
      const has = (charge.get(giver.tag)! / 100) * giver.capacityAh + at(offeredByHour, giver.tag, hour) - at(loadByHour, giver.tag, hour)
      return Math.min(offered, Math.max(0, has) / takes.ratio)
    }

    const settle = (store: Store): HourRow => {
      const known = settled.get(store.tag)
      if (known !== undefined) return known
      underWay.add(store.tag)
      // Batteries that this one charges come first, since they say how much they take.
      let convertedA = 0
      for (const source of outOfStore.get(store.tag) ?? []) {
        const takes = source.takesByHour[hour] ?? null
        const receiver = takes?.batteryTag === store.tag ? storeOf.get(source.day.batteryTag) : undefined
        if (receiver === undefined || underWay.has(receiver.tag)) continue
        settle(receiver)
        convertedA += (taken.get(source) ?? 0) * takes!.ratio
      }
      const offers = new Map((intoStore.get(store.tag) ?? []).map(source => [source, offerOf(source)]))
      const offeredA = sum([...offers.values()])
      const row = hourOf(store, charge.get(store.tag)!, at(loadByHour, store.tag, hour) + convertedA, offeredA)
      for (const [source, offer] of offers) taken.set(source, offeredA === 0 ? 0 : (row.givenA * offer) / offeredA)
      underWay.delete(store.tag)
      settled.set(store.tag, row)
      return row
    }

    for (const store of stores) settle(store)
    for (const [tag, row] of settled) {
      rows.get(tag)!.push(row)
      charge.set(tag, row.chargePercent)
    }
  }
  return new Map(stores.map(store => [store.tag, runOf(store, mode.startChargePercent, rows.get(store.tag)!)]))
}

/** One hour of one battery. */
export function hourOf(store: Store, startPercent: number, loadA: number, offeredA: number): HourRow {
  if (offeredA >= loadA) {
    const { takenAh, endPercent } = chargeTaken({ ...store, offeredA: offeredA - loadA, timeH: 1, startPercent })
    return { loadA, offeredA, givenA: loadA + takenAh, intoA: takenAh, outOfA: 0, drawnAh: 0, unservedA: 0, chargePercent: endPercent }
  }
  const wantedA = loadA - offeredA
  const { drawnAh: wantedAh } = discharge({ ...store, currentA: wantedA, timeH: 1 })
  const heldAh = (startPercent / 100) * store.capacityAh
  const served = Math.min(1, heldAh / wantedAh)
  const drawnAh = Math.min(wantedAh, heldAh)
  return {
    loadA, offeredA, givenA: offeredA, intoA: 0, outOfA: wantedA * served, drawnAh, unservedA: wantedA * (1 - served),
    chargePercent: served < 1 ? 0 : (100 * (heldAh - drawnAh)) / store.capacityAh,
  }
}

function runOf({ depthOfDischargePercent }: Store, startPercent: number, hours: readonly HourRow[]): ChargeRun {
  const lowestPercent = hours.reduce((lowest, { chargePercent }) => Math.min(lowest, chargePercent), startPercent)
  return {
    startPercent, limitPercent: 100 - depthOfDischargePercent, hours, lowestPercent,
    lowestHourNumber: hours.findIndex(({ chargePercent }) => chargePercent === lowestPercent) + 1,
    emptyHoursCount: hours.filter(({ unservedA }) => unservedA > 0).length,
  }
}

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** Currents of an hour by battery; what hangs on none is left out. */
function sumByHour(currents: readonly (readonly [Tag | null, readonly number[]])[]): ReadonlyMap<Tag, readonly number[]> {
  const sums = new Map<Tag, number[]>()
  for (const [tag, byHour] of currents) {
    if (tag === null) continue
    const known = sums.get(tag)
    sums.set(tag, known === undefined ? [...byHour] : known.map((value, hour) => value + byHour[hour]!))
  }
  return sums
}
const at = (sums: ReadonlyMap<Tag, readonly number[]>, tag: Tag, hour: number): number => sums.get(tag)?.[hour] ?? 0
