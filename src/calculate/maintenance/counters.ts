/** Counters of running hours: their readings, the hours in a year, and what they showed on a day. */
import { grouped } from '../../model/lookup.js'
import type { Counter } from '../../model/results/maintenance.js'
import type { RunningHours, Tag, Vessel } from '../../model/vessel.js'
import { daysBetween } from '../../units/calendar-date.js'
import { runMethod } from '../run-method.js'
import { hoursPerYearMethod } from './hours-per-year.calc.js'

type Reading = Counter['readings'][number]

export function countersOf({ runningHours }: Vessel): ReadonlyMap<Tag, Counter> {
  return new Map([...grouped(runningHours, ({ itemTag }) => [itemTag])].map(([itemTag, read]): [Tag, Counter] => {
    const sorted = read.toSorted(byDay)
    const readings = sorted.map(({ date, runningH }): Reading => ({ on: date, runningH }))
    const entered = sorted.findLast(({ perYearH }) => perYearH !== null)?.perYearH ?? null
    if (entered !== null) return [itemTag, { itemTag, readings, perYearH: entered, rate: 'entered' }]
    const running = sinceReset(readings)
    const [first, last] = [running[0]!, running.at(-1)!]
    const rate = runMethod(hoursPerYearMethod, { firstReadH: first.runningH, lastReadH: last.runningH, elapsedDays: daysBetween(first.on, last.on) })
    return [itemTag, { itemTag, readings, perYearH: rate.status === 'computed' ? rate.output.perYearH : null, rate }]
  }))
}

/** Two readings of one day stand in the order in which the counter ran. */
const byDay = (a: RunningHours, b: RunningHours): number => (a.date === b.date ? a.runningH - b.runningH : a.date < b.date ? -1 : 1)

/** Readings at which a counter shows less than before: it was changed, or somebody misread it. */
export const backwards = (readings: readonly Reading[]): readonly { readonly before: Reading; readonly after: Reading }[] =>
  readings.slice(1).flatMap((after, i) => (after.runningH < readings[i]!.runningH ? [{ before: readings[i]!, after }] : []))

/** The readings since the counter last ran backwards. */
const sinceReset = (readings: readonly Reading[]): readonly Reading[] => readings.slice(readings.indexOf(backwards(readings).at(-1)?.after ?? readings[0]!))

/** What it showed on a day: as read, or in proportion between two readings; 0 where the day lies before the first; null after the last. */
export function shownOn({ readings }: Counter, day: string): number | null {
  const next = readings.findIndex(({ on }) => on >= day)
  if (next === -1) return null
  const [before, after] = [readings[next - 1], readings[next]!]
  if (after.on === day) return after.runningH
  if (before === undefined) return 0
  return before.runningH + ((after.runningH - before.runningH) * daysBetween(before.on, day)) / daysBetween(before.on, after.on)
}
