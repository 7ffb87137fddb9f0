/** Compasses and heading sensors: what stands closer than its safe distance, and which single conductors run near. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { grouped, isThere, lookup } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { CompassPair, CompassPlacement, SingleConductor } from '../../model/results/placement.js'
import type { CompassClass, Equipment, Position, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { declaredCitation, deviationAt1MicroTDeg, heldTo, magneticKinds, undeclared } from '../../references/tables/compass-safe-distance.js'
import { compare } from '../compare.js'
import { cableUses, currentInA } from '../conductors/circuit-cables.js'
import { distanceBetweenM } from '../geometry.js'
import { runMethod } from '../run-method.js'
import type { Upstream } from '../upstream.js'
import { distanceMethod } from './distance.calc.js'
import { compassDistanceShort, singleConductorsNearCompass } from './findings.js'
import { permittedDeviationMethod } from './permitted-deviation.calc.js'
import { singleConductorMethod } from './single-conductor.calc.js'

export interface Judged<T> { readonly placed: readonly T[]; readonly notAssessed: readonly Gap[]; readonly findings: readonly Finding[] }

type MagneticClass = Exclude<CompassClass, 'none'>
interface Compass { readonly item: Equipment; readonly compassClass: MagneticClass }

export const classNames: Readonly<Record<MagneticClass, string>> = { 'standard': 'standard compass', 'steering': 'steering compass', 'flux-gate': 'heading sensor' }

const isDeclared = ({ compassSafeStandardM, compassSafeSteeringM }: Equipment): boolean => compassSafeStandardM !== null || compassSafeSteeringM !== null

export function compassPlacements(vessel: Vessel, basis: Basis, before: Upstream): Judged<CompassPlacement> {
  const items = vessel.equipment.filter(isThere)
  const compasses = items.flatMap((item): readonly Compass[] => (item.compassClass === null || item.compassClass === 'none' ? [] : [{ item, compassClass: item.compassClass }]))
  const placed = compasses.map(compass => placementOf(vessel, basis, before, compass, items))
  const unplaced = compasses.length === 0 ? [] : items.filter(item => isDeclared(item) && item.positionM === null && !compasses.some(compass => compass.item === item))
  return {
    placed,
    notAssessed: [
      ...compasses.filter(({ item }) => item.positionM === null).map(({ item }) => ({ subjectTag: item.tag, reason: 'compass safe distances: the position of the compass is not recorded' })),
      ...placed.flatMap(({ tag, deviation }) => (deviation.status === 'computed' ? [] : [{ subjectTag: tag, reason: `deviation permitted at the compass safe distance: ${deviation.reason}` }])),
      ...conductorGaps(placed),
      ...unplaced.map(({ tag }) => ({ subjectTag: tag, reason: 'its compass safe distance: its position is not recorded' })),
      ...placed.flatMap(silentGaps),
      ...compasses.flatMap(compass => withoutOwnDistance(compass, items)),
    ],
    findings: [...distanceFindings(placed), ...conductorFindings(placed)],
  }
}

function placementOf(vessel: Vessel, basis: Basis, before: Upstream, { item, compassClass }: Compass, items: readonly Equipment[]): CompassPlacement {
  const deviationAt1 = deviationAt1MicroTDeg[heldTo[compassClass]]
  const { horizontalFieldMicroT } = vessel.conditions
  const here = item.positionM
  const others = here === null ? [] : items.flatMap(other => (other === item || other.positionM === null ? [] : [{ other, positionM: other.positionM }]))
  return {
    tag: item.tag,
    compassClass,
    deviation: horizontalFieldMicroT === null
      ? { status: 'not computed', method: permittedDeviationMethod.id, reason: 'the horizontal part of the Earth’s field where the boat is used is not recorded' }
      : runMethod(permittedDeviationMethod, { deviationAt1MicroTDeg: deviationAt1, horizontalFieldMicroT }),
    pairs: others.flatMap(({ other, positionM }) => pairOf(compassClass, here!, other, positionM)).toSorted((a, b) => a.comparison.margin - b.comparison.margin),
    undeclared: others.filter(({ other }) => magneticKinds.has(other.kind) && !isDeclared(other)).map(({ other, positionM }) => ({ tag: other.tag, distanceM: distanceBetweenM(here!, positionM) }))
      .filter(({ distanceM }) => distanceM < undeclared.distanceM).toSorted((a, b) => a.distanceM - b.distanceM),
    singleConductors: singleConductorsNear(vessel, basis, before, item, deviationAt1),
  }
}

/**
 * Which distance holds: to a standard compass that to a standard compass; to a steering compass that to a steering compass,
 * or for want of it the other, which is longer; to a flux-gate sensor that to a standard compass, or for want of it the other.
 */
function declaredOf(compassClass: MagneticClass, { compassSafeStandardM, compassSafeSteeringM }: Equipment): { readonly declaredFor: 'standard' | 'steering'; readonly valueM: number } | null {
  const standard = compassSafeStandardM === null ? null : { declaredFor: 'standard' as const, valueM: compassSafeStandardM }
  const steering = compassSafeSteeringM === null ? null : { declaredFor: 'steering' as const, valueM: compassSafeSteeringM }
  if (compassClass === 'standard') return standard
  return compassClass === 'steering' ? steering ?? standard : standard ?? steering
}

function pairOf(compassClass: MagneticClass, compassM: Position, item: Equipment, itemM: Position): readonly CompassPair[] {
  const declared = declaredOf(compassClass, item)
  if (declared === null) return []
  const distance = runMethod(distanceMethod, { forwardM: itemM[0] - compassM[0], toPortM: itemM[1] - compassM[1], upM: itemM[2] - compassM[2] })
  if (distance.status === 'not computed') return []
  const limit: Limit = { relation: 'at least', value: declared.valueM, citation: declaredCitation }
  return [{ itemTag: item.tag, declaredFor: declared.declaredFor, distance, comparison: compare('distanceM', distance.output.distanceM, limit) }]
}

/** One an item: the compass it comes closest to for what it declares, and the others by name. */
function distanceFindings(placed: readonly CompassPlacement[]): readonly Finding[] {
  const short = placed.flatMap(compass => compass.pairs.filter(({ comparison }) => !comparison.within).map(pair => ({ compass, pair })))
    .toSorted((a, b) => a.pair.comparison.margin - b.pair.comparison.margin)
  return [...new Set(short.map(({ pair }) => pair.itemTag))].map(tag => {
    const [worst, ...rest] = short.filter(({ pair }) => pair.itemTag === tag)
    const { compass, pair } = worst!
    return find(compassDistanceShort, {
      subject: { kind: 'equipment', id: tag }, field: 'positionM', evidence: { distanceM: pair.comparison.value }, limit: pair.comparison.limit,
      context: { compass: compass.tag, compassClass: classNames[compass.compassClass], ...(rest.length === 0 ? {} : { others: inWords(rest.map(each => each.compass.tag)) }) },
    })
  })
}

function silentGaps({ tag, undeclared: silent }: CompassPlacement): readonly Gap[] {
  if (silent.length === 0) return []
  return [{ subjectTag: tag, reason: `no compass safe distance is declared for ${inWords(silent.map(each => each.tag))}, within ${undeclared.distanceM} m of it` }]
}

/** A standard compass has no use for a distance to a steering compass; a heading sensor takes it for want of the longer one. */
function withoutOwnDistance({ item, compassClass }: Compass, items: readonly Equipment[]): readonly Gap[] {
  if (compassClass === 'steering') return []
  const lacking = items.filter(other => other !== item && other.compassSafeStandardM === null && other.compassSafeSteeringM !== null)
  return lacking.length === 0 ? [] : [{ subjectTag: item.tag, reason: `no distance to a standard compass is declared for ${inWords(lacking.map(({ tag }) => tag))}${compassClass === 'standard' ? '' : '; held against that to a steering compass'}` }]
}

// --- single conductors -----------------------------------------------------------------------------------------------
function singleConductorsNear(vessel: Vessel, basis: Basis, { routing, feeding }: Upstream, compass: Equipment, deviationAt1: number): readonly SingleConductor[] {
  if (compass.zoneTag === null) return []
  const { cableTypes } = lookup(vessel)
  const uses = cableUses(vessel, feeding)
  return vessel.cables
    .filter(({ status, typeTag, carries }) => status !== 'removed' && (carries === 'positive' || carries === 'negative') && cableTypes.get(typeTag ?? '')?.use === 'power')
    .filter(({ tag }) => routing.byCable.get(tag)?.zoneTags.includes(compass.zoneTag!) ?? false)
    .map(({ tag }) => {
      const currentA = currentInA(basis.protection, uses.get(tag) ?? [])
      return {
        cableTag: tag,
        distance: currentA === null || !uses.has(tag)
          ? { status: 'not computed' as const, method: singleConductorMethod.id, reason: 'its current is not known' }
          : runMethod(singleConductorMethod, { currentA, deviationAt1MicroTDeg: deviationAt1 }),
      }
    })
}

/** A cable that passes two compasses is one gap. */
function conductorGaps(placed: readonly CompassPlacement[]): readonly Gap[] {
  const unknown = placed.flatMap(({ singleConductors }) => singleConductors.flatMap(({ cableTag, distance }) => (distance.status === 'computed' ? [] : [[cableTag, distance.reason] as const])))
  return [...new Map(unknown)].map(([subjectTag, reason]) => ({ subjectTag, reason: `distance from a compass as a single conductor: ${reason}` }))
}

/** Compasses of one zone have the same cables near, and that is one thing to look at. */
function conductorFindings(placed: readonly CompassPlacement[]): readonly Finding[] {
  const cablesOf = ({ singleConductors }: CompassPlacement): string => inWords(singleConductors.map(({ cableTag }) => cableTag))
  return [...grouped(placed.filter(({ singleConductors }) => singleConductors.length > 0), compass => [cablesOf(compass)])].map(([cables, [first, ...rest]]) => find(singleConductorsNearCompass, {
    subject: { kind: 'equipment', id: first!.tag }, field: null, evidence: { cableCount: first!.singleConductors.length }, limit: null,
    context: { cables, ...(rest.length === 0 ? {} : { others: inWords(rest.map(({ tag }) => tag)) }) },
  }))
}
