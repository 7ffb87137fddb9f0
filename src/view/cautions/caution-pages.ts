/** Cautions on the pages whose makers know nothing of them: put in after the first block, and on paper as a line. */
import { kindsOf } from '../../model/item-kinds.js'
import { isThere } from '../../model/lookup.js'
import { emergencyTasks, ownerTasks } from '../../references/procedure-places.js'
import type { CautionPage } from '../../references/caution-words.js'
import { cautionBlocks, cautionLine, cautionReference, type Where, systemKindOf } from './cautions.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import type { Block, Page, PageKey } from '../view-model.js'

export function withCautions(context: ViewContext, pages: readonly Page[]): readonly Page[] {
  const places = placesOf(context)
  return pages.map(page => {
    const place = places.get(page.key) ?? placeOfFolder(page.key)
    if (place === null) return page
    const { blocks, printed } = page
    // Who works by a task must have its caution before the eyes, on paper too; elsewhere the chapter on safety has it, and a card has but one sheet.
    if (place.isAtChaptersHead === true) return { ...page, blocks: putIn(blocks, place.at, cautionBlocks(context, place.where, place)), printed: printed ?? blocks }
    const onPaper = page.oneSheet !== undefined ? cautionReference(context, place.where) : place.where.task === undefined ? cautionLine(context, place.where) : cautionBlocks(context, place.where, { inFull: 1 })
    return { ...page, blocks: putIn(blocks, place.at, cautionBlocks(context, place.where, place)), printed: putIn(printed ?? blocks, place.at, onPaper) }
  })
}

/** In an emergency what to do comes first. */
interface Place {
  readonly where: Where
  readonly at: 'top' | 'after the first' | 'end'
  readonly inFull: number
  /** On paper it is said once, before the first of many such pages. */
  readonly isAtChaptersHead?: boolean
}

const putIn = (blocks: readonly Block[], at: Place['at'], cautions: readonly Block[]): readonly Block[] => {
  const position = at === 'top' ? 0 : at === 'end' ? blocks.length : 1
  return [...blocks.slice(0, position), ...cautions, ...blocks.slice(position)]
}

function placesOf({ vessel, lookup, addressOf, results }: ViewContext): ReadonlyMap<PageKey, Place> {
  const page = (name: CautionPage, inFull = 1): Place => ({ where: { pages: [name] }, at: 'after the first', inFull })
  const items = [...lookup.items.values()].filter(isThere)
  return new Map<PageKey, Place>([
    ...emergencyTasks.map(task => [`${fixedPages.emergency}/${task}`, { where: { task }, at: 'end', inFull: 1 }] as const),
    ...ownerTasks.map(task => [`${fixedPages.owner}/${task}`, { where: { task }, at: 'top', inFull: 1 }] as const),
    ...vessel.systems.map(system => [addressOf(system.tag)!, { where: { system: systemKindOf(system), kinds: items.filter(({ systemTag }) => systemTag === system.tag).flatMap(kindsOf) }, at: 'top', inFull: 2 }] as const),
    ...vessel.panels.map(({ tag }) => [addressOf(tag)!, page('panels')] as const),
    ...vessel.circuits.map(circuit => {
      const mains = results.feeding.byCircuit.get(circuit.tag)?.supplyForm === 'ac'
      return [addressOf(circuit.tag)!, mains ? page('mains circuits') : lookup.batteries.has(circuit.fedFromTag) ? page('battery circuits') : { ...page('circuits', 0), isAtChaptersHead: true }] as const
    }),
    ...[...vessel.canBuses, ...vessel.ethernetNetworks, ...vessel.serialLinks].map(({ tag }) => [addressOf(tag)!, page('networks', 0)] as const),
    [fixedPages.maintenance, page('maintenance')],
  ])
}

/** Every page of a folder alike. */
function placeOfFolder(key: PageKey): Place | null {
  return key.startsWith(`${fixedPages.workshop}/`) ? { where: { pages: ['workshop'] }, at: 'top', inFull: 1 } : null
}
