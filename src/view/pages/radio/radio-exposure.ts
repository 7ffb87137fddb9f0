/** Where people must not be while something transmits. */
import { inWords } from '../../../findings/words.js'
import { cite } from '../../../references/bibliography.js'
import type { Exposure, ExposureOutcome } from '../../../model/results/radio.js'
import { voiceDuty } from '../../../references/tables/exposure-limits.js'
import { mPerFt } from '../../../units/convert.js'
import { say, sayForWorking, type SayOptions } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { lineBreak, muted, verdict } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export function exposureBlocks(context: ViewContext): readonly Block[] {
  const { results: { radio: { exposures } }, vessel } = context
  if (exposures.length === 0) return []
  return [
    { is: 'heading', text: 'People near antennas', anchor: 'exposure' },
    {
      is: 'paragraph', text: [
        'Distances that the general public should keep, reckoned as if a transmitter sent without a break and a radar’s beam stood still, which is more than happens as a rule. Makers’ manuals, local law and the authorities come first. Whoever has a pacemaker or another device in the body asks its maker or a doctor.',
      ],
    },
    tableOf(exposures, {
      id: 'radio-keep-away',
      caption: 'Distance to keep',
      empty: '',
      level: ({ people }) => (people.some(({ tooNear }) => tooNear) ? 'warning' : null),
      columns: [
        { title: 'From', width: 'text', cell: ({ tag, of, itemTag, service }) => [...context.named(tag), ...(of === 'radar' ? [] : [lineBreak, muted(`${service} of ${itemTag}`)])] },
        { title: 'Keep', width: 'number', cell: exposure => keepText(context, exposure) },
        { title: 'Nearest person', width: 'text', cell: exposure => nearestText(context, exposure) },
      ],
      note: [`Rounded up to ${vessel.units === 'us' ? 'the next 10 cm, in feet to a tenth' : 'the next 10 cm'}; a maker’s distance as he states it, which of a radar mostly holds for a beam that turns: for a beam at rest see the table below. Nearest person: from any part of a person standing there, feet to head, to the nearest part of the antenna; of a radar whose maker states no distance, people clear of its beam do not count.`],
    }),
    limitTable(context, exposures),
  ]
}

const keepText = ({ vessel }: ViewContext, { deciding }: Exposure): Text => (deciding === null ? [muted('not assessed')]
  : [sayRoundedUp(deciding.value, vessel), lineBreak, muted(deciding.citation.source === 'makers-data' ? 'by its maker' : 'by 47 CFR 1.1310')])

function nearestText(context: ViewContext, { people, gap, deciding }: Exposure): Text {
  if (gap !== null) return [muted(`not assessed: ${gap}`)]
  const counted = people.filter(({ inBeam }) => inBeam || deciding?.citation.source === 'makers-data').toSorted((a, b) => a.distanceM - b.distanceM)
  const [nearest] = counted
  if (nearest === undefined) return ['everybody is clear of the beam ', verdict('good', 'kept')]
  return [
    `${say('distanceM', nearest.distanceM, context.vessel)} `, ...context.named(nearest.placeTag), lineBreak,
    verdict(nearest.tooNear ? 'warning' : 'good', nearest.tooNear ? 'too near' : 'kept'),
  ]
}

const limitTable = (context: ViewContext, exposures: readonly Exposure[]): Table => tableOf(exposures.flatMap(({ tag, of, dutyPercent, distances }) => distances.map(row => ({ tag, of, dutyPercent, ...row }))), {
  id: 'radio-exposure-limits',
  caption: 'Distances by limit',
  empty: 'Of nothing that transmits is enough recorded.',
  columns: [
    { title: 'From', width: 'tag', cell: ({ tag }) => [context.tag(tag)] },
    { title: 'Limit', width: 'text', cell: ({ title, people }) => [title, lineBreak, muted(people === 'general' ? 'general public' : 'at work, informed')] },
    { title: 'Density', width: 'number', cell: ({ limit, averaging }) => [say('limitWPerM2', limit.value), lineBreak, muted(`over ${averaging}`)] },
    { title: 'Without a break', width: 'number', cell: ({ of, steady }) => [...distanceText(context, steady), ...(of === 'radar' ? [lineBreak, muted('beam at rest')] : [])] },
    { title: 'As a rule', width: 'number', cell: ({ of, dutyPercent, usual }) => [...distanceText(context, usual), ...(usual === null ? [] : [lineBreak, muted(of === 'radar' ? 'turning' : `sending ${sayForWorking('dutyPercent', dutyPercent)} of the time`)])] },
  ],
  note: [`Rounded up to ${context.vessel.units === 'us' ? 'a tenth of a foot' : 'the next centimetre'}; the radiated power is in the sums at the end of the page. ${[...new Set(exposures.flatMap(({ distances }) => distances.map(({ limit }) => cite(limit.citation))))].join('; ')}. A voice radio sends half of the time (${cite(voiceDuty.citation)}).${withoutRow(exposures)}`],
})

/** What is not in the table is named, so that its absence is no pass. */
function withoutRow(exposures: readonly Exposure[]): string {
  const tags = exposures.filter(({ distances }) => distances.length > 0 && !distances.some(({ limit }) => limit.citation.source === 'icnirp-2020')).map(({ tag }) => tag)
  return tags.length === 0 ? '' : ` Between 400 MHz and 2 GHz no values of ICNIRP 2020 are tabulated: ${inWords(tags)} ${tags.length === 1 ? 'is' : 'are'} not held against them.`
}

export const exposureWorkings = (context: ViewContext): readonly Block[] => context.results.radio.exposures.flatMap(({ tag, of, distances: [first], meanPower, radiated, rotating, lossTakenOff }) => [
  ...(meanPower === null ? [] : [workingOf(context, `Mean power of ${tag}`, meanPower)]),
  // Of an antenna whose loss is known the sum stands with its way.
  ...(of === 'radar' || !lossTakenOff ? [workingOf(context, `Radiated power of ${tag}`, radiated, { remarks: of === 'radar' ? [] : [{ label: 'loss of the cable', text: 'not known and not taken off' }] })] : []),
  ...(rotating === null ? [] : [workingOf(context, `Radiated power of ${tag}, turning`, rotating)]),
  ...(first === undefined ? [] : [workingOf(context, `Distance to keep from ${tag} by ${first.title}, general public`, first.steady)]),
])

const distanceText = ({ vessel }: ViewContext, outcome: ExposureOutcome | null): Text =>
  (outcome?.status === 'computed' ? [sayRoundedUp(outcome.output.exposureDistanceM, vessel)] : [muted('–')])

/** Never less than it is, in whichever unit: to the next centimetre, or tenth of a foot. */
export const sayRoundedUp = (distanceM: number, { units }: SayOptions): string => {
  const stepM = units === 'us' ? mPerFt / 10 : 0.01
  return say('distanceM', Math.ceil(distanceM / stepM - 1e-6) * stepM, { units })
}
