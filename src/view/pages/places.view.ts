/** Equipment by system. */
import type { System } from '../../model/vessel.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { byTag } from '../tables.js'
import { counted } from '../text.js'
import type { Diagram, Page } from '../view-model.js'
import { circuitTable } from './circuits.view.js'
import { equipmentTable } from './equipment.view.js'

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
      const printed = [equipmentTable(context, items(system), 'equipment', `Equipment of ${system.name}`), ...(diagrams.get(system.tag) ?? [])]
      return {
      key: context.addressOf(system.tag)!,
      title: system.name,
      kicker: 'System',
      lead: system.purpose === null ? null : [system.purpose],
      printed,
      trail: [{ text: 'Systems', to: fixedPages.systems }],
      blocks: [
        ...printed,
        circuitTable(context, context.vessel.circuits.filter(circuit => circuit.loadTags.some(tag => context.lookup.items.get(tag)?.systemTag === system.tag)), { id: 'circuits', caption: 'Circuits that supply it' }),
      ],
    } }),
  ]
}
