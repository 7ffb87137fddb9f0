/** Where on the CAN buses one more device could go: every place with tees, the nearest first, with what it does to the bus. */
import { type CableRun, cableLengthM, type Comparison, type Results } from '../../model/results.js'
import type { BusResult, SolvedSection, StretchDrop, SupplySection, TeeRoom, TeeSupply } from '../../model/results/can-bus.js'
import type { ReserveVerdict } from '../../model/results/reserve.js'
import type { BusMessage, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { busRules, deviceLenLimit } from '../../references/tables/can-rules.js'
import { sayAgainst, sayAgainstBoth } from '../../units/format.js'
import { unitOf } from '../../units/quantity.js'
import { compare } from '../compare.js'
import { ratingBelowLoad } from '../conductors/findings.js'
import { isPlace, type Place, placesOf } from '../wireways/places.js'
import { type WithBusDevice, withBusDevice } from './new-bus-device.js'
import { placeFor } from './place-named.js'
import { bestOf, byVerdict, verdictBy } from './verdicts.js'

export interface BusRequest {
  readonly atTag: Tag
  readonly loadEquivalencyNumber: number
  /** What it sends on the bus; null: not known, and not in the load. */
  readonly sends: readonly BusMessage[] | null
}

export interface BusAnswer {
  readonly busTag: Tag
  readonly verdict: ReserveVerdict
  /** Why the bus as a whole does not take it; what is said of each place is said there. */
  readonly reasons: readonly string[]
  /** The nearest first. */
  readonly spots: readonly SpotAnswer[]
}

/** Tees side by side, with no cable between them: to the bus they are one point. */
export interface Spot {
  readonly teeTags: readonly Tag[]
  readonly freeTeeTags: readonly Tag[]
  readonly zoneTag: Tag | null
}

export interface SpotAnswer extends Spot {
  /** The free tee, or the one beside which a new tee goes. */
  readonly atTeeTag: Tag
  readonly how: 'free tee' | 'new tee'
  readonly verdict: ReserveVerdict
  readonly reasons: readonly string[]
  /** Of the drop. */
  readonly run: CableRun
  readonly drop: Comparison | null
  /** Of a backbone that is led to the place and back instead, where the drop would be too long. */
  readonly longerBackbone: { readonly nowM: number; readonly comparison: Comparison } | null
  /** As the bus is now. */
  readonly room: TeeRoom | null
  readonly supply: SpotSupply | null
  readonly left: SpotLeft
}

export interface SpotSupply {
  readonly insertionTag: Tag
  readonly circuitTag: Tag | null
  /** Of the part of the bus that is fed there. */
  readonly beforeLenNumber: number
  readonly afterLenNumber: number
  readonly againstProtection: Comparison | null
  /** Where the circuit is planned for less than the devices would take. */
  readonly plannedCurrentA: number | null
  readonly beforeVoltageV: number | null
  readonly afterVoltageV: number | null
  readonly worst: WorstTee | null
  readonly device: { readonly teeVoltageV: number; readonly dropCable: StretchDrop; readonly lowest: Comparison } | null
}
/** The tee in use that has least left of its voltage once the device is there. */
export interface WorstTee {
  readonly tag: Tag
  readonly isNew: boolean
  readonly beforeDropV: number
  /** What both have in common on the way from the insertion, out and back: what the new current adds is this times it. */
  readonly sharedResistanceOhm: number
  readonly beforeVoltageV: number | null
  readonly afterVoltageV: number | null
  readonly drop: Comparison
}
export interface SpotLeft {
  readonly devicesLeft: number
  readonly dropsLeftM: number | null
  readonly worstLoadPercent: number | null
  readonly loadLeftPercent: number | null
  /** For another device at the same place. */
  readonly lenLeftNumber: number | null
}

/** Every bus, those first on which it fits. */
export function onBuses(vessel: Vessel, basis: Basis, results: Results, request: BusRequest): readonly BusAnswer[] {
  const at = placeFor(vessel, request.atTag)
  return [...results.canBus.byBus.values()].map(now => onBus({ vessel, basis, results, request, at, now })).toSorted(byVerdict)
}

interface Asked {
  readonly vessel: Vessel
  readonly basis: Basis
  readonly results: Results
  readonly request: BusRequest
  readonly at: Place
  readonly now: BusResult
}

function onBus(asked: Asked): BusAnswer {
  const { bus } = asked.now
  const not = (verdict: ReserveVerdict, reason: string): BusAnswer => ({ busTag: bus.tag, verdict, reasons: [reason], spots: [] })
  if (!bus.suppliesDevices) return not('does not fit', 'it does not feed its devices: a device with a load equivalency number needs a bus that does')
  const spots = spotsOf(asked.vessel, asked.now).map(spot => atSpot(asked, spot)).toSorted((a, b) => lengthOf(a) - lengthOf(b))
  return spots.length === 0 ? not('not assessed', 'none of its tees is recorded') : { busTag: bus.tag, verdict: bestOf(spots), reasons: [], spots }
}
const lengthOf = ({ run }: SpotAnswer): number => cableLengthM(run) ?? Number.MAX_VALUE

export function spotsOf(vessel: Vessel, { backbone: { stations, spans } }: BusResult): readonly Spot[] {
  const placeOf = placesOf(vessel)
  const spots: { readonly pointTag: Tag | null; readonly zoneTag: Tag | null; readonly teeTags: Tag[]; readonly freeTeeTags: Tag[] }[] = []
  stations.forEach(({ part: { kind, tag }, device }, i) => {
    if (kind !== 'tee') return
    const place = placeOf(tag)
    const pointTag = isPlace(place) ? place.pointTag : null
    const last = spots.at(-1)
    const isBeside = last !== undefined && stations[i - 1]?.part.kind === 'tee' && spans[i]!.length === 0 && last.pointTag === pointTag
    const spot = isBeside ? last : { pointTag, zoneTag: isPlace(place) ? place.zoneTag : null, teeTags: [], freeTeeTags: [] }
    if (!isBeside) spots.push(spot)
    spot.teeTags.push(tag)
    if (device === null) spot.freeTeeTags.push(tag)
  })
  return spots.map(({ teeTags, freeTeeTags, zoneTag }) => ({ teeTags, freeTeeTags, zoneTag }))
}

function atSpot(asked: Asked, spot: Spot): SpotAnswer {
  const { vessel, basis, results, request: { loadEquivalencyNumber, sends }, at, now } = asked
  const atTeeTag = spot.freeTeeTags[0] ?? spot.teeTags.at(-1)!
  const teeIsFree = spot.freeTeeTags.length > 0
  const section = sectionOf(now, atTeeTag)
  const added = withBusDevice(vessel, basis, results, { busTag: now.bus.tag, atTeeTag, teeIsFree, at, loadEquivalencyNumber, sends: sends ?? [], section })
  const lengthM = cableLengthM(added.run)
  const drop = lengthM === null ? null : compare('dropLengthM', lengthM, busRules[now.bus.protocol].dropM)
  const { room } = added.result
  const base = {
    ...spot, atTeeTag, how: teeIsFree ? 'free tee' : 'new tee', run: added.run, drop,
    longerBackbone: drop === null || drop.within ? null : longerBackbone(now, drop.value),
    room: now.room.tees.find(({ tag }) => tag === atTeeTag) ?? null,
    supply: section?.solved == null ? null : supplyWith(section, section.solved, added, atTeeTag),
    left: {
      devicesLeft: room.devicesLeft, dropsLeftM: room.dropsLeftM, loadLeftPercent: room.loadLeftPercent,
      worstLoadPercent: added.result.load.total.status === 'computed' ? added.result.load.total.output.worstLoadPercent : null,
      lenLeftNumber: room.tees.find(({ tag }) => tag === added.teeTag)?.lenLeftNumber ?? null,
    },
  } as const
  return { ...base, ...verdictBy(againstOf(asked, added, section, drop), unknownOf(now, added, section)) }
}

const sectionOf = ({ backbone: { stations }, supply: { sections } }: BusResult, teeTag: Tag): SupplySection | null => {
  const position = stations.findIndex(({ part }) => part.tag === teeTag)
  return sections.find(({ from, to }) => position >= from && position <= to) ?? null
}

/** Out to the place and back is twice the way. */
function longerBackbone({ lengths: { backbone, backboneComparison } }: BusResult, wayM: number): SpotAnswer['longerBackbone'] {
  if (backbone.status !== 'computed' || backboneComparison === null) return null
  const nowM = backbone.output.backboneLengthM
  return { nowM, comparison: compare('backboneLengthM', nowM + 2 * wayM, backboneComparison.limit) }
}

function supplyWith(section: SupplySection, before: SolvedSection, { result, teeTag, plannedCurrentA }: WithBusDevice, atTeeTag: Tag): SpotSupply | null {
  const after = sectionOf(result, teeTag)
  if (after?.solved == null) return null
  const { insertion, tees, worst, againstProtection } = after.solved
  const own = tees.find(({ tag }) => tag === teeTag)
  const beforeTee = (tag: Tag): TeeSupply | undefined => before.tees.find(tee => tee.tag === (tag === teeTag ? atTeeTag : tag))
  const device = own?.device ?? null
  return {
    insertionTag: insertion.tag, circuitTag: insertion.circuitTag, plannedCurrentA, againstProtection,
    beforeVoltageV: before.insertion.voltageV, afterVoltageV: insertion.voltageV,
    beforeLenNumber: section.loadEquivalencyNumber, afterLenNumber: after.loadEquivalencyNumber,
    worst: worst === null || own === undefined ? null : {
      tag: worst.tag === teeTag ? atTeeTag : worst.tag, isNew: worst.tag === teeTag, drop: worst.drop,
      beforeDropV: beforeTee(worst.tag)?.dropV ?? 0, beforeVoltageV: beforeTee(worst.tag)?.voltageV ?? null, afterVoltageV: worst.voltageV,
      sharedResistanceOhm: worst.side === own.side ? Math.min(worst.loopResistanceOhm, own.loopResistanceOhm) : 0,
    },
    device: device?.dropCable == null || own?.voltageV == null ? null : { teeVoltageV: own.voltageV, dropCable: device.dropCable, lowest: device.lowest },
  }
}

/** Every limit that would be passed, of those that the device has a part in. */
function againstOf({ request: { loadEquivalencyNumber } }: Asked, { result, teeTag, besides }: WithBusDevice, section: SupplySection | null, drop: Comparison | null): readonly string[] {
  const { lengths, load } = result
  // Its device is held against the current of the bus already.
  const ownCircuitTag = section?.solved?.insertion.circuitTag
  const len = compare('loadEquivalencyNumber', loadEquivalencyNumber, deviceLenLimit)
  const said = (comparison: Comparison | null, words: (actual: string, limit: string) => string): readonly string[] => {
    if (comparison === null || comparison.within) return []
    const { actual, limit } = (unitOf(comparison.quantity)?.counterpart === undefined ? sayAgainst : sayAgainstBoth)(comparison.quantity, comparison.value, comparison.limit.value)
    return [words(actual, limit)]
  }
  return [
    ...said(drop, (actual, limit) => `the drop would be ${actual} long, limit ${limit}`),
    ...said(len, (actual, limit) => `one device takes at most LEN ${limit} from the bus, this one ${actual}`),
    ...said(lengths.devices, (actual, limit) => `it would have ${actual} devices, limit ${limit}`),
    ...said(drop?.within === false ? null : lengths.dropsComparison, (actual, limit) => `the drops together would be ${actual} long, limit ${limit}`),
    ...said(load.comparison, (actual, limit) => `its load would be ${actual}, limit ${limit}`),
    ...(section?.solved == null ? [] : supplyAgainst(section.solved, sectionOf(result, teeTag)?.solved ?? null, teeTag)).flatMap(([comparison, subject]) =>
      said(comparison, (actual, limit) => `${subject} ${actual}, limit ${limit}`)),
    ...besides.filter(({ id, subject }) => id !== ratingBelowLoad.id || subject.id !== ownCircuitTag).map(({ message }) => `elsewhere a limit would be passed: ${message}`),
  ]
}

/** Of tees and devices the one that is worst off, of those that the device takes something from. */
function supplyAgainst(before: SolvedSection, after: SolvedSection | null, teeTag: Tag): readonly (readonly [Comparison | null, string])[] {
  const own = after?.tees.find(({ tag }) => tag === teeTag)
  if (after === null || own === undefined) return []
  const teeBefore = new Map(before.tees.map(tee => [tee.tag, tee]))
  const isNew = ({ tag }: TeeSupply): boolean => tag === teeTag
  const losesMore = (tee: TeeSupply): boolean => isNew(tee) || tee.dropV > (teeBefore.get(tee.tag)?.dropV ?? 0)
  // The circuit may lose more as well, and then every device of the bus gets less.
  const getsLess = (tee: TeeSupply): boolean => isNew(tee) || (tee.voltageV ?? 0) < (teeBefore.get(tee.tag)?.voltageV ?? 0)
  const tee = after.tees.filter(losesMore).toSorted((a, b) => a.drop.margin - b.drop.margin)[0]
  const device = after.tees.filter(getsLess).flatMap(each => each.device ?? []).toSorted((a, b) => a.lowest.margin - b.lowest.margin)[0]
  const stretches = after.legs.filter(({ side }) => side === own.side).flatMap(leg => leg.stretches).filter(({ current }) => current !== null)
  const stretch = stretches.toSorted((a, b) => a.current!.margin - b.current!.margin)[0]
  return [
    [after.insertion.highest, `at ${after.insertion.tag}, where it is fed:`],
    [tee?.drop ?? null, `tee ${tee?.tag === teeTag ? 'of the new device' : tee?.tag}: voltage drop of`],
    [device?.lowest ?? null, `at ${device?.tag} arrive`],
    [stretch?.current ?? null, `current in ${stretch?.cableTag}:`],
    [after.againstProtection, `current of all devices through ${after.insertion.circuitTag}:`],
  ]
}

/** Whatever is missing on the bus may hide that a limit is passed. */
function unknownOf({ lengths, load }: BusResult, { run, result, teeTag }: WithBusDevice, section: SupplySection | null): readonly string[] {
  const after = section === null ? null : sectionOf(result, teeTag)
  return [...new Set([
    ...(run.length.status === 'not computed' ? [`the length of the drop: ${run.length.reason}`] : []),
    ...(after === null ? [] : after.missing),
    ...(after !== null && after.solved === null && after.missing.length === 0 ? ['no power insertion feeds this part of the bus'] : []),
    ...lengths.missing, ...load.missing,
  ])]
}

