/** The calendar, read back by a parser that is not ours and not the one that wrote it. */
import { fileURLToPath } from 'node:url'
import nodeIcal, { type VEvent } from 'node-ical'
import { beforeAll, describe, expect, it } from 'vitest'
import { examine, type Examined, viewOf } from '../../../src/build.js'
import { forEdition } from '../../../src/edition.js'

const sampleFolder = fileURLToPath(new URL('../../../sample-vessel', import.meta.url))

async function calendarOf(asOf: string, change: (examined: Examined) => Examined = same => same): Promise<string> {
  const examined = await examine(sampleFolder, { asOf })
  if (examined.status !== 'examined') throw new Error('the sample vessel has errors')
  const { files } = await viewOf(forEdition(change(examined), 'owner'))
  return files.find(({ file }) => file === 'maintenance.ics')!.text
}

const eventsIn = (text: string): readonly VEvent[] => Object.values(nodeIcal.sync.parseICS(text)).filter((part): part is VEvent => (part as { type?: string }).type === 'VEVENT')
/** Whole days are local midnights for the parser. */
const dayOf = (date: Date): string => [date.getFullYear(), date.getMonth() + 1, date.getDate()].map(part => String(part).padStart(2, '0')).join('-')

let text: string
let events: ReadonlyMap<string, VEvent>
const eventOf = (id: string): VEvent => {
  const event = events.get(`${id}.gb-zqx00041d626@asfitted`)
  if (event === undefined) throw new Error(`no event ${id}`)
  return event
}
beforeAll(async () => {
  text = await calendarOf('2026-12-01')
  events = new Map(eventsIn(text).map(event => [event.uid, event]))
})

describe('the file', () => {
  it('is folded to 75 octets, ends its lines with CRLF, and names no program', () => {
    const lines = text.split('\r\n')
    expect(lines.filter(line => Buffer.byteLength(line) > 75)).toEqual([])
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    expect(text).not.toContain('X-MICROSOFT')
    expect(lines.slice(0, 2)).toEqual(['BEGIN:VCALENDAR', 'VERSION:2.0'])
  })

  it('is the same on whatever day it is built', async () => {
    expect(await calendarOf('2031-05-06')).toBe(text)
  })

  it('has no time of day, no zone, and the day of issue as its stamp', () => {
    expect(text.match(/^DTSTART.*$/gm)!.filter(line => !/^DTSTART;VALUE=DATE:\d{8}\r?$/.test(line))).toEqual([])
    expect(new Set(text.match(/^DTSTAMP:.*$/gm)!.map(line => line.trim()))).toEqual(new Set(['DTSTAMP:20261125T000000Z']))
    expect(text).not.toContain('TZID')
  })
})

describe('the events', () => {
  it('have a UID each, which stays when dates move', async () => {
    expect(text.match(/^BEGIN:VEVENT/gm)!.length).toBe(events.size)
    const later = await calendarOf('2026-12-01', examined => {
      const { maintenance } = examined.results
      const moved = maintenance.jobs.map(job => ({ ...job, items: job.items.map(due => ({ ...due, dueOn: due.dueOn === null ? null : `2040${due.dueOn.slice(4)}` })) }))
      return { ...examined, results: { ...examined.results, maintenance: { ...maintenance, jobs: moved } } }
    })
    expect(eventsIn(later).map(({ uid }) => uid).toSorted()).toEqual([...events.keys()].toSorted())
  })

  it.each([
    // Done 1 November and monthly; the circle of a month is 1 December.
    ['beacon-self-test', '2026-12-01'],
    // Done 10 October, every three months.
    ['battery-sealed-check', '2027-01-10'],
    // Fitted 25 May 2026, two years; made 1 March 2026, four years; marked 31 May 2028.
    ['hydrostatic-release.f98', '2028-05-25'],
    // Marked on the thing.
    ['beacon-battery.p16', '2031-05-31'], ['rescue-transmitter-battery.p17', '2032-02-29'], ['distress-signals-end.p31', '2028-10-01'],
    // Made 1 February 2026: six and twelve years.
    ['extinguisher-internal.f91.f91', '2032-02-01'], ['extinguisher-hydrostatic.f91.f93', '2038-02-01'],
    // Delivered 29 May 2026: a year is 29 May 2027, the launch comes on 1 April.
    ['panel-connections', '2027-04-01'], ['rcd-measured', '2027-05-29'],
    // Laid up in October, done in October.
    ['pumps-winter', '2027-10-01'],
    // At 200 h: 11.6 h at delivery, so at 211.6 h; (211.6 − 96.4) · 365.25 / 140 = 300 days after 20 November, 16 September 2027. A year comes first.
    ['engine-maker-service.haldrick-six.m11', '2027-05-29'],
    // Overdue since 20 November: on the day of issue.
    ['gas-shut-off-work', '2026-11-25'],
  ])('%s starts on %s', (id, day) => {
    expect(dayOf(eventOf(id).start)).toBe(day)
  })

  it('come again evenly where the interval is even, and once where it is not', () => {
    const next = (id: string, after: string): string => eventOf(id).rrule!.after(new Date(`${after}T12:00:00Z`))!.toISOString().slice(0, 10)
    expect(next('beacon-self-test', '2026-12-02')).toBe('2027-01-01')
    expect(next('battery-lithium-check', '2027-04-02')).toBe('2027-10-01')
    for (const id of ['beacon-battery.p16', 'hydrostatic-release.f98', 'engine-maker-service.haldrick-six.m11']) expect(eventOf(id).rrule).toBeUndefined()
  })

  it('remind some days ahead', () => {
    for (const event of events.values()) expect(event.alarms!.length).toBeGreaterThan(0)
    const block = (id: string): string => text.split('BEGIN:VEVENT').find(part => part.includes(`UID:${id}`))!
    expect(block('battery-sealed-check')).toContain('TRIGGER:-P7D')
    expect(block('beacon-self-test')).toContain('TRIGGER:-P1D')
    expect(block('liferaft-service')).toMatch(/TRIGGER:-P7D[^]*TRIGGER:-P30D/)
  })

  it('say what, how, on what and where, by whom', () => {
    const { summary, description, categories } = eventOf('gas-shut-off-work') as VEvent & { description: string; categories: readonly string[] }
    expect(summary).toBe('Grey Quillet: Gas valves worked')
    expect(categories).toEqual(['Fire / gas and alarms'])
    expect(description).toContain('Overdue since 2026-11-20.')
    expect(description).toContain('- Q34 Gas shut-off in the galley, Galley: behind the door under the sink')
    expect(description).toContain('By: owner.')
  })

  it('leave daily tests to the lists', () => {
    expect([...events.keys()].filter(uid => uid.startsWith('dsc-self-test'))).toEqual([])
  })
})
