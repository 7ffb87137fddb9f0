/** The hexadecimal identity of a beacon, held against the vessel that carries it. */
import type { IdentityPart } from '../../model/results/identifiers.js'
import type { Equipment, Vessel } from '../../model/vessel.js'
import type { Citation } from '../../references/bibliography.js'
import { countryName, sameState } from '../../references/tables/countries.js'
import { countryOfMid, midCitation } from '../../references/tables/maritime-identification-digits.js'
import { modifiedBaudotCitation } from '../../references/tables/modified-baudot.js'
import { type BeaconReading, type CodedPart, readBeacon } from './beacon.js'
import { beaconIdentityForm, beaconNotForAShip, beaconOfAnotherCountry, beaconOfAnotherShip } from './findings.js'
import { type Fault, type Judged, judged } from './judged.js'
import { midInWords, readMmsi } from './mmsi.js'

export function checkBeacon(vessel: Vessel, item: Equipment, identity: string, flagCountry: string | null): Judged {
  const reading = readBeacon(identity)
  return judged(vessel, {
    what: 'beacon identity', holderTag: item.tag, field: 'beaconIdentity', value: identity,
    form: reading.generation === null ? null : `${reading.generation} generation${reading.protocol === null ? '' : `, ${reading.protocol}`}`,
    parts: partsOf(reading, identity),
    faults: reading.faults.length > 0 ? [{ kind: beaconIdentityForm, words: reading.faults.join('; ') }] : carrierFaults(vessel, reading, flagCountry),
    citations: citationsOf(reading),
    countryCode: reading.countryCode,
  })
}

const countryOfBeacon = ({ countryCode }: BeaconReading): number | null => (countryCode?.status === 'computed' ? countryCode.output.countryCodeNumber : null)

/** The first that holds: whoever is sent to another ship has no use for the country. */
function carrierFaults(vessel: Vessel, reading: BeaconReading, flagCountry: string | null): readonly Fault[] {
  const { mmsi, callSign } = vessel.identity
  if (reading.carrier === 'aircraft' || reading.carrier === 'test') return [{ kind: beaconNotForAShip, words: `coded as ${reading.protocol}` }]
  if (reading.mmsi !== null && mmsi !== null && reading.mmsi !== mmsi) return [{ kind: beaconOfAnotherShip, words: `coded with MMSI ${reading.mmsi}, the vessel’s own is ${mmsi}` }]
  if (reading.callSign !== null && callSign !== null && reading.callSign !== callSign) {
    return [{ kind: beaconOfAnotherShip, words: `coded with call sign ${reading.callSign}, the vessel’s own is ${callSign}` }]
  }
  const midNumber = countryOfBeacon(reading)
  const country = midNumber === null ? null : countryOfMid(midNumber)
  const home = homeOf(mmsi, flagCountry)
  // A personal beacon is registered where its owner lives.
  if (midNumber === null || country === null || home === null || reading.carrier === 'person' || sameState(country, home.country)) return []
  return [{ kind: beaconOfAnotherCountry, words: `country code ${midInWords({ midNumber, country })}; ${home.words}` }]
}

function homeOf(mmsi: string | null, flagCountry: string | null): { readonly country: string; readonly words: string } | null {
  const own = mmsi === null ? null : readMmsi(mmsi)
  if (own !== null && own.country !== null) return { country: own.country, words: `the vessel’s MMSI has ${midInWords(own)}` }
  return flagCountry === null ? null : { country: flagCountry, words: `her flag is ${countryName(flagCountry)}` }
}

function partsOf(reading: BeaconReading, identity: string): readonly IdentityPart[] {
  const midNumber = countryOfBeacon(reading)
  if (midNumber === null) return []
  return [
    { part: identity.slice(0, 3), meaning: `country code ${midInWords({ midNumber, country: countryOfMid(midNumber) })}` },
    ...(reading.coded === null ? [] : codedPart(reading, reading.coded, identity)),
  ]
}

/** The bits themselves, four or six together, so that they can be read by hand. */
function codedPart({ generation, mmsi, callSign, serialNumber }: BeaconReading, { from, to, bits, inCharacters }: CodedPart, identity: string): readonly IdentityPart[] {
  const says = serialNumber !== null ? `serial number ${serialNumber}`
    : mmsi === null ? callSign === null ? null : `call sign ${callSign}` : generation === 'first' ? `last six digits of MMSI ${mmsi}` : `MMSI ${mmsi}`
  if (says === null) return []
  const row = (bits.match(inCharacters ? /.{1,6}/g : /.{1,4}/g) ?? []).join(' ')
  return [{ part: identity.slice(3), meaning: `bits ${from} to ${to}, ${row}${inCharacters ? ' in the modified Baudot code' : ' as a number'}: ${says}` }]
}

function citationsOf({ generation, coded }: BeaconReading): readonly Citation[] {
  const specification: Citation = generation === 'second' ? { source: 'cospas-t018', place: 'composition of the 23 digits' } : { source: 'cospas-t001', place: 'coding of the message' }
  return [specification, midCitation, ...(coded?.inCharacters === true ? [modifiedBaudotCitation] : [])]
}
