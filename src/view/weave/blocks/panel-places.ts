/** Where the panels are, for whoever looks for a breaker. */
import { isThere } from '../../../model/lookup.js'
import type { ViewContext } from '../../context.js'
import { placesInTurn } from '../../parts/item-parts.js'
import { byTag, tableOf } from '../../tables.js'
import type { Block } from '../../view-model.js'

export const panelPlaces = (context: ViewContext): readonly Block[] => [tableOf(context.vessel.panels.filter(isThere).toSorted(byTag), {
  id: 'panel-places',
  caption: 'Where the panels are',
  empty: 'No panel is recorded.',
  columns: [
    { title: 'Panel', width: 'text', cell: panel => context.named(panel.tag) },
    { title: 'Where', width: 'text', cell: placesInTurn(context) },
    { title: 'Circuits', width: 'number', cell: panel => [String(context.lookup.circuitsFedFrom.get(panel.tag)?.length ?? 0)] },
  ],
})]
