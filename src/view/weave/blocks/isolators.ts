/** The battery isolators in the order in which they are turned, and what has supply without them: tables to work through in calm. */
import type { Isolator } from '../../../model/results/emergency.js'
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { say, sayForWorking } from '../../../units/format.js'
import { effectNames } from '../../pages/fault-tracing/fault-words.js'
import { circuitPlace, protectionText } from '../../parts/circuit-parts.js'
import { placesInTurn } from '../../parts/item-parts.js'
import { tableOf } from '../../tables.js'
import { counted, joined, muted, strong } from '../../text.js'
import type { Block, Text } from '../../view-model.js'
import { alwaysLiveCaption, mostAlive } from './isolation.js'
import { inDays } from './on-batteries.js'
import { someNames } from './reach.js'

/**
 * Off: in the order of the emergency pages. On: the other way round. One in a link, which joins two banks in need, stays open.
 * Errors: a way that is neither on nor off.
 */
export function isolatorTable(context: ViewContext, way: string | undefined): readonly Block[] {
  if (way !== 'on' && way !== 'off') throw new Error('general text: isolators are turned "on" or "off"')
  const { isolators } = context.results.emergency
  const turned = isolators.filter(({ inLink }) => !inLink)
  const inOrder = way === 'off' ? turned : turned.toReversed()
  const rows = [
    ...inOrder.map((isolator, i) => ({ isolator, order: [`${i + 1}. `] as Text })),
    ...isolators.filter(({ inLink }) => inLink).map(isolator => ({ isolator, order: [muted('leave open: ')] as Text })),
  ]
  const place = placesInTurn(context)
  return [tableOf(rows, {
    id: `isolators-${way}`,
    caption: 'Battery isolators, in this order',
    empty: 'No battery isolator is recorded.',
    columns: [
      { title: 'Isolator', width: 'text', cell: ({ isolator, order }) => [...order, ...context.named(isolator.tag)] },
      { title: 'Where', width: 'text', cell: ({ isolator }) => place(context.lookup.equipment.get(isolator.tag)!) },
      { title: 'What hangs on it', width: 'text', cell: ({ isolator }) => whatHangs(context, isolator) },
    ],
  })]
}

/** Panels, busbars and modules by name, else the items themselves. */
function whatHangs(context: ViewContext, { tag, inLink }: Isolator): Text {
  if (inLink) return ['Joins two banks. Only in need.']
  const effects = (context.results.dependency.losses.get(tag) ?? []).filter(({ how }) => how === 'dead')
  const isPanel = (effectTag: Tag): boolean => context.lookup.panels.has(effectTag)
  const panels = effects.filter(effect => isPanel(effect.tag))
  const items = effects.filter(effect => !isPanel(effect.tag) && !context.lookup.busbars.has(effect.tag))
  if (effects.length === 0) return [muted('nothing that is recorded')]
  return panels.length > 0
    ? [...effectNames(context, panels, { withCause: false }), `: ${counted(items.length, 'item')} in all`]
    : effectNames(context, items, { most: 6, withCause: false })
}

export const alwaysLiveTable = (context: ViewContext): readonly Block[] => [tableOf(context.results.emergency.alwaysLive, {
  id: 'always-live',
  caption: alwaysLiveCaption,
  empty: 'Nothing that is recorded: with every battery isolator open she is dead.',
  columns: [
    { title: 'What', width: 'text', cell: ({ itemTags, assumed }) => [...someNames(context, itemTags, mostAlive), ...(assumed ? [' ', muted('(its cables are not recorded: it may be behind an isolator)')] : [])] },
    { title: 'Fuse or breaker', width: 'short', cell: ({ circuitTag }) => [context.tag(circuitTag), ` ${protectionText(context.lookup.circuits.get(circuitTag)!)}`] },
    { title: 'Where that is', width: 'text', cell: ({ circuitTag }) => circuitPlace(context, context.lookup.circuits.get(circuitTag)!) },
  ],
}), ...lastingFacts(context)]

/** When somebody has to charge, bank by bank. */
function lastingFacts(context: ViewContext): readonly Block[] {
  const { unattended } = context.results.emergency
  if (unattended.length === 0) return []
  return [{
    is: 'facts', caption: 'How long the batteries carry that, from full, with nothing charging', entries: unattended.map(({ batteryTag, endurance, loadCurrentA, itemTags, unknownTags }) => ({
      label: `${batteryTag} ${context.nameOf(batteryTag) ?? ''}`.trim(),
      value: [
        ...(endurance.status === 'computed' ? [strong(inDays(endurance.output.enduranceH)), ` down to the lowest charge allowed, at ${sayForWorking('loadCurrentA', loadCurrentA)} together, ${say('deliveredAh', endurance.output.deliveredAh)} in all: `, ...joined(itemTags.map(context.named)), '.'] : [muted(`not assessed: ${endurance.reason}.`)]),
        ...(unknownTags.length === 0 ? [] : [' Not counted, since no current is recorded: ', ...joined(unknownTags.map(context.named)), '.']),
      ] as Text,
    })),
  }, { is: 'paragraph', text: ['Bilge pumps that run make it shorter. Charge well before: a battery that is empty pumps no water.'] }]
}
