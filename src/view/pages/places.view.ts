/** Equipment by system. */
import { isThere } from '../../model/lookup.js'
import type { System } from '../../model/vessel.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { byTag } from '../tables.js'
import { counted } from '../text.js'
import type { Block, Diagram, Page } from '../view-model.js'
import { circuitTable } from './circuits/circuits.view.js'
import { weave } from '../weave/weave.js'
import { equipmentTable } from './equipment/equipment.view.js'
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
