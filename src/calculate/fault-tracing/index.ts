/** Step by step from a dead thing back to its source, with the voltage to be expected at each point. */
import type { AnyMethod } from '../method.js'
import { expectedVoltageMethod } from './expected-voltage.calc.js'

export { faultTracingPass } from './fault-tracing.pass.js'

export const methods: readonly AnyMethod[] = [expectedVoltageMethod]
