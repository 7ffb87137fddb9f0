/** Configuration record: software and settings to restore after a replacement. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { configurationPass } from './configuration.pass.js'

export const methods: readonly AnyMethod[] = []
