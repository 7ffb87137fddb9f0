/** The spaces of the boat: each with its plan, what is in it by number, how to get at it, and the cables there. */
import { inWords } from '../../../findings/words.js'
import type { ArrangementView, Tag, Zone } from '../../../model/vessel.js'
import { sayBoth } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { seen } from '../../drawings/location-side.js'
import { zoneDetail } from '../../drawings/zone-detail.js'
import { findingCards } from '../../parts/finding-cards.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { counted, joined, notRecorded, orDash, orNotRecorded } from '../../text.js'
import type { Block, Drawing, Page, Table } from '../../view-model.js'
import { cablesTable, wirewayTable } from '../cables.view.js'
import { protectionText } from '../../parts/circuit-parts.js'
import { legendTable } from '../circuits/circuits.view.js'
import { placeInWords } from './location-blocks.js'
import { boxSeen, hasPlan, isBoxed, marksMean, numberedIn } from './location-parts.js'
import { pictureBlock } from './photograph-blocks.js'

const spaceNames: Readonly<Record<Zone['space'], string>> = {
  interior: 'interior', machinery: 'machinery space', bilge: 'bilge', battery: 'battery space', deck: 'open deck', mast: 'mast or arch', cockpit: 'cockpit', locker: 'locker',
}

export function zonePages(context: ViewContext): readonly Page[] {
  const { zones } = context.vessel
  return [
    {
      key: fixedPages.zones,
      title: 'Zones',
      kicker: null,
      lead: ['The spaces of the boat and what is in each of them.'],
      printed: null,
      trail: [],
      blocks: [{ is: 'cards', cards: zones.map(zone => ({ title: zone.name, to: context.addressOf(zone.tag)!, text: [`${counted(numberedIn(context, zone.tag).length, 'item')}. ${zone.access ?? ''}`.trim()] })) }],
    },
    ...zones.map(zone => zonePage(context, zone)),
  ]
}

function zonePage(context: ViewContext, zone: Zone): Page {
  const { vessel, lookup, results } = context
  const tags = numberedIn(context, zone.tag)
  const circuitsHere = vessel.circuits.filter(circuit => (circuit.zoneTag ?? lookup.items.get(circuit.fedFromTag)?.zoneTag) === zone.tag)
  const here = new Set([...tags, ...circuitsHere.map(circuit => circuit.tag)])
  const ending = vessel.cables.filter(cable => here.has(cable.from.tag) || here.has(cable.to.tag))
  const ends = new Set(ending.map(cable => cable.tag))
  const passing = vessel.cables.filter(cable => !ends.has(cable.tag) && (results.routing.byCable.get(cable.tag)?.zoneTags.includes(zone.tag) ?? false))
  const wireways = vessel.wireways.filter(wireway => wireway.zoneTags.includes(zone.tag))
  const findings = (context.findingsBySubject.get(zone.tag) ?? []).filter(({ subject }) => subject.kind === 'zone')
  const facts: Block = {
    is: 'facts', dense: true, caption: null, entries: [
      { label: 'Kind of space', value: [spaceNames[zone.space]] },
      { label: 'Access', value: orNotRecorded(zone.access) },
      { label: 'Highest ambient', value: [sayBoth('ambientC', zone.ambientC, vessel)] },
      { label: 'Ignition protection', value: zone.ignitionProtection === null ? [notRecorded] : [zone.ignitionProtection ? 'required for equipment here' : 'not required'] },
    ],
  }
  const drawings = (['plan', 'profile'] as const).map(view => drawingOf(context, zone, tags, view))
  const list = numberedList(context, zone, tags)
  const legend = circuitsHere.length === 0 ? null : legendTable(context, circuitsHere, { id: 'circuits', caption: 'Fuses and breakers here' })
  const kept = (blocks: readonly (Block | null)[]): readonly Block[] => blocks.filter(block => block !== null)
  return {
    key: context.addressOf(zone.tag)!,
    title: zone.name,
    kicker: `Zone ${zone.tag}`,
    lead: null,
    printed: kept([facts, ...drawings, list, legend]),
    trail: [{ text: 'Zones', to: fixedPages.zones }],
    blocks: kept([
      facts, ...drawings, list, legend,
      ...vessel.photographs.filter(({ zoneTag }) => zoneTag === zone.tag).map(photograph => pictureBlock(context, photograph, null)),
      cablesTable(context, ending, { id: 'cables-ending', caption: 'Cables that end here' }),
      passing.length === 0 ? null : cablesTable(context, passing, { id: 'cables-passing', caption: 'Cables that pass through' }),
      wireways.length === 0 ? null : wirewayTable(context, wireways),
      findings.length === 0 ? null : { is: 'findings', empty: '', findings: findingCards(context, findings) },
    ]),
  }
}

const drawingTitles: Readonly<Record<ArrangementView, string>> = { plan: 'From above', profile: 'From starboard' }

function drawingOf(context: ViewContext, zone: Zone, tags: readonly Tag[], view: ArrangementView): Drawing | null {
  // Height is known only with the position; from above there is at least a zone to be somewhere in.
  const shown = view === 'plan' ? tags : tags.filter(tag => context.results.location.byItem.get(tag)!.positionM !== null)
  if (!isBoxed(zone) || shown.length === 0) return null
  const title = `${drawingTitles[view]}: ${zone.name}`
  return { is: 'drawing', id: `zone-${view}`, caption: title, narrow: true, svg: zoneDetail({ title, view, box: boxSeen(view, zone), marks: marksOf(context, shown, view), units: context.vessel.units }), description: described(context, shown) }
}

const marksOf = ({ results, addressOf, nameOf }: ViewContext, tags: readonly Tag[], view: ArrangementView) => tags.map(tag => {
  const { placeNumber, positionM, drawnAtM } = results.location.byItem.get(tag)!
  return { number: String(placeNumber), name: `${tag} ${nameOf(tag) ?? ''}`.trim(), to: addressOf(tag), place: seen(view, drawnAtM!), exact: positionM !== null }
})

const described = (context: ViewContext, tags: readonly Tag[]): Drawing['description'] =>
  joined(tags.map(tag => [`${context.results.location.byItem.get(tag)!.placeNumber}: `, ...context.named(tag), ', ', ...placeInWords(context, tag)]), { is: 'break' })

function numberedList(context: ViewContext, zone: Zone, tags: readonly Tag[]): Table {
  const { lookup, results } = context
  const placeless = tags.filter(tag => results.location.byItem.get(tag)!.positionM === null)
  const note = !isBoxed(zone)
    ? (hasPlan(context) ? 'This zone has no corners recorded (from and to), so it is on no plan.' : null)
    : placeless.length === 0 ? null : `${marksMean} Dashed here: ${inWords(placeless)}.`
  return tableOf(tags.map(tag => lookup.items.get(tag)!), {
    id: 'equipment',
    caption: `What is here: ${zone.name}`,
    empty: 'Nothing is recorded here.',
    ...(note === null ? {} : { note: [note] }),
    columns: [
      { title: 'No.', width: 'number', cell: ({ tag }) => [String(results.location.byItem.get(tag)!.placeNumber)] },
      { title: 'Tag', width: 'tag', cell: ({ tag }) => [context.tag(tag)] },
      { title: 'Name', width: 'text', cell: ({ name }) => [name] },
      { title: 'Where', width: 'text', cell: ({ location }) => orDash(location) },
      { title: 'Fuse or breaker', width: 'short', cell: ({ tag }) => joined(context.circuitsOf(tag).map(circuit => [context.tag(circuit.tag), ` ${protectionText(circuit)}`]), { is: 'break' }) },
      { title: 'Status', width: 'short', cell: ({ status }) => orDash(status) },
    ],
  })
}
