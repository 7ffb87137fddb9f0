/** At the foot of a page about networks: what was found and what could not be assessed of the things on it. */
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { findingCards } from '../../finding-cards.js'
import { tableOf } from '../../tables.js'
import type { Block } from '../../view-model.js'

export function ethernetFound(context: ViewContext, tags: ReadonlySet<Tag>): readonly Block[] {
  const gaps = context.results.ethernet.notAssessed.filter(({ subjectTag }) => tags.has(subjectTag))
  return [
    { is: 'heading', text: 'What was found', anchor: 'findings' },
    {
      is: 'findings', empty: 'Nothing was found to be wrong in what could be assessed.',
      findings: findingCards(context, context.findings.filter(({ id, subject }) => id.startsWith('ETH') && tags.has(subject.id))),
    },
    ...(gaps.length === 0 ? [] : [tableOf(gaps, {
      id: 'ethernet-not-assessed',
      caption: 'Not assessed',
      empty: '',
      columns: [
        { title: 'What', width: 'text', cell: ({ subjectTag }) => context.named(subjectTag) },
        { title: 'Because', width: 'text', cell: ({ reason }) => [reason] },
      ],
    })]),
  ]
}
