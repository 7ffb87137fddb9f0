/** Facts of the vessel that general text may name in a line, as `{{ vessel }}` or `{{ at: seacock }}`. */
import { grouped, type Item } from '../../model/lookup.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { joined, linkTo, strong } from '../text.js'
import type { Text } from '../view-model.js'
import { itemsOfKinds, outsideMachinery } from './kinds.js'

export type WovenWord = (context: ViewContext, words: readonly string[]) => Text | string

export const wovenWords: Readonly<Record<string, WovenWord>> = {
  'vessel': ({ vessel }) => vessel.identity.name,
  'call-sign': ({ vessel }) => vessel.identity.callSign ?? 'call sign not recorded',
  'mmsi': ({ vessel }) => vessel.identity.mmsi ?? 'MMSI not recorded',
  'installer': ({ vessel }) => vessel.document.installer ?? 'the installer',
  /** Tags and zones of what is on board of these kinds; nothing where none is. */
  'at': (context, kinds) => whereabouts(context, itemsOfKinds(context, kinds)),
  /** The same without what is in a machinery space. */
  'at-outside': (context, kinds) => whereabouts(context, outsideMachinery(context, itemsOfKinds(context, kinds))),
  /** Where one speaks into the radio. */
  'radio-at': context => { const handsets = itemsOfKinds(context, ['vhf handset']); return whereabouts(context, handsets.length > 0 ? handsets : itemsOfKinds(context, ['vhf transceiver'])) },
  /** The isolators in the order in which they are opened. */
  'isolators-at': context => whereabouts(context, context.results.emergency.isolators.filter(({ inLink }) => !inLink).map(({ tag }) => context.lookup.equipment.get(tag)!)),
  'distress-card': () => [linkTo(fixedPages.distress, 'Distress call')],
}

const mostZones = 3

/** "(Q31, Q32: Cockpit; Q34: Galley)" */
function whereabouts(context: ViewContext, items: readonly Item[]): Text {
  const byZone = grouped(items, ({ zoneTag }) => [zoneTag])
  if (byZone.size === 0) return []
  const parts = [...byZone].map(([zoneTag, there]): Text => [
    ...joined(there.map(({ tag }) => [context.tag(tag)])), ...(zoneTag === null ? [] : [': ', strong(context.nameOf(zoneTag) ?? zoneTag)]),
  ])
  return ['(', ...joined(parts.slice(0, mostZones), '; '), ...(parts.length > mostZones ? [', and more below'] : []), ')']
}
