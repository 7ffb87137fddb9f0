/** Radio: losses, range, antennas too near one another, exposure, standing waves, sight of the sky. */
import type { AnyMethod } from '../method.js'
import { attenuationBetweenPointsMethod } from './attenuation-between-points.calc.js'
import { attenuationByRootMethod } from './attenuation-by-root.calc.js'
import { cableLossMethod } from './cable-loss.calc.js'
import { exposureDistanceMethod } from './exposure-distance.calc.js'
import { powerAtAntennaMethod } from './power-at-antenna.calc.js'
import { radarHorizonMethod } from './radar-horizon.calc.js'
import { radarMeanPowerMethod } from './radar-mean-power.calc.js'
import { radiatedPowerMethod } from './radiated-power.calc.js'
import { radioHorizonMethod } from './radio-horizon.calc.js'
import { returnLossMethod } from './return-loss.calc.js'
import { rotatingPowerMethod } from './rotating-power.calc.js'
import { sightDistanceMethod } from './sight-distance.calc.js'
import { skyBlockedMethod } from './sky-blocked.calc.js'
import { standingWaveAtAntennaMethod } from './standing-wave-at-antenna.calc.js'
import { standingWaveBehindCableMethod } from './standing-wave-behind-cable.calc.js'

export { findingKinds } from './findings.js'
export { radioPass } from './radio.pass.js'

export const methods: readonly AnyMethod[] = [
  attenuationByRootMethod, attenuationBetweenPointsMethod, cableLossMethod, powerAtAntennaMethod, radiatedPowerMethod,
  radioHorizonMethod, radarHorizonMethod, sightDistanceMethod,
  radarMeanPowerMethod, rotatingPowerMethod, exposureDistanceMethod, skyBlockedMethod,
  returnLossMethod, standingWaveBehindCableMethod, standingWaveAtAntennaMethod,
]
