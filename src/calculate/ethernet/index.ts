/** Ethernet: ports, power over the cable, lengths, addresses, rings, streams; links to the outside. */
import type { AnyMethod } from '../method.js'
import { channelLengthMethod } from './channel-length.calc.js'
import { freeAddressesMethod } from './free-addresses.calc.js'
import { linkLoadMethod } from './link-load.calc.js'
import { networkPowerMethod } from './network-power.calc.js'
import { powerMarginMethod } from './power-margin.calc.js'

export { findingKinds } from './findings.js'
export { ethernetPass } from './ethernet.pass.js'

export const methods: readonly AnyMethod[] = [channelLengthMethod, linkLoadMethod, networkPowerMethod, powerMarginMethod, freeAddressesMethod]
