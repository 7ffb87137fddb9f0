/** For the page of a thing: where to look when it is dead, and what is lost when it fails. */
import type { DataLine, SupplyLine, TraceStep } from '../../model/results/dependency.js'
import { slug } from '../../model/address.js'
import type { Tag } from '../../model/vessel.js'
import type { ViewContext } from '../context.js'
import { tableOf } from '../tables.js'
import { joined, muted, strong } from '../text.js'
import type { Block, Table, Text } from '../view-model.js'
import { protectionText } from './circuit-parts.js'
import { closedBy, effectNames, linkCaution, lossGroups, offersLink, restoreText, thingPlace } from './fault-words.js'

interface LookRow { readonly at: Text; readonly where: Text; readonly check: Text }

/** "If it is dead, look here, in this order"; none where nothing is known of what it lives on. */
export function deadBlocks(context: ViewContext, tag: Tag): readonly Block[] {
  const trace = context.results.dependency.traces.get(tag)
  if (trace === undefined) return []
  const rows = [...supplyRows(context, trace.supplies), ...trace.data.map(line => dataRow(context, line))]
  if (rows.length === 0) return []
  const mains = context.lookup.equipment.get(tag)?.outputs.some(({ form }) => form === 'ac') === true
    || trace.supplies.some(({ circuitTag }) => context.results.feeding.byCircuit.get(circuitTag ?? '')?.supplyForm === 'ac')
  return [tableOf(rows.map((row, i) => ({ ...row, number: i + 1 })), {
    id: 'look-here',
    caption: 'If it is dead, look here, in this order',
    empty: '',
    note: [mains
      ? strong('Mains voltage. Look and switch only: pull the shore plug, stop the generator and the inverter before anything is opened; work on it is for a qualified person.')
      : 'Look and switch first. Before you touch a wire, draw the fuse or switch the breaker off. Try a tripped breaker or a new fuse once; if it opens again, leave it off.'],
    columns: [
      { title: 'Look at', width: 'text', cell: ({ at, number }) => [`${number}. `, ...at] },
      { title: 'Where', width: 'text', cell: ({ where }) => where },
      { title: 'What to look for', width: 'text', cell: ({ check }) => check },
    ],
  })]
}

/** The first way whole; of every further one what is not listed yet; what must be closed first as one row. */
function supplyRows(context: ViewContext, supplies: readonly SupplyLine[]): readonly LookRow[] {
  const listed = new Set<Tag>()
  return supplies.flatMap((line, i) => {
    const steps = line.open ? line.steps.slice(0, 1) : line.steps.filter(({ tag }) => !listed.has(tag))
    for (const { tag } of steps) listed.add(tag)
    return steps.map((step, at): LookRow => ({
      at: [...context.named(step.tag), ...(i > 0 && at === 0 ? [' ', muted(line.open ? '(normally off: another way to feed it)' : '(it has this supply as well)')] : [])],
      where: thingPlace(context, step.tag),
      check: line.open ? ['Can be switched on to feed it.'] : checkText(context, step),
    }))
  })
}

function checkText(context: ViewContext, { tag, what, cableTags, otherFeedTags }: TraceStep): Text {
  const circuit = context.lookup.circuits.get(tag)
  const words: Readonly<Record<TraceStep['what'], string>> = {
    'device': circuit === undefined ? '' : circuit.protection === null ? `${protectionText(circuit)}.` : `${protectionText(circuit)}: tripped, blown or off?`,
    'switch': 'Is it on?',
    'joint': 'Loose, wet or green?',
    'panel': 'Is all else on it dead too? If not, the fault is above in this list.',
    'busbar': 'Is all else on it dead too? If not, the fault is above in this list.',
    'battery': 'Voltage? Terminals tight and clean?',
    'source': 'Does it run, and does it give?',
    'bus': 'Are the other devices on it dead too? Plugs and terminators seated?',
    'network switch': 'Are its lamps on? Other ports dead too?',
  }
  return [
    words[what],
    ...(cableTags.length === 0 ? [] : [' ', muted('Cable '), ...joined(cableTags.map(cable => [context.tag(cable)]))]),
    ...(otherFeedTags.length === 0 ? [] : [' ', muted('Can also be fed by '), ...joined(otherFeedTags.map(other => [context.tag(other)])), '.']),
  ]
}

function dataRow(context: ViewContext, { is, tag, wayTags }: DataLine): LookRow {
  const words = { giver: 'It needs data from here. Alive?', network: 'It is a member of this network. Do others on it still show?', partner: 'It works with this. Alive?' } as const
  return {
    at: context.named(tag),
    where: thingPlace(context, tag),
    check: [words[is], ...(wayTags === null ? [' ', muted('No way between is recorded.')] : wayTags.length === 0 ? [] : [' ', muted('By '), ...joined(wayTags.map(way => [context.tag(way)]))])],
  }
}

/** "If this fails, you lose"; of an Ethernet network for each of its switches. None where nothing is lost. */
export function lossBlocks(context: ViewContext, tag: Tag): readonly Block[] {
  const network = context.lookup.ethernetNetworks.get(tag)
  if (network !== undefined) return network.switchTags.flatMap(switchTag => lossTable(context, switchTag, `If ${switchTag} fails, you lose`) ?? [])
  const table = lossTable(context, tag, context.lookup.circuits.has(tag) ? 'If this trips, you lose' : 'If this fails, you lose')
  return table === null ? [] : [table]
}

/** Of a battery also where a link could bring the other side's battery in for it, which the list above does not reckon with. */
function linkNote(context: ViewContext, tag: Tag, offered: boolean): { readonly note?: Text } {
  const joining = context.lookup.batteries.has(tag) ? linksAt(context, tag) : []
  if (joining.length === 0) return offered ? { note: [linkCaution] } : {}
  return { note: ['If it is only flat, ', ...joined(joining.map(link => closedBy(context, link))), ' can join the other side to it; what isolators lie between must be closed too. ', linkCaution] }
}

/** Normally open links between this battery's system and another's. */
function linksAt({ vessel, results, lookup }: ViewContext, batteryTag: Tag): readonly Tag[] {
  const sourceOf = (circuitTag: Tag): Tag | null => results.feeding.byCircuit.get(circuitTag)?.sourceTag ?? null
  return vessel.circuits.filter(({ normalState, interlockTag }) => normalState === 'open' && interlockTag === null).flatMap(({ tag, loadTags }) => {
    const joins = [sourceOf(tag), ...loadTags.flatMap(load => (lookup.circuitsOfLoad.get(load) ?? []).filter(each => each.normalState === 'closed').map(each => sourceOf(each.tag)))]
    return new Set(joins).size > 1 && joins.includes(batteryTag) ? [tag] : []
  })
}

function lossTable(context: ViewContext, tag: Tag, caption: string): Table | null {
  const effects = context.results.dependency.losses.get(tag) ?? []
  if (effects.length === 0) return null
  return tableOf(lossGroups(context, effects), {
    id: `loss-${slug(tag)}`,
    caption,
    empty: '',
    columns: [
      { title: 'What', width: 'short', cell: ({ title, isService }) => [isService ? strong(title) : title] },
      { title: 'Items', width: 'text', cell: ({ effects: hit }) => effectNames(context, hit) },
      { title: 'Back by hand', width: 'short', cell: ({ effects: hit }) => restoreText(context, hit) },
    ],
    ...linkNote(context, tag, offersLink(context, effects)),
  })
}
