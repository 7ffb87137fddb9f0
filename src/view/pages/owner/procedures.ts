/** Procedures as the yard writes them: in place of a page's general text, and with what they are about. */
import { replaceTags } from '../../../model/tags-in-text.js'
import type { Procedure, Tag } from '../../../model/vessel.js'
import type { ProcedurePlace } from '../../../references/procedure-places.js'
import type { ViewContext } from '../../context.js'
import { muted, plainInMarkdown } from '../../text.js'
import type { Block, Page } from '../../view-model.js'

/** The procedure that takes the place of a page's general text; null where there is none. */
export const procedureFor = ({ vessel }: ViewContext, place: ProcedurePlace): Procedure | null =>
  vessel.procedures.find(procedure => procedure.place === place) ?? null

/** In place of general text, with the name that the yard gives it. */
export const procedureBlocks = (context: ViewContext, { title, text }: Procedure): readonly Block[] =>
  [{ is: 'markdown', source: markdownWithTags(context, text) }, { is: 'paragraph', text: [muted(`Procedure of the yard: ${title}.`)] }]

/** For the page of what they are about: each whole, under its title. */
export const proceduresAbout = (context: ViewContext, tag: Tag): readonly Block[] =>
  context.vessel.procedures.filter(({ aboutTags }) => aboutTags.includes(tag)).flatMap(procedure => titled(context, procedure))

/** One page with every procedure that no other page of the owner's part and of the emergency part shows. */
export function procedurePages(context: ViewContext): readonly Page[] {
  const others = context.vessel.procedures.filter(({ place }) => place === null)
  return others.length === 0 ? [] : [{
    key: proceduresPage,
    title: 'Procedures of this boat',
    kicker: 'Living with the boat',
    lead: ['Written by the yard, for this boat alone.'],
    printed: null,
    trail: [],
    blocks: others.flatMap(procedure => titled(context, procedure)),
  }]
}
const proceduresPage = 'owner/procedures'

const titled = (context: ViewContext, { title, text }: Procedure): readonly Block[] =>
  [{ is: 'heading', text: title, anchor: null }, { is: 'markdown', source: markdownWithTags(context, text) }]

/** `[[P1]]` → a link with tag and name; of what has no page the words alone. */
export const markdownWithTags = (context: ViewContext, markdown: string): string => replaceTags(withoutOurAddresses(markdown), tag => {
  const words = plainInMarkdown(wordsFor(context, tag))
  const to = context.addressOf(tag)
  return to === null ? words : `[${words}](asfitted:${to})`
})

/** Zones and systems by their name alone, since their tags are words. */
function wordsFor({ lookup, nameOf }: ViewContext, tag: Tag): string {
  const name = nameOf(tag)
  if (name === null) return tag
  return lookup.zones.has(tag) || lookup.systems.has(tag) ? name : `${tag} ${name}`
}

/** Addresses of our own are none that an author can know: left in, they would lead to no page. */
const withoutOurAddresses = (markdown: string): string => markdown.replace(/\]\(\s*<?asfitted:/gi, '](')
