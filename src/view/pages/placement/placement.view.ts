/** Placement: compasses, navigation lights, radar, transducers, mass and moments, and what stands where. */
import type { PositionReference } from '../../../model/results/placement.js'
import type { StandingPlace, Structure } from '../../../model/vessel.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { byTag, tableOf } from '../../tables.js'
import { lineBreak, muted } from '../../text.js'
import type { Block, Page, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { foundBlocks } from '../../parts/found-blocks.js'
import { compassBlocks } from './compass-blocks.js'
import { lightBlocks } from './light-blocks.js'
import { momentBlocks } from './moment-blocks.js'
import { radarBlocks } from './radar-blocks.js'
import { transducerBlocks } from './transducer-blocks.js'

/** Nothing to place, no page. */
export function placementPages(context: ViewContext): readonly Page[] {
  const blocksFor = (onPaper: boolean): readonly Block[] => [
    ...compassBlocks(context, { onPaper }),
    ...lightBlocks(context),
    ...radarBlocks(context),
    ...transducerBlocks(context),
    ...referenceBlocks(context),
    ...momentBlocks(context, { onPaper }),
    ...structureBlocks(context),
    ...closing(context),
  ]
  if (blocksFor(false).length === 0) return []
  return [{
    key: fixedPages.placement,
    title: 'Placement',
    kicker: null,
    lead: ['Where on the boat things stand, and whether they may stand there: distances to compasses, navigation lights, radar, depth, mass. Positions count forward of the transom, to port of the centreline and up from the waterline.'],
    printed: blocksFor(true),
    trail: [],
    blocks: blocksFor(false),
  }]
}

function referenceBlocks(context: ViewContext): readonly Block[] {
  const references = context.results.placement.positionReferences.toSorted(byTag)
  if (references.length === 0) return []
  const side = (of: 'bowM' | 'sternM' | 'portM' | 'starboardM') => ({ dimensions }: PositionReference): Text =>
    (dimensions.status === 'computed' ? [`${Math.round(dimensions.output[of])}\u00A0m`, lineBreak, muted(say(of, dimensions.output[of], context.vessel))] : [muted('–')])
  return [
    { is: 'heading', text: 'Reference point for AIS', anchor: 'ais-reference' },
    { is: 'paragraph', text: ['An AIS transceiver is told how far the antenna it takes its position from is from the ends and sides of the boat. To be set, in whole metres, for the one that is connected to it:'] },
    tableOf(references, {
      id: 'ais-reference-points',
      caption: 'Distances to set, by receiver of positions',
      empty: '',
      columns: [
        { title: 'Receiver', width: 'text', cell: ({ tag }) => context.named(tag) },
        { title: 'A, bow', width: 'number', cell: side('bowM') },
        { title: 'B, stern', width: 'number', cell: side('sternM') },
        { title: 'C, port', width: 'number', cell: side('portM') },
        { title: 'D, starboard', width: 'number', cell: side('starboardM') },
      ],
      note: ['Whole metres first, each rounded by itself, so that a pair can miss length or beam by a metre; below them the distances as they are.'],
    }),
    workingOf(context, `Reference point ${references[0]!.tag}`, references[0]!.dimensions),
  ]
}

function structureBlocks(context: ViewContext): readonly Block[] {
  const { structures, standingPlaces } = context.vessel
  const between = (axis: 0 | 1 | 2) => ({ fromM, toM }: Structure): Text => {
    const [low, high] = [fromM[axis], toM[axis]].toSorted((a, b) => a - b) as [number, number]
    return [`${say('positionM', low, context.vessel)} to ${say('positionM', high, context.vessel)}`]
  }
  const along = (axis: 0 | 1 | 2) => ({ positionM }: StandingPlace): Text => [say('positionM', positionM[axis], context.vessel)]
  return [
    ...(structures.length + standingPlaces.length === 0 ? [] : [{ is: 'heading' as const, text: 'Structures and places of people', anchor: 'structures' }]),
    ...(structures.length === 0 ? [] : [tableOf(structures.toSorted(byTag), {
      id: 'structures',
      caption: 'What stands in the way of lights, beams and the sky, as boxes',
      empty: '',
      columns: [
        { title: 'Structure', width: 'text', cell: ({ tag, name }) => [{ is: 'tag', text: tag }, ` ${name}`] },
        { title: 'Forward', width: 'short', cell: between(0) },
        { title: 'To port', width: 'short', cell: between(1) },
        { title: 'Up', width: 'short', cell: between(2) },
      ],
    })]),
    ...(standingPlaces.length === 0 ? [] : [tableOf(standingPlaces.toSorted(byTag), {
      id: 'standing-places',
      caption: 'Where people stand, sit or sleep',
      empty: '',
      columns: [
        { title: 'Place', width: 'text', cell: ({ tag, name }) => [{ is: 'tag', text: tag }, ` ${name}`] },
        { title: 'Forward', width: 'number', cell: along(0) },
        { title: 'To port', width: 'number', cell: along(1) },
        { title: 'Up', width: 'number', cell: along(2) },
        { title: 'Head above it', width: 'number', cell: ({ headHeightM }) => [say('headHeightM', headHeightM, context.vessel)] },
      ],
    })]),
  ]
}

/** A vessel with nothing to place has no page, and none of this. */
function closing(context: ViewContext): readonly Block[] {
  const { notAssessed, compasses, lights, radars, transducers } = context.results.placement
  const looked = compasses.length + lights.lights.length + lights.required.length + radars.length + transducers.length + notAssessed.length
  return looked === 0 ? [] : foundBlocks(context, { letters: 'PLC', notAssessed })
}
