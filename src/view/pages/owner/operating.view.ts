/** How to use the equipment, kind by kind. */
import { kindsOf } from '../../../model/item-kinds.js'
import { isThere, type Item } from '../../../model/lookup.js'
import type { OperatingText } from '../../../model/content.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { byTag } from '../../tables.js'
import { joined, linkTo } from '../../text.js'
import type { Block, Page, PageKey } from '../../view-model.js'
import { weave } from '../../weave/weave.js'
import { dependsTable, itemsTable } from './depends.js'

const pageOf = ({ key }: OperatingText): PageKey => `${fixedPages.operating}/${key}`

/** A page for each text that has something on board to be about. */
export function operatingPages(context: ViewContext): readonly Page[] {
  const used = context.content.operating.map(text => ({ text, items: itemsOf(context, text) })).filter(({ items }) => items.length > 0)
    .toSorted((a, b) => a.text.title.localeCompare(b.text.title, 'en'))
  return used.length === 0 ? [] : [
    {
      key: fixedPages.operating,
      title: 'Operating the equipment',
      kicker: null,
      lead: ['What each kind of equipment does, how it is switched on, used and switched off, and what it depends on. The makers’ own manuals have more, and they hold.'],
      printed: null,
      trail: [],
      blocks: [{ is: 'cards', cards: used.map(({ text, items }) => ({ title: text.title, to: pageOf(text), text: [summary(items)] })) }],
    },
    ...used.map(({ text, items }) => operatingPage(context, text, items)),
  ]
}

const mostNamed = 3
const summary = (items: readonly Item[]): string =>
  `${items.slice(0, mostNamed).map(({ tag, name }) => `${tag} ${name}`).join('; ')}${items.length > mostNamed ? `; and ${items.length - mostNamed} more` : ''}`

function operatingPage(context: ViewContext, text: OperatingText, items: readonly Item[]): Page {
  const words = weave(context, text.markdown)
  const depends = dependsTable(context, items)
  return {
    key: pageOf(text),
    title: text.title,
    kicker: 'Operating the equipment',
    lead: null,
    printed: [...words, itemsTable(context, items, { onPaper: true })],
    trail: [{ text: 'Operating the equipment', to: fixedPages.operating }],
    blocks: [...words, itemsTable(context, items), ...(depends === null ? [] : [depends])],
  }
}

function itemsOf({ lookup }: ViewContext, { kinds }: OperatingText): readonly Item[] {
  return [...lookup.items.values()].filter(item => isThere(item) && kindsOf(item).some(kind => kinds.includes(kind))).toSorted(byTag)
}

/** For the page of an item: how its kind is used, and where the others of the kind are told of. */
export function operatingBlocks(context: ViewContext, item: Item): readonly Block[] {
  const depends = dependsTable(context, [item])
  const texts = context.content.operating.filter(({ kinds }) => kindsOf(item).some(kind => kinds.includes(kind)))
  return [
    ...texts.flatMap((text): readonly Block[] => [
      { is: 'heading', text: 'How to use it', anchor: 'use' },
      ...weave(context, text.markdown),
      { is: 'paragraph', text: joined([['All of this kind on board: '], [linkTo(pageOf(text), text.title)], ['.']], '') },
    ]),
    ...(depends === null ? [] : [{ ...depends, caption: 'What it depends on' }]),
  ]
}
