/** What a line of general text such as `{{ where: battery isolator }}` is replaced by. */
import type { ViewContext } from '../context.js'
import type { Block } from '../view-model.js'
import { bankReach, linkReach, sheddingReach } from './blocks/banks.js'
import { fuseReach, switchOffReach } from './blocks/fuses.js'
import { alwaysLiveReach, currentOffReach, isolatorReach, otherSourceReach } from './blocks/isolation.js'
import { pumpReach } from './blocks/pumps.js'
import { reachOfKinds } from './blocks/reach.js'
import { photographsOfKinds, planOfKinds } from './blocks/pictures-of-kinds.js'
import { antennaTable, batteryTable, canBusTable, chargingTable, ethernetTable, mainDeviceTable, residualDeviceTable, serialTable } from './blocks/fault-tables.js'
import { alwaysLiveTable, isolatorTable } from './blocks/isolators.js'
import { onBatteries } from './blocks/on-batteries.js'
import { orientation } from './blocks/orientation.js'
import { panelPlaces } from './blocks/panel-places.js'
import { shoreInlets, shoreTogether } from './blocks/shore-power.js'
import { whereTable } from './blocks/where-table.js'

export type Directive = (context: ViewContext, words: readonly string[]) => readonly Block[]

export const directives: Readonly<Record<string, Directive>> = {
  /** Items of these kinds with their places. */
  'where': (context, kinds) => whereTable(context, kinds),
  /** The same, to be reached in haste: a caption, then kinds. */
  'reach': (context, words) => reachOfKinds(context, words),
  /** The same, without what is in a machinery space. */
  'reach-outside': (context, words) => reachOfKinds(context, words, { outside: true }),
  /** A caption, then kinds: the protective device of each item. */
  'fuses': (context, words) => fuseReach(context, words),
  'switch-off': (context, words) => switchOffReach(context, words),
  /** A caption: everything that gives current, by its place alone. */
  'current-off': (context, words) => currentOffReach(context, words),
  'isolators': context => isolatorReach(context),
  'always-live': context => alwaysLiveReach(context),
  'other-sources': context => otherSourceReach(context),
  'bilge-pumps': context => pumpReach(context),
  'banks': context => bankReach(context),
  'links': context => linkReach(context),
  'switch-off-first': context => sheddingReach(context),
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
  /** Walking through the boat, zone by zone. */
  'orientation': orientation,
  /** Shore inlets with their main breakers. */
  'shore-inlets': shoreInlets,
  /** What may run for hours at the same time on shore power. */
  'shore-together': shoreTogether,
  /** Battery isolators in the order in which they are turned `on` or `off`, as a table. */
  'isolators-in-order': (context, [way]) => isolatorTable(context, way),
  /** The same as `always-live`, as a table. */
  'always-live-table': alwaysLiveTable,
  /** How long the batteries last where no engine and no shore power charges them, and what takes the most. */
  'on-batteries': onBatteries,
  /** Where the panels are. */
  'panels': panelPlaces,
}
