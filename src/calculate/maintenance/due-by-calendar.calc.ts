import { commonPractice } from '../../references/bibliography.js'
import { addDays, addMonths, dateOfParts, type DateParts, dateParts } from '../../units/calendar-date.js'
import type { Method } from '../method.js'

export type CalendarDueInput = DateParts<'start'> & Readonly<{ monthsCount: number; daysCount: number }>
export type CalendarDueOutput = DateParts<'due'>

/**
 * The day on which a task falls due again, so many months and days after it was last done.
 *
 * Formula   first the months, keeping the day of the month or taking the month's last, then the days
 * Units     calendar years, months, days; no time of day, no time zone
 * Source    common-practice: a month is a calendar month; the arithmetic is that of a general-purpose library for dates
 * Assumes   what was done on a day counts from that day
 */
export const calendarDue = (q: CalendarDueInput): CalendarDueOutput =>
  dateParts('due', addDays(addMonths(dateOfParts('start', q), q.monthsCount), q.daysCount))

const start = (startYearNumber: number, startMonthNumber: number, startDayNumber: number) => ({ startYearNumber, startMonthNumber, startDayNumber })
const due = (dueYearNumber: number, dueMonthNumber: number, dueDayNumber: number) => ({ dueYearNumber, dueMonthNumber, dueDayNumber })

export const calendarDueMethod: Method<CalendarDueInput, CalendarDueOutput> = {
  id: 'maintenance-due-by-calendar',
  title: 'Next due by the calendar',
  formula: String.raw`(Y, M) = (y, m) + n_{\mathrm{months}} \qquad D = \min(d, \text{last day of } M) \;\text{, then } + n_{\mathrm{days}}`,
  symbols: {
    startYearNumber: 'y', startMonthNumber: 'm', startDayNumber: 'd', monthsCount: String.raw`n_{\mathrm{months}}`, daysCount: String.raw`n_{\mathrm{days}}`,
    dueYearNumber: 'Y', dueMonthNumber: 'M', dueDayNumber: 'D',
  },
  citations: [commonPractice('a month is a calendar month; a day that the month does not have becomes its last')],
  assumes: ['What was done on a day counts from that day.'],
  compute: calendarDue,
  notApplicable: () => null,
  checks: [
    { origin: 'by hand', place: '31 January 2026 and 1 month: February 2026 has 28 days', input: { ...start(2026, 1, 31), monthsCount: 1, daysCount: 0 }, expected: due(2026, 2, 28), tolerance: 0 },
    { origin: 'by hand', place: '31 January 2024 and 1 month: 2024 is a leap year', input: { ...start(2024, 1, 31), monthsCount: 1, daysCount: 0 }, expected: due(2024, 2, 29), tolerance: 0 },
    { origin: 'by hand', place: '10 March 2026 and 12 months', input: { ...start(2026, 3, 10), monthsCount: 12, daysCount: 0 }, expected: due(2027, 3, 10), tolerance: 0 },
    { origin: 'by hand', place: '1 February 2023 and 42 months: 3 years and 6 months', input: { ...start(2023, 2, 1), monthsCount: 42, daysCount: 0 }, expected: due(2026, 8, 1), tolerance: 0 },
    { origin: 'by hand', place: '25 December 2026 and 7 days: December has 31', input: { ...start(2026, 12, 25), monthsCount: 0, daysCount: 7 }, expected: due(2027, 1, 1), tolerance: 0 },
  ],
}
