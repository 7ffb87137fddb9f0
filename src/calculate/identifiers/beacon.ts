/** What the hexadecimal identity of a 406 MHz beacon says of itself. */
import type { Outcome } from '../../model/results.js'
import { textOfBits } from '../../references/tables/modified-baudot.js'
import { runMethod } from '../run-method.js'
import { type BeaconCountryInput, beaconCountryCodeMethod, type BeaconCountryOutput } from './beacon-country-code.calc.js'

export interface BeaconReading {
  readonly generation: 'first' | 'second' | null
  readonly countryCode: Outcome<BeaconCountryInput, BeaconCountryOutput> | null
  /** How it is coded, in words. */
  readonly protocol: string | null
  /** Whom it belongs to by its coding; `unknown` where the coding does not say. */
  readonly carrier: 'ship' | 'person' | 'aircraft' | 'test' | 'unknown'
  /** Nine digits, where it carries the number of a ship. */
  readonly mmsi: string | null
  readonly callSign: string | null
  /** That its maker gave it, where it carries one. */
  readonly serialNumber: number | null
  /** Where in its bits MMSI, call sign or serial number stand; `inCharacters`: of six bits each. */
  readonly coded: CodedPart | null
  readonly faults: readonly string[]
}

export interface CodedPart { readonly from: number; readonly to: number; readonly bits: string; readonly inCharacters: boolean }

type Coding = Pick<BeaconReading, 'protocol' | 'carrier'> & Partial<Pick<BeaconReading, 'mmsi' | 'callSign' | 'serialNumber' | 'coded'>>

const firstGenerationDigits = 15
const secondGenerationDigits = 23

export function readBeacon(written: string): BeaconReading {
  const none = { generation: null, countryCode: null, protocol: null, carrier: 'unknown', mmsi: null, callSign: null, serialNumber: null, coded: null } as const
  const fault = formFault(written)
  if (fault !== null) return { ...none, faults: [fault] }
  const generation = written.length === firstGenerationDigits ? 'first' : 'second'
  const bits = [...written].map(digit => Number.parseInt(digit, 16).toString(2).padStart(4, '0')).join('')
  const countryCode = runMethod(beaconCountryCodeMethod, { leadingDigitsNumber: Number.parseInt(written.slice(0, 3), 16) })
  const country = countryCode.status === 'computed' ? String(countryCode.output.countryCodeNumber) : ''
  const coding = generation === 'first' ? firstGeneration(bits, country) : secondGeneration(bits)
  return {
    ...none, generation, countryCode, ...coding,
    faults: [
      ...(countryCode.status === 'computed' ? [] : [countryCode.reason]),
      ...(generation === 'second' && (bits[0] !== '1' || bits.slice(11, 14) !== '101') ? ['its fixed bits are not those of a second-generation beacon'] : []),
    ],
  }
}

function formFault(written: string): string | null {
  if (/[^0-9A-F]/.test(written)) return /^[0-9A-Fa-f]+$/.test(written) ? 'it is not written in capitals' : 'it holds more than the digits 0 to 9 and A to F'
  if (written.length === firstGenerationDigits || written.length === secondGenerationDigits) return null
  return `it has ${written.length} digits, where a beacon has ${firstGenerationDigits} or ${secondGenerationDigits}`
}

/** Bits of a message are counted from 26 in the 15 digits. */
const messageBits = (bits: string, from: number, to: number): string => bits.slice(from - 26, to - 25)
const messagePart = (bits: string, from: number, to: number, inCharacters: boolean): CodedPart => ({ from, to, bits: messageBits(bits, from, to), inCharacters })
const sixDigits = (row: string): string => String(Number.parseInt(row, 2)).padStart(6, '0')

const locationProtocols: Readonly<Record<string, Coding>> = {
  '0010': { protocol: 'ship’s beacon by MMSI, location protocol', carrier: 'ship' },
  '0011': { protocol: 'aircraft by its address, location protocol', carrier: 'aircraft' },
  '0100': { protocol: 'aircraft by serial number, location protocol', carrier: 'aircraft' },
  '0101': { protocol: 'aircraft by its operator, location protocol', carrier: 'aircraft' },
  '0110': { protocol: 'ship’s beacon by serial number, location protocol', carrier: 'ship' },
  '0111': { protocol: 'personal beacon by serial number, location protocol', carrier: 'person' },
  '1000': { protocol: 'aircraft, national location protocol', carrier: 'aircraft' },
  '1001': { protocol: 'aircraft in distress tracking', carrier: 'aircraft' },
  '1010': { protocol: 'ship’s beacon, national location protocol', carrier: 'ship' },
  '1011': { protocol: 'personal beacon, national location protocol', carrier: 'person' },
  '1100': { protocol: 'ship security alert', carrier: 'ship' },
  '1101': { protocol: 'return link location protocol', carrier: 'unknown' },
  '1110': { protocol: 'test, standard location protocol', carrier: 'test' },
  '1111': { protocol: 'test, national location protocol', carrier: 'test' },
}
const userProtocols: Readonly<Record<string, Coding>> = {
  '000': { protocol: 'orbitography, for the system’s own tests', carrier: 'test' },
  '001': { protocol: 'aircraft, user protocol', carrier: 'aircraft' },
  '010': { protocol: 'ship’s beacon, maritime user protocol', carrier: 'ship' },
  '011': { protocol: 'serial user protocol', carrier: 'unknown' },
  '100': { protocol: 'national user protocol', carrier: 'unknown' },
  '101': { protocol: 'short form of a second-generation identity', carrier: 'unknown' },
  '110': { protocol: 'ship’s beacon by radio call sign, user protocol', carrier: 'ship' },
  '111': { protocol: 'test, user protocol', carrier: 'test' },
}
const serialKinds: Readonly<Record<string, Coding>> = {
  '000': { protocol: 'aircraft by serial number, user protocol', carrier: 'aircraft' },
  '001': { protocol: 'aircraft by its operator, user protocol', carrier: 'aircraft' },
  '010': { protocol: 'ship’s beacon that floats free, by serial number', carrier: 'ship' },
  '011': { protocol: 'aircraft by its address, user protocol', carrier: 'aircraft' },
  '100': { protocol: 'ship’s beacon that does not float free, by serial number', carrier: 'ship' },
  '110': { protocol: 'personal beacon by serial number', carrier: 'person' },
}
const unknownCoding: Coding = { protocol: null, carrier: 'unknown' }

function firstGeneration(bits: string, country: string): Coding {
  const mmsi = (last: string): string | null => (country === '' ? null : country + last)
  if (messageBits(bits, 26, 26) === '0') {
    const code = messageBits(bits, 37, 40)
    const coding = locationProtocols[code] ?? unknownCoding
    return code === '0010' ? { ...coding, mmsi: mmsi(sixDigits(messageBits(bits, 41, 60))), coded: messagePart(bits, 41, 60, false) } : coding
  }
  const code = messageBits(bits, 37, 39)
  if (code === '011') return serialUser(bits, messageBits(bits, 40, 42))
  const coding = userProtocols[code]!
  if (code === '010') {
    const text = textOfBits(messageBits(bits, 40, 75))
    const coded = messagePart(bits, 40, 75, true)
    return text !== null && /^\d{6}$/.test(text) ? { ...coding, mmsi: mmsi(text), coded } : { ...coding, callSign: text === '' ? null : text, coded }
  }
  if (code === '110') return { ...coding, callSign: callSignOf(messageBits(bits, 40, 63), messageBits(bits, 64, 75)), coded: messagePart(bits, 40, 75, true) }
  return coding
}

/** By serial number of the beacon; of an aircraft's address or operator the bits mean something else. */
function serialUser(bits: string, kind: string): Coding {
  const coding = serialKinds[kind] ?? userProtocols['011']!
  return /by serial number/.test(coding.protocol!) ? { ...coding, serialNumber: Number.parseInt(messageBits(bits, 44, 63), 2), coded: messagePart(bits, 44, 63, false) } : coding
}

/** Four six-bit characters, then three decimal digits of four bits; ten stands for a blank. */
function callSignOf(characters: string, digits: string): string | null {
  const text = textOfBits(characters)
  const numbers = (digits.match(/.{4}/g) ?? []).map(row => Number.parseInt(row, 2))
  return text === null || numbers.some(number => number > 10) ? null : text + numbers.map(number => (number === 10 ? '' : String(number))).join('')
}

const vesselKinds: Readonly<Record<string, Coding>> = {
  '000': { protocol: 'by type approval and serial number', carrier: 'unknown' },
  '001': { protocol: 'with the ship’s MMSI', carrier: 'ship' },
  '010': { protocol: 'with a radio call sign', carrier: 'ship' },
  '011': { protocol: 'with the registration of an aircraft', carrier: 'aircraft' },
  '100': { protocol: 'with the address of an aircraft', carrier: 'aircraft' },
  '101': { protocol: 'with the operator of an aircraft', carrier: 'aircraft' },
}
/** An MMSI field that nobody filled in. */
const emptyMmsi = '000111111'

function secondGeneration(bits: string): Coding {
  if (bits[44] === '1') return { protocol: 'test', carrier: 'test' }
  const kind = bits.slice(45, 48)
  const coding = vesselKinds[kind] ?? unknownCoding
  if (kind === '001') {
    const mmsi = String(Number.parseInt(bits.slice(48, 78), 2)).padStart(9, '0')
    return { ...coding, mmsi: mmsi === emptyMmsi || mmsi.length > 9 ? null : mmsi, coded: { from: 49, to: 78, bits: bits.slice(48, 78), inCharacters: false } }
  }
  if (kind === '010') return { ...coding, callSign: textOfBits(bits.slice(48, 90)) || null, coded: { from: 49, to: 90, bits: bits.slice(48, 90), inCharacters: true } }
  return coding
}
