/** Classes of power over Ethernet (IEEE 802.3): what a port supplies and what is left for the device after 100 m of cable. */
import type { Citation } from '../bibliography.js'

export type PowerType = 1 | 2 | 3 | 4
export interface PowerClass {
  readonly classNumber: number
  readonly type: PowerType
  /** At the port of the switch. */
  readonly sourcePowerW: number
  /** At the device. */
  readonly devicePowerW: number
  /** Pairs that carry it: two make one pair set, four make two. */
  readonly pairCount: 2 | 4
}

export const powerClasses: readonly PowerClass[] = [
  { classNumber: 0, type: 1, sourcePowerW: 15.4, devicePowerW: 12.95, pairCount: 2 },
  { classNumber: 1, type: 1, sourcePowerW: 4, devicePowerW: 3.84, pairCount: 2 },
  { classNumber: 2, type: 1, sourcePowerW: 7, devicePowerW: 6.49, pairCount: 2 },
  { classNumber: 3, type: 1, sourcePowerW: 15.4, devicePowerW: 12.95, pairCount: 2 },
  { classNumber: 4, type: 2, sourcePowerW: 30, devicePowerW: 25.5, pairCount: 2 },
  { classNumber: 5, type: 3, sourcePowerW: 45, devicePowerW: 40, pairCount: 4 },
  { classNumber: 6, type: 3, sourcePowerW: 60, devicePowerW: 51, pairCount: 4 },
  { classNumber: 7, type: 4, sourcePowerW: 75, devicePowerW: 62, pairCount: 4 },
  { classNumber: 8, type: 4, sourcePowerW: 90, devicePowerW: 71.3, pairCount: 4 },
]
export const powerClassCitation: Citation = { source: 'ieee-802-3', place: 'power classes 0 to 8' }

export const powerClassOf = (classNumber: number | null): PowerClass | null =>
  powerClasses.find(each => each.classNumber === classNumber) ?? null

export interface PowerTypeFacts {
  readonly standard: string
  /** Lowest voltage at the port of the switch. */
  readonly sourceMinV: number
  /** Of a pair set out and back, by which the standard reckons the loss. */
  readonly loopOhmPerM: number
}
export const powerTypes: Readonly<Record<PowerType, PowerTypeFacts>> = {
  1: { standard: '802.3af', sourceMinV: 44, loopOhmPerM: 0.2 },
  2: { standard: '802.3at', sourceMinV: 50, loopOhmPerM: 0.125 },
  3: { standard: '802.3bt', sourceMinV: 50, loopOhmPerM: 0.125 },
  4: { standard: '802.3bt', sourceMinV: 52, loopOhmPerM: 0.125 },
}
export const sourceVoltageCitation: Citation = { source: 'ieee-802-3', place: 'voltage at the supplying port by type' }
export const loopResistanceCitation: Citation = { source: 'ieee-802-3', place: 'channel of 100 m: 20 Ω for type 1, 12.5 Ω for each pair set of types 2 to 4', standing: 'from memory' }

/** Taken where the voltage of a switch is not recorded; of a type that needs more, its least. */
export const usualSourceVoltageV = 50
