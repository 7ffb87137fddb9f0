/** What matters where it stands → records of the vessel. */
import type { CompassClass, Stability, StandingPlace, Structure, Transducer } from '../../model/vessel.js'
import type { Entry } from '../schema/kinds.js'

/** Height of a grown person standing. Common practice, no source. */
const usualHeadHeightM = 1.8

export const pointOf = ([forward, toPort, up]: readonly number[]): readonly [number, number, number] => {
  if (forward === undefined || toPort === undefined || up === undefined) throw new Error('a position without three coordinates')
  return [forward, toPort, up]
}

const usualCompassClass: Readonly<Record<string, CompassClass>> = { 'compass': 'steering', 'heading sensor': 'flux-gate', 'attitude and heading sensor': 'flux-gate' }
export const compassClassOf = (given: CompassClass | undefined, kind: string): CompassClass | null => given ?? usualCompassClass[kind] ?? null

export const transducerOf = (transducer: NonNullable<Entry<'equipment'>['transducer']>, offset: Entry<'equipment'>['depth-offset']): Transducer => ({
  frequencyKHz: transducer.frequency ?? null, powerW: transducer.power ?? null, beamDeg: transducer.beam ?? null,
  beamAcrossDeg: transducer['beam-across'] ?? null, blindM: transducer.blind ?? null,
  depthOffset: offset === undefined ? null : { reads: offset.reads, offsetM: offset.offset },
})

export const stabilityOf = (vessel: Entry<'vessel'>): Stability => ({
  centreOfGravityM: vessel['centre-of-gravity'] === undefined ? null : pointOf(vessel['centre-of-gravity']),
  metacentricHeightM: vessel['metacentric-height'] ?? null,
  includesEquipment: vessel['displacement-includes-equipment'] ?? null,
  gunwaleHeightM: vessel['gunwale-height'] ?? null,
})

export const structureOf = ({ tag, name, from, to, notes }: Entry<'structures'>): Structure => ({ tag, name, fromM: pointOf(from), toM: pointOf(to), notes: notes ?? null })

export const standingPlaceOf = (place: Entry<'standing-places'>): StandingPlace =>
  ({ tag: place.tag, name: place.name, zoneTag: place.zone ?? null, positionM: pointOf(place.position), headHeightM: place['head-height'] ?? usualHeadHeightM })
