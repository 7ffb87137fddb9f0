/** Wireways (WWY): routes and lengths of cables, what each wireway holds. */
import type { AnyMethod } from '../method.js'
import { cableLengthMethod } from './cable-length.calc.js'
import { conduitFillMethod } from './conduit-fill.calc.js'
import { conduitJamMethod } from './conduit-jam.calc.js'

export { findingKinds } from './findings.js'
export { routingPass } from './routing.pass.js'
export const methods: readonly AnyMethod[] = [cableLengthMethod, conduitFillMethod, conduitJamMethod]
