/** Mass and moments of what was fitted, and where on the boat positions are taken. */
import type { MomentPart, MomentResults } from '../../../model/results/placement.js'
import { say, sayBoth, sayForWorking } from '../../../units/format.js'
import { comparisonText } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { byTag, tableOf } from '../../tables.js'
import { counted, joined, lineBreak, muted } from '../../text.js'
import type { Block, Facts, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export function momentBlocks(context: ViewContext, { onPaper }: { readonly onPaper: boolean }): readonly Block[] {
  const { moments } = context.results.placement
  if (moments === null) return []
  const { parts, centre, shift, heel } = moments
  return [
    { is: 'heading', text: 'Mass and moments of what was fitted', anchor: 'moments' },
    { is: 'paragraph', text: summary(context, moments) },
    shareFacts(context, moments),
    ...(parts.length === 0 ? [] : [partTable(context, moments, onPaper)]),
    workingOf(context, 'Centre of gravity of the fit', centre),
    workingOf(context, 'Shift of the vessel’s centre of gravity', shift, { remarks: [{ label: 'displacement recorded', text: `${context.vessel.identity.displacementKg === null ? 'none' : say('displacementKg', context.vessel.identity.displacementKg)}, ${includesText(context)}` }] }),
    workingOf(context, 'Heel from the fit', heel),
  ]
}

const includesText = ({ vessel: { identity: { stability: { includesEquipment } } } }: ViewContext): string =>
  (includesEquipment === true ? 'the fit counted in it' : includesEquipment === false ? 'without the fit' : 'taken to be without the fit, which is not recorded')

function summary(context: ViewContext, { centre, shift, heel, heelComparison }: MomentResults): Text {
  if (centre.status === 'not computed') return ['Masses are recorded without positions, so there are no moments.']
  const heeled = heel.status === 'not computed' ? null : heel.output.heelDeg
  return [
    `What is listed weighs ${sayBoth('massKg', centre.input.massKg, context.vessel)}. `,
    ...(shift.status === 'computed' ? [`It moves the boat’s centre of gravity ${moved(context, shift.output.shiftForwardM, 'forward', 'aft')}, ${moved(context, shift.output.shiftToPortM, 'to port', 'to starboard')} and ${moved(context, shift.output.shiftUpM, 'up', 'down')}. `] : []),
    ...(heeled === null ? ['The heel it causes is not assessed.'] : [`By itself it heels her by ${say('heelDeg', Math.abs(heeled))}${heeled === 0 ? '' : heeled > 0 ? ' to port' : ' to starboard'} `, ...(heelComparison === null ? [] : [muted('('), ...comparisonText(heelComparison, context), muted(', common practice)')]), '. This is no stability calculation: that is work for a naval architect.']),
  ]
}

const moved = ({ vessel }: ViewContext, shiftM: number, positive: string, negative: string): string => `${say('shiftM', Math.abs(shiftM), vessel)} ${shiftM >= 0 ? positive : negative}`

function shareFacts(context: ViewContext, { parts, withoutMassTags, withoutPlace }: MomentResults): Facts {
  const [countedKg, leftKg] = [parts, withoutPlace].map(list => list.reduce((sum, { massKg }) => sum + massKg, 0)) as [number, number]
  const all = countedKg + leftKg
  return {
    is: 'facts', caption: 'What is counted', entries: [
      { label: 'Counted', value: [`${counted(parts.length, 'item')}, ${say('massKg', countedKg, context.vessel)}${all === 0 ? '' : `, ${say('sharePercent', (100 * countedKg) / all)} of the mass that is recorded`}`] },
      { label: 'Without a position', value: [`${counted(withoutPlace.length, 'item')}, ${say('massKg', leftKg, context.vessel)}`] },
      { label: 'Without a mass', value: withoutMassTags.length === 0 ? ['none'] : withoutMassTags.length > 12 ? [counted(withoutMassTags.length, 'item')] : joined(withoutMassTags.map(tag => [context.tag(tag)])) },
      { label: 'Not counted', value: ['cables, panels, busbars, what is not in this record'] },
    ],
  }
}

/** On paper a line an item: its moments are on the site, and are its mass times these distances. */
function partTable(context: ViewContext, { parts, centre }: MomentResults, onPaper: boolean): Table {
  const cell = (of: (part: MomentPart) => readonly [number, number]) => (part: MomentPart): Text => {
    const [armM, momentKgM] = of(part)
    return [sayForWorking('armM', armM), ...(onPaper ? [] : [lineBreak, muted(sayForWorking('momentKgM', momentKgM))])]
  }
  return tableOf(parts.toSorted((a, b) => b.massKg - a.massKg || byTag(a, b)), {
    id: 'moments',
    caption: onPaper ? 'Mass and position of each item, heaviest first' : 'Mass, position and moment of each item, heaviest first',
    empty: '',
    columns: [
      { title: 'Item', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Mass', width: 'number', cell: ({ massKg }) => [sayForWorking('massKg', massKg)] },
      { title: 'Forward', width: 'number', cell: cell(part => [part.positionM[0], part.forwardMomentKgM]) },
      { title: 'To port', width: 'number', cell: cell(part => [part.positionM[1], part.portMomentKgM]) },
      { title: 'Up', width: 'number', cell: cell(part => [part.positionM[2], part.upMomentKgM]) },
    ],
    note: centre.status === 'not computed' ? [] : [
      `Forward of the transom, to port of the centreline, above the waterline; ${onPaper ? 'each moment is mass times distance' : 'below each its moment, mass times distance'}. Sums: ${sayForWorking('massKg', centre.input.massKg)}; ${sayForWorking('momentKgM', centre.input.forwardMomentKgM)} forward, ${sayForWorking('momentKgM', centre.input.portMomentKgM)} to port, ${sayForWorking('momentKgM', centre.input.upMomentKgM)} up.`,
    ],
  })
}
