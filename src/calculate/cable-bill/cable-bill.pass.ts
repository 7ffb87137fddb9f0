/** How much cable of each type was laid, and how much to buy. */
import { grouped, isThere, lookup } from '../../model/lookup.js'
import { cableLengthM, type RoutingResults } from '../../model/results.js'
import type { CableBillResults, CableOrder, CableOutside, CableTypeBill } from '../../model/results/cable-bill.js'
import type { Cable, CableType, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { mPerFt } from '../../units/convert.js'
import { runMethod } from '../run-method.js'
import type { Upstream } from '../upstream.js'
import { isPlace, placesOf } from '../wireways/places.js'
import { cableToOrderMethod } from './cable-to-order.calc.js'
import { busParts, conductorEnds, coresUnknown, deviceCounts, plugs, spareFuses } from './parts.js'

export function cableBillPass(vessel: Vessel, _basis: Basis, { routing }: Upstream): CableBillResults {
  const cables = vessel.cables.filter(isThere)
  const ofType = grouped(cables, ({ typeTag }) => [typeTag])
  const outside = cables.flatMap(cable => outsideOf(cable, routing))
  return {
    types: vessel.cableTypes.flatMap(type => billOf(vessel, type, ofType.get(type.tag) ?? [], routing)),
    outside,
    zoneByTag: zonesOfEnds(vessel, cables),
    conductorEnds: conductorEnds(vessel, cables),
    plugs: plugs(vessel, cables),
    busParts: busParts(vessel),
    devices: deviceCounts(vessel),
    spareFuses: spareFuses(vessel),
    notAssessed: [...outside.map(({ cableTag, reason }) => ({ subjectTag: cableTag, reason })), ...coresUnknown(vessel, cables)],
    findings: [],
  }
}

function outsideOf({ tag, typeTag }: Cable, routing: RoutingResults): readonly CableOutside[] {
  const run = routing.byCable.get(tag)
  const lengthM = cableLengthM(run)
  const why = run?.length.status === 'not computed' ? `: ${run.length.reason}` : ''
  const reasons = [...(typeTag === null ? ['its type is not recorded'] : []), ...(lengthM === null ? [`its length is not known${why}`] : [])]
  return reasons.length === 0 ? [] : [{ cableTag: tag, typeTag, lengthM, reason: reasons.join('; ') }]
}

interface Piece { readonly cable: Cable; readonly lengthM: number }

/** The length of a cable is that of one conductor, tails and service loop in it; those in parallel are laid side by side. */
function billOf(vessel: Vessel, type: CableType, cables: readonly Cable[], routing: RoutingResults): readonly CableTypeBill[] {
  if (cables.length === 0) return []
  const pieces = cables.flatMap((cable): readonly Piece[] => {
    const lengthM = cableLengthM(routing.byCable.get(cable.tag))
    return lengthM === null ? [] : [{ cable, lengthM }]
  })
  const longest = pieces.toSorted((a, b) => b.lengthM - a.lengthM)[0]
  const lengthOf = (carries: readonly Cable['carries'][]) => laidM(pieces.filter(({ cable }) => carries.includes(cable.carries)))
  return [{
    typeTag: type.tag,
    cableCount: cables.length,
    pieceCount: cables.reduce((sum, { parallelCount }) => sum + parallelCount, 0),
    all: orderOf(vessel, pieces),
    planned: orderOf(vessel, pieces.filter(({ cable }) => cable.status === 'planned')),
    byConductor: type.use !== 'power' || type.cores !== 1 ? null
      : { positiveLengthM: lengthOf(['positive']), negativeLengthM: lengthOf(['negative']), otherLengthM: lengthOf(['both', 'none']) },
    longest: longest === undefined ? null : { cableTag: longest.cable.tag, pieceLengthM: longest.lengthM },
    unknownLengthTags: cables.filter(({ tag }) => cableLengthM(routing.byCable.get(tag)) === null).map(({ tag }) => tag),
  }]
}

const laidM = (pieces: readonly Piece[]): number => pieces.reduce((sum, { cable, lengthM }) => sum + cable.parallelCount * lengthM, 0)

function orderOf({ units, conditions }: Vessel, pieces: readonly Piece[]): CableOrder {
  const laidLengthM = laidM(pieces)
  return {
    cableCount: pieces.length,
    laidLengthM,
    order: runMethod(cableToOrderMethod, { laidLengthM, sparePercent: conditions.cableSparePercent, stepM: units === 'us' ? mPerFt : 1 }),
  }
}

function zonesOfEnds(vessel: Vessel, cables: readonly Cable[]): ReadonlyMap<Tag, Tag | null> {
  const placeOf = placesOf(vessel)
  const wires = vessel.serialLinks.flatMap(link => link.wires)
  const parts = vessel.canBuses.flatMap(({ backbone }) => backbone.flatMap(element => (element.kind === 'segment' ? [] : [element.tag, ...(element.kind === 'tee' && element.deviceTag !== null ? [element.deviceTag] : [])])))
  const tags = [...[...cables, ...wires].flatMap(({ from, to }) => [from.tag, to.tag]), ...parts, ...lookup(vessel).items.keys()]
  return new Map([...new Set(tags)].map(tag => {
    const place = placeOf(tag)
    return [tag, isPlace(place) ? place.zoneTag : null]
  }))
}
