/** Transducers: what they see, and the depth offset that is set against the one that is right. */
import type { Footprint, TransducerPlacement } from '../../../model/results/placement.js'
import { say, sayBoth } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { byTag, tableOf } from '../../tables.js'
import { dash, muted, verdict } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export function transducerBlocks(context: ViewContext): readonly Block[] {
  const transducers = context.results.placement.transducers.toSorted(byTag)
  if (transducers.length === 0) return []
  const withOffset = transducers.filter(({ configured }) => configured !== null)
  const wide = transducers.find(({ footprints }) => footprints.some(({ along }) => along.status === 'computed'))
  const [some] = wide?.footprints ?? []
  return [
    { is: 'heading', text: 'Transducers and depth', anchor: 'transducers' },
    ...transducers.filter(({ configured }) => configured !== null).map((transducer): Block => ({ is: 'paragraph', text: depthText(context, transducer) })),
    offsetTable(context, transducers),
    ...withOffset.flatMap(({ tag, configured, expected }) => {
      const wanted = expected.find(({ reads }) => reads === configured!.reads)!.offset
      return [
        workingOf(context, `Offset of ${tag}, depth ${configured!.reads}`, wanted),
        workingOf(context, `Error with the offset that is set on ${tag}`, configured!.error, configured!.comparison === null ? {} : { limit: [`Tolerated: ${say('depthErrorM', configured!.comparison.limit.value, context.vessel)} (common practice).`] }),
        ...(configured!.comparison?.within === true ? [] : [workingOf(context, `What ${tag} shows, for example`, configured!.example.shown)]),
      ]
    }),
    beamTable(context, transducers),
    ...(wide === undefined ? [] : [footprintTable(context, transducers), workingOf(context, `Footprint of ${wide.tag}`, some!.along)]),
  ]
}

const signed = ({ vessel }: ViewContext, offsetM: number): string => `${offsetM > 0 ? '+' : offsetM < 0 ? '−' : ''}${sayBoth('offsetM', Math.abs(offsetM), vessel)}`

/** What the person at the helm should know: how far to trust the figure. */
function depthText(context: ViewContext, { tag, configured }: TransducerPlacement): Text {
  const { reads, error, comparison, signFits, example } = configured!
  const start: Text = [...context.named(tag), ` shows depth ${reads}. `]
  if (error.status === 'not computed' || comparison === null) return [...start, ...(signFits ? [] : [verdict('error', 'wrong sign'), '; by how much it is wrong: ']), verdict('not assessed', 'not assessed'), `, ${error.status === 'not computed' ? error.reason : ''}.`]
  const shown = example.shown.status === 'computed' && example.right?.status === 'computed'
    ? ` Where the transducer measures ${say('depthM', example.shown.input.measuredDepthM, context.vessel)} it shows ${say('depthM', example.shown.output.shownDepthM, context.vessel)}; right is ${say('depthM', example.right.output.shownDepthM, context.vessel)}.` : ''
  if (signFits && comparison.within) return [...start, verdict('good', 'right'), `, to within ${say('depthErrorM', comparison.limit.value, context.vessel)}.`]
  const deep = error.output.depthErrorM > 0
  return [...start, verdict(deep ? 'error' : 'warning', `${say('depthErrorM', comparison.value, context.vessel)} too ${deep ? 'deep' : 'shallow'}`), deep ? ': there is less water than it shows.' : ': there is more water than it shows.', shown]
}

function offsetTable(context: ViewContext, transducers: readonly TransducerPlacement[]): Table {
  const expected = ({ expected: all }: TransducerPlacement, reads: string): Text => {
    const offset = all.find(each => each.reads === reads)!.offset
    return offset.status === 'computed' ? [signed(context, offset.output.expectedOffsetM)] : [muted(offset.reason)]
  }
  return tableOf(transducers, {
    id: 'depth-offsets',
    caption: 'Depth offsets, as set and as they should be',
    empty: '',
    level: ({ configured }) => (configured !== null && (!configured.signFits || configured.comparison?.within === false) ? 'error' : null),
    columns: [
      { title: 'Transducer', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Set', width: 'short', cell: ({ configured }) => (configured === null ? [muted('not recorded')] : [signed(context, configured.offsetM), muted(` ${configured.reads}`), ...(configured.signFits ? [] : [' ', verdict('error', 'wrong sign')])]) },
      { title: 'For depth below waterline', width: 'number', cell: transducer => expected(transducer, 'below waterline') },
      { title: 'For depth below keel', width: 'number', cell: transducer => expected(transducer, 'below keel') },
    ],
    note: ['Positive up to the waterline, negative down to the keel. From the height of the transducer and the draught as recorded; the boat’s own trim and load change both. Check with a lead line.'],
  })
}

function beamTable(context: ViewContext, transducers: readonly TransducerPlacement[]): Table {
  const of = (tag: string) => context.lookup.equipment.get(tag)?.transducer ?? null
  return tableOf(transducers, {
    id: 'transducers',
    caption: 'Transducers as fitted',
    empty: '',
    columns: [
      { title: 'Transducer', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Frequency', width: 'number', cell: ({ tag }) => sayOrDash('frequencyKHz', of(tag)?.frequencyKHz, context.vessel) },
      { title: 'Power', width: 'number', cell: ({ tag }) => sayOrDash('ratedPowerW', of(tag)?.powerW, context.vessel) },
      { title: 'Beam, fore and aft × across', width: 'short', cell: ({ tag }) => beamText(of(tag)) },
      { title: 'Blind within', width: 'number', cell: ({ tag }) => sayOrDash('blindM', of(tag)?.blindM, context.vessel) },
    ],
  })
}

function beamText(transducer: { readonly beamDeg: number | null; readonly beamAcrossDeg: number | null } | null): Text {
  if (transducer === null || transducer.beamDeg === null && transducer.beamAcrossDeg === null) return dash
  const [along, across] = [transducer.beamDeg, transducer.beamAcrossDeg ?? transducer.beamDeg]
  return [`${along === null ? '–' : say('beamDeg', along)} × ${across === null ? '–' : say('beamDeg', across)}`]
}

const wideText = ({ vessel }: ViewContext, along: Footprint, across: Footprint): Text => {
  const text = (footprint: Footprint): string => (footprint.status === 'computed' ? say('diameterM', footprint.output.diameterM, vessel) : '–')
  return [`${text(along)} × ${text(across)}`]
}

function footprintTable(context: ViewContext, transducers: readonly TransducerPlacement[]): Table {
  const known = transducers.filter(({ footprints }) => footprints.length > 0)
  const depths = known[0]?.footprints.map(({ depthM }) => depthM) ?? []
  return tableOf(known, {
    id: 'footprints',
    caption: 'Footprint on the bottom, fore and aft × across',
    empty: '',
    columns: [
      { title: 'Transducer', width: 'text', cell: ({ tag }) => [context.tag(tag)] },
      ...depths.map((depthM, i) => ({
        title: `${say('depthM', depthM, context.vessel)} down`, width: 'short' as const,
        cell: ({ footprints }: TransducerPlacement) => wideText(context, footprints[i]!.along, footprints[i]!.across),
      })),
    ],
    note: ['Depth below the transducer, for a beam that looks straight down; what is shown is the shallowest spot in the footprint. Of a transducer that looks ahead or to the side it is the width of the beam at that distance.'],
  })
}
