/** What was measured on a bus against what follows from its record. */
import { lookup } from '../../model/lookup.js'
import type { Backbone, BusLoad, BusReading, BusSupply, BusTermination, TeeSupply } from '../../model/results/can-bus.js'
import type { CanBus, Measurement, Vessel } from '../../model/vessel.js'
import { lowestDeviceV, readingTolerance, terminationTolerance, terminatorOhm } from '../../references/tables/can-rules.js'
import { exceeds } from '../compare.js'
import { say } from '../../units/format.js'

export interface Expected { readonly bus: CanBus; readonly backbone: Backbone; readonly termination: BusTermination; readonly supply: BusSupply; readonly load: BusLoad }

/** In the order of their dates; those without one first. */
export function readingsOf(vessel: Vessel, expected: Expected): readonly BusReading[] {
  const own = vessel.measurements.filter(({ subjectTag }) => subjectTag === expected.bus.tag)
  return own.toSorted((a, b) => ((a.date ?? '') < (b.date ?? '') ? -1 : (a.date ?? '') > (b.date ?? '') ? 1 : 0)).flatMap(measurement => [
    ...(measurement.resistanceOhm === null ? [] : [resistanceReading(measurement, measurement.resistanceOhm, expected)]),
    ...(measurement.busLoadPercent === null ? [] : [loadReading(measurement, measurement.busLoadPercent, expected)]),
    ...(measurement.voltageV === null ? [] : [voltageReading(vessel, measurement, measurement.voltageV, expected)]),
  ])
}

const about = ({ number, date, atTag }: Measurement) => ({ number, date, atTag, from: null as BusReading['from'] })

function resistanceReading(measurement: Measurement, measured: number, { termination: { expected } }: Expected): BusReading {
  const calculated = expected.status === 'computed' ? expected.output.resistanceOhm : null
  const agrees = calculated === null ? null : Math.abs(measured - calculated) <= (terminationTolerance.sharePercent / 100) * calculated
  return { ...about(measurement), quantity: 'resistanceOhm', measured, calculated, agrees, words: agrees === true ? null : resistanceMeaning(measured) }
}

/** What a resistance between the data wires usually means: a whole number of terminators, or a fault of the wires. */
function resistanceMeaning(measuredOhm: number): string {
  const count = terminatorOhm / measuredOhm
  if (measuredOhm < 10) return 'the data wires touch each other'
  if (measuredOhm > 3 * terminatorOhm) return 'no terminator is reached: the backbone is open close by'
  if (count < 1.5) return 'one terminator is missing, or the backbone is open on the way to it'
  if (count < 2.5) return 'two terminators are fitted'
  return `${Math.round(count)} terminators are fitted`
}

function loadReading(measurement: Measurement, measured: number, { load: { total, missing } }: Expected): BusReading {
  const bare = { ...about(measurement), quantity: 'busLoadPercent' as const, measured }
  if (total.status === 'not computed') return { ...bare, calculated: null, agrees: null, words: total.reason }
  const { nominalLoadPercent, worstLoadPercent } = total.output
  const below = measured < nominalLoadPercent - readingTolerance.loadPercent
  const above = measured > worstLoadPercent + readingTolerance.loadPercent
  const words = below ? 'devices that were counted are silent, or send less often than recorded'
    : !above ? null : missing.length > 0 ? 'what some devices send is not recorded' : 'devices send more, or more often, than recorded, or frames are repeated after faults'
  return { ...bare, calculated: nominalLoadPercent, agrees: above && missing.length > 0 ? null : !(above || below), words }
}

/** The sum is made for every device at its most, so a reading may well be higher, not lower. */
function voltageReading(vessel: Vessel, measurement: Measurement, measured: number, { backbone, supply }: Expected): BusReading {
  const place = placeOf(vessel, measurement, backbone, supply)
  const bare = { ...about(measurement), quantity: 'voltageV' as const, measured }
  if (typeof place === 'string') return { ...bare, calculated: null, agrees: null, words: place }
  if (exceeds(measured, lowestDeviceV)) return { ...bare, from: place.from, calculated: place.voltageV, agrees: false, words: `a device needs ${say('voltageV', lowestDeviceV.value)}` }
  const agrees = measured >= place.voltageV - readingTolerance.voltageV
  return { ...bare, from: place.from, calculated: place.voltageV, agrees, words: agrees ? null : 'a joint or the cable has more resistance than reckoned, more hangs on the bus, or the source was low' }
}

/** With the voltage at the source at the same time it is reckoned from there, else from the nominal voltage. */
function placeOf(vessel: Vessel, { atTag, sourceVoltageV }: Measurement, { stations }: Backbone, { sections }: BusSupply): { readonly voltageV: number; readonly from: NonNullable<BusReading['from']> } | string {
  if (atTag === null) return 'the reading does not say at which tee or device it was taken'
  const atDevice = lookup(vessel).items.has(atTag)
  for (const { solved } of sections) {
    const tee = solved?.tees.find(({ tag, position }) => tag === atTag || stations[position]!.device?.tag === atTag)
    const calculatedV = tee === undefined ? null : voltageAt(tee, atDevice && tee.tag !== atTag)
    if (solved == null || calculatedV === null) continue
    const { nominalVoltageV } = solved.insertion
    return {
      voltageV: sourceVoltageV === null || nominalVoltageV === null ? calculatedV : calculatedV + sourceVoltageV - nominalVoltageV,
      from: { leftV: calculatedV, nominalVoltageV, sourceVoltageV },
    }
  }
  return `the voltage at ${atTag} is not assessed`
}
const voltageAt = ({ device, voltageV }: TeeSupply, atDevice: boolean): number | null => (atDevice ? device?.voltageV ?? null : voltageV)
