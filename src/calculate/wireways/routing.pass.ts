/** Where each cable runs and how long it is, and what each wireway holds. */
import { type Finding, find, type SubjectRef } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { CableRun, RoutingResults } from '../../model/results.js'
import type { Cable, Tag, Vessel } from '../../model/vessel.js'
import { runMethod } from '../run-method.js'
import { cableLengthMethod } from './cable-length.calc.js'
import { declaredLengthShort, placeNotRecorded, placesNotJoined, routeBroken } from './findings.js'
import { isPlace, type Place, placesOf, type Unplaced } from './places.js'
import { wirewayLoads } from './wireway-load.js'
import { gapInRoute, shortestWays } from './ways.js'

/** What was found out about one cable; the findings are made when all are done, once for each thing that is missing. */
interface Routed {
  readonly cable: Cable
  readonly run: CableRun
  readonly from: Place | Unplaced
  readonly to: Place | Unplaced
}
type Way = Pick<CableRun, 'routeSource' | 'wirewayTags'> & { readonly reason: string | null }

export function routingPass(vessel: Vessel): RoutingResults {
  const placeOf = placesOf(vessel)
  const shortest = shortestWays(vessel)
  const routed = vessel.cables.map((cable): Routed => {
    const from = placeOf(cable.from.tag)
    const to = placeOf(cable.to.tag)
    return { cable, from, to, run: cable.status === 'removed' ? removedRun : runOf(vessel, cable, from, to, wayOf(vessel, shortest, cable, from, to)) }
  })
  const byCable = new Map(routed.map(({ cable, run }) => [cable.tag, run]))
  const loads = wirewayLoads(vessel, byCable)
  const fitted = routed.filter(({ run }) => run !== removedRun)
  return {
    byCable,
    byWireway: loads.byWireway,
    findings: [...brokenRoutes(vessel, fitted), ...missingPlaces(fitted), ...missingWireways(vessel, fitted), ...loads.findings],
  }
}

const removed = 'the cable has been removed'
const removedRun: CableRun = {
  routeSource: 'unknown', wirewayTags: [], zoneTags: [], zonesUnknown: removed,
  length: { status: 'not computed', method: cableLengthMethod.id, reason: removed },
}

function wayOf(vessel: Vessel, shortest: ReturnType<typeof shortestWays>, cable: Cable, from: Place | Unplaced, to: Place | Unplaced): Way {
  const { routeTags } = cable
  if (!isPlace(from) || !isPlace(to)) {
    const unplaced = [from, to].flatMap(place => (isPlace(place) ? [] : [place.unplaced.id]))
    const reason = `no zone is recorded for ${inWords([...new Set(unplaced)])}`
    return { routeSource: routeTags === null ? 'unknown' : 'given', wirewayTags: routeTags ?? [], reason }
  }
  if (routeTags !== null) {
    const reason = gapInRoute(vessel, routeTags, from, to)
    return { routeSource: routeTags.length === 0 && reason === null ? 'none' : 'given', wirewayTags: routeTags, reason }
  }
  if (from.pointTag === to.pointTag) return { routeSource: 'none', wirewayTags: [], reason: null }
  const found = shortest(from.pointTag, to.pointTag)
  return found === null
    ? { routeSource: 'unknown', wirewayTags: [], reason: `no wireways lead from ${from.pointTag} to ${to.pointTag}` }
    : { routeSource: 'shortest', wirewayTags: found, reason: null }
}

function runOf(vessel: Vessel, cable: Cable, from: Place | Unplaced, to: Place | Unplaced, way: Way): CableRun {
  const { wireways } = lookup(vessel)
  const zones = [zoneIn(from), ...way.wirewayTags.flatMap(tag => wireways.get(tag)?.zoneTags ?? []), zoneIn(to)]
  return {
    routeSource: way.routeSource === 'unknown' && cable.lengthM !== null ? 'declared' : way.routeSource,
    wirewayTags: way.wirewayTags,
    zoneTags: [...new Set(zones.filter(zone => zone !== null))],
    zonesUnknown: way.reason,
    length: lengthOf(vessel, cable, way),
  }
}
const zoneIn = (place: Place | Unplaced): Tag | null => (isPlace(place) ? place.zoneTag : null)

function lengthOf(vessel: Vessel, cable: Cable, way: Way): CableRun['length'] {
  if (cable.lengthM !== null) return { status: 'declared', cableLengthM: cable.lengthM }
  const input = {
    wirewayLengthM: throughM(vessel, way.wirewayTags), tailLengthM: vessel.conditions.cableTailM, serviceLoopM: cable.serviceLoopM,
  }
  return way.reason === null ? runMethod(cableLengthMethod, input) : { status: 'not computed', method: cableLengthMethod.id, reason: way.reason }
}

function throughM(vessel: Vessel, wirewayTags: readonly Tag[]): number {
  const { wireways } = lookup(vessel)
  return wirewayTags.reduce((sum, tag) => sum + (wireways.get(tag)?.lengthM ?? 0), 0)
}

function brokenRoutes(vessel: Vessel, routed: readonly Routed[]): Finding[] {
  return routed.flatMap(({ cable, run, from, to }) => {
    const subject = { kind: 'cable', id: cable.tag }
    const wirewayLengthM = throughM(vessel, run.wirewayTags)
    if (run.routeSource !== 'given') return []
    if (isPlace(from) && isPlace(to) && run.zonesUnknown !== null) {
      return [find(routeBroken, { subject, field: 'routeTags', evidence: {}, limit: null, context: { gap: run.zonesUnknown } })]
    }
    if (cable.lengthM === null || cable.lengthM >= wirewayLengthM) return []
    return [find(declaredLengthShort, { subject, field: 'lengthM', evidence: { cableLengthM: cable.lengthM, wirewayLengthM }, limit: null })]
  })
}

function missingPlaces(routed: readonly Routed[]): Finding[] {
  const bySubject = new Map<Tag, { readonly subject: SubjectRef; readonly cableTags: Set<Tag> }>()
  for (const { cable, from, to } of routed) {
    for (const place of [from, to]) {
      if (isPlace(place)) continue
      const { cableTags } = entryOf(bySubject, place.unplaced.id, () => ({ subject: place.unplaced, cableTags: new Set<Tag>() }))
      cableTags.add(cable.tag)
    }
  }
  return [...bySubject.values()].map(({ subject, cableTags }) =>
    find(placeNotRecorded, { subject, field: 'zoneTag', evidence: { cableCount: cableTags.size }, limit: null }))
}

/** A cable whose length is in the data can do without wireways. */
function missingWireways(vessel: Vessel, routed: readonly Routed[]): Finding[] {
  const { points } = lookup(vessel)
  const byPair = new Map<string, { readonly from: Tag; readonly to: Tag; cableCount: number }>()
  for (const { run, from, to } of routed) {
    if (run.routeSource !== 'unknown' || !isPlace(from) || !isPlace(to)) continue
    const [first, second] = [from.pointTag, to.pointTag].sort() as [Tag, Tag]
    entryOf(byPair, `${first} ${second}`, () => ({ from: first, to: second, cableCount: 0 })).cableCount += 1
  }
  return [...byPair.values()].map(({ from, to, cableCount }) => {
    const subject = { kind: points.has(from) ? 'wireway point' : 'zone', id: from }
    return find(placesNotJoined, { subject, field: null, evidence: { cableCount }, limit: null, context: { to } })
  })
}

function entryOf<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  let entry = map.get(key)
  if (entry === undefined) {
    entry = make()
    map.set(key, entry)
  }
  return entry
}
