/**
 * What is usual for a battery by its chemistry, where nothing is recorded for it. Common practice, no source; of a range
 * the end is taken that makes the battery give less.
 */
import type { BatteryChemistry } from '../../model/vessel.js'
import type { Citation } from '../bibliography.js'

export interface ChemistryFacts {
  readonly title: string
  readonly leadAcid: boolean
  /** How deep it may be discharged day by day. */
  readonly depthOfDischargePercent: number
  /** Cycles at that depth, in words. */
  readonly cycleLife: string
  /** Charging current in percent of the capacity: what is usual, least and most. */
  readonly chargeFromPercent: number
  readonly chargeToPercent: number
  /** Of the charge put in, the share that can be taken out. */
  readonly chargeEfficiencyPercent: number
  /** Null where capacity hardly depends on the current. */
  readonly peukertNumber: number | null
  /** State of charge from which it takes less and less. */
  readonly taperFromPercent: number
  /** Volts of a 12 V battery, in words. */
  readonly absorption: string
  readonly float: string
  /** Milliampere per ampere-hour that turn water into gas, by IEC 62485-2; null where no gas is given off in normal use. */
  readonly gassing: { readonly type: string; readonly floatMilliA: number; readonly boostMilliA: number } | null
}

export const chemistryCitation: Citation = { source: 'common-practice', place: 'what is usual for the chemistry' }
export const gassingCitation: Citation = { source: 'iec-62485-2', place: 'current that produces gas, by type of cell and way of charging' }

const vented = { type: 'vented', floatMilliA: 5, boostMilliA: 20 } as const
const valveRegulated = { type: 'valve-regulated', floatMilliA: 1, boostMilliA: 8 } as const

export const batteryChemistries: Readonly<Record<BatteryChemistry, ChemistryFacts>> = {
  flooded: {
    title: 'flooded lead-acid', leadAcid: true, depthOfDischargePercent: 50, cycleLife: '300 to 500, traction types to 1000', chargeFromPercent: 10, chargeToPercent: 20,
    chargeEfficiencyPercent: 80, peukertNumber: 1.3, taperFromPercent: 80, absorption: '14.4 to 14.8 V', float: '13.2 to 13.5 V', gassing: vented,
  },
  agm: {
    title: 'lead-acid, glass mat (AGM)', leadAcid: true, depthOfDischargePercent: 50, cycleLife: '400 to 700', chargeFromPercent: 20, chargeToPercent: 40,
    chargeEfficiencyPercent: 85, peukertNumber: 1.15, taperFromPercent: 80, absorption: '14.4 to 14.7 V', float: '13.4 to 13.8 V', gassing: valveRegulated,
  },
  gel: {
    title: 'lead-acid, gel', leadAcid: true, depthOfDischargePercent: 50, cycleLife: '500 to 1000', chargeFromPercent: 15, chargeToPercent: 25,
    chargeEfficiencyPercent: 85, peukertNumber: 1.25, taperFromPercent: 80, absorption: '14.1 to 14.2 V', float: '13.5 to 13.8 V', gassing: valveRegulated,
  },
  lfp: {
    title: 'lithium iron phosphate', leadAcid: false, depthOfDischargePercent: 80, cycleLife: '2000 to 4000', chargeFromPercent: 30, chargeToPercent: 50,
    chargeEfficiencyPercent: 97, peukertNumber: null, taperFromPercent: 97, absorption: '14.0 to 14.4 V', float: 'none, or 13.4 to 13.6 V', gassing: null,
  },
}

/** Volts of one lead-acid cell, by which cells are counted. */
export const leadAcidCellV = 2

/** Current in percent of the capacity to which a charge has fallen when the battery is full. */
export const fullAtPercentOfCapacity = 2
/** Time of a whole charge over that of its bulk, least and most, for lead-acid. */
export const leadAcidTail = { least: 1.3, most: 1.5 } as const
/** Share of its capacity that lead-acid has left at 0 °C; at 25 °C all of it. */
export const leadAcidColdFactor = 0.85
/** Rating of an alternator in percent of the capacity of a lead-acid bank, at least. */
export const alternatorPercentOfCapacity = 25
/** Hours in which the capacity is drawn, where none are recorded. */
export const usualRatedTimeH = 20
