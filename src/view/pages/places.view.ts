/** Equipment by system and by zone. */
import { isThere } from '../../model/lookup.js'
import type { System, Zone } from '../../model/vessel.js'
import { sayBoth } from '../../units/format.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { byTag } from '../tables.js'
import { counted, notRecorded, orNotRecorded } from '../text.js'
import type { Block, Diagram, Page } from '../view-model.js'
import { cablesTable, wirewayTable } from './cables.view.js'
import { circuitTable, legendTable } from './circuits.view.js'
import { weave } from '../weave/weave.js'
import { equipmentTable } from './equipment.view.js'
import { dependsTable } from './owner/depends.js'
import { proceduresAbout } from './owner/procedures.js'

export function systemPages(context: ViewContext, diagrams: ReadonlyMap<string | null, readonly Diagram[]>): readonly Page[] {
  const { systems } = context.vessel
  const items = (system: System) => [...context.lookup.items.values()].filter(item => item.systemTag === system.tag).toSorted(byTag)
  return [
    {
      key: fixedPages.systems,
      title: 'Systems',
      kicker: null,
      lead: ['What the boat’s systems are for, and what belongs to each.'],
      printed: null,
      trail: [],
      blocks: [{ is: 'cards', cards: systems.map(system => ({ title: system.name, to: context.addressOf(system.tag)!, text: [system.purpose ?? counted(items(system).length, 'item')] })) }],
    },
    ...systems.map((system): Page => {
      const printed = [...systemText(context, system), equipmentTable(context, items(system), 'equipment', `Equipment of ${system.name}`), ...(diagrams.get(system.tag) ?? [])]
      const depends = dependsTable(context, items(system).filter(isThere))
      return {
      key: context.addressOf(system.tag)!,
      title: system.name,
      kicker: 'System',
      lead: system.purpose === null ? null : [system.purpose],
      printed,
      trail: [{ text: 'Systems', to: fixedPages.systems }],
      blocks: [
        ...printed,
        ...proceduresAbout(context, system.tag),
        ...(depends === null ? [] : [depends]),
        circuitTable(context, context.vessel.circuits.filter(circuit => circuit.loadTags.some(tag => context.lookup.items.get(tag)?.systemTag === system.tag)), { id: 'circuits', caption: 'Circuits that supply it' }),
      ],
    } }),
  ]
}

/** How such a system is used, where it is one of the usual ones. */
function systemText(context: ViewContext, { kind }: System): readonly Block[] {
  const text = kind === null ? undefined : context.content.systems.get(kind)
  return text === undefined ? [] : weave(context, text.markdown)
}

const spaceNames: Readonly<Record<Zone['space'], string>> = {
  interior: 'interior', machinery: 'machinery space', bilge: 'bilge', battery: 'battery space', deck: 'open deck', mast: 'mast or arch', cockpit: 'cockpit', locker: 'locker',
}

export function zonePages(context: ViewContext): readonly Page[] {
  const { zones } = context.vessel
  const items = (zone: Zone) => [...context.lookup.items.values()].filter(item => item.zoneTag === zone.tag).toSorted(byTag)
  return [
    {
      key: fixedPages.zones,
      title: 'Zones',
      kicker: null,
      lead: ['The spaces of the boat and what is in each of them.'],
      printed: null,
      trail: [],
      blocks: [{ is: 'cards', cards: zones.map(zone => ({ title: zone.name, to: context.addressOf(zone.tag)!, text: [`${counted(items(zone).length, 'item')}. ${zone.access ?? ''}`.trim()] })) }],
    },
    ...zones.map(zone => zonePage(context, zone, items(zone))),
  ]
}

function zonePage(context: ViewContext, zone: Zone, items: Parameters<typeof equipmentTable>[1]): Page {
  const { vessel, lookup, results } = context
  const inZone = new Set(items.map(item => item.tag))
  const circuitsHere = vessel.circuits.filter(circuit => (circuit.zoneTag ?? lookup.items.get(circuit.fedFromTag)?.zoneTag) === zone.tag)
  const here = new Set([...inZone, ...circuitsHere.map(circuit => circuit.tag)])
  const ending = vessel.cables.filter(cable => here.has(cable.from.tag) || here.has(cable.to.tag))
  const ends = new Set(ending.map(cable => cable.tag))
  const passing = vessel.cables.filter(cable => !ends.has(cable.tag) && (results.routing.byCable.get(cable.tag)?.zoneTags.includes(zone.tag) ?? false))
  const wireways = vessel.wireways.filter(wireway => wireway.zoneTags.includes(zone.tag))
  const printed: readonly Block[] = [
    {
      is: 'facts', dense: true, caption: null, entries: [
        { label: 'Kind of space', value: [spaceNames[zone.space]] },
        { label: 'Access', value: orNotRecorded(zone.access) },
        { label: 'Highest ambient', value: [sayBoth('ambientC', zone.ambientC, vessel)] },
        { label: 'Ignition protection', value: zone.ignitionProtection === null ? [notRecorded] : [zone.ignitionProtection ? 'required for equipment here' : 'not required'] },
      ],
    },
    equipmentTable(context, items, 'equipment', `What is here: ${zone.name}`),
    ...(circuitsHere.length === 0 ? [] : [legendTable(context, circuitsHere, { id: 'circuits', caption: 'Fuses and breakers here' })]),
  ]
  const blocks: readonly (Block | null)[] = [
    ...printed,
    cablesTable(context, ending, { id: 'cables-ending', caption: 'Cables that end here' }),
    ...proceduresAbout(context, zone.tag),
    passing.length === 0 ? null : cablesTable(context, passing, { id: 'cables-passing', caption: 'Cables that pass through' }),
    wireways.length === 0 ? null : wirewayTable(context, wireways),
  ]
  return {
    key: context.addressOf(zone.tag)!,
    title: zone.name,
    kicker: `Zone ${zone.tag}`,
    lead: null,
    printed,
    trail: [{ text: 'Zones', to: fixedPages.zones }],
    blocks: blocks.filter(block => block !== null),
  }
}
