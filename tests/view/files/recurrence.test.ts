/** Months that lack the day: what a calendar makes of the rule, against the arithmetic of the due dates. */
import { noOccasion } from '../../../src/calculate/occasion.js'
import nodeIcal, { type VEvent } from 'node-ical'
import { expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { readContent } from '../../../src/load/read-content.js'
import { bases } from '../../../src/references/basis/bases.js'
import { calendarFile } from '../../../src/view/files/calendar.js'
import { anEquipment, aTask, aVessel } from '../../support/vessel-builder.js'
import { contextOf } from '../pages/support.js'

const content = await readContent()

function daysOf(deliveredOn: string, everyMonthsCount: number, count: number): readonly string[] {
  const blank = aVessel()
  const vessel = aVessel({
    identity: { ...blank.identity, deliveredOn }, document: { ...blank.document, issuedOn: deliveredOn },
    equipment: [anEquipment({ tag: 'X1' })], maintenanceTasks: [aTask({ key: 'own-task', title: 'Own', itemTags: ['X1'], everyMonthsCount })],
  })
  const results = calculate(vessel, bases.iso, { ...noOccasion, asOf: null, generalTasks: content.maintenanceTasks })
  const { text } = calendarFile(contextOf(vessel, { results }))!
  const [event] = Object.values(nodeIcal.sync.parseICS(text)).filter((part): part is VEvent => (part as { type?: string }).type === 'VEVENT')
  return event!.rrule!.all((_, i) => i < count).map(day => day.toISOString().slice(0, 10))
}

it.each([
  // 31 December and a month: 31 January, then the last day of each month, leap year or not.
  ['2027-12-31', 1, ['2028-01-31', '2028-02-29', '2028-03-31', '2028-04-30']],
  ['2026-12-30', 1, ['2027-01-30', '2027-02-28', '2027-03-30']],
  // Six months after 30 November is 30 May; the thirtieth stays.
  ['2026-11-30', 6, ['2027-05-30', '2027-11-30', '2028-05-30']],
  ['2026-05-29', 12, ['2027-05-29', '2028-05-29']],
] as const)('delivered on %s, every %d months', (deliveredOn, every, days) => {
  expect(daysOf(deliveredOn, every, days.length)).toEqual(days)
})
