/** Ethernet: ports, power over the cable, lengths, addresses, rings, streams; links to the outside. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { ethernetPass } from './ethernet.pass.js'

export const methods: readonly AnyMethod[] = []
