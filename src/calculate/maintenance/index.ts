/** Upkeep: what is due, when, with which parts. */
import type { AnyMethod } from '../method.js'
import { calendarDueMethod } from './due-by-calendar.calc.js'
import { hoursDueMethod } from './due-by-hours.calc.js'
import { seasonDueMethod } from './due-by-season.calc.js'
import { manufactureDueMethod } from './due-from-manufacture.calc.js'
import { hoursPerYearMethod } from './hours-per-year.calc.js'

export { findingKinds } from './findings.js'
export { maintenancePass } from './maintenance.pass.js'

export const methods: readonly AnyMethod[] = [calendarDueMethod, manufactureDueMethod, seasonDueMethod, hoursPerYearMethod, hoursDueMethod]
