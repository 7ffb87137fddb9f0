/** Radar: what stands in the beam, and how near the water it sees. */
import type { RadarPlacement } from '../../../model/results/placement.js'
import { slug } from '../../../model/address.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { mostRings, sectorPlot } from '../../drawings/sector-plot.js'
import { byTag } from '../../tables.js'
import { joined, muted, verdict } from '../../text.js'
import type { Block, Drawing, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { hiddenTable, sectorText } from './bearings.js'

export function radarBlocks(context: ViewContext): readonly Block[] {
  const radars = context.results.placement.radars.toSorted(byTag)
  if (radars.length === 0) return []
  return [
    { is: 'heading', text: 'Radar', anchor: 'radar' },
    ...radars.map((radar): Block => ({ is: 'paragraph', text: summary(context, radar) })),
    ...radarDrawing(context, radars),
    ...radars.flatMap(radar => [
      ...(radar.blind === null || radar.blind.by.length === 0 ? [] : [hiddenTable(context, radar.blind.by, { id: `radar-blind-${slug(radar.tag)}`, caption: `What stands in the beam of ${radar.tag}` })]),
      workingOf(context, `Blind distance of ${radar.tag}`, radar.blindDistance),
    ]),
  ]
}

function summary(context: ViewContext, { tag, blind, blindDistance }: RadarPlacement): Text {
  return [
    ...context.named(tag), ': ',
    ...(blind === null ? [muted('blind sector not assessed'), '.']
      : blind.sectors.length === 0 ? ['nothing that is recorded stands in its beam.']
        : [`blind or weak over ${blind.sectors.map(sectorText).join('; ')}`, ...(blind.ahead ? [', ', verdict('warning', 'right ahead')] : []), '. Turn the boat now and then to see what hides there; thin poles weaken the echo, broad ones blot it out.']),
    ...(blindDistance.status === 'computed' ? [` On smooth water the beam passes above what is nearer than ${say('blindDistanceM', blindDistance.output.blindDistanceM, context.vessel)}.`] : []),
  ]
}

function radarDrawing(context: ViewContext, radars: readonly RadarPlacement[]): readonly Drawing[] {
  const known = radars.filter(({ blind }) => blind !== null && blind.sectors.length > 0).slice(0, mostRings)
  if (known.length === 0) return []
  return [{
    is: 'drawing', id: 'radar-sectors', caption: 'Blind sectors of the radar',
    svg: sectorPlot({
      title: 'Blind sectors of the radar, seen from above', hiddenMeans: 'blind: a structure stands in the beam',
      rings: known.map(({ tag, blind }) => ({ name: `${tag} ${context.nameOf(tag) ?? ''}`, shown: [{ sector: { fromDeg: 0, widthDeg: 360 }, colour: 'beam' }], hidden: blind!.sectors })),
    }),
    description: joined(known.map(({ tag, blind }): Text => [context.tag(tag), ` is blind ${blind!.sectors.map(sectorText).join(', ')}.`]), ' '),
  }]
}
