/** What is left: spare ways, and the margin of every feeder, busbar and panel above them. */
import type { AnyMethod } from '../method.js'

export { reservePass } from './reserve.pass.js'

export const methods: readonly AnyMethod[] = []
