/** What a reading is about: the circuit, the load at which it was taken, and what in it contradicts itself. */
import { grouped, lookup } from '../../model/lookup.js'
import { cableTagsOf, type CircuitFeed } from '../../model/results.js'
import type { Battery, Circuit, Equipment, Measurement, Tag, Vessel } from '../../model/vessel.js'
import type { Upstream } from '../upstream.js'

export interface Place {
  /** Null where none, or more than one, can be meant. */
  readonly circuit: Circuit | null
  readonly feed: CircuitFeed | null
  /** Where the far end of the measurement was; null where it is not said and there are several. */
  readonly loadTag: Tag | null
  readonly load: Equipment | null
  readonly battery: Battery | null
  /** Only this cable of the circuit was measured. */
  readonly cableTag: Tag | null
  /** Why there is no circuit, or no load. */
  readonly circuitGap: string
  readonly loadGap: string
  readonly doubts: readonly Doubt[]
}
/** `field`: of the measurement, in which the doubt lies. */
export interface Doubt { readonly field: string; readonly words: string }

/** Readings of one moment that should agree may differ by this much. */
const sameV = 0.1

export interface Places { placeOf(measurement: Measurement): Place }

export function places(vessel: Vessel, { feeding }: Upstream): Places {
  const { circuits, circuitsOfLoad, batteries, equipment, cables } = lookup(vessel)
  const circuitsOfCable = grouped(vessel.circuits, circuit => cableTagsOf(circuit, feeding.byCircuit.get(circuit.tag)))

  /** The one that can be meant: of several, the only one that is normally closed. */
  const only = (candidates: readonly Circuit[]): Circuit | null => {
    const closed = candidates.length > 1 ? candidates.filter(({ normalState }) => normalState === 'closed') : candidates
    return closed.length === 1 ? closed[0]! : null
  }

  const placeOf = (measurement: Measurement): Place => {
    const { subjectTag, atTag } = measurement
    const battery = batteries.get(subjectTag) ?? null
    const named = circuits.get(subjectTag)
    const cable = cables.get(subjectTag)
    const candidates = named !== undefined ? [named] : cable !== undefined ? circuitsOfCable.get(subjectTag) ?? [] : circuitsOfLoad.get(subjectTag) ?? []
    const circuit = battery === null ? only(candidates) : null
    const loadTags = named !== undefined || cable !== undefined ? circuit?.loadTags ?? [] : [subjectTag]
    const atKnown = atTag !== null && loadTags.includes(atTag)
    const loadTag = battery !== null ? null : atKnown ? atTag : atTag === null && loadTags.length === 1 ? loadTags[0]! : null
    const feed = circuit === null ? null : feeding.byCircuit.get(circuit.tag) ?? null
    return {
      circuit, feed, loadTag, battery, cableTag: cable === undefined ? null : subjectTag,
      load: loadTag === null ? null : equipment.get(loadTag) ?? null,
      circuitGap: candidates.length === 0 ? `${subjectTag} belongs to no circuit` : `${subjectTag} belongs to several circuits, and the reading does not say which is meant`,
      loadGap: atTag !== null ? `${atTag} is no load of it` : loadTags.length === 0 ? `${subjectTag} has no load` : `${subjectTag} has several loads, and the reading does not say at which it was taken`,
      doubts: [
        ...(atTag !== null && !atKnown ? [{ field: 'atTag', words: atWords(subjectTag, atTag, circuit, named !== undefined || cable !== undefined) }] : []),
        ...doubtsOf(measurement, battery !== null, feed),
      ],
    }
  }
  return { placeOf }
}

function atWords(subjectTag: Tag, atTag: Tag, circuit: Circuit | null, partOfCircuit: boolean): string {
  if (!partOfCircuit) return `it is about ${subjectTag}, yet is said to be taken at ${atTag}`
  return circuit === null ? `it is taken at ${atTag}, and ${subjectTag} belongs to no circuit` : `circuit ${circuit.tag} does not list ${atTag}, at which it is said to be taken`
}

function doubtsOf(measurement: Measurement, ofBattery: boolean, feed: CircuitFeed | null): readonly Doubt[] {
  const { subjectTag, sourceVoltageV, voltageDropV, internalResistanceMilliOhm } = measurement
  const doubts: Doubt[] = []
  if (internalResistanceMilliOhm !== null && !ofBattery) {
    doubts.push({ field: 'internalResistanceMilliOhm', words: `${subjectTag} is no battery, yet an internal resistance is given` })
  }
  if (ofBattery && (voltageDropV !== null || sourceVoltageV !== null)) {
    doubts.push({ field: voltageDropV === null ? 'sourceVoltageV' : 'voltageDropV', words: `${subjectTag} is a battery, yet a voltage drop or a voltage at the source is given` })
  }
  const differenceV = fromDifferenceV(measurement, feed)
  if (ofBattery || differenceV === null) return doubts
  if (differenceV < -sameV) doubts.push({ field: 'sourceVoltageV', words: putsIn(feed) ? 'the voltage where it is charged is above that of the charging source' : 'the voltage at the load is above that at the source' })
  else if (voltageDropV !== null && Math.abs(voltageDropV - differenceV) > sameV) {
    doubts.push({ field: 'voltageDropV', words: 'the voltage drop given is not the difference of the two voltages given' })
  }
  return doubts
}

const putsIn = (feed: CircuitFeed | null): boolean => feed?.infeed?.only === true

/** What is lost between the two voltages; in a charging circuit the current runs the other way. */
function fromDifferenceV({ voltageV, sourceVoltageV }: Measurement, feed: CircuitFeed | null): number | null {
  if (voltageV === null || sourceVoltageV === null) return null
  return putsIn(feed) ? voltageV - sourceVoltageV : sourceVoltageV - voltageV
}

/** The two voltages whose difference the drop is, the higher first. */
export function differenceOf({ voltageV, sourceVoltageV, voltageDropV }: Measurement, feed: CircuitFeed | null): { readonly difference?: readonly [number, number] } {
  if (voltageDropV !== null || voltageV === null || sourceVoltageV === null) return {}
  return { difference: putsIn(feed) ? [voltageV, sourceVoltageV] : [sourceVoltageV, voltageV] }
}

/** The drop as read, or as the difference of the voltages at both ends; null where neither was read. */
export const measuredDropV = (measurement: Measurement, feed: CircuitFeed | null): number | null =>
  measurement.voltageDropV ?? fromDifferenceV(measurement, feed)
