/** The antennas drawn from the side and from astern. */
import { equipmentKind } from '../../../references/equipment-kinds.js'
import { mPerFt } from '../../../units/convert.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { antennaPlan, type PlanMark } from '../../drawings/antenna-plan.js'
import { fixedPages } from '../../site-map.js'
import { sayOrDash } from '../../parts/say.js'
import { byTag, tableOf } from '../../tables.js'
import { joined, linkTo } from '../../text.js'
import type { Block, Text } from '../../view-model.js'

/** A thing in the boat's three directions, of which a drawing shows two. */
interface Standing extends Omit<PlanMark, 'acrossM'> { readonly forwardM: number; readonly toPortM: number; readonly words: Text }

const views = [
  { id: 'side', name: 'from starboard, bow to the right', along: (forwardM: number, _toPortM: number) => forwardM },
  { id: 'astern', name: 'from astern, port to the left', along: (_forwardM: number, toPortM: number) => -toPortM },
] as const

export function drawingBlocks(context: ViewContext): readonly Block[] {
  const things = [...antennasIn(context), ...scannersIn(context), ...peopleIn(context)]
  if (things.every(({ is }) => is === 'person')) return []
  const us = context.vessel.units === 'us'
  const heights = us ? { everyM: 5 * mPerFt, text: (step: number) => `${5 * step} ft` } : { everyM: 1, text: (step: number) => `${step} m` }
  return [
    { is: 'heading', text: 'Where the antennas stand', anchor: 'drawing' },
    ...views.map(({ id, name, along }): Block => ({
      is: 'drawing',
      id: `radio-${id}`,
      caption: `Antennas seen ${name}`,
      svg: antennaPlan({
        title: `Antennas seen ${name}`,
        marks: things.map(({ words: _words, forwardM, toPortM, ...thing }) => ({ ...thing, acrossM: along(forwardM, toPortM) })),
        boxes: context.vessel.structures.map(({ tag, fromM, toM }) => {
          const [a, b] = [along(fromM[0], fromM[1]), along(toM[0], toM[1])]
          return { tag, fromM: Math.min(a, b), toM: Math.max(a, b), footM: Math.min(fromM[2], toM[2]), topM: Math.max(fromM[2], toM[2]) }
        }),
        heights,
      }),
      description: joined(things.map(({ words }) => words), '; '),
    })),
    {
      is: 'paragraph',
      text: ['Blue: antennas. Red: radar scanners, their beam shaded. Brown dashes: how near people may come to what transmits. Grey: structures. True to scale; heights above the waterline. Each drawing leaves one direction out: what looks near may stand apart across or along the boat, so the distances are in the tables.'],
    },
    ...standingTable(context),
  ]
}

/** The figures that distances, angles and heights come from. */
function standingTable(context: ViewContext): readonly Block[] {
  const { results: { radio: { antennas, radars } }, vessel: { structures, standingPlaces } } = context
  const scanners = radars.flatMap(({ tag }) => context.lookup.equipment.get(tag) ?? []).flatMap(({ tag, positionM, radar }) =>
    (positionM === null ? [] : [{ tag, forwardM: positionM[0], toPortM: positionM[1], footM: positionM[2], topM: positionM[2], gainDbi: radar?.gainDbi ?? null }]))
  const placed = antennas.flatMap(({ tag, part }) => (part === null ? [] : [{ tag, ...part, gainDbi: context.lookup.equipment.get(tag)?.antenna?.gainDbi ?? null }]))
  const position = (valueM: number): string => say('positionM', valueM, context.vessel)
  return [tableOf([...placed, ...scanners].toSorted(byTag), {
    id: 'radio-positions',
    caption: 'Positions and gains, as recorded',
    empty: 'No antenna has a position recorded.',
    columns: [
      { title: 'Antenna', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Forward', width: 'number', cell: ({ forwardM }) => [position(forwardM)] },
      { title: 'To port', width: 'number', cell: ({ toPortM }) => [position(toPortM)] },
      { title: 'Up', width: 'short', cell: ({ footM, topM }) => [topM > footM ? `${position(footM)} to ${position(topM)}` : position(footM)] },
      { title: 'Gain', width: 'number', cell: ({ gainDbi }) => sayOrDash('gainDbi', gainDbi, context.vessel) },
    ],
    note: [
      'Forward of the transom, to port of the centreline, above the waterline. A whip radiates from its mount to its top. Of a radar scanner its middle counts; what its arm sweeps is not counted.',
      ...(structures.length + standingPlaces.length === 0 ? [] : [' Structures and places of people, with their positions, are under ', linkTo(fixedPages.placement, 'Placement'), '.']),
    ],
  })]
}

const keepFrom = ({ results }: ViewContext, tag: string): number | null => results.radio.exposures.find(exposure => exposure.tag === tag)?.deciding?.value ?? null

const antennasIn = (context: ViewContext): readonly Standing[] => context.results.radio.antennas.flatMap(({ tag, part }): readonly Standing[] => (part === null ? [] : [{
  tag, is: 'antenna', ...part, keepM: keepFrom(context, tag), beamDeg: null,
  words: [...context.named(tag), `, ${say('heightM', part.footM, context.vessel)}${part.topM > part.footM ? ` to ${say('heightM', part.topM, context.vessel)}` : ''} up`],
}]))

const scannersIn = (context: ViewContext): readonly Standing[] => context.results.radio.radars.flatMap(({ tag, scannerHeightM, verticalBeamDeg }): readonly Standing[] => {
  const item = context.lookup.equipment.get(tag)
  if (scannerHeightM === null || item === undefined || item.positionM === null) return []
  const [forwardM, toPortM] = item.positionM
  return [{
    tag, is: 'scanner', forwardM, toPortM, footM: scannerHeightM, topM: scannerHeightM, keepM: keepFrom(context, tag), beamDeg: verticalBeamDeg === null ? null : verticalBeamDeg / 2,
    words: [...context.named(tag), ` (${equipmentKind(item.kind).title.toLowerCase()}), ${say('heightM', scannerHeightM, context.vessel)} up`],
  }]
})

const peopleIn = (context: ViewContext): readonly Standing[] => context.vessel.standingPlaces.map(({ tag, positionM: [forwardM, toPortM, footM], headHeightM }): Standing => ({
  tag, is: 'person', forwardM, toPortM, footM, topM: footM + headHeightM, keepM: null, beamDeg: null,
  words: [...context.named(tag), `, head ${say('heightM', footM + headHeightM, context.vessel)} up`],
}))
