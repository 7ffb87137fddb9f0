/** Voltage of a battery that has neither been charged nor drawn from for some hours, by how full it is. */
import { type Citation, commonPractice } from '../bibliography.js'
import type { BatteryChemistry } from '../../model/vessel.js'

export interface RestVoltages { readonly fullVoltageV: number; readonly halfVoltageV: number; readonly emptyVoltageV: number }

/** Of a battery of 12 V nominal at about 20 °C. Lithium iron phosphate is flat in the middle, so that half tells little. */
const at12V: Readonly<Record<BatteryChemistry, RestVoltages>> = {
  flooded: { fullVoltageV: 12.7, halfVoltageV: 12.2, emptyVoltageV: 11.8 },
  agm: { fullVoltageV: 12.8, halfVoltageV: 12.3, emptyVoltageV: 11.8 },
  gel: { fullVoltageV: 12.9, halfVoltageV: 12.4, emptyVoltageV: 11.8 },
  lfp: { fullVoltageV: 13.4, halfVoltageV: 13.1, emptyVoltageV: 12 },
}
export const restVoltageCitation: Citation = commonPractice('voltage at rest by chemistry and charge, within 0.1 V, from memory')

/** Scaled by the nominal voltage: 24 V is two of 12 V in series. */
export function restVoltages(chemistry: BatteryChemistry, nominalVoltageV: number): RestVoltages {
  const { fullVoltageV, halfVoltageV, emptyVoltageV } = at12V[chemistry]
  const timesFactor = nominalVoltageV / 12
  return { fullVoltageV: fullVoltageV * timesFactor, halfVoltageV: halfVoltageV * timesFactor, emptyVoltageV: emptyVoltageV * timesFactor }
}
