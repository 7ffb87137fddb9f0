/** What needs what: the chain of each item to its source, what goes dead with each device, single points behind safety services. */
import type { AnyMethod } from '../method.js'

export { dependencyPass } from './dependency.pass.js'

export const methods: readonly AnyMethod[] = []
