/** Compasses and heading sensors: how far each item is, and what it should be. */
import type { CompassPair, CompassPlacement } from '../../../model/results/placement.js'
import { slug } from '../../../model/address.js'
import { say, sayAgainst } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { compareTags, tableOf } from '../../tables.js'
import { counted, dash, joined, lineBreak, muted, verdict } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { cautionBlocks } from '../../cautions/cautions.js'

/** On paper those with the least margin; the rest is on the site. */
const mostOnPaper = 12
const classWords = { 'standard': 'standard compass', 'steering': 'steering compass', 'flux-gate': 'flux-gate heading sensor' } as const

export function compassBlocks(context: ViewContext, { onPaper }: { readonly onPaper: boolean }): readonly Block[] {
  const { compasses } = context.results.placement
  if (compasses.length === 0) return []
  const [some] = compasses.filter(({ deviation }) => deviation.status === 'computed')
  return [
    { is: 'heading', text: 'Compasses and heading sensors', anchor: 'compasses' },
    ...cautionBlocks(context, { pages: ['placement'] }),
    {
      is: 'paragraph', text: [
        'At its compass safe distance an item turns a standard compass by no more than 5.4°/H, a steering compass by no more than 18°/H; H is the horizontal part of the Earth’s field in microtesla. A flux-gate sensor is held against the distance to a standard compass where one is declared, else against that to a steering compass. '
        + 'In restricted service distances may be reduced to 60 %; that is not applied here. Items near one another add up, so the compass is swung after every change.',
      ],
    },
    ...(some === undefined ? [] : [workingOf(context, `Deviation that one item may cause, ${classWords[some.compassClass]} ${some.tag}`, some.deviation)]),
    ...compasses.toSorted((a, b) => compareTags(a.tag, b.tag)).flatMap(compass => blocksOf(context, compass, onPaper)),
  ]
}

function blocksOf(context: ViewContext, compass: CompassPlacement, onPaper: boolean): readonly Block[] {
  const { tag, pairs, singleConductors } = compass
  const [worst] = pairs
  return [
    { is: 'paragraph', text: summary(context, compass) },
    ...(pairs.length === 0 ? [] : [pairTable(context, compass, onPaper)]),
    ...(worst === undefined ? [] : [workingOf(context, `${worst.itemTag} from ${tag}`, worst.distance, { limit: limitOf(context, worst) })]),
    ...(singleConductors.length === 0 ? [] : conductorBlocks(context, compass)),
  ]
}

function summary(context: ViewContext, { tag, compassClass, deviation, pairs, undeclared }: CompassPlacement): Text {
  const short = pairs.filter(({ comparison }) => !comparison.within)
  const [worst] = pairs
  return [
    ...context.named(tag), `, ${classWords[compassClass]}: `,
    ...(worst === undefined ? [muted('no item with both a position and a declared distance'), '.']
      : short.length > 0 ? [...joined(short.map(({ itemTag }) => context.named(itemTag))), short.length === 1 ? ' stands too close.' : ' stand too close.']
        : [`${counted(pairs.length, 'item')} with a declared distance, all far enough; least margin `, sayMargin(context, worst.comparison), ', ', ...context.named(worst.itemTag), '.']),
    ...(deviation.status === 'computed' ? [` One item may turn it by ${say('permittedDeviationDeg', deviation.output.permittedDeviationDeg)}.`] : []),
    ...(undeclared.length === 0 ? [] : [' No distance is declared for ', ...joined(undeclared.map(each => [...context.named(each.tag), muted(` at ${say('distanceM', each.distanceM, context.vessel)}`)])), ': of kinds that can be magnetic, and closer than the 5 m to keep then.']),
  ]
}

/** Equal to the limit but for the last binary digits is no margin. */
const sayMargin = ({ vessel }: ViewContext, { margin }: CompassPair['comparison']): string => say('marginM', Math.abs(margin) < 1e-9 ? 0 : margin, vessel)

const limitOf = ({ vessel }: ViewContext, { comparison, declaredFor }: CompassPair): Text =>
  [`Declared to a ${declaredFor} compass: at least ${sayAgainst('distanceM', comparison.value, comparison.limit.value, vessel).limit}.`]

function pairTable(context: ViewContext, { tag, pairs }: CompassPlacement, onPaper: boolean): Table {
  const shown = onPaper ? pairs.slice(0, mostOnPaper) : pairs
  return tableOf(shown, {
    id: `compass-${slug(tag)}`,
    caption: `Distances to ${tag}, least margin first`,
    empty: '',
    level: ({ comparison }) => (comparison.within ? null : 'error'),
    columns: [
      { title: 'Item', width: 'text', cell: ({ itemTag }) => context.named(itemTag) },
      { title: 'Distance', width: 'number', cell: ({ comparison }) => [sayAgainst('distanceM', comparison.value, comparison.limit.value, context.vessel).actual] },
      { title: 'Declared', width: 'number', cell: ({ comparison, declaredFor }) => [sayAgainst('distanceM', comparison.value, comparison.limit.value, context.vessel).limit, lineBreak, muted(declaredFor)] },
      { title: 'Margin', width: 'number', cell: ({ comparison }) => [sayMargin(context, comparison), ...(comparison.within ? [] : [' ', verdict('error', 'too close')])] },
    ],
    note: ['Straight distance between the positions recorded. Standard, steering: the compass for which the maker declares it.', ...(shown.length < pairs.length ? [` ${counted(pairs.length - shown.length, 'item')} more, with larger margins, on the site.`] : [])],
  })
}

function conductorBlocks(context: ViewContext, { tag, singleConductors }: CompassPlacement): readonly Block[] {
  const computed = singleConductors.filter(({ distance }) => distance.status === 'computed')
  const largest = computed.toSorted((a, b) => keptM(b) - keptM(a))[0]
  return [
    tableOf(singleConductors, {
      id: `compass-conductors-${slug(tag)}`,
      caption: `Single d.c. conductors in the zone of ${tag}`,
      empty: '',
      columns: [
        { title: 'Cable', width: 'text', cell: ({ cableTag }) => context.named(cableTag) },
        { title: 'Current', width: 'number', cell: ({ distance }) => (distance.status === 'computed' ? [say('currentA', distance.input.currentA)] : dash) },
        { title: 'Alone, to keep', width: 'number', cell: ({ distance }) => (distance.status === 'computed' ? [say('distanceM', distance.output.keptDistanceM, context.vessel)] : [muted(distance.reason)]) },
      ],
      note: ['Out and back belong side by side within 5 m of a compass: then the fields cancel and no distance is needed. The last column says how far the conductor would have to be without its way back beside it. Cables of other zones within 5 m are not listed.'],
    }),
    ...(largest === undefined ? [] : [workingOf(context, `${largest.cableTag} alone beside ${tag}`, largest.distance)]),
  ]
}
const keptM = ({ distance }: CompassPlacement['singleConductors'][number]): number => (distance.status === 'computed' ? distance.output.keptDistanceM : 0)
