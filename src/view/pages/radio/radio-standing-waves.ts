/** Standing wave ratios as measured, against what the antenna may give behind its cable. */
import { cite } from '../../../references/bibliography.js'
import type { StandingWaveCheck } from '../../../model/results/radio.js'
import { say, sayAgainst } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { tableOf } from '../../tables.js'
import { lineBreak, muted, verdict } from '../../text.js'
import type { Block, Level, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

const verdicts: Readonly<Record<StandingWaveCheck['verdict'], { readonly level: Level; readonly text: string }>> = {
  'within': { level: 'good', text: 'within' },
  'above limit': { level: 'error', text: 'above limit' },
  'hidden by loss': { level: 'error', text: 'hidden by cable loss' },
  'not explained': { level: 'warning', text: 'not explained' },
  'not assessed': { level: 'not assessed', text: 'not assessed' },
}

export function standingWaveBlocks(context: ViewContext): readonly Block[] {
  const { standingWaves } = context.results.radio
  if (standingWaves.length === 0) return []
  return [
    { is: 'heading', text: 'Standing wave ratio (VSWR) as measured', anchor: 'standing-waves' },
    { is: 'paragraph', text: ['A long or lossy cable makes a bad antenna look good at the transmitter, since what comes back is weakened twice. So each reading is reckoned back to the antenna, and the reading that an antenna on its limit would give is beside it.'] },
    tableOf(standingWaves, {
      id: 'radio-standing-waves',
      caption: 'Readings',
      empty: '',
      level: ({ verdict: of, supersededBy }) => (supersededBy === null && of !== 'within' && of !== 'not assessed' ? 'error' : null),
      columns: [
        { title: 'Read at', width: 'text', cell: ({ readAtTag, antennaTag }) => [...context.named(readAtTag), ...(antennaTag === null || antennaTag === readAtTag ? [] : [lineBreak, muted(`towards ${antennaTag}`)])] },
        { title: 'Reading', width: 'short', cell: ({ number, date }) => [number, ...(date === null ? [] : [lineBreak, muted(date)])] },
        { title: 'VSWR', width: 'number', cell: ({ readVswrFactor, reading }) => [say('vswrFactor', readVswrFactor), lineBreak, muted(reading.status === 'computed' ? `return loss ${say('returnLossDb', reading.output.returnLossDb)}` : 'no return loss')] },
        { title: 'May read', width: 'number', cell: ({ expected, lossDb }) => [...sayOrDash('vswrFactor', expected.status === 'computed' ? expected.output.readVswrFactor : null, context.vessel), lineBreak, muted(lossDb === null ? 'loss not known' : `behind ${say('lossDb', lossDb)}`)] },
        { title: 'At the antenna', width: 'short', cell: check => atAntennaText(context, check) },
      ],
      note: [`Limit of the antenna: ${[...new Set(standingWaves.map(({ limit }) => `${say('vswrFactor', limit.value)}, ${cite(limit.citation)}`))].join('; ')}.`],
    }),
  ]
}

export const standingWaveWorkings = (context: ViewContext): readonly Block[] =>
  context.results.radio.standingWaves.filter(({ supersededBy }) => supersededBy === null).flatMap(({ number, reading, expected, atAntenna }) => [
    workingOf(context, `Reading ${number}`, reading),
    ...(expected.status === 'computed' ? [workingOf(context, `Reading ${number}: what an antenna on its limit would give there`, expected)] : []),
    workingOf(context, `Reading ${number}: at the antenna`, atAntenna),
  ])

function atAntennaText({ vessel }: ViewContext, { atAntenna, limit, verdict: of, gap, supersededBy }: StandingWaveCheck): Text {
  if (supersededBy !== null) return [muted(`replaced by reading ${supersededBy}`)]
  const { level, text } = verdicts[of]
  const value = atAntenna.status === 'computed' ? sayAgainst('vswrFactor', atAntenna.output.antennaVswrFactor, limit.value, vessel) : null
  return [...(value === null ? [] : [`${value.actual} `, muted(`limit ${value.limit}`), lineBreak]), verdict(level, text), ...(gap === null ? [] : [muted(` ${gap}`)])]
}
