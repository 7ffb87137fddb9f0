/** At the foot of a domain's page: what was found, and what could not be assessed with the reason. */
import { grouped } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { Tag } from '../../model/vessel.js'
import type { ViewContext } from '../context.js'
import { findingCards } from './finding-cards.js'
import { compareTags, tableOf } from '../tables.js'
import { joined } from '../text.js'
import type { Block } from '../view-model.js'

export interface FoundOf {
  /** The three letters of the domain's kinds. */
  readonly letters: string
  readonly notAssessed: readonly Gap[]
  /** Only what is about these; all of the domain when left out. */
  readonly about?: ReadonlySet<Tag>
}

export function foundBlocks(context: ViewContext, { letters, notAssessed, about }: FoundOf): readonly Block[] {
  const isAbout = (tag: Tag): boolean => about === undefined || about.has(tag)
  return [
    { is: 'heading', text: 'What was found', anchor: 'findings' },
    {
      is: 'findings', empty: 'Nothing was found to be wrong in what could be assessed.',
      findings: findingCards(context, context.findings.filter(({ id, subject }) => id.startsWith(letters) && isAbout(subject.id))),
    },
    ...gapBlocks(context, letters, notAssessed.filter(({ subjectTag }) => isAbout(subjectTag))),
  ]
}

/** One row a reason, with all that it stands in the way of. */
function gapBlocks(context: ViewContext, letters: string, gaps: readonly Gap[]): readonly Block[] {
  if (gaps.length === 0) return []
  const byReason = [...grouped(gaps, ({ reason }) => [reason])].map(([reason, sharing]) =>
    ({ reason, tags: [...new Set(sharing.map(({ subjectTag }) => subjectTag))].toSorted(compareTags) }))
  return [tableOf(byReason, {
    id: `not-assessed-${letters.toLowerCase()}`,
    caption: 'Not assessed',
    empty: '',
    columns: [
      { title: 'What', width: 'text', cell: ({ tags }) => joined(tags.map(tag => (tag === context.vessel.identity.name ? [tag] : context.named(tag))), { is: 'break' }) },
      { title: 'Because', width: 'text', cell: ({ reason }) => [reason] },
    ],
  })]
}
