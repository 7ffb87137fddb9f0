/** Mains voltage: shore connection, generator and inverter, how they are switched, residual-current protection, earth and polarity. */
import type { AnyMethod } from '../method.js'
import { averageLoadMethod } from './average-load.calc.js'
import { connectedLoadMethod } from './connected-load.calc.js'
import { sourceRatingMethod } from './source-rating.calc.js'
import { tripTimeIec61008Method } from './trip-time-iec-61008.calc.js'
import { tripTimeUl943Method } from './trip-time-ul-943.calc.js'

export { acSupplyPass } from './ac-supply.pass.js'

export const methods: readonly AnyMethod[] = [sourceRatingMethod, connectedLoadMethod, averageLoadMethod, tripTimeUl943Method, tripTimeIec61008Method]
