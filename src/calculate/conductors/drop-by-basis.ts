/** The voltage drop, and what follows from it the other way round, by the constant that the basis prescribes, whatever units its formula uses. */
import type { Computed } from '../../model/results.js'
import type { Basis } from '../../references/basis/basis.js'
import type { ConductorSize } from '../../units/conductor-size.js'
import { cmilFromMm2, ftFromM, mm2PerCmil, mPerFt } from '../../units/convert.js'
import type { Quantities } from '../../units/quantity.js'
import { largestLoadByAbycConstant, largestLoadByIsoConstant } from './largest-load.calc.js'
import { longestRunByAbycConstant, longestRunByIsoConstant } from './longest-run.calc.js'
import { minimumAreaByAbycConstant, minimumCrossSectionByIsoConstant } from './minimum-cross-section.calc.js'
import { voltageDropByAbycConstant, voltageDropByAbycConstantMethod } from './voltage-drop-by-abyc-constant.calc.js'
import { voltageDropByIsoConstant, voltageDropByIsoConstantMethod } from './voltage-drop-by-iso-constant.calc.js'

interface DropRule {
  readonly drop: (currentA: number, conductorLengthM: number, size: ConductorSize) => Computed<Quantities, { voltageDropV: number }>
  readonly minimumMm2: (currentA: number, conductorLengthM: number, allowedDropV: number) => number
  /** Of a cable of that size, the longest way one way for the current, in m. */
  readonly longestRunM: (allowedDropV: number, currentA: number, size: ConductorSize) => number
  /** The largest current over that conductor length, in A. */
  readonly largestLoadA: (allowedDropV: number, conductorLengthM: number, size: ConductorSize, currentCarryingCapacityA: number) => number
}

const rules: Readonly<Record<Basis['dropMethod'], DropRule>> = {
  'voltage-drop-by-iso-constant': {
    drop: (currentA, conductorLengthM, { crossSectionMm2 }) => {
      const input = { currentA, conductorLengthM, crossSectionMm2 }
      return { status: 'computed', method: voltageDropByIsoConstantMethod.id, input, output: voltageDropByIsoConstant(input) }
    },
    minimumMm2: (currentA, conductorLengthM, allowedDropV) =>
      minimumCrossSectionByIsoConstant({ currentA, conductorLengthM, allowedDropV }).minimumCrossSectionMm2,
    longestRunM: (allowedDropV, currentA, { crossSectionMm2 }) => longestRunByIsoConstant({ allowedDropV, currentA, crossSectionMm2 }).oneWayLengthM,
    largestLoadA: (allowedDropV, conductorLengthM, { crossSectionMm2 }, currentCarryingCapacityA) =>
      largestLoadByIsoConstant({ allowedDropV, conductorLengthM, crossSectionMm2, currentCarryingCapacityA }).largestCurrentA,
  },
  'voltage-drop-by-abyc-constant': {
    drop: (currentA, conductorLengthM, { crossSectionMm2 }) => {
      const input = { currentA, conductorLengthFt: ftFromM(conductorLengthM), conductorAreaCmil: cmilFromMm2(crossSectionMm2) }
      return { status: 'computed', method: voltageDropByAbycConstantMethod.id, input, output: voltageDropByAbycConstant(input) }
    },
    minimumMm2: (currentA, conductorLengthM, allowedDropV) =>
      minimumAreaByAbycConstant({ currentA, conductorLengthFt: ftFromM(conductorLengthM), allowedDropV }).minimumAreaCmil * mm2PerCmil,
    longestRunM: (allowedDropV, currentA, { crossSectionMm2 }) =>
      longestRunByAbycConstant({ allowedDropV, currentA, conductorAreaCmil: cmilFromMm2(crossSectionMm2) }).oneWayLengthFt * mPerFt,
    largestLoadA: (allowedDropV, conductorLengthM, { crossSectionMm2 }, currentCarryingCapacityA) => largestLoadByAbycConstant({
      allowedDropV, conductorLengthFt: ftFromM(conductorLengthM), conductorAreaCmil: cmilFromMm2(crossSectionMm2), currentCarryingCapacityA,
    }).largestCurrentA,
  },
}

export const dropRule = (basis: Basis): DropRule => rules[basis.dropMethod]
