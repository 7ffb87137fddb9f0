/** What other pages show of where things are: a small plan with a few items marked, and the photographs that show them. */
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { locationPlan } from '../../drawings/location-plan.js'
import { joined, muted } from '../../text.js'
import type { Block, Text } from '../../view-model.js'
import { hasPlan, isBoxed, planBasis, planMarks, planZone } from './location-parts.js'
import { pictureBlock } from './photograph-blocks.js'
import { positionWords } from './position-words.js'

export interface LocationDrawingOptions {
  /** Unique on its page. */
  readonly id: string
  readonly caption: string
}

/** As wide as a telephone shows it and half a sheet of paper, so that its letters are not made small there. */
const smallWidth = 335

/** The boat from above with just these items marked and called by their tags; nothing where no zone has a box, or none of them a place. */
export function locationDrawing(context: ViewContext, tags: readonly Tag[], { id, caption }: LocationDrawingOptions): readonly Block[] {
  const { vessel, results } = context
  const marks = planMarks(context, 'plan', tags)
  if (!hasPlan(context) || marks.length === 0) return []
  const theirZones = new Set(marks.map(({ tag }) => results.location.byItem.get(tag)!.zoneTag))
  const { hull, units } = planBasis(vessel)
  // Without a hull the other zones give the shape of the boat.
  const isDrawn = hull.lengthM === null || hull.beamM === null ? () => true : ({ tag }: { readonly tag: Tag }) => theirZones.has(tag)
  const zones = vessel.zones.filter(isBoxed).filter(isDrawn).map(zone => ({ ...planZone(context, 'plan', zone, theirZones.has(zone.tag) ? 'named' : 'plain'), below: null }))
  return [{
    is: 'drawing', id, caption, narrow: true,
    svg: locationPlan({ title: caption, view: 'plan', hull, units, zones, marks, images: [], width: smallWidth, ruled: false }),
    description: joined(marks.map(({ tag }) => [...context.named(tag), ': ', ...placeInWords(context, tag)]), { is: 'break' }),
  }]
}

/** For the page of one item. */
export function whereItIs(context: ViewContext, tag: Tag): readonly Block[] {
  const place = context.results.location.byItem.get(tag)
  const zone = place?.zoneTag == null ? null : context.lookup.zones.get(place.zoneTag)
  const number = place?.placeNumber == null || zone == null ? '' : `, number ${place.placeNumber} of ${zone.name}`
  return locationDrawing(context, [tag], { id: 'where-it-is', caption: `Where it is${number}` })
}

/** Position, or that only the zone is known. */
export function placeInWords(context: ViewContext, tag: Tag): Text {
  const place = context.results.location.byItem.get(tag)
  if (place === undefined) return [muted('not on board')]
  if (place.positionM !== null) return [positionWords(context.vessel, place.positionM)]
  return place.zoneTag === null ? [muted('place not recorded')] : ['somewhere in ', ...context.named(place.zoneTag)]
}

/** The photographs with a call-out at one of these items. */
export const photographBlocks = (context: ViewContext, tags: readonly Tag[]): readonly Block[] =>
  context.vessel.photographs.filter(({ callOuts }) => callOuts.some(({ itemTag }) => tags.includes(itemTag)))
    .map(photograph => pictureBlock(context, photograph, new Set(tags)))
