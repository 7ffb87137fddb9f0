/**
 * Reads a quantity as an author writes it ("6.4 m", "21 ft 6 in", "300 mA") into the one unit that the model keeps.
 * A number without a unit is refused: nobody can tell afterwards whether it was metres or feet.
 */
import { awgSize } from '../references/tables/astm-b258-awg.js'
import type { ConductorSize } from './conductor-size.js'
import { celsiusFromF, kgPerLb, kmPerNmi, mPerFt, mmPerIn } from './convert.js'

export type Parsed<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly expected: string }

interface Definition {
  /** "a length": how the message names it. */
  readonly name: string
  readonly example: string
  readonly signed: boolean
  /** Spelling of the unit, and the value in the model's unit. The message lists those spellings that are not in `alike`. */
  readonly units: Readonly<Record<string, (value: number) => number>>
  /** Second spellings of a listed unit. */
  readonly alike?: Readonly<Record<string, string>>
  /** Feet followed by inches. */
  readonly feetAndInches?: (feet: number, inches: number) => number
}

const asIs = (value: number): number => value
const lengthUnits = {
  m: asIs,
  cm: (v: number) => v / 100,
  mm: (v: number) => v / 1000,
  ft: (v: number) => v * mPerFt,
  in: (v: number) => (v * mmPerIn) / 1000,
}
const feetAndInches = (feet: number, inches: number): number => feet * mPerFt + (inches * mmPerIn) / 1000

const definitions = {
  /** → m */
  length: { name: 'a length', example: '6.4 m', signed: false, units: lengthUnits, feetAndInches },
  /** → m, from the vessel's reference point; may be negative */
  coordinate: { name: 'a distance from the reference point', example: '-0.35 m', signed: true, units: lengthUnits, feetAndInches },
  /** → mm */
  diameter: { name: 'a diameter', example: '32 mm', signed: false, units: { mm: asIs, cm: v => v * 10, in: v => v * mmPerIn } },
  /** → A */
  current: { name: 'a current', example: '10 A', signed: false, units: { A: asIs, mA: v => v / 1000, kA: v => v * 1000 } },
  /** → V */
  voltage: { name: 'a voltage', example: '12 V', signed: false, units: { V: asIs, mV: v => v / 1000 } },
  /** → W */
  power: { name: 'a power', example: '20 W', signed: false, units: { W: asIs, kW: v => v * 1000, mW: v => v / 1000 } },
  /** → Ah */
  charge: { name: 'a capacity', example: '100 Ah', signed: false, units: { Ah: asIs } },
  /** → Wh */
  energy: { name: 'an energy', example: '1.2 kWh', signed: false, units: { Wh: asIs, kWh: v => v * 1000 } },
  /** → kg */
  mass: { name: 'a mass', example: '2.3 kg', signed: false, units: { kg: asIs, g: v => v / 1000, t: v => v * 1000, lb: v => v * kgPerLb } },
  /** → °C */
  temperature: {
    name: 'a temperature', example: '105 °C', signed: true,
    units: { '°C': asIs, C: asIs, '°F': celsiusFromF, F: celsiusFromF },
  },
  /** → % */
  percent: { name: 'a percentage', example: '80 %', signed: false, units: { '%': asIs } },
  /** → Ω; the second Ω is the ohm sign of Unicode, the first the Greek letter */
  resistance: {
    name: 'a resistance', example: '120 ohm', signed: false,
    units: { ohm: asIs, mohm: v => v / 1000, kohm: v => v * 1000 },
    alike: { '\u03A9': 'ohm', '\u2126': 'ohm', 'm\u03A9': 'mohm', 'm\u2126': 'mohm', 'k\u03A9': 'kohm', 'k\u2126': 'kohm' },
  },
  /** → mΩ */
  'internal resistance': {
    name: 'an internal resistance', example: '2.5 mohm', signed: false,
    units: { mohm: asIs, ohm: v => v * 1000 }, alike: { 'm\u03A9': 'mohm', 'm\u2126': 'mohm', '\u03A9': 'ohm', '\u2126': 'ohm' },
  },
  /** → MΩ */
  'insulation resistance': {
    name: 'an insulation resistance', example: '20 Mohm', signed: false,
    units: { Mohm: asIs, kohm: v => v / 1000, Gohm: v => v * 1000 },
    alike: { 'M\u03A9': 'Mohm', 'M\u2126': 'Mohm', 'k\u03A9': 'kohm', 'k\u2126': 'kohm', 'G\u03A9': 'Gohm', 'G\u2126': 'Gohm' },
  },
  /** → Hz */
  frequency: { name: 'a frequency', example: '50 Hz', signed: false, units: { Hz: asIs } },
  /** → MHz */
  'radio frequency': { name: 'a radio frequency', example: '156.8 MHz', signed: false, units: { MHz: asIs, kHz: v => v / 1000, GHz: v => v * 1000 } },
  /** → kHz */
  'sound frequency': { name: 'a sound frequency', example: '200 kHz', signed: false, units: { kHz: asIs, Hz: v => v / 1000, MHz: v => v * 1000 } },
  /** → 1/s */
  rate: { name: 'a rate', example: '10 Hz', signed: false, units: { Hz: asIs, '/s': asIs, '/min': v => v / 60 } },
  /** → µs */
  'pulse length': { name: 'a pulse length', example: '0.08 us', signed: false, units: { us: asIs, ns: v => v / 1000, ms: v => v * 1000 }, alike: { µs: 'us', μs: 'us' } },
  /** → dBi */
  gain: { name: 'a gain', example: '3 dBi', signed: true, units: { dBi: asIs } },
  /** → dB */
  loss: { name: 'a loss', example: '0.4 dB', signed: false, units: { dB: asIs } },
  /** → dB/100 m */
  attenuation: {
    name: 'an attenuation', example: '15.4 dB/100 m', signed: false,
    units: { 'dB/100 m': asIs, 'dB/m': v => v * 100, 'dB/100 ft': v => v / mPerFt }, alike: { 'dB/100m': 'dB/100 m', 'dB/100ft': 'dB/100 ft' },
  },
  /** → ° */
  angle: { name: 'an angle', example: '20 °', signed: false, units: { '°': asIs, deg: asIs } },
  /** → NM */
  'distance at sea': { name: 'a distance at sea', example: '2 NM', signed: false, units: { NM: asIs, km: v => v / kmPerNmi } },
  /** → cd */
  intensity: { name: 'a luminous intensity', example: '4.3 cd', signed: false, units: { cd: asIs } },
  /** → µT */
  'flux density': { name: 'a magnetic flux density', example: '18 uT', signed: false, units: { uT: asIs, nT: v => v / 1000 }, alike: { µT: 'uT', μT: 'uT' } },
  /** → Ω/km */
  'resistance per length': {
    name: 'a resistance per length', example: '57 ohm/km', signed: false,
    units: { 'ohm/km': asIs, 'ohm/100 m': v => v * 10, 'ohm/m': v => v * 1000 },
    alike: { '\u03A9/km': 'ohm/km', '\u2126/km': 'ohm/km', '\u03A9/m': 'ohm/m', '\u2126/m': 'ohm/m', '\u03A9/100 m': 'ohm/100 m', '\u2126/100 m': 'ohm/100 m' },
  },
  /** → 1/min */
  speed: { name: 'a speed of rotation', example: '1800 rpm', signed: false, units: { rpm: asIs } },
  /** → h */
  duration: { name: 'a duration', example: '20 h', signed: false, units: { h: asIs, min: v => v / 60, d: v => v * 24 } },
  /** → ms */
  'short time': { name: 'a time', example: '40 ms', signed: false, units: { ms: asIs, s: v => v * 1000, min: v => v * 60_000 } },
  /** → °, north positive */
  latitude: { name: 'a latitude', example: '50.3 °N', signed: false, units: { '°N': asIs, '°S': v => -v, N: asIs, S: v => -v } },
  /** → Mbit/s */
  'data rate': {
    name: 'a data rate', example: '100 Mbit/s', signed: false,
    units: { 'Mbit/s': asIs, 'kbit/s': v => v / 1000, 'Gbit/s': v => v * 1000 },
  },
} as const satisfies Record<string, Definition>

export type Dimension = keyof typeof definitions | 'conductor size'
export type DimensionValue<D extends Dimension> = D extends 'conductor size' ? ConductorSize : number

const digits = String.raw`(?:\d+(?:\.\d+)?|\.\d+)`
const unitsPattern = ({ units, alike = {} }: Definition): string =>
  [...Object.keys(units), ...Object.keys(alike)].sort((a, b) => b.length - a.length).join('|')

function patternSource(of: Definition): string {
  const sign = of.signed ? '[-−]?' : ''
  const simple = String.raw`(${sign}${digits})\s*(${unitsPattern(of)})`
  const compound = String.raw`(${sign}${digits})\s*ft\s+(${digits})\s*in`
  return String.raw`^\s*(?:${simple}${of.feetAndInches ? `|${compound}` : ''})\s*$`
}
const conductorPattern = new RegExp(
  String.raw`^\s*(?:(${digits})\s*mm[2²]|([1-4]\/0|0{1,4}|[1-9]\d?)\s*AWG|AWG\s*([1-4]\/0|0{1,4}|[1-9]\d?))\s*$`,
)
const patterns = new Map<Dimension, RegExp>([
  ['conductor size', conductorPattern],
  ...Object.entries(definitions).map(([name, of]) => [name as Dimension, new RegExp(patternSource(of))] as const),
])

/** The spellings that are accepted, for the JSON Schema that editors check against while the author types. */
export const quantityPattern = (dimension: Dimension): RegExp => patterns.get(dimension)!

/**
 * A quantity in the model's unit (named beside each dimension above); a conductor size keeps the designation it is sold by.
 *
 * Errors   `expected` completes the sentence "expected …" and names the accepted units with an example
 */
export function parseQuantity<D extends Dimension>(text: string, dimension: D): Parsed<DimensionValue<D>> {
  const value = dimension === 'conductor size' ? readConductorSize(text) : readNumber(text, dimension)
  if (value === null) return { ok: false, expected: commaHint(text) ?? expectation(dimension) }
  // The compiler does not follow that the branch above settles D.
  return { ok: true, value: value as DimensionValue<D> }
}

const numberOf = (written: string): number => Number(written.replace('−', '-'))

function readNumber(text: string, dimension: Exclude<Dimension, 'conductor size'>): number | null {
  const { units, alike, feetAndInches }: Definition = definitions[dimension]
  const [, simple, unit, feet, inches] = quantityPattern(dimension).exec(text) ?? []
  let value = Number.NaN
  if (simple !== undefined && unit !== undefined) {
    value = units[alike?.[unit] ?? unit]!(numberOf(simple))
  } else if (feet !== undefined && inches !== undefined && feetAndInches && numberOf(inches) < 12) {
    value = (/^[-−]/.test(feet) ? -1 : 1) * feetAndInches(Math.abs(numberOf(feet)), numberOf(inches))
  }
  return Number.isFinite(value) ? value : null
}

function readConductorSize(text: string): ConductorSize | null {
  const [, area, gaugeBefore, gaugeAfter] = conductorPattern.exec(text) ?? []
  if (area === undefined) return awgSize(gaugeBefore ?? gaugeAfter ?? '')
  const crossSectionMm2 = numberOf(area)
  const usable = crossSectionMm2 > 0 && Number.isFinite(crossSectionMm2)
  return usable ? { system: 'mm2', designation: String(crossSectionMm2), crossSectionMm2 } : null
}

function expectation(dimension: Dimension): string {
  if (dimension === 'conductor size') {
    return 'a conductor size with its unit (mm2, or AWG from 24 AWG to 4/0 AWG), for example "2.5 mm2" or "14 AWG"'
  }
  const { name, units, example } = definitions[dimension]
  return `${name} with its unit (${inWords(Object.keys(units))}), for example "${example}"`
}

/** "m, cm, mm, ft or in" */
const inWords = (names: readonly string[]): string =>
  names.length < 2 ? names.join() : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`

/** A hint of its own for a decimal comma, which is either a decimal point or a thousands separator in the author's mind. */
function commaHint(text: string): string | null {
  const written = text.trim()
  if (!/^[-−]?\d+,\d/.test(written)) return null
  const asPoint = `"${written.replace(',', '.')}"${/^[-−]?[\d,]+$/.test(written) ? ' and the unit after it' : ''}`
  return /^[-−]?\d{1,3}(,\d{3})+(?!\d)/.test(written)
    ? `a decimal point, and nothing between thousands: "${written.replaceAll(',', '')}" or ${asPoint}`
    : `a decimal point: ${asPoint}`
}
