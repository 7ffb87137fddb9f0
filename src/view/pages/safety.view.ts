/** The cautions that hold on this boat, by what can hurt, each with what on board it is about. */
import type { Caution } from '../../model/content.js'
import { hazards } from '../../references/caution-words.js'
import { calloutOf, holdsOnBoard, kindsOnBoard } from '../cautions/cautions.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { compareTags, tableOf } from '../tables.js'
import { joined, lineBreak, linkTo, muted } from '../text.js'
import type { Block, Page, Table, Text } from '../view-model.js'
import { generalText } from './front-matter.view.js'
import { distressLink, hasDistressCard } from './record/distress-card.view.js'

export function safetyPages(context: ViewContext): readonly Page[] {
  const { title, markdown } = generalText(context, 'safety')
  const holding = context.content.cautions.filter(caution => holdsOnBoard(context, caution))
  const groups = hazards.map(hazard => ({ hazard, cautions: holding.filter(caution => caution.hazard === hazard) })).filter(({ cautions }) => cautions.length > 0)
  return [{
    key: fixedPages.safety,
    title,
    kicker: null,
    lead: null,
    printed: null,
    trail: [],
    blocks: [
      ...(hasDistressCard(context) ? [{ is: 'paragraph', text: distressLink } as const] : []),
      { is: 'markdown', source: markdown },
      indexTable(groups),
      ...groups.flatMap(({ hazard, cautions }): readonly Block[] => [
        { is: 'heading', text: capitalised(hazard), anchor: null },
        ...cautions.flatMap((caution): readonly Block[] => [calloutOf(caution), ...aboutBlocks(context, caution)]),
      ]),
      ...leftOut(context, holding),
    ],
  }]
}

interface Group { readonly hazard: string; readonly cautions: readonly Caution[] }
const capitalised = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** What can hurt, and the cautions on it. */
const indexTable = (groups: readonly Group[]): Table => tableOf(groups, {
  id: 'hazards',
  caption: 'What can hurt, and where to read of it',
  empty: '',
  columns: [
    { title: 'Hazard', width: 'short', cell: ({ hazard }) => [capitalised(hazard)] },
    { title: 'Cautions', width: 'text', cell: ({ cautions }) => joined(cautions.map(({ key, signal, title }): Text => [`${signal} `, linkTo(`${fixedPages.safety}#caution-${key}`, title)]), lineBreak) },
  ],
})

const mostNamed = 8

/** Which things on board it is about. */
function aboutBlocks(context: ViewContext, { equipmentKinds }: Caution): readonly Block[] {
  const there = kindsOnBoard(context)
  const tags = [...new Set(equipmentKinds.flatMap(kind => there.get(kind) ?? []))].toSorted(compareTags)
  if (tags.length === 0) return []
  const more = tags.length - mostNamed
  return [{ is: 'paragraph', text: [muted('On board: '), ...joined(tags.slice(0, mostNamed).map(context.named)), ...(more > 0 ? [` and ${more} more`] : []), '.'] }]
}

/** What there is nothing of on board is named, so that nobody thinks it was forgotten. */
function leftOut({ content }: ViewContext, holding: readonly Caution[]): readonly Block[] {
  const others = content.cautions.filter(caution => !holding.includes(caution))
  if (others.length === 0) return []
  return [{ is: 'paragraph', text: [`Left out, since nothing of the kind is recorded on board: ${others.map(({ title }) => title).join('; ')}. Where there is such equipment all the same, or it comes aboard, have it recorded and a new issue of this pack made.`] }]
}
