/** What the emergency pages need to know of this boat. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { emergencyPass } from './emergency.pass.js'

export const methods: readonly AnyMethod[] = []
