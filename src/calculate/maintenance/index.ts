/** Upkeep: what is due, when, with which parts. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { maintenancePass } from './maintenance.pass.js'

export const methods: readonly AnyMethod[] = []
