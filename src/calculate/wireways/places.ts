/** Where cables end: the point of the wireway graph and the zone that belong to a tag. */
import type { SubjectRef } from '../../findings/finding.js'
import { type Lookup, lookup } from '../../model/lookup.js'
import type { BackboneElement, Tag, Vessel } from '../../model/vessel.js'

export interface Place {
  /** A zone's tag or a wireway point's tag. */
  readonly pointTag: Tag
  readonly zoneTag: Tag
}
/** Nobody wrote down where this is. */
export interface Unplaced { readonly unplaced: SubjectRef }
export const isPlace = (place: Place | Unplaced): place is Place => 'zoneTag' in place

/** Finds the place of anything a cable can end at: an item, a circuit's way, a part of a CAN backbone. */
export function placesOf(vessel: Vessel): (tag: Tag) => Place | Unplaced {
  const known = lookup(vessel)
  const backbone = new Map<Tag, Exclude<BackboneElement, { kind: 'segment' }>>()
  for (const bus of vessel.canBuses) {
    for (const element of bus.backbone) if (element.kind !== 'segment') backbone.set(element.tag, element)
  }
  const ofItem = (tag: Tag): Place | Unplaced => {
    const item = known.items.get(tag)
    const zoneTag = item?.zoneTag ?? known.points.get(item?.pointTag ?? '')?.zoneTag
    if (zoneTag === undefined) return { unplaced: { kind: kindOfItem(known, tag), id: tag } }
    return { pointTag: item?.pointTag ?? zoneTag, zoneTag }
  }
  return tag => {
    const circuit = known.circuits.get(tag)
    const zoneTag = (circuit ?? backbone.get(tag))?.zoneTag ?? null
    if (zoneTag !== null) return { pointTag: zoneTag, zoneTag }
    if (circuit !== undefined) return ofItem(circuit.fedFromTag)
    if (known.items.has(tag) || !backbone.has(tag)) return ofItem(tag)
    return { unplaced: { kind: 'CAN bus', id: tag } }
  }
}

function kindOfItem({ batteries, busbars, panels }: Lookup, tag: Tag): string {
  return batteries.has(tag) ? 'battery' : busbars.has(tag) ? 'busbar' : panels.has(tag) ? 'panel' : 'equipment'
}
