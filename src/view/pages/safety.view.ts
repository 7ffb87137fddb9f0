/** The general cautions, in the order of what can happen. */
import type { Caution } from '../../model/content.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import type { Callout, Page } from '../view-model.js'
import { generalText } from './front-matter.view.js'
import { distressLink, hasDistressCard } from './record/distress-card.view.js'

export function safetyPages(context: ViewContext): readonly Page[] {
  const { title, markdown } = generalText(context, 'safety')
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
      ...context.content.cautions.map(calloutOf),
    ],
  }]
}

export const calloutOf = ({ signal, title, markdown }: Caution): Callout => ({ is: 'callout', signal, title, markdown })
