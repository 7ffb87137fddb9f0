import { commonPractice } from '../../references/bibliography.js'
import { addMonths, dateOfParts, type DateParts, dateParts } from '../../units/calendar-date.js'
import type { Method } from '../method.js'

export type SeasonDueInput = DateParts<'start'> & Readonly<{ seasonMonthNumber: number }>
export type SeasonDueOutput = DateParts<'due'>

/** What is done so long ahead of its season counts for it. Common practice, no source. */
const aheadMonthsCount = 3

/**
 * The day by which a task of a season is to be done: the first of the month in which the boat is launched or laid up.
 *
 * Formula   the first day 1 of month M that lies more than three months after the last time
 * Units     calendar dates
 * Source    common-practice: work of the winter is done before the launch, and counts for it
 * Assumes   one season a year
 */
export function seasonDue(q: SeasonDueInput): SeasonDueOutput {
  const counted = addMonths(dateOfParts('start', q), aheadMonthsCount)
  const inYear = (year: number): string => dateOfParts('due', { dueYearNumber: year, dueMonthNumber: q.seasonMonthNumber, dueDayNumber: 1 })
  const year = Number(counted.slice(0, 4))
  return dateParts('due', inYear(year) > counted ? inYear(year) : inYear(year + 1))
}

const input = (startYearNumber: number, startMonthNumber: number, startDayNumber: number, seasonMonthNumber: number): SeasonDueInput => ({ startYearNumber, startMonthNumber, startDayNumber, seasonMonthNumber })
const due = (dueYearNumber: number, dueMonthNumber: number): SeasonDueOutput => ({ dueYearNumber, dueMonthNumber, dueDayNumber: 1 })

export const seasonDueMethod: Method<SeasonDueInput, SeasonDueOutput> = {
  id: 'maintenance-due-by-season',
  title: 'Next due by season',
  formula: String.raw`t_{\mathrm{due}} = \min\{\,\text{first of month } M > t_{\mathrm{last}} + 3\ \text{months}\,\}`,
  symbols: {
    startYearNumber: String.raw`t_{\mathrm{last}}`, startMonthNumber: String.raw`t_{\mathrm{last}}`, startDayNumber: String.raw`t_{\mathrm{last}}`, seasonMonthNumber: 'M',
    dueYearNumber: String.raw`t_{\mathrm{due}}`, dueMonthNumber: String.raw`t_{\mathrm{due}}`, dueDayNumber: String.raw`t_{\mathrm{due}}`,
  },
  citations: [commonPractice('work of the winter is done before the launch; up to three months ahead it counts for it')],
  assumes: ['The months of launching and laying up are the same each year.'],
  compute: seasonDue,
  notApplicable: () => null,
  checks: [
    { origin: 'by hand', place: 'delivered 29 May 2026, launched in April: the next April', input: input(2026, 5, 29, 4), expected: due(2027, 4), tolerance: 0 },
    { origin: 'by hand', place: 'done 20 March 2027, 12 days ahead: the April after', input: input(2027, 3, 20, 4), expected: due(2028, 4), tolerance: 0 },
    { origin: 'by hand', place: 'done 20 November 2026, laid up in October: the next October', input: input(2026, 11, 20, 10), expected: due(2027, 10), tolerance: 0 },
    { origin: 'by hand', place: 'done 15 December 2026, launched in April: 15 March 2027 lies before 1 April 2027', input: input(2026, 12, 15, 4), expected: due(2027, 4), tolerance: 0 },
  ],
}
