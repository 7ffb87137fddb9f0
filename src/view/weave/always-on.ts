/** What has supply although every battery isolator is open. */
import { isThere } from '../../model/lookup.js'
import type { SupplyLine } from '../../model/results/dependency.js'
import type { ViewContext } from '../context.js'
import { circuitPlace, protectionText } from '../pages/circuit-parts.js'
import { say } from '../../units/format.js'
import { byTag, tableOf } from '../tables.js'
import { joined, muted, strong } from '../text.js'
import { inDays } from './on-batteries.js'
import type { Block, Text } from '../view-model.js'

export function alwaysOnTable(context: ViewContext): readonly Block[] {
  const { results, lookup } = context
  const isIsolator = (tag: string): boolean => lookup.equipment.get(tag)?.kind === 'battery isolator'
  const isLive = ({ open, steps }: SupplyLine): boolean => !open && steps.at(-1)?.what === 'battery' && !steps.some(({ tag }) => isIsolator(tag))
  const rows = [...lookup.items.values()].filter(isThere).toSorted(byTag).flatMap(item => {
    // Panels and busbars are only the way to what uses the current.
    if (!lookup.equipment.has(item.tag)) return []
    const live = results.dependency.traces.get(item.tag)?.supplies.find(isLive)
    const circuit = lookup.circuits.get(live?.circuitTag ?? '')
    return circuit === undefined ? [] : [{ item, circuit }]
  })
  return [tableOf(rows, {
    id: 'always-on',
    caption: 'Stays on with every battery isolator open',
    empty: 'Nothing that is recorded: with every battery isolator open she is dead.',
    columns: [
      { title: 'What', width: 'text', cell: ({ item }) => context.named(item.tag) },
      { title: 'Fuse or breaker', width: 'short', cell: ({ circuit }) => [context.tag(circuit.tag), ` ${protectionText(circuit)}`] },
      { title: 'Where that is', width: 'text', cell: ({ circuit }) => circuitPlace(context, circuit) },
    ],
  }), ...lastingFacts(context)]
}

/** When somebody has to charge, bank by bank. */
function lastingFacts(context: ViewContext): readonly Block[] {
  const { unattended } = context.results.emergency
  if (unattended.length === 0) return []
  return [{
    is: 'facts', caption: 'How long the batteries carry that, from full, with nothing charging', entries: unattended.map(({ batteryTag, endurance, loadCurrentA, itemTags, unknownTags }) => ({
      label: `${batteryTag} ${context.nameOf(batteryTag) ?? ''}`.trim(),
      value: [
        ...(endurance.status === 'computed' ? [strong(inDays(endurance.output.enduranceH)), ` down to the lowest charge allowed, at ${say('loadCurrentA', loadCurrentA)} together: `, ...joined(itemTags.map(context.named)), '.'] : [muted(`not assessed: ${endurance.reason}.`)]),
        ...(unknownTags.length === 0 ? [] : [' Not counted, since no current is recorded: ', ...joined(unknownTags.map(context.named)), '.']),
      ] as Text,
    })),
  }, { is: 'paragraph', text: ['Bilge pumps that run make it shorter. Charge well before: a battery that is empty pumps no water.'] }]
}
