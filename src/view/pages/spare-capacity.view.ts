/** What a service shop asks before it adds something: spare ways, current left in the feeders, free ports and tees, room in conduits. */
import type { CanBus, Equipment, Panel } from '../../model/vessel.js'
import { designCurrentA } from '../../model/results.js'
import { say } from '../../units/format.js'
import { comparisonText, marginText } from '../assessment.js'
import type { ViewContext } from '../context.js'
import { sayOrDash } from '../say.js'
import { fixedPages } from '../site-map.js'
import { byTag, tableOf } from '../tables.js'
import { dash, joined, muted, orDash } from '../text.js'
import type { Page, Table } from '../view-model.js'
import { protectionText } from './circuit-parts.js'
import { freePorts } from './networks.view.js'
import { spareWays } from './panels.view.js'

export function spareCapacityPage(context: ViewContext): Page {
  return {
    key: fixedPages.spareCapacity,
    title: 'Spare capacity',
    kicker: null,
    lead: ['Where something can still be added. A spare way is of use only while the feeder above it has current left; check both, and record what you add.'],
    printed: null,
    trail: [],
    blocks: [panelTable(context), portTable(context), busTable(context), conduitTable(context)],
  }
}

function panelTable(context: ViewContext): Table {
  const { vessel, lookup, results } = context
  const feeder = (panel: Panel) => (lookup.circuitsOfLoad.get(panel.tag) ?? []).find(circuit => circuit.normalState === 'closed')
  const current = (panel: Panel) => designCurrentA(results.feeding.byCircuit.get(feeder(panel)?.tag ?? ''))
  return tableOf(vessel.panels.toSorted(byTag), {
    id: 'spare-ways',
    caption: 'Spare ways and the current left in their feeders',
    empty: 'No panel is recorded.',
    note: ['Left at the device: rating of the feeder’s protective device less its design current, demand factors applied. Left at the panel: the panel’s own rating less the same.'],
    columns: [
      { title: 'Panel', width: 'text', cell: panel => context.named(panel.tag) },
      { title: 'Spare ways', width: 'text', cell: panel => (panel.ways === null ? [muted('number of ways not recorded')] : [spareWays(context, panel).join(', ') || 'none']) },
      { title: 'Feeder', width: 'short', cell: panel => { const circuit = feeder(panel); return circuit === undefined ? dash : [context.tag(circuit.tag), ` ${protectionText(circuit)}`] } },
      { title: 'Design current', width: 'number', cell: panel => sayOrDash('designCurrentA', current(panel), vessel) },
      { title: 'Left at the device', width: 'number', cell: panel => marginText(results.protection.byCircuit.get(feeder(panel)?.tag ?? '')?.againstLoad, context) },
      { title: 'Left at the panel', width: 'number', cell: panel => { const drawn = current(panel); return panel.ratedCurrentA === null || drawn === null ? dash : [say('currentA', panel.ratedCurrentA - drawn)] } },
    ],
  })
}

function portTable(context: ViewContext): Table {
  const switches = context.vessel.ethernetNetworks.flatMap(network => network.switchTags).flatMap(tag => context.lookup.equipment.get(tag) ?? [])
  return tableOf(switches.flatMap((item: Equipment) => freePorts(context, item).map(port => ({ item, port }))), {
    id: 'free-ports',
    caption: 'Free ports of the network switches',
    empty: 'No port is free.',
    columns: [
      { title: 'Switch', width: 'text', cell: ({ item }) => context.named(item.tag) },
      { title: 'Port', width: 'tag', cell: ({ port }) => [port.name] },
      { title: 'Speed', width: 'number', cell: ({ port }) => sayOrDash('speedMbitPerS', port.speedMbitPerS, context.vessel) },
      { title: 'Power class offered', width: 'number', cell: ({ port }) => orDash(port.powerClass === null ? null : String(port.powerClass)) },
    ],
  })
}

function busTable(context: ViewContext): Table {
  const tees = (bus: CanBus) => bus.backbone.filter(element => element.kind === 'tee')
  const freeTees = (bus: CanBus) => tees(bus).filter(tee => tee.deviceTag === null)
  return tableOf(context.vessel.canBuses, {
    id: 'free-tees',
    caption: 'Free tees of the CAN buses',
    empty: 'No CAN bus is recorded.',
    columns: [
      { title: 'Bus', width: 'text', cell: bus => context.named(bus.tag) },
      { title: 'Devices', width: 'number', cell: bus => [String(tees(bus).length - freeTees(bus).length)] },
      {
        title: 'Free tees', width: 'text', cell: bus => (freeTees(bus).length === 0 ? ['none']
          : joined(freeTees(bus).map(tee => [{ is: 'tag', text: tee.tag }, ...(tee.zoneTag === null ? [] : [' ', ...context.named(tee.zoneTag)])]))),
      },
    ],
  })
}

function conduitTable(context: ViewContext): Table {
  const { results, vessel } = context
  const conduits = vessel.wireways.filter(({ kind }) => kind === 'conduit').toSorted(byTag)
  return tableOf(conduits, {
    id: 'conduit-room',
    caption: 'Room in the conduits',
    empty: 'No conduit is recorded.',
    columns: [
      { title: 'Wireway', width: 'text', cell: wireway => context.named(wireway.tag) },
      { title: 'Cables', width: 'number', cell: wireway => [String(results.routing.byWireway.get(wireway.tag)?.cableTags.length ?? 0)] },
      { title: 'Fill', width: 'text', cell: wireway => { const fill = results.routing.byWireway.get(wireway.tag)?.fillComparison; return fill == null ? [muted('not assessed')] : comparisonText(fill, context) } },
    ],
  })
}
