/** Measured values held against calculated ones. */
import type { AnyMethod } from '../method.js'

export { commissioningPass } from './commissioning.pass.js'

export const methods: readonly AnyMethod[] = []
