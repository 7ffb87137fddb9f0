/** What a line of general text such as `{{ where: battery isolator }}` is replaced by. */
import type { ViewContext } from '../context.js'
import type { Block } from '../view-model.js'
import { photographsOfKinds, planOfKinds } from './pictures-of-kinds.js'
import { antennaTable, batteryTable, canBusTable, chargingTable, ethernetTable, mainDeviceTable, residualDeviceTable, serialTable } from './fault-tables.js'
import { whereTable } from './where-table.js'

export type Directive = (context: ViewContext, words: readonly string[]) => readonly Block[]

export const directives: Readonly<Record<string, Directive>> = {
  /** Items of these kinds with their places. */
  'where': (context, kinds) => whereTable(context, kinds),
  /** The same on a plan of the boat. */
  'plan': planOfKinds,
  /** Photographs that show one of them. */
  'photographs': photographsOfKinds,
  /** Batteries with their places and what they read at rest. */
  'batteries': context => [batteryTable(context)],
  /** Fuses and breakers straight from the batteries. */
  'main-devices': context => [mainDeviceTable(context)],
  /** What charges what, with its fuse. */
  'charging': context => [chargingTable(context)],
  'residual-devices': context => [residualDeviceTable(context)],
  'can-buses': context => [canBusTable(context)],
  'ethernet-networks': context => [ethernetTable(context)],
  'serial-links': context => [serialTable(context)],
  'antennas': context => [antennaTable(context)],
}
