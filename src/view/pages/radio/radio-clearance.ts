/** Antennas against one another, and what stands in the beam of a radar. */
import { cite } from '../../../references/bibliography.js'
import type { BeamMeeting, RadarBeam, Separation } from '../../../model/results/radio.js'
import { gnssShipAdvice, practiceSeparation, shipSeparation } from '../../../references/basis/radio-rules.js'
import { say, sayAgainst } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { lineBreak, linkTo, muted, verdict } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'

export const clearanceBlocks = (context: ViewContext): readonly Block[] => [...separationBlocks(context), ...context.results.radio.radars.flatMap(radar => beamBlocks(context, radar))]

// --- antennas against one another ------------------------------------------------------------------------------------
function separationBlocks(context: ViewContext): readonly Block[] {
  const { separations } = context.results.radio
  if (separations.length === 0) return []
  return [
    { is: 'heading', text: 'Antennas against one another', anchor: 'separation' },
    { is: 'paragraph', text: ['What one antenna sends, its neighbour receives at full strength. Straight above or below the other, antennas hear least of one another. The maker’s word comes first, then the rules for ships where an AIS of class A is concerned, then common practice of small craft.'] },
    tableOf(separations.toSorted((a, b) => a.comparison.margin - b.comparison.margin), {
      id: 'radio-separation',
      caption: 'Distances between antennas',
      empty: '',
      level: ({ comparison }) => (comparison.within ? null : 'warning'),
      columns: [
        { title: 'Between', width: 'text', cell: ({ aTag, bTag }) => [...context.named(aTag), lineBreak, ...context.named(bTag)] },
        { title: 'Asked for', width: 'text', cell: pair => ruleText(context, pair) },
        { title: 'Horizontal', width: 'number', cell: ({ horizontalM }) => [say('horizontalM', horizontalM, context.vessel)] },
        { title: 'Vertical', width: 'number', cell: ({ verticalM }) => [say('verticalM', verticalM, context.vessel)] },
        { title: 'Nearest', width: 'number', cell: ({ distanceM }) => [say('distanceM', distanceM, context.vessel)] },
      ],
      note: [
        'Between the nearest points of the radiating parts; vertical is 0 where one stands beside the other. '
        + `Rules: ${[...Object.values(shipSeparation), ...Object.values(practiceSeparation)].map(({ value, citation }) => `${say('distanceM', value, context.vessel)}, ${cite(citation)}`).join('; ')}. `
        + `Advice for ships: ${say('distanceM', gnssShipAdvice.value, context.vessel)}, ${cite(gnssShipAdvice.citation)}.`,
      ],
    }),
  ]
}

function ruleText({ vessel }: ViewContext, { held, comparison }: Separation): Text {
  const { limit } = sayAgainst('distanceM', comparison.value, comparison.limit.value, vessel)
  return [
    `${held === 'distance' ? '' : `${held} `}${limit} `, muted(sources[comparison.limit.citation.source] ?? cite(comparison.limit.citation)), lineBreak,
    verdict(comparison.within ? 'good' : 'warning', comparison.within ? 'kept' : 'nearer'),
  ]
}
const sources: Readonly<Record<string, string>> = { 'makers-data': 'by its maker', 'common-practice': 'common practice', 'imo-sn-circ-227': 'IMO SN/Circ.227' }

// --- radar beam ------------------------------------------------------------------------------------------------------
function beamBlocks(context: ViewContext, { tag, scannerHeightM, verticalBeamDeg, meets, gap }: RadarBeam): readonly Block[] {
  const known = scannerHeightM !== null && verticalBeamDeg !== null
  return [
    { is: 'heading', text: `Beam of radar ${tag}`, anchor: `beam-${tag.toLowerCase()}` },
    ...(known ? [
      {
        is: 'paragraph' as const,
        text: [
          'The beam turns all round, ', say('verticalBeamDeg', verticalBeamDeg / 2), ' up and down from level, ', say('scannerHeightM', scannerHeightM, context.vessel),
          ' above the waterline. What stands in it throws a shadow and takes the pulses at full strength. Blind sectors behind masts and structures, and how near the water is seen, are under ', linkTo(fixedPages.placement, 'Placement'), '.',
        ],
      },
      beamTable(context, tag, meets),
    ] : [{ is: 'paragraph' as const, text: [`What stands in its beam is not assessed: ${gap}.`] }]),
  ]
}

const beamTable = (context: ViewContext, tag: string, meets: readonly BeamMeeting[]): Table => tableOf(meets, {
  id: `radio-beam-${tag.toLowerCase()}`,
  caption: `Antennas and people seen from ${tag}`,
  empty: 'No antenna with a position and no place where people stand is recorded.',
  level: ({ inside }) => (inside ? 'warning' : null),
  columns: [
    { title: 'What', width: 'text', cell: met => context.named(met.tag) },
    { title: 'Beam', width: 'short', cell: ({ inside }) => [verdict(inside ? 'warning' : 'good', inside ? 'in the beam' : 'clear of it')] },
    { title: 'Horizontal', width: 'number', cell: ({ horizontalM }) => [say('horizontalM', horizontalM, context.vessel)] },
    { title: 'Angle', width: 'short', cell: ({ elevationDeg }) => [elevationDeg === 0 ? 'level' : `${say('elevationDeg', Math.abs(elevationDeg))} ${elevationDeg > 0 ? 'up' : 'down'}`] },
  ],
  note: ['Angle from level to the nearest part of what stands there: atan(difference in height / horizontal distance). Of a person, from feet to head.'],
})
