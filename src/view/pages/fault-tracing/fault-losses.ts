/** What each protective device, module and network takes with it. */
import { grouped } from '../../../model/lookup.js'
import type { Circuit, NetworkLoss, Panel, Tag } from '../../../model/vessel.js'
import { slug } from '../../../model/address.js'
import type { ViewContext } from '../../context.js'
import { byTag, compareTags, tableOf } from '../../tables.js'
import { dash, muted, notRecorded } from '../../text.js'
import type { Table, Text } from '../../view-model.js'
import { protectionText } from '../../parts/circuit-parts.js'
import { lossLine, thingPlace } from './fault-words.js'

const lossText = (context: ViewContext, tag: Tag): Text => lossLine(context, context.results.dependency.losses.get(tag) ?? [])

/** Every protective device, in a table for each panel, busbar, battery or source from which it is fed. */
export function deviceTables(context: ViewContext): readonly Table[] {
  const byPoint = grouped(context.vessel.circuits.filter(({ protection }) => protection !== null), ({ fedFromTag }) => [fedFromTag])
  return [...byPoint].toSorted(([a], [b]) => compareTags(a, b)).map(([point, circuits]) => tableOf(circuits.toSorted(byTag), {
    id: `trips-${slug(point)}`,
    caption: `Fed from ${point}${context.nameOf(point) === null ? '' : ` ${context.nameOf(point)}`}`,
    empty: '',
    columns: [
      { title: 'Device', width: 'text', cell: circuit => [context.tag(circuit.tag), ` ${circuit.name}, `, muted(protectionText(circuit))] },
      { title: 'Where', width: 'text', cell: circuit => thingPlace(context, circuit.tag, { withAccess: false }) },
      { title: 'You lose', width: 'text', cell: circuit => (circuit.normalState === 'open' ? [muted('normally off: '), ...lossText(context, circuit.tag)] : lossText(context, circuit.tag)) },
    ],
  }))
}

/** Buses, network switches and gateways. */
export function networkTable(context: ViewContext): Table {
  const { vessel } = context
  const switches = vessel.ethernetNetworks.flatMap(({ switchTags }) => switchTags)
  const gateways = vessel.equipment.filter(({ kind }) => kind === 'gateway' || kind === 'engine gateway' || kind === 'serial multiplexer').map(({ tag }) => tag)
  const tags = [...new Set([...vessel.canBuses.map(({ tag }) => tag), ...switches, ...gateways])]
  return tableOf(tags, {
    id: 'network-parts',
    caption: 'Buses, network switches and gateways',
    empty: 'No network is recorded.',
    columns: [
      { title: 'If this is lost', width: 'text', cell: tag => context.named(tag) },
      { title: 'Where', width: 'text', cell: tag => thingPlace(context, tag, { withAccess: false }) },
      { title: 'You lose', width: 'text', cell: tag => lossText(context, tag) },
    ],
  })
}

const lossWords: Readonly<Record<NetworkLoss, string>> = { hold: 'stays as it is', off: 'goes off', on: 'goes on' }

/** Of each switching module, what its channels do without the network, and how each is worked by hand. */
export function moduleTables(context: ViewContext): readonly Table[] {
  const modules = context.vessel.panels.filter(({ kind }) => kind === 'switching module').toSorted(byTag)
  return modules.map(panel => tableOf((context.lookup.circuitsFedFrom.get(panel.tag) ?? []).toSorted(byTag), {
    id: `module-${slug(panel.tag)}`,
    caption: `${panel.tag} ${panel.name}, channel by channel`,
    empty: 'No channel is recorded.',
    note: ['A module that fails is taken to switch all its channels off. When only its network fails, each does what the second column says.'],
    columns: [
      { title: 'Channel', width: 'text', cell: circuit => [context.tag(circuit.tag), ` ${circuit.name}`] },
      { title: 'Network lost', width: 'short', cell: circuit => channelText(panel, circuit) },
      { title: 'By hand', width: 'text', cell: ({ manualBypass }) => (manualBypass === null ? dash : [manualBypass]) },
    ],
  }))
}

function channelText({ networkLoss }: Panel, circuit: Circuit): Text {
  const loss = circuit.networkLoss ?? networkLoss
  return loss === null ? [notRecorded] : [lossWords[loss]]
}
