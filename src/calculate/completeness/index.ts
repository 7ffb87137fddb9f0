/** Whether the pack holds what standards ask of an owner’s manual, and how far the work is. */
import type { AnyMethod } from '../method.js'

export { findingKinds } from './findings.js'
export { completenessPass } from './completeness.pass.js'

export const methods: readonly AnyMethod[] = []
