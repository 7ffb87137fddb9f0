/** CAN buses: lengths, supply, load, terminators, instances, and what room is left. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { canBusPass } from './can-bus.pass.js'

export const methods: readonly AnyMethod[] = []
