/** The zone in which a label is stuck. */
import type { Tag } from '../../model/vessel.js'
import { isPlace, type placesOf } from '../wireways/places.js'

/** Null where nobody wrote down where the thing is. */
export function zoneOf(placeOf: ReturnType<typeof placesOf>, tag: Tag): Tag | null {
  const place = placeOf(tag)
  return isPlace(place) ? place.zoneTag : null
}
