/** The ways that cables take through the wireways: as the author wrote them, or the shortest there is. */
import { lookup } from '../../model/lookup.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { graphOf, shortestWay } from '../graph.js'
import type { Place } from './places.js'

/**
 * The shortest way between two points, worked out once for each pair, whichever end is named first: two cables between
 * the same places never take different ways of equal length because one was drawn from the other end.
 */
export function shortestWays(vessel: Vessel): (fromPoint: Tag, toPoint: Tag) => readonly Tag[] | null {
  const graph = graphOf(vessel.wireways.map(({ tag, fromTag, toTag, lengthM }) => ({ tag, from: fromTag, to: toTag, weight: lengthM })))
  const found = new Map<string, readonly Tag[] | null>()
  return (from, to) => {
    const [first, second] = from < to ? [from, to] : [to, from]
    const pair = `${first} ${second}`
    let way = found.get(pair)
    if (way === undefined) {
      way = shortestWay(graph, first, second)
      found.set(pair, way)
    }
    return way === null || first === from ? way : way.toReversed()
  }
}

/**
 * Where the wireways of a route, in the order written and each taken in either direction, fail to lead from one place to
 * the other; null when they do. A route of no wireways is one within a zone.
 */
export function gapInRoute(vessel: Vessel, routeTags: readonly Tag[], from: Place, to: Place): string | null {
  if (routeTags.length === 0) {
    return from.zoneTag === to.zoneTag ? null : `it names no wireway, but the ends are in ${from.zoneTag} and ${to.zoneTag}`
  }
  const { wireways } = lookup(vessel)
  let at = from.pointTag
  for (const tag of routeTags) {
    const wireway = wireways.get(tag)
    if (wireway === undefined) return `${tag} is not a wireway`
    const { fromTag, toTag } = wireway
    if (at !== fromTag && at !== toTag) return `from ${at} it goes on with ${tag}, which joins ${fromTag} and ${toTag}`
    at = at === fromTag ? toTag : fromTag
  }
  return at === to.pointTag ? null : `it ends at ${at}, the cable at ${to.pointTag}`
}
