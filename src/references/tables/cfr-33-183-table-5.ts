/**
 * Allowable current of copper conductors by 33 CFR 183.425, table 5 (33-cfr-183), with its two notes. The table was read
 * whole in the law; note 1 and note 2 were read only in reprints or are from memory, as the standing of each figure says.
 */
import type { Citation, Standing } from '../bibliography.js'
import { awgSize } from './astm-b258-awg.js'
import type { AmpacityColumn, AmpacityTable } from './ampacity-table.js'

const note1 = (standing: Standing): Citation => ({ source: '33-cfr-183', place: '183.425 table 5 note 1', standing })
const column = (fromC: number, factor: number, standing: Standing): AmpacityColumn =>
  ({ fromC, title: `${fromC} °C`, engineSpace: { factor, citation: note1(standing) } })

const rows: readonly (readonly [designation: string, currentsA: readonly number[]])[] = [
  ['18', [10, 10, 15, 20, 20, 25, 25]],
  ['16', [15, 15, 20, 25, 25, 30, 35]],
  ['14', [20, 20, 25, 30, 35, 40, 45]],
  ['12', [25, 25, 35, 40, 45, 50, 55]],
  ['10', [40, 40, 50, 55, 60, 70, 70]],
  ['8', [55, 65, 70, 70, 80, 90, 100]],
  ['6', [80, 95, 100, 100, 120, 125, 135]],
  ['4', [105, 125, 130, 135, 160, 170, 180]],
  ['3', [120, 145, 150, 155, 180, 195, 210]],
  ['2', [140, 170, 175, 180, 210, 225, 240]],
  ['1', [165, 195, 210, 210, 245, 265, 280]],
  ['1/0', [195, 230, 245, 245, 285, 305, 325]],
  ['2/0', [225, 265, 285, 285, 330, 355, 370]],
  ['3/0', [260, 310, 330, 330, 385, 410, 430]],
  ['4/0', [300, 360, 385, 385, 445, 475, 510]],
]

export const cfrTable5: AmpacityTable = {
  title: 'table 5 of 33 CFR 183.425',
  citation: { source: '33-cfr-183', place: '183.425 table 5' },
  ambientC: 30,
  engineSpaceAmbientC: 50,
  columns: [
    column(60, 0.58, 'from memory'),
    column(75, 0.75, 'from memory'),
    column(80, 0.78, 'from memory'),
    column(90, 0.82, 'from memory'),
    column(105, 0.85, 'published'),
    column(125, 0.89, 'from memory'),
    column(200, 1, 'from memory'),
  ],
  rows: rows.map(([designation, currentsA]) => ({ size: awgSize(designation)!, currentsA })),
}

/** Note 2: what is left when several current-carrying conductors run together. */
export const cfrBundleFactors = {
  steps: [
    { fromCount: 3, factor: 0.7 },
    { fromCount: 4, factor: 0.6 },
    { fromCount: 7, factor: 0.5 },
    { fromCount: 25, factor: 0.4 },
  ],
  citation: { source: '33-cfr-183', place: '183.425 table 5 note 2, applied by 183.435(b)', standing: 'published' },
} as const
