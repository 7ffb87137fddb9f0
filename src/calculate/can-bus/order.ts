/** Whether the cables of a backbone and its drops end where the backbone has them. One that does not is a wrong length in every sum. */
import { lookup } from '../../model/lookup.js'
import type { Backbone, BusSegment, Station } from '../../model/results/can-bus.js'
import type { Cable, CanBus, Tag, Vessel } from '../../model/vessel.js'
import { inWords } from '../../findings/words.js'

/** By bus: what speaks against the record, a few words each. What all buses share is gathered once. */
export function disorders(vessel: Vessel): (bus: { readonly bus: CanBus; readonly backbone: Backbone }) => readonly string[] {
  const { cables } = lookup(vessel)
  const places = placesOf(vessel)
  const entered = enteredCables(vessel)
  return ({ bus, backbone }) => [
    ...backbone.spans.flatMap((span, i) => span.flatMap((segment, j) => spanWords(cables.get(segment.cableTag), places, backbone, { i, isFirst: j === 0, isLast: j === span.length - 1 }))),
    ...backbone.stations.flatMap(station => dropWords(cables, places, station)),
    ...leftOut(vessel, entered, bus),
  ]
}

/** Every part of a backbone, on whichever bus, and everything in use that has a connector for one. */
function placesOf({ canBuses, equipment }: Vessel): ReadonlySet<Tag> {
  const parts = canBuses.flatMap(({ backbone }) => backbone.flatMap(part => (part.kind === 'segment' ? [] : [part.tag, ...(part.kind === 'tee' && part.deviceTag !== null ? [part.deviceTag] : [])])))
  const devices = equipment.filter(({ status, ports }) => status !== 'removed' && ports.some(({ kind }) => kind === 'can bus')).map(({ tag }) => tag)
  return new Set([...parts, ...devices])
}

interface At { readonly i: number; readonly isFirst: boolean; readonly isLast: boolean }
/** An outermost cable of a run must reach the parts beside it; what is plugged together there counts as one place. */
function spanWords(cable: Cable | undefined, places: ReadonlySet<Tag>, { stations, spans }: Backbone, { i, isFirst, isLast }: At): readonly string[] {
  if (cable === undefined) return []
  const [before, after] = [pluggedTogether(stations, spans, i - 1), pluggedTogether(stations, spans, i)]
  const near = new Set([...before, ...after])
  const ends = [cable.from.tag, cable.to.tag]
  const strays = ends.filter(tag => places.has(tag) && !near.has(tag))
  if (strays.length > 0) return [`${cable.tag} ends at ${inWords(strays)}, which is not beside it in the backbone`]
  const joinsOne = isFirst && isLast && (ends.every(tag => before.has(tag)) || ends.every(tag => after.has(tag)))
  return joinsOne ? [`${cable.tag} joins ${inWords(ends)}, between which the backbone has no cable`] : []
}

/** Tags of the stations joined to one without a cable between. */
function pluggedTogether(stations: readonly Station[], spans: readonly (readonly BusSegment[])[], at: number): ReadonlySet<Tag> {
  if (at < 0 || at >= stations.length) return new Set()
  let [first, last] = [at, at]
  while (first > 0 && spans[first]!.length === 0) first--
  while (last < stations.length - 1 && spans[last + 1]!.length === 0) last++
  return new Set(stations.slice(first, last + 1).map(({ part }) => part.tag))
}

/** Between the two there may be a connector; another tee or another device there may not. */
function dropWords(cables: ReadonlyMap<Tag, Cable>, places: ReadonlySet<Tag>, { part, drop }: Station): readonly string[] {
  const cable = cables.get(drop?.cableTag ?? '')
  if (part.kind !== 'tee' || cable === undefined) return []
  const away = [cable.from.tag, cable.to.tag].filter(tag => tag !== part.tag && tag !== part.deviceTag && places.has(tag))
  if (away.length === 0) return []
  return [part.deviceTag === null ? `drop ${cable.tag} leads to ${inWords(away)}, and ${part.tag} has no device` : `drop ${cable.tag} ends at ${inWords(away)}, not at ${part.tag} with ${part.deviceTag}`]
}

const enteredCables = ({ canBuses }: Vessel): ReadonlySet<Tag> => new Set(canBuses.flatMap(({ backbone }) =>
  backbone.flatMap(part => (part.kind === 'segment' ? [part.cableTag] : 'dropCableTag' in part && part.dropCableTag !== null ? [part.dropCableTag] : []))))

/** Bus cables that end at this bus and are entered in no backbone. */
function leftOut(vessel: Vessel, entered: ReadonlySet<Tag>, bus: CanBus): readonly string[] {
  const { cableTypes, cablesAt } = lookup(vessel)
  const parts = new Set(bus.backbone.flatMap(part => (part.kind === 'segment' ? [] : [part.tag])))
  const isBusCable = ({ typeTag }: Cable): boolean => cableTypes.get(typeTag ?? '')?.use === 'can bus'
  return [...new Set([...parts].flatMap(tag => cablesAt.get(tag) ?? []))]
    .filter(cable => cable.status !== 'removed' && !entered.has(cable.tag) && (isBusCable(cable) || [cable.from.tag, cable.to.tag].every(tag => parts.has(tag))))
    .map(({ tag, from, to }) => `${tag} from ${from.tag} to ${to.tag} is entered in no backbone`)
}
