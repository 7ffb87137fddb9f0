/** Where things are: numbers on the plan, boxes of zones, what pictures show. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { locationPass } from './location.pass.js'

export const methods: readonly AnyMethod[] = []
