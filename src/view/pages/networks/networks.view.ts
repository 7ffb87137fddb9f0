/** Data networks: the overview, and a page for each bus, link and network. */
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import type { Diagram, Page } from '../../view-model.js'
import { canBusPage } from './can-bus.view.js'
import { ethernetPage } from './ethernet.view.js'
import { serialPage } from './serial.view.js'

export function networkPages(context: ViewContext, diagrams: ReadonlyMap<string | null, readonly Diagram[]>): readonly Page[] {
  const { canBuses, ethernetNetworks, serialLinks } = context.vessel
  const drawn = (tag: Tag) => diagrams.get(tag) ?? []
  return [
    {
      key: fixedPages.networks,
      title: 'Data networks',
      kicker: null,
      lead: ['How the electronics talk to each other: the CAN buses in their physical order, the Ethernet port by port, serial links wire by wire.'],
      printed: null,
      trail: [],
      blocks: [{
        is: 'cards',
        cards: [...ethernetNetworks, ...canBuses, ...serialLinks].map(network => ({ title: `${network.tag} ${network.name}`, to: context.addressOf(network.tag)!, text: [network.purpose ?? ''] })),
      }],
    },
    ...ethernetNetworks.map(network => ethernetPage(context, network, drawn(network.tag))),
    ...canBuses.map(bus => canBusPage(context, bus)),
    ...serialLinks.map(link => serialPage(context, link)),
  ]
}
