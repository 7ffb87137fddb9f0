/** Which way each stream takes, and what that puts on each link. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { EthernetLink, LinkLoad, LinkStream, StreamWay } from '../../model/results/ethernet.js'
import type { Gap } from '../../model/results/gap.js'
import type { Equipment, Stream, Tag, Vessel } from '../../model/vessel.js'
import { compare } from '../compare.js'
import { walkOut } from '../graph.js'
import { runMethod } from '../run-method.js'
import { loadAbovePlan, loadAboveSpeed } from './findings.js'
import { linkLoadMethod } from './link-load.calc.js'
import type { BareLink } from './links.js'
import type { Part } from './part.js'
import { linkSpeed, plannedLoad } from './practice.js'
import type { Wiring } from './wiring.js'

interface Loaded { readonly links: readonly EthernetLink[]; readonly streams: readonly StreamWay[] }
/** A step of a way: a link, and whether it is gone along from its first end to its second. */
interface Step { readonly linkTag: Tag; readonly onward: boolean }

export function streamsPart(vessel: Vessel, wiring: Wiring, bare: readonly BareLink[]): Part<Loaded> {
  const linkOf = new Map(bare.map(link => [link.tag, link]))
  const parts = new Map<string, LinkStream[]>()
  const streams: StreamWay[] = []
  const gaps: Gap[] = []
  for (const sender of vessel.equipment.filter(({ status, streams: sent }) => status !== 'removed' && sent.length > 0)) {
    const wayTo = waysFrom(wiring, linkOf, sender.tag)
    for (const stream of sender.streams) {
      const receivers = receiversOf(vessel, wiring, sender, stream).map(tag => ({ tag, way: wayTo(tag) }))
      streams.push({
        senderTag: sender.tag, name: stream.name, rateMbitPerS: stream.rateMbitPerS, multicast: stream.multicast,
        receivers: receivers.map(({ tag, way }) => ({ tag, linkTags: way?.map(({ linkTag }) => linkTag) ?? null })),
      })
      gaps.push(...gapsOf(sender, stream, receivers))
      for (const [key, timesCount] of timesOn(stream, receivers.flatMap(({ way }) => way ?? []))) {
        parts.set(key, [...parts.get(key) ?? [], { senderTag: sender.tag, name: stream.name, rateMbitPerS: stream.rateMbitPerS, timesCount }])
      }
    }
  }
  const links = bare.map((link): EthernetLink => ({ ...link, loads: [loadOf(link, parts.get(keyOf(link.tag, true))), loadOf(link, parts.get(keyOf(link.tag, false)))] }))
  return {
    value: { links, streams }, findings: links.flatMap(loadFindings),
    notAssessed: [...gaps, ...links.flatMap(({ tag, loads }) => loads.some(({ parts: held, load }) => held.length > 0 && load.status === 'not computed')
      ? [{ subjectTag: tag, reason: 'load of the link: its speed is not known' }] : [])],
  }
}

const keyOf = (linkTag: Tag, onward: boolean): string => `${linkTag} ${onward}`

/** How often a stream goes over each link, by direction. */
function timesOn({ multicast }: Stream, steps: readonly Step[]): ReadonlyMap<string, number> {
  const times = new Map<string, number>()
  for (const { linkTag, onward } of steps) {
    const key = keyOf(linkTag, onward)
    times.set(key, multicast ? 1 : (times.get(key) ?? 0) + 1)
  }
  return times
}

/** By the fewest links, through all that passes traffic. Null where there is no way. */
function waysFrom({ graph, passes }: Wiring, linkOf: ReadonlyMap<Tag, BareLink>, senderTag: Tag): (tag: Tag) => readonly Step[] | null {
  const { tree } = walkOut(graph, senderTag, node => passes(node) === true)
  const at = new Map(tree.map(({ far }, i) => [far, i]))
  return tag => {
    const end = at.get(tag)
    if (end === undefined) return null
    const steps: Step[] = []
    for (let i: number | null = end; i !== null;) {
      const edge: (typeof tree)[number] = tree[i]!
      steps.unshift({ linkTag: edge.tag, onward: linkOf.get(edge.tag)!.ends[0].tag === edge.near })
      i = edge.parent
    }
    return steps
  }
}

/** Whoever is named; else those on a network that need data of the sender. */
function receiversOf(vessel: Vessel, { wiresAt }: Wiring, sender: Equipment, { toTags }: Stream): readonly Tag[] {
  const { equipment } = lookup(vessel)
  const named = toTags ?? vessel.equipment.filter(({ tag, dataFromTags }) => dataFromTags.includes(sender.tag) && wiresAt.has(tag)).map(({ tag }) => tag)
  return [...new Set(named)].filter(tag => tag !== sender.tag && equipment.get(tag)?.status !== 'removed')
}

function gapsOf({ tag }: Equipment, { name }: Stream, receivers: readonly { readonly tag: Tag; readonly way: readonly Step[] | null }[]): readonly Gap[] {
  if (receivers.length === 0) return [{ subjectTag: tag, reason: 'load of its streams: nothing on a network is recorded to take one of them' }]
  const unreached = receivers.filter(({ way }) => way === null).map(receiver => receiver.tag)
  return unreached.length === 0 ? [] : [{
    subjectTag: tag,
    reason: `load of its stream "${name}": no way over the network to ${inWords(unreached)} is recorded; of what is on a wireless network name the access point as the one that takes it`,
  }]
}

function loadOf({ speedMbitPerS, speedReason }: BareLink, parts: readonly LinkStream[] = []): LinkLoad {
  const streamsMbitPerS = parts.reduce((sum, { rateMbitPerS, timesCount }) => sum + rateMbitPerS * timesCount, 0)
  const load: LinkLoad['load'] = speedMbitPerS === null
    ? { status: 'not computed', method: linkLoadMethod.id, reason: speedReason } : runMethod(linkLoadMethod, { streamsMbitPerS, speedMbitPerS })
  const known = load.status === 'computed'
  return {
    streamsMbitPerS, parts, load,
    againstSpeed: known ? compare('streamsMbitPerS', streamsMbitPerS, { relation: 'at most', value: load.input.speedMbitPerS, citation: linkSpeed }) : null,
    againstPlan: known ? compare('loadPercent', load.output.loadPercent, plannedLoad) : null,
  }
}

/** Of both directions the fuller one. */
function loadFindings({ tag, ends, loads, speedReason }: EthernetLink): readonly Finding[] {
  const onward = loads[0].streamsMbitPerS >= loads[1].streamsMbitPerS
  const { streamsMbitPerS, againstSpeed, againstPlan } = onward ? loads[0] : loads[1]
  const [from, to] = onward ? ends : [ends[1], ends[0]]
  const about = { subject: { kind: 'cable', id: tag }, field: null, context: { from: from.tag, to: to.tag, reason: speedReason } }
  if (againstSpeed?.within === false) return [find(loadAboveSpeed, { ...about, evidence: { streamsMbitPerS }, limit: againstSpeed.limit })]
  return againstPlan?.within === false ? [find(loadAbovePlan, { ...about, evidence: { loadPercent: againstPlan.value, streamsMbitPerS }, limit: againstPlan.limit })] : []
}
