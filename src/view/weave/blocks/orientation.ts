/** Walking through the boat: what one sees from where one stands, zone by zone. */
import { isThere, type Item } from '../../../model/lookup.js'
import type { Position, SpaceKind, StandingPlace, Zone } from '../../../model/vessel.js'
import { type EquipmentKindKey, equipmentKind } from '../../../references/equipment-kinds.js'
import { grouped } from '../../../model/lookup.js'
import type { ViewContext } from '../../context.js'
import { byTag } from '../../tables.js'
import { joined, lineBreak, muted } from '../../text.js'
import type { Block, Facts, Text } from '../../view-model.js'

const groups: readonly (readonly [title: string, spaces: readonly SpaceKind[]])[] = [
  ['Inside', ['interior']],
  ['Outside', ['cockpit', 'deck', 'mast']],
  ['Under the sole and behind doors', ['machinery', 'battery', 'bilge', 'locker']],
]

/**
 * Starts at the first standing place recorded, with the group of spaces that it lies in. Within a group the next zone is the
 * one nearest to the last, by its box or else by the places of what is in it; zones without either come last, as recorded.
 */
export function orientation(context: ViewContext): readonly Block[] {
  const { zones, standingPlaces } = context.vessel
  const seen = grouped([...context.lookup.items.values()].filter(item => isThere(item) && isForTheOwner(item)), ({ zoneTag }) => (zoneTag === null ? [] : [zoneTag]))
  const start = standingPlaces.find(({ zoneTag }) => zones.some(({ tag }) => tag === zoneTag)) ?? null
  const startZone = zones.find(({ tag }) => tag === start?.zoneTag) ?? zones[0]
  const inOrder = groups.toSorted((a, b) => Number(isIn(b, startZone)) - Number(isIn(a, startZone)))
  let from = startZone === undefined ? null : placeOf(context, startZone)
  return inOrder.flatMap(group => {
    const walk = walkThrough(context, zones.filter(zone => isIn(group, zone) && seen.has(zone.tag)), startZone, from)
    const last = walk.at(-1)
    from = (last === undefined ? null : placeOf(context, last)) ?? from
    return walk.length === 0 ? [] : [{ is: 'heading' as const, text: group[0], anchor: null }, ...walk.map(zone => zoneFacts(context, zone, (seen.get(zone.tag) ?? []).toSorted(byTag)))]
  })
}

const isIn = ([, spaces]: (typeof groups)[number], zone: Zone | undefined): boolean => zone !== undefined && spaces.includes(zone.space)

/** A ladder takes longer than a step. */
const ladderFactor = 2

function walkThrough(context: ViewContext, zones: readonly Zone[], first: Zone | undefined, from: Position | null): readonly Zone[] {
  const placed = zones.flatMap(zone => { const at = placeOf(context, zone); return at === null ? [] : [{ zone, at }] })
  const walk: Zone[] = []
  let here = from
  for (let left = placed; left.length > 0;) {
    const away = ({ zone, at }: (typeof placed)[number]): number => (zone === first ? -1 : here === null ? 0 : Math.hypot(at[0] - here[0], at[1] - here[1], ladderFactor * (at[2] - here[2])))
    const next = left.toSorted((a, b) => away(a) - away(b))[0]!
    walk.push(next.zone)
    here = next.at
    left = left.filter(other => other !== next)
  }
  return [...walk, ...zones.filter(zone => !walk.includes(zone))]
}

function placeOf({ lookup }: ViewContext, { tag, box }: Zone): Position | null {
  if (box !== null) return mean([box.fromM, box.toM])
  const positions = [...lookup.items.values()].flatMap(item => (item.zoneTag === tag && positionOf(item) !== null ? [positionOf(item)!] : []))
  return positions.length === 0 ? null : mean(positions)
}

function mean(positions: readonly Position[]): Position {
  const along = (axis: 0 | 1 | 2): number => positions.reduce((sum, position) => sum + position[axis], 0) / positions.length
  return [along(0), along(1), along(2)]
}

const positionOf = (item: Item): Position | null => ('positionM' in item ? item.positionM : null)

function zoneFacts(context: ViewContext, zone: Zone, items: readonly Item[]): Facts {
  const stand = context.vessel.standingPlaces.find(({ zoneTag }) => zoneTag === zone.tag) ?? null
  const bySide = grouped(items, item => [sideOf(stand, positionOf(item))])
  return {
    is: 'facts', caption: stand === null ? zone.name : `${zone.name}: ${lowerFirst(stand.name)}, facing forward`, entries: [
      { label: 'Space', value: [...context.named(zone.tag), ...(zone.access === null ? [] : [' ', muted(`(access: ${zone.access})`)])] },
      ...sides.flatMap(side => { const there = bySide.get(side); return there === undefined ? [] : [{ label: side, value: listed(context, there) }] }),
    ],
  }
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

const listed = (context: ViewContext, items: readonly Item[]): Text =>
  joined(items.map(item => [...context.named(item.tag), ...(item.location === null ? [] : [' ', muted(`(${item.location})`)])]), lineBreak)

const sides = ['Ahead', 'Left', 'Right', 'Behind', 'Overhead', 'Under your feet', 'To port', 'On the centreline', 'To starboard', 'Also here'] as const
type Side = (typeof sides)[number]

/** Above the reach of the eye, and below what one stands on. */
const overheadM = 1.9
const underfootM = -0.15
/** Half the width of what counts as the middle of the boat. */
const centreM = 0.25

/** Seen by a person who faces forward; where nobody is recorded to stand, by the boat's sides. */
function sideOf(stand: StandingPlace | null, at: Position | null): Side {
  if (at === null) return 'Also here'
  if (stand === null) return Math.abs(at[1]) <= centreM ? 'On the centreline' : at[1] > 0 ? 'To port' : 'To starboard'
  const [forward, left, up] = [at[0] - stand.positionM[0], at[1] - stand.positionM[1], at[2] - stand.positionM[2]]
  if (up > overheadM) return 'Overhead'
  if (up < underfootM) return 'Under your feet'
  if (Math.abs(left) > Math.abs(forward)) return left > 0 ? 'Left' : 'Right'
  return forward >= 0 ? 'Ahead' : 'Behind'
}

/** What one looks at, turns, presses or takes into the hand; not what only works behind the panels. */
function isForTheOwner(item: Item): boolean {
  if (!('kind' in item) || !('description' in item)) return !('polarity' in item)
  if (neverSeen.has(item.kind)) return false
  return seenLetters.has(equipmentKind(item.kind).classLetter) || seenKinds.has(item.kind)
}
const seenLetters: ReadonlySet<string> = new Set(['C', 'E', 'F', 'G', 'M', 'P', 'Q', 'S'])
const neverSeen: ReadonlySet<string> = new Set<EquipmentKindKey>(['anode', 'trim tab', 'autopilot drive', 'starter motor', 'alternator'])
const seenKinds: ReadonlySet<string> = new Set<EquipmentKindKey>([
  'compass', 'smoke alarm', 'gas detector', 'shore inlet', 'socket', 'audio unit', 'inverter', 'inverter charger', 'charger', 'battery monitor', 'computer',
])
