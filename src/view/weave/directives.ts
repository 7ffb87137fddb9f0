/** What a line of general text such as `{{ where: battery isolator }}` is replaced by. */
import type { ViewContext } from '../context.js'
import type { Block } from '../view-model.js'
import { alwaysOnTable } from './always-on.js'
import { isolatorTable } from './isolators.js'
import { onBatteries } from './on-batteries.js'
import { orientation } from './orientation.js'
import { panelPlaces } from './panel-places.js'
import { shoreInlets, shoreTogether } from './shore-power.js'
import { whereTable } from './where-table.js'

export type Directive = (context: ViewContext, words: readonly string[]) => readonly Block[]

export const directives: Readonly<Record<string, Directive>> = {
  /** Items of these kinds with their places. */
  'where': (context, kinds) => whereTable(context, kinds),
  /** Walking through the boat, zone by zone. */
  'orientation': orientation,
  /** Shore inlets with their main breakers. */
  'shore-inlets': shoreInlets,
  /** What may run for hours at the same time on shore power. */
  'shore-together': shoreTogether,
  /** Battery isolators in the order in which they are turned `on` or `off`. */
  'isolators': (context, [way]) => isolatorTable(context, way),
  /** What has supply with every battery isolator open. */
  'always-on': alwaysOnTable,
  /** How long the batteries last where no engine and no shore power charges them, and what takes the most. */
  'on-batteries': onBatteries,
  /** Where the panels are. */
  'panels': panelPlaces,
}
