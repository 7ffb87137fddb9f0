/** The owner’s part: finding one’s way on board, and what is done day by day. */
import { isThere } from '../../../model/lookup.js'
import { type OwnerTask, ownerTasks } from '../../../references/procedure-places.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import type { Block, Page } from '../../view-model.js'
import { weave } from '../../weave/weave.js'
import { markdownWithTags, procedureFor, procedurePages } from './procedures.js'

export function ownerPages(context: ViewContext): readonly Page[] {
  const tasks = ownerTasks.flatMap(task => taskPage(context, task) ?? [])
  const pages = [...tasks, ...procedurePages(context)]
  return pages.length === 0 ? [] : [
    {
      key: fixedPages.owner,
      title: 'Living with the boat',
      kicker: null,
      lead: ['Finding your way on board, and what is done day by day. How each piece of equipment is used is told under Operating the equipment.'],
      printed: null,
      trail: [],
      blocks: [{ is: 'cards', cards: pages.map(({ title, key, lead }) => ({ title, to: key, text: lead ?? [] })) }],
    },
    ...pages,
  ]
}

/** The yard's own procedure, else the general text; null where the boat has no use for it. */
function taskPage(context: ViewContext, task: OwnerTask): Page | null {
  const procedure = procedureFor(context, task)
  const text = context.content.owner.get(task)
  const page = (title: string, lead: string | null, blocks: readonly Block[]): Page => ({
    key: `${fixedPages.owner}/${task}`,
    title,
    kicker: 'Living with the boat',
    lead: lead === null ? null : [lead],
    printed: null,
    trail: [{ text: 'Living with the boat', to: fixedPages.owner }],
    blocks,
  })
  if (procedure !== null) return page(procedure.title, 'Written by the yard, for this boat.', [{ is: 'markdown', source: markdownWithTags(context, procedure.text) }])
  if (text === undefined || !hasUseFor(context, task)) return null
  return page(text.title, text.lead, weave(context, text.markdown))
}

/** Without a shore inlet there is nothing to connect. */
const hasUseFor = ({ vessel }: ViewContext, task: OwnerTask): boolean =>
  !task.startsWith('shore-power') || vessel.equipment.some(item => item.kind === 'shore inlet' && isThere(item))
