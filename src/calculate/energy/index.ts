/** Loads by operating mode, hour by hour; what the batteries hold, how long they last, what charges them. */
import type { AnyMethod } from '../method.js'

export { energyPass } from './energy.pass.js'

export const methods: readonly AnyMethod[] = []
