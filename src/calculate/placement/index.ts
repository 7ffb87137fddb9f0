/** Placement: compasses, transducers, navigation lights, radar, mass and moments. */
import type { AnyMethod } from '../method.js'
import { aisReferenceMethod } from './ais-reference.calc.js'
import { centreOfFitMethod } from './centre-of-fit.calc.js'
import { depthErrorMethod } from './depth-error.calc.js'
import { depthOffsetMethod } from './depth-offset.calc.js'
import { distanceMethod } from './distance.calc.js'
import { footprintMethod } from './footprint.calc.js'
import { gravityShiftMethod } from './gravity-shift.calc.js'
import { heelMethod } from './heel.calc.js'
import { lightIntensityMethod } from './light-intensity.calc.js'
import { permittedDeviationMethod } from './permitted-deviation.calc.js'
import { radarBlindDistanceMethod } from './radar-blind-distance.calc.js'
import { shownDepthMethod } from './shown-depth.calc.js'
import { singleConductorMethod } from './single-conductor.calc.js'

export { findingKinds } from './findings.js'
export { placementPass } from './placement.pass.js'

export const methods: readonly AnyMethod[] = [
  distanceMethod, permittedDeviationMethod, singleConductorMethod, lightIntensityMethod, radarBlindDistanceMethod, footprintMethod, depthOffsetMethod,
  depthErrorMethod, shownDepthMethod, aisReferenceMethod, centreOfFitMethod, gravityShiftMethod, heelMethod,
]
