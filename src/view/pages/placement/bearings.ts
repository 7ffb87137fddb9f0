/** Bearings and sectors in words: clockwise from the bow. */
import type { Obscured } from '../../../model/results/placement.js'
import type { Sector } from '../../../model/results/sector.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { muted } from '../../text.js'
import type { Table } from '../../view-model.js'

const quarters = ['ahead', 'starboard bow', 'starboard beam', 'starboard quarter', 'astern', 'port quarter', 'port beam', 'port bow'] as const
const sideOf = (bearing: number): string => quarters[Math.floor((((bearing + 22.5) % 360) + 360) % 360 / 45)]!
const turned = (bearing: number): number => ((bearing % 360) + 360) % 360

/** `352.0° to 8.0°` */
export const sectorText = ({ fromDeg, widthDeg }: Sector): string =>
  (widthDeg >= 360 ? 'all round' : `${say('bearingDeg', turned(fromDeg))} to ${say('bearingDeg', turned(fromDeg + widthDeg))}`)

/** The stretches that each structure hides, a row each. */
export const hiddenTable = (context: ViewContext, by: Obscured['by'], { id, caption }: { readonly id: string; readonly caption: string }): Table =>
  tableOf(by.flatMap(({ structureTag, sectors }) => sectors.map(sector => ({ structureTag, sector }))), {
    id, caption,
    empty: 'Nothing that is recorded stands in its way.',
    columns: [
      { title: 'Structure', width: 'text', cell: ({ structureTag }) => context.named(structureTag) },
      { title: 'From, to', width: 'short', cell: ({ sector }) => [sectorText(sector)] },
      { title: 'Wide', width: 'number', cell: ({ sector }) => [say('widthDeg', sector.widthDeg)] },
      { title: 'Where', width: 'short', cell: ({ sector }) => (sector.widthDeg > 180 ? [muted('most of the way round')] : [sideOf(sector.fromDeg + sector.widthDeg / 2)]) },
    ],
    note: ['Bearings clockwise from the bow, of the edges of the box that is recorded for the structure.'],
  })
