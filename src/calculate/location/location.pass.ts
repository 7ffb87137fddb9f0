/** Where things are: numbers on the plan, boxes of zones, what pictures show. */
import { atMost, find, type Finding } from '../../findings/finding.js'
import { grouped, isThere, type Item, lookup } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { ItemPlace, LocationResults } from '../../model/results/location.js'
import { byTag } from '../../model/tag-order.js'
import type { Box, Position, Tag, Vessel, Zone } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { commonPractice } from '../../references/bibliography.js'
import { exceeds } from '../compare.js'
import { distanceBetweenM } from '../geometry.js'
import { itemOutsideZone, zonesInOneBox, zoneWithoutBox } from './findings.js'
import { type BoxedZone, levelsOf } from './levels.js'
import { pictureFindings } from './picture-findings.js'
import { placesWithin } from './places-within.js'

const besideBox = atMost(0.05, commonPractice('positions and corners of spaces are measured with a tape, to about 5 cm'))

export function locationPass(vessel: Vessel, _basis: Basis): LocationResults {
  const items = [...lookup(vessel).items.values()].filter(isThere).toSorted(byTag)
  const inZone = grouped(items, ({ zoneTag }) => [zoneTag])
  const boxed = vessel.zones.filter((zone): zone is Zone & BoxedZone => zone.box !== null)
  return {
    byItem: new Map([...inZone].flatMap(([zoneTag, here]) => placesIn(zoneTag, lookup(vessel).zones.get(zoneTag ?? '')?.box ?? null, here))),
    levels: levelsOf(boxed),
    notAssessed: boxed.length > 0 || vessel.zones.length === 0 || items.length === 0 ? [] : noPlan(vessel),
    findings: [
      ...(boxed.length === 0 ? [] : vessel.zones.flatMap(zone => boxMissing(zone, inZone.get(zone.tag) ?? []))),
      ...boxed.flatMap((zone, i) => sameBox(zone, boxed.slice(0, i))),
      ...boxed.flatMap(zone => (inZone.get(zone.tag) ?? []).flatMap(item => outside(item, zone))),
      ...pictureFindings(vessel),
    ],
  }
}

/** A panel and a busbar have no position of their own. */
const positionOf = (item: Item): Position | null => ('positionM' in item ? item.positionM : null)

/** `here`: what is in the zone, in the order of the tags. */
function placesIn(zoneTag: Tag | null, box: Box | null, here: readonly Item[]): readonly (readonly [Tag, ItemPlace])[] {
  const taken = here.map(positionOf).filter(position => position !== null)
  const placeless = here.filter(item => positionOf(item) === null)
  const spread = box === null ? [] : placesWithin(box, taken, placeless.length)
  return here.map((item, i) => {
    const positionM = positionOf(item)
    return [item.tag, { zoneTag, placeNumber: zoneTag === null ? null : i + 1, positionM, drawnAtM: positionM ?? spread[placeless.indexOf(item)] ?? null }]
  })
}

const noPlan = ({ identity }: Vessel): readonly Gap[] =>
  [{ subjectTag: identity.name, reason: 'no zone has a box (from and to), so there is no plan of the boat' }]

const boxMissing = ({ tag, box }: Zone, here: readonly Item[]): readonly Finding[] => (box !== null || here.length === 0 ? [] : [find(zoneWithoutBox, {
  subject: { kind: 'zone', id: tag }, field: null, evidence: { itemCount: here.length }, limit: null,
})])

function sameBox({ tag, box }: BoxedZone, before: readonly BoxedZone[]): readonly Finding[] {
  const corners = ({ fromM, toM }: Box): string => [...fromM, ...toM].join(' ')
  const other = before.find(zone => corners(zone.box) === corners(box))
  return other === undefined ? [] : [find(zonesInOneBox, { subject: { kind: 'zone', id: tag }, field: null, evidence: {}, limit: null, context: { other: other.tag } })]
}

function outside(item: Item, { tag, box: { fromM, toM } }: BoxedZone): readonly Finding[] {
  const positionM = positionOf(item)
  if (positionM === null) return []
  const within = (axis: 0 | 1 | 2): number => Math.min(Math.max(positionM[axis], fromM[axis]), toM[axis])
  const distanceM = distanceBetweenM(positionM, [within(0), within(1), within(2)])
  return !exceeds(distanceM, besideBox) ? [] : [find(itemOutsideZone, {
    subject: { kind: 'chemistry' in item ? 'battery' : 'equipment', id: item.tag }, field: 'positionM', evidence: { distanceM }, limit: besideBox, context: { zone: tag },
  })]
}
