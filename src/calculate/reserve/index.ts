/** What is left: spare ways, and the margin of every feeder, busbar and panel above them. */
import type { AnyMethod } from '../method.js'
import { feederMarginMethod } from './feeder-margin.calc.js'
import { leastRatingMethod } from './least-rating.calc.js'

export { findingKinds } from './findings.js'
export { reservePass } from './reserve.pass.js'

export const methods: readonly AnyMethod[] = [feederMarginMethod, leastRatingMethod]
