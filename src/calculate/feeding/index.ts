/** Feeding (FED): what supplies each circuit, what it carries, which cables it consists of. */
import type { AnyMethod } from '../method.js'
import { designCurrentMethod } from './design-current.calc.js'
import { loadCurrentMethod } from './load-current.calc.js'

export { feedingPass } from './feeding.pass.js'
export { findingKinds } from './findings.js'
export const methods: readonly AnyMethod[] = [loadCurrentMethod, designCurrentMethod]
