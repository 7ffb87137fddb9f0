/** CAN buses: lengths, supply, load, terminators, instances, and what room is left. */
import type { AnyMethod } from '../method.js'
import { backboneLengthMethod } from './backbone-length.calc.js'
import { busLoadMethod, messageLoadMethod } from './bus-load.calc.js'
import { frameBitsMethod } from './frame-bits.calc.js'
import { lenByCurrentMethod, lenByVoltageMethod } from './len-left.calc.js'
import { fastPacketFramesMethod, transportFramesMethod } from './message-frames.calc.js'
import { lenCurrentMethod, lenOfCurrentMethod, lumpedDropMethod, stretchDropMethod } from './supply-drop.calc.js'
import { terminationMethod } from './termination.calc.js'

export { findingKinds } from './findings.js'
export { canBusPass } from './can-bus.pass.js'

export const methods: readonly AnyMethod[] = [
  lenCurrentMethod, lenOfCurrentMethod, stretchDropMethod, lumpedDropMethod, backboneLengthMethod, terminationMethod,
  frameBitsMethod, fastPacketFramesMethod, transportFramesMethod, messageLoadMethod, busLoadMethod, lenByVoltageMethod, lenByCurrentMethod,
]
