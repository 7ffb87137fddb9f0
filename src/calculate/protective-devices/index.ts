/** Device by device: where it sits, what it must break, in which order devices trip; conductors without one. */
import type { AnyMethod } from '../method.js'
import { coldConductorMethod } from './cold-conductor.calc.js'
import { continuousLoadMethod } from './continuous-load.calc.js'
import { motorDeviceMethod } from './motor-device.calc.js'
import { openCircuitVoltageMethod } from './open-circuit-voltage.calc.js'
import { prospectiveShortCircuitMethod } from './prospective-short-circuit-current.calc.js'
import { ratingRatioMethod } from './rating-ratio.calc.js'
import { resistanceFromCrankingMethod } from './resistance-from-cranking.calc.js'
import { resistanceFromShortCircuitMethod } from './resistance-from-short-circuit.calc.js'
import { startingCurrentMethod } from './starting-current.calc.js'

export { protectiveDevicesPass } from './protective-devices.pass.js'

export const methods: readonly AnyMethod[] = [
  openCircuitVoltageMethod, resistanceFromShortCircuitMethod, resistanceFromCrankingMethod, coldConductorMethod, prospectiveShortCircuitMethod,
  ratingRatioMethod, startingCurrentMethod, motorDeviceMethod, continuousLoadMethod,
]
