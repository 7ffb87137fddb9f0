/** Loads by operating mode, hour by hour; what the batteries hold, how long they last, what charges them. */
import type { Finding } from '../../findings/finding.js'
import type { Comparison, Outcome } from '../results.js'
import type { BatteryChemistry, LoadColumn, Tag } from '../vessel.js'

export interface EnergyResults {
  readonly batteries: readonly BatteryFacts[]
  /** Every battery, and every feeder with the panel or busbar that it feeds. */
  readonly columns: readonly ColumnLoad[]
  readonly modes: readonly ModeEnergy[]
  readonly sizing: readonly BatterySizing[]
  /** What each inverter and converter takes from its battery at full output. */
  readonly converterInputs: readonly { readonly tag: Tag; readonly outcome: Outcome }[]
  readonly ventilation: readonly BatteryVentilation[]
  readonly notAssessed: readonly EnergyGap[]
  readonly findings: readonly Finding[]
}

/** `modeTag`: in that mode; null in general. */
export interface EnergyGap { readonly subjectTag: Tag; readonly modeTag: Tag | null; readonly reason: string }

/** A value and where it comes from. */
export interface Sourced { readonly value: number; readonly from: 'recorded' | 'its blocks' | 'usual for the chemistry' | 'usual' }

export interface BatteryFacts {
  readonly tag: Tag
  readonly nominalVoltageV: number
  readonly chemistry: BatteryChemistry | null
  readonly capacityAh: Sourced | null
  readonly ratedTimeH: Sourced
  readonly depthOfDischargePercent: Sourced | null
  /** 1 where capacity hardly depends on the current. */
  readonly peukertNumber: Sourced | null
  readonly chargeEfficiencyPercent: Sourced | null
  readonly chargeCurrentMaxA: Sourced | null
  readonly dischargeCurrentMaxA: Sourced | null
}

// --- column method ---------------------------------------------------------------------------------------------------
export interface ColumnLoad {
  /** A battery, or a feeder. */
  readonly tag: Tag
  /** The panels and busbars that the feeder feeds; of a battery none. */
  readonly pointTags: readonly Tag[]
  readonly items: readonly ColumnItem[]
  readonly total: Outcome<{ columnASumA: number; columnBSumA: number; columnBLargestA: number }, { columnTotalA: number }>
  readonly designCurrentA: number | null
  readonly againstProtection: Comparison | null
  readonly againstPanel: Comparison | null
  /** The panel with the least rating. */
  readonly panelTag: Tag | null
}
export interface ColumnItem {
  readonly tag: Tag
  readonly currentA: number
  readonly column: LoadColumn | 'none'
  /** Why it stands there, in words. */
  readonly reason: string
}

// --- by operating mode -----------------------------------------------------------------------------------------------
export interface ModeEnergy {
  readonly modeTag: Tag
  readonly loads: readonly LoadDay[]
  readonly sources: readonly SourceDay[]
  readonly batteries: readonly BatteryDay[]
  readonly sun: SunDay | null
}
/** A load, or what it takes of one battery where that changes in the course of the day. */
export interface LoadDay {
  readonly itemTag: Tag
  /** Null where shore or a generator carries it. */
  readonly batteryTag: Tag | null
  /** Its own current, at its own voltage. */
  readonly ownCurrentA: number
  readonly ownFrom: 'the duty' | 'typical current' | 'maximum current' | 'power' | 'given for the circuit'
  readonly ownVoltageV: number
  /** Inverters and converters between it and the battery, nearest first, with the efficiency taken. */
  readonly through: readonly { readonly tag: Tag; readonly efficiencyPercent: number; readonly recorded: boolean }[]
  /** From the battery while it runs, in amperes of the battery. */
  readonly currentA: number
  readonly timeH: number
  readonly dutyPercent: number
  readonly charge: Outcome<{ currentA: number; timeH: number; dutyPercent: number; carriedAh: number }, { chargeAh: number; totalAh: number }>
  readonly energyWh: number
}
/** A charging source and a battery it charges. */
export interface SourceDay {
  readonly itemTag: Tag
  readonly batteryTag: Tag
  readonly kind: 'alternator' | 'charger' | 'converter' | 'solar'
  /** While it runs, before its duty; of solar the most in an hour. */
  readonly currentA: number
  readonly from: string
  readonly curve: Outcome | null
  /** Hours of the day in which it is in use and what feeds it runs. */
  readonly timeH: number
  readonly dutyPercent: number
  /** What it could give in a day if it were all taken. */
  readonly offeredAh: number
  readonly solar: SolarDay | null
}
export interface SolarDay {
  readonly panelTags: readonly Tag[]
  readonly output: Outcome
  /** What the controller's own limit cuts off in a day. */
  readonly cutAh: number
}
export interface SunDay {
  readonly latitudeDeg: number
  readonly dayNumber: number
  readonly sunshinePercent: number
  readonly sunshineRecorded: boolean
  readonly byDay: Outcome<{ latitudeDeg: number; dayNumber: number }, { declinationDeg: number; sunsetAngleDeg: number; daylightH: number; extraterrestrialKWhPerM2: number }>
  readonly onDeck: Outcome<{ extraterrestrialKWhPerM2: number; sunshinePercent: number }, { irradiationKWhPerM2: number }>
}
export interface BatteryDay {
  readonly batteryTag: Tag
  readonly loadAh: number
  readonly loadWh: number
  readonly offeredAh: number
  /** What converters take from it for other batteries, if those take all that is offered. */
  readonly converted: readonly { readonly itemTag: Tag; readonly takenAh: number }[]
  readonly balance: Outcome<{ surplusAh: number; chargeEfficiencyPercent: number; shortfallAh: number }, { balanceAh: number }>
  readonly endurance: Outcome<
    { loadCurrentA: number; capacityAh: number; ratedTimeH: number; peukertNumber: number; depthOfDischargePercent: number },
    { enduranceH: number; deliveredAh: number }
  >
  /** From the depth-of-discharge limit to full, with the shortest and the longest tail; null where nothing steady charges it. */
  readonly charging: { readonly least: Outcome<Readonly<Record<string, number>>, ChargingTime>; readonly most: Outcome<Readonly<Record<string, number>>, ChargingTime>; readonly sourceTags: readonly Tag[] } | null
  readonly run: ChargeRun | null
}
export interface ChargingTime { readonly chargeAh: number; readonly chargingCurrentA: number; readonly bulkTimeH: number; readonly chargingTimeH: number; readonly [name: string]: number }

/** State of charge hour by hour. */
export interface ChargeRun {
  readonly startPercent: number
  /** Lowest state of charge allowed. */
  readonly limitPercent: number
  readonly hours: readonly HourRow[]
  readonly lowestPercent: number
  readonly lowestHourNumber: number
  readonly emptyHoursCount: number
}
export interface HourRow {
  /** Average current of the loads, converters that charge another battery included. */
  readonly loadA: number
  /** What sources could give. */
  readonly offeredA: number
  /** What they gave: to the loads and into the battery. */
  readonly givenA: number
  readonly intoA: number
  readonly outOfA: number
  /** Charge that this took out, counted in rated capacity. */
  readonly drawnAh: number
  /** Share of the loads that an empty battery left without. */
  readonly unservedA: number
  /** At the end of the hour. */
  readonly chargePercent: number
}

// --- advice ----------------------------------------------------------------------------------------------------------
export interface BatterySizing {
  readonly batteryTag: Tag
  readonly modeTag: Tag
  readonly dailyAh: number
  readonly capacity: Outcome
  /** At 0 °C, for lead-acid. */
  readonly capacityCold: Outcome | null
  readonly chargerLeast: Outcome
  readonly chargerMost: Outcome
  readonly alternatorLeast: Outcome | null
}
export interface BatteryVentilation {
  readonly batteryTag: Tag
  readonly cellType: string
  readonly gasMilliAPerAh: number
  readonly outcome: Outcome<{ cellsCount: number; gasCurrentA: number }, { airM3PerH: number; openingCm2: number }>
}
