/** The domain's calculations and kinds of finding: tests, methods chapter and findings chapter are made from these lists. */
import type { AnyMethod } from '../method.js'
import { conductorResistanceMethod } from './conductor-resistance.calc.js'
import { conductorTemperatureMethod } from './conductor-temperature.calc.js'
import { currentCarryingCapacityMethod } from './current-carrying-capacity.calc.js'
import { largestLoadByAbycConstantMethod, largestLoadByIsoConstantMethod } from './largest-load.calc.js'
import { longestRunByAbycConstantMethod, longestRunByIsoConstantMethod } from './longest-run.calc.js'
import { minimumAreaByAbycConstantMethod, minimumCrossSectionByIsoConstantMethod } from './minimum-cross-section.calc.js'
import { protectionRatingMethod } from './protection-rating.calc.js'
import { voltageDropByAbycConstantMethod } from './voltage-drop-by-abyc-constant.calc.js'
import { voltageDropByIsoConstantMethod } from './voltage-drop-by-iso-constant.calc.js'
import { voltageDropByResistanceMethod } from './voltage-drop-by-resistance.calc.js'
import { voltageDropPercentMethod } from './voltage-drop-percent.calc.js'

export { findingKinds } from './findings.js'

export const methods: readonly AnyMethod[] = [
  currentCarryingCapacityMethod,
  voltageDropByIsoConstantMethod,
  voltageDropByAbycConstantMethod,
  voltageDropByResistanceMethod,
  conductorResistanceMethod,
  conductorTemperatureMethod,
  voltageDropPercentMethod,
  minimumCrossSectionByIsoConstantMethod,
  minimumAreaByAbycConstantMethod,
  longestRunByIsoConstantMethod,
  longestRunByAbycConstantMethod,
  largestLoadByIsoConstantMethod,
  largestLoadByAbycConstantMethod,
  protectionRatingMethod,
]
