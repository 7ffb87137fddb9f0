/** What each circuit brings to what: its supply side, the cables and things passed on the way, the way back. */
import { lookup } from '../../model/lookup.js'
import type { CircuitFeed, FeedingResults, Segment } from '../../model/results.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import { equipmentKind, type EquipmentKindKey } from '../../references/equipment-kinds.js'
import { returnsFrom } from '../conductors/circuit-cables.js'
import { segmentsTo } from '../feeding/segments.js'

/** One circuit to one thing that it supplies. */
export interface Delivery {
  readonly circuit: Circuit
  readonly toTag: Tag
  /** From the protective device out to the thing; empty where no cable is entered that reaches it. */
  readonly way: readonly Segment[]
  /** Cables and things of the way back, where it is named. */
  readonly returnTags: readonly Tag[]
  /** Why the way is not fully known; null when it is. */
  readonly gap: string | null
  /** The thing puts current in at this circuit, for charging. */
  readonly charges: boolean
  /** It lives on this circuit. */
  readonly supplies: boolean
}

/** Every circuit to everything in use that it lists or reaches, in the order of the circuits. */
export function deliveriesOf(vessel: Vessel, feeding: FeedingResults): readonly Delivery[] {
  return vessel.circuits.flatMap(circuit => {
    const feed = feeding.byCircuit.get(circuit.tag)
    if (feed === undefined) return []
    const reached = feed.segments.map(({ farTag }) => farTag).filter(tag => endsCircuit(vessel, tag))
    return [...new Set([...circuit.loadTags, ...reached])].filter(tag => isInUse(vessel, tag)).map(tag => deliveryOf(vessel, circuit, feed, tag))
  })
}

function deliveryOf(vessel: Vessel, circuit: Circuit, feed: CircuitFeed, toTag: Tag): Delivery {
  const way = segmentsTo(feed.segments, toTag)
  const back = returnsFrom(vessel, circuit, toTag)
  const charges = putsIn(vessel, feed, toTag)
  return {
    circuit, toTag, way,
    returnTags: 'reason' in back ? [] : withEnds(vessel, back, [toTag, circuit.fedFromTag]),
    gap: way.length === 0 ? `no cable is entered from ${circuit.tag}, so only the circuit itself counts` : 'reason' in back ? back.reason : null,
    charges,
    supplies: !charges || lookup(vessel).equipment.get(toTag)?.kind === ('inverter charger' satisfies EquipmentKindKey),
  }
}

/** Whether the item gives current where this circuit meets it. Without recorded outputs its kind decides. */
function putsIn(vessel: Vessel, { infeed }: CircuitFeed, tag: Tag): boolean {
  const item = lookup(vessel).equipment.get(tag)
  if (item === undefined) return false
  if (item.outputs.length > 0) return infeed !== null && (infeed.only || infeed.parts.some(part => part.tag === tag))
  return equipmentKind(item.kind).draw === 'source' && !converts.has(item.kind)
}
const converts: ReadonlySet<string> = new Set<EquipmentKindKey>(['dc-dc converter', 'isolation transformer'])

/** A circuit goes on through switches and joints; what stands in a wire's way is not supplied by it. */
export const passes = (vessel: Vessel, tag: Tag): boolean => {
  const item = lookup(vessel).equipment.get(tag)
  return item !== undefined && equipmentKind(item.kind).joins !== 'nothing'
}
const endsCircuit = (vessel: Vessel, tag: Tag): boolean => lookup(vessel).items.has(tag) && !passes(vessel, tag)

export const isInUse = (vessel: Vessel, tag: Tag): boolean => lookup(vessel).items.get(tag)?.status !== 'removed'

/** Cables with the busbars and shunts between them; batteries and the two ends of the circuit are known already. */
function withEnds(vessel: Vessel, cableTags: readonly Tag[], without: readonly Tag[]): readonly Tag[] {
  const { cables, equipment, busbars } = lookup(vessel)
  const ends = cableTags.flatMap(tag => [cables.get(tag)?.from.tag, cables.get(tag)?.to.tag])
    .filter(tag => tag !== undefined && !without.includes(tag) && (busbars.has(tag) || (equipment.has(tag) && passes(vessel, tag))))
  return [...new Set([...cableTags, ...ends as Tag[]])]
}
