/** On which plan a zone is drawn. Seen from above spaces lie over one another; each level shows what does not. */
import { byTag } from '../../model/tag-order.js'
import type { Box, Tag } from '../../model/vessel.js'

export interface BoxedZone { readonly tag: Tag; readonly box: Box }

/** Of the smaller zone's plan; a bulkhead measured twice is no other level. Common practice, no source. */
const mostSharedFactor = 0.1

/** The lowest level first. A zone stands one level above the highest of those that lie below it, by the middles of their heights. */
export function levelsOf(zones: readonly BoxedZone[]): readonly (readonly Tag[])[] {
  const upwards = zones.toSorted((a, b) => middleHeightM(a.box) - middleHeightM(b.box) || byTag(a, b))
  const levelByTag = new Map<Tag, number>()
  upwards.forEach((zone, i) => {
    const below = upwards.slice(0, i).filter(other => liesOver(zone.box, other.box))
    levelByTag.set(zone.tag, Math.max(-1, ...below.map(({ tag }) => levelByTag.get(tag)!)) + 1)
  })
  const levelCount = Math.max(-1, ...levelByTag.values()) + 1
  return Array.from({ length: levelCount }, (_, level) => zones.filter(({ tag }) => levelByTag.get(tag) === level).map(({ tag }) => tag))
}

const middleHeightM = ({ fromM, toM }: Box): number => (fromM[2] + toM[2]) / 2

const planM2 = (lengthM: number, breadthM: number): number => Math.max(0, lengthM) * Math.max(0, breadthM)

function liesOver(a: Box, b: Box): boolean {
  const sharedM = ([0, 1] as const).map(axis => Math.min(a.toM[axis], b.toM[axis]) - Math.max(a.fromM[axis], b.fromM[axis]))
  const smallerM2 = Math.min(...[a, b].map(({ fromM, toM }) => planM2(toM[0] - fromM[0], toM[1] - fromM[1])))
  return planM2(sharedM[0]!, sharedM[1]!) > mostSharedFactor * smallerM2
}
