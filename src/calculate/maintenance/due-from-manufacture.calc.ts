import { commonPractice } from '../../references/bibliography.js'
import { addMonths, dateOfParts, type DateParts, dateParts } from '../../units/calendar-date.js'
import type { Method } from '../method.js'

/** A year of 0 for the last time: never done. */
export type ManufactureDueInput = DateParts<'made'> & DateParts<'last'> & Readonly<{ monthsCount: number }>
export type ManufactureDueOutput = DateParts<'due'>

/**
 * The day on which a task falls due that comes again at fixed ages of a thing, such as the sixth and twelfth year of an extinguisher.
 *
 * Formula   never done: made + n. Done: the last of made + n, made + 2n, … that lies not after last + n; where that lies
 *           less than half of n after the last time, which was then done ahead of its age, last + n itself
 * Units     calendar dates, n in months
 * Source    common-practice: ages are counted from the date of manufacture, and never lie further apart than the interval
 * Assumes   what is done ahead of an age counts for it from half of the interval on
 */
export function manufactureDue(q: ManufactureDueInput): ManufactureDueOutput {
  const made = dateOfParts('made', q)
  if (q.lastYearNumber === 0) return dateParts('due', addMonths(made, q.monthsCount))
  const last = dateOfParts('last', q)
  const latest = addMonths(last, q.monthsCount)
  const age = lastAgeUpTo(made, latest, q.monthsCount)
  return dateParts('due', age > addMonths(last, Math.floor(q.monthsCount / 2)) ? age : latest)
}

function lastAgeUpTo(made: string, day: string, monthsCount: number): string {
  let count = 0
  while (addMonths(made, (count + 1) * monthsCount) <= day) count += 1
  return addMonths(made, count * monthsCount)
}

const date = <P extends string>(prefix: P, year: number, month: number, day: number): DateParts<P> =>
  ({ [`${prefix}YearNumber`]: year, [`${prefix}MonthNumber`]: month, [`${prefix}DayNumber`]: day }) as DateParts<P>
export const neverDone: DateParts<'last'> = date('last', 0, 0, 0)

export const manufactureDueMethod: Method<ManufactureDueInput, ManufactureDueOutput> = {
  id: 'maintenance-due-from-manufacture',
  title: 'Next due by age from manufacture',
  formula: String.raw`t_{\mathrm{due}} = \max\{\,t_{\mathrm{made}} + k\,n \le t_{\mathrm{last}} + n\,\} \;\text{ if after } t_{\mathrm{last}} + n/2, \text{ else } t_{\mathrm{last}} + n`,
  symbols: {
    madeYearNumber: String.raw`t_{\mathrm{made}}`, madeMonthNumber: String.raw`t_{\mathrm{made}}`, madeDayNumber: String.raw`t_{\mathrm{made}}`,
    lastYearNumber: String.raw`t_{\mathrm{last}}`, lastMonthNumber: String.raw`t_{\mathrm{last}}`, lastDayNumber: String.raw`t_{\mathrm{last}}`, monthsCount: 'n',
    dueYearNumber: String.raw`t_{\mathrm{due}}`, dueMonthNumber: String.raw`t_{\mathrm{due}}`, dueDayNumber: String.raw`t_{\mathrm{due}}`,
  },
  citations: [commonPractice('ages counted from the date of manufacture')],
  assumes: ['A year of 0 for the last time stands for never done: then it is due at the first age, however long ago that was.', 'What is done ahead of an age counts for it from half of the interval on.'],
  compute: manufactureDue,
  notApplicable: q => (q.lastYearNumber === 0 || dateOfParts('last', q) >= dateOfParts('made', q) ? null : 'it is recorded as done before the thing was made'),
  checks: [
    { origin: 'by hand', place: 'extinguisher made 1 May 2015, examined inside every 72 months, never done: 6 years', input: { ...date('made', 2015, 5, 1), ...neverDone, monthsCount: 72 }, expected: date('due', 2021, 5, 1), tolerance: 0 },
    { origin: 'by hand', place: 'the same, done on the day: 12 years, the day of the hydrostatic test', input: { ...date('made', 2015, 5, 1), ...date('last', 2021, 5, 1), monthsCount: 72 }, expected: date('due', 2027, 5, 1), tolerance: 0 },
    { origin: 'by hand', place: 'done 19 days late: the age of 12 years stays', input: { ...date('made', 2015, 5, 1), ...date('last', 2021, 5, 20), monthsCount: 72 }, expected: date('due', 2027, 5, 1), tolerance: 0 },
    { origin: 'by hand', place: 'done 2 months early: 72 months after that, not after the age', input: { ...date('made', 2015, 5, 1), ...date('last', 2021, 3, 1), monthsCount: 72 }, expected: date('due', 2027, 3, 1), tolerance: 0 },
    { origin: 'by hand', place: 'made 1 January 2021, 48 months', input: { ...date('made', 2021, 1, 1), ...neverDone, monthsCount: 48 }, expected: date('due', 2025, 1, 1), tolerance: 0 },
  ],
}
