/** The battery isolators in the order in which they are turned. */
import { isThere } from '../../model/lookup.js'
import type { Tag } from '../../model/vessel.js'
import type { ViewContext } from '../context.js'
import { placesInTurn } from '../pages/equipment.view.js'
import { effectNames } from '../pages/fault-words.js'
import { byTag, tableOf } from '../tables.js'
import { counted, muted } from '../text.js'
import type { Block, Text } from '../view-model.js'

/**
 * On: the one that most hangs on comes first, since it holds what starting needs: blower, displays, alarms. Off: the other
 * way round. A normally open one, which joins two banks in need, stays open. Errors: a way that is neither on nor off.
 */
export function isolatorTable(context: ViewContext, way: string | undefined): readonly Block[] {
  if (way !== 'on' && way !== 'off') throw new Error('general text: isolators are turned "on" or "off"')
  const behind = (tag: Tag) => context.results.dependency.losses.get(tag) ?? []
  const isolators = context.vessel.equipment.filter(item => item.kind === 'battery isolator' && isThere(item)).toSorted(byTag)
  const turned = isolators.filter(({ tag }) => !isNormallyOpen(context, tag)).toSorted((a, b) => behind(b.tag).length - behind(a.tag).length)
  const links = isolators.filter(({ tag }) => isNormallyOpen(context, tag))
  const inOrder = way === 'on' ? turned : turned.toReversed()
  const rows = [...inOrder.map((item, i) => ({ item, order: [`${i + 1}. `] as Text })), ...links.map(item => ({ item, order: [muted('leave open: ')] as Text }))]
  const place = placesInTurn(context)
  return [tableOf(rows, {
    id: `isolators-${way}`,
    caption: way === 'on' ? 'Battery isolators, in this order' : 'Battery isolators, the other way round',
    empty: 'No battery isolator is recorded.',
    columns: [
      { title: 'Isolator', width: 'text', cell: ({ item, order }) => [...order, ...context.named(item.tag)] },
      { title: 'Where', width: 'text', cell: ({ item }) => place(item) },
      { title: 'What hangs on it', width: 'text', cell: ({ item }) => whatHangs(context, item.tag) },
    ],
  })]
}

/** Whether every circuit through it is open in normal use. */
function isNormallyOpen(context: ViewContext, tag: Tag): boolean {
  const circuits = context.circuitsOf(tag)
  return circuits.length > 0 && circuits.every(({ normalState }) => normalState === 'open')
}

/** Panels, busbars and modules by name, else the items themselves. */
function whatHangs(context: ViewContext, tag: Tag): Text {
  if (isNormallyOpen(context, tag)) return ['Joins two banks. Only in need.']
  const effects = (context.results.dependency.losses.get(tag) ?? []).filter(({ how }) => how === 'dead')
  const panels = effects.filter(effect => context.lookup.panels.has(effect.tag))
  const items = effects.filter(effect => !context.lookup.panels.has(effect.tag) && !context.lookup.busbars.has(effect.tag))
  if (effects.length === 0) return [muted('nothing that is recorded')]
  return panels.length > 0
    ? [...effectNames(context, panels, { withCause: false }), `: ${counted(items.length, 'item')} in all`]
    : effectNames(context, items, { most: 6, withCause: false })
}
