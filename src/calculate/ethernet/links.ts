/** Length and speed of each link, and what is wrong with ports. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import { cableLengthM, type RoutingResults } from '../../model/results.js'
import type { EthernetLink, LinkEnd, PortUse } from '../../model/results/ethernet.js'
import type { Gap } from '../../model/results/gap.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { compare } from '../compare.js'
import { walkOut } from '../graph.js'
import { runMethod } from '../run-method.js'
import { channelLengthMethod } from './channel-length.calc.js'
import { linkTooLong, portRecordedTwice, severalCablesOnPort, uplinkSlow } from './findings.js'
import type { Part } from './part.js'
import { channelLimit, fourPairsCoreCount, twoPairSpeedMbitPerS } from './practice.js'
import { ethernetPorts, type Wire, type Wiring } from './wiring.js'

/** A link without what runs on it. */
export type BareLink = Omit<EthernetLink, 'loads'>

export function linksPart(vessel: Vessel, routing: RoutingResults, wiring: Wiring): Part<readonly BareLink[]> {
  const links = wiring.wires.map((wire): BareLink => ({
    tag: wire.tag, ends: wire.ends, cableTags: wire.cables.map(({ tag }) => tag), jointTags: wire.jointTags,
    ...lengthOf(routing, wire), ...speedOf(vessel, wire),
  }))
  const tooLong = links.flatMap(link => {
    const { length, lengthComparison } = link
    return length.status !== 'computed' || lengthComparison?.within !== false ? [] : [find(linkTooLong, {
      subject: { kind: 'cable', id: link.tag }, field: 'lengthM', evidence: { channelLengthM: length.output.channelLengthM }, limit: channelLimit,
      context: { from: link.ends[0].tag, to: link.ends[1].tag },
    })]
  })
  return { value: links, findings: [...tooLong, ...slowUplinks(wiring, links)], notAssessed: links.flatMap(link => [...gapsOf(vessel, link), ...coreGaps(vessel, link)]) }
}

function lengthOf(routing: RoutingResults, { cables }: Wire): Pick<BareLink, 'length' | 'lengthComparison'> {
  const lengths = cables.map(({ tag }) => ({ tag, lengthM: cableLengthM(routing.byCable.get(tag)) }))
  const unknown = lengths.filter(({ lengthM }) => lengthM === null).map(({ tag }) => tag)
  if (unknown.length > 0) return { length: { status: 'not computed', method: channelLengthMethod.id, reason: `the length of ${inWords(unknown)} is not known` }, lengthComparison: null }
  const known = lengths.map(({ lengthM }) => lengthM ?? 0)
  const longestM = Math.max(...known)
  const length = runMethod(channelLengthMethod, { cableLengthM: longestM, cordLengthM: known.reduce((sum, lengthM) => sum + lengthM, 0) - longestM })
  return { length, lengthComparison: length.status === 'computed' ? compare('channelLengthM', length.output.channelLengthM, channelLimit) : null }
}

export const endWords = ({ tag, portName }: LinkEnd): string => (portName === null ? tag : `port ${portName} of ${tag}`)

/** The slowest of both ports and the cable. */
function speedOf(vessel: Vessel, { ends, cables }: Wire): Pick<BareLink, 'speedMbitPerS' | 'speedReason'> {
  const { cableTypes } = lookup(vessel)
  const unknown = ends.filter(({ speedMbitPerS }) => speedMbitPerS === null)
  if (unknown.length > 0) return { speedMbitPerS: null, speedReason: `the speed of ${inWords(unknown.map(endWords))} is not recorded` }
  const parts = [
    ...ends.map(end => ({ words: endWords(end), speedMbitPerS: end.speedMbitPerS ?? 0 })),
    ...cables.filter(({ typeTag }) => (cableTypes.get(typeTag ?? '')?.cores ?? fourPairsCoreCount) < fourPairsCoreCount)
      .map(({ tag }) => ({ words: `${tag}, which has fewer than four pairs`, speedMbitPerS: twoPairSpeedMbitPerS })),
  ]
  const speedMbitPerS = Math.min(...parts.map(part => part.speedMbitPerS))
  const slowest = parts.filter(part => part.speedMbitPerS === speedMbitPerS)
  return { speedMbitPerS, speedReason: slowest.length === parts.length ? 'both ports alike' : `set by ${inWords(slowest.map(({ words }) => words))}` }
}

function gapsOf(vessel: Vessel, { tag, length, ends }: BareLink): readonly Gap[] {
  return [
    ...(length.status === 'not computed' ? [{ subjectTag: tag, reason: `length of the link: ${length.reason}` }] : []),
    ...ends.filter(({ speedMbitPerS }) => speedMbitPerS === null).map(end => ({ subjectTag: end.tag, reason: `speed of its links: ${speedGap(vessel, end)}` })),
  ]
}

/** Four pairs are then taken for granted, without which there is no more than 100 Mbit/s. */
function coreGaps(vessel: Vessel, { tag, cableTags, speedMbitPerS }: BareLink): readonly Gap[] {
  const { cables, cableTypes } = lookup(vessel)
  const unknown = [...new Set(cableTags.flatMap(cable => cables.get(cable)?.typeTag ?? []))].filter(type => cableTypes.get(type)?.cores == null)
  return unknown.length === 0 || speedMbitPerS === null || speedMbitPerS <= twoPairSpeedMbitPerS ? []
    : [{ subjectTag: tag, reason: `speed of the link: how many cores ${inWords(unknown)} has is not recorded, and four pairs are taken for granted` }]
}

function speedGap(vessel: Vessel, { tag, portName }: LinkEnd): string {
  if (portName !== null) return 'the speed of an Ethernet port in use is not recorded'
  return ethernetPorts(lookup(vessel).equipment.get(tag)).length === 0 ? 'its Ethernet ports are not recorded' : 'at which port a cable ends is not recorded'
}

/** Links between things that pass traffic on, slower than links on both their sides. */
function slowUplinks({ graph, passes }: Wiring, links: readonly BareLink[]): readonly Finding[] {
  const speeds = new Map(links.map(({ tag, speedMbitPerS }) => [tag, speedMbitPerS ?? 0]))
  return links.flatMap(link => {
    const { tag, ends, speedMbitPerS, speedReason } = link
    if (speedMbitPerS === null || ends[0].tag === ends[1].tag || !ends.every(end => passes(end.tag) === true)) return []
    const sides = ends.map(end => walkOut(graph, end.tag, node => passes(node) === true, edge => edge !== tag))
    // On a ring both sides are one.
    if (sides[0]!.tree.some(({ far }) => far === ends[1].tag)) return []
    const devicesMbitPerS = Math.min(...sides.map(({ tree }) => Math.max(0, ...tree.map(edge => speeds.get(edge.tag) ?? 0))))
    return devicesMbitPerS <= speedMbitPerS ? [] : [find(uplinkSlow, {
      subject: { kind: 'cable', id: tag }, field: null, evidence: { speedMbitPerS, devicesMbitPerS }, limit: null,
      context: { from: ends[0].tag, to: ends[1].tag, reason: speedReason },
    })]
  })
}

// --- ports -----------------------------------------------------------------------------------------------------------
export function portFindings(vessel: Vessel, ports: ReadonlyMap<Tag, readonly PortUse[]>): readonly Finding[] {
  const { equipment } = lookup(vessel)
  return [...ports].flatMap(([tag, uses]) => uses.flatMap(({ name, cables }) => {
    const timesCount = ethernetPorts(equipment.get(tag)).filter(port => port.name === name).length
    const about = { subject: { kind: 'equipment', id: tag }, limit: null }
    // Two ports of one name may well have a cable each.
    return [
      ...(timesCount > 1 ? [find(portRecordedTwice, { ...about, field: 'ports', evidence: { timesCount }, context: { port: name } })] : []),
      ...(cables.length > timesCount ? [find(severalCablesOnPort, {
        ...about, field: null, evidence: { cableCount: cables.length }, context: { port: name, cables: inWords(cables.map(({ cableTag }) => cableTag)) },
      })] : []),
    ]
  }))
}
