/** The voltage drop and the smallest area by the constant that the basis prescribes, whatever units its formula uses. */
import type { Computed } from '../../model/results.js'
import type { Basis } from '../../references/basis/basis.js'
import type { ConductorSize } from '../../units/conductor-size.js'
import { cmilFromMm2, ftFromM, mm2PerCmil } from '../../units/convert.js'
import type { Quantities } from '../../units/quantity.js'
import { minimumAreaByAbycConstant, minimumCrossSectionByIsoConstant } from './minimum-cross-section.calc.js'
import { voltageDropByAbycConstant, voltageDropByAbycConstantMethod } from './voltage-drop-by-abyc-constant.calc.js'
import { voltageDropByIsoConstant, voltageDropByIsoConstantMethod } from './voltage-drop-by-iso-constant.calc.js'

interface DropRule {
  readonly drop: (currentA: number, conductorLengthM: number, size: ConductorSize) => Computed<Quantities, { voltageDropV: number }>
  readonly minimumMm2: (currentA: number, conductorLengthM: number, allowedDropV: number) => number
}

const rules: Readonly<Record<Basis['dropMethod'], DropRule>> = {
  'voltage-drop-by-iso-constant': {
    drop: (currentA, conductorLengthM, { crossSectionMm2 }) => {
      const input = { currentA, conductorLengthM, crossSectionMm2 }
      return { status: 'computed', method: voltageDropByIsoConstantMethod.id, input, output: voltageDropByIsoConstant(input) }
    },
    minimumMm2: (currentA, conductorLengthM, allowedDropV) =>
      minimumCrossSectionByIsoConstant({ currentA, conductorLengthM, allowedDropV }).minimumCrossSectionMm2,
  },
  'voltage-drop-by-abyc-constant': {
    drop: (currentA, conductorLengthM, { crossSectionMm2 }) => {
      const input = { currentA, conductorLengthFt: ftFromM(conductorLengthM), conductorAreaCmil: cmilFromMm2(crossSectionMm2) }
      return { status: 'computed', method: voltageDropByAbycConstantMethod.id, input, output: voltageDropByAbycConstant(input) }
    },
    minimumMm2: (currentA, conductorLengthM, allowedDropV) =>
      minimumAreaByAbycConstant({ currentA, conductorLengthFt: ftFromM(conductorLengthM), allowedDropV }).minimumAreaCmil * mm2PerCmil,
  },
}

export const dropRule = (basis: Basis): DropRule => rules[basis.dropMethod]
