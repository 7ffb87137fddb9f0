/** The place that a tag stands for: where a new load or device is to be. */
import { lookup } from '../../model/lookup.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { isPlace, type Place, placesOf } from '../wireways/places.js'

/** As a load there would have it; null where none is recorded. */
export function placeNamed(vessel: Vessel, tag: Tag): Place | null {
  const { zones, points } = lookup(vessel)
  if (zones.has(tag)) return { pointTag: tag, zoneTag: tag }
  const point = points.get(tag)
  if (point !== undefined) return { pointTag: tag, zoneTag: point.zoneTag }
  const place = placesOf(vessel)(tag)
  return isPlace(place) ? place : null
}

/** Errors   a fault when the tag stands for no place; `placeNamed` tells */
export function placeFor(vessel: Vessel, tag: Tag): Place {
  const place = placeNamed(vessel, tag)
  if (place === null) throw new Error(`${tag} is no place`)
  return place
}
