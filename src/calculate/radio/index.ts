/** Radio: losses, range, antennas too near one another, exposure, standing waves, sight of the sky. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { radioPass } from './radio.pass.js'

export const methods: readonly AnyMethod[] = []
