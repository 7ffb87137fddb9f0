/** Residual-current protection: of the whole shore supply, and of sockets in wet places. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { isDistributionPoint, lookup } from '../../model/lookup.js'
import type { Requirement, ResidualDevice, SocketCheck } from '../../model/results/ac-supply.js'
import type { FeedingResults, Segment } from '../../model/results.js'
import type { Circuit, Equipment, Tag, Vessel, Zone } from '../../model/vessel.js'
import { type AcRules, sayResidualCurrent, wetPlaces } from '../../references/basis/ac-rules.js'
import { say } from '../../units/format.js'
import { compare } from '../compare.js'
import { segmentsTo } from '../feeding/segments.js'
import {
  residualCurrentAboveLimit, residualCurrentMissing, residualTripTimeAboveLimit, socketResidualCurrentAboveLimit, socketResidualCurrentMissing,
} from './findings.js'
import { type Lengths, lengthOf } from './inlet-distance.js'
import { met, missed, notAssessed, notRequired } from './requirement.js'
import type { AcOutput, SuppliedCircuit } from './supplied.js'

export interface Judged { readonly requirement: Requirement; readonly findings: readonly Finding[] }
const judged = (requirement: Requirement, ...findings: readonly Finding[]): Judged => ({ requirement, findings })

// --- devices ---------------------------------------------------------------------------------------------------------
/** Residual-current devices that current passes on its way from a circuit's source to one of its loads, nearest the source first. */
export function devicesTo(vessel: Vessel, feeding: FeedingResults, circuit: Circuit, loadTag: Tag): readonly ResidualDevice[] {
  const { equipment } = lookup(vessel)
  const feed = feeding.byCircuit.get(circuit.tag)
  const ofItems = (segments: readonly Segment[]): ResidualDevice[] => [...new Set(segments.flatMap(({ nearTag, farTag }) => [nearTag, farTag]))]
    .flatMap(tag => (isResidualDevice(equipment.get(tag)) ? [deviceOf(equipment.get(tag)!, circuit)] : []))
  const own = circuit.protection
  return [
    ...ofItems(feed?.supplySegments ?? []),
    ...(own === null || own.residualCurrentA === null ? [] : [{ tag: circuit.tag, circuitTag: circuit.tag, residualCurrentA: own.residualCurrentA, tripTimeMs: own.tripTimeMs }]),
    ...ofItems(segmentsTo(feed?.segments ?? [], loadTag)),
  ]
}

const isResidualDevice = (item: Equipment | undefined): boolean => item?.kind === 'residual-current device' && item.status !== 'removed'
const deviceOf = ({ tag, residualCurrentA, tripTimeMs }: Equipment, circuit: Circuit): ResidualDevice =>
  ({ tag, circuitTag: circuit.tag, residualCurrentA, tripTimeMs })

// --- the shore supply ------------------------------------------------------------------------------------------------
export interface ShoreSupply {
  readonly vessel: Vessel
  readonly feeding: FeedingResults
  readonly lengths: Lengths
  readonly rules: AcRules
  readonly inletTag: Tag
  /** All circuits that the inlet can feed. */
  readonly supplied: readonly SuppliedCircuit[]
}

export function shoreResidualCurrent(shore: ShoreSupply, main: Circuit): Judged {
  const { vessel, feeding, rules } = shore
  const first = main.loadTags.map(tag => devicesTo(vessel, feeding, main, tag)[0])
  const devices = first.filter(device => device !== undefined)
  if (devices.length > 0 && devices.length === first.length) return worstOf(devices.map(device => deviceJudged(rules, main, device)))
  const exempt = exemption(shore, main)
  if (exempt !== null) return judged(exempt)
  const missing = (words: string): Judged => judged(missed(words), find(residualCurrentMissing, {
    subject: { kind: 'circuit', id: main.tag }, field: 'protection', evidence: {}, limit: null, context: { inlet: shore.inletTag, words },
  }))
  const covered = coveredBelow(shore, main)
  if (covered === null) return missing('there is no residual-current device between the inlet and what it supplies')
  if (rules.residualAtMainDisconnect) return missing(`residual-current protection is further down only, at ${inWords(covered.map(({ tag }) => tag))}, and not with the main breaker`)
  return worstOf(covered.map(device => deviceJudged(rules, main, device)))
}

const rank = ({ state }: Requirement): number => ['not required', 'met', 'not assessed', 'doubtful', 'missed'].indexOf(state)
const worstOf = (all: readonly Judged[]): Judged =>
  all.reduce((worst, each) => (rank(each.requirement) > rank(worst.requirement) ? each : worst))

function deviceJudged(rules: AcRules, main: Circuit, { tag, residualCurrentA, tripTimeMs }: ResidualDevice): Judged {
  const subject = { kind: tag === main.tag ? 'circuit' : 'equipment', id: tag }
  if (residualCurrentA === null) return judged(notAssessed(`the rated residual current of ${tag} is not recorded`))
  const current = compare('residualCurrentA', residualCurrentA, rules.residualCurrentA)
  if (!current.within) {
    return judged(missed(`${tag} trips at ${sayResidualCurrent(residualCurrentA)}`, current), find(residualCurrentAboveLimit, {
      subject, field: tag === main.tag ? 'protection' : 'residualCurrentA', evidence: { residualCurrentA }, limit: rules.residualCurrentA,
    }))
  }
  if (tripTimeMs === null) return judged(notAssessed(`the trip time of ${tag} is not recorded`))
  const time = compare('tripTimeMs', tripTimeMs, rules.residualTripTimeMs)
  return time.within
    ? judged(met(`${tag}: ${sayResidualCurrent(residualCurrentA)}, ${say('tripTimeMs', tripTimeMs)}`, current))
    : judged(missed(`${tag} takes ${say('tripTimeMs', tripTimeMs)} to trip`, time), find(residualTripTimeAboveLimit, {
      subject, field: tag === main.tag ? 'protection' : 'tripTimeMs', evidence: { tripTimeMs }, limit: rules.residualTripTimeMs,
    }))
}

/** Where the rules let an isolation transformer near the inlet take the place of a device. */
function exemption({ vessel, feeding, lengths, rules }: ShoreSupply, main: Circuit): Requirement | null {
  const limit = rules.transformerDistanceM
  const kinds = main.loadTags.map(tag => lookup(vessel).equipment.get(tag)?.kind)
  if (limit === null || kinds.length === 0 || kinds.some(kind => kind !== 'isolation transformer')) return null
  const feed = feeding.byCircuit.get(main.tag)
  const distances = main.loadTags.map(tag => {
    const onward = segmentsTo(feed?.segments ?? [], tag)
    return feed === undefined || feed.supplySegments.length + onward.length === 0 ? null : lengthOf(lengths, [...feed.supplySegments, ...onward])
  })
  if (distances.some(distance => distance === null)) return notAssessed('how far the isolation transformer is from the inlet is not known')
  const comparison = compare('distanceM', Math.max(...distances as number[]), limit)
  return comparison.within ? notRequired('an isolation transformer close to the inlet takes its place', comparison) : null
}

/** The devices further down, when every circuit that feeds a load is behind one; else null. */
function coveredBelow({ vessel, feeding, supplied }: ShoreSupply, main: Circuit): readonly ResidualDevice[] | null {
  const loads = supplied.filter(({ way }) => way[0] === main).flatMap(({ way, circuit }) =>
    circuit.loadTags.filter(tag => !isDistributionPoint(vessel, tag)).map(tag => devicesOnWay(vessel, feeding, way, tag)[0]))
  const devices = loads.filter(device => device !== undefined)
  return devices.length === 0 || devices.length < loads.length ? null : [...new Map(devices.map(device => [device.tag, device])).values()]
}

/** All devices between a source and a load, through every circuit on the way. */
export const devicesOnWay = (vessel: Vessel, feeding: FeedingResults, way: readonly Circuit[], loadTag: Tag): readonly ResidualDevice[] =>
  way.flatMap((circuit, i) => devicesTo(vessel, feeding, circuit, way[i + 1]?.fedFromTag ?? loadTag))

// --- sockets ---------------------------------------------------------------------------------------------------------
export interface SocketJudged { readonly check: SocketCheck; readonly findings: readonly Finding[] }

/** Sockets of a.c. circuits, each with the source from which it is worst off. */
export function socketChecks(
  vessel: Vessel, feeding: FeedingResults, rules: AcRules, supplied: ReadonlyMap<AcOutput, readonly SuppliedCircuit[]>,
): readonly SocketJudged[] {
  const { equipment, zones } = lookup(vessel)
  const bySocket = new Map<Tag, SocketJudged>()
  for (const [source, circuits] of supplied) {
    for (const { circuit, way } of circuits) {
      for (const tag of circuit.loadTags) {
        const socket = equipment.get(tag)
        if (socket?.kind !== 'socket' || socket.status === 'removed') continue
        const own: readonly ResidualDevice[] = socket.residualCurrentA === null ? [] : [deviceOf(socket, circuit)]
        const { requirement, findings } = socketJudged(rules, socket, zones.get(socket.zoneTag ?? ''), [...devicesOnWay(vessel, feeding, way, tag), ...own], source.item.tag)
        const known = bySocket.get(tag)
        if (known === undefined || rank(requirement) > rank(known.check.check)) bySocket.set(tag, { check: { tag, circuitTag: circuit.tag, check: requirement }, findings })
      }
    }
  }
  return [...bySocket.values()]
}

function socketJudged(rules: AcRules, { tag, zoneTag }: Equipment, zone: Zone | undefined, devices: readonly ResidualDevice[], sourceTag: Tag): Judged {
  if (zone === undefined) return judged(notAssessed(zoneTag === null ? 'the zone it is in is not recorded' : 'its zone is not known'))
  if (!isWet(zone)) {
    const protectedBy = devices.map(({ tag: device, residualCurrentA }) => `${device}${residualCurrentA === null ? '' : ` at ${sayResidualCurrent(residualCurrentA)}`}`)
    return judged(notRequired(`of its own, ${zone.name} being neither galley, toilet, machinery space nor open deck; ${protectedBy.length === 0 ? 'no residual-current device is on its way' : `protected all the same by ${inWords(protectedBy)}`}`))
  }
  const limit: Limit = rules.socketResidualCurrentA
  const about = { subject: { kind: 'equipment', id: tag }, limit, context: { zone: zone.name, source: sourceTag } }
  const ratings = devices.flatMap(({ residualCurrentA }) => residualCurrentA ?? [])
  if (ratings.length === 0) {
    return devices.length > 0
      ? judged(notAssessed(`the rated residual current of ${devices[0]!.tag} is not recorded`))
      : judged(missed(`there is no residual-current device between it and ${sourceTag}`), find(socketResidualCurrentMissing, { ...about, field: null, evidence: {}, limit: null }))
  }
  const residualCurrentA = Math.min(...ratings)
  const device = devices.find(each => each.residualCurrentA === residualCurrentA)!
  const comparison = compare('residualCurrentA', residualCurrentA, limit)
  const words = `${device.tag} trips at ${sayResidualCurrent(residualCurrentA)}`
  return comparison.within
    ? judged(met(words, comparison))
    : judged(missed(words, comparison), find(socketResidualCurrentAboveLimit, { ...about, field: null, evidence: { residualCurrentA }, context: { ...about.context, device: device.tag } }))
}

const isWet = ({ space, name }: Zone): boolean => (wetPlaces.spaces as readonly string[]).includes(space) || wetPlaces.words.test(name)
