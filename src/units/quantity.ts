/**
 * Quantities are plain numbers whose name ends in their unit. The list of endings is closed, so a test can hold every
 * numeric name in the code against it, and one formatter can print any of them.
 */
import { cmilFromMm2, fahrenheitFromC, ftFromM, inFromMm, lbFromKg, mm2PerCmil, mPerFt } from './convert.js'

export type Quantities = Readonly<Record<string, number>>

/**
 * Share of a value below which a difference is not one: sums of decimal fractions carry an error in their last binary
 * digits, and three loads of 0.1 A do not exceed 0.3 A.
 */
export const roundingNoise = 1e-9

/** How a unit prints. */
export interface PrintedUnit {
  readonly symbol: string
  /** Digits after the point in tables; the formatter adds more when a value would print equal to its limit. */
  readonly digits: number
}
/** The unit of the other system in which the same quantity is read. */
export interface Counterpart extends PrintedUnit {
  readonly system: 'metric' | 'us'
  readonly convert: (value: number) => number
}
export interface UnitEnding extends PrintedUnit {
  readonly ending: string
  readonly quantity: string
  /** Absent where both systems read the same unit. */
  readonly counterpart?: Counterpart
}

const us = (symbol: string, digits: number, convert: (value: number) => number): Counterpart => ({ system: 'us', symbol, digits, convert })
const metric = (symbol: string, digits: number, convert: (value: number) => number): Counterpart => ({ system: 'metric', symbol, digits, convert })

export const unitEndings = [
  { ending: 'Mm2', symbol: 'mm²', quantity: 'area', digits: 2, counterpart: us('cmil', 0, cmilFromMm2) },
  { ending: 'Cmil', symbol: 'cmil', quantity: 'area', digits: 0, counterpart: metric('mm²', 2, areaCmil => areaCmil * mm2PerCmil) },
  { ending: 'Mm', symbol: 'mm', quantity: 'length', digits: 1, counterpart: us('in', 2, inFromMm) },
  { ending: 'OhmPerKm', symbol: 'Ω/km', quantity: 'resistance per length', digits: 3, counterpart: us('Ω/1000 ft', 3, ohmPerKm => ohmPerKm * mPerFt) },
  { ending: 'OhmMm2PerM', symbol: 'Ω·mm²/m', quantity: 'resistivity', digits: 6 },
  { ending: 'MilliOhm', symbol: 'mΩ', quantity: 'resistance', digits: 2 },
  { ending: 'MOhm', symbol: 'MΩ', quantity: 'insulation resistance', digits: 1 },
  { ending: 'KWhPerM2', symbol: 'kWh/m²', quantity: 'irradiation', digits: 2 },
  { ending: 'M3PerH', symbol: 'm³/h', quantity: 'flow of air', digits: 2 },
  { ending: 'Cm2', symbol: 'cm²', quantity: 'opening', digits: 1 },
  { ending: 'Rpm', symbol: '1/min', quantity: 'speed of rotation', digits: 0 },
  { ending: 'Hz', symbol: 'Hz', quantity: 'frequency', digits: 0 },
  { ending: 'Deg', symbol: '°', quantity: 'angle', digits: 1 },
  { ending: 'Days', symbol: 'd', quantity: 'time', digits: 0 },
  { ending: 'Ms', symbol: 'ms', quantity: 'time', digits: 0 },
  { ending: 'Va', symbol: 'VA', quantity: 'apparent power', digits: 0 },
  { ending: 'MHz', symbol: 'MHz', quantity: 'frequency', digits: 3 },
  { ending: 'KHz', symbol: 'kHz', quantity: 'frequency', digits: 0 },
  { ending: 'Us', symbol: 'µs', quantity: 'time', digits: 2 },
  { ending: 'Db', symbol: 'dB', quantity: 'ratio of powers', digits: 2 },
  { ending: 'Dbi', symbol: 'dBi', quantity: 'gain of an antenna', digits: 1 },
  { ending: 'DbPer100M', symbol: 'dB/100 m', quantity: 'attenuation', digits: 2, counterpart: us('dB/100 ft', 2, lossDbPer100M => lossDbPer100M * mPerFt) },
  { ending: 'WPerM2', symbol: 'W/m²', quantity: 'power density', digits: 2 },
  { ending: 'MicroT', symbol: 'µT', quantity: 'magnetic flux density', digits: 2 },
  { ending: 'Cd', symbol: 'cd', quantity: 'luminous intensity', digits: 1 },
  { ending: 'Nmi', symbol: 'NM', quantity: 'distance at sea', digits: 1 },
  { ending: 'Km', symbol: 'km', quantity: 'distance', digits: 2 },
  { ending: 'KgM', symbol: 'kg·m', quantity: 'moment of a mass', digits: 1, counterpart: us('lb·ft', 1, momentKgM => ftFromM(lbFromKg(momentKgM))) },
  { ending: 'Baud', symbol: 'Bd', quantity: 'signalling rate', digits: 0 },
  { ending: 'BitPerS', symbol: 'bit/s', quantity: 'data rate', digits: 0 },
  { ending: 'PerS', symbol: '1/s', quantity: 'rate', digits: 2 },
  { ending: 'OhmPerM', symbol: 'Ω/m', quantity: 'resistance per length', digits: 4 },
  { ending: 'MilliA', symbol: 'mA', quantity: 'current', digits: 1 },
  { ending: 'MbitPerS', symbol: 'Mbit/s', quantity: 'data rate', digits: 0 },
  { ending: 'Ohm', symbol: 'Ω', quantity: 'resistance', digits: 4 },
  { ending: 'Percent', symbol: '%', quantity: 'ratio', digits: 1 },
  { ending: 'PerK', symbol: '1/K', quantity: 'temperature coefficient', digits: 5 },
  { ending: 'Factor', symbol: '', quantity: 'factor', digits: 3 },
  { ending: 'Count', symbol: '', quantity: 'number', digits: 0 },
  { ending: 'Number', symbol: '', quantity: 'number', digits: 0 },
  { ending: 'Ah', symbol: 'Ah', quantity: 'charge', digits: 0 },
  { ending: 'Wh', symbol: 'Wh', quantity: 'energy', digits: 0 },
  { ending: 'Kg', symbol: 'kg', quantity: 'mass', digits: 1, counterpart: us('lb', 1, lbFromKg) },
  { ending: 'Ft', symbol: 'ft', quantity: 'length', digits: 1, counterpart: metric('m', 2, lengthFt => lengthFt * mPerFt) },
  { ending: 'H', symbol: 'h', quantity: 'time', digits: 1 },
  { ending: 'A', symbol: 'A', quantity: 'current', digits: 1 },
  { ending: 'V', symbol: 'V', quantity: 'voltage', digits: 2 },
  { ending: 'W', symbol: 'W', quantity: 'power', digits: 1 },
  { ending: 'C', symbol: '°C', quantity: 'temperature', digits: 0, counterpart: us('°F', 0, fahrenheitFromC) },
  { ending: 'M', symbol: 'm', quantity: 'length', digits: 2, counterpart: us('ft', 1, ftFromM) },
] as const satisfies readonly UnitEnding[]

/** The unit ending of a name such as `voltageDropV`, or null. The longest ending wins. */
export function unitOf(name: string): UnitEnding | null {
  return longestFirst.find(({ ending }) => name.endsWith(ending)) ?? null
}
const longestFirst: readonly UnitEnding[] = unitEndings.toSorted((a, b) => b.ending.length - a.ending.length)
