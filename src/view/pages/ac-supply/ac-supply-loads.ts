/** What hangs on each source of mains voltage, all together and by operating mode, so that each sum can be redone by hand. */
import { type AcSource, clockTime, type LoadSum, type ModeLoad } from '../../../model/results/ac-supply.js'
import { slug } from '../../../model/address.js'
import { say, sayForWorking } from '../../../units/format.js'
import { comparisonText, marginText } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { byTag, tableOf } from '../../tables.js'
import { counted, dash, muted } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { methodOf, workingOf } from '../../parts/working.js'
import { modeName } from '../energy/energy-modes.view.js'

export const loadBlocks = (context: ViewContext): readonly Block[] => [
  { is: 'heading', text: 'Loads against the rating of each source', anchor: 'loads' },
  {
    is: 'paragraph', text: ['All connected: every load at once, which is seldom so. By mode: what runs at the same time in the hour when most is on, each load at its full current, and what it takes on average of the day. Chargers count with what they take. ', methodOf(context, 'ac-connected-load').assumes.join(' ')],
  },
  ...context.results.acSupply.sources.toSorted(byTag).flatMap(source => sourceBlocks(context, source)),
]

const titleOf = (context: ViewContext, { tag }: AcSource): string => [tag, context.nameOf(tag)].filter(part => part !== null).join(' ')
const idOf = ({ tag, terminal }: AcSource, ...more: readonly string[]): string => ['ac-loads', ...[tag, terminal ?? '', ...more].filter(part => part !== '').map(slug)].join('-')

function sourceBlocks(context: ViewContext, source: AcSource): readonly Block[] {
  return [
    summaryTable(context, source),
    workingOf(context, `What ${source.tag} can give`, source.rating),
    ...(source.modes.some(({ running }) => running)
      ? source.modes.filter(({ running }) => running).flatMap(mode => modeBlocks(context, source, mode))
      : [partsTable(context, source, source.connected, { id: idOf(source, 'all'), caption: `All loads of ${source.tag}` })]),
  ]
}

const allConnected = 'All connected'
interface SummaryRow { readonly what: string; readonly when: string; readonly sum: LoadSum | null; readonly averageA: number | null }

function summaryTable(context: ViewContext, source: AcSource): Table {
  const rows: readonly SummaryRow[] = [
    { what: allConnected, when: '', sum: source.connected, averageA: null },
    ...source.modes.map((mode): SummaryRow => (mode.running
      ? { what: modeName(context, mode.modeTag), when: hours(mode), sum: mode.largest, averageA: mode.averageCurrentA }
      : { what: modeName(context, mode.modeTag), when: '', sum: null, averageA: null })),
  ]
  return tableOf(rows, {
    id: idOf(source),
    caption: `Loads of ${titleOf(context, source)}`,
    empty: '',
    level: ({ sum, what }) => (what !== allConnected && sum?.comparison?.within === false ? 'error' : null),
    columns: [
      { title: 'Mode', width: 'text', cell: ({ what, sum }) => [what, ...(sum === null ? [muted(', this source is not in use')] : [])] },
      { title: 'Most from, to', width: 'short', cell: ({ when }) => (when === '' ? dash : [when]) },
      { title: 'At the same time', width: 'text', cell: ({ what, sum }) => (sum === null ? dash : what === allConnected ? connectedText(sum) : sumText(context, sum)) },
      { title: 'Margin', width: 'number', cell: ({ what, sum }) => (what === allConnected ? dash : marginText(sum?.comparison, context)) },
      { title: 'Average of the day', width: 'number', cell: ({ averageA }) => (averageA === null ? dash : [say('averageCurrentA', averageA)]) },
    ],
    note: [workingNote(source), ...(source.modes.length === 0 ? [' No duty says what runs from it in which mode.'] : [])],
  })
}

const workingNote = ({ rating, ratedCurrentA }: AcSource): string => (rating.status === 'not computed' || ratedCurrentA === null
  ? 'Its rated current is not recorded.'
  : `Rated ${say('ratedCurrentA', ratedCurrentA)}. What runs for hours should stay within ${say('workingCurrentA', rating.input.shareFactor * ratedCurrentA)}, ${say('workingPowerVa', rating.output.workingPowerVa)} (common practice).`)

/** All at once is no use of the boat, so it is said and not judged. */
function connectedText({ sum, comparison, unknownTags }: LoadSum): Text {
  if (sum.status === 'not computed') return [muted('not assessed')]
  return [
    ...(unknownTags.length === 0 ? [] : ['more than ']), say('connectedCurrentA', sum.output.connectedCurrentA),
    ...(comparison?.within === false ? [muted(', more than it gives')] : []),
    ...(unknownTags.length === 0 ? [] : [muted(`, ${counted(unknownTags.length, 'load')} of unknown current`)]),
  ]
}

function sumText(context: ViewContext, { sum, comparison, unknownTags }: LoadSum): Text {
  if (comparison !== null) return comparisonText(comparison, context)
  if (sum.status === 'not computed') return [muted('not assessed')]
  const current = say('connectedCurrentA', sum.output.connectedCurrentA)
  return unknownTags.length === 0 ? [current, muted(' no rating recorded')] : [`more than ${current}`, muted(`, not assessed: ${counted(unknownTags.length, 'load')} of unknown current`)]
}

const hours = ({ largestFromH, largestToH }: ModeLoad): string => `${clockTime(largestFromH)}–${clockTime(largestToH)}`

function modeBlocks(context: ViewContext, source: AcSource, mode: ModeLoad): readonly Block[] {
  const name = modeName(context, mode.modeTag)
  return [
    partsTable(context, source, mode.largest, { id: idOf(source, mode.modeTag, 'largest'), caption: `${source.tag}, ${name}: on together from ${hours(mode)}` }),
    averageTable(context, source, mode, { id: idOf(source, mode.modeTag, 'average'), caption: `${source.tag}, ${name}: average of the day` }),
  ]
}

/** The sum load by load. */
function partsTable(context: ViewContext, { nominalVoltageV }: AcSource, { parts, sum, unknownTags }: LoadSum, { id, caption }: { readonly id: string; readonly caption: string }): Table {
  const total: Text = sum.status === 'not computed' ? [] : [
    `Sum ${sayForWorking('connectedPowerVa', sum.input.connectedPowerVa)}; divided by ${say('nominalVoltageV', nominalVoltageV)}: ${sayForWorking('connectedCurrentA', sum.output.connectedCurrentA, 'result')}.`,
    ...(unknownTags.length === 0 ? [] : [` Not counted for want of a current: ${unknownTags.join(', ')}.`]),
  ]
  return tableOf(parts, {
    id,
    caption,
    empty: unknownTags.length === 0 ? 'Nothing is on.' : `Nothing of a known current is on. Not counted: ${unknownTags.join(', ')}.`,
    columns: [
      { title: 'Load', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Circuit', width: 'tag', cell: ({ circuitTag }) => [context.tag(circuitTag)] },
      { title: 'Current', width: 'number', cell: ({ currentA }) => [sayForWorking('currentA', currentA)] },
      { title: 'At', width: 'number', cell: part => [say('nominalVoltageV', part.nominalVoltageV)] },
      { title: 'Power', width: 'number', cell: ({ powerVa }) => [sayForWorking('powerVa', powerVa, 'result')] },
    ],
    note: total,
  })
}

function averageTable(context: ViewContext, { nominalVoltageV }: AcSource, { averages, averageCurrentA }: ModeLoad, { id, caption }: { readonly id: string; readonly caption: string }): Table {
  const input = ({ outcome }: (typeof averages)[number], name: 'currentA' | 'dutyPercent' | 'runningTimeH'): Text =>
    (outcome.status === 'computed' ? [sayForWorking(name, outcome.input[name])] : dash)
  return tableOf(averages, {
    id,
    caption,
    empty: 'No load runs from it.',
    columns: [
      { title: 'Load', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Current', width: 'number', cell: average => input(average, 'currentA') },
      { title: 'Duty', width: 'number', cell: average => input(average, 'dutyPercent') },
      { title: 'Hours a day', width: 'number', cell: average => input(average, 'runningTimeH') },
      { title: 'Average', width: 'number', cell: ({ outcome }) => (outcome.status === 'computed' ? [sayForWorking('averageCurrentA', outcome.output.averageCurrentA, 'result')] : [muted('not assessed')]) },
    ],
    note: [`Average = current × duty × hours / 24, at ${say('nominalVoltageV', nominalVoltageV)}. Sum ${sayForWorking('averageCurrentA', averageCurrentA, 'result')}.`],
  })
}
