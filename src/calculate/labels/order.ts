/** The order in which labels are stuck on: zone by zone as the vessel lists them, then by tag, both ends of a cable together. */
import type { Label } from '../../model/results/labels.js'
import { compareTags } from '../../model/tag-order.js'
import type { Tag, Vessel } from '../../model/vessel.js'

/** A cable belongs to the zone of its first end; what has no zone comes last. */
export function inOrder({ zones }: Pick<Vessel, 'zones'>, labels: readonly Label[]): readonly Label[] {
  const rank = new Map(zones.map(({ tag }, i) => [tag, i]))
  const firstEnds = new Map(labels.filter(({ end }) => end === 'from').map(({ aboutTag, place }) => [aboutTag, place.zoneTag]))
  const zoneOf = ({ aboutTag, end, place }: Label): Tag | null => (end === null ? place.zoneTag : firstEnds.get(aboutTag) ?? null)
  const rankOf = (label: Label): number => rank.get(zoneOf(label) ?? '') ?? zones.length
  return labels.toSorted((a, b) => rankOf(a) - rankOf(b) || compareTags(a.aboutTag, b.aboutTag))
}
