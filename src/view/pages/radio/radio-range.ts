/** How far antennas, radars and eyes reach, by their heights. */
import type { OwnRange } from '../../../model/results/radio.js'
import { cite } from '../../../references/bibliography.js'
import { partnersCitation, radioPartners } from '../../../references/tables/radio-partners.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { dash, lineBreak, muted } from '../../text.js'
import type { Block } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

const kinds = { radio: 'radio', radar: 'radar', eye: 'the eye' } as const

export function rangeBlocks(context: ViewContext): readonly Block[] {
  const { ranges } = context.results.radio
  if (ranges.length === 0) return []
  return [
    { is: 'heading', text: 'How far it reaches', anchor: 'range' },
    { is: 'paragraph', text: ['VHF, radar and the eye reach to the horizon and little beyond; the height of both ends decides. A handheld radio at the rail reaches other small boats over a few miles only.'] },
    tableOf(ranges, {
      id: 'radio-ranges',
      caption: 'Range to usual partners',
      empty: '',
      columns: [
        { title: 'From', width: 'text', cell: ({ tag, of }) => [...context.named(tag), lineBreak, muted(kinds[of])] },
        { title: 'Height', width: 'number', cell: ({ heightM }) => [say('heightM', heightM, context.vessel)] },
        ...radioPartners.map((partner, i) => ({
          title: `${partner.title}, ${say('heightM', partner.heightM, context.vessel)}`, width: 'number' as const,
          cell: ({ to }: OwnRange) => { const outcome = to[i]!.outcome; return outcome.status === 'computed' ? [say('rangeNmi', outcome.output.rangeNmi)] : dash },
        })),
      ],
      note: [`2.23, 2.21 or 2.08 NM times the sum of the roots of both heights in metres, for radio, radar and the eye. Heights above the waterline: of an antenna the middle of its radiating part, of a person the top of the head. Of the partners: ${cite(partnersCitation)}.`],
    }),
  ]
}

/** One of each kind; the others follow from their heights. */
export const rangeWorkings = (context: ViewContext): readonly Block[] => (['radio', 'radar', 'eye'] as const).flatMap((of): readonly Block[] => {
  const range = context.results.radio.ranges.find(candidate => candidate.of === of)
  return range === undefined ? [] : [workingOf(context, `Range of ${kinds[of]}, from ${range.tag} to a coast station`, range.to[0]!.outcome)]
})
