/** How the boat is used, and what was measured on her. */
import type { Tag } from '../vessel.js'

/** A state in which the boat is used: at anchor, under way, in harbour. */
export interface OperatingMode {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  /** How long its run, hour by hour, is reckoned. */
  readonly daysCount: number
  /** 1 to 12: decides what the sun gives. */
  readonly monthNumber: number | null
  /** Share of the hours of daylight in which the sun shines. */
  readonly sunshinePercent: number | null
  /** State of charge of every battery at the start. */
  readonly startChargePercent: number
}

/** What runs in an operating mode, and when: a load as well as a source. What has no row does not run. */
export interface Duty {
  readonly modeTag: Tag
  /** Equipment, or a circuit for all that it feeds. */
  readonly itemTag: Tag
  /** Hours of the day, `toH` perhaps beyond midnight (22 to 30); empty: the whole day. */
  readonly periods: readonly Period[]
  /** Share of its current that it takes, or gives, on average in those hours. */
  readonly dutyPercent: number
  /** In place of the item's own current. */
  readonly currentA: number | null
  /** Of an alternator: the speed of its engine. */
  readonly speedRpm: number | null
}
export interface Period { readonly fromH: number; readonly toH: number }

/** What was read on one occasion. */
export interface Measurement {
  /** Number of the reading, as on the test sheet. */
  readonly number: string
  /** Circuit, cable, CAN bus, battery or item. */
  readonly subjectTag: Tag
  /** The load at which a circuit was measured, where it has several; the device or tee at which a CAN bus was. */
  readonly atTag: Tag | null
  readonly date: string | null
  readonly by: string | null
  readonly instrument: string | null
  /** At the load, with the load on. */
  readonly voltageV: number | null
  /** At the source at the same time. */
  readonly sourceVoltageV: number | null
  readonly voltageDropV: number | null
  readonly currentA: number | null
  readonly insulationMOhm: number | null
  readonly polarity: 'right' | 'reversed' | null
  readonly residualCurrentA: number | null
  readonly tripTimeMs: number | null
  readonly internalResistanceMilliOhm: number | null
  /** Of a CAN bus, between its data wires, unpowered. */
  readonly resistanceOhm: number | null
  readonly busLoadPercent: number | null
  /** Voltage standing wave ratio, at the end where it was read. */
  readonly vswrFactor: number | null
  readonly notes: string | null
}
