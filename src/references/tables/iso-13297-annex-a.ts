/**
 * Allowable current of copper conductors by annex A of the small-craft standard (iso-13297). All figures here are from
 * memory: no public copy of the annex was at hand. They agree with the table of the American law within one size.
 */
import type { Citation } from '../bibliography.js'
import type { AmpacityColumn, AmpacityTable } from './ampacity-table.js'

const annexA = (place: string): Citation => ({ source: 'iso-13297', place: `annex A, ${place}`, standing: 'from memory' })
const column = (fromC: number, title: string, factor: number | null): AmpacityColumn =>
  ({ fromC, title, engineSpace: { factor, citation: annexA('engine-space factor') } })

const rows: readonly (readonly [crossSectionMm2: number, currentsA: readonly number[]])[] = [
  [0.75, [6, 10, 12, 16, 20, 25]],
  [1, [8, 14, 18, 20, 25, 35]],
  [1.5, [12, 18, 21, 25, 30, 40]],
  [2.5, [17, 25, 30, 35, 40, 45]],
  [4, [22, 35, 40, 45, 50, 55]],
  [6, [29, 45, 50, 60, 70, 75]],
  [10, [40, 65, 70, 90, 100, 120]],
  [16, [54, 90, 100, 130, 150, 170]],
  [25, [71, 120, 140, 170, 185, 200]],
  [35, [87, 160, 185, 210, 225, 240]],
  [50, [105, 210, 230, 270, 300, 325]],
  [70, [135, 265, 285, 330, 360, 375]],
  [95, [165, 310, 330, 390, 410, 430]],
  [120, [190, 360, 400, 450, 480, 520]],
  [150, [220, 380, 430, 475, 520, 560]],
]

export const isoAnnexA: AmpacityTable = {
  title: 'table A.1 of ISO 13297',
  citation: annexA('table A.1'),
  ambientC: 30,
  engineSpaceAmbientC: 60,
  columns: [
    column(60, '60 °C', null),
    column(70, '70 °C', 0.75),
    column(85, '85 to 90 °C', 0.82),
    column(105, '105 °C', 0.86),
    column(125, '125 °C', 0.89),
    column(200, '200 °C', 1),
  ],
  rows: rows.map(([crossSectionMm2, currentsA]) =>
    ({ size: { system: 'mm2', designation: String(crossSectionMm2), crossSectionMm2 }, currentsA })),
}

/** What is left when several current-carrying conductors run together. That it starts at four was read in a published guide. */
export const isoBundleFactors = {
  steps: [
    { fromCount: 4, factor: 0.7 },
    { fromCount: 7, factor: 0.6 },
    { fromCount: 25, factor: 0.5 },
  ],
  citation: annexA('bundle factor'),
} as const
