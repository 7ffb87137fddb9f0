/** Serial links: who talks to whom, at which rate, and how much of the line is in use. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { serialPass } from './serial.pass.js'

export const methods: readonly AnyMethod[] = []
