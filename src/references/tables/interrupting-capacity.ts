/** Least interrupting capacity of devices by what supplies them: ABYC E-11 tables V.A (batteries) and V.B (shore power). */
import type { Citation } from '../bibliography.js'

export interface CapacityClass {
  /** Of the first device behind the source. */
  readonly mainA: number
  /** Of the devices behind that one. */
  readonly branchA: number
  readonly citation: Citation
}

interface BatteryClasses {
  /** Nominal voltage of the bank up to which the classes hold; lithium banks of 24 V are sold as 25.6 V. */
  readonly upToV: number
  /** By rising cold cranking current of the whole bank. */
  readonly classes: readonly (CapacityClass & { readonly upToCrankingA: number })[]
}

const reprint = (row: string): Citation => ({ source: 'abyc-e11', place: `table V.A, ${row}` })
const remembered = (row: string): Citation => ({ source: 'abyc-e11', place: `table V.A, ${row}`, standing: 'from memory' })

export const batteryClasses: readonly BatteryClasses[] = [
  {
    upToV: 28, classes: [
      { upToCrankingA: 650, mainA: 1500, branchA: 750, citation: reprint('12 and 24 V, up to 650 A cold cranking') },
      { upToCrankingA: 1100, mainA: 3000, branchA: 1500, citation: reprint('12 and 24 V, 651 to 1100 A cold cranking') },
      { upToCrankingA: 2200, mainA: 5000, branchA: 2500, citation: reprint('12 and 24 V, above 1100 A cold cranking') },
    ],
  },
  {
    upToV: 32, classes: [
      { upToCrankingA: 1250, mainA: 3000, branchA: 1500, citation: remembered('32 V, up to 1250 A cold cranking') },
      { upToCrankingA: 2200, mainA: 5000, branchA: 2500, citation: remembered('32 V, above 1250 A cold cranking') },
    ],
  },
]

/**
 * Above either of the two, the classes end and the maker's short-circuit rating of the bank decides: the first device must
 * break that rating; where the rating is above `ratingA`, it must break `capacityA` at a voltage rating of `voltageRatingV`.
 */
export const largeBank = {
  aboveCrankingA: 2200,
  aboveCapacityAh: 500,
  ratingA: 10000,
  capacityA: 20000,
  voltageRatingV: 125,
  citation: { source: 'abyc-e11', place: 'banks above 2200 A cold cranking or 500 Ah, as quoted by a maker', standing: 'published' },
} as const satisfies Record<string, number | Citation>

interface ShoreClass extends CapacityClass { readonly nominalVoltageV: number; readonly upToRatedA: number }

export const shoreClasses: readonly ShoreClass[] = [
  { nominalVoltageV: 120, upToRatedA: 50, mainA: 3000, branchA: 3000, citation: { source: 'abyc-e11', place: 'table V.B, 120 V, 30 A and 50 A' } },
  { nominalVoltageV: 240, upToRatedA: 50, mainA: 5000, branchA: 3000, citation: { source: 'abyc-e11', place: 'table V.B, 120/240 V, 50 A', standing: 'from memory' } },
]

/** The class of a battery bank by its cold cranking current; null where the table has none for it. */
export const batteryClass = (nominalVoltageV: number, crankingCurrentA: number): CapacityClass | null =>
  batteryClasses.find(({ upToV }) => nominalVoltageV <= upToV)?.classes.find(({ upToCrankingA }) => crankingCurrentA <= upToCrankingA) ?? null

/** The class of a shore connection; null where the table has none for it. */
export const shoreClass = (nominalVoltageV: number, ratedCurrentA: number): CapacityClass | null =>
  shoreClasses.find(shore => shore.nominalVoltageV === nominalVoltageV && ratedCurrentA <= shore.upToRatedA) ?? null
