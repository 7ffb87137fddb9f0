/** What every label says, and whether it can be read at its size. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { labelsPass } from './labels.pass.js'

export const methods: readonly AnyMethod[] = []
