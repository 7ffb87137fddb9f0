/** Upkeep: what is due, when, with which parts. */
import type { Gap } from '../../model/results/gap.js'
import type { Job, MaintenanceResults } from '../../model/results/maintenance.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Occasion } from '../occasion.js'
import { countersOf } from './counters.js'
import { dueOf, isRoutine } from './due.js'
import { effectiveTasks } from './effective-tasks.js'
import { maintainedOf } from './maintained.js'
import { counterFindings, datesAhead, missingCounters, overdueFindings, recordFindings } from './record-findings.js'

export function maintenancePass(vessel: Vessel, _basis: Basis, occasion: Occasion): MaintenanceResults {
  const asOf = asOfOf(vessel, occasion)
  const things = maintainedOf(vessel)
  const { assigned, notDone, findings } = effectiveTasks(vessel, occasion.generalTasks, things)
  const counters = countersOf(vessel)
  const known = { vessel, counters, asOf: asOf?.on ?? null, isBegun: isBegun(vessel) }
  const jobs = assigned.map(({ task, id, things: done }): Job => ({ task, id, isRoutine: isRoutine(task), items: done.map(thing => dueOf(task, thing, known)) }))
  const knownKeys = new Set([...occasion.generalTasks.map(({ key }) => key), ...notDone.map(({ key }) => key)])
  const today = [vessel.document.issuedOn, occasion.asOf].filter(day => day !== null).toSorted().at(-1) ?? null
  return {
    asOf, jobs, notDone, counters,
    notAssessed: known.isBegun ? gapsOf(jobs) : [],
    findings: [
      ...findings, ...overdueFindings(vessel, jobs), ...missingCounters(vessel, jobs, counters),
      ...recordFindings(vessel, jobs, knownKeys), ...datesAhead(vessel, today), ...counterFindings(counters),
    ],
  }
}

/** The pack says what was due when it was issued, whenever it is built: same data, same words. Without a date of issue, the day of the build. */
function asOfOf({ document }: Vessel, { asOf }: Occasion): MaintenanceResults['asOf'] {
  if (document.issuedOn !== null) return { on: document.issuedOn, is: 'date of issue' }
  return asOf === null ? null : { on: asOf, is: 'day of the build' }
}

/** A boat that is not delivered yet, of which nothing was recorded, has no upkeep to be assessed. */
const isBegun = (vessel: Vessel): boolean =>
  vessel.identity.deliveredOn !== null || vessel.maintenanceRecords.length > 0 || vessel.runningHours.length > 0
  || [...vessel.equipment, ...vessel.batteries, ...vessel.busbars, ...vessel.panels].some(({ fittedOn }) => fittedOn !== null)

const gapsOf = (jobs: readonly Job[]): readonly Gap[] => jobs.flatMap(({ task, items }) => items.flatMap(({ itemTag, limits }) =>
  limits.flatMap(({ reason }) => (reason === null ? [] : [{ subjectTag: itemTag, reason: `${task.title}: ${reason}` }]))))
