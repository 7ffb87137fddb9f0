/** For the page of a thing: where to look when it is dead, and what is lost when it fails. */
import { slug } from '../../../model/address.js'
import type { SafetyService, Tag } from '../../../model/vessel.js'
import type { EmergencyTask } from '../../../references/procedure-places.js'
import { safetyServiceOf } from '../../../references/safety-services.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { joined, linkTo, strong } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { dataSteps } from './fault-data-steps.js'
import { supplySteps } from './fault-steps.js'
import { treeLink } from './fault-tree-links.js'
import { closedBy, effectNames, linkCaution, lossGroups, offersLink, restoreText } from './fault-words.js'

/** "P1 does not work": step by step to its source, then its data; none where nothing is known of what it lives on. */
export function deadBlocks(context: ViewContext, tag: Tag): readonly Block[] {
  const steps = [...supplySteps(context, tag), ...dataSteps(context, tag), ...networkTree(context, tag)]
  return steps.length === 0 ? [] : [{ is: 'heading', text: `${tag} does not work`, anchor: 'does-not-work' }, ...boatFirst(context, tag), ...steps]
}

/** Services that a boat cannot be without for an hour, with the emergency page that comes before any measuring. */
const beforeMeasuring: Partial<Record<SafetyService, { readonly when: string; readonly task: EmergencyTask }>> = {
  'bilge pumping': { when: 'Water rises', task: 'flooding' },
  'engine control': { when: 'Under way', task: 'loss-of-steering' },
}

function boatFirst(context: ViewContext, tag: Tag): readonly Block[] {
  const item = context.lookup.equipment.get(tag)
  const service = item === undefined ? null : safetyServiceOf(item)
  const first = service === null ? undefined : beforeMeasuring[service]
  const text = first === undefined ? undefined : context.content.emergency.get(first.task)
  return first === undefined || text === undefined ? [] : [{ is: 'paragraph', text: [strong(`${first.when}? `), 'First ', linkTo(`${fixedPages.emergency}/${first.task}`, text.title), '.'] }]
}

/** Of a network the text that goes on from its supply. */
function networkTree(context: ViewContext, tag: Tag): readonly Block[] {
  const { lookup } = context
  const key = lookup.canBuses.has(tag) ? 'can-bus' : lookup.ethernetNetworks.has(tag) ? 'ethernet' : lookup.serialLinks.has(tag) ? 'serial' : null
  const link = key === null ? [] : treeLink(context, key)
  return link.length === 0 ? [] : [{ is: 'paragraph', text: link }]
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
