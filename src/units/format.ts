/** Prints every quantity, by the unit that ends its name. A no-break space keeps number and unit on one line. */
import type { UnitSystem } from '../model/vessel.js'
import { awgSizes, awgSize } from '../references/tables/astm-b258-awg.js'
import type { ConductorSize } from './conductor-size.js'
import { type PrintedUnit, roundingNoise, type UnitEnding, unitOf } from './quantity.js'

export interface SayOptions { readonly units: UnitSystem }
const inMetric: SayOptions = { units: 'metric' }

const noBreakSpace = '\u00A0'
/** More than any difference that counts needs; `toFixed` takes up to 100. */
const mostDigits = 20

/** A value in the reader's units: `say('routeLengthM', 6.4)` → "6.40 m". */
export function say(name: string, value: number, { units }: SayOptions = inMetric): string {
  const read = readIn(units, unitOfName(name), value)
  return withUnit(declared(name) ? trimmed(fixed(read.value, read.unit.digits)) : fixed(read.value, read.unit.digits), read.unit)
}

/** The same with the other system in brackets: "6.40 m (21.0 ft)". Without brackets where both systems read the same unit. */
export function sayBoth(name: string, value: number, { units }: SayOptions = inMetric): string {
  const other = units === 'metric' ? 'us' : 'metric'
  const own = say(name, value, { units })
  return unitOfName(name).counterpart === undefined ? own : `${own} (${say(name, value, { units: other })})`
}

/** A value and its limit, with as many digits as it takes to print two different numbers differently. */
export function sayAgainst(
  name: string, value: number, limitValue: number, { units }: SayOptions = inMetric,
): { readonly actual: string; readonly limit: string } {
  const unit = unitOfName(name)
  const actual = readIn(units, unit, value)
  const limit = readIn(units, unit, limitValue)
  const differ = Math.abs(value - limitValue) > roundingNoise * Math.abs(limitValue)
  let { digits } = actual.unit
  while (differ && digits < mostDigits && fixed(actual.value, digits) === fixed(limit.value, digits)) digits += 1
  return { actual: withUnit(fixed(actual.value, digits), actual.unit), limit: withUnit(fixed(limit.value, digits), limit.unit) }
}

/** The same in both systems, for what is read before anybody knows the reader's: "228.6 mm (9.00 in)". */
export function sayAgainstBoth(name: string, value: number, limitValue: number): { readonly actual: string; readonly limit: string } {
  const [metric, us] = (['metric', 'us'] as const).map(units => sayAgainst(name, value, limitValue, { units }))
  return { actual: `${metric!.actual} (${us!.actual})`, limit: `${metric!.limit} (${us!.limit})` }
}

/**
 * A value for a sum that is to be redone by hand, in the unit that the formula uses: inputs with six significant digits,
 * results and temperatures (of which a hundredth of a degree moves nothing that is printed) with four, so that the printed
 * inputs lead to the printed result.
 */
export function sayForWorking(name: string, value: number, role: 'input' | 'result' = 'input'): string {
  const unit = unitOfName(name)
  return withUnit(plain(value, role === 'input' && unit.quantity !== 'temperature' ? 6 : 4), unit)
}

/** "2.5 mm²", "14 AWG". */
export const saySize = (size: ConductorSize): string =>
  size.system === 'mm2' ? `${size.designation}${noBreakSpace}mm²` : `${size.designation}${noBreakSpace}AWG`

/** The size with the other system in brackets: "14 AWG (2.08 mm²)", "2.5 mm² (between 14 and 12 AWG)". */
export function saySizeBoth(size: ConductorSize): string {
  if (size.system === 'awg') return `${saySize(size)} (${say('crossSectionMm2', size.crossSectionMm2)})`
  const thinner = awgSizes.findLast(gauge => areaMm2(gauge) <= size.crossSectionMm2)
  const thicker = awgSizes.find(gauge => areaMm2(gauge) > size.crossSectionMm2)
  const gauges = thinner === undefined ? `thinner than ${thicker}` : thicker === undefined ? `thicker than ${thinner}` : `between ${thinner} and ${thicker}`
  return `${saySize(size)} (${gauges}${noBreakSpace}AWG)`
}
const areaMm2 = (gauge: string): number => awgSize(gauge)!.crossSectionMm2

function unitOfName(name: string): UnitEnding {
  const unit = unitOf(name)
  if (unit === null) throw new Error(`no unit ends the name ${name}`)
  return unit
}

function readIn(units: UnitSystem, unit: UnitEnding, value: number): { readonly value: number; readonly unit: PrintedUnit } {
  const { counterpart } = unit
  return counterpart?.system === units ? { value: counterpart.convert(value), unit: counterpart } : { value, unit }
}

/** Values chosen from a series (12 V, 7.5 A) print as they are written on the device. */
const declared = (name: string): boolean => /^(nominal|rated)[A-Z]/.test(name)

/** With `digits` after the point; a value that would print as nothing keeps two significant digits. */
function fixed(value: number, digits: number): string {
  const written = rounded(value, digits)
  if (Number(written) !== 0) return written
  return value === 0 ? (0).toFixed(digits) : plain(value, 2)
}

/** As people round the decimal they see: 0.35 to 0.4, though its binary is a little less. */
function rounded(value: number, digits: number): string {
  const shifted = Math.round(Number(`${Math.abs(Number(value.toPrecision(15)))}e${digits}`))
  return Number.isFinite(shifted) ? ((Math.sign(value) * shifted) / 10 ** digits).toFixed(digits) : value.toFixed(digits)
}

const plain = (value: number, significantDigits: number): string => significant(significantDigits).format(value).replace(/^-0$/, '0')

/** Making one takes far longer than using it. */
const formats = new Map<number, Intl.NumberFormat>()
function significant(digits: number): Intl.NumberFormat {
  const made = formats.get(digits) ?? new Intl.NumberFormat('en-US', { maximumSignificantDigits: digits, useGrouping: false })
  formats.set(digits, made)
  return made
}

const trimmed = (written: string): string => (written.includes('.') ? written.replace(/\.?0+$/, '') : written)
const withUnit = (written: string, { symbol }: PrintedUnit): string => (symbol === '' ? written : `${written}${noBreakSpace}${symbol}`)
