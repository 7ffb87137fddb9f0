/** What was measured on a bus against what follows from its record. */
import { atLeast, atMost } from '../../findings/finding.js'
import { lookup } from '../../model/lookup.js'
import type { Backbone, BusLoad, BusReading, BusSupply, BusTermination, TeeSupply } from '../../model/results/can-bus.js'
import type { Comparison } from '../../model/results.js'
import type { CanBus, Measurement, Vessel } from '../../model/vessel.js'
import { lowestDeviceV, readingTolerance, terminationTolerance, terminatorOhm } from '../../references/tables/can-rules.js'
import { compare } from '../compare.js'
import { say } from '../../units/format.js'

export interface Expected { readonly bus: CanBus; readonly backbone: Backbone; readonly termination: BusTermination; readonly supply: BusSupply; readonly load: BusLoad }

type Read = Omit<BusReading, 'supersededBy'>

/** In the order of their dates; those without one first. Of several of the same at one place the latest counts. */
export function readingsOf(vessel: Vessel, expected: Expected): readonly BusReading[] {
  const readings = inOrder(vessel, expected)
  const same = ({ quantity, atTag }: Read): string => `${quantity} ${atTag}`
  const latest = new Map(readings.map(reading => [same(reading), reading]))
  return readings.map(reading => {
    const last = latest.get(same(reading))!
    return { ...reading, supersededBy: last === reading ? null : last.number }
  })
}

function inOrder(vessel: Vessel, expected: Expected): readonly Read[] {
  const own = vessel.measurements.filter(({ subjectTag }) => subjectTag === expected.bus.tag)
  return own.toSorted((a, b) => ((a.date ?? '') < (b.date ?? '') ? -1 : (a.date ?? '') > (b.date ?? '') ? 1 : 0)).flatMap(measurement => [
    ...(measurement.resistanceOhm === null ? [] : [resistanceReading(measurement, measurement.resistanceOhm, expected)]),
    ...(measurement.busLoadPercent === null ? [] : [loadReading(measurement, measurement.busLoadPercent, expected)]),
    ...(measurement.voltageV === null ? [] : [voltageReading(vessel, measurement, measurement.voltageV, expected)]),
  ])
}

const about = ({ number, date, atTag }: Measurement) => ({ number, date, atTag, from: null as BusReading['from'] })

const agreeing = (comparisons: readonly Comparison[]): boolean => comparisons.every(({ within }) => within)
/** Nothing to hold it against. */
const unheld = { calculated: null, limits: [], tolerances: [], agrees: null } as const

function resistanceReading(measurement: Measurement, measured: number, { termination: { expected } }: Expected): Read {
  const bare = { ...about(measurement), quantity: 'resistanceOhm' as const, measured }
  if (expected.status === 'not computed') return { ...bare, ...unheld, words: `${expected.reason}; as read, ${resistanceMeaning(measured)}` }
  const calculated = expected.output.resistanceOhm
  const share = terminationTolerance.sharePercent / 100
  const tolerances = [atLeast((1 - share) * calculated, terminationTolerance.citation), atMost((1 + share) * calculated, terminationTolerance.citation)]
    .map(limit => compare('resistanceOhm', measured, limit))
  const agrees = agreeing(tolerances)
  return { ...bare, calculated, limits: [], tolerances, agrees, words: agrees ? null : resistanceMeaning(measured) }
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

function loadReading(measurement: Measurement, measured: number, { load: { total, missing } }: Expected): Read {
  const bare = { ...about(measurement), quantity: 'busLoadPercent' as const, measured }
  if (total.status === 'not computed') return { ...bare, ...unheld, words: total.reason }
  const { nominalLoadPercent, worstLoadPercent } = total.output
  const least = compare('busLoadPercent', measured, atLeast(nominalLoadPercent - readingTolerance.loadPercent, readingTolerance.citation))
  const most = compare('busLoadPercent', measured, atMost(worstLoadPercent + readingTolerance.loadPercent, readingTolerance.citation))
  if (!most.within && missing.length > 0) return { ...bare, ...unheld, calculated: nominalLoadPercent, words: 'what some devices send is not recorded' }
  const words = !least.within ? 'devices that were counted are silent, or send less often than recorded'
    : most.within ? null : 'devices send more, or more often, than recorded, or frames are repeated after faults'
  return { ...bare, calculated: nominalLoadPercent, limits: [], tolerances: [least, most], agrees: agreeing([least, most]), words }
}

/** The sum is made for every device at its most, so a reading may well be higher, not lower. */
function voltageReading(vessel: Vessel, measurement: Measurement, measured: number, { backbone, supply }: Expected): Read {
  const bare = { ...about(measurement), quantity: 'voltageV' as const, measured }
  const place = placeOf(vessel, measurement, backbone, supply)
  if (typeof place === 'string') return { ...bare, ...unheld, words: place }
  const lowest = compare('voltageV', measured, lowestDeviceV)
  const least = compare('voltageV', measured, atLeast(place.voltageV - readingTolerance.voltageV, readingTolerance.citation))
  const words = !lowest.within ? `a device needs ${say('voltageV', lowestDeviceV.value)}`
    : least.within ? null : 'a joint or the cable has more resistance than reckoned, more hangs on the bus, or the source was low'
  return { ...bare, from: place.from, calculated: place.voltageV, limits: [lowest], tolerances: [least], agrees: agreeing([lowest, least]), words }
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
