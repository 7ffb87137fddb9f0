/** How much cable of each type was laid, and how much to buy. */
import type { AnyMethod } from '../method.js'
import { cableToOrderMethod } from './cable-to-order.calc.js'

export { findingKinds } from './findings.js'
export { cableBillPass } from './cable-bill.pass.js'

export const methods: readonly AnyMethod[] = [cableToOrderMethod]
