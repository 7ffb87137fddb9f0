/** Where everything is: plans by levels, profile, every item by zone. */
import { isThere } from '../../../model/lookup.js'
import type { ArrangementView, Tag } from '../../../model/vessel.js'
import type { EquipmentKindKey } from '../../../references/equipment-kinds.js'
import type { ViewContext } from '../../context.js'
import { locationPlan } from '../../drawings/location-plan.js'
import { fixedPages } from '../../site-map.js'
import { byTag, compareTags, plainText, tableOf } from '../../tables.js'
import { counted, dash, joined, linkTo, muted, orDash, orNotRecorded, pageNumber } from '../../text.js'
import type { Block, Drawing, Page, Table, Text } from '../../view-model.js'
import { type BoxedZone, hasPlan, isBoxed, marksMean, numberedIn, planBasis, planImages, planMarks, planZone } from './location-parts.js'

/** What a person must find in a hurry, besides panels and batteries: the plan of the whole boat shows no more than these. */
const landmarkKinds: ReadonlySet<string> = new Set<EquipmentKindKey>([
  'battery isolator', 'shore inlet', 'fuel shut-off valve', 'gas shut-off valve', 'engine stop', 'seacock', 'bilge pump', 'manual bilge pump', 'fire extinguisher',
  'fixed fire extinguisher', 'fire blanket', 'escape hatch', 'emergency tiller', 'liferaft', 'lifejackets', 'distress signals', 'safety beacon', 'first-aid kit',
])

export function locationPages(context: ViewContext): readonly Page[] {
  const { vessel, results } = context
  if (results.location.byItem.size === 0) return []
  const drawn = hasPlan(context) ? [...levelPlans(context), profile(context), landmarkTable(context)] : [noPlan]
  const page = { key: fixedPages.location, title: 'Location plan', kicker: null, trail: [] }
  const counts = `${counted(results.location.byItem.size, 'item')} in ${counted(vessel.zones.length, 'zone')}.`
  return [{
    ...page,
    lead: [`${counts} Each zone has a plan of its own, with a number for each thing in it.`],
    // On paper each zone lists what is in it in its own chapter.
    printed: [...drawn, zoneTable(context, [{ title: 'Sheet', width: 'number', cell: ({ tag }) => [pageNumber(context.addressOf(tag)!)] }])],
    blocks: [...drawn, zoneTable(context, []), itemTable(context)],
  }]
}

const noPlan: Block = {
  is: 'paragraph',
  text: ['There is no plan: no zone has its corners recorded. Enter two opposite corners of each zone as ', { is: 'tag', text: 'from' }, ' and ', { is: 'tag', text: 'to' },
    ': forward of the transom, to port, above the waterline. With them plan, profile and a drawing of each zone are made.'],
}

function levelPlans(context: ViewContext): readonly Drawing[] {
  const { levels } = context.results.location
  return levels.map((tags, i) => {
    const zones = tags.map(tag => context.lookup.zones.get(tag)!).filter(isBoxed)
    const which = levels.length === 1 ? '' : `, level ${i + 1} of ${levels.length}${i === 0 ? ' (the lowest)' : i === levels.length - 1 ? ' (the highest)' : ''}`
    return boatDrawing(context, 'plan', `plan-${i + 1}`, `Plan from above${which}`, zones, landmarksIn(context, new Set(tags)))
  })
}

/** Zones lie behind one another here, so it shows no items. */
const profile = (context: ViewContext): Drawing =>
  boatDrawing(context, 'profile', 'profile', 'Profile from starboard', context.vessel.zones.filter(isBoxed), [])

function boatDrawing(context: ViewContext, view: ArrangementView, id: string, caption: string, zones: readonly BoxedZone[], landmarks: readonly Tag[]): Drawing {
  const images = planImages(context.vessel, view)
  const marks = planMarks(context, view, landmarks)
  return {
    is: 'drawing', id, caption, wide: true, pictures: images.map(({ file }) => file),
    svg: locationPlan({ ...planBasis(context.vessel), title: caption, view, zones: zones.map(zone => planZone(context, view, zone, 'named')), marks, images, width: 720, ruled: true }),
    description: [
      'Zones: ', ...joined(zones.map(({ tag }): Text => [...context.named(tag), ` (${counted(numberedIn(context, tag).length, 'item')})`])), '. ',
      ...(marks.length === 0 ? [] : ['Marked: ', ...joined(marks.map(({ tag }) => context.named(tag))), '. ']),
      images.length > 0 ? 'Drawn over the yard’s own drawing.' : 'The outline of the hull is a plain shape in her length and beam or draught, not her lines.',
    ],
  }
}

function landmarksIn({ vessel, results }: ViewContext, zoneTags: ReadonlySet<Tag>): readonly Tag[] {
  const marked = [...vessel.equipment.filter(({ kind }) => landmarkKinds.has(kind)), ...vessel.batteries, ...vessel.panels]
  return marked.filter(isThere).map(({ tag }) => tag).filter(tag => zoneTags.has(results.location.byItem.get(tag)?.zoneTag ?? ''))
}

function landmarkTable(context: ViewContext): Table {
  const zoneTags = new Set(context.vessel.zones.filter(isBoxed).map(({ tag }) => tag))
  const tags = landmarksIn(context, zoneTags).toSorted(compareTags)
  return tableOf(tags.map(tag => context.lookup.items.get(tag)!), {
    id: 'marked-on-plans',
    caption: 'Marked on the plans',
    empty: 'No panel, battery, shut-off or safety gear is recorded in these zones.',
    note: [marksMean],
    columns: [
      { title: 'Tag', width: 'tag', cell: item => [context.tag(item.tag)] },
      { title: 'What', width: 'text', cell: item => [item.name] },
      { title: 'Zone', width: 'short', cell: item => context.named(item.zoneTag!) },
      { title: 'Number there', width: 'number', cell: item => [String(context.results.location.byItem.get(item.tag)!.placeNumber)] },
      { title: 'Where', width: 'text', cell: item => orDash(item.location) },
    ],
  })
}

function zoneTable(context: ViewContext, further: Parameters<typeof tableOf<BoxedZone | ViewContext['vessel']['zones'][number]>>[1]['columns']): Table {
  return tableOf(context.vessel.zones, {
    id: 'zones',
    caption: 'Zones and how to get at them',
    empty: 'No zone is recorded.',
    columns: [
      { title: 'Zone', width: 'short', cell: ({ tag }) => context.named(tag) },
      { title: 'Items', width: 'number', cell: ({ tag }) => [String(numberedIn(context, tag).length)] },
      { title: 'Access', width: 'text', cell: ({ access }) => orNotRecorded(access) },
      ...further,
    ],
  })
}

/** By zone and number; what has no zone comes last. */
function itemTable(context: ViewContext): Table {
  const { lookup, results, vessel } = context
  const zoneless = [...results.location.byItem].filter(([, { zoneTag }]) => zoneTag === null).map(([tag]) => lookup.items.get(tag)!).toSorted(byTag)
  const items = [...vessel.zones.flatMap(({ tag }) => numberedIn(context, tag).map(itemTag => lookup.items.get(itemTag)!)), ...zoneless]
  return tableOf(items, {
    id: 'items-by-zone',
    caption: 'Every item by zone, with its number on the plan of the zone',
    empty: 'Nothing is recorded.',
    columns: [
      { title: 'Zone', width: 'short', cell: ({ zoneTag }) => (zoneTag === null ? [muted('no zone recorded')] : [linkTo(context.addressOf(zoneTag)!, plainText(context.named(zoneTag)))]) },
      { title: 'Number', width: 'number', cell: ({ tag }) => orDash(results.location.byItem.get(tag)!.placeNumber?.toString() ?? null) },
      { title: 'Tag', width: 'tag', cell: ({ tag }) => [context.tag(tag)] },
      { title: 'Name', width: 'text', cell: ({ name }) => [name] },
      { title: 'Where', width: 'text', cell: ({ location }) => orDash(location) },
      { title: 'Access', width: 'text', cell: ({ zoneTag }) => (zoneTag === null ? dash : orNotRecorded(lookup.zones.get(zoneTag)!.access)) },
    ],
  })
}
