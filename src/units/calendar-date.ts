/** Days of the calendar, year-month-day, as people count them. No time of day, no time zone. */
import { Temporal } from 'temporal-polyfill'

/** A date by its parts, as quantities: `dateParts('due', '2026-02-28')`. */
export type DateParts<P extends string> = Readonly<Record<`${P}YearNumber` | `${P}MonthNumber` | `${P}DayNumber`, number>>

export function dateParts<P extends string>(prefix: P, date: string): DateParts<P> {
  const { year, month, day } = Temporal.PlainDate.from(date)
  return { [`${prefix}YearNumber`]: year, [`${prefix}MonthNumber`]: month, [`${prefix}DayNumber`]: day } as DateParts<P>
}

/** The date whose parts these are. */
export const dateOfParts = <P extends string>(prefix: P, parts: DateParts<P>): string => {
  const part = (name: 'Year' | 'Month' | 'Day'): number => parts[`${prefix}${name}Number`]
  return new Temporal.PlainDate(part('Year'), part('Month'), part('Day')).toString()
}

/** A month later than 31 January is the last day of February: a day that the month does not have becomes its last. */
export const addMonths = (date: string, monthsCount: number): string => Temporal.PlainDate.from(date).add({ months: monthsCount }).toString()

export const addDays = (date: string, daysCount: number): string => Temporal.PlainDate.from(date).add({ days: daysCount }).toString()

/** Days from the first to the second; negative where the second is earlier. */
export const daysBetween = (from: string, to: string): number => Temporal.PlainDate.from(from).until(to, { largestUnit: 'day' }).days

export const dayOfMonth = (date: string): number => Temporal.PlainDate.from(date).day
