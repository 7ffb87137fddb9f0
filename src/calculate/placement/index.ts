/** Placement: compasses, transducers, navigation lights, radar, mass and moments. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { placementPass } from './placement.pass.js'

export const methods: readonly AnyMethod[] = []
