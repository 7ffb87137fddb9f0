/** What stands on the labels of cables, circuits and items. */
import { type CableEndName, cableLabel } from '../../model/cable-label.js'
import { isThere, lookup } from '../../model/lookup.js'
import type { LabelWords } from '../../model/results/labels.js'
import type { Cable, Circuit, Vessel } from '../../model/vessel.js'
import { say } from '../../units/format.js'
import { placesOf } from '../wireways/places.js'
import { zoneOf } from './place.js'

const plain = { end: null, danger: null, signal: null, copiesCount: 1, hasCode: false } as const

/** Both ends of each cable; of conductors that are joined at both ends, each one's. */
export function cableLabels(vessel: Vessel): readonly LabelWords[] {
  const placeOf = placesOf(vessel)
  const labelAt = (cable: Cable, end: CableEndName): LabelWords => {
    const { headline, text } = cableLabel(cable, end)
    const atTag = cable[end].tag
    return { ...plain, use: 'cables', aboutTag: cable.tag, end, headline, texts: [text], place: { zoneTag: zoneOf(placeOf, atTag), atTag, words: null }, copiesCount: cable.parallelCount }
  }
  return vessel.cables.filter(isThere).flatMap(cable => [labelAt(cable, 'from'), labelAt(cable, 'to')])
}

/** Beside each breaker or fuse: way, tag and rating over the name. */
export function wayLabels(vessel: Vessel): readonly LabelWords[] {
  const { items } = lookup(vessel)
  const placeOf = placesOf(vessel)
  const headline = ({ way, tag, protection }: Circuit): string =>
    [way === null ? null : String(way), tag, protection === null ? null : say('ratedCurrentA', protection.ratedCurrentA)].filter(part => part !== null).join('  ')
  const source = (circuit: Circuit) => items.get(circuit.fedFromTag)
  return vessel.circuits.filter(circuit => isThere(source(circuit) ?? { status: null })).map((circuit): LabelWords => ({
    ...plain, use: 'ways', aboutTag: circuit.tag, headline: headline(circuit), texts: [circuit.name],
    place: { zoneTag: zoneOf(placeOf, circuit.tag), atTag: circuit.fedFromTag, words: circuit.location },
  }))
}

/** Tag and name, and the code that leads to its page. */
export function equipmentLabels(vessel: Vessel): readonly LabelWords[] {
  const placeOf = placesOf(vessel)
  return [...lookup(vessel).items.values()].filter(isThere).map((item): LabelWords => ({
    ...plain, use: 'equipment', aboutTag: item.tag, headline: item.tag, texts: [item.name],
    place: { zoneTag: zoneOf(placeOf, item.tag), atTag: item.tag, words: item.location }, hasCode: true,
  }))
}
