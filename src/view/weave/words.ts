/** Facts of the vessel that general text may name in a line, as `{{ vessel }}` or `{{ at: seacock }}`. */
import { grouped } from '../../model/lookup.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { joined, linkTo, strong } from '../text.js'
import type { Text } from '../view-model.js'
import { itemsOfKinds } from './kinds.js'

export type WovenWord = (context: ViewContext, words: readonly string[]) => Text | string

export const wovenWords: Readonly<Record<string, WovenWord>> = {
  'vessel': ({ vessel }) => vessel.identity.name,
  'call-sign': ({ vessel }) => vessel.identity.callSign ?? 'call sign not recorded',
  'mmsi': ({ vessel }) => vessel.identity.mmsi ?? 'MMSI not recorded',
  'installer': ({ vessel }) => vessel.document.installer ?? 'the installer',
  /** Tags and zones of what is on board of these kinds; nothing where none is. */
  'at': (context, kinds) => whereabouts(context, kinds),
  'distress-card': () => [linkTo(fixedPages.distress, 'Distress call')],
}

const mostZones = 3

/** "(Q31, Q32: Cockpit; Q34: Galley)" */
function whereabouts(context: ViewContext, kinds: readonly string[]): Text {
  const byZone = grouped(itemsOfKinds(context, kinds), ({ zoneTag }) => [zoneTag])
  if (byZone.size === 0) return []
  const parts = [...byZone].map(([zoneTag, items]): Text => [
    ...joined(items.map(({ tag }) => [context.tag(tag)])), ...(zoneTag === null ? [] : [': ', strong(context.nameOf(zoneTag) ?? zoneTag)]),
  ])
  return ['(', ...joined(parts.slice(0, mostZones), '; '), ...(parts.length > mostZones ? [', and more below'] : []), ')']
}
