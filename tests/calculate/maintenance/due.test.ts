/** When things are due: worked values of the reference, sums by hand, and what stands in the place of what. */
import { noOccasion } from '../../../src/calculate/occasion.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { maintenancePass } from '../../../src/calculate/maintenance/index.js'
import type { GeneralTask } from '../../../src/model/content.js'
import type { MaintenanceResults, TaskDue } from '../../../src/model/results/maintenance.js'
import type { Equipment, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aCircuit, aProtection, anEquipment, aRecord, aTask, aVessel, aZone } from '../../support/vessel-builder.js'

const aGeneralTask = (given: Partial<GeneralTask> & Pick<GeneralTask, 'key' | 'kinds'>): GeneralTask => {
  const { itemTags: _, hoursOfTag: _hours, ...facts } = aTask({ key: given.key })
  return { ...facts, title: `Task ${given.key}`, by: 'owner', source: 'common practice', spaces: [], onlyWhenAsked: false, group: 'Group', citation: { source: 'common-practice', place: '' }, ...given }
}

const blank = aVessel()
const vesselWith = (given: Partial<Vessel>, { deliveredOn = null, season = null, issuedOn = null }: { deliveredOn?: string | null; season?: Vessel['identity']['season']; issuedOn?: string | null } = {}): Vessel =>
  aVessel({ ...given, identity: { ...blank.identity, deliveredOn, season }, document: { ...blank.document, issuedOn } })

const pass = (vessel: Vessel, generalTasks: readonly GeneralTask[], asOf: string | null = null): MaintenanceResults => maintenancePass(vessel, bases.iso, { ...noOccasion, asOf, generalTasks })

function dueIn(results: MaintenanceResults, key: string, itemTag: string): TaskDue {
  const due = results.jobs.filter(({ task }) => task.key === key).flatMap(({ items }) => items).find(item => item.itemTag === itemTag)
  if (due === undefined) throw new Error(`no ${key} of ${itemTag}`)
  return due
}

/** One thing of kind `other` with one task. */
const dueOf = (task: Partial<GeneralTask>, thing: Partial<Equipment> = {}, doneOn: string | null = null, asOf: string | null = null): TaskDue => dueIn(
  pass(vesselWith({ equipment: [anEquipment({ tag: 'X1', ...thing })], maintenanceRecords: doneOn === null ? [] : [aRecord('a-task', doneOn)] }), [aGeneralTask({ key: 'a-task', kinds: ['other'], ...task })], asOf),
  'a-task', 'X1')

describe('worked values', () => {
  it.each([
    [1, '2026-01-31', 1, '2026-02-28'],
    [2, '2024-01-31', 1, '2024-02-29'],
    [3, '2026-03-10', 12, '2027-03-10'],
  ])('%d: done on %s, every %d months, due on %s', (_, doneOn, everyMonthsCount, dueOn) => {
    expect(dueOf({ everyMonthsCount }, {}, doneOn)).toMatchObject({ dueOn, dueBy: { is: 'interval', from: { what: 'done', on: doneOn } } })
  })

  it('4: a hydrostatic release fitted in 2024 and made in 2021 is due by its age', () => {
    expect(dueOf({ everyMonthsCount: 24, everyMadeMonthsCount: 48 }, { fittedOn: '2024-06-15', madeOn: '2021-01-01' })).toMatchObject({ dueOn: '2025-01-01', dueBy: { is: 'manufacture' } })
  })

  it('5: an extinguisher made in 2015 is examined inside at 6 and at 12 years, the day of its hydrostatic test', () => {
    expect(dueOf({ everyMadeMonthsCount: 72 }, { madeOn: '2015-05-01' }).dueOn).toBe('2021-05-01')
    expect(dueOf({ everyMadeMonthsCount: 72 }, { madeOn: '2015-05-01' }, '2021-05-01').dueOn).toBe('2027-05-01')
    expect(dueOf({ everyMadeMonthsCount: 144 }, { madeOn: '2015-05-01' }).dueOn).toBe('2027-05-01')
  })

  it('6: a flare made on 2023-02-01 ends after 42 months', () => {
    expect(dueOf({ lifeMonthsCount: 42 }, { madeOn: '2023-02-01' })).toMatchObject({ dueOn: '2026-08-01', dueBy: { is: 'life', from: { what: 'made' } } })
  })

  it('7: a beacon whose battery is marked 2027-04, on 2026-09-01: seven months ahead, the monthly test due', () => {
    expect(dueOf({ lifeMonthsCount: 60 }, { fittedOn: '2020-01-01', expiresOn: '2027-04-01' }, null, '2026-09-01')).toMatchObject({ dueOn: '2027-04-01', dueBy: { is: 'marked date' }, state: 'later' })
    expect(dueOf({ everyMonthsCount: 1 }, {}, '2026-08-01', '2026-09-01')).toMatchObject({ dueOn: '2026-09-01', state: 'due' })
  })
})

describe('states', () => {
  it.each([
    ['2026-09-02', 'overdue'], ['2026-09-01', 'due'], ['2026-08-31', 'soon'], ['2026-08-02', 'soon'], ['2026-08-01', 'later'], [null, 'dated'],
  ] as const)('due on 2026-09-01 is on %s: %s', (asOf, state) => {
    expect(dueOf({ everyMonthsCount: 12 }, {}, '2025-09-01', asOf).state).toBe(state)
  })

  it('is never a pass without a day to count from', () => {
    const results = pass(vesselWith({ equipment: [anEquipment({ tag: 'X1' }), anEquipment({ tag: 'X2', fittedOn: '2026-01-01' })] }), [aGeneralTask({ key: 'a-task', kinds: ['other'], everyMonthsCount: 1 })], '2030-01-01')
    expect(dueIn(results, 'a-task', 'X1')).toMatchObject({ state: 'not assessed', dueOn: null })
    expect(results.notAssessed).toEqual([{ subjectTag: 'X1', reason: 'Task a-task: nothing says when it was last done or fitted, or when the boat was delivered' }])
  })

  it('says of a boat of which nothing is recorded yet that it has not begun, and counts no gap', () => {
    const results = pass(vesselWith({ equipment: [anEquipment({ tag: 'X1' })] }), [aGeneralTask({ key: 'a-task', kinds: ['other'], everyMonthsCount: 1 })], '2030-01-01')
    expect([dueIn(results, 'a-task', 'X1').state, results.notAssessed]).toEqual(['not begun', []])
  })

  it('gives what is done daily or weekly no date', () => {
    expect(dueOf({ everyDaysCount: 7 }, { fittedOn: '2026-01-01' })).toMatchObject({ state: 'routine', dueOn: null })
    expect(dueOf({ everyDaysCount: 28 }, { fittedOn: '2026-01-01' })).toMatchObject({ state: 'dated', dueOn: '2026-01-29' })
  })

  it('is as of the date of issue, whatever the day of the build; without one, of that day', () => {
    const boat = (issuedOn: string | null) => pass(vesselWith({}, { issuedOn }), [], '2030-01-01').asOf
    expect([boat('2026-11-25'), boat(null), pass(vesselWith({}), []).asOf]).toEqual([{ on: '2026-11-25', is: 'date of issue' }, { on: '2030-01-01', is: 'day of the build' }, null])
  })
})

describe('what it is counted from', () => {
  const monthly = [aGeneralTask({ key: 'a-task', kinds: ['other'], everyMonthsCount: 1 })]
  it('is the last record, else the fitting, else the delivery', () => {
    const results = pass(vesselWith({
      equipment: [anEquipment({ tag: 'X1' }), anEquipment({ tag: 'X2', fittedOn: '2026-03-05' }), anEquipment({ tag: 'X3', fittedOn: '2026-03-05' })],
      maintenanceRecords: [aRecord('a-task', '2026-05-07', { itemTag: 'X3' }), aRecord('a-task', '2026-04-07', { itemTag: 'X3' })],
    }, { deliveredOn: '2026-02-03' }), monthly)
    expect(['X1', 'X2', 'X3'].map(tag => dueIn(results, 'a-task', tag).dueOn)).toEqual(['2026-03-03', '2026-04-05', '2026-06-07'])
  })

  it('is for a record without an item every thing that was there', () => {
    const results = pass(vesselWith({ equipment: [anEquipment({ tag: 'X1' }), anEquipment({ tag: 'X2', fittedOn: '2026-06-01' })], maintenanceRecords: [aRecord('a-task', '2026-05-07')] }), monthly)
    // X2 was fitted after that day.
    expect(['X1', 'X2'].map(tag => dueIn(results, 'a-task', tag).dueOn)).toEqual(['2026-06-07', '2026-07-01'])
  })

  it('leaves out what is planned or removed, and takes what is fitted', () => {
    const statuses = ['planned', 'fitted', 'commissioned', 'removed'] as const
    const { jobs } = pass(vesselWith({ equipment: statuses.map(status => anEquipment({ tag: status, status })) }), monthly)
    expect(jobs.flatMap(({ items }) => items.map(({ itemTag }) => itemTag))).toEqual(['fitted', 'commissioned'])
  })

  it('never lies before the day last done', () => {
    fc.assert(fc.property(fc.date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true }), fc.integer({ min: 1, max: 600 }), fc.integer({ min: 0, max: 600 }), (done, everyMonthsCount, ageMonths) => {
      const doneOn = done.toISOString().slice(0, 10)
      const madeOn = `${1990 - Math.floor(ageMonths / 12)}-01-01`
      for (const task of [{ everyMonthsCount }, { everyMadeMonthsCount: everyMonthsCount }]) {
        const { dueOn } = dueOf(task, { madeOn }, doneOn)
        expect(dueOn! > doneOn).toBe(true)
        // And never further ahead than the interval.
        const latest = new Date(Date.UTC(done.getUTCFullYear(), done.getUTCMonth() + everyMonthsCount + 1, 0)).toISOString().slice(0, 10)
        expect(dueOn! <= latest).toBe(true)
      }
    }))
  })
})

describe('seasons', () => {
  const season = { launchMonthNumber: 4, layUpMonthNumber: 10 }
  const boat = (seasons: GeneralTask['seasons'], given: Partial<GeneralTask> = {}, of: Vessel['identity']['season'] = season) =>
    dueIn(pass(vesselWith({ equipment: [anEquipment({ tag: 'X1' })] }, { deliveredOn: '2026-05-29', season: of }), [aGeneralTask({ key: 'a-task', kinds: ['other'], seasons, ...given })]), 'a-task', 'X1')
  it('are due by the first of the month of launching or laying up', () => {
    expect(boat(['spring']).dueOn).toBe('2027-04-01')
    expect(boat(['autumn']).dueOn).toBe('2026-10-01')
  })
  it('come first or not, as the interval has it', () => {
    expect(boat(['spring'], { everyMonthsCount: 12 })).toMatchObject({ dueOn: '2027-04-01', dueBy: { is: 'season' } })
    expect(boat(['spring'], { everyMonthsCount: 6 })).toMatchObject({ dueOn: '2026-11-29', dueBy: { is: 'interval' } })
  })
  it('have no date on a boat that is used all the year round, and none before a passage', () => {
    expect(boat(['spring'], {}, null).state).toBe('by list')
    expect(boat(['before a passage']).state).toBe('by list')
  })
})

describe('running hours', () => {
  const engine = anEquipment({ tag: 'M1', kind: 'engine' })
  const oil = aTask({ key: 'oil-change', title: 'Oil', itemTags: ['M1'], everyRunningH: 100 })
  const reading = (date: string, runningH: number, perYearH: number | null = null) => ({ itemTag: 'M1', date, runningH, perYearH, by: null })
  const results = (given: Partial<Vessel>, asOf: string | null = null) => pass(vesselWith({ equipment: [engine], maintenanceTasks: [oil], ...given }, { deliveredOn: '2026-01-01' }), [], asOf)

  it('come from two readings: 365.25 · (60 − 10) / 100 = 182.625 h a year', () => {
    const read = results({ runningHours: [reading('2026-01-01', 10), reading('2026-04-11', 60)], maintenanceRecords: [aRecord('oil-change', '2026-02-20', { runningH: 35 })] })
    expect(read.counters.get('M1')!.perYearH).toBeCloseTo(182.625, 9)
    // Due at 35 + 100 = 135 h; (135 − 60) · 365.25 / 182.625 = 150 days after 11 April: 8 September.
    expect(dueIn(read, 'oil-change', 'M1')).toMatchObject({ dueOn: '2026-09-08', dueBy: { is: 'running hours', outcome: { output: { dueH: 135 } } } })
  })

  it('between two readings are in proportion, where the record does not say them', () => {
    // 50 of 100 days: 35 h.
    const read = results({ runningHours: [reading('2026-01-01', 10), reading('2026-04-11', 60)], maintenanceRecords: [aRecord('oil-change', '2026-02-20')] })
    expect(dueIn(read, 'oil-change', 'M1').dueBy!.outcome).toMatchObject({ output: { dueH: 135 } })
  })

  it('from one reading need the hours in a year', () => {
    expect(dueIn(results({ runningHours: [reading('2026-01-01', 10)] }), 'oil-change', 'M1')).toMatchObject({ state: 'not assessed', dueOn: null })
    // Delivered at 10 h, due at 110 h: 100 · 365.25 / 365.25 = 100 days after 1 January: 11 April.
    expect(dueIn(results({ runningHours: [reading('2026-01-01', 10, 365.25)] }), 'oil-change', 'M1').dueOn).toBe('2026-04-11')
  })

  it('past the interval make it overdue, whatever the rate', () => {
    const read = results({ runningHours: [reading('2026-03-01', 130)] }, '2026-03-02')
    expect(dueIn(read, 'oil-change', 'M1')).toMatchObject({ dueOn: '2026-03-01', state: 'overdue' })
  })

  it('without a counter are not assessed, and the calendar still holds', () => {
    const both = results({ maintenanceTasks: [{ ...oil, everyMonthsCount: 12 }] })
    expect(dueIn(both, 'oil-change', 'M1').dueOn).toBe('2027-01-01')
    expect(both.notAssessed.map(({ reason }) => reason)).toEqual(['Oil: no running hours of M1 are recorded'])
    expect(both.findings.map(({ id }) => id)).toEqual(['MNT201'])
  })

  it('that run backwards start anew, and are told of', () => {
    const read = results({ runningHours: [reading('2026-01-01', 500), reading('2026-02-01', 0), reading('2026-04-11', 34.5)] })
    // 365.25 · 34.5 / 69
    expect(read.counters.get('M1')!.perYearH).toBeCloseTo(182.625, 9)
    expect(read.findings.map(({ id, evidence }) => [id, evidence])).toEqual([['MNT304', { beforeH: 500, afterH: 0 }]])
  })
})

describe('which task holds', () => {
  const general = [aGeneralTask({ key: 'look', kinds: ['pump'], everyMonthsCount: 1, how: ['Look.'] }), aGeneralTask({ key: 'test', kinds: ['pump'], onlyWhenAsked: true, everyMonthsCount: 60 })]
  const { itemTags: _, hoursOfTag: _hours, ...byModel } = aTask({ key: 'look', everyMonthsCount: 3, source: 'manual' })
  const pumps = [anEquipment({ tag: 'G1', kind: 'pump' }), anEquipment({ tag: 'G2', kind: 'pump', model: 'Pumper', maintenance: [byModel] }), anEquipment({ tag: 'G3', kind: 'pump' })]
  const held = (maintenanceTasks: Vessel['maintenanceTasks']) => pass(vesselWith({ equipment: pumps, maintenanceTasks }, { deliveredOn: '2026-01-01' }), general)
  const told = ({ jobs }: MaintenanceResults) => jobs.map(({ task, items }) => [task.key, task.origin, task.everyMonthsCount, items.map(({ itemTag }) => itemTag).join(' ')])

  it('is the general one, in its place the model’s, in its place the vessel’s', () => {
    expect(told(held([]))).toEqual([['look', 'general', 1, 'G1 G3'], ['look', 'model', 3, 'G2']])
    expect(told(held([aTask({ key: 'look', everyMonthsCount: 6, itemTags: ['G3'] })]))).toEqual([['look', 'general', 1, 'G1'], ['look', 'model', 3, 'G2'], ['look', 'vessel', 6, 'G3']])
  })

  it('takes over what is left out, and with an interval all intervals', () => {
    const [job] = held([aTask({ key: 'look', everyDaysCount: 90 })]).jobs
    expect(job!.task).toMatchObject({ title: 'Task look', how: ['Look.'], everyDaysCount: 90, everyMonthsCount: null })
  })

  it('is asked for by its key', () => {
    expect(told(held([aTask({ key: 'test', itemTags: ['G1'] })]))).toContainEqual(['test', 'vessel', 60, 'G1'])
  })

  it('is left out with its reason', () => {
    const { jobs, notDone } = held([aTask({ key: 'look', itemTags: ['G1', 'G3'], notDone: true, reason: 'Ashore.' })])
    expect(told({ jobs } as MaintenanceResults)).toEqual([['look', 'model', 3, 'G2']])
    expect(notDone).toEqual([{ key: 'look', title: 'Task look', itemTags: ['G1', 'G3'], reason: 'Ashore.' }])
  })

  it('goes by the chemistry of a battery, the space of a zone, and residual-current protection of a circuit', () => {
    const tasks = [
      aGeneralTask({ key: 'any', kinds: ['battery'], everyMonthsCount: 12 }), aGeneralTask({ key: 'acid', kinds: ['lead-acid battery'], everyMonthsCount: 12 }),
      aGeneralTask({ key: 'lithium', kinds: ['lithium battery'], everyMonthsCount: 12 }), aGeneralTask({ key: 'button', kinds: ['residual-current device'], everyMonthsCount: 1 }),
      aGeneralTask({ key: 'damp', kinds: ['socket'], spaces: ['bilge'], everyMonthsCount: 12 }),
    ]
    const { jobs } = pass(vesselWith({
      zones: [aZone({ tag: 'bilge', space: 'bilge' }), aZone({ tag: 'saloon', space: 'interior' })],
      batteries: [aBattery({ tag: 'G1', chemistry: 'agm' }), aBattery({ tag: 'G2', chemistry: 'lfp' }), aBattery({ tag: 'G3', chemistry: null })],
      equipment: [anEquipment({ tag: 'X1', kind: 'socket', zoneTag: 'bilge' }), anEquipment({ tag: 'X2', kind: 'socket', zoneTag: 'saloon' })],
      circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', protection: aProtection('miniature circuit breaker', 16, { residualCurrentA: 0.03 }) }), aCircuit({ tag: 'F2', fedFromTag: 'G1' })],
    }), tasks)
    expect(jobs.map(({ task, items }) => `${task.key}: ${items.map(({ itemTag }) => itemTag).join(' ')}`)).toEqual(['any: G1 G2 G3', 'acid: G1', 'lithium: G2', 'button: F1', 'damp: X1'])
  })
})
