/** Which circuits the isolators part from their batteries, what stays live when all of them are open, what feeds back. */
import { grouped, isDistributionPoint, isThere, lookup } from '../../model/lookup.js'
import type { CircuitFeed, FeedingResults, Segment } from '../../model/results.js'
import type { AlwaysLive, FeedBack, Isolator } from '../../model/results/emergency.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { segmentsTo } from '../feeding/segments.js'
import type { LossOf } from './losses.js'

type Feeds = Pick<FeedingResults, 'byCircuit'>

const isKind = ({ kind }: { readonly kind: string }, ...kinds: readonly EquipmentKindKey[]): boolean => kinds.some(each => each === kind)

const passedOn = (segments: readonly Segment[]): readonly Tag[] => segments.flatMap(({ nearTag, farTag }) => [nearTag, farTag])
export const passedBy = (feed: CircuitFeed | undefined): readonly Tag[] => (feed === undefined ? [] : passedOn([...feed.supplySegments, ...feed.segments]))

// --- isolators -------------------------------------------------------------------------------------------------------
/** A selector of mains sources is none. */
function isIsolator(vessel: Vessel, { byCircuit }: Feeds): (tag: Tag) => boolean {
  const { batteries } = lookup(vessel)
  const onBatteryCircuits = new Set(vessel.circuits.filter(({ tag }) => batteries.has(byCircuit.get(tag)?.sourceTag ?? '')).flatMap(({ tag }) => passedBy(byCircuit.get(tag))))
  const tags = new Set(vessel.equipment.filter(item => isThere(item) && (isKind(item, 'battery isolator') || (isKind(item, 'source selector') && onBatteryCircuits.has(item.tag)))).map(({ tag }) => tag))
  return tag => tags.has(tag)
}

/** In the order in which they are opened: links, which stay open, last; what carries no engine's current first; then what ends most. */
export function isolators(vessel: Vessel, feeds: Feeds, { loss, effects }: LossOf): readonly Isolator[] {
  const { equipment } = lookup(vessel)
  const isOne = isIsolator(vessel, feeds)
  const isOf = (tag: Tag, kind: EquipmentKindKey): boolean => { const item = equipment.get(tag); return item !== undefined && isKind(item, kind) }
  const throughEach = grouped(vessel.circuits, ({ tag }) => passedBy(feeds.byCircuit.get(tag)))
  const made = vessel.equipment.filter(({ tag }) => isOne(tag)).map(({ tag }): Isolator => {
    const through = throughEach.get(tag) ?? []
    const own = loss(tag)
    return {
      ...own,
      batteryTags: [...new Set(through.flatMap(circuit => feeds.byCircuit.get(circuit.tag)?.sourceTag ?? []))],
      alternatorTags: effects(tag).filter(effect => effect.causes.some(({ of }) => of === 'charging') && isOf(effect.tag, 'alternator')).map(effect => effect.tag),
      starterTags: own.endedTags.filter(ended => isOf(ended, 'starter motor')),
      inLink: through.length > 0 && through.every(({ normalState }) => normalState === 'open'),
    }
  })
  const carriesEngine = ({ alternatorTags, starterTags }: Isolator): number => Number(alternatorTags.length + starterTags.length > 0)
  return made.toSorted((a, b) => Number(a.inLink) - Number(b.inLink) || carriesEngine(a) - carriesEngine(b) || b.endedTags.length - a.endedTags.length)
}

// --- what stays live -------------------------------------------------------------------------------------------------
export interface StaysLive {
  readonly rows: readonly AlwaysLive[]
  /** Whether current reaches the thing by this circuit with every isolator open. */
  reaches(circuit: Circuit, toTag: Tag): boolean
}

/**
 * With every isolator open. Where no cable is recorded that leads to a thing, no isolator is known to stand in the way, and it
 * is told as live: whoever works there is warned for nothing rather than not at all.
 */
export function staysLive(vessel: Vessel, feeds: Feeds): StaysLive {
  const { batteries, equipment, items, circuitsFedFrom, circuitsOfLoad } = lookup(vessel)
  const isOne = isIsolator(vessel, feeds)
  const known = new Map<Tag, boolean>()
  return { rows: vessel.circuits.filter(leavesSource).flatMap(rowOf), reaches }

  function reaches(circuit: Circuit, toTag: Tag): boolean {
    const feed = feeds.byCircuit.get(circuit.tag)
    const way = feed === undefined ? [] : passedOn([...feed.supplySegments, ...segmentsTo(feed.segments, toTag)])
    return circuit.normalState === 'closed' && !way.some(isOne) && isLive(circuit.fedFromTag)
  }

  /** A battery; a panel or busbar, or a converter, that some circuit keeps alive. Shore, sun and engines are told by themselves. */
  function isLive(tag: Tag): boolean {
    const before = known.get(tag)
    if (before !== undefined) return before
    known.set(tag, batteries.has(tag))
    if (!batteries.has(tag)) known.set(tag, (circuitsOfLoad.get(tag) ?? []).some(circuit => !putsIn(circuit, tag) && reaches(circuit, tag)))
    return known.get(tag)!
  }

  function putsIn({ tag }: Circuit, itemTag: Tag): boolean {
    return feeds.byCircuit.get(tag)?.infeed?.parts.some(part => part.tag === itemTag) ?? false
  }

  function leavesSource({ fedFromTag }: Circuit): boolean {
    return batteries.has(fedFromTag) || equipment.has(fedFromTag)
  }

  function rowOf(circuit: Circuit): readonly AlwaysLive[] {
    const itemTags = [...new Set(aliveBy(circuit, new Set()))]
    const reached = feeds.byCircuit.get(circuit.tag)?.reachedTags ?? []
    return itemTags.length === 0 ? [] : [{ circuitTag: circuit.tag, sourceTag: circuit.fedFromTag, itemTags, assumed: reached.length === 0 }]
  }

  function aliveBy(circuit: Circuit, walked: Set<Tag>): readonly Tag[] {
    if (walked.has(circuit.tag)) return []
    walked.add(circuit.tag)
    return circuit.loadTags.filter(tag => items.get(tag)?.status !== 'removed' && reaches(circuit, tag))
      .flatMap(tag => (isDistributionPoint(vessel, tag) ? (circuitsFedFrom.get(tag) ?? []).flatMap(below => aliveBy(below, walked)) : [tag]))
  }
}

export const feedBacks = (vessel: Vessel, { byCircuit }: Feeds): readonly FeedBack[] => vessel.circuits.flatMap(({ tag, fedFromTag }) => {
  const infeed = byCircuit.get(tag)?.infeed ?? null
  return infeed === null || !infeed.only ? [] : infeed.parts.map(part => ({ sourceTag: part.tag, circuitTag: tag, ontoTag: fedFromTag }))
})
