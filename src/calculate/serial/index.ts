/** Serial links: who talks to whom, at which rate, and how much of the line is in use. */
import type { AnyMethod } from '../method.js'
import { lineRoomMethod } from './line-room.calc.js'
import { lineUseMethod } from './line-use.calc.js'
import { listenerReserveMethod } from './listener-reserve.calc.js'
import { sentenceTimeMethod } from './sentence-time.calc.js'

export { findingKinds } from './findings.js'
export { serialPass } from './serial.pass.js'

export const methods: readonly AnyMethod[] = [sentenceTimeMethod, lineUseMethod, lineRoomMethod, listenerReserveMethod]
