/** Mains voltage: shore connection, generator and inverter, how they are switched, residual-current protection, earth and polarity. */
import type { AnyMethod } from '../method.js'

export { acSupplyPass } from './ac-supply.pass.js'

export const methods: readonly AnyMethod[] = []
