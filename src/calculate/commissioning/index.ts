/** Measured values held against calculated ones. */
import type { AnyMethod } from '../method.js'
import { acceptedCurrentMethod } from './accepted-current.calc.js'
import { dropAtDesignCurrentMethod } from './drop-at-design-current.calc.js'
import { expectedDropMethod } from './expected-drop.calc.js'
import { insulationMinimumMethod } from './insulation-minimum.calc.js'
import { resistanceRatioMethod } from './internal-resistance-ratio.calc.js'
import { residualTripMethod } from './residual-trip.calc.js'
import { twoPointMethod } from './two-point-resistance.calc.js'
import { voltageRangeMethod } from './voltage-range.calc.js'

export { commissioningPass } from './commissioning.pass.js'

export const methods: readonly AnyMethod[] = [
  expectedDropMethod, dropAtDesignCurrentMethod, voltageRangeMethod, insulationMinimumMethod, residualTripMethod, resistanceRatioMethod,
  twoPointMethod, acceptedCurrentMethod,
]
