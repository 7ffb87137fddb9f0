/** What to do and where to reach, one sheet for each emergency, and the page that leads to them. */
import type { TaskText } from '../../../model/content.js'
import type { Tag } from '../../../model/vessel.js'
import { type EmergencyTask, emergencyTasks } from '../../../references/procedure-places.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { strong } from '../../text.js'
import type { Block, Page, PageKey, ReachEntry } from '../../view-model.js'
import { weave } from '../../weave/weave.js'
import { locationDrawing, photographBlocks } from '../location/location-blocks.js'
import { procedureBlocks, procedureFor } from '../owner/procedures.js'
import { distressLink, hasDistressCard } from '../record/distress-card.view.js'
import { sheetFit } from './sheet-fit.js'

export function emergencyPages(context: ViewContext): readonly Page[] {
  const pages = emergencyTasks.flatMap(task => { const text = context.content.emergency.get(task); return text === undefined ? [] : [sheet(context, task, text)] })
  return pages.length === 0 ? [] : [indexPage(context), ...pages]
}

const emergencyKey = (task: EmergencyTask): PageKey => `${fixedPages.emergency}/${task}`

/** The cards of the index, for the pages that people open first as well. */
export const emergencyCards = ({ content }: ViewContext): readonly { readonly title: string; readonly to: PageKey; readonly text: readonly [string] }[] =>
  emergencyTasks.flatMap(task => { const text = content.emergency.get(task); return text === undefined ? [] : [{ title: text.title, to: emergencyKey(task), text: [text.lead] as const }] })

function indexPage(context: ViewContext): Page {
  return {
    key: fixedPages.emergency,
    title: 'Emergency',
    kicker: null,
    lead: ['First the people, then the boat. Each page fits one sheet: print it and hang it up.'],
    printed: null,
    trail: [],
    oneSheet: 'all',
    blocks: [
      ...(hasDistressCard(context) ? [{ is: 'paragraph', text: distressLink } as const] : []),
      { is: 'cards', cards: emergencyCards(context) },
      { is: 'paragraph', text: ['All of them in one document: ', { is: 'pack file', file: 'emergency.pdf', text: 'emergency cards for printing' }, '. They are no training. Practise them with your crew, and follow the rules of the place you are in.'] },
    ],
  }
}

/** The yard's own procedure takes the place of the steps; where things are stays. */
function sheet(context: ViewContext, task: EmergencyTask, { title, lead, markdown }: TaskText): Page {
  const { steps, places } = parts(task, markdown)
  const own = procedureFor(context, task)
  const reached = weave(context, places)
  const tags = tagsReached(context, reached)
  const inHand: readonly Block[] = [...(own === null ? weave(context, steps) : procedureBlocks(context, own)), ...reached, ...locationDrawing(context, tags, { id: 'plan', caption: 'Where they are' }), ...accessBlock(context, reached)]
  return {
    key: emergencyKey(task),
    title,
    kicker: null,
    lead: [strong(lead)],
    // One sheet: what is looked at later is on the site.
    printed: inHand,
    trail: [{ text: 'Emergency', to: fixedPages.emergency }],
    oneSheet: sheetFit(inHand),
    blocks: [...inHand, ...photographBlocks(context, tags)],
  }
}

/** The steps, and from the first heading on where things are. */
function parts(task: EmergencyTask, markdown: string): { readonly steps: string; readonly places: string } {
  const at = markdown.search(/^## /m)
  if (at <= 0) throw new Error(`emergency/${task}.md: steps, then a heading of the second level and where things are, are expected`)
  return { steps: markdown.slice(0, at), places: markdown.slice(at) }
}

/** What the lists name, each once. */
function tagsReached({ lookup: { items } }: ViewContext, blocks: readonly Block[]): readonly Tag[] {
  const entries: readonly ReachEntry[] = blocks.flatMap(block => (block.is === 'reach' ? block.entries : []))
  const named = entries.flatMap(({ what }) => what.flatMap(part => (typeof part !== 'string' && 'text' in part && items.has(part.text) ? [part.text] : [])))
  return [...new Set(named)]
}

/** How to get into the zones that the lists name: once a zone. */
function accessBlock({ vessel, addressOf }: ViewContext, blocks: readonly Block[]): readonly Block[] {
  const texts = blocks.flatMap(block => (block.is === 'reach' ? block.entries.flatMap(({ where, remark }) => [...where ?? [], ...remark ?? []]) : []))
  const named = new Set(texts.flatMap(part => (typeof part !== 'string' && part.is === 'link' ? [part.to] : [])))
  const entries = vessel.zones.filter(({ tag, access }) => access !== null && named.has(addressOf(tag)!)).map(({ name, access }) => ({ label: name, value: [access!] }))
  return entries.length === 0 ? [] : [{ is: 'facts', caption: 'How to get there', dense: true, entries }]
}
