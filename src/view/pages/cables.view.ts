/** The cable and label index, a page for each cable, and the wireways they run through. */
import { labelText } from '../../model/cable-label.js'
import type { Cable, CableEnd, Tag, Wireway } from '../../model/vessel.js'
import { cableLengthM, cableTagsOf } from '../../model/results.js'
import { say, sayBoth, saySizeBoth } from '../../units/format.js'
import type { ViewContext } from '../context.js'
import { lossBlocks } from './fault-tracing/fault-blocks.js'
import { markdownWithTags, proceduresAbout } from './owner/procedures.js'
import { findingCards } from '../parts/finding-cards.js'
import { sayOrDash } from '../parts/say.js'
import { anchorOf, fixedPages } from '../site-map.js'
import { byTag, tableOf } from '../tables.js'
import { counted, dash, joined, muted, notRecorded, orDash, orNotRecorded, pageNumber } from '../text.js'
import type { Block, Page, Table, Text } from '../view-model.js'
import { workingOf } from '../parts/working.js'
import { comparisonText } from '../parts/assessment.js'

/** The end as a link, with the item's name. */
export const endNamed = (context: ViewContext, end: CableEnd): Text => [
  context.tag(end.tag),
  ...(end.terminal === null ? [] : [`:${end.terminal}`]),
  ...(context.nameOf(end.tag) === null ? [] : [` ${context.nameOf(end.tag)}`]),
]

/** Circuit whose walk passes the cable, by cable. */
export function circuitOfCable(context: ViewContext): ReadonlyMap<Tag, Tag> {
  const known = circuitsByCable.get(context)
  if (known !== undefined) return known
  const made = new Map<Tag, Tag>()
  for (const [circuitTag, feed] of context.results.feeding.byCircuit) {
    for (const cableTag of cableTagsOf(context.lookup.circuits.get(circuitTag)!, feed)) made.set(cableTag, circuitTag)
  }
  circuitsByCable.set(context, made)
  return made
}
const circuitsByCable = new WeakMap<ViewContext, ReadonlyMap<Tag, Tag>>()

export function cablesTable(
  context: ViewContext, cables: readonly Cable[],
  { id, caption, seenFrom = null, anchors = false }: { id: string; caption: string; seenFrom?: Tag | null; anchors?: boolean },
): Table {
  const circuitOf = circuitOfCable(context)
  const near = (cable: Cable) => (cable.to.tag === seenFrom ? cable.to : cable.from)
  const far = (cable: Cable) => (cable.to.tag === seenFrom ? cable.from : cable.to)
  return tableOf(cables.toSorted(byTag), {
    id,
    caption,
    empty: 'No cable is recorded here.',
    columns: [
      { title: 'Cable', width: 'tag', cell: cable => [context.tag(cable.tag)] },
      seenFrom === null
        ? { title: 'From', width: 'text', cell: cable => endNamed(context, near(cable)) }
        : { title: 'Terminal', width: 'tag', cell: cable => orDash(near(cable).terminal) },
      { title: seenFrom === null ? 'To' : 'Other end', width: 'text', cell: cable => endNamed(context, far(cable)) },
      { title: 'Type', width: 'short', cell: cable => orNotRecorded(cable.typeTag) },
      { title: 'Length', width: 'number', cell: cable => sayOrDash('cableLengthM', cableLengthM(context.results.routing.byCable.get(cable.tag)), context.vessel) },
      { title: 'Route', width: 'short', cell: cable => routeText(context, cable.tag) },
      { title: 'Circuit', width: 'tag', cell: cable => { const tag = circuitOf.get(cable.tag); return tag === undefined ? dash : [context.tag(tag)] } },
      ...(anchors ? [{ title: 'Sheet', width: 'number' as const, cell: (cable: Cable): Text => { const tag = circuitOf.get(cable.tag); return tag === undefined ? dash : [pageNumber(context.addressOf(tag)!)] } }] : []),
    ],
    ...(anchors ? { anchor: (cable: Cable) => anchorOf(context.addressOf(cable.tag)!) } : {}),
  })
}

export function routeText(context: ViewContext, cableTag: Tag): Text {
  const run = context.results.routing.byCable.get(cableTag)
  if (run === undefined || run.routeSource === 'unknown') return [muted('not recorded')]
  if (run.wirewayTags.length === 0) return dash
  return joined(run.wirewayTags.map(tag => [context.tag(tag)]), ' ')
}

export function cablePages(context: ViewContext): readonly Page[] {
  const { cables } = context.vessel
  return [
    {
      key: fixedPages.cables,
      title: 'Cable and label index',
      kicker: null,
      lead: [`${counted(cables.length, 'cable')}. Each carries its tag and both ends on a label at either end.`],
      printed: null,
      trail: [],
      blocks: [cablesTable(context, cables, { id: 'cable-index', caption: 'Cables by tag', anchors: true })],
    },
    ...cables.toSorted(byTag).map(cable => cablePage(context, cable)),
  ]
}

function cablePage(context: ViewContext, cable: Cable): Page {
  const { lookup, vessel, results } = context
  const type = cable.typeTag === null ? undefined : lookup.cableTypes.get(cable.typeTag)
  const circuit = circuitOfCable(context).get(cable.tag)
  const run = results.routing.byCable.get(cable.tag)
  const capacity = results.currentCarryingCapacity.byCable.get(cable.tag)
  const findings = context.findingsBySubject.get(cable.tag) ?? []
  const length = run?.length
  const blocks: readonly (Block | null)[] = [
    {
      is: 'facts', caption: null, entries: [
        { label: 'From', value: endNamed(context, cable.from) },
        { label: 'To', value: endNamed(context, cable.to) },
        { label: 'Label at the first end', value: [{ is: 'tag', text: labelText(cable, 'from') }] },
        { label: 'Label at the other end', value: [{ is: 'tag', text: labelText(cable, 'to') }] },
        { label: 'Circuit', value: circuit === undefined ? dash : context.named(circuit) },
        { label: 'Type', value: type === undefined ? [notRecorded] : [type.name] },
        { label: 'Conductor', value: type?.size == null ? dash : [`${type.cores ?? '?'} × ${saySizeBoth(type.size)}${type.insulationC === null ? '' : `, insulation ${say('insulationC', type.insulationC)}`}`] },
        { label: 'Route', value: routeText(context, cable.tag) },
        { label: 'Zones passed', value: joined((run?.zoneTags ?? []).map(context.named), { is: 'break' }) },
        { label: 'Length', value: length === undefined || length.status === 'not computed' ? [muted(`not assessed: ${length?.reason ?? 'no route'}`)] : [sayBoth('cableLengthM', cableLengthM(run)!, vessel), length.status === 'declared' ? ' (as recorded)' : ''] },
        { label: 'Status', value: orDash(cable.status) },
      ],
    },
    ...lossBlocks(context, cable.tag),
    length?.status === 'computed' ? workingOf(context, 'Length', length) : null,
    capacity === undefined ? null : workingOf(context, 'Current-carrying capacity', capacity.outcome, {
      remarks: capacity.lookup, limit: capacity.comparison === null ? null : comparisonText(capacity.comparison, context),
    }),
    ...proceduresAbout(context, cable.tag),
    cable.notes === null ? null : { is: 'markdown', source: markdownWithTags(context, cable.notes) },
    findings.length === 0 ? null : { is: 'findings', empty: '', findings: findingCards(context, findings) },
  ]
  return {
    key: context.addressOf(cable.tag)!,
    title: cable.name === null ? `Cable ${cable.tag}` : `${cable.tag} ${cable.name}`,
    kicker: 'Cable',
    lead: null,
    printed: null,
    trail: [{ text: 'Cables', to: fixedPages.cables }],
    blocks: blocks.filter(block => block !== null),
  }
}

export function wirewayPages(context: ViewContext): readonly Page[] {
  const { wireways } = context.vessel
  return [
    {
      key: fixedPages.wireways,
      title: 'Wireways',
      kicker: null,
      lead: ['The stretches that cables run through, how many loaded conductors share each, and how full the conduits are.'],
      printed: null,
      trail: [],
      blocks: [wirewayTable(context, wireways, { anchors: true })],
    },
    ...wireways.toSorted(byTag).map(wireway => wirewayPage(context, wireway)),
  ]
}

export function wirewayTable(context: ViewContext, wireways: readonly Wireway[], { anchors = false } = {}): Table {
  const load = (wireway: Wireway) => context.results.routing.byWireway.get(wireway.tag)
  return tableOf(wireways.toSorted(byTag), {
    id: 'wireway-schedule',
    caption: 'Wireways by tag',
    empty: 'No wireway is recorded.',
    ...(anchors ? { anchor: (wireway: Wireway) => anchorOf(context.addressOf(wireway.tag)!) } : {}),
    columns: [
      { title: 'Wireway', width: 'tag', cell: wireway => [context.tag(wireway.tag)] },
      { title: 'Name', width: 'text', cell: wireway => orDash(wireway.name) },
      { title: 'From', width: 'short', cell: wireway => context.named(wireway.fromTag) },
      { title: 'To', width: 'short', cell: wireway => context.named(wireway.toTag) },
      { title: 'Kind', width: 'short', cell: wireway => [wireway.kind] },
      { title: 'Bore', width: 'number', cell: wireway => sayOrDash('boreMm', wireway.boreMm, context.vessel) },
      { title: 'Length', width: 'number', cell: wireway => [say('lengthM', wireway.lengthM, context.vessel)] },
      { title: 'Cables', width: 'number', cell: wireway => [String(load(wireway)?.cableTags.length ?? 0)] },
      { title: 'Loaded conductors', width: 'number', cell: wireway => [String(load(wireway)?.loadedConductorCount ?? 0)] },
      {
        title: 'Fill', width: 'short', cell: wireway => {
          const found = load(wireway)
          if (found?.fillComparison != null) return comparisonText(found.fillComparison, context)
          return wireway.kind === 'conduit' && found?.fill.status === 'not computed' ? [muted('not assessed')] : dash
        },
      },
    ],
  })
}

function wirewayPage(context: ViewContext, wireway: Wireway): Page {
  const load = context.results.routing.byWireway.get(wireway.tag)
  const cables = (load?.cableTags ?? []).map(tag => context.lookup.cables.get(tag)!)
  const findings = context.findingsBySubject.get(wireway.tag) ?? []
  const blocks: readonly (Block | null)[] = [
    {
      is: 'facts', caption: null, entries: [
        { label: 'From', value: context.named(wireway.fromTag) },
        { label: 'To', value: context.named(wireway.toTag) },
        { label: 'Runs through', value: joined(wireway.zoneTags.map(context.named), { is: 'break' }) },
        { label: 'Kind', value: [wireway.kind] },
        { label: 'Bore', value: sayOrDash('boreMm', wireway.boreMm, context.vessel) },
        { label: 'Length', value: [sayBoth('lengthM', wireway.lengthM, context.vessel)] },
        { label: 'Loaded conductors', value: [String(load?.loadedConductorCount ?? 0)] },
      ],
    },
    load === undefined || wireway.kind !== 'conduit' ? null
      : workingOf(context, 'Conduit fill', load.fill, { limit: load.fillComparison === null ? null : comparisonText(load.fillComparison, context) }),
    cablesTable(context, cables, { id: 'cables', caption: 'Cables in this wireway' }),
    findings.length === 0 ? null : { is: 'findings', empty: '', findings: findingCards(context, findings) },
  ]
  return {
    key: context.addressOf(wireway.tag)!,
    title: wireway.name === null ? `Wireway ${wireway.tag}` : `${wireway.tag} ${wireway.name}`,
    kicker: 'Wireway',
    lead: null,
    printed: null,
    trail: [{ text: 'Wireways', to: fixedPages.wireways }],
    blocks: blocks.filter(block => block !== null),
  }
}
