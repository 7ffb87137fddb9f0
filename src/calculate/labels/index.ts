/** What every label says, and whether it can be read at its size. */
import type { AnyMethod } from '../method.js'
import { letterHeightMethod } from './letter-height.calc.js'
import { textSizeMethod } from './text-size.calc.js'
import { wrapMethod } from './wrap.calc.js'

export { findingKinds } from './findings.js'
export { labelsPass } from './labels.pass.js'

export const methods: readonly AnyMethod[] = [wrapMethod, textSizeMethod, letterHeightMethod]
