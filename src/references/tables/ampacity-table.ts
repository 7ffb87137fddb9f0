/** A table of current-carrying capacities and the one way in which it is entered. */
import type { ConductorSize } from '../../units/conductor-size.js'
import type { Citation } from '../bibliography.js'

export interface AmpacityColumn {
  /** Lowest temperature rating of the insulation that may use the column. */
  readonly fromC: number
  readonly title: string
  /** What is left of the current at the ambient of an engine space; null: insulation of this kind is not used there. */
  readonly engineSpace: { readonly factor: number | null; readonly citation: Citation }
}
export interface AmpacityRow {
  readonly size: ConductorSize
  /** One current in ampere for each column. */
  readonly currentsA: readonly number[]
}
export interface AmpacityTable {
  readonly title: string
  readonly citation: Citation
  /** Ambient temperature of the tabulated currents, and of the engine-space factors. */
  readonly ambientC: number
  readonly engineSpaceAmbientC: number
  readonly columns: readonly AmpacityColumn[]
  /** Thin to thick. */
  readonly rows: readonly AmpacityRow[]
}

export interface TableEntry {
  readonly row: AmpacityRow
  readonly column: AmpacityColumn
  readonly currentA: number
}
export type TableEntryOrReason = TableEntry | { readonly reason: string }

/**
 * The tabulated current for a conductor. Between two rows the thinner one counts and between two columns the cooler one,
 * so that nothing is ever interpolated upwards: 14 AWG (2.08 mm²) enters a metric table at 1.5 mm², 100 °C insulation
 * enters the column of 90 °C.
 *
 * Errors   a reason when the conductor is thinner, or its insulation cooler, than anything in the table
 */
export function enterAmpacityTable(table: AmpacityTable, size: ConductorSize, insulationC: number): TableEntryOrReason {
  const row = table.rows.findLast(({ size: tabulated }) => isNotThinner(size, tabulated))
  if (row === undefined) return { reason: `the conductor is thinner than the smallest size in ${table.title}` }
  const columnNumber = table.columns.findLastIndex(({ fromC }) => insulationC >= fromC)
  const column = table.columns[columnNumber]
  if (column === undefined) return { reason: `the insulation is rated below the lowest column of ${table.title}, ${table.columns[0]!.title}` }
  return { row, column, currentA: row.currentsA[columnNumber]! }
}

const isNotThinner = (size: ConductorSize, than: ConductorSize): boolean =>
  (size.system === than.system && size.designation === than.designation) || size.crossSectionMm2 >= than.crossSectionMm2
